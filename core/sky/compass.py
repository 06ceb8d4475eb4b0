"""Where north is: directions in words, the compass, and the Sun's shadow."""

from __future__ import annotations

import calendar
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

import numpy as np

from core.language import marked, say
from core.sky.almanac import Light, light_at, visits
from core.sky.bodies import Body, BodyNow, bodies_now, body_now, course
from core.sky.refraction import Refraction
from core.sky.site import Air, Site

# Directions in words.

_WINDS = (
    *(marked("north"), marked("north-north-east"), marked("north-east"), marked("east-north-east")),
    *(marked("east"), marked("east-south-east"), marked("south-east"), marked("south-south-east")),
    *(marked("south"), marked("south-south-west"), marked("south-west"), marked("west-south-west")),
    *(marked("west"), marked("west-north-west"), marked("north-west"), marked("north-north-west")),
)


def direction_words(azimuth_deg: float) -> str:
    """The nearest of sixteen winds: 250° is "west-south-west"."""
    return say(_WINDS[round(azimuth_deg / 22.5) % len(_WINDS)])


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

IRON = marked(
    "Keep the compass two metres from the mount, a car or anything of iron; rock and "
    "cables nearby can add degrees that no model knows."
)


class NoDeclination(ValueError):
    """The model cannot say here or then; the message is a sentence with the reason."""


@dataclass(frozen=True)
class Declination:
    """Declination of the compass, east positive; one standard deviation; horizontal field.

    `caution` is a sentence where compasses are poor, else None.
    """

    declination_deg: float
    sigma_deg: float
    horizontal_nt: float
    latitude_deg: float
    caution: str | None

    @property
    def pole_bearing_deg(self) -> float:
        """Compass bearing [0, 360) of true north, or of true south from a southern site."""
        towards = 0.0 if self.latitude_deg >= 0.0 else 180.0
        return (towards - self.declination_deg) % 360.0

    @property
    def sentence(self) -> str:
        """How to set the polar axis by compass."""
        bearing = round(self.pole_bearing_deg, 1) % 360.0
        sentence = marked("True south is at compass bearing {bearing:.1f}° here ± {sigma}°.")
        if self.latitude_deg >= 0.0:
            sentence = marked("True north is at compass bearing {bearing:.1f}° here ± {sigma}°.")
        return say(sentence, bearing=bearing, sigma=_up(self.sigma_deg))


def declination(site: Site, utc_s: float) -> Declination:
    """Declination at that place and time. Raises NoDeclination outside the model."""
    year = decimal_year(utc_s)
    if not FIRST_YEAR <= year <= END_YEAR:
        raise NoDeclination(
            say(
                "The magnetic model holds from {first:.0f} to the end of {last:.0f}, not in "
                "{year}: set the axis by a star, by the Sun's shadow at noon, or with the "
                "declination printed on a current map.",
                first=FIRST_YEAR,
                last=END_YEAR - 1,
                year=int(year),
            )
        )
    field = _field(site, year)
    horizontal_nt = float(field.h)
    if horizontal_nt < BLACKOUT_NT:
        raise NoDeclination(
            say(
                "A compass is no use here: so near the magnetic pole the field is almost "
                "upright (horizontal part {field:.0f} nT, under {least:.0f}). Set the axis "
                "by a star or by the Sun's shadow at noon.",
                field=horizontal_nt,
                least=BLACKOUT_NT,
            )
        )
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


def _caution(horizontal_nt: float) -> str | None:
    if horizontal_nt >= CAUTION_NT:
        return None
    return say(
        "Doubt the compass here: near the magnetic pole its needle is weak and sluggish "
        "(horizontal field {field:.0f} nT, under {least:.0f}) and magnetic storms turn "
        "it by degrees.",
        field=horizontal_nt,
        least=CAUTION_NT,
    )


def _up(sigma_deg: float) -> str:
    """Rounded up to a tenth, so that the ± never promises too much."""
    return f"{np.ceil(sigma_deg * 10.0 - 1e-9) / 10.0:.1f}"


# The Sun as a check of the clock and, by its shadow, as a way to true north by day.
#
# No function here leads anyone to look at the Sun or to point anything at it.

SUN_CAUTION = marked(
    "Never look at the Sun, and never point a telescope, finder, camera or polar-axis "
    "sight at it or near it: eyes are destroyed at once and without pain, and "
    "instruments can catch fire. Keep every cap on and every finder covered until the "
    "Sun has set."
)
SHADOW_CAUTION = marked(
    "Use the shadow only, with your back to the Sun and all optics capped or still "
    "packed. Never aim along the shadow towards the Sun."
)
IF_NOT = marked("If it is not, the clock, the time zone or the longitude is wrong.")
BY_SHADOWS = marked("Judge by the shadows; never look at the Sun.")

_WITH_ARTICLE = {Body.SUN: marked("The Sun"), Body.MOON: marked("The Moon")}

SAFE_FROM_SUN_DEG = 30.0  # by day nothing nearer the Sun is offered; common practice, no source
_LOWEST_DEG, _HIGHEST_DEG = 3.0, 85.0  # lower the shadow has no end, higher it has no length
_OVERHEAD_DEG = 80.0


class NoShadow(ValueError):
    """There is no useful noon shadow; the message is a sentence with the reason."""


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

    @property
    def sentence(self) -> str:
        """What to do, without the time, which the screen writes in its own way."""
        return say(
            "At local noon the shadow of a plumb line points true {towards}. It is "
            "{length:.1f} times as long as the line is high and turns {turn:.1f}° a "
            "minute, so mark it within half a minute.",
            towards=say(self.towards),
            length=self.length_per_height,
            turn=self.turns_deg_per_min,
        )


def where_sentence(now: BodyNow) -> str:
    """Where a body should be, as a check by eye; for the Sun below the horizon, how light it is."""
    name = say(_WITH_ARTICLE.get(now.body, now.body.value))
    where = direction_words(now.azimuth_deg)
    height = round(now.altitude_deg if now.altitude_deg > 0.0 else now.true_altitude_deg)
    if height > _OVERHEAD_DEG:
        return say(
            "{name} should now be almost overhead, {height}° high in the {where}.",
            name=name,
            height=height,
            where=where,
        )
    if height > 0:
        return say(
            "{name} should now be {height}° above the {where} horizon.",
            name=name,
            height=height,
            where=where,
        )
    if height == 0:
        return say("{name} should now be on the {where} horizon.", name=name, where=where)
    sentence = marked("{name} should now be {height}° below the {where} horizon.")
    if now.body is Body.SUN:
        sentence = marked("{name} should now be {height}° below the {where} horizon: {dark}.")
    dark = _dark_words(now.true_altitude_deg)
    return say(sentence, name=name, height=-height, where=where, dark=dark)


def sun_check(site: Site, air: Air, utc_s: float) -> str:
    """The check of clock, zone and longitude that a person can make without an instrument."""
    sun = body_now(Body.SUN, site, air, utc_s)
    up = light_at(sun.true_altitude_deg) is Light.DAY
    return " ".join([where_sentence(sun), say(IF_NOT), *([say(BY_SHADOWS)] if up else [])])


def noon_shadow(site: Site, air: Air, utc_s: float) -> NoonShadow:
    """The next local noon. Raises NoShadow when the Sun is then too low or too high."""
    noon_s = visits(Body.SUN, site, utc_s, hours=25.0).transits[0].utc_s
    sun = course(Body.SUN, site, noon_s)
    seen = Refraction.of(air).observed_altitude_rad(np.radians(sun.true_altitude_deg[0]))
    altitude_deg = float(np.degrees(seen))
    if not _LOWEST_DEG <= altitude_deg <= _HIGHEST_DEG:
        raise NoShadow(
            say("{reason} Set the axis by compass or by a star.", reason=_no_shadow(altitude_deg))
        )
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


def _no_shadow(altitude_deg: float) -> str:
    if altitude_deg > _HIGHEST_DEG:
        return say(
            "At the next noon the Sun is almost overhead ({altitude:.0f}°): the shadow "
            "is too short and turns too fast.",
            altitude=altitude_deg,
        )
    if altitude_deg < 0.0:
        return say("The Sun stays below the horizon at the next noon: there is no shadow.")
    return say(
        "At the next noon the Sun is only {altitude:.0f}° high: the shadow has no end.",
        altitude=altitude_deg,
    )


def _dark_words(sun_altitude_deg: float) -> str:
    light = light_at(sun_altitude_deg)
    if light is Light.NIGHT:
        return say("it should be night")
    return say("it should be {light}", light=say(light.value))
