"""Where stars are seen through a night, for tests only: skyfield's places, ray-traced air.

Frame: east, north, up (right-handed), unlike `core`. Skyfield is asked at three moments of a span;
between them the Earth's rotation is taken out, the little that is left (precession, aberration)
drawn as a parabola, and the rotation put back.
"""

from __future__ import annotations

from functools import lru_cache

import numpy as np
from skyfield.api import Star, wgs84

from tests.truth.mount import SIDEREAL_DAY_S, apparent_vectors, lifted, rotate
from tests.truth.raytrace import RayTrace


class Sky:
    """The sky over one place. `pressure_hpa` 0: no air."""

    def __init__(self, latitude_deg, longitude_deg, elevation_m, pressure_hpa, temperature_c=10.0):
        latitude = np.deg2rad(latitude_deg)
        self.pole = np.array([0.0, np.cos(latitude), np.sin(latitude)])  # the northern one
        self._place = wgs84.latlon(latitude_deg, longitude_deg, elevation_m)
        self._lift = (
            traced(pressure_hpa, temperature_c, latitude_deg, elevation_m)
            if pressure_hpa
            else np.zeros_like
        )

    def seen(self, star, utc_s):
        """Unit vectors (n, 3) towards a skyfield `Star`, refracted, at increasing times (n,)."""
        return lifted(self.unrefracted(star, utc_s), self._lift)

    def unrefracted(self, star, utc_s):
        """The same without air."""
        knots_s = np.linspace(utc_s[0], utc_s[-1] + 1.0, 3)
        still = rotate(
            apparent_vectors(star, self._place, knots_s), self.pole, _turned(knots_s - knots_s[1])
        )
        x = (utc_s - knots_s[1]) / (knots_s[2] - knots_s[1])
        weights = np.stack([x * (x - 1) / 2, 1 - x * x, x * (x + 1) / 2], axis=-1)
        between = weights @ still
        between /= np.linalg.norm(between, axis=1, keepdims=True)
        return rotate(between, self.pole, -_turned(utc_s - knots_s[1]))


def star_of(row):
    """Skyfield's star from a catalogue row: J2000.0 place, motions (with cos δ), parallax."""
    return Star(
        ra_hours=row.ra_deg / 15.0,
        dec_degrees=row.dec_deg,
        ra_mas_per_year=row.pm_ra_mas_yr,
        dec_mas_per_year=row.pm_dec_mas_yr,
        parallax_mas=row.parallax_mas,
    )


def _turned(elapsed_s):
    """How far the sky has turned westward, radians."""
    return 2.0 * np.pi * elapsed_s / SIDEREAL_DAY_S


@lru_cache(maxsize=1000)
def traced(pressure_hpa, temperature_c, latitude_deg, elevation_m):
    """Lift by true altitude, radians, in visual light and half-dry air."""
    trace = RayTrace(pressure_hpa, temperature_c, 0.5, 0.55, latitude_deg, elevation_m)
    return trace.lift_of_true_altitude()
