"""The figures of the Field rotation page: their bounds and what is usual."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from app.night.observing import ObservingContext
from app.night.plan import Evening, Plans, night
from app.ui.skyview import FROM_ZENITH_DEG, Contour, Values, bands, contours
from app.ui.text import span_words
from app.ui.timeline import shown_span
from core.imaging.rotation import RotationTrack, rate_deg_per_hour, rotation_span_deg, track
from core.imaging.rotationdrive import (
    BlindZone,
    Derotation,
    Derotator,
    Loss,
    blind_outline_deg,
    blind_zone,
    derotation,
    losses,
    platform_rate_deg_per_hour,
    wedge_rate_deg_per_hour,
)
from core.imaging.rotationexposure import (
    CommonField,
    Frame,
    allowed_rotation_deg,
    exposure_count,
    longest_map_s,
    longest_s,
    smear_px,
    stacked_field,
)
from core.language import marked, say
from core.mount.equipment import Quantity
from core.night.darkness import Night, Span
from core.sky.site import Air
from core.sky.targets import Target
from core.units import SIDEREAL_DEG_PER_HOUR

EMPTY = math.nan
FIGURES: dict[str, tuple[Quantity, float]] = {
    "frame_width_px": (Quantity(marked("Frame, width"), marked(" px"), 16.0, 100_000.0), 4000.0),
    "frame_height_px": (Quantity(marked("Frame, height"), marked(" px"), 16.0, 100_000.0), 3000.0),
    "smear_px": (Quantity(marked("Smear allowed in the corner"), marked(" px"), 0.05, 20.0), 0.5),
    "stack_min": (Quantity(marked("Exposure in all"), marked(" min"), 0.1, 1440.0), 60.0),
    "rotation_exposure_s": (Quantity(marked("One exposure"), marked(" s"), 0.001, 7200.0), EMPTY),
    "rotation_between_s": (Quantity(marked("Pause after each"), marked(" s"), 0.0, 600.0), 2.0),
    "drive_deg_per_s": (
        Quantity(marked("Fastest turn in azimuth"), marked(" °/s"), 0.005, 60.0),
        3.0,
    ),
    "derotator_low_deg": (Quantity(marked("Derotator, lower stop"), " °", -1080.0, 1080.0), -180.0),
    "derotator_high_deg": (Quantity(marked("Derotator, upper stop"), " °", -1080.0, 1080.0), 180.0),
    "derotator_deg_per_s": (
        Quantity(marked("Derotator, fastest turn"), marked(" °/s"), 0.001, 90.0),
        1.0,
    ),
    "set_latitude_deg": (Quantity(marked("Made or set for latitude"), " °", -90.0, 90.0), EMPTY),
    "set_azimuth_deg": (Quantity(marked("Axis east of the pole by"), " °", -45.0, 45.0), 0.0),
}


def figure(plans: Plans, name: str) -> float:
    """As the person gave it, else the usual one; NaN where it was left open."""
    return plans.number(name, FIGURES[name][1])


def frame(plans: Plans) -> Frame:
    return Frame(figure(plans, "frame_width_px"), figure(plans, "frame_height_px"))


def derotator(plans: Plans) -> Derotator:
    names = ("derotator_low_deg", "derotator_high_deg", "derotator_deg_per_s")
    return Derotator(*(figure(plans, name) for name in names))


# What the Field rotation page asks to be worked out.

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
class RotationQuestion:
    """`moment_utc_s`: the moment picked, NaN before one was."""

    around: ObservingContext
    target: Target | None
    now_utc_s: float
    moment_utc_s: float
    frame: Frame
    smear_px: float
    drive_deg_per_s: float
    derotator: Derotator
    stack: Stack
    tilted: Tilted


def question(evening: Evening, moment_utc_s: float) -> RotationQuestion | None:
    """None while no site is given."""
    around = evening.around()
    if around is None:
        return None
    plans = evening.plans
    return RotationQuestion(
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


# The maps of the sky above: how fast the field turns, how long one may expose.

Floats = NDArray[np.float64]

_RATES = (0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0)
_SLOWEST, _FASTEST = 0.12, 5.0  # of the rate at the horizon due south; faster lies at the zenith
_LEAST_RATE = 0.01  # at a pole the field does not turn at all
_NO_RATE, _UNTOLD_RATE = 1e-3, 1e5  # on the prime vertical it is none, at the zenith without bound
_EXPOSURES_S = (0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 30.0, 120.0, 600.0, 3600.0)
_SHARES = 4.0, 96.0  # per cent of the sky between which a line of equal exposure is worth drawing


@dataclass(frozen=True, eq=False)
class RotationMap:
    """`levels` that the contours stand at; none where the field does not turn at all."""

    levels: tuple[float, ...]
    contours: tuple[Contour, ...]
    bands: Floats | None


@lru_cache(maxsize=8)
def rate_map(latitude_deg: float, air: Air, rim_deg: float = FROM_ZENITH_DEG) -> RotationMap:
    """Field rotation over the sky in degrees per hour, contours of either sign and of zero."""
    at_rim = float(np.cos(np.radians(latitude_deg)) / np.sin(np.radians(rim_deg)))
    sizes = _rates(SIDEREAL_DEG_PER_HOUR * at_rim, rim_deg == FROM_ZENITH_DEG)
    if not sizes:
        return RotationMap((), (), None)

    def values(azimuth: Floats, altitude: Floats) -> Floats:
        return rate_deg_per_hour(latitude_deg, azimuth, altitude, air)

    levels = (*(-size for size in reversed(sizes)), 0.0, *sizes)
    return _map(values, levels, rate_words, rim_deg)


def _rates(at_rim: float, is_whole: bool) -> tuple[float, ...]:
    """Sizes worth a line; near the zenith alone they know no bound."""
    if at_rim < _LEAST_RATE:
        return ()
    if is_whole:
        return tuple(one for one in _RATES if _SLOWEST * at_rim <= one <= _FASTEST * at_rim)
    first = 10.0 ** float(np.floor(np.log10(at_rim)))
    return tuple(first * digit for digit in (1.0, 5.0, 20.0))


@lru_cache(maxsize=8)
def exposure_map(latitude_deg: float, rotation_deg: float) -> RotationMap:
    """Longest exposure over the sky in seconds before the field turns by so much."""

    def values(azimuth: Floats, altitude: Floats) -> Floats:
        return longest_map_s(latitude_deg, azimuth, altitude, rotation_deg)

    azimuth, altitude = (
        np.arange(0.0, 360.0, 5.0),
        np.degrees(np.arcsin(np.arange(0.02, 1.0, 0.05))),
    )
    sky = values(azimuth[np.newaxis], altitude[:, np.newaxis])
    low, high = np.percentile(sky, _SHARES)
    fitting = [level for level in _EXPOSURES_S if low <= level <= high]
    return _map(values, tuple(fitting), span_words, FROM_ZENITH_DEG)


def rate_words(rate_deg_per_hour: float) -> str:
    """As it stands on a contour or under the pointer: three figures, also where it is slow."""
    size = abs(rate_deg_per_hour)
    if size > _UNTOLD_RATE:
        return say("more than {rate:,.0f}°/h", rate=_UNTOLD_RATE)
    shown = float(f"{size:.3g}") if size >= _NO_RATE else 0.0
    sign = "" if shown == 0.0 else "−" if rate_deg_per_hour < 0.0 else "+"
    return say("{sign}{rate:.6g}°/h", sign=sign, rate=shown)


def _map(
    values: Values, levels: tuple[float, ...], words: Callable[[float], str], rim_deg: float
) -> RotationMap:
    lines = contours(values, levels, words, rim_deg)
    return RotationMap(levels, lines, bands(values, levels, rim_deg))


# The series of exposures on the Field rotation page, and what is left when they are stacked.

MOST = 20_000  # exposures; more than any night holds of any length worth stacking
MOST_EDGES = 720  # frames that enter the drawing; from one to the next the field turns by little
SHORTEST_S = 1e-3
_SAMPLES = 2000
_FINEST_S = 2.0
_ROUNDS = 12
_LONGEST_SPAN_S = 86_400.0


@dataclass(frozen=True, eq=False)
class Stacked:
    """`count` exposures of `exposure_s` from `begin_utc_s` to `end_utc_s`.

    `smear_px`: the worst in the corner of any one. `hidden_utc_s`: from when on the target is not
    seen, None when it is seen throughout. `problem`: a sentence instead of it all, else empty.
    """

    exposure_s: float = 0.0
    count: int = 0
    begin_utc_s: float = 0.0
    end_utc_s: float = 0.0
    smear_px: float = 0.0
    field: CommonField | None = None
    hidden_utc_s: float | None = None
    problem: str = ""


def stacked(
    asked: RotationQuestion, target: Target, begin_utc_s: float, allowed_deg: float
) -> Stacked:
    """The series on a fixed target from a moment on."""
    plan = asked.stack
    total_s = 60.0 * plan.total_min
    exposure = plan.exposure_s
    if np.isnan(exposure):
        exposure = _longest_throughout(asked, target, begin_utc_s, allowed_deg)
    count = exposure_count(total_s, exposure)
    if count > MOST:
        return Stacked(
            problem=say(
                "That would be {count:,} exposures: the field turns too fast on the way, or the "
                "exposure is too short. Pick another moment, take less exposure in all, or give "
                "the length of one exposure.",
                count=count,
            )
        )
    steps = np.arange(count, dtype=np.float64)
    begins: Floats = begin_utc_s + (exposure + plan.between_s) * steps
    return _worked_out(asked, target, begins, exposure)


def _worked_out(
    asked: RotationQuestion, target: Target, begins: Floats, exposure_s: float
) -> Stacked:
    begin, end = float(begins[0]), float(begins[-1]) + exposure_s
    path = _path(asked, target, begin, end)
    series = np.stack([begins, begins + exposure_s], axis=1)
    every = max(1, -(-len(series) // MOST_EDGES))
    turned = rotation_span_deg(_stack_track(asked, target, begins), exposure_s)
    return Stacked(
        exposure_s=exposure_s,
        count=len(begins),
        begin_utc_s=begin,
        end_utc_s=end,
        smear_px=float(np.max(smear_px(asked.frame, turned))),
        field=stacked_field(asked.frame, path, np.concatenate([series[::every], series[-1:]])),
        hidden_utc_s=_hidden_utc_s(asked, path),
    )


def _longest_throughout(
    asked: RotationQuestion, target: Target, begin_utc_s: float, allowed_deg: float
) -> float:
    """What keeps the limit at every moment of the series: the shorter, the later it ends."""
    plan = asked.stack
    total_s = 60.0 * plan.total_min
    exposure, span_s = np.inf, total_s
    for _ in range(_ROUNDS):
        path = _path(asked, target, begin_utc_s, begin_utc_s + span_s)
        shortest = _rounded_down(float(np.min(longest_s(path, allowed_deg))))
        if shortest >= exposure:
            break
        exposure = shortest
        span_s = min(total_s + plan.between_s * total_s / exposure, _LONGEST_SPAN_S)
    return float(exposure)


def _rounded_down(seconds: float) -> float:
    """To two figures: nobody sets 17.38 seconds, and a limit must not be stretched."""
    size = max(seconds, SHORTEST_S)
    unit = 10.0 ** (np.floor(np.log10(size)) - 1.0)
    return float(np.floor(size / unit + 1e-9) * unit)


def _path(
    asked: RotationQuestion, target: Target, begin_utc_s: float, end_utc_s: float
) -> RotationTrack:
    span = end_utc_s - begin_utc_s
    count = int(np.clip(span / _FINEST_S, 2, _SAMPLES))
    return _stack_track(asked, target, np.linspace(begin_utc_s, end_utc_s, count))


def _stack_track(asked: RotationQuestion, target: Target, utc_s: Floats) -> RotationTrack:
    place = target.ra_deg, target.dec_deg
    return track(*place, asked.around.site, asked.around.air, utc_s)


def _hidden_utc_s(asked: RotationQuestion, path: RotationTrack) -> float | None:
    limit = np.maximum(asked.around.horizon.limit_deg(path.azimuth_deg), 0.0)
    hidden = np.flatnonzero(path.altitude_deg <= limit)
    return float(path.utc_s[hidden[0]]) if hidden.size else None


# Everything the Field rotation page shows, worked out beside the window's thread.

Booleans = NDArray[np.bool_]

STEP_S = 60.0
LOW_DEG = 30.0  # lower the air spoils long exposures
LEAST_RIM_DEG = 1.0
RIM_IN_ZONES = 2.0  # how far round the zenith the enlarged view goes, in extents of the zone


@dataclass(frozen=True, eq=False)
class Way:
    """The target's way through the night, each (n,); `is_seen`: over horizon and obstructions.

    `residual_deg_per_hour`: what a wedge or platform leaves.
    """

    track: RotationTrack
    is_seen: Booleans
    longest_s: Floats
    losses: tuple[Loss, ...]
    derotation: Derotation | None
    derotator_problem: str
    residual_deg_per_hour: Floats
    stacked: Stacked

    def at(self, values: Floats, utc_s: float) -> float:
        """Of one of the arrays at a moment: exact at the one picked, straight between others."""
        return float(np.interp(utc_s, self.track.utc_s, values))

    @property
    def highest_deg(self) -> float:
        """The greatest altitude of the night."""
        return float(self.track.altitude_deg.max())

    @property
    def seen_spans(self) -> tuple[Span, ...]:
        edges = np.flatnonzero(np.diff(np.concatenate([[0], self.is_seen.astype(np.int8), [0]])))
        times = self.track.utc_s
        return tuple(
            (float(times[a]), float(times[b - 1]))
            for a, b in zip(edges[::2], edges[1::2], strict=True)
        )


@dataclass(frozen=True, eq=False)
class RotationStudy:
    """`moment_utc_s`: the one picked, or one worth looking at."""

    question: RotationQuestion
    night: Night
    moment_utc_s: float
    allowed_deg: float
    rates: RotationMap
    exposures: RotationMap
    zone: BlindZone
    zone_outline_deg: tuple[Floats, Floats]
    zenith_rim_deg: float
    zenith_rates: RotationMap
    way: Way | None


def study(asked: RotationQuestion) -> RotationStudy:
    """For a worker thread."""
    site, air = asked.around.site, asked.around.air
    tonight = night(site, asked.now_utc_s)
    allowed = allowed_rotation_deg(asked.frame, asked.smear_px)
    zone = blind_zone(site.latitude_deg, asked.drive_deg_per_s)
    rim = float(np.clip(RIM_IN_ZONES * zone.extent_deg, LEAST_RIM_DEG, 30.0))
    target = None
    if asked.target is not None:
        target = asked.target.held_still(site, tonight.middle_utc_s)
    fixed = None if target is None else _track(asked, target, tonight)
    moment = _moment(asked, tonight, fixed)
    if target is not None:
        fixed = _track(asked, target, tonight, moment)
    return RotationStudy(
        question=asked,
        night=tonight,
        moment_utc_s=moment,
        allowed_deg=allowed,
        rates=rate_map(site.latitude_deg, air),
        exposures=exposure_map(site.latitude_deg, allowed),
        zone=zone,
        zone_outline_deg=blind_outline_deg(site.latitude_deg, asked.drive_deg_per_s),
        zenith_rim_deg=rim,
        zenith_rates=rate_map(site.latitude_deg, air, rim),
        way=_way(asked, target, fixed, moment, allowed),
    )


def _track(
    asked: RotationQuestion, target: Target, tonight: Night, moment: float | None = None
) -> RotationTrack:
    """Through the night in even steps, and at the moment itself: near the zenith a minute matters,
    and on the prime vertical the longest exposure jumps.
    """
    begin, end = shown_span(tonight)
    times = np.arange(begin, end + STEP_S, STEP_S)
    if moment is not None:
        times = np.union1d(times, [moment])
    return track(target.ra_deg, target.dec_deg, asked.around.site, asked.around.air, times)


def _seen(asked: RotationQuestion, fixed: RotationTrack) -> Booleans:
    clear = asked.around.horizon.is_clear(fixed.azimuth_deg, fixed.altitude_deg)
    return np.asarray(clear & (fixed.altitude_deg > 0.0))


def _moment(asked: RotationQuestion, tonight: Night, fixed: RotationTrack | None) -> float:
    """The one picked; else now, when it is dark; else when the target first stands well in the
    dark, or stands highest there.
    """
    begin, end = shown_span(tonight)
    if begin <= asked.moment_utc_s <= end:
        return asked.moment_utc_s
    dark = tonight.usable_spans or ((begin, end),)
    if any(a <= asked.now_utc_s <= b for a, b in dark):
        return asked.now_utc_s
    if fixed is None:
        return 0.5 * (dark[0][0] + dark[0][1])
    times = fixed.utc_s
    within = np.any([(times >= a) & (times <= b) for a, b in dark], axis=0)
    well = within & _seen(asked, fixed) & (fixed.altitude_deg >= LOW_DEG)
    if np.any(well):
        return float(times[int(np.argmax(well))])
    return float(times[int(np.argmax(np.where(within, fixed.altitude_deg, -90.0)))])


def _way(
    asked: RotationQuestion,
    target: Target | None,
    fixed: RotationTrack | None,
    moment: float,
    allowed_deg: float,
) -> Way | None:
    if target is None or fixed is None:
        return None
    seen = _seen(asked, fixed)
    turned, problem = _derotation(asked, fixed, seen)
    return Way(
        track=fixed,
        is_seen=seen,
        longest_s=longest_s(fixed, allowed_deg),
        losses=tuple(losses(fixed, asked.drive_deg_per_s)),
        derotation=turned,
        derotator_problem=problem,
        residual_deg_per_hour=_residual(asked, fixed, moment),
        stacked=stacked(asked, target, moment, allowed_deg),
    )


def _derotation(
    asked: RotationQuestion, fixed: RotationTrack, seen: Booleans
) -> tuple[Derotation | None, str]:
    """Over the part of the track that is seen, from its first to its last moment."""
    where = np.flatnonzero(seen)
    if where.size < 2:
        return None, "The target is not seen tonight: there is nothing to follow."
    part = slice(int(where[0]), int(where[-1]) + 1)
    try:
        return derotation(part_of(fixed, part), asked.derotator), ""
    except ValueError as problem:
        return None, str(problem)


def part_of(fixed: RotationTrack, part: slice) -> RotationTrack:
    """A shorter track."""
    return RotationTrack(
        *(fixed.site, fixed.utc_s[part], fixed.hour_angle_deg[part], fixed.declination_deg),
        *(fixed.azimuth_deg[part], fixed.altitude_deg[part], fixed.field_angle_deg[part]),
        *(fixed.rate_deg_per_hour[part], fixed.azimuth_rate_deg_per_hour[part]),
        fixed.altitude_rate_deg_per_hour[part],
    )


def _residual(asked: RotationQuestion, fixed: RotationTrack, moment: float) -> Floats:
    """The platform stands level at the moment picked."""
    latitude = fixed.site.latitude_deg
    tilted = asked.tilted
    set_for = latitude if np.isnan(tilted.latitude_deg) else tilted.latitude_deg
    where = fixed.hour_angle_deg, fixed.declination_deg, latitude, set_for
    if tilted.kind == PLATFORM:
        turned = SIDEREAL_DEG_PER_HOUR * (fixed.utc_s - moment) / 3600.0
        return platform_rate_deg_per_hour(*where, turned, tilted.azimuth_deg)
    return wedge_rate_deg_per_hour(*where, tilted.azimuth_deg)
