"""Drawing a skyline: a stroke of the pen over a horizon gives a new horizon."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from core.sky.horizon import HIGHEST_DEG, Horizon

Floats = NDArray[np.float64]

PEN_DEG = 5.0  # a touch of the pen raises at least so much of the skyline
_FINE_DEG = 0.5  # the hand is not steadier
_BESIDE_DEG = 1e-6


def redrawn(horizon: Horizon, stroke: Sequence[tuple[float, float]]) -> Horizon:
    """The horizon with the skyline along the stroke instead of what was there.

    `stroke`: (azimuth, altitude) in degrees in the order drawn, azimuths within 0 to 360 (a stroke
    does not cross north). Where it goes over the same azimuth again, the later counts. Altitudes
    are kept within 0 and 90. An empty stroke changes nothing.
    """
    if not stroke:
        return horizon
    azimuth_deg, altitude_deg = _heights(stroke)
    if azimuth_deg[-1] - azimuth_deg[0] >= 360.0:
        return Horizon.through(_thinned(azimuth_deg, altitude_deg))
    kept = _outside(horizon, azimuth_deg[0], azimuth_deg[-1])
    return Horizon.through([*kept, *_with_edges(horizon, azimuth_deg, altitude_deg)])


def raised(horizon: Horizon, azimuth_deg: float, step_deg: float) -> Horizon:
    """The horizon with one pen's width of skyline about that azimuth higher by a step."""
    altitude_deg = float(horizon.limit_deg(azimuth_deg)) + step_deg
    return redrawn(horizon, [(azimuth_deg % 360.0, altitude_deg)])


def _heights(stroke: Sequence[tuple[float, float]]) -> tuple[Floats, Floats]:
    """The stroke as rising azimuths, one a degree and its ends, and their altitudes."""
    azimuths = np.clip([point[0] for point in stroke], 0.0, 360.0)
    first = max(float(azimuths.min()) - PEN_DEG / 2.0, 0.0)
    last = min(float(azimuths.max()) + PEN_DEG / 2.0, 360.0)
    grid = np.unique(np.concatenate([[first, last], np.arange(np.ceil(first), last)]))
    heights = np.full(grid.size, float(np.clip(stroke[0][1], 0.0, HIGHEST_DEG)))
    for (start, low), (end, high) in zip(stroke, [*stroke[1:], stroke[-1]], strict=True):
        west, east = sorted((start, end))
        touched = (grid >= west - PEN_DEG / 2.0) & (grid <= east + PEN_DEG / 2.0)
        slope = [low, high] if start <= end else [high, low]
        heights[touched] = np.interp(grid[touched], [west, east + _BESIDE_DEG], slope)
    return grid, np.clip(heights, 0.0, HIGHEST_DEG)


def _outside(horizon: Horizon, first_deg: float, last_deg: float) -> list[tuple[float, float]]:
    pairs = zip(horizon.azimuth_deg.tolist(), horizon.altitude_deg.tolist(), strict=True)
    return [(azimuth, height) for azimuth, height in pairs if not first_deg <= azimuth <= last_deg]


def _with_edges(
    horizon: Horizon, azimuth_deg: Floats, altitude_deg: Floats
) -> list[tuple[float, float]]:
    """The stroke's points with an upright edge at either end down or up to the old skyline."""
    first, last = float(azimuth_deg[0]), float(azimuth_deg[-1])
    before = float(horizon.limit_deg(first - _BESIDE_DEG))
    after = float(horizon.limit_deg(last + _BESIDE_DEG))
    points = _thinned(azimuth_deg, altitude_deg)
    # Of two points at north, the one written 360 stands before the one written 0.
    return [(first or 360.0, before), *points, (0.0 if last == 360.0 else last, after)]


def _thinned(azimuth_deg: Floats, altitude_deg: Floats) -> list[tuple[float, float]]:
    """The fewest of the points whose straight joins stay within what a hand can draw."""
    keep, start, end = [0], 0, 2
    while end < azimuth_deg.size:
        between = slice(start, end + 1)
        ends = azimuth_deg[[start, end]], altitude_deg[[start, end]]
        straight = np.interp(azimuth_deg[between], *ends)
        if np.max(np.abs(straight - altitude_deg[between])) > _FINE_DEG:
            start = end - 1
            keep.append(start)
        end += 1
    keep.append(azimuth_deg.size - 1)
    return [(float(azimuth_deg[at]), round(float(altitude_deg[at]), 1)) for at in keep]
