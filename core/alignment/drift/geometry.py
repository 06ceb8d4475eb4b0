"""What a tracked star does when the polar axis is displaced: exact rotation, no small angles.

Signs, for both hemispheres (tested in tests/core/alignment/test_geometry.py):

=====================  ==========================================================================
hour angle             west of the meridian positive
azimuth error          the axis end at the elevated pole lies at greater azimuth than the pole:
                       east of it in the north, west of it in the south
altitude error         that end is too high, measured from the true (geometric) pole
north offset           the star moves north relative to where the mount keeps pointing
east offset            east on the sky
=====================  ==========================================================================

Directions are unit vectors with components north, east, up at the site.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.sky.refraction import Refraction
from core.units import ARCSEC_PER_RAD

Floats = NDArray[np.float64]

_EQUATORIAL_SPEED = 1.5477e-6  # speed of the Earth's surface at the equator over that of light


def hemisphere_sign(latitude_rad: float) -> float:
    """+1 where the north pole is elevated (the equator counts as north), −1 in the south."""
    return 1.0 if latitude_rad >= 0.0 else -1.0


def direction(azimuth_rad: ArrayLike, altitude_rad: ArrayLike) -> Floats:
    """Unit vectors (…, 3) towards azimuth (from north through east) and altitude."""
    azimuth, altitude = np.broadcast_arrays(azimuth_rad, altitude_rad)
    cosine = np.cos(altitude)
    return np.stack([cosine * np.cos(azimuth), cosine * np.sin(azimuth), np.sin(altitude)], axis=-1)


def true_direction(
    hour_angle_rad: ArrayLike, declination_rad: float, latitude_rad: float
) -> Floats:
    """Unit vectors (n, 3) of a star without air; Meeus, Astronomical Algorithms, eq. 13.5–13.6."""
    hour_angle = np.asarray(hour_angle_rad, dtype=float)
    sin_dec, cos_dec = np.sin(declination_rad), np.cos(declination_rad)
    sin_lat, cos_lat = np.sin(latitude_rad), np.cos(latitude_rad)
    return np.stack(
        [
            sin_dec * cos_lat - cos_dec * np.cos(hour_angle) * sin_lat,
            -cos_dec * np.sin(hour_angle),
            sin_dec * sin_lat + cos_dec * np.cos(hour_angle) * cos_lat,
        ],
        axis=-1,
    )


def observed_direction(
    hour_angle_rad: ArrayLike, declination_rad: float, latitude_rad: float, refraction: Refraction
) -> Floats:
    """Unit vectors (n, 3) where the star is seen: diurnal aberration and refraction applied."""
    vector = true_direction(hour_angle_rad, declination_rad, latitude_rad)
    vector[..., 1] += _EQUATORIAL_SPEED * np.cos(latitude_rad)
    vector /= np.linalg.norm(vector, axis=-1, keepdims=True)
    true_altitude = np.arcsin(np.clip(vector[..., 2], -1.0, 1.0))
    seen_altitude = refraction.observed_altitude_rad(true_altitude)
    horizontal = np.maximum(np.cos(true_altitude), 1e-12)
    vector[..., :2] *= (np.cos(seen_altitude) / horizontal)[..., np.newaxis]
    vector[..., 2] = np.sin(seen_altitude)
    return vector


def axis_north_end(
    latitude_rad: float, azimuth_error_rad: ArrayLike, altitude_error_rad: ArrayLike
) -> Floats:
    """Unit vector (…, 3) of the axis end on the side of the north celestial pole.

    South of the equator that end points below the horizon, so raising the elevated end lowers it.
    """
    altitude = latitude_rad + hemisphere_sign(latitude_rad) * np.asarray(altitude_error_rad)
    return direction(azimuth_error_rad, altitude)


def sky_error_rad(
    latitude_rad: float, azimuth_error_rad: float, altitude_error_rad: float
) -> float:
    """Angle between the axis and the true pole."""
    pole = axis_north_end(latitude_rad, 0.0, 0.0)
    axis = axis_north_end(latitude_rad, azimuth_error_rad, altitude_error_rad)
    return float(np.arctan2(np.linalg.norm(np.cross(pole, axis)), pole @ axis))


def offsets_rad(
    hour_angle_rad: Floats,
    declination_rad: float,
    latitude_rad: float,
    azimuth_error_rad: float,
    altitude_error_rad: float,
    refraction: Refraction,
) -> tuple[Floats, Floats]:
    """North and east offsets (n,) in the mount's frame, from where the mount keeps pointing.

    The mount is on the star at the first hour angle and turns about its axis at the sidereal rate.
    Offsets are measured on the tangent plane at the pointing, as a camera sees them, with north
    towards the mount's own axis.
    """
    seen = observed_direction(hour_angle_rad, declination_rad, latitude_rad, refraction)
    axis = axis_north_end(latitude_rad, azimuth_error_rad, altitude_error_rad)
    return offsets_of_seen_rad(seen, np.asarray(hour_angle_rad) - hour_angle_rad[0], axis)


def offsets_of_seen_rad(seen: Floats, turned_rad: Floats, axis: Floats) -> tuple[Floats, Floats]:
    """North and east offsets (…, n) of directions `seen` (n, 3) from a mount that was on the first.

    `turned_rad` (n,): how far the mount has turned westward since; `axis` (…, 3): north ends of one
    axis or several.
    """
    sin_dec = (axis @ seen[0])[..., np.newaxis]
    outward = seen[0] - sin_dec * axis
    cos_dec = np.linalg.norm(outward, axis=-1, keepdims=True)
    outward /= cos_dec
    east = np.cross(outward, axis)  # north, east, up is left-handed
    equatorial = (outward @ seen.T + 1j * (east @ seen.T)) * np.exp(1j * turned_rad)
    poleward = axis @ seen.T
    depth = sin_dec * poleward + cos_dec * equatorial.real
    north = (cos_dec * poleward - sin_dec * equatorial.real) / depth
    return north, equatorial.imag / depth


def offsets_arcsec(
    hour_angle_rad: Floats,
    declination_rad: float,
    latitude_rad: float,
    azimuth_error_rad: float,
    altitude_error_rad: float,
    refraction: Refraction,
) -> tuple[Floats, Floats]:
    """As `offsets_rad`, in arcseconds."""
    north, east = offsets_rad(
        hour_angle_rad,
        declination_rad,
        latitude_rad,
        azimuth_error_rad,
        altitude_error_rad,
        refraction,
    )
    return north * ARCSEC_PER_RAD, east * ARCSEC_PER_RAD


def altitude_azimuth_rad(vector: Floats) -> tuple[Floats, Floats]:
    """Altitude and azimuth (0…2π) of unit vectors (…, 3)."""
    altitude = np.arcsin(np.clip(vector[..., 2], -1.0, 1.0))
    return altitude, np.arctan2(vector[..., 1], vector[..., 0]) % (2.0 * np.pi)
