"""The worm's harmonics fitted to a run together with trend, origins and sines beside the worm."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.linalg import lstsq

from core.tracking.gls import Estimate, estimate
from core.tracking.readings import Readings
from core.tracking.waves import frequency_slope, wave_columns

Floats = NDArray[np.float64]

_ROUNDS = 6
_OF_A_TONE = 3  # columns: sine, cosine and frequency


@dataclass(frozen=True, eq=False)
class WormFit:
    """The fitted curve. `coefficients` (2·orders,) with `covariance`; `epoch_s` their phase zero.

    `slope_arcsec_per_min` and its sigma: the drive's steady lead. `smooth` (pieces + trend,).
    `tones_s`: periods of the sines beside the worm. `design` (k, p): columns at the bins, those of
    `smooth`, then the harmonics, then the worm's frequency unless it was known, then sine, cosine
    and frequency of each tone; `residual` (k,): what all of them leave over.
    """

    period_s: float
    period_sigma_s: float
    epoch_s: float
    coefficients: Floats
    covariance: Floats
    smooth: Floats
    slope_arcsec_per_min: float
    slope_sigma_arcsec_per_min: float
    tones_s: tuple[float, ...]
    estimate: Estimate
    design: Floats
    residual: Floats

    @property
    def orders(self) -> int:
        """Number of harmonics."""
        return self.coefficients.size // 2

    @property
    def waves(self) -> slice:
        """Columns of the harmonics."""
        return slice(self.smooth.size, self.smooth.size + self.coefficients.size)

    def tone(self, number: int) -> slice:
        """Columns of sine and cosine of one of `tones_s`."""
        first = self.design.shape[1] - _OF_A_TONE * (len(self.tones_s) - number)
        return slice(first, first + 2)

    def curve_arcsec(self, utc_s: Floats) -> Floats:
        """The periodic part (n,) alone."""
        return wave_columns(utc_s, self.period_s, self.orders, self.epoch_s) @ self.coefficients


def fit_worm(
    readings: Readings,
    period_s: float,
    orders: int,
    period_is_known: bool,
    tones_s: Sequence[float] = (),
) -> WormFit:
    """Harmonics of a known period, or of the one that fits best near `period_s`.

    `tones_s`: of sines beside the worm, near enough to be corrected to first order.
    """
    if not period_is_known:
        period_s = settled_period_s(readings, period_s, orders, tones_s)
    epoch_s, means = readings.epoch_s, readings.bins.means
    columns = [
        wave_columns(readings.utc_s, period_s, orders, epoch_s),
        *(wave_columns(readings.utc_s, tone_s, 1, epoch_s) for tone_s in tones_s),
    ]
    seen = [means(part) for part in columns]
    parts = _parts(readings, seen)
    slopes = [
        means(frequency_slope(waves, part, readings.utc_s, epoch_s))
        for waves, part in zip(columns, parts, strict=True)
    ]
    worm = [seen[0]] if period_is_known else [seen[0], slopes[0]]
    tones = [one for pair in zip(seen[1:], slopes[1:], strict=True) for one in pair]
    design = np.column_stack([readings.smooth_columns(), *worm, *tones])
    found = estimate(readings.bins.utc_s, readings.bins.count, design, readings.binned_lead())
    return _fit(readings, found, design, (period_s, orders, period_is_known), tuple(tones_s))


def settled_period_s(
    readings: Readings,
    period_s: float,
    orders: int,
    tones_s: Sequence[float] = (),
    strongest_alone: bool = False,
) -> float:
    """Gauss–Newton on the worm's frequency, never leaving the peak it began on.

    `strongest_alone`: only the strongest harmonic draws at it, lest a gear that turns at almost a
    harmonic's pace be taken for the worm's.
    """
    times_s, epoch_s = readings.bins.utc_s, readings.epoch_s  # averaging in bins moves no phase
    tones = [wave_columns(times_s, tone_s, 1, epoch_s) for tone_s in tones_s]
    start_hz = frequency_hz = 1.0 / period_s
    width_hz = 0.5 / readings.duration_s
    for _ in range(_ROUNDS):
        waves = wave_columns(times_s, 1.0 / frequency_hz, orders, epoch_s)
        wanted = _parts(readings, [waves, *tones])[0]
        drawing = _strongest(wanted) if strongest_alone else wanted
        slope = frequency_slope(waves, drawing, times_s, epoch_s)[:, np.newaxis]
        (step,) = _parts(readings, [waves, *tones, slope])[-1]
        step_hz = float(np.clip(step, -0.3 * width_hz, 0.3 * width_hz))
        moved = frequency_hz + step_hz
        frequency_hz = float(np.clip(moved, start_hz - width_hz, start_hz + width_hz))
        if abs(step_hz) < 1e-4 * width_hz:
            break
    return 1.0 / frequency_hz


def _strongest(coefficients: Floats) -> Floats:
    """The others set to nothing."""
    pairs = coefficients.reshape(-1, 2)
    is_strongest = np.arange(len(pairs)) == np.argmax((pairs**2).sum(axis=1))
    return np.where(is_strongest[:, np.newaxis], pairs, 0.0).ravel()


def _parts(readings: Readings, columns: Sequence[Floats]) -> list[Floats]:
    """Coefficients of each block of columns beside origins and trend, by plain least squares."""
    blocks = [readings.smooth_columns(), *columns]
    solution = plain_solution(np.column_stack(blocks), readings.binned_lead())
    return np.split(solution, np.cumsum([block.shape[1] for block in blocks])[:-1])[1:]


def plain_solution(columns: Floats, data: Floats) -> Floats:
    """Least squares (p,) of columns (k, p) of whatever units."""
    scale = np.maximum(np.sqrt((columns**2).mean(axis=0)), 1e-300)
    solution, *_ = lstsq(columns / scale, data, lapack_driver="gelsy", check_finite=False)
    return np.asarray(solution / scale)


def _fit(
    readings: Readings,
    found: Estimate,
    design: Floats,
    worm: tuple[float, int, bool],
    tones_s: tuple[float, ...],
) -> WormFit:
    period_s, orders, period_is_known = worm
    pieces = readings.bins.pieces
    first = pieces + readings.trend_order
    last = first + 2 * orders
    sigma_s = 0.0
    if not period_is_known:
        period_s = 1.0 / (1.0 / period_s + float(found.coefficients[last]))
        sigma_s = float(np.sqrt(found.covariance[last, last])) * period_s**2
    per_minute = 60.0 / (0.5 * readings.duration_s)
    return WormFit(
        period_s=period_s,
        period_sigma_s=sigma_s,
        epoch_s=readings.epoch_s,
        coefficients=found.coefficients[first:last],
        covariance=found.covariance[first:last, first:last],
        smooth=found.coefficients[:first],
        slope_arcsec_per_min=float(found.coefficients[pieces]) * per_minute,
        slope_sigma_arcsec_per_min=float(np.sqrt(found.covariance[pieces, pieces])) * per_minute,
        tones_s=tones_s,
        estimate=found,
        design=design,
        residual=readings.binned_lead() - design @ found.coefficients,
    )
