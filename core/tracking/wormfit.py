"""The worm's harmonics fitted to a run together with its trend and origins."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.tracking.bins import Bins, Counts
from core.tracking.gls import Estimate, estimate
from core.tracking.waves import frequency_slope, wave_columns

Floats = NDArray[np.float64]
Flags = NDArray[np.bool_]

_ROUNDS = 6


@dataclass(frozen=True, eq=False)
class Readings:
    """What is fitted: times and leads (n,), gathered into bins. `trend_order`: 1 line, 2 curve."""

    utc_s: Floats
    lead_arcsec: Floats
    bins: Bins
    trend_order: int

    @classmethod
    def of(cls, utc_s: Floats, lead_arcsec: Floats, piece: Counts, trend_order: int) -> Readings:
        """`piece` (n,) counts stretches with origins of their own."""
        _, consecutive = np.unique(piece, return_inverse=True)
        bins = Bins.of(utc_s, consecutive.astype(np.intp))
        return cls(utc_s, lead_arcsec, bins, trend_order)

    @property
    def epoch_s(self) -> float:
        """Middle of the run, where period and phases disturb each other least."""
        return 0.5 * float(self.utc_s[0] + self.utc_s[-1])

    @property
    def duration_s(self) -> float:
        """From the first reading to the last."""
        return float(self.utc_s[-1] - self.utc_s[0])

    def smooth_columns(self) -> Floats:
        """Origins and trend (k, pieces + order) at the bins."""
        place = (self.bins.utc_s - self.epoch_s) / (0.5 * self.duration_s)
        trend = [place**power for power in range(1, self.trend_order + 1)]
        return np.column_stack([self.bins.origins(), *trend])

    def binned_lead(self) -> Floats:
        """Means (k,) of the readings."""
        return self.bins.means(self.lead_arcsec)

    def without_trend(self) -> Floats:
        """Binned leads (k,) less origins and trend, by plain least squares."""
        columns, lead = self.smooth_columns(), self.binned_lead()
        solution, *_ = np.linalg.lstsq(columns, lead, rcond=None)
        return np.asarray(lead - columns @ solution)


@dataclass(frozen=True, eq=False)
class WormFit:
    """The fitted curve. `coefficients` (2·orders,) with `covariance`; `epoch_s` their phase zero.

    `slope_arcsec_per_min` and its sigma: the drive's steady lead. `smooth` (pieces + trend,).
    """

    period_s: float
    period_sigma_s: float
    epoch_s: float
    coefficients: Floats
    covariance: Floats
    smooth: Floats
    slope_arcsec_per_min: float
    slope_sigma_arcsec_per_min: float
    estimate: Estimate

    @property
    def orders(self) -> int:
        """Number of harmonics."""
        return self.coefficients.size // 2

    def curve_arcsec(self, utc_s: Floats) -> Floats:
        """The periodic part (n,) alone."""
        return wave_columns(utc_s, self.period_s, self.orders, self.epoch_s) @ self.coefficients


def fit_worm(readings: Readings, period_s: float, orders: int, period_is_known: bool) -> WormFit:
    """Harmonics of a known period, or of the one that fits best near `period_s`."""
    if not period_is_known:
        period_s = _settled_period(readings, period_s, orders)
    smooth = readings.smooth_columns()
    waves = wave_columns(readings.utc_s, period_s, orders, readings.epoch_s)
    columns = np.column_stack([smooth, readings.bins.means(waves)])
    if period_is_known:
        found = _estimate(readings, columns)
        return _fit(readings, found, period_s, 0.0, orders)
    plain, *_ = np.linalg.lstsq(columns, readings.binned_lead(), rcond=None)
    wanted = np.asarray(plain[smooth.shape[1] :])
    slope = frequency_slope(waves, wanted, readings.utc_s, readings.epoch_s)
    found = _estimate(readings, np.column_stack([columns, readings.bins.means(slope)]))
    frequency_hz = 1.0 / period_s + float(found.coefficients[-1])
    sigma_hz = float(np.sqrt(found.covariance[-1, -1]))
    return _fit(readings, found, 1.0 / frequency_hz, sigma_hz / frequency_hz**2, orders)


def _estimate(readings: Readings, columns: Floats) -> Estimate:
    return estimate(readings.bins.utc_s, readings.bins.count, columns, readings.binned_lead())


def _settled_period(readings: Readings, period_s: float, orders: int) -> float:
    """Gauss–Newton on the frequency, never leaving the peak it began on."""
    smooth, lead = readings.smooth_columns(), readings.binned_lead()
    times_s, epoch_s = readings.bins.utc_s, readings.epoch_s  # averaging in bins moves no phase
    start_hz = frequency_hz = 1.0 / period_s
    width_hz = 0.5 / readings.duration_s
    for _ in range(_ROUNDS):
        waves = wave_columns(times_s, 1.0 / frequency_hz, orders, epoch_s)
        plain, *_ = np.linalg.lstsq(np.column_stack([smooth, waves]), lead, rcond=None)
        wanted = np.asarray(plain[smooth.shape[1] :])
        slope = frequency_slope(waves, wanted, times_s, epoch_s)
        solution, *_ = np.linalg.lstsq(np.column_stack([smooth, waves, slope]), lead, rcond=None)
        step_hz = float(np.clip(solution[-1], -0.3 * width_hz, 0.3 * width_hz))
        moved = frequency_hz + step_hz
        frequency_hz = float(np.clip(moved, start_hz - width_hz, start_hz + width_hz))
        if abs(step_hz) < 1e-4 * width_hz:
            break
    return 1.0 / frequency_hz


def _fit(
    readings: Readings, found: Estimate, period_s: float, period_sigma_s: float, orders: int
) -> WormFit:
    pieces = readings.bins.pieces
    first = pieces + readings.trend_order
    waves = slice(first, first + 2 * orders)
    per_minute = 60.0 / (0.5 * readings.duration_s)
    return WormFit(
        period_s=period_s,
        period_sigma_s=period_sigma_s,
        epoch_s=readings.epoch_s,
        coefficients=found.coefficients[waves],
        covariance=found.covariance[waves, waves],
        smooth=found.coefficients[:first],
        slope_arcsec_per_min=float(found.coefficients[pieces]) * per_minute,
        slope_sigma_arcsec_per_min=float(np.sqrt(found.covariance[pieces, pieces])) * per_minute,
        estimate=found,
    )


def smooth_part(readings: Readings, fit: WormFit) -> Floats:
    """Origins and trend (n,) at every reading."""
    place = (readings.utc_s - readings.epoch_s) / (0.5 * readings.duration_s)
    pieces = readings.bins.pieces
    powers = np.arange(1, readings.trend_order + 1)
    trend = (place[:, np.newaxis] ** powers) @ fit.smooth[pieces:]
    return np.asarray(fit.smooth[:pieces][piece_of_readings(readings.bins)] + trend)


def piece_of_readings(bins: Bins) -> Counts:
    """Piece (n,) of every reading."""
    return np.repeat(bins.piece, bins.count.astype(np.intp))
