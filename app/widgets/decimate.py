"""Thinning a long line to what a screen can show."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]


def decimate(
    x: Floats, y: Floats, left: float, right: float, columns: int
) -> tuple[Floats, Floats]:
    """The part of a line between `left` and `right` with every peak: a lowest and a highest point
    per column.

    `x` (n,) increasing, `y` (n,) alike. A neighbour on either side is kept, so that the line leaves
    the picture where it should. A line with few points comes back as it is.
    """
    first = max(int(np.searchsorted(x, left)) - 1, 0)
    last = min(int(np.searchsorted(x, right, side="right")) + 1, len(x))
    x, y = x[first:last], y[first:last]
    if len(x) <= 4 * columns or right <= left:
        return x, y
    edges = np.linspace(left, right, columns + 1)[1:-1]
    starts = np.unique(np.concatenate(([0], np.searchsorted(x, edges))))
    starts = starts[starts < len(x)]
    thin_y = np.empty(2 * len(starts))
    thin_y[0::2] = np.minimum.reduceat(y, starts)
    thin_y[1::2] = np.maximum.reduceat(y, starts)
    return np.repeat(x[starts], 2), thin_y


def thinned(x: Floats, y: Floats, least: float) -> tuple[Floats, Floats]:
    """A line (n,) with one point for each `least` of its length; both ends stay."""
    if len(x) < 3:
        return x, y
    along = np.cumsum(np.hypot(np.diff(x), np.diff(y)))
    kept = np.diff(np.floor(along / least), prepend=-1.0) > 0.0
    kept = np.concatenate([[True], kept])
    kept[-1] = True
    return x[kept], y[kept]
