"""What a drive does beside its curve, told from the air frequency by frequency.

The air moves a star north as much as east, the drive only east: what the east offsets hold above
the north ones is the drive's.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from scipy.signal import periodogram

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
