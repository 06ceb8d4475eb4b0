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

from concurrent.futures import ThreadPoolExecutor
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
_CHUNK, _CORES = 32768, 2
_SMALLEST_COSINE = 1e-12  # of the altitude: at the zenith the rates have no bound


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
    azimuth, altitude = np.asarray(azimuth_deg, float), np.asarray(altitude_deg, float)
    if azimuth.shape == altitude.shape and azimuth.size > _CHUNK:
        return _in_chunks(latitude_deg, azimuth, altitude, air)
    return _turning(latitude_deg, azimuth, altitude, air)


def _in_chunks(latitude_deg: float, azimuth_deg: Floats, altitude_deg: Floats, air: Air) -> Turning:
    """Places in no order: in pieces that stay in the processor's cache, on two of its cores."""
    azimuth, altitude = azimuth_deg.ravel(), altitude_deg.ravel()
    found = np.empty((4, azimuth.size))

    def work(begin: int) -> None:
        piece = slice(begin, begin + _CHUNK)
        part = _turning(latitude_deg, azimuth[piece], altitude[piece], air)
        found[0, piece] = part.parallactic_angle_deg
        found[1, piece] = part.rate_deg_per_hour
        found[2, piece] = part.azimuth_rate_deg_per_hour
        found[3, piece] = part.altitude_rate_deg_per_hour

    with ThreadPoolExecutor(_CORES) as pool:
        list(pool.map(work, range(0, azimuth.size, _CHUNK)))
    return Turning(*found.reshape(4, *azimuth_deg.shape))


def _turning(latitude_deg: float, azimuth_deg: Floats, altitude_deg: Floats, air: Air) -> Turning:
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
    lift, change = refraction.lift_and_slope(observed)
    return observed - lift, 1.0 / (1.0 - change)
