"""What a drive does beside its curve, told from the air frequency by frequency.

The air moves a star north as much as east, the drive only east: what the east offsets hold above
the north ones is the drive's.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from enum import Enum

import numpy as np
from numpy.typing import NDArray
from scipy.ndimage import uniform_filter1d

from core.finding import Code
from core.tracking.periodic import PeriodicError
from core.tracking.run import Run, UnusableRun


class Loop(Code):
    """What a guider or training cannot be."""

    FEW_TURNS = "few turns"
    INTERVAL = "interval"
    DELAY = "delay"
    SHARE = "share"


Floats = NDArray[np.float64]

_BAND_RATIO = 1.5  # from one end of a band of frequencies to the other
_FEWEST_IN_BAND = 12  # powers: a mean of n is good to one part in √n
_SURE = 2.0  # standard deviations
# Neighbouring powers under Hann's window are correlated by 4/9, the next but one by 1/36 (the
# squares of its own correlation, 2/3 and 1/6): 1 + 2 (4/9 + 1/36).
_HANN_VARIANCE = 1.944
_NOTHING = 1e-30  # no power of a star, only something to divide by where there is none
_FEWEST_IN_PIECE = 2 * _FEWEST_IN_BAND


def drives_own(
    utc_s: Floats,
    residual: Floats,
    air: Floats,
    piece: NDArray[np.intp],
    interval_s: float,
    doubt: float = 0.0,
) -> Floats | None:
    """The residual (n,), made as strong at each frequency as what the drive alone does.

    `air` (n,): what the air alone does, in the same unit; `piece` (n,): the stretch without a
    break each reading belongs to, numbered from 0. `doubt`: by how many standard deviations of
    what is known of it the drive's power is taken larger. None when no stretch is long enough.
    """
    stretches = [piece == number for number in range(int(piece[-1]) + 1)]
    grids = [_even(utc_s[inside], interval_s) for inside in stretches]
    both = [
        _at(grid, utc_s, residual, inside) for grid, inside in zip(grids, stretches, strict=True)
    ]
    alone = [_at(grid, utc_s, air, inside) for grid, inside in zip(grids, stretches, strict=True)]
    powers = [
        _powers(one, other, interval_s)
        for one, other in zip(both, alone, strict=True)
        if one.size >= _FEWEST_IN_PIECE
    ]
    if not powers:
        return None
    frequency_hz, share = _shares_by_frequency(np.concatenate(powers, axis=1), doubt)
    own = np.empty_like(residual)
    for grid, values, inside in zip(grids, both, stretches, strict=True):
        kept = _weakened(values, interval_s, frequency_hz, share)
        own[inside] = np.interp(utc_s[inside], grid, kept)
    return own


def between_readings(
    times: Floats, utc_s: Floats, own: Floats, piece: NDArray[np.intp], seed: int = 1
) -> Floats:
    """What a drive pushed about at random does between readings `own` (n,), at `times` (m,).

    Zero at the readings: to be added to the straight line between them, on which a guider finds
    nothing to do. As lively as the readings themselves leave the line through their neighbours.
    """
    before, after = np.diff(utc_s)[:-1], np.diff(utc_s)[1:]
    bent = own[1:-1] - (own[:-2] * after + own[2:] * before) / (before + after)
    inside = piece[:-2] == piece[2:]
    expected_s = (before * after / (before + after))[inside]
    if not expected_s.size:
        return np.zeros_like(times)
    arcsec2_per_s = float(np.sum(bent[inside] ** 2) / np.sum(expected_s))
    moments = np.union1d(times, utc_s)
    steps = np.random.default_rng(seed).standard_normal(moments.size - 1)
    walk = np.append(0.0, np.cumsum(steps * np.sqrt(arcsec2_per_s * np.diff(moments))))
    at_readings = walk[np.searchsorted(moments, utc_s)]
    straight = np.interp(times, utc_s, at_readings)
    return np.asarray(walk[np.searchsorted(moments, times)] - straight)


def _even(utc_s: Floats, interval_s: float) -> Floats:
    """Evenly spaced times from the first to the last, about an interval apart, at least three."""
    return np.linspace(utc_s[0], utc_s[-1], max(round(np.ptp(utc_s) / interval_s), 2) + 1)


def _at(grid_s: Floats, utc_s: Floats, values: Floats, inside: NDArray[np.bool_]) -> Floats:
    return np.interp(grid_s, utc_s[inside], values[inside])


def _weakened(values: Floats, interval_s: float, frequency_hz: Floats, share: Floats) -> Floats:
    """Evenly spaced values (n,) with each frequency's power reduced to its share."""
    pad = values.size - 1
    longer = np.pad(values, pad, mode="reflect", reflect_type="odd")
    own_hz = np.fft.rfftfreq(longer.size, interval_s)
    own_hz[0] = own_hz[1]
    root = np.sqrt(np.interp(np.log(own_hz), np.log(frequency_hz), share))
    return np.fft.irfft(root * np.fft.rfft(longer), longer.size)[pad : pad + values.size]


def _shares_by_frequency(powers: Floats, doubt: float) -> tuple[Floats, Floats]:
    """Middles of bands in hertz and the drive's share of the power there, (m,) each.

    `powers` (3, k): frequency, power of the residual, power of the air alone.
    """
    frequency, both, air = powers[:, np.argsort(powers[0], kind="stable")]
    edges = _band_edges(frequency)
    count = np.diff(np.append(edges, frequency.size))
    middle_hz = np.exp(np.add.reduceat(np.log(frequency), edges) / count)
    sums = np.stack([np.add.reduceat(both, edges), np.add.reduceat(air, edges), count])
    return middle_hz, _shares(middle_hz, sums, doubt)


def _powers(residual: Floats, air: Floats, interval_s: float) -> Floats:
    """Frequencies above zero and both powers there, (3, m)."""
    from scipy.signal import periodogram  # loads slowly

    frequency, both = periodogram(residual, 1.0 / interval_s, window="hann", detrend="linear")
    of_air = periodogram(air, 1.0 / interval_s, window="hann", detrend="linear")[1]
    return np.stack([frequency, both, of_air])[:, 1:]


def _band_edges(frequency_hz: Floats) -> NDArray[np.intp]:
    """Where bands begin that are wide enough and hold enough powers."""
    edges, following = [0], 0
    while True:
        wide = int(np.searchsorted(frequency_hz, _BAND_RATIO * frequency_hz[following]))
        following = max(wide, following + _FEWEST_IN_BAND)
        if frequency_hz.size - following < _FEWEST_IN_BAND:
            return np.asarray(edges)
        edges.append(following)


def _shares(frequency_hz: Floats, sums: Floats, doubt: float) -> Floats:
    """The drive's share in each band (m,), from sums (3, m): of both powers, and how many.

    Where it does not stand out, the power is taken to fall with the square of the frequency, as
    that of anything pushed about at random does, through all such bands that adjoin. Band by band,
    what is left of chance would be taken for the drive's, since no share is below zero.
    """
    whole, air, count = sums
    drives = whole - air
    # From the sum of both, by which their difference is not drawn to one side.
    variance = _HANN_VARIANCE / count * 0.5 * (whole + air) ** 2 + _NOTHING
    stands_out = drives > _SURE * np.sqrt(variance)
    falling = count / frequency_hz**2
    bounds = np.flatnonzero(np.diff(stands_out)) + 1
    for run in np.split(np.arange(count.size), bounds):
        if not stands_out[run[0]]:
            weight = falling[run] / variance[run]
            known = weight @ falling[run]
            size = (weight @ drives[run] + doubt * np.sqrt(known)) / known
            drives[run] = falling[run] * size
        else:
            drives[run] += doubt * np.sqrt(variance[run])
    return np.asarray(np.clip(drives / (whole + _NOTHING), 0.0, 1.0))


# Where the mount points beside the star from moment to moment, freed of the air: what smears.

_SMOOTH_SHARE = 1.0 / 32.0  # of the worm's turn: slow enough to calm the air, fast for harmonics
_MOST_STEPS = 60_000


class Drive(Enum):
    """How the drive is run."""

    UNGUIDED = "unguided"
    TRAINED = "trained"
    GUIDED = "guided"


@dataclass(frozen=True, eq=False)
class Motion:
    """Evenly spaced offsets of the star on the sky; arrays (n,), arcsec, east and north.

    `breaks`: indices at which a new stretch begins; no exposure reaches over one. `turn` (n,): the
    worm's turn each moment belongs to.
    """

    step_s: float
    east_arcsec: Floats
    north_arcsec: Floats
    breaks: tuple[int, ...]
    turn: NDArray[np.intp]

    @property
    def duration_s(self) -> float:
        """The whole length, breaks included."""
        return self.step_s * (self.east_arcsec.size - 1)


def motion(
    result: PeriodicError,
    run: Run,
    drive: Drive,
    *,
    declination_deg: float | None = None,
    step_s: float = 1.0,
    doubt: float = 0.0,
) -> Motion:
    """The drive's own motion seen at a declination (None: the run's star); no axis drift in it.

    The changing part is the run's residual, less what the air does in it. TRAINED leaves it alone,
    widened by what a mean of so many turns cannot know. GUIDED starts from UNGUIDED: the guiding
    acts on it in `core.tracking.motion`. The drive's steady drift beyond the axis model is in
    all of them; while the axis is unknown it holds the axis drift too. `doubt`: by how many
    standard deviations of what tells it from the air the changing part is taken stronger.
    """
    dec = result.declination_deg if declination_deg is None else declination_deg
    step_s = max(step_s, (result.utc_s[-1] - result.utc_s[0]) / _MOST_STEPS)
    times, breaks = _grid(result, step_s)
    lead = _changing(result, run, times, doubt)
    if drive is Drive.TRAINED:
        lead = lead * _unseen_turns(result.turns)
    else:
        lead = lead + result.curve_arcsec(times)
    lead = lead + result.drift_arcsec_per_min / 60.0 * (times - times[0])
    turn = np.floor((times - result.epoch_utc_s) / result.period_s).astype(np.intp)
    east = lead * math.cos(math.radians(dec))
    return Motion(step_s, east, np.zeros_like(east), breaks, turn)


def _unseen_turns(turns: float) -> float:
    """Residual about a mean over n turns is √(1−1/n) of the scatter; a new turn's is √(1+1/n)."""
    if turns < 2.0:
        raise UnusableRun(Loop.FEW_TURNS)
    return math.sqrt((turns + 1.0) / (turns - 1.0))


def _grid(result: PeriodicError, step_s: float) -> tuple[Floats, tuple[int, ...]]:
    """Times (n,) over all stretches laid end to end, and where each begins."""
    parts, breaks, size = [], [], 0
    for piece in range(int(result.piece[-1]) + 1):
        inside = result.utc_s[result.piece == piece]
        if inside.size < 2 or inside[-1] - inside[0] < 2.0 * step_s:
            continue
        times = np.arange(inside[0], inside[-1], step_s)
        parts.append(times)
        breaks.append(size)
        size += times.size
    return np.concatenate(parts), tuple(breaks[1:])


def _changing(result: PeriodicError, run: Run, times: Floats, doubt: float) -> Floats:
    """The part that does not repeat (n,), without the air.

    Where the air cannot be told from the drive a running mean calms it.
    """
    own = None
    if run.north_arcsec is not None:
        air = np.interp(result.utc_s, run.utc_s, _air_arcsec(run))
        own = drives_own(
            result.utc_s, result.residual_arcsec, air, result.piece, run.interval_s, doubt
        )
    if own is None:
        calm = _calmed(result.utc_s, result.residual_arcsec, _SMOOTH_SHARE * result.period_s)
        return np.interp(times, result.utc_s, calm)
    between = between_readings(times, result.utc_s, own, result.piece)
    return np.asarray(np.interp(times, result.utc_s, own) + between)


def _air_arcsec(run: Run) -> Floats:
    """What the air does (n,), as a lead of the drive: the north offsets less a curved trend."""
    assert run.north_arcsec is not None
    minutes = (run.utc_s - run.utc_s[0]) / 60.0
    order = min(4, 1 + int(run.duration_s // 3600.0))
    trend = np.polyval(np.polyfit(minutes, run.north_arcsec, order), minutes)
    return np.asarray((run.north_arcsec - trend) / run.cos_declination)


def _calmed(utc_s: Floats, values: Floats, window_s: float) -> Floats:
    """Running mean (n,) over a span of time, readings taken as even."""
    width = max(round(window_s / float(np.median(np.diff(utc_s)))), 1)
    return np.asarray(uniform_filter1d(values, width, mode="nearest"))


# What guiding leaves of a motion: measured now and then, corrected late, by a share.


@dataclass(frozen=True)
class Guiding:
    """`interval_s`: from one measurement to the next, its exposure included; `delay_s`: from the
    middle of a measurement to its correction; `share`: of the offset corrected each time;
    `noise_arcsec`: error of one measurement per axis, what the air moves the guide star.
    """

    interval_s: float
    delay_s: float
    share: float = 0.6
    noise_arcsec: float = 0.3

    def __post_init__(self) -> None:
        """Refuses settings no guider has, in a sentence."""
        if not 0.05 <= self.interval_s <= 600.0:
            raise UnusableRun(Loop.INTERVAL, interval=self.interval_s)
        if not 0.0 <= self.delay_s <= 10.0 * self.interval_s:
            raise UnusableRun(Loop.DELAY, delay=self.delay_s, interval=self.interval_s)
        if not 0.0 < self.share < 2.0 or not self.noise_arcsec >= 0.0:
            raise UnusableRun(Loop.SHARE)


def step_for(guiding: Guiding) -> float:
    """A step of time, seconds, fine enough to follow the loop."""
    return min(1.0, guiding.interval_s / 4.0)


def guided(motion: Motion, guiding: Guiding, seed: int = 1) -> Motion:
    """The motion with the corrections in it. The same `seed` draws the same measurement noise."""
    rng = np.random.default_rng(seed)
    every = max(round(guiding.interval_s / motion.step_s), 1)
    late = round(guiding.delay_s / motion.step_s)
    path = np.stack([motion.east_arcsec, motion.north_arcsec], axis=-1)
    starts = (0, *motion.breaks)
    ends = (*motion.breaks, path.shape[0])
    parts = [
        _loop(path[start:end], every, late, guiding, rng)
        for start, end in zip(starts, ends, strict=True)
    ]
    east, north = np.concatenate(parts).T
    return replace(motion, east_arcsec=east.copy(), north_arcsec=north.copy())


def _loop(
    path: Floats, every: int, late: int, guiding: Guiding, rng: np.random.Generator
) -> Floats:
    """One stretch (n, 2): mean over each interval measured, corrected `late` steps after it."""
    size = path.shape[0]
    before = np.concatenate([np.zeros((1, 2)), np.cumsum(path - path[0], axis=0)])
    noise = guiding.noise_arcsec * rng.standard_normal((size // every + 1, 2))
    applied = np.zeros((size, 2))
    level = np.zeros(2)
    pending: list[tuple[int, Floats]] = []
    for number, start in enumerate(range(0, size, every)):
        end = min(start + every, size)
        at = start
        while pending and pending[0][0] < end:
            due, step = pending.pop(0)
            applied[at : max(due, at)] = level
            at, level = max(due, at), level + step
        applied[at:end] = level
        moved = (before[end] - before[start]) / (end - start) - applied[start:end].mean(axis=0)
        middle = (start + end) // 2
        pending.append((max(middle + late, end), guiding.share * (moved + noise[number])))
    return np.asarray(path - path[0] - applied)
