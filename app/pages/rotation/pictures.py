"""The pictures of a night on the Field rotation page, from what was worked out."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from numpy.typing import NDArray

from app.pages.rotation.study import RotationStudy, Way
from app.ui.text import span_words
from app.ui.timeline import Graph, Lane, NightPicture, Stroke, TimeBlock, Trace, night_frame, steps
from core.imaging.rotationexposure import LONGEST_S
from core.language import say
from core.sky.clocks import Zone

Floats = NDArray[np.float64]
Words = Callable[[float], str]

RATE_ROOM = 4.0  # times the middle rate that a graph shows; near the zenith it knows no bound
EXPOSURE_TICKS = (1.0, 5.0, 20.0, 60.0, 300.0, 1200.0, 3600.0, 21600.0)


def turning(study: RotationStudy, zone: Zone) -> NightPicture:
    """Rate, total rotation and parallactic angle against time."""
    rows: tuple[Graph | Lane, ...] = ()
    if study.way is not None:
        rows = (*_turning_rows(study.way), *_zenith_lane(study.way))
    return night_frame(study.night, zone, study.question.now_utc_s, rows)


def _turning_rows(way: Way) -> tuple[Graph, ...]:
    rate = _seen_only(way, way.track.rate_deg_per_hour)
    first = int(np.argmax(way.is_seen)) if np.any(way.is_seen) else 0
    total = _seen_only(way, way.track.field_angle_deg - way.track.field_angle_deg[first])
    angle = np.mod(way.track.field_angle_deg + 180.0, 360.0) - 180.0
    jumps = np.abs(np.diff(angle, prepend=angle[0])) > 180.0
    shown = np.where(jumps, np.nan, _seen_only(way, angle))
    bound = _rate_bound(rate)
    return (
        _graph(
            say("Field rotation, degrees per hour"),
            way,
            say("field turns"),
            rate,
            (-bound, bound),
            _hour,
        ),
        _graph(
            *(say("Rotation since the target came into view"), way, say("turned in all"), total),
            *(_range(total), _angle),
        ),
        _graph(
            say("Parallactic angle"), way, say("parallactic angle"), shown, (-180.0, 180.0), _angle
        ),
    )


def _graph(
    title: str, way: Way, name: str, values: Floats, bounds: tuple[float, float], words: Words
) -> Graph:
    low, high = bounds
    levels = steps(low, high, 4, is_angle=words is _angle)
    return Graph(title, (Trace(name, way.track.utc_s, values),), levels, low, high, words)


def _hour(value: float) -> str:
    return say("{rate:.3g}°/h", rate=value + 0.0).replace("-", "−")


def _angle(value: float) -> str:
    shown = round(value) if abs(value - round(value)) < 0.05 or abs(value) > 10 else round(value, 1)
    return f"{shown}°".replace("-", "−")


def _seen_only(way: Way, values: Floats) -> Floats:
    return np.where(way.is_seen, values, np.nan)


def _rate_bound(rate: Floats) -> float:
    sizes = np.abs(rate[np.isfinite(rate)])
    if sizes.size == 0:
        return 15.0
    bound = min(float(np.max(sizes)), RATE_ROOM * max(float(np.median(sizes)), 1.0))
    return max(1.1 * bound, 0.1)


def _range(values: Floats) -> tuple[float, float]:
    known = values[np.isfinite(values)]
    if known.size == 0:
        return -10.0, 10.0
    low, high = min(float(np.min(known)), 0.0), max(float(np.max(known)), 0.0)
    margin = 0.08 * max(high - low, 10.0)
    return low - margin, high + margin


def _zenith_lane(way: Way) -> tuple[Lane, ...]:
    if not way.losses:
        return ()
    blocks = tuple(
        TimeBlock(
            loss.enters_utc_s, loss.leaves_utc_s, say("too fast for the drive"), is_hatched=True
        )
        for loss in way.losses
    )
    return (Lane(say("Near the zenith"), blocks),)


def exposures(study: RotationStudy, zone: Zone) -> NightPicture:
    """Longest exposure against time, and the series as planned."""
    way = study.way
    rows: tuple[Graph | Lane, ...] = ()
    if way is not None:
        values = np.clip(_seen_only(way, way.longest_s), 0.2, LONGEST_S)
        known = values[np.isfinite(values)]
        low = max(0.5 * float(np.min(known, initial=60.0)), 0.2)
        high = min(2.0 * float(np.max(known, initial=2.0)), LONGEST_S)
        levels = tuple(tick for tick in EXPOSURE_TICKS if low <= tick <= high)
        trace = Trace(say("longest exposure"), way.track.utc_s, values)
        title = say("Longest exposure, begun at each moment")
        graph = Graph(title, (trace,), levels, low, high, span_words, is_by_factors=True)
        rows = (graph, *_series_lane(way))
    return night_frame(study.night, zone, study.question.now_utc_s, rows)


def _series_lane(way: Way) -> tuple[Lane, ...]:
    plan = way.stacked
    if plan.problem:
        return ()
    words = f"{plan.count:,} × {span_words(plan.exposure_s)}"
    return (Lane(say("The series"), (TimeBlock(plan.begin_utc_s, plan.end_utc_s, words),)),)


def derotator(study: RotationStudy, zone: Zone) -> NightPicture:
    """The derotator's angle against time between its stops."""
    rows: tuple[Graph | Lane, ...] = ()
    if study.way is not None and study.way.derotation is not None:
        rows = (_derotator_graph(study, study.way), *_rewind_lane(study.way))
    return night_frame(study.night, zone, study.question.now_utc_s, rows)


def _derotator_graph(study: RotationStudy, way: Way) -> Graph:
    limits = study.question.derotator
    assert way.derotation is not None
    seen = np.flatnonzero(way.is_seen)
    times = way.track.utc_s[seen[0] : seen[-1] + 1]
    angle = way.derotation.angle_deg.copy()
    angle[np.abs(np.diff(angle, prepend=angle[0])) > 90.0] = np.nan
    stops = [
        Trace(name, way.track.utc_s, np.full_like(way.track.utc_s, stop), stroke)
        for name, stop, stroke in (
            (say("upper stop"), limits.highest_deg, Stroke.SECOND),
            (say("lower stop"), limits.lowest_deg, Stroke.THIRD),
        )
    ]
    margin = 0.08 * limits.range_deg
    low, high = limits.lowest_deg - margin, limits.highest_deg + margin
    traces = (Trace(say("derotator"), times, angle), *stops)
    levels = steps(low, high, 6, is_angle=True)
    return Graph(say("Angle of the derotator"), traces, levels, low, high, _angle)


def _rewind_lane(way: Way) -> tuple[Lane, ...]:
    assert way.derotation is not None
    blocks = [
        TimeBlock(utc_s, utc_s + 120.0, say("turn back"), is_hatched=True)
        for utc_s in way.derotation.rewind_utc_s
    ]
    if way.derotation.too_fast_utc_s is not None:
        blocks.append(TimeBlock(*way.derotation.too_fast_utc_s, say("too fast"), is_hatched=True))
    return (Lane(say("Stop the exposure"), tuple(blocks)),) if blocks else ()


def residual(study: RotationStudy, zone: Zone) -> NightPicture:
    """What a wedge or platform leaves, beside the plain alt-azimuth mount."""
    way = study.way
    rows: tuple[Graph | Lane, ...] = ()
    if way is not None:
        left = _seen_only(way, way.residual_deg_per_hour)
        bound = max(1.15 * float(np.nanmax(np.abs(left), initial=0.0)), 0.02)
        rows = (
            _graph(
                *(say("Rotation that is left, degrees per hour"), way, say("what is left"), left),
                *((-bound, bound), _hour),
            ),
        )
    return night_frame(study.night, zone, study.question.now_utc_s, rows)
