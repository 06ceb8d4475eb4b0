"""What a turn of the bolts does: to the axis, to the star in view, and to what is known.

The azimuth bolts turn the mount about the normal of its base, the altitude bolt about the
horizontal axle on which the polar axis tips. On a base that is not level the first moves the
altitude as well.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.alignment.geometry import (
    ARCMIN_PER_RAD,
    ARCSEC_PER_RAD,
    altitude_azimuth_rad,
    axis_north_end,
    direction,
    hemisphere_sign,
)
from core.alignment.knowledge import AxisKnowledge
from core.sky.site import Site

Floats = NDArray[np.float64]

# A base levelled by eye or a small bubble, and one whose lean was measured: common practice.
_UNMEASURED_TILT_DEG, _MEASURED_TILT_DEG = 1.25, 0.3


@dataclass(frozen=True)
class Base:
    """How the mount's base leans: by `tilt_deg` down towards `azimuth_deg`."""

    tilt_deg: float = 0.0
    azimuth_deg: float = 0.0

    @property
    def tilt_sigma_deg(self) -> float:
        """How well its lean is known in each direction: worse where nobody has measured one."""
        return _MEASURED_TILT_DEG if self.tilt_deg else _UNMEASURED_TILT_DEG

    def leaning(self, tilt_deg: float, azimuth_deg: float) -> Base:
        """Leaning as it does and besides by `tilt_deg` down towards `azimuth_deg`."""
        parts = [
            tilt * np.exp(1j * np.deg2rad(way))
            for tilt, way in ((self.tilt_deg, self.azimuth_deg), (tilt_deg, azimuth_deg))
        ]
        both = complex(sum(parts))
        return Base(abs(both), float(np.rad2deg(np.angle(both))))

    def normal(self) -> Floats:
        """Unit vector (3,) north, east, up about which the azimuth bolts turn."""
        return direction(np.deg2rad(self.azimuth_deg), np.deg2rad(90.0 - self.tilt_deg))


@dataclass(frozen=True)
class Turn:
    """A turn of both bolts, meant to move the axis; signs as the errors of the axis have.

    Positive azimuth: the elevated end moves towards greater azimuth; positive altitude: upwards.
    """

    azimuth_arcmin: float
    altitude_arcmin: float


@dataclass(frozen=True)
class TurnAccuracy:
    """How well a hand turns: a share of the turn, and the play of the bolt. One standard deviation.

    The default is a common-practice figure without a source: a tenth of the turn, one arcmin of
    play.
    """

    relative: float = 0.1
    play_arcmin: float = 0.5

    def covariance_arcmin2(self, turn: Turn, azimuth_scale: float, base: Base) -> Floats:
        """Of the displacement on the sky (2, 2); `azimuth_scale`: cosine of the latitude.

        A base that leans unknown to anybody lets each bolt move the axis across its own direction.
        """
        hand = np.array([turn.azimuth_arcmin * azimuth_scale, turn.altitude_arcmin])
        play = np.where(hand != 0.0, self.play_arcmin, 0.0) * np.array([azimuth_scale, 1.0])
        across = np.deg2rad(base.tilt_sigma_deg) * hand[::-1]
        return np.diag((self.relative * hand) ** 2 + play**2 + across**2)


@dataclass(frozen=True)
class SeenTurn:
    """How well the star in view showed where a turn brought the axis, arcmin² on the sky.

    Variances of azimuth × cosine of the latitude and of altitude, and what they share.
    """

    azimuth_arcmin2: float
    both_arcmin2: float
    altitude_arcmin2: float

    def covariance_arcmin2(self, _turn: Turn, _azimuth_scale: float, _base: Base) -> Floats:
        """Of the displacement on the sky (2, 2), whatever the turn was."""
        return np.array(
            [
                [self.azimuth_arcmin2, self.both_arcmin2],
                [self.both_arcmin2, self.altitude_arcmin2],
            ]
        )


def rotated(vector: Floats, about: Floats, angle_rad: float) -> Floats:
    """Vector turned about a unit vector from north through east, seen from its tip downwards."""
    cross = np.cross(vector, about)  # north, east, up is left-handed
    along = about * float(about @ vector)
    return np.asarray(
        vector * np.cos(angle_rad) - cross * np.sin(angle_rad) + along * (1.0 - np.cos(angle_rad))
    )


def axle(base: Base, latitude_rad: float) -> Floats:
    """Unit vector (3,), pointing east, of the axle on which the polar axis tips in altitude."""
    across = np.cross(axis_north_end(latitude_rad, 0.0, 0.0), base.normal())
    return np.asarray(across / np.linalg.norm(across))


def moved_errors_arcmin(
    site: Site, azimuth_arcmin: float, altitude_arcmin: float, turn: Turn, base: Base
) -> tuple[float, float]:
    """Azimuth and altitude error after the turn, altitude first, by exact rotation."""
    latitude = float(np.deg2rad(site.latitude_deg))
    axis = axis_north_end(
        latitude, azimuth_arcmin / ARCMIN_PER_RAD, altitude_arcmin / ARCMIN_PER_RAD
    )
    for about, angle in _rotations(turn, base, latitude, azimuth_arcmin / ARCMIN_PER_RAD):
        axis = rotated(axis, about, angle)
    altitude, azimuth = altitude_azimuth_rad(axis)
    sign = hemisphere_sign(latitude)
    wrapped = (float(azimuth) + np.pi) % (2.0 * np.pi) - np.pi
    return wrapped * ARCMIN_PER_RAD, sign * (float(altitude) - latitude) * ARCMIN_PER_RAD


def _rotations(
    turn: Turn, base: Base, latitude_rad: float, heading_rad: float
) -> tuple[tuple[Floats, float], tuple[Floats, float]]:
    """Axes and angles: tip on the axle as it stands, then turn about the base's normal."""
    normal = base.normal()
    standing = rotated(axle(base, latitude_rad), normal, heading_rad)
    tip = hemisphere_sign(latitude_rad) * turn.altitude_arcmin / ARCMIN_PER_RAD
    return (standing, tip), (normal, turn.azimuth_arcmin / ARCMIN_PER_RAD)


def known_after(
    known: AxisKnowledge,
    turn: Turn,
    site: Site,
    base: Base,
    accuracy: TurnAccuracy | SeenTurn,
) -> AxisKnowledge:
    """What the earlier axis state says of the present one, its errors widened by the turn's."""
    scale = max(float(np.cos(np.deg2rad(site.latitude_deg))), 0.02)
    azimuth, altitude = known.sky_arcmin[0] / scale, known.sky_arcmin[1]
    moved = moved_errors_arcmin(site, float(azimuth), float(altitude), turn, base)
    covariance = known.covariance_arcmin2 + accuracy.covariance_arcmin2(turn, scale, base)
    before = float(np.trace(known.covariance_arcmin2))
    freedom = known.freedom * (float(np.trace(covariance)) / before) ** 2  # Satterthwaite
    return AxisKnowledge(np.array([moved[0] * scale, moved[1]]), covariance, min(freedom, 1e6))


def star_shift_arcsec(
    seen: Floats, axis: Floats, turn: Turn, site: Site, base: Base
) -> tuple[float, float]:
    """North and east shift of the star in view while the bolts turn, the drive running.

    `seen`: unit vector (3,) of the star, where the telescope points; `axis`: north end (3,) of the
    polar axis before the turn. Offsets on the tangent plane at the new pointing, in the mount's
    frame. Good for turns of degrees; the time the turn takes is left out.
    """
    latitude = float(np.deg2rad(site.latitude_deg))
    _, heading = altitude_azimuth_rad(axis)
    pointing = seen
    for about, angle in _rotations(turn, base, latitude, float(heading)):
        pointing, axis = rotated(pointing, about, angle), rotated(axis, about, angle)
    east = np.cross(pointing, axis)
    east = east / np.linalg.norm(east)
    north = np.cross(east, pointing)
    depth = float(seen @ pointing)
    return (
        float(seen @ north) / depth * ARCSEC_PER_RAD,
        float(seen @ east) / depth * ARCSEC_PER_RAD,
    )
