"""Smear over the whole sky above, for an alignment, as a picture."""

from __future__ import annotations

import math
from dataclasses import dataclass

import erfa
import numpy as np
from numpy.typing import NDArray

from core.alignment.budget.field import Exposures, SeenField, seen_field
from core.alignment.budget.task import Task, Vantage
from core.alignment.budget.trail import trails
from core.alignment.geometry import axis_north_end

Floats = NDArray[np.float64]

LOWEST_ALTITUDE_DEG = 15.0
_NODES = 61  # across the disc; between them a polynomial serves
_REACH = 3  # nodes on either side that enter, and so nodes beyond the disc's edge
_NEAREST_AXIS = 0.01  # sine of the distance below which guiding about an axis is not drawn


@dataclass(frozen=True, eq=False)
class SkyMap:
    """Smear in one exposure begun in each cell, pixels; (cells, cells), NaN outside the disc.

    The disc shows the sky from above the head down to `lowest_altitude_deg`: zenith in the middle,
    distance from it in proportion to the zenith distance. Rows run from south to north, columns
    from west to east.
    """

    centre_px: Floats
    corner_px: Floats
    lowest_altitude_deg: float

    def cell(self, azimuth_deg: float, altitude_deg: float) -> tuple[int, int] | None:
        """Row and column of a place in the sky; None when it is not on the map."""
        if not self.lowest_altitude_deg <= altitude_deg <= 90.0:
            return None
        distance = (90.0 - altitude_deg) / (90.0 - self.lowest_altitude_deg)
        azimuth = math.radians(azimuth_deg)
        half = (self.centre_px.shape[0] - 1) / 2.0
        row = half * (1.0 + distance * math.cos(azimuth))
        return round(row), round(half * (1.0 + distance * math.sin(azimuth)))

    def place(self, row: float, column: float) -> tuple[float, float] | None:
        """Azimuth and altitude, degrees, of a cell; None outside the disc."""
        half = (self.centre_px.shape[0] - 1) / 2.0
        north, east = row / half - 1.0, column / half - 1.0
        distance = math.hypot(north, east)
        if distance > 1.0:
            return None
        azimuth_deg = math.degrees(math.atan2(east, north)) % 360.0
        return azimuth_deg, 90.0 - distance * (90.0 - self.lowest_altitude_deg)


def sky_map(
    task: Task,
    vantage: Vantage,
    axis_rad: Floats,
    cells: int = 500,
    lowest_altitude_deg: float = LOWEST_ALTITUDE_DEG,
) -> SkyMap:
    """Map for axis errors (2,), radians; of the task its target does not matter.

    Computed exactly on a coarse grid and drawn between by polynomials, from the first to the last
    instant of the exposure: right within 2 % of the value plus 3 % of the map's median. Within 10°
    of the axis a guided map is only indicative.
    """
    edge_rad = math.radians(90.0 - lowest_altitude_deg)
    step = 2.0 / (_NODES - 1)
    nodes: Floats = np.asarray(np.arange(-_REACH, _NODES + _REACH) * step - 1.0)
    north, east = np.meshgrid(nodes, nodes, indexing="ij")
    near = np.hypot(north, east) <= 1.0 + math.sqrt(2.0) * _REACH * step
    seen = _seen(north[near] * edge_rad, east[near] * edge_rad, task, vantage)
    tamer = _tamer(seen, axis_rad, task, vantage)
    smears = trails(seen, axis_rad, task, vantage).smear_px()
    fine: Floats = np.linspace(-1.0, 1.0, cells)
    weights = _local(nodes, fine)

    def drawn(values: Floats) -> Floats:
        grid = np.zeros_like(north)
        grid[near] = values
        return np.asarray(weights @ grid @ weights.T)

    divisor = np.maximum(drawn(tamer), _NEAREST_AXIS**2)
    divisor[np.hypot(fine[:, np.newaxis], fine) > 1.0] = np.nan
    squares = (drawn((smear * tamer) ** 2) for smear in smears)  # smooth also where smear vanishes
    centre, corner = (np.sqrt(np.maximum(square, 0.0)) / divisor for square in squares)
    return SkyMap(centre, corner, lowest_altitude_deg)


def _seen(north_rad: Floats, east_rad: Floats, task: Task, vantage: Vantage) -> SeenField:
    """Exposures begun at places (n,) of the disc."""
    altitude = np.pi / 2.0 - np.hypot(north_rad, east_rad)
    azimuth = np.arctan2(east_rad, north_rad)
    hour_angle, declination = erfa.ae2hd(azimuth, altitude, vantage.latitude_rad)
    exposures = Exposures(hour_angle, declination, np.full(altitude.shape, task.exposure_s))
    return seen_field(exposures, task, vantage, instants=2)


def _tamer(seen: SeenField, axis_rad: Floats, task: Task, vantage: Vantage) -> Floats:
    """Factors (n,) that make guided smear smooth towards the axis, where it grows without bound.

    Smear times the sine of the distance from the axis goes as the cosine of the angle round it;
    times the sine once more that is a coordinate.
    """
    if not task.is_guided:
        return np.ones(seen.centre.shape[0])
    axis = axis_north_end(vantage.latitude_rad, float(axis_rad[0]), float(axis_rad[1]))
    cosine = seen.centre[:, 0, 0] @ axis
    return np.asarray(1.0 - cosine * cosine)


def _local(nodes: Floats, wanted: Floats) -> Floats:
    """Weights (w, n) of Lagrange interpolation through the six even nodes around each place."""
    place = (wanted - nodes[0]) / (nodes[1] - nodes[0])
    first = np.clip(np.floor(place).astype(int) - _REACH + 1, 0, nodes.size - 2 * _REACH)
    others = np.arange(2 * _REACH)
    weights = np.zeros((wanted.size, nodes.size))
    for own in others:
        rest = others[others != own]
        apart = (place - first)[:, np.newaxis] - rest
        weights[np.arange(wanted.size), first + own] = np.prod(apart / (own - rest), axis=1)
    return weights
