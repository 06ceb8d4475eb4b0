"""Bodies to set a polar axis by roughly when the pole is hidden: where they are, what to set.

With the axis at the latitude's height and both circles set to the body, the whole mount is turned
on its foot until the body stands in the finder: then the axis points to the pole. Never the Sun.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from core.sky import catalogues
from core.sky.almanac import Light, light_at
from core.sky.bodies import Body, body_now
from core.sky.compass import marks
from core.sky.site import Air, Site

LOWEST_DEG, HIGHEST_DEG = 10.0, 75.0  # lower the air bends much, higher azimuth tells little
MOST_STARS = 20
_DARK = (Light.NAUTICAL, Light.ASTRONOMICAL, Light.NIGHT)


@dataclass(frozen=True)
class RoughMark:
    """One body now. Azimuth from north through east, altitude as seen, refraction included.

    `hour_angle_deg` in [−180, 180), west positive, and `declination_deg`: for the mount's circles.
    `magnitude` is None for the Moon and planets.
    """

    name: str
    azimuth_deg: float
    altitude_deg: float
    hour_angle_deg: float
    declination_deg: float
    magnitude: float | None = None


def rough_marks(site: Site, air: Air, utc_s: float) -> list[RoughMark]:
    """The Moon and planets, then the brightest stars; none by day but what `marks` allows."""
    found = [
        RoughMark(
            str(now.body),
            now.azimuth_deg,
            now.altitude_deg,
            now.hour_angle_deg,
            declination_deg(now.azimuth_deg, now.altitude_deg, site.latitude_deg),
        )
        for now in marks(site, air, utc_s, LOWEST_DEG)
        if now.altitude_deg <= HIGHEST_DEG
    ]
    sun = body_now(Body.SUN, site, air, utc_s)
    if light_at(sun.true_altitude_deg) in _DARK:
        found += _stars(site, air, utc_s)
    return found


def declination_deg(azimuth_deg: float, altitude_deg: float, latitude_deg: float) -> float:
    """Declination of what stands there, within the refraction (5′ at 10° of height).

    sin δ = sin φ sin h + cos φ cos h cos A (spherical law of cosines).
    """
    azimuth, altitude, latitude = np.radians([azimuth_deg, altitude_deg, latitude_deg])
    sine = np.sin(latitude) * np.sin(altitude)
    sine += np.cos(latitude) * np.cos(altitude) * np.cos(azimuth)
    return float(np.degrees(np.arcsin(np.clip(sine, -1.0, 1.0))))


def _stars(site: Site, air: Air, utc_s: float) -> list[RoughMark]:
    up = catalogues.load_stars().up_now(site, air, utc_s, LOWEST_DEG, 2 * MOST_STARS)
    fit = [now for now in up if now.altitude_deg <= HIGHEST_DEG][:MOST_STARS]
    return [
        RoughMark(
            now.star.name,
            now.azimuth_deg,
            now.altitude_deg,
            now.hour_angle_deg,
            declination_deg(now.azimuth_deg, now.altitude_deg, site.latitude_deg),
            now.star.magnitude,
        )
        for now in fit
    ]
