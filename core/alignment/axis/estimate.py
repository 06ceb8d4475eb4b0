"""What is known of the axis before the legs at hand: little, or an earlier state turned.

Inside this module the axis is the pair (azimuth error × cos latitude, altitude error): two
perpendicular displacements on the sky of like size.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]


@dataclass(frozen=True, eq=False)
class AxisKnowledge:
    """Displacement (2,) on the sky, arcmin, and its covariance (2, 2), arcmin².

    `freedom`: degrees of freedom behind the covariance; few make long tails (Student's t).
    """

    sky_arcmin: Floats
    covariance_arcmin2: Floats
    freedom: float = 1e6

    @classmethod
    def about_the_pole(cls, sigma_deg: float) -> AxisKnowledge:
        """The axis is within a few of these of the true pole, and no more is known."""
        return cls(np.zeros(2), np.eye(2) * (60.0 * sigma_deg) ** 2)

    @property
    def information_arcmin2(self) -> Floats:
        """Inverse covariance (2, 2)."""
        return np.asarray(np.linalg.inv(self.covariance_arcmin2))

    @property
    def interval_factor(self) -> float:
        """Of a standard deviation, for the half-width of the 95 % interval."""
        from scipy.special import stdtrit  # here, so that the first window need not wait for scipy

        return float(stdtrit(self.freedom, 0.975))

    def disagreement(self, other: AxisKnowledge) -> float:
        """Squared distance between two independent statements, χ² with two degrees of freedom."""
        apart = self.sky_arcmin - other.sky_arcmin
        together = self.covariance_arcmin2 + other.covariance_arcmin2
        return float(apart @ np.linalg.solve(together, apart))
