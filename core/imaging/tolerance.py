"""How good is good enough: the largest error of the axis that keeps smear within its limit."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import ArrayLike, NDArray
from scipy.optimize import brentq, minimize_scalar

from core.alignment.axis.evidence import to_sky
from core.alignment.axis.solution import Solution
from core.alignment.goal import Allowed
from core.imaging.task import LONGEST_EXPOSURE_S, Exposures, Task, UnusableTask, Vantage
from core.imaging.trail import Watched
from core.imaging.words import arc, duration, exposures_at, near, pixels
from core.language import marked, say
from core.units import ARCMIN_PER_RAD

# How well the axis is known to stand, in the form the budget needs.

Floats = NDArray[np.float64]

_NORMAL_95 = 1.959964
_RINGS, _SPOKES = 8, 15


@dataclass(frozen=True)
class Alignment:
    """Axis errors from the true pole, one-sigma errors; signs: `core.alignment.drift.geometry`.

    The interval factor is half the 95 % interval over sigma.
    """

    azimuth_error_arcmin: float
    altitude_error_arcmin: float
    azimuth_sigma_arcmin: float = 0.0
    altitude_sigma_arcmin: float = 0.0
    correlation: float = 0.0
    azimuth_interval_factor: float = _NORMAL_95
    altitude_interval_factor: float = _NORMAL_95

    @classmethod
    def of(cls, solution: Solution) -> Alignment | None:
        """None when the legs do not tell both errors."""
        if not solution.determined:
            return None
        return cls(
            solution.azimuth_error_arcmin,
            solution.altitude_error_arcmin,
            solution.azimuth_sigma_arcmin,
            solution.altitude_sigma_arcmin,
            solution.correlation,
            solution.azimuth_interval_factor,
            solution.altitude_interval_factor,
        )

    @property
    def axis_rad(self) -> Floats:
        """Azimuth and altitude error (2,), radians."""
        return np.array([self.azimuth_error_arcmin, self.altitude_error_arcmin]) / ARCMIN_PER_RAD

    def samples_rad(self) -> Floats:
        """Equally likely axis errors (s, 2), radians: a fixed set, so that verdicts do not flicker.

        Rings of equal probability of the two-dimensional normal distribution, its spread widened
        so that the stated intervals come out.
        """
        shares = (np.arange(_RINGS) + 0.5) / _RINGS
        radius = np.sqrt(-2.0 * np.log1p(-shares))[:, np.newaxis]
        turn = 2.0 * np.pi * (np.arange(_SPOKES) + shares[:, np.newaxis]) / _SPOKES
        normal = np.stack([radius * np.cos(turn), radius * np.sin(turn)], axis=-1).reshape(-1, 2)
        factors = np.array([self.azimuth_interval_factor, self.altitude_interval_factor])
        sigma = np.array([self.azimuth_sigma_arcmin, self.altitude_sigma_arcmin])
        wide = sigma * factors / _NORMAL_95 / ARCMIN_PER_RAD
        across = np.sqrt(max(1.0 - self.correlation**2, 0.0))
        mixed = self.correlation * normal[:, 0] + across * normal[:, 1]
        return np.asarray(self.axis_rad + wide * np.stack([normal[:, 0], mixed], axis=-1))


# Smear against the length of the exposure, and the longest exposure that keeps the limit.

_SHORTEST_S = 0.01


@dataclass(frozen=True, eq=False)
class SmearCurve:
    """Worst smear of the span; arrays (n,). NaN where the target would sink below 10°."""

    exposure_s: Floats
    centre_px: Floats
    corner_px: Floats
    limit_px: float


@dataclass(frozen=True)
class LongestExposure:
    """`seconds` is capped at six hours or where the target sets; 0 when nothing is short enough."""

    seconds: float
    is_capped: bool
    sentence: str


def smear_curve(
    task: Task, vantage: Vantage, axis_rad: Floats, exposure_s: ArrayLike
) -> SmearCurve:
    """Smear for each length in `exposure_s` (n,); the task's own exposure does not matter."""
    lengths = np.asarray(exposure_s, dtype=float)
    pairs = [_worst(replace(task, exposure_s=float(one)), vantage, axis_rad) for one in lengths]
    centre, corner = np.array(pairs).reshape(-1, 2).T
    return SmearCurve(lengths, centre, corner, task.limit_px)


def longest_exposure(task: Task, vantage: Vantage, axis_rad: Floats) -> LongestExposure:
    """For the axis errors (2,), radians. Raises `UnusableTask` when the target is not up at all."""
    Exposures.over_span(replace(task, exposure_s=_SHORTEST_S), vantage)

    def beyond(log_s: float) -> float:
        worst = max(_worst(replace(task, exposure_s=float(np.exp(log_s))), vantage, axis_rad))
        return 1.0 if np.isnan(worst) else worst / task.limit_px - 1.0

    low, high = float(np.log(_SHORTEST_S)), float(np.log(LONGEST_EXPOSURE_S)) - 1e-9
    if beyond(low) > 0.0:
        return LongestExposure(0.0, False, say("No exposure is short enough for this budget."))
    seconds = float(np.exp(high if beyond(high) <= 0.0 else _root(beyond, low, high)))
    fits = max(_worst(replace(task, exposure_s=seconds * 0.99), vantage, axis_rad))
    capped = bool(fits < 0.9 * task.limit_px)
    return LongestExposure(seconds, capped, _curve_sentence(task, seconds, capped))


def _root(beyond: Callable[[float], float], low: float, high: float) -> float:
    return float(brentq(beyond, low, high, xtol=1e-3))


def _worst(task: Task, vantage: Vantage, axis_rad: Floats) -> tuple[float, float]:
    """Centre and corner, pixels; NaN where the target does not stay up."""
    try:
        exposures = Exposures.over_span(task, vantage)
    except UnusableTask:
        return float("nan"), float("nan")
    centre, corner = Watched(exposures, task, vantage).trails(axis_rad).smear_px()
    return float(centre.max()), float(corner.max())


def _curve_sentence(task: Task, seconds: float, capped: bool) -> str:
    if capped:
        return say(
            "Smear sets no limit: it stays below {limit} for {duration}.",
            limit=pixels(task.limit_px),
            duration=duration(seconds),
        )
    return say(
        "Longest exposure at {focal_length:g} mm: {duration}; beyond, stars smear more "
        "than {limit}.",
        focal_length=task.optics.focal_length_mm,
        duration=duration(seconds),
        limit=pixels(task.limit_px),
    )


# The largest error of the polar axis that keeps a task's smear within its limit.

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


# The largest error a budget allows, as the goal of an alignment.

# Nearer than the first no hand turns a bolt, and further than the second drift tells nothing that a
# glance would not: common practice, no source.
LEAST_ARCMIN, MOST_ARCMIN = 0.2, 10.0


def allowed_by(task: Task, vantage: Vantage, aim_altitude_rad: float = 0.0) -> Allowed | None:
    """None when no alignment keeps the limit. Raises `UnusableTask` when the target is not up."""
    found = tolerance(task, vantage, aim_altitude_rad)
    if not found.possible or found.largest_error_arcmin <= 0.0:
        return None
    arcmin = rounded_down(min(max(found.largest_error_arcmin, LEAST_ARCMIN), MOST_ARCMIN))
    return Allowed(arcmin, _goal_sentence(task, arcmin, found.largest_error_arcmin))


def _goal_sentence(task: Task, arcmin: float, largest_arcmin: float) -> str:
    said = say(
        "{goal:g}′, from tonight’s budget: {seconds:g} s exposures at {focal:g} mm.",
        goal=arcmin,
        seconds=task.exposure_s,
        focal=task.optics.focal_length_mm,
    )
    if largest_arcmin > MOST_ARCMIN:
        return f"{said} {say('It would allow more; nearer is easily reached.')}"
    if largest_arcmin < LEAST_ARCMIN:
        return f"{said} {say('It asks for less than a hand can turn: expose shorter.')}"
    return said


def rounded_down(arcmin: float) -> float:
    """Two figures: what is aligned to must not be stretched."""
    if not math.isfinite(arcmin) or arcmin <= 0.0:
        return arcmin
    step = 10.0 ** (math.floor(math.log10(arcmin)) - 1)
    return float(f"{math.floor(arcmin / step + 1e-9) * step:.6g}")


# Where between the true and the refracted pole the axis serves one target best.

_SAME = 0.02  # a smaller gain than this part is not worth an aim of its own


@dataclass(frozen=True)
class BestAim:
    """The aim for one target: `fraction` 0 is the true pole, 1 the refracted one above it.

    The smears are the worst of the span, at the centre or a corner, with the axis exactly there.
    """

    fraction: float
    above_true_pole_arcmin: float
    smear_px: float
    at_true_pole_px: float
    at_refracted_pole_px: float
    sentence: str


def best_aim(task: Task, vantage: Vantage) -> BestAim:
    """Least worst smear over the span. Raises `UnusableTask` when the target is not up."""
    watched = Watched(Exposures.over_span(task, vantage), task, vantage)
    lift = vantage.pole_lift_rad

    def smear(fraction: float) -> float:
        found = watched.trails(np.array([0.0, fraction * lift]))
        return max(float(part.max()) for part in found.smear_px())

    ends = smear(0.0), smear(1.0)
    inside = minimize_scalar(smear, bounds=(0.0, 1.0), method="bounded", options={"xatol": 1e-3})
    size, fraction = min((ends[0], 0.0), (ends[1], 1.0), (float(inside.fun), float(inside.x)))
    above_arcmin = fraction * lift * ARCMIN_PER_RAD
    sentence = _aim_sentence(task, fraction, above_arcmin, size, ends)
    return BestAim(fraction, above_arcmin, size, *ends, sentence)


def _aim_sentence(
    task: Task, fraction: float, above_arcmin: float, size: float, ends: tuple[float, float]
) -> str:
    if max(ends) - size <= max(_SAME * max(ends), 0.01 * task.limit_px):
        return say(
            "For this target it makes no difference which pole is aimed at: {size}.",
            size=pixels(size),
        )
    place = _place(fraction, above_arcmin)
    return say(
        "This target smears least with the axis {place}: {size}, against {true} on the "
        "true and {refracted} on the refracted pole.",
        place=place,
        size=near(size, task.limit_px),
        true=near(ends[0], task.limit_px),
        refracted=near(ends[1], task.limit_px),
    )


def _place(fraction: float, above_arcmin: float) -> str:
    if fraction < 0.01:
        return say("on the true pole")
    if fraction > 0.99:
        return say("on the refracted pole")
    return say("{above:.1f}′ above the true pole", above=above_arcmin)
