"""One star in the middle of the field: where the mount said it was, and where it was."""

from __future__ import annotations

import math
from dataclasses import dataclass

from core.sky.clock import local_sidereal_time_hours
from core.sky.place import hour_angle_and_declination
from core.sky.site import Site

EAST_OF_PIER, WEST_OF_PIER = 1, -1


@dataclass(frozen=True)
class Sighting:
    """Degrees; hour angles west positive. `star_*`: apparent place without refraction.

    `side`: +1 with the tube east of the pier (looking west), −1 west of it; a fork has +1 always.
    """

    star_hour_angle_deg: float
    star_declination_deg: float
    mount_hour_angle_deg: float
    mount_declination_deg: float
    side: int = EAST_OF_PIER
    label: str = ""


def sighting_of(
    star_deg: tuple[float, float],
    mount_deg: tuple[float, float],
    utc_s: float,
    site: Site,
    *,
    mount_is_of_date: bool,
    side: int = EAST_OF_PIER,
    label: str = "",
) -> Sighting:
    """From right ascensions and declinations, degrees. `star_deg`: ICRS, as catalogues and plate
    solutions give it; `mount_deg`: ICRS too, or of date as most hand controls show it."""
    hour_angle, declination = hour_angle_and_declination(*star_deg, site, [utc_s])
    if mount_is_of_date:
        sidereal_deg = 15.0 * float(local_sidereal_time_hours(utc_s, site))
        mount = (sidereal_deg - mount_deg[0], mount_deg[1])
    else:
        angle, dec = hour_angle_and_declination(*mount_deg, site, [utc_s])
        mount = (math.degrees(angle[0]), math.degrees(dec))
    return Sighting(
        math.degrees(hour_angle[0]),
        math.degrees(declination),
        (mount[0] + 180.0) % 360.0 - 180.0,
        mount[1],
        side,
        label,
    )
