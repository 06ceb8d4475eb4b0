"""Where the night stands: the checklist for tonight, what is done of it, and what comes next."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np

from app.night.notes import planned_flip, session_of
from app.night.observing import ObservingContext
from app.night.plan import night as night_at
from core.mount.equipment import MountKind, Purpose
from core.night.checklist import (
    Checklist,
    Circumstances,
    KnownFact,
    Moments,
    OwnStep,
    Power,
    StepMark,
    build,
    hemisphere_of,
)
from core.night.darkness import Night
from core.night.flip import ExposureSeries, FlipPlan, Limits
from core.night.plan import curve
from core.night.progress import AxisNow, NightNow, night_now
from core.sky.bodies import Body, course
from core.sky.targets import Target

FLIP_STEP_S = 120.0
MOON_STEPS = 48


@dataclass(frozen=True)
class FlipAsked:
    """`is_seen`: the person has looked at the plan; `done`: how many flips were done and the target
    centred again.
    """

    limits: Limits
    series: ExposureSeries
    lowest_deg: float
    is_seen: bool
    done: int


@dataclass(frozen=True, eq=False)
class StatusQuestion:
    """`begin_utc_s`: when the person wants to begin with the target, None for as soon as can be.
    `temperature_c`: the lowest expected, None when nobody knows.
    """

    around: ObservingContext
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
    marks: Mapping[str, StepMark]
    facts: frozenset[KnownFact]
    axis: AxisNow
    flip: FlipAsked


@dataclass(frozen=True, eq=False)
class NightStatus:
    """What the question comes to. `facts`: those asked with and those found; `reasons`: why one is
    so although nothing was done.
    """

    question: StatusQuestion
    facts: frozenset[KnownFact]
    reasons: Mapping[KnownFact, str]
    night: Night
    checklist: Checklist
    now: NightNow
    moon_lit: float


def stand(question: StatusQuestion) -> NightStatus:
    """For a worker thread: the almanac takes some tenths of a second the first time."""
    night = night_at(question.around.site, question.now_utc_s)
    begin = _within(question.begin_utc_s, night)
    flip = _flip(question, night)
    flips = () if flip is None else flip.interruptions
    lit = _moon_lit(night)
    circumstances = Circumstances(
        purpose=question.purpose,
        mount=question.mount,
        power=question.power,
        hemisphere=hemisphere_of(question.around.site.latitude_deg),
        temperature_c=question.temperature_c,
        moon_lit=lit,
        is_guided=question.is_guided,
        needs_flip=bool(flips),
        spares_flip=flip is not None and not flips,
        cool_down_min=question.cool_down_min,
    )
    moments = Moments.of(
        night, target_utc_s=begin, flip_utc_s=flips[0].turns_utc_s if flips else None
    )
    checklist = build(circumstances, moments, question.own)
    facts = question.facts | _flip_facts(question, flip)
    reasons = {} if flip is None or flips else {KnownFact.FLIP_DONE: flip.reason}
    now = night_now(night, checklist, question.marks, facts, question.axis, question.now_utc_s)
    return NightStatus(question, facts, reasons, night, checklist, now, lit)


def _within(utc_s: float | None, night: Night) -> float | None:
    """A time of another night says nothing about this one."""
    return utc_s if utc_s is not None and night.begin_utc_s <= utc_s < night.end_utc_s else None


def _flip(question: StatusQuestion, night: Night) -> FlipPlan | None:
    """Of a German equatorial mount's target; None where there is none to plan."""
    asked, target = question.flip, question.target
    if target is None or question.mount is not MountKind.GERMAN_EQUATORIAL:
        return None
    around = question.around
    times = np.arange(night.begin_utc_s, night.end_utc_s + FLIP_STEP_S, FLIP_STEP_S)
    seen = curve(
        *(target, around.site, around.air, times, around.horizon), lowest_deg=asked.lowest_deg
    )
    begin_utc_s = math.nan if question.begin_utc_s is None else question.begin_utc_s
    session = session_of(seen, night, begin_utc_s, math.nan)
    fixed = target.held_still(around.site, night.middle_utc_s)
    plan, _ = planned_flip(fixed, around, session, question.mount, asked.limits, asked.series)
    return plan


def _flip_facts(question: StatusQuestion, plan: FlipPlan | None) -> frozenset[KnownFact]:
    """A flip that is not needed has nothing left to do."""
    if plan is None:
        return frozenset()
    seen = {KnownFact.FLIP_PLANNED} if question.flip.is_seen else set()
    if question.flip.done >= len(plan.interruptions):
        seen.add(KnownFact.FLIP_DONE)
    return frozenset(seen)


def _moon_lit(night: Night) -> float:
    """The lit share of its disc if it is up while it is dark enough to work, else 0."""
    for begin, end in night.usable_spans:
        times = np.linspace(begin, end, MOON_STEPS)
        seen = course(Body.MOON, night.site, times)
        if (seen.true_altitude_deg > 0.0).any():
            return night.moon_lit
    return 0.0
