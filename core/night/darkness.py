"""The night that is on or the next to come: how dark it gets, and when."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from core.language import say
from core.sky.almanac import Light, LightCourse, Visits, light_at, light_course, visits
from core.sky.bodies import Body, course
from core.sky.places import separation_rad
from core.sky.site import Site

Span = tuple[float, float]

_DAY_S, _MINUTE_S = 86400.0, 60.0
_DARK_TO_DIM = (Light.NIGHT, Light.ASTRONOMICAL, Light.NAUTICAL)


@dataclass(frozen=True)
class Night:
    """From one noon of the Sun to the next; times are Unix seconds.

    `moon_lit`: the illuminated share of the Moon's disc at the middle, 0 to 1.
    """

    site: Site
    begin_utc_s: float
    end_utc_s: float
    light: LightCourse
    sun: Visits
    moon: Visits
    moon_lit: float

    @property
    def middle_utc_s(self) -> float:
        return 0.5 * (self.begin_utc_s + self.end_utc_s)

    @property
    def sunset_utc_s(self) -> float | None:
        return self.sun.sets[0].utc_s if self.sun.sets else None

    @property
    def sunrise_utc_s(self) -> float | None:
        return self.sun.rises[-1].utc_s if self.sun.rises else None

    def is_whole(self, span: Span) -> bool:
        """Whether a span lasts from noon to noon: what is so all the time has no times."""
        return span[0] <= self.begin_utc_s + _MINUTE_S and span[1] >= self.end_utc_s - _MINUTE_S

    def spans_of(self, light: Light) -> tuple[Span, ...]:
        """When it is that dark or darker."""
        return _spans(self, light)

    @property
    def usable_light(self) -> Light | None:
        """The darkest there is to work in; None where it stays too light for any star work."""
        return next((light for light in _DARK_TO_DIM if self.spans_of(light)), None)

    @property
    def usable_spans(self) -> tuple[Span, ...]:
        """When it is as dark as tonight gets, nautical twilight at the least."""
        light = self.usable_light
        return () if light is None else self.spans_of(light)

    @property
    def sentences(self) -> tuple[str, ...]:
        """What is special about this night, plainly; nothing where it is an ordinary one."""
        return tuple(filter(None, (_sun_sentence(self), _dark_sentence(self))))


def night_of(site: Site, utc_s: float) -> Night:
    """The night under way at `utc_s`; after the Sun has risen, the coming one."""
    noons = visits(Body.SUN, site, utc_s - 1.1 * _DAY_S, hours=24.0 * 3.3).transits
    times = [noon.utc_s for noon in noons]
    begin = max(time for time in times if time <= utc_s)
    later = [time for time in times if time > begin]
    if utc_s > 0.5 * (begin + later[0]) and _sun_is_up(site, utc_s):
        begin = later.pop(0)
    return _night(site, begin, later[0])


def _night(site: Site, begin_utc_s: float, end_utc_s: float) -> Night:
    hours = (end_utc_s - begin_utc_s) / 3600.0
    return Night(
        site=site,
        begin_utc_s=begin_utc_s,
        end_utc_s=end_utc_s,
        light=light_course(site, begin_utc_s, hours),
        sun=visits(Body.SUN, site, begin_utc_s, hours),
        moon=visits(Body.MOON, site, begin_utc_s, hours),
        moon_lit=moon_lit(site, 0.5 * (begin_utc_s + end_utc_s)),
    )


def moon_lit(site: Site, utc_s: float) -> float:
    """Illuminated share of its disc, 0 to 1: Meeus, Astronomical Algorithms, eq. 48.1 and 48.3."""
    sun, moon = course(Body.SUN, site, utc_s), course(Body.MOON, site, utc_s)
    apart = separation_rad(
        sun.azimuth_deg, sun.true_altitude_deg, moon.azimuth_deg, moon.true_altitude_deg
    )
    sun_km, moon_km = sun.distance_km, moon.distance_km
    phase = np.arctan2(sun_km * np.sin(apart), moon_km - sun_km * np.cos(apart))
    return float(0.5 * (1.0 + np.cos(phase[0])))


def _sun_is_up(site: Site, utc_s: float) -> bool:
    return light_at(float(course(Body.SUN, site, utc_s).true_altitude_deg[0])) is Light.DAY


def _spans(night: Night, light: Light) -> tuple[Span, ...]:
    order = list(Light)
    times = [night.begin_utc_s, *(change.utc_s for change in night.light.changes), night.end_utc_s]
    lights = [night.light.at_start, *(change.light for change in night.light.changes)]
    found: list[Span] = []
    for begin, end, now in zip(times[:-1], times[1:], lights, strict=True):
        if order.index(now) < order.index(light):
            continue
        if found and found[-1][1] == begin:
            begin = found.pop()[0]
        found.append((begin, end))
    return tuple(found)


def _sun_sentence(night: Night) -> str:
    if night.sun.stays_up:
        return say(
            "The Sun does not set: polar summer, no night at all. Stars cannot be used; "
            "keep every optic away from the Sun."
        )
    if night.sun.stays_down:
        return say("The Sun does not rise: polar night. What is dark here may last past noon.")
    return ""


def _dark_sentence(night: Night) -> str:
    darkest = night.light.darkest
    if night.sun.stays_up or darkest is Light.NIGHT:
        return ""
    if darkest in (Light.ASTRONOMICAL, Light.NAUTICAL):
        return say(
            "It gets no darker than {darkest}: bright stars and planets serve, faint "
            "nebulae and galaxies hardly.",
            darkest=say(darkest.value),
        )
    return say("It gets no darker than civil twilight: only the brightest stars and planets show.")
