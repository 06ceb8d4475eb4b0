"""What a solution means for the person's next step; part of the computation beside the window."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from app.session.guide.state import North
from app.session.guide.turn import ADVISED_TURN
from app.session.guide.view import aim_on_sky
from core.alignment.axis.legrate import LegTrend
from core.alignment.axis.solution import Solution
from core.alignment.drift.prepared import UnusableLegs
from core.alignment.guide import fieldnorth
from core.alignment.guide.bolts import SEEN_TURN
from core.alignment.guide.fieldnorth import find_north
from core.alignment.guide.judgement import Judgement, Next, judge
from core.alignment.guide.nextstar import direction_shown, flexure_arcmin

if TYPE_CHECKING:
    from app.session.question import Question

Floats = NDArray[np.float64]

_NOBODY_KNOWS = 0.5  # chance, where legs contradict one another


def next_step(question: Question, solution: Solution) -> Judgement:
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


def north_by_turning(question: Question) -> North | None:
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
        fieldnorth.North.AS_READ: North.TRUSTED,
        fieldnorth.North.REVERSED: North.EXCHANGED,
    }
    return known.get(found)
