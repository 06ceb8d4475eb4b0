"""The answer of the Night plan page in figures and words."""

from __future__ import annotations

from app.pages.plan.study import Study
from app.widgets.facts import Fact
from app.widgets.nightpicture import clock_words
from app.widgets.spans import span_words
from core.mount.equipment import MountKind
from core.night.plannight import Span
from core.sky.almanac import Light
from core.sky.zones import Zone


def facts(study: Study | None, zone: Zone) -> tuple[Fact, Fact, Fact]:
    """Darkness, the target at its highest, the flip."""
    if study is None:
        return Fact("–"), Fact("–"), Fact("–")
    return _darkness(study, zone), _highest(study, zone), _flip(study, zone)


def date_words(study: Study, zone: Zone) -> str:
    """Which night it is."""
    begin, end = zone.civil(study.night.begin_utc_s), zone.civil(study.night.end_utc_s)
    return f"Night from {begin.day} to {end.day} {end:%B} {end.year}."


def _darkness(study: Study, zone: Zone) -> Fact:
    spans, light = study.night.usable_spans, study.night.usable_light
    if not spans:
        return Fact("none", "it stays too light for stars")
    longest = max(spans, key=_length)
    until = f"until {clock_words(zone, longest[1])}, {span_words(_length(longest))}"
    if light is not None and light is not Light.NIGHT:
        until += f" of {light.value}"
    return Fact(clock_words(zone, longest[0]), until)


def _length(span: Span) -> float:
    return span[1] - span[0]


def _highest(study: Study, zone: Zone) -> Fact:
    if study.aim is None:
        return Fact("–", "choose a target")
    found = study.aim.curve.highest(study.night.usable_spans)
    if found is None:
        return Fact("never", "clear and high enough in the dark")
    utc_s, altitude = found
    hours = sum(_length(s) for s in study.aim.curve.clear_spans(study.night.usable_spans))
    return Fact(f"{altitude:.0f}°", f"at {clock_words(zone, utc_s)}; clear for {span_words(hours)}")


def _flip(study: Study, zone: Zone) -> Fact:
    if study.aim is None or study.aim.flip is None:
        return Fact("–", "")
    plan = study.aim.flip
    if study.question.kind is not MountKind.GERMAN_EQUATORIAL:
        return Fact("none", f"{study.question.kind.value} mounts do not flip")
    if not plan.needed:
        return Fact("none", "needed in this session")
    first = plan.interruptions[0]
    words = f"{span_words(first.lost_s)} without light"
    if len(plan.interruptions) > 1:
        words = f"the first of {len(plan.interruptions)}"
    return Fact(clock_words(zone, first.turns_utc_s), words)
