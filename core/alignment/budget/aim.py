"""Where between the true and the refracted pole the axis serves one target best."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from scipy.optimize import minimize_scalar

from core.alignment.budget.field import Exposures
from core.alignment.budget.task import Task, Vantage
from core.alignment.budget.watched import Watched
from core.alignment.budget.words import near, pixels
from core.alignment.geometry import ARCMIN_PER_RAD
from core.language import say

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
    sentence = _sentence(task, fraction, above_arcmin, size, ends)
    return BestAim(fraction, above_arcmin, size, *ends, sentence)


def _sentence(
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
