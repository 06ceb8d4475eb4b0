"""What the Night plan page asks to be worked out."""

from __future__ import annotations

from dataclasses import dataclass

from app.session.around import Around
from app.session.evening import Evening
from app.session.occasion import mount_kind, power, purpose
from app.session.planfigures import figure, limits, newtonian, observer, series
from core.mount.equipment import MountKind, Purpose
from core.night.checklist import OwnStep, Power
from core.night.eyepiece import Newtonian, Observer
from core.night.flip import Limits, Series
from core.sky.targets import Target

ALL, MESSIER = "all", "messier"


@dataclass(frozen=True)
class Wish:
    """What the page keeps to itself, for one evening: Unix seconds, NaN for not said.

    `moment_utc_s`: what is looked at; the session's beginning and end.
    """

    moment_utc_s: float
    begin_utc_s: float
    end_utc_s: float


@dataclass(frozen=True, eq=False)
class Question:
    """`list_of`: which objects the best are chosen from. `star_count`: reference stars, 2 or 3."""

    around: Around
    target: Target | None
    now_utc_s: float
    wish: Wish
    kind: MountKind
    lowest_deg: float
    list_of: str
    limits: Limits
    series: Series
    newtonian: Newtonian
    observer: Observer
    star_count: int
    drive_deg_per_s: float
    purpose: Purpose
    power: Power
    is_guided: bool
    cool_down_min: float
    own: tuple[OwnStep, ...]


def question(evening: Evening, wish: Wish, own: tuple[OwnStep, ...]) -> Question | None:
    """None while no site is given. `own`: the person's steps of the checklist."""
    around = evening.around()
    if around is None:
        return None
    plans = evening.plans
    return Question(
        around=around,
        target=plans.target(),
        now_utc_s=evening.now(),
        wish=wish,
        kind=mount_kind(plans),
        lowest_deg=figure(plans, "lowest_deg"),
        list_of=plans.word("list_of", MESSIER),
        limits=limits(plans),
        series=series(plans),
        newtonian=newtonian(plans),
        observer=observer(plans),
        star_count=2 if plans.word("star_count", "3") == "2" else 3,
        drive_deg_per_s=plans.number("drive_deg_per_s", 3.0),
        purpose=purpose(plans),
        power=power(plans),
        is_guided=plans.word("is_guided", "yes") == "yes",
        cool_down_min=plans.number("cool_down_min", 60.0),
        own=own,
    )
