"""How far readings scatter about a drift when the air moves the star in a correlated way.

Seeing and wind do not forget from one reading to the next, so independent-noise least squares
claims too small an error. Here the noise of a leg is an Ornstein-Uhlenbeck process (correlation
exp(−Δt/τ)) plus independent reading noise. How much of each is not known, so nothing is plugged in:
a grid of candidates is weighed by its restricted likelihood (Patterson & Thompson, Biometrika 58,
545, 1971; constants and slope integrated out) and results are averaged over the grid. The amplitude
belongs to each leg, the mixture and τ to the night.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.linalg import cho_solve_banded, cholesky_banded

from core.alignment.groups import Groups

Floats = NDArray[np.float64]

_CORRELATION_TIMES_S = np.array([0.5, 1.0, 2.0, 4.0, 8.0, 16.0, 32.0, 64.0])
_INDEPENDENT_FRACTIONS = np.array([0.0, 0.5])
_LONGEST_SHARE = (
    1.0 / 8.0
)  # a correlation time longer than this share of a leg would pass for drift
_SHORTEST_LAG_S = 1e-3  # readings of the same moment must not make the inverse infinite
STATED_ERROR_WEIGHT = 4.0  # a stated reading error counts as this many degrees of freedom


@dataclass(frozen=True, eq=False)
class NoiseGrid:
    """Candidate noise, arrays (g,): correlation time (0: independent) and independent share."""

    correlation_time_s: Floats
    independent_fraction: Floats

    @classmethod
    def for_durations(cls, durations_s: Sequence[float]) -> NoiseGrid:
        """Candidates that legs of these durations can tell from drift."""
        longest_s = _LONGEST_SHARE * max(durations_s)
        times = _CORRELATION_TIMES_S[longest_s >= _CORRELATION_TIMES_S]
        time, fraction = np.meshgrid(times, _INDEPENDENT_FRACTIONS, indexing="ij")
        return cls(np.append(0.0, time.ravel()), np.append(1.0, fraction.ravel()))

    def inverse_times(self, groups: Groups, columns: Floats) -> tuple[Floats, Floats]:
        """R⁻¹D (g, k, c) and log det R (g,) for columns D (k, c), per unit variance of a group.

        The inverse of exp(−Δt/τ) on ordered times is tridiagonal, so both cost O(k); independent
        noise is added by Woodbury's identity.
        """
        spread = _spread(groups)
        lag_s = np.maximum(np.diff(groups.utc_s), _SHORTEST_LAG_S)
        results = [
            _inverse_times(lag_s, spread, columns, float(time_s), float(fraction))
            for time_s, fraction in zip(
                self.correlation_time_s, self.independent_fraction, strict=True
            )
        ]
        products, log_dets = zip(*results, strict=True)
        return np.stack(products), np.array(log_dets)


def _inverse_times(
    lag_s: Floats, spread: Floats, columns: Floats, time_s: float, fraction: float
) -> tuple[Floats, float]:
    """R⁻¹D (k, c) and log det R for one candidate."""
    if time_s == 0.0:
        return columns / spread[:, np.newaxis], float(np.log(spread).sum())
    diagonal, off_diagonal, log_det = _memory_inverse(lag_s, time_s)
    share = 1.0 - fraction
    diagonal, off_diagonal = diagonal / share, off_diagonal / share
    log_det += spread.size * float(np.log(share))
    if fraction == 0.0:
        product = diagonal[:, np.newaxis] * columns
        product[:-1] += off_diagonal[:, np.newaxis] * columns[1:]
        product[1:] += off_diagonal[:, np.newaxis] * columns[:-1]
        return product, log_det
    own = 1.0 / (fraction * spread)
    banded = np.vstack([np.append(0.0, off_diagonal), diagonal + own])
    factor = cholesky_banded(banded, check_finite=False)
    weighted = own[:, np.newaxis] * columns
    inner = cho_solve_banded((factor, False), weighted, check_finite=False)
    log_det += 2.0 * float(np.log(factor[1]).sum()) - float(np.log(own).sum())
    return weighted - own[:, np.newaxis] * inner, log_det


def _memory_inverse(lag_s: Floats, time_s: float) -> tuple[Floats, Floats, float]:
    """Diagonal (k,) and off-diagonal (k−1,) of the inverse of exp(−Δt/τ), and its log det."""
    kept = np.exp(-lag_s / time_s)
    lost = -np.expm1(-2.0 * lag_s / time_s)
    diagonal = np.ones(lag_s.size + 1)
    diagonal[1:] = 1.0 / lost
    diagonal[:-1] += kept**2 / lost
    return diagonal, -kept / lost, float(np.log(lost).sum())


def _spread(groups: Groups) -> Floats:
    """Variance (k,) of each group's independent noise relative to the average group."""
    if groups.stated_sigma_arcsec is not None:
        variance = groups.stated_sigma_arcsec**2
        return np.asarray(variance / variance.mean())
    return np.asarray(groups.count.mean() / groups.count)


@dataclass(frozen=True, eq=False)
class Gram:
    """Normal matrices (g, c, c) DᵀR⁻¹D of a leg's columns D, and log det R (g,)."""

    matrix: Floats
    log_det: Floats
    rows: int

    @classmethod
    def of(cls, groups: Groups, columns: Floats, grid: NoiseGrid) -> Gram:
        """`columns` (k, c): design columns and data side by side."""
        product, log_det = grid.inverse_times(groups, columns)
        return cls(columns.T @ product, log_det, columns.shape[0])

    def fit(self, design: Sequence[int], data: int) -> GramFit:
        """Least squares of column `data` on the columns `design`, for every candidate."""
        rows = np.asarray(design, dtype=np.intp)
        normal = self.matrix[:, rows[:, np.newaxis], rows]
        right = self.matrix[:, rows, data]
        covariance = np.linalg.inv(normal)
        solution = np.einsum("gij,gj->gi", covariance, right)
        residual = self.matrix[:, data, data] - np.einsum("gi,gi->g", right, solution)
        return GramFit(solution, np.asarray(covariance), np.maximum(residual, 0.0), normal)


@dataclass(frozen=True, eq=False)
class GramFit:
    """Coefficients (g, p), their covariance for unit variance (g, p, p), sum of squares (g,)."""

    coefficients: Floats
    covariance: Floats
    residual: Floats
    normal: Floats


def weights(log_likelihoods: Sequence[Floats]) -> Floats:
    """Weight (g,) of each candidate from all legs of the night together."""
    total = np.sum(log_likelihoods, axis=0)
    weight = np.exp(total - total.max())
    return np.asarray(weight / weight.sum())
