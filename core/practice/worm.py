"""Periodic error of a worm drive, which shows in right ascension only."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]


@dataclass(frozen=True)
class Worm:
    """A worm with its harmonics.

    `amplitudes_arcsec` and `phases_rad`: of the worm period, its half, its third and so on, at
    the equator. The figures drawn by `drawn` are invented for practice.
    """

    period_s: float
    amplitudes_arcsec: tuple[float, ...]
    phases_rad: tuple[float, ...]

    @classmethod
    def drawn(cls, rng: np.random.Generator) -> Worm:
        """A worm as a small mount might have: some arcseconds, harmonics smaller."""
        period_s = float(rng.uniform(400.0, 600.0))
        sizes = rng.uniform(0.6, 1.4, 3) * np.array([8.0, 2.5, 1.0])
        phases = rng.uniform(0.0, 2.0 * np.pi, 3)
        return cls(period_s, tuple(sizes.tolist()), tuple(phases.tolist()))

    def lead_arcsec(self, utc_s: Floats) -> Floats:
        """How far the drive runs ahead of the sky, arcsec of hour angle (n,)."""
        turns = 2.0 * np.pi * (np.asarray(utc_s, dtype=np.float64) / self.period_s)
        order = np.arange(1, len(self.amplitudes_arcsec) + 1)[:, None]
        waves = np.sin(order * turns + np.array(self.phases_rad)[:, None])
        return np.asarray(np.array(self.amplitudes_arcsec) @ waves, dtype=np.float64)
