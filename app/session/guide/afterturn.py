"""What to say when the axis is not where the last turn should have brought it."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

import numpy as np

from app.session.guide.turn import TurnMade
from core.alignment.axis.estimate import AxisKnowledge
from core.alignment.axis.solution import Solution
from core.language import say
from core.sky.site import Site

UNEXPECTED = "unexpected axis"  # the code of the note in a solution
AT_MOST = 30.0  # χ² with two degrees of freedom; few readings make every one large


class Mishap(Enum):
    """What may have happened."""

    OTHER_WAY = "the bolts were turned the other way"
    MOVED = "the mount was moved"


@dataclass(frozen=True)
class Surprise:
    """`sentence` for the person."""

    mishap: Mishap
    sentence: str


def surprise(solution: Solution, made: TurnMade | None, site: Site) -> Surprise | None:
    """None while the axis is where it should be."""
    if made is None or made.turn is None or made.was is None:
        return None
    if not any(note.code == UNEXPECTED for note in solution.notes):
        return None
    now, told = solution.knowledge, made.expected(site)
    for bolt, other in made.other_ways(site):
        if told is not None and other.disagreement(now) < min(told.disagreement(now), AT_MOST):
            return Surprise(Mishap.OTHER_WAY, _other_way(bolt, made.was, now))
    return Surprise(
        Mishap.MOVED,
        say(
            "The axis is not where this turn should have brought it. If the tripod "
            "was knocked or moved, say so; otherwise go on, what was known before is "
            "no longer used."
        ),
    )


def _other_way(bolt: str, was: AxisKnowledge, now: AxisKnowledge) -> str:
    if not bolt:
        grew = float(np.linalg.norm(now.sky_arcmin) - np.linalg.norm(was.sky_arcmin))
        what = say("The error")
    else:
        index = 0 if bolt == "azimuth" else 1
        grew = float(abs(now.sky_arcmin[index]) - abs(was.sky_arcmin[index]))
        what = say("The azimuth error") if bolt == "azimuth" else say("The altitude error")
    if grew > 0.0:
        return say(
            "{what} grew by {size:.0f}′: that was the other direction.", what=what, size=grew
        )
    return say(
        "{what} went {size:.0f}′ past the pole: that was the other direction.",
        what=what,
        size=abs(grew),
    )
