"""The sky above as a disc: the zenith in the middle, north at the top, east on the right.

So it lies over a map of the ground. To somebody who lies on the back and looks up it is mirrored;
every drawing of the whole sky here is the same way round, and says so.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

Floats = NDArray[np.float64]

FROM_ZENITH_DEG = 90.0


@dataclass(frozen=True)
class SkyView:
    """Distances from the zenith are drawn true; `rim_deg` of it lie at the rim."""

    rim_deg: float = FROM_ZENITH_DEG

    def place(self, azimuth_deg: ArrayLike, altitude_deg: ArrayLike) -> tuple[Floats, Floats]:
        """Right and down from the zenith, in parts of the radius."""
        reach = (90.0 - np.asarray(altitude_deg, dtype=np.float64)) / self.rim_deg
        azimuth = np.radians(np.asarray(azimuth_deg, dtype=np.float64))
        return reach * np.sin(azimuth), -reach * np.cos(azimuth)

    def direction(self, right: ArrayLike, down: ArrayLike) -> tuple[Floats, Floats]:
        """Azimuth in [0, 360) and altitude of a place, degrees; below the rim goes on."""
        across, along = np.asarray(right, dtype=np.float64), np.asarray(down, dtype=np.float64)
        azimuth = np.mod(np.degrees(np.arctan2(across, -along)), 360.0)
        return azimuth, 90.0 - self.rim_deg * np.hypot(across, along)

    def grid(self, count: int) -> tuple[Floats, Floats]:
        """Azimuth and altitude (count, count) of the pixels of a square round the disc."""
        middles = (np.arange(count) + 0.5) / count * 2.0 - 1.0
        return self.direction(middles[np.newaxis, :], middles[:, np.newaxis])
