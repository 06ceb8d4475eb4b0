"""How well the axis is known to stand, in the form the budget needs."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.alignment.geometry import ARCMIN_PER_RAD
from core.alignment.solution import Solution

Floats = NDArray[np.float64]

_NORMAL_95 = 1.959964
_RINGS, _SPOKES = 8, 15


@dataclass(frozen=True)
class Alignment:
    """Axis errors from the true pole with one-sigma errors; signs as in `core.alignment.geometry`.

    The interval factor is half the 95 % interval over sigma.
    """

    azimuth_error_arcmin: float
    altitude_error_arcmin: float
    azimuth_sigma_arcmin: float = 0.0
    altitude_sigma_arcmin: float = 0.0
    correlation: float = 0.0
    azimuth_interval_factor: float = _NORMAL_95
    altitude_interval_factor: float = _NORMAL_95

    @classmethod
    def of(cls, solution: Solution) -> Alignment | None:
        """None when the legs do not tell both errors."""
        if not solution.determined:
            return None
        return cls(
            solution.azimuth_error_arcmin,
            solution.altitude_error_arcmin,
            solution.azimuth_sigma_arcmin,
            solution.altitude_sigma_arcmin,
            solution.correlation,
            solution.azimuth_interval_factor,
            solution.altitude_interval_factor,
        )

    @property
    def axis_rad(self) -> Floats:
        """Azimuth and altitude error (2,), radians."""
        return np.array([self.azimuth_error_arcmin, self.altitude_error_arcmin]) / ARCMIN_PER_RAD

    def samples_rad(self) -> Floats:
        """Equally likely axis errors (s, 2), radians: a fixed set, so that verdicts do not flicker.

        Rings of equal probability of the two-dimensional normal distribution, its spread widened
        so that the stated intervals come out.
        """
        shares = (np.arange(_RINGS) + 0.5) / _RINGS
        radius = np.sqrt(-2.0 * np.log1p(-shares))[:, np.newaxis]
        turn = 2.0 * np.pi * (np.arange(_SPOKES) + shares[:, np.newaxis]) / _SPOKES
        normal = np.stack([radius * np.cos(turn), radius * np.sin(turn)], axis=-1).reshape(-1, 2)
        factors = np.array([self.azimuth_interval_factor, self.altitude_interval_factor])
        sigma = np.array([self.azimuth_sigma_arcmin, self.altitude_sigma_arcmin])
        wide = sigma * factors / _NORMAL_95 / ARCMIN_PER_RAD
        across = np.sqrt(max(1.0 - self.correlation**2, 0.0))
        mixed = self.correlation * normal[:, 0] + across * normal[:, 1]
        return np.asarray(self.axis_rad + wide * np.stack([normal[:, 0], mixed], axis=-1))
