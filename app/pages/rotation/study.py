"""Everything the Field rotation page shows, worked out beside the window's thread."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from app.pages.rotation.question import PLATFORM, Question
from app.pages.rotation.skymaps import SkyMap, exposure_map, rate_map
from app.pages.rotation.stacked import Stacked, stacked
from app.session.evening import night
from app.widgets.nightframe import shown_span
from core.imaging.rotation import Track, track
from core.imaging.rotationdrive import (
    BlindZone,
    Derotation,
    Loss,
    blind_outline_deg,
    blind_zone,
    derotation,
    losses,
    platform_rate_deg_per_hour,
    wedge_rate_deg_per_hour,
)
from core.imaging.rotationexposure import allowed_rotation_deg, longest_s
from core.night.darkness import Night, Span
from core.sky.targets import Target
from core.units import SIDEREAL_DEG_PER_HOUR

Floats = NDArray[np.float64]
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

    track: Track
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
class Study:
    """`moment_utc_s`: the one picked, or one worth looking at."""

    question: Question
    night: Night
    moment_utc_s: float
    allowed_deg: float
    rates: SkyMap
    exposures: SkyMap
    zone: BlindZone
    zone_outline_deg: tuple[Floats, Floats]
    zenith_rim_deg: float
    zenith_rates: SkyMap
    way: Way | None


def study(asked: Question) -> Study:
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
    return Study(
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


def _track(asked: Question, target: Target, tonight: Night, moment: float | None = None) -> Track:
    """Through the night in even steps, and at the moment itself: near the zenith a minute matters,
    and on the prime vertical the longest exposure jumps.
    """
    begin, end = shown_span(tonight)
    times = np.arange(begin, end + STEP_S, STEP_S)
    if moment is not None:
        times = np.union1d(times, [moment])
    return track(target.ra_deg, target.dec_deg, asked.around.site, asked.around.air, times)


def _seen(asked: Question, fixed: Track) -> Booleans:
    clear = asked.around.horizon.is_clear(fixed.azimuth_deg, fixed.altitude_deg)
    return np.asarray(clear & (fixed.altitude_deg > 0.0))


def _moment(asked: Question, tonight: Night, fixed: Track | None) -> float:
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
    asked: Question, target: Target | None, fixed: Track | None, moment: float, allowed_deg: float
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


def _derotation(asked: Question, fixed: Track, seen: Booleans) -> tuple[Derotation | None, str]:
    """Over the part of the track that is seen, from its first to its last moment."""
    where = np.flatnonzero(seen)
    if where.size < 2:
        return None, "The target is not seen tonight: there is nothing to follow."
    part = slice(int(where[0]), int(where[-1]) + 1)
    try:
        return derotation(part_of(fixed, part), asked.derotator), ""
    except ValueError as problem:
        return None, str(problem)


def part_of(fixed: Track, part: slice) -> Track:
    """A shorter track."""
    return Track(
        *(fixed.site, fixed.utc_s[part], fixed.hour_angle_deg[part], fixed.declination_deg),
        *(fixed.azimuth_deg[part], fixed.altitude_deg[part], fixed.field_angle_deg[part]),
        *(fixed.rate_deg_per_hour[part], fixed.azimuth_rate_deg_per_hour[part]),
        fixed.altitude_rate_deg_per_hour[part],
    )


def _residual(asked: Question, fixed: Track, moment: float) -> Floats:
    """The platform stands level at the moment picked."""
    latitude = fixed.site.latitude_deg
    tilted = asked.tilted
    set_for = latitude if np.isnan(tilted.latitude_deg) else tilted.latitude_deg
    where = fixed.hour_angle_deg, fixed.declination_deg, latitude, set_for
    if tilted.kind == PLATFORM:
        turned = SIDEREAL_DEG_PER_HOUR * (fixed.utc_s - moment) / 3600.0
        return platform_rate_deg_per_hour(*where, turned, tilted.azimuth_deg)
    return wedge_rate_deg_per_hour(*where, tilted.azimuth_deg)
