"""Tonight's state at one instant, as pages see it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from app.session.priors import NorthSet
from core.alignment.driftlog.records import Leg
from core.alignment.guide.goal import Goal
from core.alignment.priors import Priors
from core.sky.site import Air, Site

if TYPE_CHECKING:  # these bring scipy along, which the first window must not wait for
    from app.session.guide.view import GuideView
    from core.alignment.advice import Advice
    from core.alignment.aim import Aim
    from core.alignment.axis.solution import Solution
    from core.alignment.guide.judgement import Forecast


@dataclass(frozen=True, eq=False)
class Snapshot:
    """What is known at one instant; it never changes afterwards.

    `legs`: those of the present axis state, discarded ones left out; their arrays are read-only
    views. `watching`: label of the leg under way. `solution`, `advice`, `forecast`: from the last
    computation of this axis state; `solution_is_stale` when the legs or the settings have changed
    since in more than by new readings, or when the last computation failed. `problem`: one or
    several sentences for the person, None when all is well. `guide`: where the person stands in the
    procedure. `north_set`: how well north of the eyepiece or camera was set. `priors`: what the
    computation is granted of it, the tube and the drive. `exchanged`: labels of legs of which north
    and south are read exchanged.
    """

    site: Site | None
    air: Air | None
    aim: Aim
    goal: Goal
    axis_state: int
    legs: tuple[Leg, ...]
    watching: str | None
    solution: Solution | None
    advice: Advice | None
    forecast: Forecast | None
    solution_is_stale: bool
    problem: str | None
    guide: GuideView
    north_set: NorthSet
    priors: Priors
    exchanged: frozenset[str] = frozenset()

    @property
    def target_arcmin(self) -> float:
        """How near the axis is to come, on the sky."""
        return self.goal.arcmin
