"""Tonight as a question to the computation."""

from __future__ import annotations

from app.session.guide.procedure import Procedure
from app.session.guide.state import North
from app.session.question import Question
from app.session.tonight import Tonight
from core.alignment.driftlog.records import Leg
from core.sky.site import Air, Site


def question_of(
    revision: int,
    tonight: Tonight,
    procedure: Procedure,
    legs: tuple[Leg, ...],
    place: tuple[Site, Air],
) -> Question:
    """About these legs, as the night stands at a place."""
    asked = {leg.label for leg in legs}
    guide = procedure.guide
    is_doubtful = guide.north is North.UNKNOWN
    return Question(
        revision,
        legs,
        *place,
        tonight.aim,
        tonight.goal.arcmin,
        tonight.watching if tonight.watching in asked else None,
        None if is_doubtful else procedure.before(),
        guide.last_turn,
        tonight.previous_legs if is_doubtful else (),
        tonight.priors,
    )
