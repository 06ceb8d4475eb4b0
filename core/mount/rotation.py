"""What the sky does in an alt-azimuth mount: field rotation and the speed of both axes.

Signs: hour angle and parallactic angle are positive west of the meridian, azimuth runs from north
through east, and the rate of field rotation is the rate of change of the parallactic angle. Many
write-ups print the field rotation with the opposite sign.

Refraction lifts a star and squeezes the field along the vertical. A squeeze along one direction
turns nothing: the rotation that fits a squeezed field best (the orthogonal factor of its polar
decomposition) is the parallactic angle at the true altitude. So the angles here belong to the true
altitude, and only the altitude rate is the one seen through the air.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.alignment.geometry import SIDEREAL_RATE_RAD_PER_S
from core.sky import place
from core.sky.refraction import Refraction
from core.sky.site import Air, Site

Floats = NDArray[np.float64]

NO_AIR = Air(0.0)
SIDEREAL_DEG_PER_HOUR = float(np.degrees(SIDEREAL_RATE_RAD_PER_S) * 3600.0)
_SMALLEST_COSINE = 1e-12  # of the altitude: at the zenith the rates have no bound
_SLOPE_STEP_RAD = 1e-4


@dataclass(frozen=True, eq=False)
class Turning:
    """Angles and rates at each place; shapes broadcast from azimuth and altitude.

    Nearer than 1e-12 rad to the zenith the two rates without bound stay at their value there.
    """

    parallactic_angle_deg: Floats  # in (−180, 180], west positive
    rate_deg_per_hour: Floats  # field rotation
    azimuth_rate_deg_per_hour: Floats
    altitude_rate_deg_per_hour: Floats  # of the observed altitude


def turning(
    latitude_deg: float, azimuth_deg: ArrayLike, altitude_deg: ArrayLike, air: Air = NO_AIR
) -> Turning:
    """All four quantities for observed places that move with the stars.

    Give a map as a row of azimuths and a column of altitudes: they broadcast, and a million cells
    cost little more than writing them. Meeus, Astronomical Algorithms, ch. 14, differentiated:
    dq/dH = −cos φ cos A / cos h, dA/dH = sin φ − cos φ tan h cos A, dh/dH = cos φ sin A.
    """
    latitude = np.radians(latitude_deg)
    azimuth = np.radians(azimuth_deg)
    altitude, slope = _true_altitude_rad(np.radians(altitude_deg), air)
    sin_lat, cos_lat = np.sin(latitude), np.cos(latitude)
    sin_alt, cos_alt = np.sin(altitude), np.cos(altitude)
    north, east = cos_lat * np.cos(azimuth), cos_lat * np.sin(azimuth)
    per_cosine = SIDEREAL_DEG_PER_HOUR / np.maximum(cos_alt, _SMALLEST_COSINE)
    return Turning(
        np.degrees(np.arctan2(-east, sin_lat * cos_alt - sin_alt * north)),
        -north * per_cosine,
        SIDEREAL_DEG_PER_HOUR * sin_lat - north * (sin_alt * per_cosine),
        SIDEREAL_DEG_PER_HOUR * east * slope,
    )


def rate_deg_per_hour(
    latitude_deg: float, azimuth_deg: ArrayLike, altitude_deg: ArrayLike, air: Air = NO_AIR
) -> Floats:
    """Field rotation alone, as `turning` gives it."""
    altitude, _ = _true_altitude_rad(np.radians(altitude_deg), air)
    north = np.cos(np.radians(latitude_deg)) * np.cos(np.radians(azimuth_deg))
    cos_alt = np.maximum(np.cos(altitude), _SMALLEST_COSINE)
    return np.asarray(north * (-SIDEREAL_DEG_PER_HOUR / cos_alt))


def turning_of_star(
    ra_deg: float, dec_deg: float, site: Site, air: Air, utc_s: ArrayLike
) -> tuple[Floats, Floats, Turning]:
    """Observed azimuth and altitude, degrees, and the turning there; shaped as `utc_s`.

    `ra_deg`, `dec_deg`: ICRS as seen from the Earth at that time.
    """
    azimuth, altitude = place.horizontal_deg(ra_deg, dec_deg, site, air, utc_s)
    return azimuth, altitude, turning(site.latitude_deg, azimuth, altitude, air)


def _true_altitude_rad(observed_rad: ArrayLike, air: Air) -> tuple[Floats, Floats]:
    """The true altitude, and how much the observed one changes with it."""
    observed = np.asarray(observed_rad, dtype=np.float64)
    refraction = Refraction.of(air)
    if refraction.a_rad == 0.0:
        return observed, np.ones_like(observed)
    below, above = (refraction.lift_rad(observed + d) for d in (-_SLOPE_STEP_RAD, _SLOPE_STEP_RAD))
    slope = 1.0 / (1.0 - (above - below) / (2.0 * _SLOPE_STEP_RAD))
    return observed - refraction.lift_rad(observed), slope
