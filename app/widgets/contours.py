"""Lines of equal value over the sky."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from pyqtgraph.functions import isocurve

from app.widgets.skyview import FROM_ZENITH_DEG, SkyView

Floats = NDArray[np.float64]
Values = Callable[[Floats, Floats], Floats]  # of azimuth (1, n) and altitude (m, 1), degrees

_AROUND = 181  # places round the horizon, and down from the zenith
_DOWN = 91
_SEAM_DEG = 90.001  # where the grid begins and ends: few lines run across due east
_INNERMOST = 0.11
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
            down, around = np.array([(point[0], point[1]) for point in piece]).T
            # The curve is given in the middles of cells, half a cell off.
            down = np.interp(down - 0.5, np.arange(_DOWN), from_zenith)
            turned = np.interp(around - 0.5, np.arange(_AROUND), azimuth)
            found.append(Contour(words(level), level < 0.0, turned, 90.0 - down))
    return tuple(found)


def bands(values: Values, levels: Sequence[float], rim_deg: float = FROM_ZENITH_DEG) -> Floats:
    """Which band between levels each pixel of the sky lies in, (n, n), as 0 to 1; NaN outside.

    The sign of a value does not count.
    """
    azimuth, altitude = SkyView(rim_deg).grid(_ACROSS)
    sizes = np.abs(np.asarray(values(azimuth, altitude)))
    edges = np.sort(np.unique(np.abs(np.asarray(levels, dtype=np.float64))))
    band = np.searchsorted(edges, sizes) / max(len(edges), 1)
    return np.where(altitude >= 90.0 - rim_deg, band, np.nan)
