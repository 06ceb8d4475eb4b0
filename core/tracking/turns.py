"""A run laid turn upon turn of the worm: the mean curve, and how far the turns differ."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]
Counts = NDArray[np.intp]

MOST_PLACES = 60  # in one turn of the worm
_FEWEST_PLACES = 8
_ENOUGH = 0.75  # share of a turn's places that must be filled for it to count as whole


@dataclass(frozen=True, eq=False)
class FoldedCurve:
    """One turn of the worm, arrays (m,): place in seconds from the epoch's phase zero.

    `mean_arcsec`: over whole turns; `scatter_arcsec`: standard deviation between turns, the air
    included; `turns`: how many contribute. `table_arcsec` (turns, m): each turn, NaN where unread.
    """

    place_s: Floats
    mean_arcsec: Floats
    scatter_arcsec: Floats
    turns: Counts
    table_arcsec: Floats


def turn_numbers(utc_s: Floats, period_s: float, epoch_s: float) -> tuple[Counts, Floats]:
    """Turn of the worm (n,), counted from the epoch, and the phase (n,) within it, 0 to 1."""
    turns = (utc_s - epoch_s) / period_s
    whole = np.floor(turns)
    return whole.astype(np.intp), turns - whole


def by_turn(utc_s: Floats, values: Floats, period_s: float, epoch_s: float) -> Floats:
    """Means (turns, places) of values (n,), NaN where unread; every turn, however little of it."""
    places = _places(utc_s, period_s)
    turn, phase = turn_numbers(utc_s, period_s, epoch_s)
    number = turn - turn.min()
    cell = number * places + np.minimum((phase * places).astype(np.intp), places - 1)
    size = (int(number.max()) + 1) * places
    count = np.bincount(cell, minlength=size).reshape(-1, places)
    total = np.bincount(cell, values, size).reshape(-1, places)
    return np.where(count > 0, total / np.maximum(count, 1), np.nan)


def fold(utc_s: Floats, lead_arcsec: Floats, period_s: float, epoch_s: float) -> FoldedCurve:
    """Mean and scatter of leads (n,) without trend."""
    table = by_turn(utc_s, lead_arcsec, period_s, epoch_s)
    places = table.shape[1]
    table = table[np.isfinite(table).mean(axis=1) >= _ENOUGH]
    filled = np.isfinite(table).sum(axis=0)
    level = np.where(np.isfinite(table), table, 0.0).sum(axis=0) / np.maximum(filled, 1)
    apart = np.where(np.isfinite(table), table - level, 0.0)
    variance = (apart**2).sum(axis=0) / np.maximum(filled - 1, 1)
    return FoldedCurve(
        place_s=(np.arange(places) + 0.5) / places * period_s,
        mean_arcsec=np.where(filled > 0, level, np.nan),
        scatter_arcsec=np.where(filled > 1, np.sqrt(variance), np.nan),
        turns=filled.astype(np.intp),
        table_arcsec=table,
    )


@dataclass(frozen=True, eq=False)
class Shared:
    """`level` (m,): what the turns have in common at each place; `variance`: of a single turn about
    it, origins apart; `turns`: how many were read, parts of turns counted as such; `unlike`:
    variance of the turns' own variances over the square of their mean."""

    level: Floats
    variance: float
    turns: float
    unlike: float


def shared(table: Floats) -> Shared:
    """Of turns as of `by_turn`: a level for each place and an origin for each turn, by least
    squares through the cells that were read.

    A turn read in part is so not charged with its own mean, which is not that of a whole turn
    (two-way layout with unequal numbers: Searle, Linear Models, 1971, chapter 7, from memory).
    """
    is_read = np.isfinite(table)
    read, value = is_read.astype(np.float64), np.where(is_read, table, 0.0)
    each = np.maximum(read.sum(axis=0), 1.0)
    mean = value.sum(axis=0) / each
    normal = np.diag(read.sum(axis=1)) - (read / each) @ read.T
    origin, *_ = np.linalg.lstsq(normal, (read * (value - mean)).sum(axis=1), rcond=1e-9)
    level = mean - read.T @ origin / each
    left = read * (value - level - origin[:, np.newaxis])
    cells, places = float(read.sum()), int(is_read.any(axis=0).sum())
    freedom = max(cells - places - table.shape[0] + 1.0, 1.0)
    weight = read.sum(axis=1) / cells
    own = (left**2).sum(axis=1) / np.maximum(read.sum(axis=1), 1.0)
    mean_own = max(float(weight @ own), 1e-300)
    unlike = float(weight @ (own / mean_own - 1.0) ** 2)
    return Shared(level, float((left**2).sum()) / freedom, cells / places, unlike)


def _places(utc_s: Floats, period_s: float) -> int:
    """As many places as hold about two readings each in every turn."""
    interval_s = float(np.median(np.diff(utc_s)))
    return int(np.clip(period_s / (2.0 * interval_s), _FEWEST_PLACES, MOST_PLACES))
