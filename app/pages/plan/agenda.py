"""Everything that happens tonight, as lines in order of time."""

from __future__ import annotations

from app.pages.plan.pictures import plainly
from app.pages.plan.study import Study
from app.widgets.nightframe import shown_span
from app.widgets.nightpicture import clock_words
from core.language import say
from core.night.timeline import About, Bar
from core.sky.clocks import Zone


def agenda(study: Study, zone: Zone) -> list[str]:
    """Times, then what happens; of the checklist the steps from an hour before sunset on."""
    begin, end = shown_span(study.night)
    lines = [
        (mark.utc_s, f"{_at(zone, mark.utc_s)}  {_whose(study, mark.about, mark.text)}")
        for mark in study.line.marks
        if begin <= mark.utc_s <= end or mark.about is About.MOON
    ]
    lines += [
        (
            bar.begin_utc_s,
            f"{_span(study, zone, bar)}  {_whose(study, bar.about, bar.text)}",
        )
        for bar in study.line.bars
    ]
    lines += [
        (one.begin_utc_s, f"{_at(zone, one.begin_utc_s)}  ☐ {say(one.step.text)}")
        for one in study.checklist.planned
        if one.begin_utc_s is not None and begin <= one.begin_utc_s <= end
    ]
    return [words for _, words in sorted(lines, key=lambda line: line[0])]


def _span(study: Study, zone: Zone, bar: Bar) -> str:
    if study.night.is_whole((bar.begin_utc_s, bar.end_utc_s)):
        return say("Noon to noon")
    begin, end = _at(zone, bar.begin_utc_s), _at(zone, bar.end_utc_s)
    return say("{begin} to {end}", begin=begin, end=end)


def _at(zone: Zone, utc_s: float) -> str:
    return clock_words(zone, utc_s)


def _whose(study: Study, about: About, text: str) -> str:
    """With the target's name where the time line went without it."""
    if about in (About.TARGET, About.MOUNT) and study.aim is not None:
        name = study.aim.curve.target.name.partition(",")[0]
        return f"{name}{text}" if text.startswith(":") else f"{name} {text.lstrip()}"
    return plainly(text)
