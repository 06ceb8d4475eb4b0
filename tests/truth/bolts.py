"""A mount on a base that leans, moved by bolts with play, for tests only: rigid rotations.

Frame: east, north, up (right-handed), unlike `core`. The azimuth bolt turns everything about the
normal of the base; the altitude bolt tips the polar axis about an axle that lies in the base,
square to the axis, and goes round with the azimuth.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from tests.truth.mount import rotate

ARCMIN = np.deg2rad(1.0 / 60.0)
AZIMUTH, ALTITUDE = 0, 1


@dataclass
class Bolt:
    """A screw that moves nothing until its play is taken up. `slack_arcmin`: where in the play."""

    play_arcmin: float = 0.0
    slack_arcmin: float = 0.0

    def turn(self, arcmin):
        """How far that turn of the screw really moves the mount."""
        at = self.slack_arcmin + arcmin
        self.slack_arcmin = float(np.clip(at, 0.0, self.play_arcmin))
        return at - self.slack_arcmin


def leaning(tilt_deg, towards_deg):
    """Normal (3,) of a base that leans down by `tilt_deg` towards that azimuth."""
    tilt, towards = np.deg2rad([tilt_deg, towards_deg])
    return np.array([np.sin(tilt) * np.sin(towards), np.sin(tilt) * np.cos(towards), np.cos(tilt)])


class BoltedMount:
    """`elevated` (3,): the end of the polar axis at the elevated pole; `normal` (3,): of the base.

    Azimuth and altitude errors: that end lies at greater azimuth than its pole, or is too high.
    """

    def __init__(self, latitude_deg, azimuth_error_arcmin, altitude_error_arcmin, normal):
        self.latitude_deg = latitude_deg
        self.normal = normal
        azimuth = self._pole_azimuth + azimuth_error_arcmin * ARCMIN
        altitude = abs(np.deg2rad(latitude_deg)) + altitude_error_arcmin * ARCMIN
        self.elevated = np.array(
            [
                np.cos(altitude) * np.sin(azimuth),
                np.cos(altitude) * np.cos(azimuth),
                np.sin(altitude),
            ]
        )

    @property
    def _pole_azimuth(self):
        return np.pi if self.latitude_deg < 0.0 else 0.0

    @property
    def north_end(self):
        """The end (3,) of the axis on the side of the north celestial pole."""
        return -self.elevated if self.latitude_deg < 0.0 else self.elevated

    @property
    def axle(self):
        """Unit vector (3,) about which the altitude bolt turns; right-handed turns raise."""
        across = np.cross(self.elevated, self.normal)
        return across / np.linalg.norm(across)

    def move(self, bolt, arcmin, tube):
        """Move the mount by a bolt; the triad (3, 3) `tube` goes along and is given back."""
        about, angle = (
            (self.normal, -arcmin * ARCMIN) if bolt == AZIMUTH else (self.axle, arcmin * ARCMIN)
        )
        self.elevated = rotate(self.elevated, about, angle)
        return rotate(tube, about, angle)

    @property
    def errors_arcmin(self):
        """Azimuth and altitude error (2,) of the axis."""
        east, north, up = self.elevated
        azimuth = np.arctan2(east, north) - self._pole_azimuth
        wrapped = (azimuth + np.pi) % (2.0 * np.pi) - np.pi
        altitude = np.arcsin(up) - abs(np.deg2rad(self.latitude_deg))
        return np.array([wrapped, altitude]) / ARCMIN

    @property
    def from_pole_arcmin(self):
        """Angle between the axis and the true pole."""
        latitude = np.deg2rad(self.latitude_deg)
        pole = np.array([0.0, np.cos(latitude), np.sin(latitude)])
        return float(np.linalg.norm(np.cross(self.north_end, pole))) / ARCMIN
