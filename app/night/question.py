"""What the night asks of the computation, what comes back, and the person's next step."""

from __future__ import annotations

import gc
from dataclasses import dataclass
from functools import cache
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from app.night.snapshot import ADVISED_TURN, KnownNorth, aim_on_sky
from app.workers.yielding import let_the_window_pass
from core.alignment.axis.legrate import LegTrend
from core.alignment.axis.solution import Solution
from core.alignment.drift.prepared import UnusableLegs
from core.alignment.driftlog.records import Leg
from core.alignment.guide import fieldnorth
from core.alignment.guide.bolts import SEEN_TURN
from core.alignment.guide.fieldnorth import find_north
from core.alignment.guide.judgement import Judgement, Next, judge
from core.alignment.guide.nextstar import direction_shown, flexure_arcmin
from core.alignment.priors import USUAL, Priors
from core.sky.site import Air, Site

if TYPE_CHECKING:  # these bring scipy along, which the first window must not wait for
    from app.night.snapshot import Surprise, TurnMade
    from core.alignment.axis.evidence import PriorAxis
    from core.alignment.goal import Aim
    from core.alignment.guide.judgement import Forecast
    from core.alignment.words import Advice


# What a solution means for the person's next step; part of the computation beside the window.

Floats = NDArray[np.float64]

_NOBODY_KNOWS = 0.5  # chance, where legs contradict one another


def next_step(question: AxisQuestion, solution: Solution) -> Judgement:
    """Watch on, change the star, turn, or stop; another star may settle a contradiction."""
    if solution.is_contradictory:
        return Judgement(Next.OTHER_STAR, _NOBODY_KNOWS)
    read = [leg for leg in question.legs if leg.label == question.watching]
    shows_turn = bool(read) and read[0].east_arcsec is not None
    told = [leg for leg in solution.legs if leg.label == question.watching]
    return judge(
        solution.knowledge,
        _shown(told[0], question.site.latitude_deg) if told else None,
        aim_on_sky(question.aim, question.site, question.air),
        question.target_arcmin,
        SEEN_TURN if shows_turn else ADVISED_TURN,
        flexure_arcmin(question.priors, question.site.latitude_deg),
        told[0].minutes if told else 0.0,
    )


def _shown(leg: LegTrend, latitude_deg: float) -> Floats:
    """Unit direction on the sky that the star of a leg shows."""
    shown = direction_shown(leg.hour_angle_deg, latitude_deg)
    return np.asarray(shown / np.linalg.norm(shown))


def north_by_turning(question: AxisQuestion) -> KnownNorth | None:
    """Which way north is, from the legs before and after the last turn; None while undecided."""
    made = question.last_turn
    if not question.doubtful_legs or made is None or made.turn is None:
        return None
    accuracy = made.accuracy or ADVISED_TURN
    try:
        found = find_north(
            question.doubtful_legs,
            made.turn,
            question.legs,
            question.site,
            question.air,
            made.base,
            accuracy,
            question.priors,
        )
    except UnusableLegs:
        return None
    known = {
        fieldnorth.FieldNorth.AS_READ: KnownNorth.TRUSTED,
        fieldnorth.FieldNorth.REVERSED: KnownNorth.EXCHANGED,
    }
    return known.get(found)


# What the session asks of the computation, and what comes back.


@dataclass(frozen=True, eq=False)
class AxisQuestion:
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
    before: PriorAxis | None = None
    last_turn: TurnMade | None = None
    doubtful_legs: tuple[Leg, ...] = ()
    priors: Priors = USUAL

    def rivals(self) -> tuple[PriorAxis, ...]:
        """What would be known before, had the last turn gone the other way."""
        if self.before is None or self.last_turn is None:
            return ()
        return tuple(known for _, known in self.last_turn.other_ways(self.site))


@dataclass(frozen=True, eq=False)
class AxisAnswer:
    """Results for the question of that `revision`, or the sentence that says why there are none."""

    revision: int
    solution: Solution | None = None
    advice: Advice | None = None
    forecast: Forecast | None = None
    judgement: Judgement | None = None
    surprise: Surprise | None = None
    north: KnownNorth | None = None
    problem: str | None = None


def work_out(question: AxisQuestion) -> AxisAnswer:
    """Solve, advise and forecast; slow, so it runs in the worker thread."""
    # Imported here so that scipy loads in the worker, after the window is up.
    from app.night.snapshot import surprise
    from core.alignment.axis.solution import solve
    from core.alignment.drift.prepared import UnusableLegs
    from core.alignment.guide.judgement import minutes_left
    from core.alignment.words import advise

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
        return AxisAnswer(question.revision, problem=str(reason))
    advice = advise(solution, question.aim, question.target_arcmin)
    watching = question.watching
    forecast = minutes_left(solution, watching, question.target_arcmin) if watching else None
    return AxisAnswer(
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
