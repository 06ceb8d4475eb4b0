"""What is known of the axis before the legs at hand: little, or an earlier state turned.

Inside this module the axis is the pair (azimuth error × cos latitude, altitude error): two
perpendicular displacements on the sky of like size.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.alignment.geometry import ARCMIN_PER_RAD

Floats = NDArray[np.float64]


@dataclass(frozen=True, eq=False)
class AxisKnowledge:
    """Displacement (2,) on the sky, arcmin, and its covariance (2, 2), arcmin²."""

    sky_arcmin: Floats
    covariance_arcmin2: Floats

    @classmethod
    def about_the_pole(cls, sigma_deg: float) -> AxisKnowledge:
        """The axis is within a few of these of the true pole, and no more is known."""
        return cls(np.zeros(2), np.eye(2) * (60.0 * sigma_deg) ** 2)

    @property
    def sky_rad(self) -> Floats:
        """The displacement in radians."""
        return self.sky_arcmin / ARCMIN_PER_RAD

    @property
    def information(self) -> Floats:
        """Inverse covariance, rad⁻²."""
        return np.asarray(np.linalg.inv(self.covariance_arcmin2) * ARCMIN_PER_RAD**2)

    def disagreement(self, other: AxisKnowledge) -> float:
        """Squared distance between two independent statements, χ² with two degrees of freedom."""
        apart = self.sky_arcmin - other.sky_arcmin
        together = self.covariance_arcmin2 + other.covariance_arcmin2
        return float(apart @ np.linalg.solve(together, apart))
