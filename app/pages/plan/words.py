"""The answer of the Night plan page in figures and words."""

from __future__ import annotations

import math
from datetime import datetime

from app.pages.plan.study import PlanStudy, TargetNight
from app.ui.text import Fact, span_words
from app.ui.timeline import clock_words
from core.language import marked, say
from core.mount.equipment import MountKind
from core.night.darkness import Span
from core.sky.almanac import Light
from core.sky.clocks import Zone

_MONTHS = (
    *(marked("January"), marked("February"), marked("March"), marked("April"), marked("May")),
    *(marked("June"), marked("July"), marked("August"), marked("September"), marked("October")),
    *(marked("November"), marked("December")),
)


def facts(study: PlanStudy | None, zone: Zone) -> tuple[Fact, Fact, Fact]:
    """Darkness, the target at its highest, the flip."""
    if study is None:
        return Fact("–"), Fact("–"), Fact("–")
    return _darkness(study, zone), _highest(study, zone), _flip(study, zone)


def date_words(study: PlanStudy, zone: Zone) -> str:
    """Which night it is, with whatever month and year change in it."""
    begin, end = zone.civil(study.night.begin_utc_s), zone.civil(study.night.end_utc_s)
    is_one_month = begin.month == end.month
    first = say("{day}", day=begin.day) if is_one_month else _day_words(begin)
    if begin.year != end.year:
        first = say("{day} {year}", day=first, year=begin.year)
    last = say("{day} {year}", day=_day_words(end), year=end.year)
    return say("Night from {begin} to {end}.", begin=first, end=last)


def _day_words(date: datetime) -> str:
    return say("{day} {month}", day=date.day, month=say(_MONTHS[date.month - 1]))


def _darkness(study: PlanStudy, zone: Zone) -> Fact:
    spans, light = study.night.usable_spans, study.night.usable_light
    if not spans:
        return Fact(say("none"), say("it stays too light for stars"))
    longest = max(spans, key=_length)
    if study.night.is_whole(longest):
        return Fact(say("all day"), say("from noon to noon"))
    until = say(
        "until {time}, {span}",
        time=clock_words(zone, longest[1]),
        span=span_words(_length(longest)),
    )
    if light is not None and light is not Light.NIGHT:
        until = say("{until} of {light}", until=until, light=str(light))
    return Fact(clock_words(zone, longest[0]), until)


def _length(span: Span) -> float:
    return span[1] - span[0]


def _highest(study: PlanStudy, zone: Zone) -> Fact:
    if study.aim is None:
        return Fact("–", say("choose a target"))
    found = study.aim.curve.highest(study.night.usable_spans)
    if found is None:
        return Fact(say("never"), _why_never(study, study.aim))
    utc_s, altitude = found
    hours = sum(_length(s) for s in study.aim.curve.clear_spans(study.night.usable_spans))
    words = say(
        "at {time}; clear for {span}", time=clock_words(zone, utc_s), span=span_words(hours)
    )
    return Fact(f"{altitude:.0f}°", words)


def _why_never(study: PlanStudy, aim: TargetNight) -> str:
    best = float(aim.curve.altitude_deg.max())
    if best <= 0.0:
        return say("up: it stays {depth:.0f}° or more below the horizon", depth=math.floor(-best))
    if not study.night.usable_spans:
        return say("in the dark: there is no darkness")
    return say("clear and high enough in the dark")


def _flip(study: PlanStudy, zone: Zone) -> Fact:
    if study.aim is None or study.aim.flip is None:
        return Fact("–", "")
    plan = study.aim.flip
    if study.question.kind is not MountKind.GERMAN_EQUATORIAL:
        return Fact(say("none"), say("this kind of mount does not flip"))
    if not plan.needed:
        return Fact(say("none"), say("needed in this session"))
    first = plan.interruptions[0]
    words = say("{span} without exposing", span=span_words(first.lost_s))
    if len(plan.interruptions) > 1:
        words = say("the first of {count}", count=len(plan.interruptions))
    return Fact(clock_words(zone, first.turns_utc_s), words)
