"""Where a run is broken: gaps, bumps, a meridian flip; every piece gets an origin of its own."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.alignment.driftlog import Leg
from core.alignment.steps import find_breaks

Floats = NDArray[np.float64]
Counts = NDArray[np.intp]
Flags = NDArray[np.bool_]

LONG_GAP_S = 60.0
_INTERVALS = 20.0  # a gap is also long only if it is this many usual intervals
_MOST_GAPS = 24


def long_gaps(utc_s: Floats) -> tuple[int, ...]:
    """Indices of readings that follow a long gap, the longest 24 of them."""
    steps = np.diff(utc_s)
    least = max(LONG_GAP_S, _INTERVALS * float(np.median(steps)))
    found = np.flatnonzero(steps > least)
    if found.size > _MOST_GAPS:
        found = found[np.argsort(steps[found])[-_MOST_GAPS:]]
    return tuple(int(index) + 1 for index in np.sort(found))


def piece_numbers(size: int, breaks: tuple[int, ...]) -> Counts:
    """Piece (n,) of every reading; `breaks` are indices that begin a new one."""
    starts = np.asarray(sorted(breaks), dtype=np.intp)
    return np.searchsorted(starts, np.arange(size), "right").astype(np.intp)


def bumps(utc_s: Floats, residual_arcsec: Floats, kept: Flags) -> tuple[int, ...]:
    """Readings before which the star jumped, found in what the periodic fit leaves over.

    The search of `core.alignment.steps`, which asks of a leg its north offsets.
    """
    leg = Leg("residual", 0.0, 0.0, utc_s, residual_arcsec)
    return find_breaks(leg, kept, np.zeros_like(utc_s))
