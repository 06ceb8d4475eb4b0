"""The errors of what a fit says of the worm, where its turns may differ."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.tracking.readings import Readings
from core.tracking.turnscatter import variance_between, widened
from core.tracking.wormfit import WormFit

Floats = NDArray[np.float64]

_FEWEST_TURNS = 2
# Of the period: turns differ in strength and shape, hardly in how long they take.
_NOISE_FREEDOM = 6.0


@dataclass(frozen=True, eq=False)
class WormErrors:
    """`turn` (k,): the turn of each bin, the run cut into stretches of about a turn each."""

    fit: WormFit
    turn: NDArray[np.intp]

    @classmethod
    def of(cls, readings: Readings, fit: WormFit) -> WormErrors:
        """As many stretches as the run holds whole turns."""
        turns = max(int(readings.duration_s / fit.period_s + 1e-6), _FEWEST_TURNS)
        elapsed = (readings.bins.utc_s - readings.utc_s[0]) / readings.duration_s
        return cls(fit, np.minimum(elapsed * turns, turns - 1).astype(np.intp))

    def sigma(self, wanted: Floats) -> Floats:
        """Of linear figures (m,): `wanted` (p, m), transposed, times all that was fitted."""
        return widened(*self._asked(wanted))

    def of_curve(self, wanted: Floats) -> Floats:
        """Of linear figures (m,) of the worm's curve, `wanted` (2·orders, m)."""
        return self.sigma(self._among_all(wanted))

    def period_sigma_s(self) -> float:
        """Of the worm's period; 0 where it was known."""
        fit = self.fit
        if fit.period_sigma_s == 0.0:
            return 0.0
        frequency = np.zeros((fit.design.shape[1], 1))
        frequency[fit.waves.stop] = 1.0
        sigma_hz = widened(*self._asked(frequency), _NOISE_FREEDOM)
        return float(sigma_hz[0]) * fit.period_s**2

    def covariance(self) -> Floats:
        """Of the harmonics (2·orders, 2·orders): each amplitude and phase as uncertain as the turns
        allow, correlated as the noise makes them.

        A phase is judged by the pulls at amplitude and phase together, which noise disturbs alike;
        an amplitude by its own, for in strength turns differ most.
        """
        pairs = self.fit.coefficients.reshape(-1, 2)
        angles = np.arctan2(*pairs.T)
        basis = np.zeros((pairs.size, pairs.size))
        for order, (sine, cosine) in enumerate(zip(np.sin(angles), np.cos(angles), strict=True)):
            place = slice(2 * order, 2 * order + 2)
            basis[place, place] = [[sine, -cosine], [cosine, sine]]
        sigma, between, freedom = self._asked(self._among_all(basis))
        both = (freedom * between / sigma**2).reshape(-1, 2).sum(axis=1)
        freedom[1::2] += freedom[0::2]
        between[1::2] = sigma[1::2] ** 2 * both / freedom[1::2]
        factor = widened(sigma, between, freedom) / sigma
        own = basis.T @ self.fit.covariance @ basis
        return np.asarray(basis @ (own * np.outer(factor, factor)) @ basis.T)

    def _among_all(self, wanted: Floats) -> Floats:
        """Figures of the harmonics (2·orders, m) as such of all that was fitted (p, m)."""
        every = np.zeros((self.fit.design.shape[1], wanted.shape[1]))
        every[self.fit.waves] = wanted
        return every

    def _asked(self, wanted: Floats) -> tuple[Floats, Floats, Floats]:
        """Sigma by the noise, variance between turns and its freedom (m,)."""
        fit = self.fit
        noise = np.einsum("pm,pq,qm->m", wanted, fit.estimate.covariance, wanted)
        between, freedom = variance_between(fit.design, fit.residual, self.turn, wanted)
        return np.sqrt(np.maximum(noise, 1e-30)), between, freedom
