"""What an imperfect equatorial mount reads when a star is in the middle of the field.

The steps are exact rotations where angles may be large (the polar axis, as in
`core.alignment.geometry`) and first order where they are minutes of arc (all others). Terms, in the
order of `TERMS`, radians inside:

- zero of the hour circle: readings too far west by this angle,
- zero of the declination circle: readings too far north on the east side of the pier, too far south
  on the other, where the circle runs the other way,
- azimuth and altitude error of the polar axis, signs as in `core.alignment.geometry`,
- tube not square to the declination axis: the tube looks this far east of where it should when it
  stands on the east side of the pier, as far west on the other,
- axes not square to each other: the same, growing as the tangent of declination,
- sag of the tube: it looks this angle times the cosine of altitude too low.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.alignment.geometry import (
    altitude_azimuth_rad,
    axis_north_end,
    direction,
    observed_direction,
)
from core.sky.refraction import Refraction

Floats = NDArray[np.float64]

TERMS = 7
ZERO_HOUR, ZERO_DECLINATION, AZIMUTH, ALTITUDE, TUBE, AXES, SAG = range(TERMS)
_STEP_RAD = 1e-5
_NEAR_POLE_COSINE = 0.01


@dataclass(frozen=True, eq=False)
class Sky:
    """Where the stars were: true hour angle west positive and declination (n,), side of the pier
    +1 east, −1 west (n,)."""

    hour_angle_rad: Floats
    declination_rad: Floats
    side: Floats
    latitude_rad: float
    refraction: Refraction

    def seen(self) -> Floats:
        """Unit vectors (n, 3) north, east, up, refraction included."""
        rows = [
            observed_direction(one, float(dec), self.latitude_rad, self.refraction)
            for one, dec in zip(self.hour_angle_rad, self.declination_rad, strict=True)
        ]
        return np.stack(rows)


def readings(sky: Sky, terms_rad: Floats) -> Floats:
    """Hour angle and declination (n, 2) the mount reads, radians."""
    aimed = _raised(sky.seen(), float(terms_rad[SAG]))
    axis = axis_north_end(sky.latitude_rad, float(terms_rad[AZIMUTH]), float(terms_rad[ALTITUDE]))
    own = aimed @ _to_pole(axis, axis_north_end(sky.latitude_rad, 0.0, 0.0)).T
    hour_angle, declination = _equatorial(own, sky.latitude_rad)
    cosine = np.maximum(np.cos(declination), _NEAR_POLE_COSINE)
    sided = (terms_rad[TUBE] + terms_rad[AXES] * np.sin(declination)) / cosine
    return np.stack(
        [
            hour_angle + terms_rad[ZERO_HOUR] + sky.side * sided,
            declination + terms_rad[ZERO_DECLINATION] * sky.side,
        ],
        axis=-1,
    )


def sensitivity(sky: Sky, terms_rad: Floats) -> Floats:
    """Derivatives (n, 2, 7) of the readings by the terms."""
    columns = []
    for step in _STEP_RAD * np.eye(TERMS):
        apart = _wrapped(readings(sky, terms_rad + step) - readings(sky, terms_rad - step))
        columns.append(apart / (2.0 * _STEP_RAD))
    return np.stack(columns, axis=-1)


def on_sky(sky: Sky, apart_rad: Floats) -> Floats:
    """Differences of readings (n, 2, …) with the hour angle's times cos declination."""
    scale = np.stack([np.cos(sky.declination_rad), np.ones_like(sky.declination_rad)], axis=-1)
    return np.asarray(apart_rad * scale.reshape(*scale.shape, *(1,) * (apart_rad.ndim - 2)))


def _wrapped(angle_rad: Floats) -> Floats:
    return np.asarray((angle_rad + np.pi) % (2.0 * np.pi) - np.pi)


def _raised(seen: Floats, sag_rad: float) -> Floats:
    """Where the unbent tube points while its hanging end looks at the star."""
    altitude, azimuth = altitude_azimuth_rad(seen)
    return direction(azimuth, altitude + sag_rad * np.cos(altitude))


def _to_pole(axis: Floats, pole: Floats) -> Floats:
    """Smallest rotation (3, 3) that carries the axis onto the pole (Rodrigues' formula)."""
    across, cosine = np.cross(axis, pole), float(axis @ pole)
    skew = np.array(
        [[0.0, -across[2], across[1]], [across[2], 0.0, -across[0]], [-across[1], across[0], 0.0]]
    )
    return np.asarray(np.eye(3) + skew + skew @ skew / (1.0 + cosine))


def _equatorial(own: Floats, latitude_rad: float) -> tuple[Floats, Floats]:
    """Hour angle west positive and declination of unit vectors (n, 3) north, east, up."""
    north, east, up = own.T
    sin_lat, cos_lat = np.sin(latitude_rad), np.cos(latitude_rad)
    declination = np.arcsin(np.clip(north * cos_lat + up * sin_lat, -1.0, 1.0))
    return np.arctan2(-east, up * cos_lat - north * sin_lat), declination
