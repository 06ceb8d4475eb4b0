"""One target through the night: height over the obstructions, hours, distance of the Moon."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.night.plannight import Span
from core.night.plantarget import Target
from core.sky.almanac import HORIZON_REFRACTION_DEG
from core.sky.bodies import Body, Course, course
from core.sky.horizon import Horizon
from core.sky.place import hour_angle_and_declination
from core.sky.separation import separation_deg
from core.sky.site import Air, Site

Floats = NDArray[np.float64]
Booleans = NDArray[np.bool_]


@dataclass(frozen=True, eq=False)
class Curve:
    """A target at times (n,), in order; degrees, as seen.

    `limit_deg`: the lowest useful altitude in its direction, obstruction or the person's own.
    `moon_apart_deg`: the Moon's distance on the sky, whether or not the Moon is up.
    """

    target: Target
    utc_s: Floats
    azimuth_deg: Floats
    altitude_deg: Floats
    limit_deg: Floats
    moon_altitude_deg: Floats
    moon_apart_deg: Floats

    @property
    def is_clear(self) -> Booleans:
        return np.asarray(self.altitude_deg > self.limit_deg)

    def clear_spans(self, within: Sequence[Span] | None = None) -> tuple[Span, ...]:
        """When it stands above its limit, cut to the given spans; straight between the times."""
        whole = _above(self.utc_s, self.altitude_deg - self.limit_deg)
        return whole if within is None else _common(whole, within)

    def highest(self, within: Sequence[Span] | None = None) -> tuple[float, float] | None:
        """Time and altitude of its highest sample above the limit in the spans; None without."""
        inside = np.array(self.is_clear)
        if within is not None:
            inside &= np.any([(self.utc_s >= a) & (self.utc_s <= b) for a, b in within], axis=0)
        if not np.any(inside):
            return None
        at = int(np.argmax(np.where(inside, self.altitude_deg, -np.inf)))
        return float(self.utc_s[at]), float(self.altitude_deg[at])


def curve(
    target: Target,
    site: Site,
    air: Air,
    utc_s: ArrayLike,
    horizon: Horizon | None = None,
    lowest_deg: float = 0.0,
    moon: Course | None = None,
) -> Curve:
    """The curve at increasing times, best one to five minutes apart for edges within seconds.

    `moon`: its course at the same times, where several curves share it. A target that is the Moon
    itself is NaN away from it.
    """
    times = np.atleast_1d(np.asarray(utc_s, dtype=np.float64))
    azimuth, altitude = target.places_deg(site, air, times)
    moon = moon or course(Body.MOON, site, times)
    obstruction = (horizon or Horizon.flat()).limit_deg(azimuth)
    apart = separation_deg(azimuth, altitude, moon.azimuth_deg, moon.true_altitude_deg)
    if target.body is Body.MOON:
        apart = np.full_like(apart, np.nan)
    return Curve(
        *(target, times, azimuth, altitude, np.maximum(obstruction, lowest_deg)),
        *(moon.true_altitude_deg, apart),
    )


@dataclass(frozen=True)
class Passes:
    """Rising, meridian passages towards the zenith and setting of a fixed target in a span.

    Unix seconds, in order; `lower_transits` below the pole. Without rising and setting one of
    `stays_up` and `stays_down` is true.
    """

    rises: tuple[float, ...]
    transits: tuple[float, ...]
    lower_transits: tuple[float, ...]
    sets: tuple[float, ...]
    stays_up: bool
    stays_down: bool


def passes(
    ra_deg: float,
    dec_deg: float,
    site: Site,
    span: Span,
    true_altitude_deg: float = -HORIZON_REFRACTION_DEG,
) -> Passes:
    """From the hour angle at which it stands so high, exactly; by default that of printed tables.

    Spans of a few days at most: the apparent place is the one at their middle.
    """
    hour_angle, declination = hour_angle_and_declination(ra_deg, dec_deg, site, span)
    latitude = np.radians(site.latitude_deg)
    flat = np.cos(latitude) * np.cos(declination)
    rise = np.sin(np.radians(true_altitude_deg)) - np.sin(latitude) * np.sin(declination)
    crosses = abs(rise) < abs(flat)
    half_day = np.arccos(rise / flat) if crosses else 0.0

    def times(angle: float) -> tuple[float, ...]:
        turns = np.arange(
            np.ceil((hour_angle[0] - angle) / (2.0 * np.pi)),
            np.floor((hour_angle[1] - angle) / (2.0 * np.pi)) + 1.0,
        )
        return tuple(np.interp(angle + 2.0 * np.pi * turns, hour_angle, span).tolist())

    return Passes(
        rises=times(-half_day) if crosses else (),
        transits=times(0.0),
        lower_transits=times(np.pi),
        sets=times(half_day) if crosses else (),
        stays_up=not crosses and bool(rise < 0.0),
        stays_down=not crosses and bool(rise >= 0.0),
    )


def _above(utc_s: Floats, height_deg: Floats) -> tuple[Span, ...]:
    """Spans in which a curve is above nought."""
    above = height_deg > 0.0
    changes = np.flatnonzero(above[1:] != above[:-1])
    part = height_deg[changes] / (height_deg[changes] - height_deg[changes + 1])
    edges = (utc_s[changes] + part * (utc_s[changes + 1] - utc_s[changes])).tolist()
    if above[0]:
        edges.insert(0, float(utc_s[0]))
    if above[-1]:
        edges.append(float(utc_s[-1]))
    return tuple(zip(edges[::2], edges[1::2], strict=True))


def _common(first: Sequence[Span], second: Sequence[Span]) -> tuple[Span, ...]:
    both = [(max(a, c), min(b, d)) for a, b in first for c, d in second]
    return tuple((begin, end) for begin, end in both if begin < end)
