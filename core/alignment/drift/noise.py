"""Readings of a leg gathered into group means, which carry the drift without its bulk."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.linalg import cho_solve_banded, cholesky_banded
from scipy.ndimage import median_filter

from core.alignment.driftlog.records import Leg

Floats = NDArray[np.float64]
Flags = NDArray[np.bool_]

_MOSTLY = 0.8  # of the readings: so many with an east offset tell the others'
GROUPS_PER_LEG = 96  # a line through 96 means knows its slope as well as one through all readings


@dataclass(frozen=True, eq=False)
class Groups:
    """Means of neighbouring readings of one leg, all arrays (k,).

    `part` counts the pieces of the leg between steps; each has an origin of its own.
    `stated_sigma_arcsec` is the reading error of a group's mean, where the person stated one;
    `east_arcsec` the mean east offset, where most readings have one; the others lie on the line
    between their neighbours.
    """

    utc_s: Floats
    north_arcsec: Floats
    count: Floats
    part: NDArray[np.intp]
    stated_sigma_arcsec: Floats | None
    east_arcsec: Floats | None = None

    @property
    def parts(self) -> int:
        """Number of pieces between steps."""
        return int(self.part[-1]) + 1

    def part_columns(self) -> Floats:
        """Design columns (k, parts): one constant origin per piece."""
        return np.equal.outer(self.part, np.arange(self.parts)).astype(float)


def group(leg: Leg, kept: Flags, breaks: Sequence[int]) -> Groups:
    """Means over equal spans of time; `breaks` are indices of readings that begin a new piece."""
    part_of_reading = np.searchsorted(
        np.asarray(breaks, dtype=np.intp), np.arange(kept.size), "right"
    )
    utc_s, part = leg.utc_s[kept], part_of_reading[kept]
    north = leg.north_arcsec[kept]
    starts = _group_starts(utc_s, part)
    count = np.diff(np.append(starts, utc_s.size)).astype(float)
    origin_s = utc_s[0]
    stated = east = None
    if leg.sigma_arcsec is not None:
        stated = np.sqrt(np.add.reduceat(leg.sigma_arcsec[kept] ** 2, starts)) / count
    if leg.east_arcsec is not None:
        told = kept & np.isfinite(leg.east_arcsec)
        if told.sum() >= _MOSTLY * kept.sum():
            whole = np.interp(utc_s, leg.utc_s[told], leg.east_arcsec[told])
            east = np.add.reduceat(whole, starts) / count
    _, consecutive = np.unique(part[starts], return_inverse=True)
    return Groups(
        utc_s=origin_s + np.add.reduceat(utc_s - origin_s, starts) / count,
        north_arcsec=np.add.reduceat(north, starts) / count,
        count=count,
        part=consecutive.astype(np.intp),
        stated_sigma_arcsec=stated,
        east_arcsec=east,
    )


def _group_starts(utc_s: Floats, part: NDArray[np.intp]) -> NDArray[np.intp]:
    """Indices at which a new group begins."""
    if utc_s.size <= GROUPS_PER_LEG:
        return np.arange(utc_s.size)
    width_s = (utc_s[-1] - utc_s[0]) * (1.0 + 1e-9) / GROUPS_PER_LEG
    cell = np.floor((utc_s - utc_s[0]) / width_s).astype(np.intp)
    changes = (np.diff(cell) != 0) | (np.diff(part) != 0)
    return np.append(0, np.flatnonzero(changes) + 1)


# Readings thrown off by a gust or a touch: found against their neighbours and set aside.

_WINDOW = 15  # readings; up to seven thrown-off neighbours cannot carry the median
_NARROWEST = 5  # readings; one thrown off among four others does not carry their median
_THRESHOLD = 6.0  # in robust standard deviations: honest seeing hardly ever gets there
_FEW = 20  # fewer readings know their own scatter badly, and more has to be asked of an odd one
_THRESHOLD_OF_FEW = 9.5  # reached by one leg in two hundred of 7 to 19 honest readings
_FEWEST = 7  # fewer readings cannot tell which of them is odd
_DIVISIONS = 1.6  # a reading beside a boundary of divisions may be one off, its neighbour half
_NORMAL_MAD = 1.4826  # standard deviation of a normal distribution over its median deviation


def set_aside(utc_s: Floats, north_arcsec: Floats, reading_step_arcsec: float = 0.0) -> Flags:
    """Flags (n,) of readings far off the running median of their neighbourhood.

    `reading_step_arcsec`: the division they were read to; a division and a half is no gust yet.
    """
    if utc_s.size < _FEWEST:
        return np.zeros(utc_s.size, dtype=bool)
    level = north_arcsec - _resistant_line(utc_s, north_arcsec)
    window = min(_WINDOW, max(2 * (utc_s.size // 4) + 1, _NARROWEST))
    is_few = utc_s.size < _FEW
    around = _median_of_others if is_few else _median_around
    deviation = np.abs(level - around(level, window))
    scatter = _NORMAL_MAD * float(np.median(np.abs(level - np.median(level))))
    nearby = _NORMAL_MAD * float(np.median(deviation))
    scale = max(nearby, 0.25 * scatter)  # coarse readings repeat: their nearby scatter is zero
    if scale <= 0.0:
        return np.zeros(utc_s.size, dtype=bool)
    far = (_THRESHOLD_OF_FEW if is_few else _THRESHOLD) * scale
    return np.asarray(deviation > max(far, _DIVISIONS * reading_step_arcsec))


def _median_around(level: Floats, window: int) -> Floats:
    return np.asarray(median_filter(level, size=window, mode="mirror"))


def _median_of_others(level: Floats, window: int) -> Floats:
    """Without the reading itself: in a window of three or five it would often be its own median,
    and the scatter come out far too small.
    """
    half = window // 2
    windows = np.lib.stride_tricks.sliding_window_view(np.pad(level, half, mode="reflect"), window)
    return np.asarray(np.median(np.delete(windows, half, axis=1), axis=1))


def _resistant_line(utc_s: Floats, north_arcsec: Floats) -> Floats:
    """Line through the medians of the outer thirds (Tukey's resistant line)."""
    third = utc_s.size // 3
    early, late = slice(0, third), slice(utc_s.size - third, utc_s.size)
    first_s, last_s = np.median(utc_s[early]), np.median(utc_s[late])
    first, last = np.median(north_arcsec[early]), np.median(north_arcsec[late])
    return np.asarray(first + (last - first) * (utc_s - first_s) / (last_s - first_s))


# How far readings scatter about a drift when the air moves the star in a correlated way.
#
# Seeing and wind do not forget from one reading to the next, so independent-noise least squares
# claims too small an error. Here the noise of a leg is an Ornstein-Uhlenbeck process (correlation
# exp(−Δt/τ)) plus independent reading noise. How much of each is not known, so nothing is plugged
# in: a grid of candidates is weighed by its restricted likelihood (Patterson & Thompson, Biometrika
# 58, 545, 1971; constants and slope integrated out) and results are averaged over the grid. The
# amplitude belongs to each leg, the mixture and τ to the night.

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
