"""Readings gathered into means, so that a long run costs little more."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]
Counts = NDArray[np.intp]

MOST_BINS = 2400  # 12 s over eight hours; models are averaged alike, so nothing is smoothed away
SHORTEST_S = 8.0  # means over less would carry the memory of the air, beside that of the drive


@dataclass(frozen=True, eq=False)
class Bins:
    """`starts` (k,): index of each bin's first reading; `utc_s`, `count`, `piece` (k,).

    `piece` counts the stretches between breaks; each has an origin of its own.
    """

    starts: Counts
    utc_s: Floats
    count: Floats
    piece: Counts

    @classmethod
    def of(cls, utc_s: Floats, piece: Counts) -> Bins:
        """Of equal spans. `utc_s` (n,) increasing; `piece` (n,) never decreasing."""
        usual_s = max(SHORTEST_S, float(utc_s[-1] - utc_s[0]) / MOST_BINS)
        return cls._at(_starts(utc_s, piece, usual_s), utc_s, piece)

    @classmethod
    def of_readings(cls, utc_s: Floats, piece: Counts, each: int) -> Bins:
        """So many readings in each bin, fewer in the last of a piece.

        Equal spans hold now three readings, now two: their times beat with the cadence, and the
        worm shows again beside it. `piece` (n,) counts from 0.
        """
        first = np.append(0, np.flatnonzero(np.diff(piece)) + 1)
        within = np.arange(utc_s.size) - first[piece]
        return cls._at(np.flatnonzero(within % each == 0), utc_s, piece)

    @classmethod
    def _at(cls, starts: Counts, utc_s: Floats, piece: Counts) -> Bins:
        count = np.diff(np.append(starts, utc_s.size)).astype(np.float64)
        origin_s = utc_s[0]
        means = origin_s + np.add.reduceat(utc_s - origin_s, starts) / count
        return cls(starts, means, count, piece[starts])

    @property
    def pieces(self) -> int:
        """Number of pieces."""
        return int(self.piece[-1]) + 1

    def means(self, columns: Floats) -> Floats:
        """Means (k, …) of readings (n, …) in each bin."""
        sums = np.add.reduceat(columns, self.starts, axis=0)
        return np.asarray(sums / self.count.reshape(-1, *(1,) * (columns.ndim - 1)))

    def origins(self) -> Floats:
        """Design columns (k, pieces): one constant per piece."""
        return np.equal.outer(self.piece, np.arange(self.pieces)).astype(np.float64)


def _starts(utc_s: Floats, piece: Counts, width_s: float) -> Counts:
    cell = np.floor((utc_s - utc_s[0]) / width_s).astype(np.intp)
    changes = (np.diff(cell) != 0) | (np.diff(piece) != 0)
    return np.append(0, np.flatnonzero(changes) + 1)
