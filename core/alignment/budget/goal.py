"""The largest error a budget allows, as the goal of an alignment."""

from __future__ import annotations

import math

from core.alignment.budget.task import Task, Vantage
from core.alignment.budget.tolerance import tolerance
from core.alignment.goal import Allowed
from core.language import say

# Nearer than the first no hand turns a bolt, and further than the second drift tells nothing that a
# glance would not: common practice, no source.
LEAST_ARCMIN, MOST_ARCMIN = 0.2, 10.0


def allowed_by(task: Task, vantage: Vantage, aim_altitude_rad: float = 0.0) -> Allowed | None:
    """None when no alignment keeps the limit. Raises `UnusableTask` when the target is not up."""
    found = tolerance(task, vantage, aim_altitude_rad)
    if not found.possible or found.largest_error_arcmin <= 0.0:
        return None
    arcmin = rounded_down(min(max(found.largest_error_arcmin, LEAST_ARCMIN), MOST_ARCMIN))
    return Allowed(arcmin, _sentence(task, arcmin, found.largest_error_arcmin))


def _sentence(task: Task, arcmin: float, largest_arcmin: float) -> str:
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
