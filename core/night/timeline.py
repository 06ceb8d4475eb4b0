"""Everything that happens tonight, in one line of time: marks at moments, bars over spans."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum

from core.imaging.rotationdrive import Loss
from core.language import say
from core.night.darkness import Night, Span
from core.night.flip import FlipPlan
from core.night.plan import AlignmentMoment, AltitudeCurve, passes
from core.sky.almanac import Light


class About(Enum):
    """What an entry tells of, for its row on the screen."""

    SUN = "Sun and darkness"
    MOON = "Moon"
    TARGET = "target"
    MOUNT = "mount"
    ALIGNMENT = "alignment"
    STEP = "steps"


@dataclass(frozen=True)
class TimeMark:
    """Something at one moment; `text` without the time, which the screen writes in its own way.

    `is_twilight`: a twilight or the night begins or ends.
    """

    utc_s: float
    about: About
    text: str
    is_twilight: bool = False


@dataclass(frozen=True)
class Bar:
    """Something that lasts. `is_blind`: the mount cannot follow the target meanwhile."""

    begin_utc_s: float
    end_utc_s: float
    about: About
    text: str
    is_blind: bool = False


@dataclass(frozen=True)
class TimeLine:
    """In order of time. `sentences`: what is special about the whole night."""

    night: Night
    marks: tuple[TimeMark, ...]
    bars: tuple[Bar, ...]
    sentences: tuple[str, ...]


@dataclass(frozen=True)
class SetupStep:
    """Something to do before it is dark, and how long it takes."""

    text: str
    minutes: float


def time_line(
    night: Night,
    curves: Sequence[AltitudeCurve] = (),
    flips: Sequence[tuple[str, FlipPlan]] = (),
    zenith: Sequence[tuple[str, Loss]] = (),
    alignment: Sequence[AlignmentMoment] = (),
    steps: Sequence[SetupStep] = (),
) -> TimeLine:
    """Joins what the other parts found. `flips`, `zenith`: each with its target's name.

    `steps` are set back to back so that the last ends when usable darkness begins, or at sunset
    where there is none.
    """
    marks = [*_light_marks(night), *_moon_marks(night)]
    bars = [*_dark_bars(night), *_step_bars(night, steps)]
    for curve in curves:
        marks += _target_marks(night, curve)
        bars += _target_bars(night, curve)
    for name, plan in flips:
        bars += _flip_bars(name, plan)
    bars += [
        Bar(
            loss.enters_utc_s,
            loss.leaves_utc_s,
            About.MOUNT,
            say("{name} too near the zenith", name=name),
            is_blind=True,
        )
        for name, loss in zenith
    ]
    marks += [TimeMark(moment.utc_s, About.ALIGNMENT, moment.words) for moment in alignment]
    return TimeLine(
        night,
        tuple(sorted(marks, key=lambda mark: mark.utc_s)),
        tuple(sorted(bars, key=lambda bar: (bar.begin_utc_s, bar.end_utc_s))),
        night.sentences,
    )


def _light_marks(night: Night) -> list[TimeMark]:
    order = list(Light)
    marks, before = [], night.light.at_start
    for change in night.light.changes:
        darker = order.index(change.light) > order.index(before)
        is_sun = Light.DAY in (change.light, before)
        if is_sun:
            text = say("Sunset") if darker else say("Sunrise")
        elif darker:
            text = say("{light} begins", light=_at_beginning(change.light))
        else:
            text = say("{light} ends", light=_at_beginning(before))
        marks.append(TimeMark(change.utc_s, About.SUN, text, is_twilight=not is_sun))
        before = change.light
    return marks


def _at_beginning(light: Light) -> str:
    words = str(light)
    return words[:1].upper() + words[1:]


def _moon_marks(night: Night) -> list[TimeMark]:
    percent = 100.0 * night.moon_lit
    rise = say("Moonrise, {percent:.0f} % lit", percent=percent)
    setting = say("Moonset, {percent:.0f} % lit", percent=percent)
    rises = [TimeMark(one.utc_s, About.MOON, rise) for one in night.moon.rises]
    return rises + [TimeMark(one.utc_s, About.MOON, setting) for one in night.moon.sets]


def _dark_bars(night: Night) -> list[Bar]:
    light = night.usable_light
    name = "" if light is None else str(light)
    return [Bar(begin, end, About.SUN, name) for begin, end in night.usable_spans]


def _target_marks(night: Night, curve: AltitudeCurve) -> list[TimeMark]:
    target = curve.target
    if target.body is not None:
        return []
    span = night.begin_utc_s, night.end_utc_s
    found = passes(target.ra_deg, target.dec_deg, night.site, span)
    if found.stays_down:
        return []
    marks = [
        TimeMark(utc_s, About.TARGET, say("{target} on the meridian", target=target.name))
        for utc_s in found.transits
    ]
    if found.stays_up:
        marks += [
            TimeMark(
                utc_s,
                About.TARGET,
                say("{target} on the meridian below the pole", target=target.name),
            )
            for utc_s in found.lower_transits
        ]
    return marks


def _target_bars(night: Night, curve: AltitudeCurve) -> list[Bar]:
    return [
        Bar(begin, end, About.TARGET, say("{target} clear", target=curve.target.name))
        for begin, end in curve.clear_spans(night.usable_spans)
    ]


def _flip_bars(name: str, plan: FlipPlan) -> list[Bar]:
    bars = []
    for flip in plan.interruptions:
        earliest, latest = flip.crossing.earliest_utc_s, flip.crossing.latest_utc_s
        if earliest <= latest:
            window = say("{name}: flip possible", name=name)
        else:
            window = say("{name}: mount must wait", name=name)
        begin, end = min(earliest, latest), max(earliest, latest)
        bars += [
            Bar(begin, end, About.MOUNT, window),
            Bar(
                flip.stops_utc_s,
                flip.resumes_utc_s,
                About.MOUNT,
                say("{name}: flip, centre again", name=name),
            ),
        ]
    return bars


def _step_bars(night: Night, steps: Sequence[SetupStep]) -> list[Bar]:
    spans: tuple[Span, ...] = night.usable_spans
    end = spans[0][0] if spans else night.sunset_utc_s or night.middle_utc_s
    bars = []
    for step in reversed(steps):
        begin = end - 60.0 * step.minutes
        bars.append(Bar(begin, end, About.STEP, step.text))
        end = begin
    return bars
