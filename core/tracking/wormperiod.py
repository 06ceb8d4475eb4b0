"""Which periods a run holds: the worm's own, and what swings beside it."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray
from scipy.special import chdtrc, fdtrc

from core.finding import Code
from core.tracking.run import Readings, UnusableRun
from core.tracking.wormfit import (
    WormFit,
    fit_worm,
    frequency_slope,
    harmonic_columns,
    plain_solution,
    settled_period_s,
)
from core.tracking.wormfolding import WormErrors


class PeriodFault(Code):
    """Why no period can be found."""

    FEW_TURNS = "few turns"
    UNIT = "unit"
    SHORT = "short"
    NONE = "none"
    TOO_SLOW = "too slow"


# Long work asks now and then whether to go on.

KeepGoing = Callable[[float], bool]


class AnalysisCancelled(Exception):
    """The caller's `keep_going` answered no."""


def ask(keep_going: KeepGoing | None, share_done: float) -> None:
    """Tells how much is done, 0 to 1; raises AnalysisCancelled when the answer is no."""
    if keep_going is not None and not keep_going(share_done):
        raise AnalysisCancelled("The analysis was stopped.")


# Which periods a run holds: Lomb–Scargle periodograms, by astropy.
#
# Lomb, Astrophys. Space Sci. 39, 447 (1976); Scargle, Astrophys. J. 263, 835 (1982); several terms:
# Palmer, Astrophys. J. 695, 496 (2009).

Floats = NDArray[np.float64]

FEWEST_TURNS = 3.0  # a shorter run cannot tell what repeats from what happens once
SHORTEST_WORM_S = 60.0
_TERMS = 3
PER_PEAK = 5.0  # places computed within the width of a peak of a single sine
_PER_HARMONIC_PEAK = 8.0
_OVER = 3.0  # places in the shortest period shown


@dataclass(frozen=True, eq=False)
class Spectrum:
    """Amplitude of the best sine at each period, arrays (m,), periods falling."""

    period_s: Floats
    amplitude_arcsec: Floats


def frequencies_hz(
    duration_s: float, longest_s: float, shortest_s: float, per_peak: float = PER_PEAK
) -> Floats:
    """A grid fine enough for every peak."""
    step = 1.0 / (per_peak * duration_s)
    return np.arange(1.0 / longest_s, 1.0 / shortest_s, step)


def spectrum(utc_s: Floats, values_arcsec: Floats, shortest_s: float) -> Spectrum:
    """Single sines through (n,) values without trend, from half the run's length downwards."""
    duration_s = float(np.ptp(utc_s))
    frequency = frequencies_hz(duration_s, 0.5 * duration_s, shortest_s)
    if not np.any(values_arcsec):
        return Spectrum(1.0 / frequency, np.zeros_like(frequency))
    from astropy.timeseries import LombScargle  # half a second, which no start should wait for

    power = LombScargle(utc_s - utc_s[0], values_arcsec).power(
        frequency, method="fast", assume_regular_frequency=True
    )
    half = np.sqrt(2.0 * np.maximum(power, 0.0)) * float(np.std(values_arcsec))
    return Spectrum(1.0 / frequency, np.asarray(half))


def even_spectrum(
    curve_arcsec: Callable[[Floats], Floats], first_s: float, last_s: float, frequency_hz: Floats
) -> Floats:
    """Amplitude (m,) at each frequency of a curve known at every moment from first to last."""
    places = int(_OVER * (last_s - first_s) * frequency_hz[-1])
    even_s = np.linspace(first_s, last_s, places)
    longer = 2 * int(PER_PEAK) * places
    amplitude = 2.0 / places * np.abs(np.fft.rfft(curve_arcsec(even_s), longer))
    own_hz = np.fft.rfftfreq(longer, float(even_s[1] - even_s[0]))
    return np.interp(frequency_hz, own_hz, amplitude)


def likeliest_period_s(
    utc_s: Floats, values_arcsec: Floats, longest_s: float, shortest_s: float
) -> float:
    """Period whose first harmonics together explain most; a multiple of the true one may win."""
    duration_s = float(np.ptp(utc_s))
    frequency = frequencies_hz(duration_s, longest_s, shortest_s, _PER_HARMONIC_PEAK)
    from astropy.timeseries import LombScargle

    power = LombScargle(utc_s - utc_s[0], values_arcsec, nterms=_TERMS).power(
        frequency, method="fastchi2", assume_regular_frequency=True
    )
    return float(1.0 / frequency[int(np.argmax(power))])


# The search for what swings beside the worm, at a pace of its own.
#
# What trend and worm leave over is looked through for the strongest sine, again and again. A sine
# counts when it stands out of what is left around it, far more than where the worm's turns differ:
# these differences spread to both sides of each harmonic.

Flags = NDArray[np.bool_]

_MOST = 4
_LONGEST = 4.0  # times it has to fit into the run
_FINEST_ARCSEC = 1e-3  # nobody reads better
_MOST_LOOKS = 4
_BESIDE_CHANCE = 0.05  # that noise alone does it anywhere in a run; what is named is surer
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
        if rest.chance(after, around) > _BESIDE_CHANCE:
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
        worm = harmonic_columns(bins.utc_s, period_s, orders, epoch_s)
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
        return harmonic_columns(self.utc_s, 1.0 / tone_hz, 1, self.epoch_s)

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
        return tried * float(fdtrc(_FREE, 2.0 * ordinates, ratio))

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
    return float(np.sqrt(np.log(places / 8.0 / _BESIDE_CHANCE) / np.log(2.0)))


# Periods beside the worm's: gears, belts and bearings that turn at a pace of their own.

_SURE = 4.0  # standard deviations
_WORTH_NAMING = 0.05  # of the largest amplitude; less does not matter to anyone


@dataclass(frozen=True)
class OtherPeriod:
    """A sine found in what the worm leaves over; the worm's turn does not contain it evenly.

    Its sigma: half the 95 % interval over `turnscatter.INTERVAL_FACTOR`.
    """

    period_s: float
    amplitude_arcsec: float
    amplitude_sigma_arcsec: float


def other_periods(fast: Sequence[Sine], errors: WormErrors) -> tuple[OtherPeriod, ...]:
    """Those that are sure and worth naming, the largest first. `fast`: taken out before the fit."""
    found = [_of_fit(errors, number) for number in range(len(errors.fit.tones_s))]
    found += [
        OtherPeriod(sine.period_s, float(np.hypot(*sine.coefficients)), sine.sigma_arcsec)
        for sine in fast
    ]
    worm = errors.fit.coefficients.reshape(-1, 2)
    largest = max([one.amplitude_arcsec for one in found] + [float(np.hypot(*worm.T).max())])
    named = [
        one
        for one in found
        if one.amplitude_arcsec > max(_SURE * one.amplitude_sigma_arcsec, _WORTH_NAMING * largest)
    ]
    return tuple(sorted(named, key=lambda one: -one.amplitude_arcsec))


def _of_fit(errors: WormErrors, number: int) -> OtherPeriod:
    """One of the fit's tones, its frequency corrected to first order."""
    fit = errors.fit
    place = fit.tone(number)
    pair, step_hz = fit.estimate.coefficients[place], fit.estimate.coefficients[place.stop]
    amplitude = float(np.hypot(*pair))
    wanted = np.zeros((fit.design.shape[1], 1))
    wanted[place, 0] = pair / max(amplitude, 1e-12)
    period_s = 1.0 / (1.0 / fit.tones_s[number] + float(step_hz))
    return OtherPeriod(period_s, amplitude, float(errors.sigma(wanted)[0]))


# The worm's period, found in the run itself, and the refusal when the run is too short for it.

_LONGEST_WORM_S = 3600.0
SUSPICIOUS_S = 180.0  # nobody stops a run so soon on purpose
_ORDERS = 6
_DIVISORS = (6, 5, 4, 3, 2)
_WORM_CHANCE = 1e-3
_BINS_PER_WAVE = 6.0


def check_length(duration_s: float, period_s: float) -> None:
    """Raises UnusableRun when the run holds fewer than three turns of a worm of this period."""
    turns = duration_s / period_s
    if turns < FEWEST_TURNS:
        raise UnusableRun(
            PeriodFault.FEW_TURNS,
            minutes=duration_s / 60.0,
            turns=turns,
            period=period_s,
            least=np.ceil(FEWEST_TURNS * period_s / 60.0),
        )


def find_period_s(readings: Readings) -> float:
    """The shortest period whose harmonics hold all that repeats. Raises UnusableRun."""
    longest_s = min(readings.duration_s / FEWEST_TURNS, _LONGEST_WORM_S)
    shortest_s = max(
        SHORTEST_WORM_S, _BINS_PER_WAVE * readings.duration_s / readings.bins.count.size
    )
    if readings.duration_s < SUSPICIOUS_S:
        raise UnusableRun(PeriodFault.UNIT, seconds=readings.duration_s)
    if longest_s < 1.5 * shortest_s:
        raise UnusableRun(PeriodFault.SHORT, minutes=readings.duration_s / 60.0)
    lead = readings.without_trend()
    found_s = likeliest_period_s(readings.bins.utc_s, lead, longest_s, shortest_s)
    fit = fit_worm(readings, found_s, _ORDERS, period_is_known=False)
    _check_significance(readings, fit, longest_s, shortest_s)
    _check_edge(readings, fit.period_s, longest_s)
    return _shortest_sufficient(readings, fit, shortest_s)


def _shortest_sufficient(readings: Readings, fit: WormFit, shortest_s: float) -> float:
    """The period itself, or a part of it whose harmonics leave nothing significant out."""
    for divisor in _DIVISORS:
        if fit.period_s / divisor < shortest_s:
            continue
        order = np.arange(1, fit.orders + 1)
        left_out = np.repeat(order % divisor != 0, 2)
        if _chance(fit, left_out) > _WORM_CHANCE:
            shorter = fit_worm(readings, fit.period_s / divisor, _ORDERS // 2, False)
            return shorter.period_s
    return fit.period_s


def _chance(fit: WormFit, chosen: NDArray[np.bool_]) -> float:
    """Probability that noise alone gives coefficients as large as the chosen ones."""
    part = fit.coefficients[chosen]
    block = fit.covariance[np.ix_(chosen, chosen)]
    return float(chdtrc(part.size, part @ np.linalg.solve(block, part)))


def _check_significance(
    readings: Readings, fit: WormFit, longest_s: float, shortest_s: float
) -> None:
    tried = readings.duration_s * (1.0 / shortest_s - 1.0 / longest_s)
    if _chance(fit, np.ones(fit.coefficients.size, dtype=bool)) * tried > 0.01:
        size = float(np.hypot(*np.sqrt(np.diag(fit.covariance))[:2]))
        raise UnusableRun(
            PeriodFault.NONE, longest=longest_s, minutes=readings.duration_s / 60.0, size=3.0 * size
        )


def _check_edge(readings: Readings, period_s: float, longest_s: float) -> None:
    """A best period at the very end of what the run can show is the slope of something slower."""
    if period_s > 0.98 * longest_s and longest_s < _LONGEST_WORM_S:
        raise UnusableRun(PeriodFault.TOO_SLOW, minutes=readings.duration_s / 60.0)
