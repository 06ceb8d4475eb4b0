"""What in a run cannot be as it was meant, guiding left on included."""

from __future__ import annotations

from enum import Enum

import numpy as np
from numpy.typing import NDArray

from core.finding import Code, Finding
from core.tracking.run import Run
from core.units import SIDEREAL_ARCSEC_PER_MIN


class DriftWay(Code):
    """Where a star drifts."""

    EAST = "east"
    WEST = "west"
    NORTH = "north"
    SOUTH = "south"


class RunDoubt(Code):
    """What in a run cannot be right."""

    MINUTES_TAKEN = "minutes taken"
    SECONDS_TAKEN = "seconds taken"
    SOLAR_RATE = "solar rate"
    LUNAR_RATE = "lunar rate"
    GUIDING_UNCLEAR = "guiding perhaps left on"
    GUIDING_LEFT_ON = "guiding left on"
    UNIT = "unit of the offsets"
    EAST_SIGN = "sign of east"
    NORTH_SIGN = "sign of north"
    AHEAD = "ahead"
    BEHIND = "behind"


# Whether something steered the star back while it was to be left alone: guiding left on.
#
# A drive and the air only ever add: the slower, the more. Corrections take away what is slower than
# they are. The spectrum of what trend and worm leave over is therefore weighed both ways: as noise
# that remembers itself, and as such noise behind a loop that measures the mean over an interval and
# takes a share of it back in the next. The likelihood is Whittle's (Arkiv för Matematik 2, 423,
# 1953) over the ordinates of a periodogram. A slow, weak loop before a drive that wanders looks
# like a drive that wanders less: then nobody can tell.

Floats = NDArray[np.float64]

MOST_CELLS = 8192
INTERVALS_S = (1.0, 1.5, 2.0, 3.0, 4.0, 6.0, 8.0)  # of guiding
SHARES = (0.25, 0.4, 0.6, 0.8, 1.0)  # of an offset corrected each time
AIR_S = np.geomspace(0.3, 12.0, 9)  # how long the air remembers
WANDER_S = np.array([20.0, 60.0, 180.0])  # how long the drive does
WANDER_SHARES = np.array([0.0, 0.03, 0.1, 0.3, 1.0, 3.0])  # of its power against the air's
SURE, EXCLUDED = 4.0, -2.0  # of a logarithm of likelihoods
TREND_ORDINATES = 3.5  # of the lowest; a curved trend took them
HIGHEST = 0.25  # of the rate of the readings; beyond, it counts how long each one exposes
FEWEST_ORDINATES = 40
WORST_WORM_ARCSEC = 60.0  # amplitude; common practice, no source
LEAST_LEFT = 1e-6  # no loop takes all


class GuidingDetected(Enum):
    """What can be said."""

    YES = "yes"
    NO = "no"
    UNCLEAR = "unclear"


def guiding_detected(
    utc_s: Floats, residual_arcsec: Floats, period_s: float, orders: int, swing_arcsec: float = 0.0
) -> GuidingDetected:
    """From `residual_arcsec` (n,), without trend and the worm's `orders` harmonics; `swing_arcsec`:
    amplitude that stands in the run at the worm's period."""
    gain = steering_evidence(utc_s, residual_arcsec, period_s, orders, swing_arcsec)
    if gain is None:
        return GuidingDetected.UNCLEAR
    if gain > SURE:
        return GuidingDetected.YES
    return GuidingDetected.NO if gain < EXCLUDED else GuidingDetected.UNCLEAR


def steering_evidence(
    utc_s: Floats, residual_arcsec: Floats, period_s: float, orders: int, swing_arcsec: float = 0.0
) -> float | None:
    """Logarithm of how much likelier a loop is than none; None when the run is too short.

    A loop that would have had to leave such a swing of a worse worm than there are is none.
    """
    found = _periodogram(utc_s, residual_arcsec, period_s, orders)
    if found is None:
        return None
    frequency_hz, power, cell_s = found
    free = _free(frequency_hz, cell_s)
    loops = np.concatenate([np.ones((1, power.size)), _loops(frequency_hz)])
    size = power.size
    found_size = (1.0 / free) @ (power / loops).T / size  # the best of each pair
    known = np.log(free).sum(axis=1)[:, np.newaxis] + np.log(loops).sum(axis=1)
    best = (-size * np.log(found_size) - known).max(axis=0)
    left = np.sqrt(_loops(np.array([1.0 / period_s]))[:, 0])
    possible = swing_arcsec <= WORST_WORM_ARCSEC * left
    return float(best[1:][possible].max(initial=-np.inf) - best[0])


def _periodogram(
    utc_s: Floats, values: Floats, period_s: float, orders: int
) -> tuple[Floats, Floats, float] | None:
    """Frequencies, power and the width of a cell; what trend and worm took is left out."""
    duration_s = float(utc_s[-1] - utc_s[0])
    interval_s = float(np.median(np.diff(utc_s)))
    cell_s = max(interval_s, duration_s / MOST_CELLS, 1.0)
    cell = np.floor((utc_s - utc_s[0]) / cell_s).astype(np.intp)
    count = np.bincount(cell)
    means = np.bincount(cell, values) / np.maximum(count, 1)
    power = np.abs(np.fft.rfft(means)) ** 2
    frequency_hz = np.fft.rfftfreq(means.size, cell_s)
    turn = frequency_hz * period_s
    is_worm = (np.abs(turn - np.round(turn)) < 0.9 * period_s / duration_s) & (turn < orders + 0.5)
    within = (frequency_hz > TREND_ORDINATES / duration_s) & (frequency_hz < HIGHEST / cell_s)
    used = within & ~is_worm
    if int(used.sum()) < FEWEST_ORDINATES:
        return None
    return frequency_hz[used], power[used], cell_s


def _remembering(frequency_hz: Floats, memory_s: Floats, cell_s: float) -> Floats:
    """Spectra (m, f) of unit power of noise that forgets exponentially, sampled."""
    keep = np.exp(-cell_s / memory_s)[:, np.newaxis]
    cosine = np.cos(2.0 * np.pi * frequency_hz * cell_s)
    return np.asarray((1.0 - keep**2) / (1.0 - 2.0 * keep * cosine + keep**2))


def _free(frequency_hz: Floats, cell_s: float) -> Floats:
    """Candidates (c, f) of what air and drive do."""
    air = _remembering(frequency_hz, AIR_S, cell_s)
    wander = _remembering(frequency_hz, WANDER_S, cell_s)
    mixed = air[:, None, None] + WANDER_SHARES[:, None, None] * wander[None, None]
    return np.asarray(mixed.reshape(-1, frequency_hz.size))


def _loops(frequency_hz: Floats) -> Floats:
    """What loops (l, f) leave of the power: measured over an interval, applied over the next."""
    interval_s, share = (
        grid.reshape(-1, 1) for grid in np.meshgrid(np.array(INTERVALS_S), np.array(SHARES))
    )
    back = np.exp(-2j * np.pi * frequency_hz * interval_s)
    steered_part = np.sinc(frequency_hz * interval_s) ** 2 * share * back
    left = np.abs(1.0 - steered_part / (1.0 - (1.0 - share) * back)) ** 2
    return np.asarray(np.maximum(left, LEAST_LEFT))


# What in a run cannot be as it was meant, in sentences.

_LARGEST_ARCSEC = 200.0  # peak to peak; common practice, no source

_RATES = {  # lead of the drive when set to another rate, arcsec a minute, lowest and highest
    RunDoubt.SOLAR_RATE: (-2.7, -2.2),  # 15.000 arcsec a second: −2.46
    RunDoubt.LUNAR_RATE: (
        -40.0,
        -18.0,
    ),  # the Moon's mean 13.18° a day: −32.9; drives differ in what they take
}


def guiding_left_on(
    utc_s: Floats, residual_arcsec: Floats, period_s: float, orders: int, swing_arcsec: float
) -> Finding | None:
    """What is to be said of corrections while the run was recorded; None when there were none.

    `residual_arcsec` (n,): without trend and the periodic curve of `orders` harmonics,
    the first of amplitude `swing_arcsec`.
    """
    found = guiding_detected(utc_s, residual_arcsec, period_s, orders, swing_arcsec)
    if found is GuidingDetected.NO:
        return None
    if found is GuidingDetected.UNCLEAR:
        return Finding.of(RunDoubt.GUIDING_UNCLEAR)
    return Finding.of(RunDoubt.GUIDING_LEFT_ON)


def implausibilities(
    run: Run, slope_arcsec_per_min: float, sigma_arcsec_per_min: float
) -> list[Finding]:
    """Doubts about signs, rates and sampling; the slope is the drive's lead without the model."""
    found = [
        _reversed_east(run, slope_arcsec_per_min, sigma_arcsec_per_min),
        _reversed_north(run),
        _rate(run, slope_arcsec_per_min, sigma_arcsec_per_min),
    ]
    return [note for note in found if note is not None]


def size_note(peak_to_peak_arcsec: float) -> Finding | None:
    """A swing no worm has."""
    if peak_to_peak_arcsec < _LARGEST_ARCSEC:
        return None
    return Finding.of(RunDoubt.UNIT, size=peak_to_peak_arcsec)


def period_note(given_s: float, found_s: float) -> Finding | None:
    """The period entered against the one in the run."""
    for factor, code in ((60.0, RunDoubt.MINUTES_TAKEN), (1 / 60.0, RunDoubt.SECONDS_TAKEN)):
        if abs(found_s / given_s / factor - 1.0) < 0.05:
            return Finding.of(code, given=given_s, found=found_s)
    return None


def _trend(utc_s: Floats, values: Floats) -> float:
    """Slope per minute."""
    return float(np.polyfit((utc_s - utc_s[0]) / 60.0, values, 1)[0])


def _is_reversed(measured: float, expected: float, floor: float) -> bool:
    """A measured slope that is minus the expected one, not by chance."""
    return abs(expected) > floor and abs(measured + expected) < 0.25 * abs(expected)


def _reversed_east(run: Run, slope: float, sigma: float) -> Finding | None:
    if not run.axis_is_known:
        return None
    expected = _trend(run.utc_s, run.modelled_lead_arcsec)
    if not _is_reversed(slope + expected, expected, max(8.0 * sigma, 0.3)):
        return None
    return Finding.of(RunDoubt.EAST_SIGN, seen=_east(slope + expected), expected=_east(expected))


def _reversed_north(run: Run) -> Finding | None:
    if not run.axis_is_known or run.north_arcsec is None:
        return None
    expected = _trend(run.utc_s, run.modelled_north_arcsec)
    measured = _trend(run.utc_s, run.north_arcsec) + expected
    if not _is_reversed(measured, expected, 0.3):
        return None
    return Finding.of(RunDoubt.NORTH_SIGN, seen=_north(measured), expected=_north(expected))


def _east(rate: float) -> DriftWay:
    return DriftWay.EAST if rate > 0.0 else DriftWay.WEST


def _north(rate: float) -> DriftWay:
    return DriftWay.NORTH if rate > 0.0 else DriftWay.SOUTH


def _rate(run: Run, slope: float, sigma: float) -> Finding | None:
    if not run.axis_is_known or abs(slope) < max(6.0 * sigma, 0.5):
        return None
    for code, (low, high) in _RATES.items():
        if low <= slope <= high:
            return Finding.of(code, rate=-slope)
    percent = abs(100.0 * slope / SIDEREAL_ARCSEC_PER_MIN)
    code = RunDoubt.AHEAD if slope > 0.0 else RunDoubt.BEHIND
    return Finding.of(code, rate=abs(slope), percent=percent)
