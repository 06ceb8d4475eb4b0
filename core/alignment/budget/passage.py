"""How the circle on which a guide star may stand passes the end of the mount's axis.

Guiding holds a star by turning about both axes, and the field turns about that star meanwhile: to
first order by the star's drift across the target's hour circle over its distance from the axis
along it (its reach). Between the target and the axis the reach is least. Where the star stands 90°
of right ascension from the target it vanishes: there neither axis moves the star towards the pole.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import cast

import numpy as np
from numpy.typing import NDArray

from core.alignment.budget.field import DIRECTIONS, Exposures
from core.alignment.budget.task import Task, Vantage
from core.alignment.geometry import (
    altitude_azimuth_rad,
    axis_north_end,
    direction,
    hemisphere_sign,
    true_direction,
)

Floats = NDArray[np.float64]

_FAR = 2.6  # ratio from which even directions serve, to a third of a per cent
_CLEAR = 2.0  # times the gap at which a star may drift to where it cannot be brought back
_CLUSTER = 10  # directions on either side of a critical one
_NEAREST_RAD = 1e-3


@dataclass(frozen=True, eq=False)
class Passage:
    """For exposures (n,): where the axis is, as the sky has it without air.

    `towards_rad`: the way from the target to the elevated end, from north through east.
    `ratio`: tan of the distance from there over tan of the guide star's from the target; between
    −1 and 1 the circle goes round an end of the axis. `gap_rad`: from the circle to the nearer
    end, negative inside. `drift_rad`: how far the sky carries a star beside the axis.
    """

    towards_rad: Floats
    ratio: Floats
    gap_rad: Floats
    drift_rad: Floats
    offset_rad: float

    @classmethod
    def of(cls, exposures: Exposures, axis_rad: Floats, task: Task, vantage: Vantage) -> Passage:
        """For an axis error (2,), radians, and a guided task."""
        hour_angle, declination = exposures.hour_angle_rad, exposures.declination_rad
        latitude, end = vantage.latitude_rad, end_without_air(axis_rad, vantage)
        along = _dot(hour_angle, declination, latitude, end)
        north = _dot(hour_angle, declination + 0.5 * np.pi, latitude, end)
        east = _dot(hour_angle - 0.5 * np.pi, np.zeros_like(declination), latitude, end)
        across, offset = np.hypot(north, east), task.guide_star_offset_rad
        reach = across * np.cos(offset), along * np.sin(offset)
        pole = hemisphere_sign(latitude) * axis_north_end(latitude, 0.0, 0.0)
        apart = np.linalg.norm(end - pole)
        return cls(
            towards_rad=np.arctan2(east, north),
            ratio=reach[0] / np.where(np.abs(reach[1]) > 1e-12, reach[1], 1e-12),
            gap_rad=np.arcsin(reach[0] - np.abs(reach[1])),
            drift_rad=np.asarray(2.0 * apart * np.sin(np.minimum(exposures.turn_rad, np.pi) / 2.0)),
            offset_rad=offset,
        )

    @property
    def room_rad(self) -> float:
        """How much nearer an end may come before even directions no longer serve; also negative."""
        offset = np.tan(self.offset_rad)
        return float(np.min(np.arctan(np.abs(self.ratio) * offset)) - np.arctan(_FAR * offset))

    @property
    def clearance_rad(self) -> Floats:
        """How wide the gap (n,) has to be for the first order to hold."""
        return np.asarray(_CLEAR * np.cbrt(self.drift_rad**2 * np.sin(self.offset_rad)))

    def spaced_rad(self) -> Floats:
        """Directions (n, m) of the guide star, closer together where the axis is nearer.

        Trails are trigonometric polynomials of low degree in the evenly spaced angle behind them:
        1 over the reach is a Poisson kernel on the circle, which a Möbius map levels.
        """
        crowding = self._crowding()[:, np.newaxis]
        even = np.exp(2j * np.pi / DIRECTIONS * np.arange(DIRECTIONS))
        around = np.angle((even + crowding) / (1.0 + crowding * even))
        return np.asarray(self.towards_rad[:, np.newaxis] + around)

    def clustered_rad(self) -> Floats:
        """Directions (n, m) of the guide star about those of least and of no reach."""
        beside = np.geomspace(_NEAREST_RAD, np.pi, _CLUSTER)
        cluster = np.concatenate([-beside, [0.0], beside])
        none = np.arccos(np.clip(self.ratio, -1.0, 1.0))
        least = np.where(self.ratio < 0.0, np.pi, 0.0)
        middle = self.towards_rad + np.stack([none, -none, least])
        return np.concatenate([one[:, np.newaxis] + cluster for one in middle], axis=1)

    def _crowding(self) -> Floats:
        """Parameter (n,) of the Möbius map in (−1, 1); 0 leaves the directions even."""
        size = np.maximum(np.abs(self.ratio), 1.0)
        return np.asarray(np.sign(self.ratio) / (size + np.sqrt(size * size - 1.0)))


def end_without_air(axis_rad: Floats, vantage: Vantage) -> Floats:
    """Where among the stars, unrefracted, the elevated end of the axis points."""
    latitude = vantage.latitude_rad
    north_end = axis_north_end(latitude, float(axis_rad[0]), float(axis_rad[1]))
    altitude, azimuth = altitude_azimuth_rad(hemisphere_sign(latitude) * north_end)
    return direction(azimuth, altitude - vantage.refraction.lift_rad(altitude))


def _dot(hour_angle: Floats, declination: Floats, latitude_rad: float, end: Floats) -> Floats:
    as_one = cast(float, declination)  # it takes an array of declinations as well as one
    return np.asarray(true_direction(hour_angle, as_one, latitude_rad) @ end)
