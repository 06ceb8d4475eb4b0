"""Residual field rotation when a wedge or an equatorial platform is set for another latitude.

The drive turns about an axis beside the pole, the star is kept in place by small corrections about
a second axis: its own polar axis for a fork on a wedge, the vertical of the telescope for a
Dobsonian on a platform. What remains is a slow turn about the line of sight. With no drive and
corrections about the vertical it is the field rotation of a plain alt-azimuth mount. Rates are the
change of the parallactic angle, as everywhere; refraction is left out.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.alignment.geometry import axis_north_end, true_direction
from core.mount.rotation import SIDEREAL_DEG_PER_HOUR

Floats = NDArray[np.float64]

_SMALLEST_COSINE = 1e-12


def wedge_rate_deg_per_hour(
    hour_angle_deg: ArrayLike,
    declination_deg: float,
    latitude_deg: float,
    set_latitude_deg: float,
    azimuth_error_deg: float = 0.0,
) -> Floats:
    """Residual rotation of a fork on a wedge, shaped as `hour_angle_deg`, guided on its target.

    `set_latitude_deg`: the latitude the wedge is set for; `azimuth_error_deg` as the azimuth error
    of a polar axis (its northern end east of the pole).
    """
    star = _star(hour_angle_deg, declination_deg, latitude_deg)
    pole, axis = _poles(latitude_deg, set_latitude_deg, azimuth_error_deg)
    return _residual(star, axis - pole, axis)


def platform_rate_deg_per_hour(
    hour_angle_deg: ArrayLike,
    declination_deg: float,
    latitude_deg: float,
    set_latitude_deg: float,
    platform_turn_deg: ArrayLike = 0.0,
    azimuth_error_deg: float = 0.0,
) -> Floats:
    """The same for a Dobsonian on an equatorial platform, corrected in its own two axes.

    `platform_turn_deg`: how far the platform has turned past its level middle, west positive.
    """
    star = _star(hour_angle_deg, declination_deg, latitude_deg)
    pole, axis = _poles(latitude_deg, set_latitude_deg, azimuth_error_deg)
    return _residual(star, axis - pole, _carried_vertical(axis, platform_turn_deg))


def _star(hour_angle_deg: ArrayLike, declination_deg: float, latitude_deg: float) -> Floats:
    angles = float(np.radians(declination_deg)), float(np.radians(latitude_deg))
    return true_direction(np.radians(hour_angle_deg), *angles)


def _poles(
    latitude_deg: float, set_latitude_deg: float, azimuth_error_deg: float
) -> tuple[Floats, Floats]:
    """The celestial north pole and the drive's northern end."""
    pole = axis_north_end(float(np.radians(latitude_deg)), 0.0, 0.0)
    axis = axis_north_end(
        float(np.radians(set_latitude_deg)), float(np.radians(azimuth_error_deg)), 0.0
    )
    return pole, axis


def _residual(star: Floats, excess: Floats, corrected_about: Floats) -> Floats:
    """Turn about the line of sight left by a drive that turns by `excess` more than the sky.

    The correction cancels the part of the excess across the line towards `corrected_about`; it
    turns the camera by its sine where the star lies as high above that axis's equator.
    """
    sine = np.sum(star * corrected_about, axis=-1)
    cosine = np.maximum(np.sqrt(np.maximum(1.0 - sine * sine, 0.0)), _SMALLEST_COSINE)
    along = star @ excess
    towards = (np.sum(corrected_about * excess, axis=-1) - sine * along) / cosine
    return np.asarray(SIDEREAL_DEG_PER_HOUR * (along - sine / cosine * towards))


def _carried_vertical(axis: Floats, platform_turn_deg: ArrayLike) -> Floats:
    """The telescope's vertical after the platform's turn: Rodrigues' formula about the axis."""
    turn = np.radians(np.asarray(platform_turn_deg, dtype=np.float64))[..., np.newaxis]
    up = np.array([0.0, 0.0, 1.0])
    westward = np.cross(axis, up)  # north, east, up is left-handed
    along = axis * float(up @ axis)
    return np.asarray(along + (up - along) * np.cos(turn) + westward * np.sin(turn))
