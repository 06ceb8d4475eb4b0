"""The largest error of the polar axis that keeps a task's smear within its limit."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.optimize import brentq

from core.alignment.axis.displacement import to_sky
from core.alignment.budget.field import Exposures
from core.alignment.budget.task import Task, Vantage
from core.alignment.budget.watched import Watched
from core.alignment.budget.words import arc, exposures_at, pixels
from core.alignment.geometry import ARCMIN_PER_RAD
from core.language import marked, say

Floats = NDArray[np.float64]

LARGEST_RAD = np.deg2rad(10.0)  # beyond, nobody would call the axis aligned
_WAYS = 12  # directions in which the axis may lie wrong
_FINE_WAYS = 5  # about the worst of them, 7.5° apart
_SURVEY_RAD = np.deg2rad(0.1)


@dataclass(frozen=True)
class Tolerance:
    """How far the axis may be off, from the place aimed at; infinite beyond 10°, 0 when hopeless.

    `largest_error_arcmin`: on the sky, whatever its direction. `azimuth_arcmin`, in the horizontal
    plane as the bolts turn it, and `altitude_arcmin`: when the other is right.
    `air_alone_px`: worst smear with the axis exactly there, from refraction and a tracking rate
    that does not fit.
    """

    largest_error_arcmin: float
    azimuth_arcmin: float
    altitude_arcmin: float
    air_alone_px: float
    limit_px: float
    sentence: str

    @property
    def possible(self) -> bool:
        """Some alignment keeps the limit."""
        return self.air_alone_px < self.limit_px


def tolerance(
    task: Task, vantage: Vantage, aim_altitude_rad: float = 0.0, place: str = marked("true pole")
) -> Tolerance:
    """Tolerance about an axis `aim_altitude_rad` above the true pole, which the words call `place`.

    Exact model, worst of all exposures in the span, corners and directions of the error. Raises
    `UnusableTask` when the target is not up.
    """
    smear = _Smear(task, vantage, aim_altitude_rad)
    alone = smear.at(np.zeros(2))
    if alone >= task.limit_px:
        sentence = _hopeless(task, alone, place, smear.is_far())
        return Tolerance(0.0, 0.0, 0.0, alone, task.limit_px, sentence)
    azimuth, _ = smear.reach(np.array([[1.0, 0.0], [-1.0, 0.0]]))
    altitude, _ = smear.reach(np.array([[0.0, 1.0], [0.0, -1.0]]))
    largest = min(smear.narrowest(), azimuth, altitude)
    azimuth /= float(to_sky(vantage.latitude_rad)[0])
    return Tolerance(
        largest_error_arcmin=_arcmin(largest),
        azimuth_arcmin=_arcmin(azimuth),
        altitude_arcmin=_arcmin(altitude),
        air_alone_px=alone,
        limit_px=task.limit_px,
        sentence=_sentence(task, _arcmin(largest), place),
    )


class _Smear:
    """Worst smear of a task as a function of the axis's displacement (2,) on the sky, radians."""

    def __init__(self, task: Task, vantage: Vantage, aim_altitude_rad: float) -> None:
        self._task, self._vantage = task, vantage
        self._watched = Watched(Exposures.over_span(task, vantage), task, vantage)
        self._aim = np.array([0.0, aim_altitude_rad])

    def at(self, displacement: Floats) -> float:
        """Pixels, at the centre or the worst corner."""
        axis = self._aim + displacement / to_sky(self._vantage.latitude_rad)
        centre, corner = self._watched.trails(axis).smear_px()
        return max(float(centre.max()), float(corner.max()))

    def is_far(self) -> bool:
        """Whether the guide star keeps away from the place aimed at."""
        return self._watched.is_far(self._aim)

    def narrowest(self) -> float:
        """How far one may go whichever the way: coarsely all round, then finely about the worst."""
        coarse: Floats = np.asarray(np.arange(_WAYS) * (2.0 * np.pi / _WAYS))
        size, worst = self.reach(_ways(coarse))
        apart = np.linspace(-0.5, 0.5, _FINE_WAYS) * (2.0 * np.pi / _WAYS)
        finer, _ = self.reach(_ways(coarse[worst] + apart))
        return min(size, finer)

    def reach(self, ways: Floats) -> tuple[float, int]:
        """How far one may go in any of `ways` (w, 2), and the narrowest; infinite beyond 10°.

        The limit along the way that looks worst is found; if another is worse there, that one is
        next. The distance only shrinks, so it ends with the narrowest way.
        """
        size, settled, limit = _SURVEY_RAD, -1, float("inf")
        for _ in range(len(ways)):
            worst = int(np.argmax([self.at(size * way) for way in ways]))
            if worst == settled:
                break
            settled, limit = worst, self._along(ways[worst])
            size = min(limit, float(LARGEST_RAD))
        return limit, settled

    def _along(self, way: Floats) -> float:
        def beyond(size: float) -> float:
            return self.at(size * way) - self._task.limit_px

        return _crossing(beyond, LARGEST_RAD)


def _crossing(beyond: Callable[[float], float], largest: float) -> float:
    """Where a growing function passes zero; infinite when it does not by `largest`."""
    high = min(_SURVEY_RAD, largest)
    while beyond(high) < 0.0:
        if high >= largest:
            return float("inf")
        high = min(4.0 * high, largest)
    return float(brentq(beyond, 0.0, high, xtol=1e-9, rtol=1e-4))


def _ways(around_rad: Floats) -> Floats:
    return np.stack([np.cos(around_rad), np.sin(around_rad)], axis=-1)


def _arcmin(size_rad: float) -> float:
    return float(size_rad * ARCMIN_PER_RAD)


def _sentence(task: Task, largest_arcmin: float, place: str) -> str:
    what, place = exposures_at(task), say(place)
    if not np.isfinite(largest_arcmin):
        return say("For {what} any axis within 10° of the {place} will do.", what=what, place=place)
    return say(
        "For {what} keep the axis within {tolerance} of the {place}: stars then smear "
        "less than {limit}.",
        what=what,
        tolerance=arc(largest_arcmin),
        place=place,
        limit=pixels(task.limit_px),
    )


def _hopeless(task: Task, alone_px: float, place: str, is_far: bool) -> str:
    way = say("a shorter exposure or guiding")
    if task.is_guided:
        way = say("a shorter exposure")
    if not is_far:
        way = say("a shorter exposure or a guide star nearer to the target")
    return say(
        "For {exposures} even an axis exactly on the {place} is not enough: the air's "
        "refraction smears {smear} (budget {limit:g}). It takes {way}.",
        exposures=exposures_at(task),
        place=say(place),
        smear=pixels(alone_px),
        limit=task.limit_px,
        way=way,
    )
