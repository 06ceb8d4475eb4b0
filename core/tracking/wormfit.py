"""The worm's harmonics fitted to a run whose noise remembers itself."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.linalg import lstsq

from core.alignment.drift.noise import Gram, NoiseGrid
from core.tracking.run import Readings

# The harmonics of a worm as columns of a least-squares fit, and what their coefficients say.

Floats = NDArray[np.float64]

STANDS_OUT = 3.0  # standard deviations from which a harmonic is believed


@dataclass(frozen=True)
class Harmonic:
    """amplitude · sin(2π order (t − epoch) / worm period + phase), arcsec of the drive's lead.

    Sigmas: half the 95 % interval over `turnscatter.INTERVAL_FACTOR`. `stands_out`: the amplitude
    exceeds three of them; the phase of a harmonic that does not is no more than noise.
    """

    order: int
    period_s: float
    amplitude_arcsec: float
    amplitude_sigma_arcsec: float
    phase_deg: float
    phase_sigma_deg: float
    stands_out: bool


def harmonic_columns(utc_s: Floats, period_s: float, orders: int, epoch_s: float) -> Floats:
    """Columns (n, 2·orders): sine and cosine of each harmonic in turn."""
    first = np.exp(2j * np.pi / period_s * (utc_s - epoch_s))
    columns = np.empty((utc_s.size, 2 * orders))
    wave = np.ones_like(first)
    for order in range(orders):
        wave = wave * first
        columns[:, 2 * order] = wave.imag
        columns[:, 2 * order + 1] = wave.real
    return columns


def frequency_slope(waves: Floats, coefficients: Floats, utc_s: Floats, epoch_s: float) -> Floats:
    """Derivative (n,) of the fitted curve by the worm's frequency, arcsec per hertz."""
    sine, cosine = waves[:, 0::2], waves[:, 1::2]
    orders = np.arange(1, sine.shape[1] + 1)
    inner = cosine @ (orders * coefficients[0::2]) - sine @ (orders * coefficients[1::2])
    return np.asarray(2.0 * np.pi * (utc_s - epoch_s) * inner)


def harmonics(coefficients: Floats, covariance: Floats, period_s: float) -> tuple[Harmonic, ...]:
    """The records behind coefficients (2·orders,) and their covariance."""
    found = []
    for order in range(1, coefficients.size // 2 + 1):
        pair = slice(2 * order - 2, 2 * order)
        sine, cosine = coefficients[pair]
        amplitude = max(float(np.hypot(sine, cosine)), 1e-12)
        along = np.array([sine, cosine]) / amplitude
        across = np.array([-cosine, sine]) / amplitude
        block = covariance[pair, pair]
        sigma = float(np.sqrt(along @ block @ along))
        turn_sigma = float(np.sqrt(across @ block @ across)) / amplitude
        size = float(np.sqrt(0.5 * np.trace(block)))
        found.append(
            Harmonic(
                order,
                period_s / order,
                amplitude,
                sigma,
                float(np.rad2deg(np.arctan2(cosine, sine))) % 360.0,
                float(np.rad2deg(turn_sigma)),
                amplitude > STANDS_OUT * size,
            )
        )
    return tuple(found)


# Least squares of columns through a run whose noise remembers itself, with errors that allow for
# it.
#
# The noise is an Ornstein–Uhlenbeck process plus independent noise, as in
# `core.alignment.drift.noise`, with longer memories among the candidates: a mount wanders more
# slowly than the air. Such noise is whitened in one pass (the innovations of a Kalman filter:
# Harvey, Forecasting, Structural Time Series Models and the Kalman Filter, 1989, section 3.4), so
# that the cost grows as the number of readings and not as its cube.

_CORRELATION_TIMES_S = 2.0 ** np.arange(2.0, 10.0)  # four seconds to eight and a half minutes
_INDEPENDENT_FRACTIONS = (0.0, 0.25, 0.5, 0.75, 0.9, 0.97)
_LONGEST_SHARE = 0.25  # a longer memory than this share of the run would pass for trend
_BATCH = 256


@dataclass(frozen=True, eq=False)
class WormEstimate:
    """Coefficients (p,) and covariance (p, p), averaged over the noise candidates.

    `noise_arcsec`: scatter of a bin; `correlation_time_s`: its memory.
    """

    coefficients: Floats
    covariance: Floats
    noise_arcsec: float
    correlation_time_s: float
    degrees_of_freedom: float


def estimate(utc_s: Floats, count: Floats, columns: Floats, data: Floats) -> WormEstimate:
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
    return WormEstimate(
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


# The worm's harmonics fitted to a run together with trend, origins and sines beside the worm.

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
    estimate: WormEstimate
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
        return harmonic_columns(utc_s, self.period_s, self.orders, self.epoch_s) @ self.coefficients


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
        harmonic_columns(readings.utc_s, period_s, orders, epoch_s),
        *(harmonic_columns(readings.utc_s, tone_s, 1, epoch_s) for tone_s in tones_s),
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
    tones = [harmonic_columns(times_s, tone_s, 1, epoch_s) for tone_s in tones_s]
    start_hz = frequency_hz = 1.0 / period_s
    width_hz = 0.5 / readings.duration_s
    for _ in range(_ROUNDS):
        waves = harmonic_columns(times_s, 1.0 / frequency_hz, orders, epoch_s)
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
    found: WormEstimate,
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
