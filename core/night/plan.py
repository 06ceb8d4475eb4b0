"""Tonight planned: a target's way through the night, the best objects, when to align."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import erfa
import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.alignment.guide.nextstar import PLACES
from core.alignment.words import hour_angle_words
from core.language import say
from core.night.darkness import Night, Span
from core.sky import places
from core.sky.almanac import HORIZON_REFRACTION_DEG, Light
from core.sky.bodies import Body, Course, course
from core.sky.catalogues import Catalogue, DeepSky, StarNow
from core.sky.horizon import Horizon
from core.sky.places import hour_angle_and_declination, separation_deg
from core.sky.refraction import Refraction
from core.sky.site import Air, Site
from core.sky.targets import Target, of_deep_sky

# One target through the night: height over the obstructions, hours, distance of the Moon.

Floats = NDArray[np.float64]
Booleans = NDArray[np.bool_]


@dataclass(frozen=True, eq=False)
class AltitudeCurve:
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
) -> AltitudeCurve:
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
    return AltitudeCurve(
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


# When tonight the stars for a drift alignment are best placed.

Clear = Callable[[Floats, Floats], NDArray[np.bool_]]

_STEP_S = 1800.0
_LOWEST_DEG = 20.0
_FAINTEST = 4.0
_MERIDIAN, *_SIDES = PLACES


@dataclass(frozen=True)
class AlignmentMoment:
    """A pair of stars: one near the meridian shows the azimuth error, the other the altitude error.

    `faintest`: the magnitude of the fainter of the two; less is easier to find.
    """

    utc_s: float
    meridian: StarNow
    aside: StarNow

    @property
    def faintest(self) -> float:
        return max(self.meridian.star.magnitude, self.aside.star.magnitude)

    @property
    def words(self) -> str:
        aside = self.aside
        return say(
            "Align on {meridian_star} near the meridian and {low_star} low ({hour_angle}, "
            "{altitude:.0f}° high)",
            meridian_star=self.meridian.star.name,
            low_star=aside.star.name,
            hour_angle=hour_angle_words(aside.hour_angle_deg),
            altitude=aside.altitude_deg,
        )


def alignment_moments(
    night: Night, catalogue: Catalogue, air: Air, clear: Clear | None = None
) -> list[AlignmentMoment]:
    """Every half hour from nautical twilight on, where a pair is up; in order of time."""
    found = []
    for begin, end in night.spans_of(Light.NAUTICAL):
        for utc_s in np.arange(begin, end, _STEP_S).tolist():
            moment = _moment(night, catalogue, air, utc_s, clear)
            if moment is not None:
                found.append(moment)
    return found


def best_moments(moments: list[AlignmentMoment], count: int = 2) -> list[AlignmentMoment]:
    """Those with the brightest pairs, no pair twice, in order of time."""
    brightest = sorted(moments, key=lambda moment: (moment.faintest, moment.utc_s))
    pairs: dict[tuple[str, str], AlignmentMoment] = {}
    for moment in brightest:
        pairs.setdefault((moment.meridian.star.name, moment.aside.star.name), moment)
    chosen = list(pairs.values())[:count]
    return sorted(chosen, key=lambda moment: moment.utc_s)


def _moment(
    night: Night, catalogue: Catalogue, air: Air, utc_s: float, clear: Clear | None
) -> AlignmentMoment | None:
    up = catalogue.up_now(night.site, air, utc_s, _LOWEST_DEG, limit=1000)
    up = [now for now in up if now.star.magnitude < _FAINTEST]
    if clear is not None and up:
        azimuth, altitude = np.array([(now.azimuth_deg, now.altitude_deg) for now in up]).T
        up = [now for now, free in zip(up, clear(azimuth, altitude), strict=True) if free]
    meridian = next((now for now in up if PLACES[_MERIDIAN](now)), None)
    aside = next((now for now in up if any(PLACES[side](now) for side in _SIDES)), None)
    if meridian is None or aside is None:
        return None
    return AlignmentMoment(utc_s, meridian, aside)


# Which deep-sky objects are best placed tonight.

_BEST_STEP_S = 600.0
_MOONLESS_DEG = 90.0  # as far away the Moon's light is spread evenly; common practice, no source


@dataclass(frozen=True)
class PlannedTarget:
    """A target and its night.

    `merit_hours`: hours of usable darkness in which it is clear, each counted by the sine of the
    altitude (the inverse of the air's thickness) and less where the Moon shines near; an order to
    look in, our own. `clear_hours`: those hours as they are. `moon_apart_deg` when it is highest.
    """

    target: Target
    merit_hours: float
    clear_hours: float
    highest_deg: float
    highest_utc_s: float
    moon_apart_deg: float


def showpieces(deep_sky: DeepSky, faintest: float = 9.0) -> list[Target]:
    """Messier's objects and others no fainter than that; numbers that turned out stars are not."""
    return [
        of_deep_sky(one)
        for one in deep_sky.objects
        if one.messier is not None
        or (
            one.magnitude is not None and one.magnitude <= faintest and "star" not in one.kind.value
        )
    ]


def best(
    targets: Sequence[Target],
    night: Night,
    air: Air,
    horizon: Horizon | None = None,
    lowest_deg: float = 30.0,
    limit: int = 20,
) -> list[PlannedTarget]:
    """The best placed of fixed targets, best first; none where the night has no usable darkness."""
    times = _times(night)
    if not targets or times.size == 0:
        return []
    azimuth, altitude = _places_deg(targets, night, air, times)
    obstruction = (horizon or Horizon.flat()).limit_deg(azimuth)
    clear = altitude > np.maximum(obstruction, lowest_deg)
    moon = course(Body.MOON, night.site, times)
    apart = separation_deg(azimuth, altitude, moon.azimuth_deg, moon.true_altitude_deg)
    darkness = 1.0 - _moonlight(moon.true_altitude_deg, apart, night.moon_lit)
    hours = _BEST_STEP_S / 3600.0
    merit = np.sum(clear * np.sin(np.radians(altitude)) * darkness, axis=1) * hours
    order = np.argsort(-merit, kind="stable")[:limit]
    highest = np.argmax(np.where(clear, altitude, -90.0), axis=1)
    return [
        PlannedTarget(
            target=targets[i],
            merit_hours=float(merit[i]),
            clear_hours=float(np.sum(clear[i]) * hours),
            highest_deg=float(altitude[i, highest[i]]),
            highest_utc_s=float(times[highest[i]]),
            moon_apart_deg=float(apart[i, highest[i]]),
        )
        for i in order.tolist()
        if merit[i] > 0.0
    ]


def _times(night: Night) -> Floats:
    """The middles of steps through the usable darkness."""
    pieces = [
        np.arange(begin + 0.5 * _BEST_STEP_S, end, _BEST_STEP_S)
        for begin, end in night.usable_spans
    ]
    return np.concatenate(pieces) if pieces else np.empty(0)


def _places_deg(
    targets: Sequence[Target], night: Night, air: Air, times: Floats
) -> tuple[Floats, Floats]:
    """Azimuth and altitude as seen, (targets, times)."""
    ra_deg, dec_deg = np.array([(one.ra_deg, one.dec_deg) for one in targets]).T[..., np.newaxis]
    hour_angle, dec = places.geometric_place_rad(ra_deg, dec_deg, night.site, times)
    azimuth, altitude = erfa.hd2ae(hour_angle, dec, np.radians(night.site.latitude_deg))
    seen = Refraction.of(air).observed_altitude_rad(altitude)
    return np.degrees(azimuth), np.degrees(seen)


def _moonlight(altitude_deg: Floats, apart_deg: Floats, lit: float) -> Floats:
    """How much of the darkness the Moon takes, 0 to 1: all of it beside a full Moon."""
    nearness = np.clip(1.0 - apart_deg / _MOONLESS_DEG, 0.0, 1.0)
    return np.where(altitude_deg > 0.0, lit * (0.4 + 0.6 * nearness), 0.0)
