"""Trailed images on the sensor of a displaced mount, for tests only: own rotations, traced air.

Frame: east, north, up (right-handed), unlike `core`. The sky is turned about the pole and the
camera's three axes about the mount's by Rodrigues' formula; the guider is a numerical search for
the two mount angles that put the guide star back, where `core` has a closed form.
"""

from __future__ import annotations

import numpy as np

from tests.truth.mount import SIDEREAL_DAY_S

INSTANTS = 7


def turn(vectors, axis, angle):
    """Rodrigues' rotation of vectors (m, 3) about a unit axis, right-handed."""
    c, s = np.cos(angle), np.sin(angle)
    return vectors * c + np.cross(axis, vectors) * s + np.outer(vectors @ axis, axis) * (1 - c)


def equatorial_directions(hour_angle_deg, dec_deg, latitude_deg):
    """True direction of the target with the sky's east and north there: rows of (3, 3)."""
    lat, dec = np.deg2rad([latitude_deg, dec_deg])
    pole = np.array([0.0, np.cos(lat), np.sin(lat)])
    south = np.array([0.0, -np.sin(lat), np.cos(lat)])  # of the equator, on the meridian
    triad = np.array(
        [
            np.cos(dec) * south + np.sin(dec) * pole,
            [1.0, 0.0, 0.0],
            np.cos(dec) * pole - np.sin(dec) * south,
        ]
    )
    return turn(triad, pole, -np.deg2rad(hour_angle_deg)), pole


def lifted(vectors, lift):
    altitude = np.arcsin(vectors[:, 2])
    raised = altitude + lift(altitude)
    out = vectors * (np.cos(raised) / np.cos(altitude))[:, np.newaxis]
    out[:, 2] = np.sin(raised)
    return out


def north_end(latitude_deg, azimuth_error_arcmin, altitude_error_arcmin):
    south = latitude_deg < 0
    azimuth = np.deg2rad((180.0 if south else 0.0) + azimuth_error_arcmin / 60.0)
    altitude = np.deg2rad(abs(latitude_deg) + altitude_error_arcmin / 60.0)
    end = np.array(
        [np.cos(altitude) * np.sin(azimuth), np.cos(altitude) * np.cos(azimuth), np.sin(altitude)]
    )
    return -end if south else end


class TrailedField:
    """One exposure of a centre star, a corner star and a guide star.

    `lift`: true altitude to lift, radians. `corner`, `guide`: tangent-plane places east, north.
    """

    def __init__(self, hour_angle_deg, dec_deg, latitude_deg, lift, exposure_s, axis_arcmin):
        self.triad, self.pole = equatorial_directions(hour_angle_deg, dec_deg, latitude_deg)
        self.axis = north_end(latitude_deg, *axis_arcmin)
        self.lift = lift
        self.elapsed_s = np.linspace(0.0, exposure_s, INSTANTS)

    def seen(self, places, elapsed_s):
        """Directions (m, 3) of stars at tangent-plane places (m, 2)."""
        target, east, north = self.triad
        stars = target + np.outer(places[:, 0], east) + np.outer(places[:, 1], north)
        stars /= np.linalg.norm(stars, axis=1, keepdims=True)
        angle = -2 * np.pi * elapsed_s / SIDEREAL_DAY_S
        return lifted(turn(stars, self.pole, angle), self.lift)

    def camera(self):
        """Camera at the start: rows towards the target, east and north in the mount's sense."""
        ahead = self.seen(np.zeros((1, 2)), 0.0)[0]
        east = np.cross(self.axis, ahead)
        east /= np.linalg.norm(east)
        return np.array([ahead, east, np.cross(ahead, east)])

    def trails(self, places, guide=None, rate=1.0):
        """Places (instants, m, 2) east, north on the tangent plane of the camera."""
        start, moved = self.camera(), np.zeros(2)
        if guide is not None:
            wanted = self._plane(start, self.seen(guide[np.newaxis], 0.0))[0]
        out = []
        for elapsed_s in self.elapsed_s:
            drive = -2 * np.pi * rate * elapsed_s / SIDEREAL_DAY_S
            if guide is not None:
                star = self.seen(guide[np.newaxis], elapsed_s)

                def miss(angles, star=star, drive=drive):
                    return self._plane(self._moved(start, drive, angles), star)[0] - wanted

                moved = newton(miss, moved)
            out.append(self._plane(self._moved(start, drive, moved), self.seen(places, elapsed_s)))
        return np.array(out)

    def _moved(self, camera, drive, angles):
        """Turned about the declination axis (the camera's east), then about the polar axis."""
        tilted = turn(camera, camera[1], -angles[1])
        return turn(tilted, self.axis, drive + angles[0])

    @staticmethod
    def _plane(camera, stars):
        inside = stars @ camera.T
        return inside[:, 1:] / inside[:, :1]


def newton(miss, start):
    """Where `miss` of two numbers vanishes, by differences; slowly where it only just does."""
    found = start
    for _ in range(40):
        here = miss(found)
        if np.abs(here).max() < 1e-13:
            break
        slopes = [(miss(found + step) - here) / 1e-6 for step in 1e-6 * np.eye(2)]
        found = found - np.linalg.solve(np.transpose(slopes), here)
    assert np.abs(miss(found)).max() < 1e-11
    return found


def largest_extent(trails):
    """Largest distance (m,) between any two points of trails (instants, m, 2)."""
    apart = trails[:, np.newaxis] - trails[np.newaxis]
    return np.hypot(apart[..., 0], apart[..., 1]).max(axis=(0, 1))
