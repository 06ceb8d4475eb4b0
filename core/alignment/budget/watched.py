"""The field of a task, looked at with the guide star wherever it does worst."""

from __future__ import annotations

from dataclasses import replace
from functools import cached_property

import numpy as np
from numpy.typing import NDArray

from core.alignment.budget.field import INSTANTS, Exposures, SeenField, seen_field
from core.alignment.budget.passage import Passage
from core.alignment.budget.task import Task, Vantage
from core.alignment.budget.trail import Trails, extents, trails

Floats = NDArray[np.float64]

_CLOSER = 3  # times: within 1 %
_WORST = 3  # directions that are looked at more closely
_BETWEEN = np.array([0.2, 0.4, 0.6, 0.8])


class Watched:
    """Exposures of a task from a vantage, for any error of the axis.

    Far from the axis seven even directions of the guide star tell all others. Nearer they crowd
    towards it, and where its circle touches or encloses an end of the axis the worst is searched
    for. A star that the two axes cannot bring back is followed as near as they can.
    """

    def __init__(
        self,
        exposures: Exposures,
        task: Task,
        vantage: Vantage,
        instants: int = INSTANTS,
        closer: int = _CLOSER,
    ) -> None:
        """`closer`: how often the search goes on between the worst directions found so far."""
        self._exposures, self._task, self._vantage = exposures, task, vantage
        self._instants, self._closer = instants, closer
        self._room_rad = float("inf")
        if task.is_guided and task.guide_star_offset_rad > 0.0:
            self._room_rad = Passage.of(exposures, np.zeros(2), task, vantage).room_rad

    @cached_property
    def _even(self) -> SeenField:
        return seen_field(self._exposures, self._task, self._vantage, None, self._instants)

    def is_far(self, axis_rad: Floats) -> bool:
        """Whether the guide star keeps away from an axis with this error (2,), radians."""
        return self._passage(axis_rad) is None

    def seen(self, axis_rad: Floats) -> SeenField:
        """The field from the directions that matter for this error of the axis."""
        passage = self._passage(axis_rad)
        if passage is None:
            return self._even
        if np.all(passage.gap_rad > passage.clearance_rad):
            return self._from(passage.spaced_rad())
        return self._searched(axis_rad, passage.clustered_rad())

    def trails(self, axis_rad: Floats) -> Trails:
        """With the axis there."""
        return self.trails_in(self.seen(axis_rad), axis_rad)

    def trails_in(self, seen: SeenField, axis_rad: Floats) -> Trails:
        """With the axis there, in a field seen for another, so that the two can be compared."""
        return trails(seen, axis_rad, self._task, self._vantage)

    def _passage(self, axis_rad: Floats) -> Passage | None:
        if float(np.abs(axis_rad).sum()) < self._room_rad:
            return None
        passage = Passage.of(self._exposures, axis_rad, self._task, self._vantage)
        return None if passage.room_rad > 0.0 else passage

    def _from(self, guide_rad: Floats) -> SeenField:
        return seen_field(self._exposures, self._task, self._vantage, guide_rad, self._instants)

    def _searched(self, axis_rad: Floats, guide_rad: Floats) -> SeenField:
        """With more directions wherever the corner smears most."""
        seen = replace(self._from(guide_rad), is_smooth=False)
        smear = self._smear_px(seen, axis_rad)
        for _ in range(self._closer):
            finer_rad = _beside_the_worst(guide_rad, smear)
            finer = self._from(finer_rad)
            guide_rad = np.concatenate([guide_rad, finer_rad], axis=1)
            smear = np.concatenate([smear, self._smear_px(finer, axis_rad)], axis=1)
            seen = seen.joined(finer)
        return seen

    def _smear_px(self, seen: SeenField, axis_rad: Floats) -> Floats:
        return extents(self.trails_in(seen, axis_rad).corner)


def _beside_the_worst(around_rad: Floats, smear: Floats) -> Floats:
    """Directions (n, 8 _WORST) between the worst of all (n, m) and their neighbours."""
    order = np.argsort(around_rad % (2.0 * np.pi), axis=1)
    around = np.take_along_axis(around_rad % (2.0 * np.pi), order, axis=1)
    size = np.take_along_axis(smear, order, axis=1)
    before, after = np.roll(around, 1, axis=1), np.roll(around, -1, axis=1)
    before[:, 0] -= 2.0 * np.pi
    after[:, -1] += 2.0 * np.pi
    is_peak = (size >= np.roll(size, 1, axis=1)) & (size >= np.roll(size, -1, axis=1))
    worst = np.argsort(np.where(is_peak, -size, 1.0), axis=1)[:, :_WORST]
    low, top, high = (np.take_along_axis(part, worst, 1) for part in (before, around, after))
    sides = [part[..., np.newaxis] + (end - part)[..., np.newaxis] * _BETWEEN
             for part, end in ((low, top), (top, high))]  # fmt: skip
    return np.concatenate(sides, axis=1).reshape(around.shape[0], -1)
