"""What the session asks of the computation, and what comes back."""

from __future__ import annotations

import gc
from dataclasses import dataclass
from functools import cache
from typing import TYPE_CHECKING

from core.alignment.driftlog import Leg
from core.sky.site import Air, Site

if TYPE_CHECKING:  # these bring scipy along, which the first window must not wait for
    from core.alignment.advice import Advice
    from core.alignment.aim import Aim
    from core.alignment.forecast import Forecast
    from core.alignment.solution import Solution


@dataclass(frozen=True, eq=False)
class Question:
    """Everything one computation needs. `revision` tells which state of the night it is about."""

    revision: int
    legs: tuple[Leg, ...]
    site: Site
    air: Air
    aim: Aim
    target_arcmin: float
    watching: str | None


@dataclass(frozen=True, eq=False)
class Answer:
    """Results for the question of that `revision`, or the sentence that says why there are none."""

    revision: int
    solution: Solution | None = None
    advice: Advice | None = None
    forecast: Forecast | None = None
    problem: str | None = None


def work_out(question: Question) -> Answer:
    """Solve, advise and forecast; slow, so it runs in the worker thread."""
    # Imported here so that scipy loads in the worker, after the window is up.
    from core.alignment.advice import advise
    from core.alignment.forecast import minutes_left
    from core.alignment.solution import UnusableLegs, solve

    _spare_the_libraries()
    try:
        solution = solve(question.legs, question.site, question.air)
    except UnusableLegs as reason:
        return Answer(question.revision, problem=str(reason))
    advice = advise(solution, question.aim)
    watching = question.watching
    forecast = minutes_left(solution, watching, question.target_arcmin) if watching else None
    return Answer(question.revision, solution, advice, forecast)


@cache
def _spare_the_libraries() -> None:
    """Once they are loaded: going through them at every full collection takes some 50 ms."""
    gc.freeze()
