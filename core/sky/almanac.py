"""When bodies rise, cross the meridian and set, and when it gets dark.

Rising and setting are those of printed tables (US Naval Observatory): a level horizon, 34′ of
refraction, the upper limb of the Sun (16′) or the Moon (by its distance). Twilight ends with the
Sun's centre 6°, 12° and 18° below the horizon, without refraction. A body that stays up or down is
a plain result.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.finding import Code, Finding
from core.sky import bodies, clocks
from core.sky.bodies import Body, Course, course
from core.sky.site import Site

Floats = NDArray[np.float64]

HORIZON_REFRACTION_DEG = 34.0 / 60.0
SUN_RADIUS_DEG = 16.0 / 60.0
MOON_RADIUS_KM = 1737.4
_STEP_S = 600.0  # a spline through these errs by less than 0.01″, a tenth of a second at most


class Light(Code):
    """How light it is, from the Sun's height."""

    DAY = "day"
    CIVIL = "civil twilight"
    NAUTICAL = "nautical twilight"
    ASTRONOMICAL = "astronomical twilight"
    NIGHT = "night"


# The Sun's true altitude at which each begins, falling; night has no lower end.
_LIGHT_ABOVE_DEG = {
    Light.DAY: -(HORIZON_REFRACTION_DEG + SUN_RADIUS_DEG),
    Light.CIVIL: -6.0,
    Light.NAUTICAL: -12.0,
    Light.ASTRONOMICAL: -18.0,
}


@dataclass(frozen=True)
class SkyEvent:
    """A rising, setting or transit: Unix time, azimuth, and true altitude of the centre."""

    utc_s: float
    azimuth_deg: float
    true_altitude_deg: float


@dataclass(frozen=True)
class Visits:
    """A body's events within a span, each kind in order of time.

    Transits are those over the meridian towards the zenith, above or below the horizon.
    """

    body: Body
    rises: tuple[SkyEvent, ...]
    transits: tuple[SkyEvent, ...]
    sets: tuple[SkyEvent, ...]
    is_up_at_start: bool

    @property
    def stays_up(self) -> bool:
        """It does not set."""
        return self.is_up_at_start and not self.sets

    @property
    def stays_down(self) -> bool:
        """It does not rise."""
        return not self.is_up_at_start and not self.rises


@dataclass(frozen=True)
class LightChange:
    """From `utc_s` on it is `light`."""

    utc_s: float
    light: Light


@dataclass(frozen=True)
class LightCourse:
    """The light at the start of a span and its changes, in order of time."""

    at_start: Light
    changes: tuple[LightChange, ...]

    @property
    def darkest(self) -> Light:
        """The least light within the span."""
        order = list(Light)
        return max((self.at_start, *(change.light for change in self.changes)), key=order.index)


def visits(body: Body, site: Site, start_utc_s: float, hours: float = 24.0) -> Visits:
    """Rises, transits and sets from `start_utc_s` on; about 20 ms a day."""
    sampled = _sampled(body, site, start_utc_s, hours)
    height_deg = sampled.true_altitude_deg - _horizon_deg(sampled)
    span = start_utc_s, start_utc_s + 3600.0 * hours
    crossings = _crossings(sampled.utc_s, height_deg, 0.0, span)
    turned = np.degrees(np.unwrap(np.radians(sampled.hour_angle_deg)))
    turns = 360.0 * np.arange(np.ceil(turned[0] / 360.0), np.floor(turned[-1] / 360.0) + 1.0)
    transits = [time for turn in turns for time, _ in _crossings(sampled.utc_s, turned, turn, span)]
    return Visits(
        body=body,
        rises=_events(body, site, [time for time, rising in crossings if rising]),
        transits=_events(body, site, transits),
        sets=_events(body, site, [time for time, rising in crossings if not rising]),
        is_up_at_start=bool(np.interp(start_utc_s, sampled.utc_s, height_deg) > 0.0),
    )


def light_course(site: Site, start_utc_s: float, hours: float = 24.0) -> LightCourse:
    """Day, the three twilights and night from `start_utc_s` on."""
    sampled = _sampled(Body.SUN, site, start_utc_s, hours)
    altitude_deg = sampled.true_altitude_deg
    span = start_utc_s, start_utc_s + 3600.0 * hours
    lights = list(Light)
    changes = []
    for light, above_deg in _LIGHT_ABOVE_DEG.items():
        darker = lights[lights.index(light) + 1]
        changes += [
            LightChange(time, light if rising else darker)
            for time, rising in _crossings(sampled.utc_s, altitude_deg, above_deg, span)
        ]
    at_start = light_at(float(np.interp(start_utc_s, sampled.utc_s, altitude_deg)))
    return LightCourse(at_start, tuple(sorted(changes, key=lambda change: change.utc_s)))


def light_at(sun_true_altitude_deg: float) -> Light:
    """The light for a height of the Sun's centre, without refraction."""
    for light, above_deg in _LIGHT_ABOVE_DEG.items():
        if sun_true_altitude_deg >= above_deg:
            return light
    return Light.NIGHT


def losses(utc_s: float) -> tuple[Finding, ...]:
    """What these figures lose at a time outside the bundled tables."""
    placed = bodies.loss(clocks.julian_dates_tt(utc_s))
    turned = clocks.bundled().loss(utc_s)
    return tuple(lost for lost in (placed, turned) if lost is not None)


def _sampled(body: Body, site: Site, start_utc_s: float, hours: float) -> Course:
    """The course with a margin of two steps on either side."""
    count = int(np.ceil(3600.0 * hours / _STEP_S)) + 5
    return course(body, site, start_utc_s + _STEP_S * (np.arange(count) - 2.0))


def _horizon_deg(sampled: Course) -> Floats:
    """True altitude of the centre when the upper limb is on the horizon, (n,)."""
    radius_deg = np.zeros_like(sampled.distance_km)
    if sampled.body is Body.SUN:
        radius_deg += SUN_RADIUS_DEG
    elif sampled.body is Body.MOON:
        radius_deg = np.degrees(np.arcsin(MOON_RADIUS_KM / sampled.distance_km))
    return -HORIZON_REFRACTION_DEG - radius_deg


def _crossings(
    utc_s: Floats, values: Floats, level: float, span: tuple[float, float]
) -> list[tuple[float, bool]]:
    """(time, whether rising) where the smooth curve crosses the level within the span."""
    from scipy.interpolate import CubicSpline  # loads slowly

    curve = CubicSpline(utc_s - utc_s[0], values)
    times = np.atleast_1d(curve.solve(level, extrapolate=False))
    rising = curve(times, 1) > 0.0
    found = zip((times + utc_s[0]).tolist(), rising.tolist(), strict=True)
    return [(time, up) for time, up in found if span[0] <= time < span[1]]


def _events(body: Body, site: Site, times: list[float]) -> tuple[SkyEvent, ...]:
    if not times:
        return ()
    then = course(body, site, np.array(times))
    rows = zip(times, then.azimuth_deg.tolist(), then.true_altitude_deg.tolist(), strict=True)
    return tuple(SkyEvent(*row) for row in rows)
