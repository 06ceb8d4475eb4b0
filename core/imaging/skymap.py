"""Smear over the whole sky above, for an alignment, as a picture."""

from __future__ import annotations

import math
from dataclasses import dataclass

import erfa
import numpy as np
from numpy.typing import NDArray
from scipy.ndimage import map_coordinates
from scipy.sparse import csr_array

from core.alignment.drift.geometry import altitude_azimuth_rad, direction
from core.imaging.task import Exposures, Task, Vantage
from core.imaging.trail import Passage, Watched, end_without_air

# Smear in exposures begun anywhere in the sky, for one task and one error of the axis.

Floats = NDArray[np.float64]

_DRAWN = 2, 1  # the first and the last instant; a worst guide star within 10 %


class SmearSky:
    """`axis_rad` (2,): azimuth and altitude error. Of the task its target does not matter."""

    def __init__(self, task: Task, vantage: Vantage, axis_rad: Floats) -> None:
        self.task, self.vantage, self.axis_rad = task, vantage, axis_rad

    def exposures(self, azimuth_rad: Floats, altitude_rad: Floats) -> Exposures:
        """Begun at true places (n,)."""
        latitude_rad = self.vantage.latitude_rad
        hour_angle, declination = erfa.ae2hd(azimuth_rad, altitude_rad, latitude_rad)
        lasting = np.full(azimuth_rad.shape, self.task.exposure_s)
        return Exposures(hour_angle, declination, lasting)

    @property
    def offset_rad(self) -> float:
        """From the middle of the field to the guide star."""
        return self.task.guide_star_offset_rad

    @property
    def clearance_rad(self) -> float:
        """How far from the axis the guide star's circle must keep for its trails to be smooth."""
        overhead = self.exposures(np.zeros(1), np.full(1, 0.5 * np.pi))
        return float(self.passage(overhead).clearance_rad[0])

    def passage(self, exposures: Exposures) -> Passage:
        """How their guide stars pass the axis; for guided tasks."""
        return Passage.of(exposures, self.axis_rad, self.task, self.vantage)

    def smear_px(self, exposures: Exposures, is_exact: bool = False) -> Floats:
        """Smear (2, n) at the centre and the worst corner, good enough to be drawn or exact."""
        if not self.task.is_guided:
            return self._watched_px(exposures, is_exact)
        passage = self.passage(exposures)
        is_clear = passage.gap_rad > passage.clearance_rad
        found = np.zeros((2, is_clear.size))
        for part in (is_clear, ~is_clear):  # a search where it is needed, and nowhere else
            if np.any(part):
                found[:, part] = self._watched_px(exposures.some(part), is_exact)
        return found

    def _watched_px(self, exposures: Exposures, is_exact: bool) -> Floats:
        how = () if is_exact else _DRAWN
        watched = Watched(exposures, self.task, self.vantage, *how)
        return np.stack(watched.trails(self.axis_rad).smear_px())


# The part of a sky map about one end of the axis, where guided smear changes too fast for a grid
# that is even: drawn from rings round that end, closest where the guide star's circle touches it.

_SPOKES, _PAST = 20, 6  # evenly round; so many stand at either end again
_GROWING, _INSIDE = 11, 5  # rings outside and inside the one that touches, in steps that grow
_EVEN_RAD, _STEP_RAD = np.deg2rad([4.0, 1.3])  # from the first outwards they are even
_CLOSEST_RAD = np.deg2rad(0.15)  # of a ring to the one that touches
_GROWTH_OUTSIDE, _GROWTH_INSIDE = 1.0, 0.25  # powers of the gap that smear grows with towards it
_INNERMOST = 0.02  # of the way there: at the end itself smear depends on the side one comes from
_SPARE_RAD = np.deg2rad(8.0)  # below the map splines still look at


class AxisPatch:
    """About `end` (3,), a direction north, east, up, out to `radius_rad`."""

    def __init__(self, sky: SmearSky, end: Floats, radius_rad: float, lowest_rad: float) -> None:
        self._sky, self._end, self._lowest_rad = sky, end, lowest_rad
        self._across = np.linalg.svd(end[np.newaxis])[2][1:]  # two directions (2, 3)
        self._radius_rad = radius_rad

    def smear_px(self, azimuth_rad: Floats, altitude_rad: Floats) -> Floats:
        """Smear (2, n) at the centre and the worst corner, at places (n,) within the radius."""
        seen = direction(azimuth_rad, altitude_rad)
        one, other = self._across @ seen.T
        distance = np.arctan2(np.hypot(one, other), seen @ self._end)
        around, offset_rad = np.arctan2(other, one) % (2.0 * np.pi), self._sky.offset_rad
        outside = offset_rad + _gaps_rad(self._radius_rad - offset_rad)
        smear = np.zeros((2, distance.size))
        is_inside = distance < offset_rad
        smear[:, ~is_inside] = self._between(
            outside, distance[~is_inside], around[~is_inside], _GROWTH_OUTSIDE
        )
        if np.any(is_inside):
            widest = offset_rad * (1.0 - _INNERMOST)
            inside = offset_rad - np.geomspace(min(_CLOSEST_RAD, 0.5 * widest), widest, _INSIDE)
            smear[:, is_inside] = self._between(
                inside, distance[is_inside], around[is_inside], _GROWTH_INSIDE
            )
        return smear

    def _between(
        self, rings_rad: Floats, distance: Floats, around: Floats, growth: float
    ) -> Floats:
        """Smear (2, n) by splines between rings, at distances and angles (n,)."""
        tamer = self._gap_rad(rings_rad) ** growth
        tamed = (self._on_rings_px(rings_rad) * tamer[:, np.newaxis]) ** 2
        tamed = np.concatenate([tamed[..., -_PAST:], tamed, tamed[..., :_PAST]], axis=2)
        gaps = np.abs(rings_rad - self._sky.offset_rad)
        ring = np.interp(self._gap_rad(distance), gaps, np.arange(gaps.size))
        spoke = _PAST + around * (_SPOKES / (2.0 * np.pi))
        squares = [map_coordinates(part, [ring, spoke], mode="nearest") for part in tamed]
        return np.asarray(np.sqrt(np.maximum(squares, 0.0)) / self._gap_rad(distance) ** growth)

    def _on_rings_px(self, rings_rad: Floats) -> Floats:
        """Smear (2, r, s) on each ring and spoke, those well below the map moved up."""
        around = np.arange(_SPOKES) * (2.0 * np.pi / _SPOKES)
        sideways = np.stack([np.cos(around), np.sin(around)], axis=-1) @ self._across
        along, aside = np.cos(rings_rad), np.sin(rings_rad)
        places = np.multiply.outer(along, self._end)[:, np.newaxis] + np.multiply.outer(
            aside, sideways
        )
        altitude, azimuth = (angle.ravel() for angle in altitude_azimuth_rad(places))
        kept = np.maximum(altitude, self._lowest_rad - _SPARE_RAD)
        smear = self._sky.smear_px(self._sky.exposures(azimuth, kept))
        return smear.reshape(2, rings_rad.size, _SPOKES)

    def _gap_rad(self, distance_rad: Floats) -> Floats:
        """To where the guide star's circle touches this end, which is as close as is drawn."""
        return np.maximum(np.abs(distance_rad - self._sky.offset_rad), _CLOSEST_RAD)


def _gaps_rad(widest_rad: float) -> Floats:
    """From the ring that touches to those outside it, up to this one or just beyond."""
    growing = np.geomspace(_CLOSEST_RAD, _EVEN_RAD, _GROWING)
    return np.concatenate([growing, np.arange(_EVEN_RAD, widest_rad + _STEP_RAD, _STEP_RAD)[1:]])


# Smear over the whole sky above, for an alignment, as a picture.

LOWEST_ALTITUDE_DEG = 15.0
_NODES = 61  # across the disc; between them a polynomial serves
_REACH = 3  # nodes on either side that enter, and so nodes beyond the disc's edge
_STEP = 2.0 / (_NODES - 1)
_EVEN_CLOSEST_RAD = math.radians(0.7)  # the even grid comes no nearer to where smear has no bound
_LEAST = 1e-6
_STRETCH = 1.4  # of the disc along its rim, and some


@dataclass(frozen=True, eq=False)
class SmearMap:
    """Smear in one exposure begun in each cell, pixels; (cells, cells), NaN outside the disc.

    The disc shows the sky from above the head down to `lowest_altitude_deg`: zenith in the middle,
    distance from it in proportion to the zenith distance. Rows run from south to north, columns
    from west to east. `sky`: what it was drawn from.
    """

    centre_px: Floats
    corner_px: Floats
    lowest_altitude_deg: float
    sky: SmearSky

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
) -> SmearMap:
    """Map for axis errors (2,), radians; of the task its target does not matter.

    Computed exactly on a coarse grid and drawn between by polynomials, from the first to the last
    instant of the exposure: right within 2 % of the value plus 3 % of the map's median. About the
    ends of the axis a guided map is drawn from rings of their own: within 5 % of the value plus
    6 % of the largest at that distance, as far as the end stays 0.3° outside the circle of the
    guide star; inside it and nearer only indicative. `SkyMap.at` is exact everywhere.
    """
    sky = SmearSky(task, vantage, axis_rad)
    edge_rad = math.radians(90.0 - lowest_altitude_deg)
    fine: Floats = np.linspace(-1.0, 1.0, cells)
    smears = _drawn(sky, edge_rad, fine)
    if task.is_guided:
        end = end_without_air(axis_rad, vantage)
        for one in (end, -end):
            _draw_about(sky, one, edge_rad, fine, smears)
    smears[:, np.hypot(fine[:, np.newaxis], fine) > 1.0] = np.nan
    return SmearMap(smears[0], smears[1], lowest_altitude_deg, sky)


def _drawn(sky: SmearSky, edge_rad: float, fine: Floats) -> Floats:
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


def _draw_about(sky: SmearSky, end: Floats, edge_rad: float, fine: Floats, smears: Floats) -> None:
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


def _room_rad(sky: SmearSky) -> float:
    """How far outside the guide star's circle an end of the axis must lie for the even grid."""
    return max(_EVEN_CLOSEST_RAD, sky.clearance_rad)


def _tamer(sky: SmearSky, exposures: Exposures) -> Floats:
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
