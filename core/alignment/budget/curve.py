"""Smear against the length of the exposure, and the longest exposure that keeps the limit."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import ArrayLike, NDArray
from scipy.optimize import brentq

from core.alignment.budget.field import Exposures
from core.alignment.budget.task import LONGEST_EXPOSURE_S, Task, UnusableTask, Vantage
from core.alignment.budget.watched import Watched
from core.alignment.budget.words import duration, pixels
from core.language import say

Floats = NDArray[np.float64]

_SHORTEST_S = 0.01


@dataclass(frozen=True, eq=False)
class Curve:
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


def smear_curve(task: Task, vantage: Vantage, axis_rad: Floats, exposure_s: ArrayLike) -> Curve:
    """Smear for each length in `exposure_s` (n,); the task's own exposure does not matter."""
    lengths = np.asarray(exposure_s, dtype=float)
    pairs = [_worst(replace(task, exposure_s=float(one)), vantage, axis_rad) for one in lengths]
    centre, corner = np.array(pairs).reshape(-1, 2).T
    return Curve(lengths, centre, corner, task.limit_px)


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
    return LongestExposure(seconds, capped, _sentence(task, seconds, capped))


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


def _sentence(task: Task, seconds: float, capped: bool) -> str:
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
