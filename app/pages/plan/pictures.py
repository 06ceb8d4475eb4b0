"""The pictures of the Night plan page, from what was worked out."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from app.pages.plan.study import EyeStudy, PlanStudy, TargetNight
from app.ui.text import span_words
from app.ui.timeline import (
    Graph,
    Lane,
    NightPicture,
    Pin,
    Stroke,
    TimeBlock,
    Trace,
    night_frame,
    steps,
)
from core.language import say
from core.night.checklist import NightPart, Planned
from core.night.flip import FlipPlan
from core.night.timeline import About
from core.sky.clocks import Zone

Floats = NDArray[np.float64]

HEIGHTS_DEG = (0.0, 30.0, 60.0, 90.0)
LANES = (About.SUN, About.MOON, About.TARGET, About.MOUNT)


def tonight(study: PlanStudy, zone: Zone) -> NightPicture:
    """Everything on one line of time."""
    rows: list[Graph | Lane] = [_heights(study)]
    if study.aim is not None and not study.question.kind.is_equatorial:
        rows.append(_rotation(study.aim))
    rows += _lanes(study)
    return night_frame(study.night, zone, study.question.now_utc_s, tuple(rows))


def _heights(study: PlanStudy) -> Graph:
    """Of the target over what hides it, and of the Moon."""
    sky, aim = study.sky, study.aim
    moon = np.where(sky.moon.true_altitude_deg > 0.0, sky.moon.true_altitude_deg, np.nan)
    traces = [Trace(say("Moon"), sky.utc_s, moon, Stroke.THIRD)]
    if aim is not None:
        up = np.where(aim.curve.altitude_deg > 0.0, aim.curve.altitude_deg, np.nan)
        ground = Trace(say("too low or hidden"), sky.utc_s, aim.curve.limit_deg, Stroke.EDGE, True)
        traces = [Trace(_short(aim.curve.target.name), sky.utc_s, up), *traces, ground]
    title = say("Altitude, degrees")
    return Graph(title, tuple(traces), HEIGHTS_DEG, 0.0, 90.0, _degrees, share=1.6)


def _degrees(value: float) -> str:
    return f"{value:.0f}°".replace("-", "−")


def _short(name: str) -> str:
    return name.partition(",")[0]


def _rotation(aim: TargetNight) -> Graph:
    up = aim.curve.altitude_deg > 0.0
    rate = np.where(up, aim.track.rate_deg_per_hour, np.nan)
    sizes = np.abs(rate[np.isfinite(rate)])
    bound = 15.0
    if sizes.size:
        bound = max(1.1 * min(float(sizes.max()), 4.0 * float(np.median(sizes))), 1.0)
    trace = Trace(say("field turns"), aim.curve.utc_s, rate)
    levels = steps(-bound, bound, 3)
    title = say("Field rotation, degrees per hour")
    return Graph(title, (trace,), levels, -bound, bound, _per_hour, share=0.7)


def _per_hour(value: float) -> str:
    return say("{rate:.3g}°/h", rate=value + 0.0).replace("-", "−")


def _lanes(study: PlanStudy) -> list[Lane]:
    titles = {
        About.SUN: say("Sun and darkness"),
        About.MOON: say("Moon"),
        About.TARGET: "" if study.aim is None else study.aim.curve.target.name,
        About.MOUNT: say("Mount"),
    }
    lanes = []
    for about in LANES:
        lane = Lane(titles[about], _blocks(study, about), _pins(study, about))
        if lane.blocks or lane.pins:
            lanes.append(lane)
    return [*lanes, *_alignment(study), *_steps(study)]


def plainly(text: str) -> str:
    """A text of the time line that went without the target's name, as a sentence begins."""
    trimmed = text.lstrip(": ")
    return trimmed[:1].upper() + trimmed[1:]


def _blocks(study: PlanStudy, about: About) -> tuple[TimeBlock, ...]:
    return tuple(
        TimeBlock(bar.begin_utc_s, bar.end_utc_s, plainly(bar.text), bar.is_blind)
        for bar in study.line.bars
        if bar.about is about
    )


def _pins(study: PlanStudy, about: About) -> tuple[Pin, ...]:
    """Of the Sun only what the shades do not tell by themselves."""
    return tuple(
        Pin(mark.utc_s, plainly(mark.text))
        for mark in study.line.marks
        if mark.about is about and not mark.is_twilight
    )


def _alignment(study: PlanStudy) -> list[Lane]:
    pins = tuple(
        Pin(
            moment.utc_s,
            say(
                "{meridian} and {aside}",
                meridian=moment.meridian.star.name,
                aside=moment.aside.star.name,
            ),
        )
        for moment in study.sky.alignment
    )
    return [Lane(say("Brightest pair for a drift alignment"), (), pins)] if pins else []


def _steps(study: PlanStudy) -> list[Lane]:
    """The checklist by its headings; the list beside has every step."""
    blocks = []
    for part in NightPart:
        times = [
            (one.begin_utc_s, one.begin_utc_s + 60.0 * one.step.minutes)
            for one in study.checklist.planned
            if one.step.part is part and one.begin_utc_s is not None
        ]
        if times and part is not NightPart.THROUGH_THE_NIGHT:
            begin, end = min(a for a, _ in times), max(b for _, b in times)
            blocks.append(TimeBlock(begin, end, plainly(say(part.value))))
    pins = tuple(
        Pin(one.begin_utc_s, _first_words(one))
        for one in study.checklist.planned
        if one.step.part is NightPart.THROUGH_THE_NIGHT and one.begin_utc_s is not None
    )
    return [Lane(say("Checklist"), tuple(blocks), pins)] if blocks else []


def _first_words(one: Planned) -> str:
    return say(one.step.text).partition(",")[0].rstrip(".")


def flip(study: PlanStudy, zone: Zone) -> NightPicture:
    """Altitude, exposures and the flip between them."""
    rows: tuple[Graph | Lane, ...] = (_heights(study),)
    if study.aim is not None and study.aim.flip is not None:
        plan = study.aim.flip
        rows = (*rows, Lane(say("Exposures and flip"), _series(plan)), *_windows(plan))
    return night_frame(study.night, zone, study.question.now_utc_s, rows)


def _series(plan: FlipPlan) -> tuple[TimeBlock, ...]:
    """Runs of exposures between interruptions, and the interruptions."""
    edges = [flip.turns_utc_s for flip in plan.interruptions]
    parts = np.searchsorted(edges, plan.exposure_utc_s[:, 0])
    blocks = []
    for part in range(len(edges) + 1):
        run = plan.exposure_utc_s[parts == part]
        if len(run):
            words = f"{len(run):,} × {span_words(float(run[0, 1] - run[0, 0]))}"
            blocks.append(TimeBlock(float(run[0, 0]), float(run[-1, 1]), words))
    for one in plan.interruptions:
        blocks.append(TimeBlock(one.stops_utc_s, one.resumes_utc_s, say("flip"), is_hatched=True))
    return tuple(blocks)


def _windows(plan: FlipPlan) -> tuple[Lane, ...]:
    blocks = [
        TimeBlock(crossing.earliest_utc_s, crossing.latest_utc_s, say("may flip"))
        for crossing in plan.crossings
        if crossing.earliest_utc_s < crossing.latest_utc_s
    ]
    pins = tuple(
        Pin(
            one.utc_s,
            say("on the meridian") if one.upper else say("on the meridian below the pole"),
        )
        for one in plan.crossings
    )
    return (Lane(say("Meridian"), tuple(blocks), pins),) if pins else ()


def eye(study: PlanStudy, seen: EyeStudy, zone: Zone) -> NightPicture:
    """Height of the eyepiece and its place round the tube."""
    bounds = study.question.observer
    heights = seen.path.height_m
    best = seen.best.height_m
    low = min(float(heights.min()), float(best.min()), bounds.lowest_m) - 0.15
    high = max(float(heights.max()), float(best.max()), bounds.highest_m) + 0.15
    level = np.full_like(heights, 1.0)
    traces = (
        Trace(say("eyepiece"), seen.utc_s, heights),
        Trace(say("turned as advised"), seen.utc_s, best, Stroke.SECOND),
        Trace(say("comfortable"), seen.utc_s, bounds.highest_m * level, Stroke.THIRD),
        Trace(say("comfortable from"), seen.utc_s, bounds.lowest_m * level, Stroke.THIRD),
    )
    round_tube = seen.path.round_tube_deg.copy()
    round_tube[np.abs(np.diff(round_tube, prepend=round_tube[0])) > 180.0] = np.nan
    rows = (
        Graph(
            say("Height of the eye above the ground"),
            traces,
            steps(low, high, 4),
            low,
            high,
            _metres,
        ),
        Graph(
            say("Round the tube: 0° on top, 90° on the right from behind"),
            (Trace(say("eyepiece"), seen.utc_s, round_tube),),
            (-180.0, -90.0, 0.0, 90.0, 180.0),
            *(-180.0, 180.0, _degrees),
        ),
    )
    return night_frame(study.night, zone, study.question.now_utc_s, rows)


def _metres(value: float) -> str:
    return say("{metres:.2g} m", metres=value)
