"""What the Field rotation page asks to be worked out."""

from __future__ import annotations

from dataclasses import dataclass

from app.pages.rotation.figures import derotator, figure, frame
from app.session.around import Around
from app.session.evening import Evening
from app.session.plans import Plans
from core.imaging.rotationdrive import Derotator
from core.imaging.rotationexposure import Frame
from core.sky.targets import Target

WEDGE, PLATFORM = "wedge", "platform"


@dataclass(frozen=True)
class Stack:
    """A series of exposures: minutes of light in all, seconds of one (NaN: the longest that keeps
    the limit all the time), seconds between two.
    """

    total_min: float
    exposure_s: float
    between_s: float


@dataclass(frozen=True)
class Tilted:
    """A wedge or platform: NaN for a latitude that is the site's own."""

    kind: str
    latitude_deg: float
    azimuth_deg: float


@dataclass(frozen=True, eq=False)
class Question:
    """`moment_utc_s`: the moment picked, NaN before one was."""

    around: Around
    target: Target | None
    now_utc_s: float
    moment_utc_s: float
    frame: Frame
    smear_px: float
    drive_deg_per_s: float
    derotator: Derotator
    stack: Stack
    tilted: Tilted


def question(evening: Evening, moment_utc_s: float) -> Question | None:
    """None while no site is given."""
    around = evening.around()
    if around is None:
        return None
    plans = evening.plans
    return Question(
        around=around,
        target=plans.target(),
        now_utc_s=evening.now(),
        moment_utc_s=moment_utc_s,
        frame=frame(plans),
        smear_px=figure(plans, "smear_px"),
        drive_deg_per_s=figure(plans, "drive_deg_per_s"),
        derotator=derotator(plans),
        stack=_stack(plans),
        tilted=_tilted(plans),
    )


def _stack(plans: Plans) -> Stack:
    names = ("stack_min", "rotation_exposure_s", "rotation_between_s")
    return Stack(*(figure(plans, name) for name in names))


def _tilted(plans: Plans) -> Tilted:
    kind = plans.word("tilted", WEDGE)
    return Tilted(kind, figure(plans, "set_latitude_deg"), figure(plans, "set_azimuth_deg"))
