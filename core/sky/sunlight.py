"""The Sun as a check of the clock and, by its shadow, as a way to true north by day.

No function here leads anyone to look at the Sun or to point anything at it.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from core.language import marked, say
from core.sky.almanac import Light, light_at, visits
from core.sky.bodies import Body, BodyNow, bodies_now, body_now, course
from core.sky.compass import direction_words
from core.sky.refraction import Refraction
from core.sky.site import Air, Site

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
