"""A tube on a driven mount with a camera, for tests only: drive errors, a sagging tube, an angle.

Frame: east, north, up (right-handed), unlike `core`. The tube is a triad (3, 3): where it points,
then the mount's east and north on the sky there.
"""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np

from tests.truth.mount import SIDEREAL_DAY_S, rotate

ARCSEC = np.deg2rad(1.0 / 3600.0)
HARMONICS = (1.0, 0.35, 0.15)  # of the worm's period; no source


@dataclass
class Drive:
    """Turns the mount westward. `fast`: by how much too fast, as a share of the sidereal rate.

    `amplitude_arcsec`: of the periodic error in right ascension; `phases` (3,) of its harmonics.
    """

    fast: float = 0.0
    amplitude_arcsec: float = 0.0
    period_s: float = 480.0
    phases: np.ndarray = field(default_factory=lambda: np.zeros(3))

    def turned(self, utc_s, since_s):
        """How far (n,) the mount has turned westward between two times, radians."""
        steady = 2.0 * np.pi * (1.0 + self.fast) * (utc_s - since_s) / SIDEREAL_DAY_S
        return steady + self._periodic(utc_s) - self._periodic(since_s)

    def _periodic(self, utc_s):
        waves = [
            share * np.sin(2.0 * np.pi * (order + 1) * utc_s / self.period_s + phase)
            for order, (share, phase) in enumerate(zip(HARMONICS, self.phases, strict=True))
        ]
        return self.amplitude_arcsec * ARCSEC * np.sum(waves, axis=0)


class Telescope:
    """A tube on a `BoltedMount`.

    `sag_arcsec_per_g` (2, 3): how far the image moves along the tube's east and north for gravity
    along the tube's axis, east and north. `angle_deg`: how far the camera is turned from the
    mount's north towards its east.
    """

    def __init__(self, mount, drive, sag_arcsec_per_g=None, angle_deg=0.0):
        self.mount, self.drive = mount, drive
        self._sag = np.zeros((2, 3)) if sag_arcsec_per_g is None else sag_arcsec_per_g
        self._angle = np.deg2rad(angle_deg)
        self._tube, self._since_s, self._side = np.eye(3), 0.0, 1.0

    def point(self, seen, utc_s):
        """Bring a star seen in this direction (3,) to the middle of the field."""
        east = np.cross(self.mount.north_end, seen)
        east /= np.linalg.norm(east)
        self._tube, self._since_s = np.array([seen, east, np.cross(seen, east)]), utc_s
        self._side = 1.0 if seen[0] > 0.0 else -1.0  # in the west the tube lies turned over

    def turn_bolt(self, bolt, arcmin, utc_s):
        """Move the mount under the tube, the drive running."""
        self._tube = self.mount.move(bolt, arcmin, self._at(np.array([utc_s]))[0])
        self._since_s = utc_s

    def offsets_arcsec(self, seen, utc_s):
        """East and north offsets (n, 2) of directions (n, 3) as the camera has them."""
        tube = self._at(utc_s)
        inside = np.einsum("nij,nj->ni", tube, seen)
        offsets = inside[:, 1:] / inside[:, :1] / ARCSEC + self._sagging(tube)
        c, s = np.cos(self._angle), np.sin(self._angle)
        return offsets @ np.array([[c, s], [-s, c]])

    def _at(self, utc_s):
        """The tube (n, 3, 3) while the drive turns it, east to west."""
        turned = -self.drive.turned(utc_s, self._since_s)
        return np.stack([rotate(one, self.mount.north_end, turned) for one in self._tube], axis=1)

    def _sagging(self, tube):
        """The image's shift (n, 2) on the sky by the tube's own weight, arcsec."""
        over = np.array([1.0, self._side, self._side])
        gravity = -tube[:, :, 2] * over
        return gravity @ self._sag.T * over[1:]
