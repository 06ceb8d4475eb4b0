"""Where north is: by the compass, by the Sun's shadow at noon, by the Moon and planets."""

from __future__ import annotations

import calendar
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

import numpy as np

from core.finding import Code, Finding, Refused
from core.sky.almanac import Light, light_at, visits
from core.sky.bodies import Body, BodyNow, bodies_now, course
from core.sky.refraction import Refraction
from core.sky.site import Air, Site


class Compass(Code):
    """What a compass tells here, and why it tells nothing."""

    OUTSIDE_THE_MODEL = "outside the model"
    NO_FIELD = "no field"
    WEAK_FIELD = "weak field"


class Shadow(Code):
    """What the Sun's shadow tells at noon, and why it tells nothing."""

    NONE = "none"
    TOO_SHORT = "too short"
    NO_SUN = "no sun"
    ENDLESS = "endless"


# Where a compass points: magnetic declination by the World Magnetic Model 2025.
#
# Model and its error: NOAA/NCEI and British Geological Survey, "The US/UK World Magnetic Model for
# 2025-2030" (2024), evaluated by the package pygeomag. Declination is east positive.

FIRST_YEAR, END_YEAR = 2025.0, 2030.0
# Where the horizontal field is weaker, WMM tells not to use a compass, or to doubt it.
BLACKOUT_NT, CAUTION_NT = 2000.0, 6000.0
# The model's error of declination, one standard deviation: √(0.26² + (5417/H)²) degrees.
_ERROR_DEG, _ERROR_DEG_NT = 0.26, 5417.0
_HEIGHT_KM = (-1.0, 850.0)


class NoDeclination(Refused):
    """The model cannot say here or then."""


@dataclass(frozen=True)
class Declination:
    """Declination of the compass, east positive; one standard deviation; horizontal field.

    `caution` where compasses are poor, else None.
    """

    declination_deg: float
    sigma_deg: float
    horizontal_nt: float
    latitude_deg: float
    caution: Finding | None

    @property
    def pole_bearing_deg(self) -> float:
        """Compass bearing [0, 360) of true north, or of true south from a southern site."""
        towards = 0.0 if self.latitude_deg >= 0.0 else 180.0
        return (towards - self.declination_deg) % 360.0


def declination(site: Site, utc_s: float) -> Declination:
    """Declination at that place and time. Raises NoDeclination outside the model."""
    year = decimal_year(utc_s)
    if not FIRST_YEAR <= year <= END_YEAR:
        raise NoDeclination(
            Compass.OUTSIDE_THE_MODEL, first=FIRST_YEAR, last=END_YEAR - 1, year=int(year)
        )
    field = _field(site, year)
    horizontal_nt = float(field.h)
    if horizontal_nt < BLACKOUT_NT:
        raise NoDeclination(Compass.NO_FIELD, field=horizontal_nt, least=BLACKOUT_NT)
    return Declination(
        declination_deg=float(field.d),
        sigma_deg=float(np.hypot(_ERROR_DEG, _ERROR_DEG_NT / horizontal_nt)),
        horizontal_nt=horizontal_nt,
        latitude_deg=site.latitude_deg,
        caution=_caution(horizontal_nt),
    )


def decimal_year(utc_s: float) -> float:
    """The year and the part of it gone by, as magnetic models count time."""
    year = (datetime(1970, 1, 1) + timedelta(seconds=utc_s)).year
    start_s = (datetime(year, 1, 1) - datetime(1970, 1, 1)).total_seconds()
    days = 366.0 if calendar.isleap(year) else 365.0
    return year + (utc_s - start_s) / (days * 86400.0)


def _field(site: Site, year: float) -> Any:
    """pygeomag's result. A model of its own for each call: it keeps state while it computes."""
    from pygeomag import GeoMag
    from pygeomag.wmm.wmm_2025 import WMM_2025

    height_km = float(np.clip(site.elevation_m / 1000.0, *_HEIGHT_KM))
    return GeoMag(coefficients_data=WMM_2025).calculate(
        glat=site.latitude_deg, glon=site.longitude_deg, alt=height_km, time=year
    )


def _caution(horizontal_nt: float) -> Finding | None:
    if horizontal_nt >= CAUTION_NT:
        return None
    return Finding.of(Compass.WEAK_FIELD, field=horizontal_nt, least=CAUTION_NT)


# The Sun as a check of the clock and, by its shadow, as a way to true north by day.
#
# No function here leads anyone to look at the Sun or to point anything at it.


SAFE_FROM_SUN_DEG = 30.0  # by day nothing nearer the Sun is offered; common practice, no source
_LOWEST_DEG, _HIGHEST_DEG = 3.0, 85.0  # lower the shadow has no end, higher it has no length
_OVERHEAD_DEG = 80.0


class NoShadow(Refused):
    """There is no useful noon shadow."""


@dataclass(frozen=True)
class NoonShadow:
    """The Sun's next transit, when a plumb line's shadow lies along the true meridian.

    `towards` is "north" or "south", true, where the tip of the shadow points; `sun_altitude_deg`
    as seen; `length_per_height` of the shadow; `turns_deg_per_min`: how fast it turns then.
    """

    utc_s: float
    towards: str
    sun_altitude_deg: float
    length_per_height: float
    turns_deg_per_min: float


def noon_shadow(site: Site, air: Air, utc_s: float) -> NoonShadow:
    """The next local noon. Raises NoShadow when the Sun is then too low or too high."""
    noon_s = visits(Body.SUN, site, utc_s, hours=25.0).transits[0].utc_s
    sun = course(Body.SUN, site, noon_s)
    seen = Refraction.of(air).observed_altitude_rad(np.radians(sun.true_altitude_deg[0]))
    altitude_deg = float(np.degrees(seen))
    if not _LOWEST_DEG <= altitude_deg <= _HIGHEST_DEG:
        raise NoShadow(Shadow.NONE, reason=_no_shadow(altitude_deg))
    rate = 0.25 * np.cos(np.radians(sun.declination_deg[0])) / np.cos(seen)  # dA/dH = cos δ / cos h
    return NoonShadow(
        utc_s=noon_s,
        towards="north" if np.cos(np.radians(sun.azimuth_deg[0])) < 0.0 else "south",
        sun_altitude_deg=altitude_deg,
        length_per_height=float(1.0 / np.tan(seen)),
        turns_deg_per_min=float(rate),
    )


def marks(site: Site, air: Air, utc_s: float, min_altitude_deg: float = 10.0) -> list[BodyNow]:
    """The Moon and planets fit to set an axis by now, highest first; never the Sun.

    Unless it is night or late twilight, nothing within SAFE_FROM_SUN_DEG of the Sun is among them.
    """
    sun, *others = bodies_now(site, air, utc_s)
    dark = light_at(sun.true_altitude_deg) in (Light.NAUTICAL, Light.ASTRONOMICAL, Light.NIGHT)
    fit = [
        now
        for now in others
        if now.altitude_deg >= min_altitude_deg
        and (dark or apart_deg(now, sun) >= SAFE_FROM_SUN_DEG)
    ]
    return sorted(fit, key=lambda now: -now.altitude_deg)


def apart_deg(first: BodyNow, second: BodyNow) -> float:
    """Angle between two bodies as seen."""
    one, two = np.radians([first.altitude_deg, second.altitude_deg])
    turn = np.radians(first.azimuth_deg - second.azimuth_deg)
    cosine = np.sin(one) * np.sin(two) + np.cos(one) * np.cos(two) * np.cos(turn)
    return float(np.degrees(np.arccos(np.clip(cosine, -1.0, 1.0))))


def _no_shadow(altitude_deg: float) -> Finding:
    if altitude_deg > _HIGHEST_DEG:
        return Finding.of(Shadow.TOO_SHORT, altitude=altitude_deg)
    if altitude_deg < 0.0:
        return Finding.of(Shadow.NO_SUN)
    return Finding.of(Shadow.ENDLESS, altitude=altitude_deg)
