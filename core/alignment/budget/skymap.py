"""Smear over the whole sky above, for an alignment, as a picture."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.sparse import csr_array

from core.alignment.budget.axispatch import AxisPatch
from core.alignment.budget.field import Exposures
from core.alignment.budget.passage import end_without_air
from core.alignment.budget.sky import Sky
from core.alignment.budget.task import Task, Vantage
from core.alignment.geometry import altitude_azimuth_rad, direction

Floats = NDArray[np.float64]

LOWEST_ALTITUDE_DEG = 15.0
_NODES = 61  # across the disc; between them a polynomial serves
_REACH = 3  # nodes on either side that enter, and so nodes beyond the disc's edge
_STEP = 2.0 / (_NODES - 1)
_CLOSEST_RAD = math.radians(0.7)  # the even grid comes no nearer to where smear has no bound
_LEAST = 1e-6
_STRETCH = 1.4  # of the disc along its rim, and some


@dataclass(frozen=True, eq=False)
class SkyMap:
    """Smear in one exposure begun in each cell, pixels; (cells, cells), NaN outside the disc.

    The disc shows the sky from above the head down to `lowest_altitude_deg`: zenith in the middle,
    distance from it in proportion to the zenith distance. Rows run from south to north, columns
    from west to east. `sky`: what it was drawn from.
    """

    centre_px: Floats
    corner_px: Floats
    lowest_altitude_deg: float
    sky: Sky

    def at(self, azimuth_deg: float, altitude_deg: float) -> tuple[float, float]:
        """Smear in pixels, at the centre and the worst corner, exactly at one place."""
        azimuth, altitude = np.radians([[azimuth_deg], [altitude_deg]])
        centre, corner = self.sky.smear_px(self.sky.exposures(azimuth, altitude), is_exact=True)
        return float(centre[0]), float(corner[0])

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
    instant of the exposure: right within 2 % of the value plus 3 % of the map's median. About the
    ends of the axis a guided map is drawn from rings of their own: within 5 % of the value plus
    6 % of the largest at that distance, as far as the end stays 0.3° outside the circle of the
    guide star; inside it and nearer only indicative. `SkyMap.at` is exact everywhere.
    """
    sky = Sky(task, vantage, axis_rad)
    edge_rad = math.radians(90.0 - lowest_altitude_deg)
    fine: Floats = np.linspace(-1.0, 1.0, cells)
    smears = _drawn(sky, edge_rad, fine)
    if task.is_guided:
        end = end_without_air(axis_rad, vantage)
        for one in (end, -end):
            _draw_about(sky, one, edge_rad, fine, smears)
    smears[:, np.hypot(fine[:, np.newaxis], fine) > 1.0] = np.nan
    return SkyMap(smears[0], smears[1], lowest_altitude_deg, sky)


def _drawn(sky: Sky, edge_rad: float, fine: Floats) -> Floats:
    """Smear (2, n, n) at the centre and the worst corner, away from the axis."""
    nodes: Floats = np.asarray(np.arange(-_REACH, _NODES + _REACH) * _STEP - 1.0)
    north, east = np.meshgrid(nodes, nodes, indexing="ij")
    near = np.hypot(north, east) <= 1.0 + math.sqrt(2.0) * _REACH * _STEP
    exposures = sky.exposures(*_place(north[near], east[near], edge_rad))
    tamer = _tamer(sky, exposures)
    is_plain = tamer > 0.0
    near[near] = is_plain
    squares = (sky.smear_px(exposures.some(is_plain)) * tamer[is_plain]) ** 2
    weights = _local(nodes, fine)

    def between(values: Floats) -> Floats:
        grid = np.zeros_like(north)
        grid[near] = values
        return np.asarray(weights @ (weights @ grid.T).T)

    divisor = np.maximum(between(tamer[is_plain]), _LEAST)
    drawn = np.stack([between(square) for square in squares])  # smooth also where smear vanishes
    return np.asarray(np.sqrt(np.maximum(drawn, 0.0)) / divisor)


def _draw_about(sky: Sky, end: Floats, edge_rad: float, fine: Floats, smears: Floats) -> None:
    """Draws `smears` (2, n, n) about an end (3,) of the axis, out to where the grid serves."""
    radius_rad = sky.offset_rad + _room_rad(sky) + math.sqrt(2.0) * _REACH * _STEP * edge_rad
    altitude, azimuth = (float(angle) for angle in altitude_azimuth_rad(end))
    reach, half = (np.pi / 2.0 - altitude) / edge_rad, _STRETCH * radius_rad / edge_rad
    rows = np.flatnonzero(np.abs(fine - reach * math.cos(azimuth)) < half)
    columns = np.flatnonzero(np.abs(fine - reach * math.sin(azimuth)) < half)
    north, east = np.meshgrid(fine[rows], fine[columns], indexing="ij")
    places = _place(north, east, edge_rad)
    is_near = (direction(*places) @ end > math.cos(radius_rad)) & (np.hypot(north, east) <= 1.0)
    if np.any(is_near):
        patch = AxisPatch(sky, end, radius_rad, np.pi / 2.0 - edge_rad)
        row, column = np.nonzero(is_near)
        smears[:, rows[row], columns[column]] = patch.smear_px(*(one[is_near] for one in places))


def _place(north: Floats, east: Floats, edge_rad: float) -> tuple[Floats, Floats]:
    """Azimuth and altitude, radians, of places on the disc."""
    return np.arctan2(east, north), np.pi / 2.0 - np.hypot(north, east) * edge_rad


def _room_rad(sky: Sky) -> float:
    """How far outside the guide star's circle an end of the axis must lie for the even grid."""
    return max(_CLOSEST_RAD, sky.clearance_rad)


def _tamer(sky: Sky, exposures: Exposures) -> Floats:
    """Factors (n,) that make guided smear smooth towards the axis, where it grows without bound.

    Smear times the sine of the gap between the axis and the guide star's circle goes as the cosine
    of the angle round the axis; times the sine of the distance from it that is a coordinate.
    Nothing where the gap is too small for that.
    """
    if not sky.task.is_guided:
        return np.ones(exposures.duration_s.size)
    gap = sky.passage(exposures).gap_rad
    tamer = np.sin(gap) * np.sin(gap + sky.offset_rad)
    return np.where(gap > _room_rad(sky), tamer, 0.0)


def _local(nodes: Floats, wanted: Floats) -> csr_array:
    """Weights (w, n) of Lagrange interpolation through the six even nodes around each place."""
    place = (wanted - nodes[0]) / (nodes[1] - nodes[0])
    first = np.clip(np.floor(place).astype(int) - _REACH + 1, 0, nodes.size - 2 * _REACH)
    others = np.arange(2 * _REACH)
    weights = np.zeros((wanted.size, nodes.size))
    for own in others:
        rest = others[others != own]
        apart = (place - first)[:, np.newaxis] - rest
        weights[np.arange(wanted.size), first + own] = np.prod(apart / (own - rest), axis=1)
    return csr_array(weights)
