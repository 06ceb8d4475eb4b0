"""Lines of equal value over the sky."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from pyqtgraph.functions import isocurve

from app.widgets.skyview import FROM_ZENITH_DEG, SkyView

Floats = NDArray[np.float64]
Values = Callable[[Floats, Floats], Floats]  # of azimuth and altitude, degrees, that broadcast

_AROUND = 181  # places round the horizon, and down from the zenith
_DOWN = 91
_SEAM_DEG = 90.001  # where the grid begins and ends: few lines run across due east
_INNERMOST = 0.11
_HALF = 0.499999  # of a cell: from a place on its edge to the corners before and behind it
_HALVINGS = 14  # to a ten-thousandth of a degree
_ACROSS = 280  # pixels of the tones, either way


@dataclass(frozen=True, eq=False)
class Contour:
    """A line of one value; `azimuth_deg`, `altitude_deg` (k,) along it. `words` name the value."""

    words: str
    is_negative: bool
    azimuth_deg: Floats
    altitude_deg: Floats


def contours(
    values: Values,
    levels: Sequence[float],
    words: Callable[[float], str],
    rim_deg: float = FROM_ZENITH_DEG,
) -> tuple[Contour, ...]:
    """Lines at each level, down to `rim_deg` from the zenith; denser in altitude near it."""
    azimuth = np.linspace(_SEAM_DEG, _SEAM_DEG + 360.0, _AROUND)
    # Not from the zenith itself, where lines run together.
    from_zenith = rim_deg * np.linspace(_INNERMOST, 1.0, _DOWN) ** 1.5
    grid = np.asarray(values(azimuth[np.newaxis], 90.0 - from_zenith[:, np.newaxis]))
    grid = np.broadcast_to(grid, (_DOWN, _AROUND))
    found = []
    for level in levels:
        for piece in isocurve(grid, level, connected=True, extendToEdge=False):
            # The curve is given in the middles of cells, half a cell off.
            edge = np.array([(point[0], point[1]) for point in piece]).T - 0.5
            turned, down = _crossing(values, level, edge, azimuth, from_zenith)
            found.append(Contour(words(level), level < 0.0, turned, 90.0 - down))
    return tuple(found)


def _crossing(
    values: Values, level: float, edge: Floats, azimuth: Floats, from_zenith: Floats
) -> tuple[Floats, Floats]:
    """Azimuth and zenith distance (k,) where the values pass the level, halved to from a guess.

    `edge` (2, k): places in the grid, down and around, each between two of its corners. What bends
    sharply from one corner to the next, or jumps, is met all the same.
    """
    (before, left), (after, right) = (np.rint(edge + side).astype(int) for side in (-_HALF, _HALF))
    low = np.array([azimuth[left], from_zenith[before]])
    high = np.array([azimuth[right], from_zenith[after]])
    is_above = np.asarray(values(low[0], 90.0 - low[1])) > level
    for _ in range(_HALVINGS):
        middle = 0.5 * (low + high)
        is_low = (np.asarray(values(middle[0], 90.0 - middle[1])) > level) == is_above
        low, high = np.where(is_low, middle, low), np.where(is_low, high, middle)
    turned, down = 0.5 * (low + high)
    return turned, down


def bands(values: Values, levels: Sequence[float], rim_deg: float = FROM_ZENITH_DEG) -> Floats:
    """Which band between levels each pixel of the sky lies in, (n, n), as 0 to 1; NaN outside.

    The sign of a value does not count.
    """
    azimuth, altitude = SkyView(rim_deg).grid(_ACROSS)
    sizes = np.abs(np.asarray(values(azimuth, altitude)))
    edges = np.sort(np.unique(np.abs(np.asarray(levels, dtype=np.float64))))
    band = np.searchsorted(edges, sizes) / max(len(edges), 1)
    return np.where(altitude >= 90.0 - rim_deg, band, np.nan)
