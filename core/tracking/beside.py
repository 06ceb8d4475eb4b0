"""The search for what swings beside the worm, at a pace of its own.

What trend and worm leave over is looked through for the strongest sine, again and again. A sine
counts when it stands out of what is left around it, far more than where the worm's turns differ:
these differences spread to both sides of each harmonic.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray
from scipy.stats import f as f_distribution

from core.tracking.readings import Readings
from core.tracking.spectrum import PER_PEAK, Spectrum, spectrum
from core.tracking.waves import frequency_slope, wave_columns
from core.tracking.wormfit import plain_solution, settled_period_s

Floats = NDArray[np.float64]
Flags = NDArray[np.bool_]

_MOST = 4
_LONGEST = 4.0  # times it has to fit into the run
_FINEST_ARCSEC = 1e-3  # nobody reads better
_MOST_LOOKS = 4
_CHANCE = 0.05  # that noise alone does it anywhere in a run; what is named is surer
_AS_GOOD_AS_EVEN = 0.2  # waves by which it must miss a harmonic of the worm in the whole run
_OFF_THE_STRONGEST = 1.5  # likewise: where its turns differ, that one drowns all next to it
_APART = 1.0  # waves by which two of them differ in the whole run
_AROUND = 6.0  # waves to either side in which the noise around it is seen, at least
_FREE = 4  # sine and cosine, and either growing with time
_REACH, _PLACES = 1.2, 49  # of the closer look at a peak, in waves over the whole run


@dataclass(frozen=True, eq=False)
class Sine:
    """Sine and cosine (2,) at the run's epoch, arcsec, with the sigma of each."""

    period_s: float
    coefficients: Floats
    sigma_arcsec: float


def beside_the_worm(
    readings: Readings, period_s: float, orders: int, period_is_known: bool
) -> tuple[Sine, ...]:
    """The strongest first, four at most. A wave that fits the worm's turn evenly as far as the run
    can tell (`_AS_GOOD_AS_EVEN`) is the worm's own."""
    whole = rest = _Rest.of(readings, period_s, orders, period_is_known)
    found: list[float] = []
    noise: list[float] = []
    seen: list[float] = []
    while len(found) < _MOST and len(seen) < _MOST_LOOKS and rest.longest_s > rest.shortest_s:
        peak_hz = rest.peak_hz([*found, *seen])
        if peak_hz is None:
            break
        tone_hz = rest.closer_hz(peak_hz)
        after = rest.without(tone_hz)
        around = after.noise_around(tone_hz, found)
        if rest.chance(after, around) > _CHANCE:
            seen.append(peak_hz)
            continue
        found.append(tone_hz)
        noise.append(float(np.sqrt(0.5 * around[0])))
        rest = after
    return whole.sines(found, noise)


@dataclass(frozen=True, eq=False)
class _Rest:
    """What is left (k,) at times (k,), and the columns (k, p) that were taken out."""

    utc_s: Floats
    values: Floats
    taken: Floats
    epoch_s: float
    duration_s: float
    shortest_s: float
    worm_hz: float
    orders: int
    strongest: int

    @classmethod
    def of(cls, readings: Readings, period_s: float, orders: int, period_is_known: bool) -> _Rest:
        if not period_is_known:
            period_s = settled_period_s(readings, period_s, orders, strongest_alone=True)
        bins, shortest_s = readings.for_spectrum()
        epoch_s, duration_s = readings.epoch_s, readings.duration_s
        place = (bins.utc_s - epoch_s) / duration_s
        trend = place[:, np.newaxis] ** np.arange(1, readings.trend_order + 1)
        worm = wave_columns(bins.utc_s, period_s, orders, epoch_s)
        taken = np.column_stack([bins.origins(), trend, worm])
        lead = bins.means(readings.lead_arcsec)
        wanted = plain_solution(taken, lead)[-2 * orders :]
        strongest = 1 + int(np.argmax(np.hypot(*wanted.reshape(-1, 2).T)))
        if not period_is_known:
            slope = frequency_slope(worm, wanted, bins.utc_s, epoch_s)
            taken = np.column_stack([taken, slope / duration_s])
        values = lead - taken @ plain_solution(taken, lead)
        return cls(
            *(bins.utc_s, values, taken, epoch_s, duration_s, shortest_s),
            *(1.0 / period_s, orders, strongest),
        )

    @property
    def longest_s(self) -> float:
        return self.duration_s / _LONGEST

    def waves(self, tone_hz: float) -> Floats:
        """Sine and cosine (k, 2)."""
        return wave_columns(self.utc_s, 1.0 / tone_hz, 1, self.epoch_s)

    def spectrum(self) -> Spectrum:
        return spectrum(self.utc_s, self.values, self.shortest_s)

    def peak_hz(self, found: Sequence[float]) -> float | None:
        """Where the spectrum stands out most; None where it stands out nowhere."""
        seen = self.spectrum()
        frequency_hz = 1.0 / seen.period_s
        may_be = (seen.period_s < self.longest_s) & self.is_off_the_worm(frequency_hz)
        for other_hz in found:
            may_be &= np.abs(frequency_hz - other_hz) * self.duration_s > _APART
        excess = np.where(may_be, seen.amplitude_arcsec / _usual(seen.amplitude_arcsec), 0.0)
        peak = int(np.argmax(excess))
        return float(frequency_hz[peak]) if excess[peak] > _enough(excess.size) else None

    def is_off_the_worm(self, frequency_hz: Floats) -> Flags:
        """Whether it misses the worm's harmonics within the run."""
        order = np.clip(np.round(frequency_hz / self.worm_hz), 1, self.orders)
        apart = np.abs(frequency_hz - order * self.worm_hz) * self.duration_s
        least = np.where(order == self.strongest, _OFF_THE_STRONGEST, _AS_GOOD_AS_EVEN)
        return np.asarray(apart > least)

    def closer_hz(self, peak_hz: float) -> float:
        """The frequency near a peak that explains most beside what was taken out already."""
        grid = peak_hz + np.linspace(-_REACH, _REACH, _PLACES) / self.duration_s
        grid = grid[self.is_off_the_worm(grid)]
        base, _ = np.linalg.qr(self.taken)
        turn = 2.0 * np.pi * np.outer(self.utc_s - self.epoch_s, grid)
        sine, cosine = (wave - base @ (base.T @ wave) for wave in (np.sin(turn), np.cos(turn)))
        return float(grid[int(np.argmax(_explained(sine, cosine, self.values)))])

    def without(self, tone_hz: float) -> _Rest:
        """With a sine taken out, and its frequency corrected to first order."""
        waves = self.waves(tone_hz)
        place = (self.utc_s - self.epoch_s) / self.duration_s
        taken = np.column_stack([self.taken, waves, place[:, np.newaxis] * waves])
        values = self.values - taken @ plain_solution(taken, self.values)
        return replace(self, values=values, taken=taken)

    def noise_around(self, tone_hz: float, found: Sequence[float]) -> tuple[float, float]:
        """Mean squared amplitude of what is left around a sine, and of how many ordinates."""
        reach_hz = max(0.5 * self.worm_hz, _AROUND / self.duration_s)
        seen = self.spectrum()
        frequency_hz = 1.0 / seen.period_s
        near = np.abs(frequency_hz - tone_hz) < reach_hz
        gone_hz = np.append(
            self.worm_hz * np.arange(1, self.orders + 1), [*found, tone_hz, tone_hz]
        )
        gone = int((np.abs(gone_hz - tone_hz) < reach_hz).sum())
        ordinates = max(near.sum() / PER_PEAK - gone, 1.0)
        squares = float((seen.amplitude_arcsec[near] ** 2).sum()) / PER_PEAK
        return squares / ordinates, float(ordinates)

    def chance(self, after: _Rest, around: tuple[float, float]) -> float:
        """That noise as it is around a sine explains as much anywhere in the spectrum."""
        squares, ordinates = around
        lost = float((self.values**2).sum() - (after.values**2).sum())
        ratio = lost / (self.values.size * max(squares, 1e-30))
        tried = self.duration_s / self.shortest_s
        return tried * float(f_distribution.sf(ratio, _FREE, 2.0 * ordinates))

    def sines(self, found_hz: Sequence[float], noise: Sequence[float]) -> tuple[Sine, ...]:
        """All of them fitted together."""
        waves = [self.waves(one_hz) for one_hz in found_hz]
        solution = plain_solution(np.column_stack([self.taken, *waves]), self.values)
        pairs = solution[self.taken.shape[1] :].reshape(-1, 2)
        return tuple(
            Sine(1.0 / one_hz, pair, sigma)
            for one_hz, pair, sigma in zip(found_hz, pairs, noise, strict=True)
        )


def _explained(sine: Floats, cosine: Floats, values: Floats) -> Floats:
    """Sum of squares (f,) that least squares of sine and cosine (k, f) take out of values (k,)."""
    first, both, second = (
        (sine**2).sum(axis=0),
        (sine * cosine).sum(axis=0),
        (cosine**2).sum(axis=0),
    )
    along, across = values @ sine, values @ cosine
    determinant = np.maximum(first * second - both**2, 1e-9 * first * second + 1e-300)
    return np.asarray(
        (second * along**2 - 2.0 * both * along * across + first * across**2) / determinant
    )


def _usual(amplitude: Floats) -> Floats:
    """Median amplitude (m,) around each place: the local level of the noise."""
    width = max(min(400, amplitude.size // 4), 8)
    starts = np.arange(0, amplitude.size, width)
    medians = np.array([np.median(amplitude[start : start + width]) for start in starts])
    return np.asarray(np.maximum(np.repeat(medians, width)[: amplitude.size], _FINEST_ARCSEC))


def _enough(places: int) -> float:
    """Peak over median that Rayleigh noise reaches somewhere, in a share `_CHANCE` of runs."""
    return float(np.sqrt(np.log(places / 8.0 / _CHANCE) / np.log(2.0)))
