"""The angle between two directions."""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

Floats = NDArray[np.float64]


def separation_rad(
    azimuth_deg: ArrayLike,
    altitude_deg: ArrayLike,
    other_azimuth_deg: ArrayLike,
    other_altitude_deg: ArrayLike,
) -> Floats:
    """Haversine formula, exact for small angles, of longitudes and latitudes of any kind."""
    first, second = np.radians(altitude_deg), np.radians(other_altitude_deg)
    turn = np.radians(np.asarray(other_azimuth_deg) - np.asarray(azimuth_deg))
    square = np.sin(0.5 * (second - first)) ** 2
    square = square + np.cos(first) * np.cos(second) * np.sin(0.5 * turn) ** 2
    return np.asarray(2.0 * np.arcsin(np.minimum(np.sqrt(square), 1.0)))


def separation_deg(
    azimuth_deg: ArrayLike,
    altitude_deg: ArrayLike,
    other_azimuth_deg: ArrayLike,
    other_altitude_deg: ArrayLike,
) -> Floats:
    """The same in degrees."""
    return np.degrees(
        separation_rad(azimuth_deg, altitude_deg, other_azimuth_deg, other_altitude_deg)
    )
