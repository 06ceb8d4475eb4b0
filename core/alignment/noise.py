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

from core.alignment.groups import Groups

Floats = NDArray[np.float64]

_CORRELATION_TIMES_S = np.array([0.5, 1.0, 2.0, 4.0, 8.0, 16.0, 32.0, 64.0])
_INDEPENDENT_FRACTIONS = np.array([0.0, 0.5])
_LONGEST_SHARE = (
    1.0 / 8.0
)  # a correlation time longer than this share of a leg would pass for drift
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

    def correlation(self, groups: Groups) -> Floats:
        """Covariance (g, k, k) of group means for unit variance of an average group."""
        lag_s = np.abs(groups.utc_s[:, np.newaxis] - groups.utc_s)
        time_s = np.where(self.correlation_time_s > 0.0, self.correlation_time_s, 1.0)
        fraction = self.independent_fraction[:, np.newaxis, np.newaxis]
        matrix = (1.0 - fraction) * np.exp(-lag_s / time_s[:, np.newaxis, np.newaxis])
        diagonal = np.arange(lag_s.shape[0])
        matrix[:, diagonal, diagonal] += self.independent_fraction[:, np.newaxis] * _spread(groups)
        return matrix


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
        correlation = grid.correlation(groups)
        whitened = np.linalg.solve(correlation, columns[np.newaxis])
        return cls(columns.T @ whitened, np.linalg.slogdet(correlation)[1], columns.shape[0])

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


@dataclass(frozen=True, eq=False)
class LegNoise:
    """Amplitude of one leg's noise for every candidate, and how well each explains the leg."""

    variance_arcsec2: Floats  # (g,)
    degrees_of_freedom: float
    log_likelihood: Floats  # (g,)


def leg_noise(gram: Gram, fit: GramFit, groups: Groups) -> LegNoise:
    """Restricted likelihood of the candidates, given the fit of constants and slope.

    A stated reading error enters as `STATED_ERROR_WEIGHT` degrees of freedom of its own.
    """
    freedom = float(gram.rows - fit.coefficients.shape[1])
    squares = fit.residual
    if groups.stated_sigma_arcsec is not None:
        freedom += STATED_ERROR_WEIGHT
        stated_variance = float(np.mean(groups.stated_sigma_arcsec**2))
        squares = squares + STATED_ERROR_WEIGHT * stated_variance
    variance = np.maximum(
        squares / max(freedom, 1.0), 1e-12
    )  # 1e-6″: noise-free input stays finite
    log_likelihood = -0.5 * (
        gram.log_det + np.linalg.slogdet(fit.normal)[1] + freedom * np.log(variance)
    )
    return LegNoise(variance, freedom, log_likelihood)


def weights(legs: Sequence[LegNoise]) -> Floats:
    """Weight (g,) of each candidate from all legs of the night together."""
    total = np.sum([leg.log_likelihood for leg in legs], axis=0)
    weight = np.exp(total - total.max())
    return np.asarray(weight / weight.sum())
