"""Where the night stands: the checklist for tonight, what is done of it, and what comes next."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np

from app.session.around import Around
from app.session.evening import night as night_at
from core.mount.equipment import MountKind, Purpose
from core.night.checklist import Checklist, Circumstances, build, hemisphere_of
from core.night.checklistmarks import Mark
from core.night.checklistown import OwnStep
from core.night.checkliststeps import Fact, Power
from core.night.checklisttimes import Moments
from core.night.plannight import Night
from core.night.plantarget import Target
from core.night.tonight import AxisNow, NightNow, night_now
from core.sky import place
from core.sky.bodies import Body, course

FLIP_STEPS = 400  # across a night: two minutes
MOON_STEPS = 48


@dataclass(frozen=True, eq=False)
class Question:
    """`begin_utc_s`: when the person wants to begin with the target, None for as soon as can be.
    `temperature_c`: the lowest expected, None when nobody knows.
    """

    around: Around
    now_utc_s: float
    purpose: Purpose
    mount: MountKind
    power: Power
    is_guided: bool
    cool_down_min: float
    temperature_c: float | None
    target: Target | None
    begin_utc_s: float | None
    own: tuple[OwnStep, ...]
    marks: Mapping[str, Mark]
    facts: frozenset[Fact]
    axis: AxisNow


@dataclass(frozen=True, eq=False)
class Standing:
    """What the question comes to."""

    question: Question
    night: Night
    checklist: Checklist
    now: NightNow
    moon_lit: float


def stand(question: Question) -> Standing:
    """For a worker thread: the almanac takes some tenths of a second the first time."""
    night = night_at(question.around.site, question.now_utc_s)
    begin = _within(question.begin_utc_s, night)
    flip = _flip_utc_s(question, night, begin)
    lit = _moon_lit(night)
    circumstances = Circumstances(
        purpose=question.purpose,
        mount=question.mount,
        power=question.power,
        hemisphere=hemisphere_of(question.around.site.latitude_deg),
        temperature_c=question.temperature_c,
        moon_lit=lit,
        is_guided=question.is_guided,
        needs_flip=flip is not None,
        cool_down_min=question.cool_down_min,
    )
    moments = Moments.of(night, target_utc_s=begin, flip_utc_s=flip)
    checklist = build(circumstances, moments, question.own)
    now = night_now(
        night, checklist, question.marks, question.facts, question.axis, question.now_utc_s
    )
    return Standing(question, night, checklist, now, lit)


def _within(utc_s: float | None, night: Night) -> float | None:
    """A time of another night says nothing about this one."""
    return utc_s if utc_s is not None and night.begin_utc_s <= utc_s < night.end_utc_s else None


def _flip_utc_s(question: Question, night: Night, begin_utc_s: float | None) -> float | None:
    """When the target crosses the meridian in the dark; None when no flip comes."""
    is_german = question.mount is MountKind.GERMAN_EQUATORIAL
    if question.target is None or not night.usable_spans or not is_german:
        return None
    site = question.around.site
    still = question.target.held_still(site, night.middle_utc_s)
    begin = night.usable_spans[0][0] if begin_utc_s is None else begin_utc_s
    times = np.linspace(begin, night.usable_spans[-1][1], FLIP_STEPS)
    hour_angle, _ = place.hour_angle_and_declination(still.ra_deg, still.dec_deg, site, times)
    east_west = np.arctan2(np.sin(hour_angle), np.cos(hour_angle))
    crossed = np.flatnonzero((east_west[:-1] < 0.0) & (east_west[1:] >= 0.0))
    is_upper = [int(one) for one in crossed if abs(east_west[one]) < 1.0]
    return float(times[is_upper[0] + 1]) if is_upper else None


def _moon_lit(night: Night) -> float:
    """The lit share of its disc if it is up while it is dark enough to work, else 0."""
    for begin, end in night.usable_spans:
        times = np.linspace(begin, end, MOON_STEPS)
        seen = course(Body.MOON, night.site, times)
        if (seen.true_altitude_deg > 0.0).any():
            return night.moon_lit
    return 0.0
