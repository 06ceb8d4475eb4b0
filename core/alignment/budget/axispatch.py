"""The part of a sky map about one end of the axis, where guided smear changes too fast for a grid
that is even: drawn from rings round that end, closest where the guide star's circle touches it."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from scipy.ndimage import map_coordinates

from core.alignment.budget.sky import Sky
from core.alignment.geometry import altitude_azimuth_rad, direction

Floats = NDArray[np.float64]

_SPOKES, _PAST = 20, 6  # evenly round; so many stand at either end again
_GROWING, _INSIDE = 11, 5  # rings outside and inside the one that touches, in steps that grow
_EVEN_RAD, _STEP_RAD = np.deg2rad([4.0, 1.3])  # from the first outwards they are even
_CLOSEST_RAD = np.deg2rad(0.15)  # of a ring to the one that touches
_GROWTH_OUTSIDE, _GROWTH_INSIDE = 1.0, 0.25  # powers of the gap that smear grows with towards it
_INNERMOST = 0.02  # of the way there: at the end itself smear depends on the side one comes from
_SPARE_RAD = np.deg2rad(8.0)  # below the map splines still look at


class AxisPatch:
    """About `end` (3,), a direction north, east, up, out to `radius_rad`."""

    def __init__(self, sky: Sky, end: Floats, radius_rad: float, lowest_rad: float) -> None:
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
