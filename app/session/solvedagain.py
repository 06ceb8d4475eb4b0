"""The legs of a night that is over, solved again with other choices; the night stays as it is."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from core.alignment.aim import Aim
from core.alignment.driftlog.records import Leg
from core.alignment.priors import Priors
from core.language import say
from core.sky.site import Air, Site

if TYPE_CHECKING:
    from core.alignment.advice import Advice
    from core.alignment.axis.singlestar import Combination


@dataclass(frozen=True, eq=False)
class Again:
    """What to solve, and what is granted of reticle, tube and drive."""

    legs: tuple[Leg, ...]
    site: Site
    air: Air
    aim: Aim
    priors: Priors


@dataclass(frozen=True, eq=False)
class SolvedAgain:
    """`problem`: a sentence when the legs cannot be solved; then there is no advice."""

    advice: Advice | None
    combination: Combination | None
    notes: tuple[str, ...]
    problem: str = ""


def solve_again(question: Again) -> SolvedAgain:
    """For a worker thread."""
    from core.alignment.advice import advise
    from core.alignment.axis.solution import solve
    from core.alignment.drift.prepared import UnusableLegs

    if not question.legs:
        return SolvedAgain(None, None, (), say("No leg is chosen: choose at least one."))
    try:
        solution = solve(question.legs, question.site, question.air, priors=question.priors)
    except UnusableLegs as reason:
        return SolvedAgain(None, None, (), str(reason))
    notes = tuple(note.text for note in solution.notes)
    return SolvedAgain(advise(solution, question.aim), solution.combination, notes)
