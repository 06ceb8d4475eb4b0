"""The guide star that does worst, searched by trailing images, for tests only.

It is tried in even directions first, then ever closer about each of the worst. Where the guider
finds no turn of the two axes that brings the star back, or only one on the other side of the pole,
the direction is passed over.
"""

from __future__ import annotations

import numpy as np

from tests.truth.trailed import TrailedField, largest_extent

DIRECTIONS, CLOSER, SMALLEST_RAD, PEAKS = 48, 6, 1e-5, 4
INSTANTS = 21
LEAP = 0.5  # of the whole trail, from one instant to the next: no drift goes like that


class TrailedWorst:
    """Largest extents of the trails at the centre and the corner, on the tangent plane.

    `place`: hour angle, declination, latitude, degrees; `half`, `offset`: from the centre to the
    corner and to the guide star opposite, on the tangent plane; the rest as `TrailedField`.
    """

    def __init__(self, place, lift, exposure_s, axis_arcmin, half, offset):
        self._field = TrailedField(*place, lift, exposure_s, axis_arcmin)
        self._field.elapsed_s = np.linspace(0.0, exposure_s, INSTANTS)
        self._half, self._offset = half, offset

    def at(self, direction):
        """With the guide star in this direction, from north through east, radians."""
        way = np.array([np.sin(direction), np.cos(direction)])
        places = np.vstack([np.zeros(2), -self._half * way])
        try:
            trails = self._field.trails(places, self._offset * way)
        except (AssertionError, np.linalg.LinAlgError):
            return np.zeros(2)
        size = largest_extent(trails)
        steps = np.hypot(*np.moveaxis(np.diff(trails, axis=0), -1, 0)).max(axis=0)
        return np.zeros(2) if np.any(steps > LEAP * size + 1e-12) else size

    def worst(self):
        directions = np.linspace(0.0, 2.0 * np.pi, DIRECTIONS, endpoint=False)
        sizes = np.array([self.at(one) for one in directions])
        corner = sizes[:, 1]
        is_peak = (corner >= np.roll(corner, 1)) & (corner >= np.roll(corner, -1))
        tops = sorted(np.flatnonzero(is_peak), key=lambda one: -corner[one])[:PEAKS]
        return np.max([self._about(directions[one]) for one in tops], axis=0)

    def _about(self, top):
        step, best = 2.0 * np.pi / DIRECTIONS, np.zeros(2)
        while step > SMALLEST_RAD:
            beside = top + step * np.linspace(-1.0, 1.0, CLOSER + 1)
            sizes = np.array([self.at(one) for one in beside])
            best = np.maximum(best, sizes.max(axis=0))
            top = beside[np.argmax(sizes[:, 1])]
            step *= 2.5 / CLOSER
        return best
