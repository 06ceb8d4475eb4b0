"""Image motion that remembers itself from one reading to the next."""

from __future__ import annotations

import math

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

RMS_ARCSEC = 0.7  # per reading and axis, for seeing of about 2.5″: common practice, no source
CORRELATION_TIME_S = 2.0  # common practice, no source


class Seeing:
    """An Ornstein–Uhlenbeck process in two axes, stepped exactly over any interval.

    x(t + Δ) = a x(t) + rms √(1 − a²) e with a = exp(−Δ / correlation time) and e standard normal:
    the exact transition of the process (Gillespie, Phys. Rev. E 54, 2084 (1996), eq. 3.1), so
    the statistics do not depend on how the readings are spaced or asked for.
    """

    def __init__(
        self,
        rng: np.random.Generator,
        rms_arcsec: float = RMS_ARCSEC,
        correlation_time_s: float = CORRELATION_TIME_S,
    ) -> None:
        self._rng = rng
        self._rms_arcsec = rms_arcsec
        self._correlation_time_s = correlation_time_s
        self._at_utc_s = -math.inf  # so long ago that the first reading is independent
        self._now = (0.0, 0.0)

    def at(self, utc_s: Floats) -> Floats:
        """North and east image motion in arcsec (n, 2) at increasing `utc_s` (n,).

        Times go on from those of the last call; the same time gives the same motion.
        """
        gaps_s = np.diff(utc_s, prepend=self._at_utc_s)
        if gaps_s.size and gaps_s.min() < 0.0:
            raise ValueError("the times of seeing must not run backwards")
        keep = np.exp(-gaps_s / self._correlation_time_s)
        fresh = self._rms_arcsec * np.sqrt(-np.expm1(-2.0 * gaps_s / self._correlation_time_s))
        kicks = fresh[:, None] * self._rng.standard_normal((gaps_s.size, 2))
        motion = np.array(list(self._walk(keep, kicks)), dtype=np.float64).reshape(-1, 2)
        if gaps_s.size:
            self._at_utc_s = float(utc_s[-1])
        return motion

    def _walk(self, keep: Floats, kicks: Floats) -> list[tuple[float, float]]:
        path = []
        north, east = self._now
        for a, (kick_north, kick_east) in zip(keep.tolist(), kicks.tolist(), strict=True):
            north, east = a * north + kick_north, a * east + kick_east
            path.append((north, east))
        self._now = (north, east)
        return path
