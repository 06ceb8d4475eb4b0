"""What the session asks of the computation, and what comes back."""

from __future__ import annotations

import gc
from dataclasses import dataclass
from functools import cache
from typing import TYPE_CHECKING

from app.courtesy import let_the_window_pass
from core.alignment.driftlog.records import Leg
from core.alignment.priors import USUAL, Priors
from core.sky.site import Air, Site

if TYPE_CHECKING:  # these bring scipy along, which the first window must not wait for
    from app.session.guide.afterturn import Surprise
    from app.session.guide.state import North
    from app.session.guide.turn import TurnMade
    from core.alignment.advice import Advice
    from core.alignment.aim import Aim
    from core.alignment.axis.estimate import AxisKnowledge
    from core.alignment.axis.solution import Solution
    from core.alignment.guide.judgement import Forecast, Judgement


@dataclass(frozen=True, eq=False)
class Question:
    """Everything one computation needs. `revision` tells which state of the night it is about.

    `before`: what is known of the axis from earlier states and `last_turn`. `doubtful_legs`: those
    before the last turn, when both together are to tell which way north is. `priors`: what is
    granted of reticle, tube and drive.
    """

    revision: int
    legs: tuple[Leg, ...]
    site: Site
    air: Air
    aim: Aim
    target_arcmin: float
    watching: str | None
    before: AxisKnowledge | None = None
    last_turn: TurnMade | None = None
    doubtful_legs: tuple[Leg, ...] = ()
    priors: Priors = USUAL

    def rivals(self) -> tuple[AxisKnowledge, ...]:
        """What would be known before, had the last turn gone the other way."""
        if self.before is None or self.last_turn is None:
            return ()
        return tuple(known for _, known in self.last_turn.other_ways(self.site))


@dataclass(frozen=True, eq=False)
class Answer:
    """Results for the question of that `revision`, or the sentence that says why there are none."""

    revision: int
    solution: Solution | None = None
    advice: Advice | None = None
    forecast: Forecast | None = None
    judgement: Judgement | None = None
    surprise: Surprise | None = None
    north: North | None = None
    problem: str | None = None


def work_out(question: Question) -> Answer:
    """Solve, advise and forecast; slow, so it runs in the worker thread."""
    # Imported here so that scipy loads in the worker, after the window is up.
    from app.session.guide.afterturn import surprise
    from app.session.guide.judging import next_step, north_by_turning
    from core.alignment.advice import advise
    from core.alignment.axis.solution import solve
    from core.alignment.drift.prepared import UnusableLegs
    from core.alignment.guide.judgement import minutes_left

    _spare_the_libraries()
    try:
        solution = solve(
            question.legs,
            question.site,
            question.air,
            question.before,
            let_the_window_pass,
            priors=question.priors,
            rivals=question.rivals(),
        )
    except UnusableLegs as reason:
        return Answer(question.revision, problem=str(reason))
    advice = advise(solution, question.aim, question.target_arcmin)
    watching = question.watching
    forecast = minutes_left(solution, watching, question.target_arcmin) if watching else None
    return Answer(
        question.revision,
        solution,
        advice,
        forecast,
        next_step(question, solution),
        surprise(solution, question.last_turn, question.site),
        north_by_turning(question),
    )


@cache
def _spare_the_libraries() -> None:
    """Once they are loaded: going through them at every full collection takes some 50 ms."""
    gc.freeze()
