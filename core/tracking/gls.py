"""Least squares of columns through a run whose noise remembers itself, with errors that allow for
it.

The noise is an Ornstein–Uhlenbeck process plus independent noise, as in `core.alignment.noise`,
with longer memories among the candidates: a mount wanders more slowly than the air. Such noise is
whitened in one pass (the innovations of a Kalman filter: Harvey, Forecasting, Structural Time
Series Models and the Kalman Filter, 1989, section 3.4), so that the cost grows as the number of
readings and not as its cube.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.alignment.noise import Gram, NoiseGrid

Floats = NDArray[np.float64]

_CORRELATION_TIMES_S = 2.0 ** np.arange(2.0, 10.0)  # four seconds to eight and a half minutes
_INDEPENDENT_FRACTIONS = (0.0, 0.25, 0.5, 0.75, 0.9, 0.97)
_LONGEST_SHARE = 0.25  # a longer memory than this share of the run would pass for trend
_BATCH = 256


@dataclass(frozen=True, eq=False)
class Estimate:
    """Coefficients (p,) and covariance (p, p), averaged over the noise candidates.

    `noise_arcsec`: scatter of a bin; `correlation_time_s`: its memory.
    """

    coefficients: Floats
    covariance: Floats
    noise_arcsec: float
    correlation_time_s: float
    degrees_of_freedom: float


def estimate(utc_s: Floats, count: Floats, columns: Floats, data: Floats) -> Estimate:
    """Fit of `columns` (k, p) to `data` (k,), which are means of `count` (k,) readings."""
    grid = candidates(float(np.ptp(utc_s)))
    unknowns = columns.shape[1]
    scale = np.maximum(np.sqrt((columns**2).mean(axis=0)), 1e-300)
    gram = whitened_gram(utc_s, count, np.column_stack([columns / scale, data]), grid)
    fit = gram.fit(range(unknowns), unknowns)
    freedom = float(max(gram.rows - unknowns, 1))
    variance = np.maximum(fit.residual / freedom, 1e-12)  # noise-free input stays finite
    likelihood = -0.5 * (
        gram.log_det + np.linalg.slogdet(fit.normal)[1] + freedom * np.log(variance)
    )
    weight = np.exp(likelihood - likelihood.max())
    weight /= weight.sum()
    mean = weight @ fit.coefficients
    apart = fit.coefficients - mean
    covariance = np.einsum("g,gij->ij", weight * variance, fit.covariance)
    covariance += (weight[:, np.newaxis] * apart).T @ apart
    return Estimate(
        coefficients=mean / scale,
        covariance=covariance / np.outer(scale, scale),
        noise_arcsec=float(np.sqrt(weight @ variance)),
        correlation_time_s=float(weight @ grid.correlation_time_s),
        degrees_of_freedom=freedom,
    )


def candidates(duration_s: float) -> NoiseGrid:
    """Memories that a run of this length can tell from a trend, and shares of independent noise."""
    times = _CORRELATION_TIMES_S[_LONGEST_SHARE * duration_s >= _CORRELATION_TIMES_S]
    time, fraction = np.meshgrid(times, np.array(_INDEPENDENT_FRACTIONS), indexing="ij")
    return NoiseGrid(np.append(0.0, time.ravel()), np.append(1.0, fraction.ravel()))


def whitened_gram(utc_s: Floats, count: Floats, columns: Floats, grid: NoiseGrid) -> Gram:
    """As `Gram.of`, in one pass over the rows. `columns` (k, c): design and data side by side."""
    filters = _Filters.of(utc_s, count, grid)
    number, width = columns.shape
    matrix = np.zeros((grid.correlation_time_s.size, width, width))
    level = np.zeros((grid.correlation_time_s.size, width))
    for first in range(0, number, _BATCH):
        rows = range(first, min(first + _BATCH, number))
        white = np.empty((len(rows), *level.shape))
        for place, row in enumerate(rows):
            level *= filters.keep[row]
            surprise = columns[row] - level
            level += filters.gain[row] * surprise
            np.multiply(surprise, filters.weight[row], out=white[place])
        sheets = white.transpose(1, 2, 0)
        matrix += sheets @ sheets.transpose(0, 2, 1)
    return Gram(matrix, filters.log_det, number)


@dataclass(frozen=True, eq=False)
class _Filters:
    """What the filter of each candidate does at each row, (k, g, 1): it does not depend on data."""

    keep: Floats
    gain: Floats
    weight: Floats
    log_det: Floats

    @classmethod
    def of(cls, utc_s: Floats, count: Floats, grid: NoiseGrid) -> _Filters:
        time_s = np.where(grid.correlation_time_s > 0.0, grid.correlation_time_s, 1.0)
        keep = np.exp(-np.diff(utc_s, prepend=utc_s[0] - 1e9)[:, np.newaxis] / time_s)
        wandering = 1.0 - grid.independent_fraction
        independent = (count.mean() / count)[:, np.newaxis] * grid.independent_fraction
        uncertain = np.zeros_like(time_s)
        variance, gain = np.empty_like(keep), np.empty_like(keep)
        fresh = (1.0 - keep**2) * wandering
        squared = keep**2
        for row in range(utc_s.size):
            ahead = squared[row] * uncertain + fresh[row]
            variance[row] = ahead + independent[row]
            gain[row] = ahead / variance[row]
            uncertain = ahead * (1.0 - gain[row])
        add = np.newaxis
        return cls(
            keep[..., add],
            gain[..., add],
            1.0 / np.sqrt(variance)[..., add],
            np.log(variance).sum(axis=0),
        )
