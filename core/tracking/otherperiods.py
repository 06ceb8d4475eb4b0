"""Periods beside the worm's: gears, belts and bearings that turn at a pace of their own."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.tracking.bins import Bins
from core.tracking.gls import estimate
from core.tracking.spectrum import spectrum
from core.tracking.waves import STANDS_OUT, wave_columns
from core.tracking.wormfit import Readings, WormFit, piece_of_readings

Floats = NDArray[np.float64]

_MOST = 4
_MOST_BINS = 8_000
_SHORTEST_S = 6.0
_WORTH_NAMING = 0.05  # of the largest amplitude; less does not matter to anyone


@dataclass(frozen=True)
class OtherPeriod:
    """A sine found in what the worm leaves over; the worm's turn does not contain it evenly."""

    period_s: float
    amplitude_arcsec: float
    amplitude_sigma_arcsec: float


def other_periods(
    readings: Readings, fit: WormFit, residual_arcsec: Floats
) -> tuple[OtherPeriod, ...]:
    """The strongest of them, each well above the noise around it."""
    width_s = readings.duration_s / _MOST_BINS
    bins = Bins.of(readings.utc_s, piece_of_readings(readings.bins), width_s)
    left: Floats = bins.means(residual_arcsec)
    shortest_s = max(_SHORTEST_S, 3.0 * readings.duration_s / bins.count.size)
    if shortest_s > 0.25 * readings.duration_s:
        return ()
    found: list[OtherPeriod] = []
    for _ in range(_MOST):
        one, left = _strongest(bins, left, shortest_s)
        if one is None or not _is_sure(readings, fit, one, found):
            break
        found.append(one)
    return tuple(found)


def _strongest(bins: Bins, left: Floats, shortest_s: float) -> tuple[OtherPeriod | None, Floats]:
    seen = spectrum(bins.utc_s, left, shortest_s)
    trusted = seen.period_s < np.ptp(bins.utc_s) / 4.0
    level = _neighbourhood(seen.amplitude_arcsec)
    excess = np.where(trusted, seen.amplitude_arcsec / level, 0.0)
    peak = int(np.argmax(excess))
    if excess[peak] < _enough(seen.period_s.size):
        return None, left
    period_s = float(seen.period_s[peak])
    waves = wave_columns(bins.utc_s, period_s, 1, float(bins.utc_s[0]))
    solution, *_ = np.linalg.lstsq(waves, left, rcond=None)
    sigma = float(level[peak] / np.sqrt(2.0 * np.log(2.0)))
    one = OtherPeriod(period_s, float(np.hypot(*solution)), sigma)
    return one, np.asarray(left - waves @ solution)


def _neighbourhood(amplitude: Floats) -> Floats:
    """Median amplitude (m,) around each place: the local level of the noise."""
    width = max(min(400, amplitude.size // 4), 8)
    starts = np.arange(0, amplitude.size, width)
    medians = np.array([np.median(amplitude[start : start + width]) for start in starts])
    return np.asarray(np.maximum(np.repeat(medians, width)[: amplitude.size], 1e-9))


def _enough(places: int) -> float:
    """Peak over median of Rayleigh noise that one run in a thousand reaches somewhere."""
    return float(np.sqrt(np.log(places / 8.0 * 1000.0) / np.log(2.0)))


def _largest(coefficients: Floats) -> float:
    return float(np.hypot(coefficients[0::2], coefficients[1::2]).max())


def _is_sure(readings: Readings, fit: WormFit, one: OtherPeriod, found: list[OtherPeriod]) -> bool:
    """Neither negligible, nor beside one already found, nor what correlated noise does."""
    resolution_hz = 1.5 / readings.duration_s
    for other in found:
        if abs(1.0 / one.period_s - 1.0 / other.period_s) < resolution_hz:
            return False
    largest = max([other.amplitude_arcsec for other in found] + [_largest(fit.coefficients)])
    if one.amplitude_arcsec < _WORTH_NAMING * largest:
        return False
    bins = readings.bins
    if one.period_s < 4.0 * readings.duration_s / bins.count.size:
        return True  # faster than the bins of the joint fit can follow
    waves = bins.means(wave_columns(readings.utc_s, one.period_s, 1, readings.epoch_s))
    worm = bins.means(wave_columns(readings.utc_s, fit.period_s, fit.orders, readings.epoch_s))
    columns = np.column_stack([readings.smooth_columns(), worm, waves])
    joint = estimate(bins.utc_s, bins.count, columns, readings.binned_lead())
    sigma = np.sqrt(np.diag(joint.covariance)[-2:].mean())
    return bool(np.hypot(*joint.coefficients[-2:]) > (STANDS_OUT + 1.0) * sigma)
