"""Smear in exposures begun anywhere in the sky, for one task and one error of the axis."""

from __future__ import annotations

import erfa
import numpy as np
from numpy.typing import NDArray

from core.alignment.budget.field import Exposures
from core.alignment.budget.passage import Passage
from core.alignment.budget.task import Task, Vantage
from core.alignment.budget.watched import Watched

Floats = NDArray[np.float64]

_DRAWN = 2, 1  # the first and the last instant; a worst guide star within 10 %


class Sky:
    """`axis_rad` (2,): azimuth and altitude error. Of the task its target does not matter."""

    def __init__(self, task: Task, vantage: Vantage, axis_rad: Floats) -> None:
        self.task, self.vantage, self.axis_rad = task, vantage, axis_rad

    def exposures(self, azimuth_rad: Floats, altitude_rad: Floats) -> Exposures:
        """Begun at true places (n,)."""
        latitude_rad = self.vantage.latitude_rad
        hour_angle, declination = erfa.ae2hd(azimuth_rad, altitude_rad, latitude_rad)
        lasting = np.full(azimuth_rad.shape, self.task.exposure_s)
        return Exposures(hour_angle, declination, lasting)

    @property
    def offset_rad(self) -> float:
        """From the middle of the field to the guide star."""
        return self.task.guide_star_offset_rad

    @property
    def clearance_rad(self) -> float:
        """How far from the axis the guide star's circle must keep for its trails to be smooth."""
        overhead = self.exposures(np.zeros(1), np.full(1, 0.5 * np.pi))
        return float(self.passage(overhead).clearance_rad[0])

    def passage(self, exposures: Exposures) -> Passage:
        """How their guide stars pass the axis; for guided tasks."""
        return Passage.of(exposures, self.axis_rad, self.task, self.vantage)

    def smear_px(self, exposures: Exposures, is_exact: bool = False) -> Floats:
        """Smear (2, n) at the centre and the worst corner, good enough to be drawn or exact."""
        if not self.task.is_guided:
            return self._watched_px(exposures, is_exact)
        passage = self.passage(exposures)
        is_clear = passage.gap_rad > passage.clearance_rad
        found = np.zeros((2, is_clear.size))
        for part in (is_clear, ~is_clear):  # a search where it is needed, and nowhere else
            if np.any(part):
                found[:, part] = self._watched_px(exposures.some(part), is_exact)
        return found

    def _watched_px(self, exposures: Exposures, is_exact: bool) -> Floats:
        how = () if is_exact else _DRAWN
        watched = Watched(exposures, self.task, self.vantage, *how)
        return np.stack(watched.trails(self.axis_rad).smear_px())
