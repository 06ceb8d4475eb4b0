"""Refraction by tracing a ray through the air, for tests only; shares no formula with `core`.

Hohenkerk & Sinclair, NAO Technical Note 63 (1985), as printed in the Explanatory Supplement to the
Astronomical Almanac (1992), section 3.28: polytropic moist troposphere to 11 km, isothermal dry
stratosphere to 80 km. Constants from memory, held to published values in
tests/published/test_ray_trace.py.
"""

from __future__ import annotations

import numpy as np
from scipy.interpolate import CubicSpline

_GAS = 8314.36
_DRY, _WATER = 28.966, 18.016
_EARTH_M, _TROPOPAUSE_M, _TOP_M = 6378120.0, 11000.0, 80000.0
_VAPOUR_POWER = 18.36
_POINTS = 3001


class RayTrace:
    """Refraction over one site and air; arguments as in `core.sky.site.Air`."""

    def __init__(
        self,
        pressure_hpa,
        temperature_c,
        humidity,
        wavelength_um,
        latitude_deg,
        elevation_m,
        lapse_k_per_m=0.0065,
    ):
        self.t0 = temperature_c + 273.15
        self.lapse = lapse_k_per_m
        cosine = np.cos(2 * np.deg2rad(latitude_deg))
        gravity = 9.784 * (1 - 0.0026 * cosine - 0.00000028 * elevation_m)
        wave = wavelength_um**2
        a = (287.604 + 1.6288 / wave + 0.0136 / wave**2) * 273.15 / 1013.25 * 1e-6
        self.weight = gravity * _DRY / _GAS
        gamma, delta = self.weight / self.lapse, _VAPOUR_POWER
        vapour = humidity * (self.t0 / 247.1) ** delta
        c5 = vapour * (1 - _WATER / _DRY) * gamma / (delta - gamma)
        self.c6 = a * (pressure_hpa + c5) / self.t0
        self.c7 = (a * c5 + 11.2684e-6 * vapour) / self.t0
        self.gamma, self.delta = gamma, delta
        self.r0 = _EARTH_M + elevation_m
        self.rt = max(_EARTH_M + _TROPOPAUSE_M, self.r0)

    @classmethod
    def over(cls, site, air):
        """Over a `core.sky.site.Site` in its `Air`."""
        return cls(
            air.pressure_hpa,
            air.temperature_c,
            air.relative_humidity,
            air.wavelength_um,
            site.latitude_deg,
            site.elevation_m,
        )

    def _troposphere(self, r):
        ratio = 1 - self.lapse * (r - self.r0) / self.t0
        n = 1 + (self.c6 * ratio ** (self.gamma - 2) - self.c7 * ratio ** (self.delta - 2)) * ratio
        slope = (
            -self.lapse
            / self.t0
            * (
                (self.gamma - 1) * self.c6 * ratio ** (self.gamma - 2)
                - (self.delta - 1) * self.c7 * ratio ** (self.delta - 2)
            )
        )
        return n, slope

    def _stratosphere(self, r):
        temperature = self.t0 - self.lapse * (self.rt - self.r0)
        excess = self._troposphere(self.rt)[0] - 1
        decay = self.weight / temperature
        fall = excess * np.exp(-decay * (r - self.rt))
        return 1 + fall, -decay * fall

    def refraction_rad(self, observed_zenith_rad):
        """Bending of a ray seen at this zenith distance."""
        z0 = np.atleast_1d(np.asarray(observed_zenith_rad, dtype=float))
        invariant = self._troposphere(self.r0)[0] * self.r0 * np.sin(z0)
        total = np.zeros_like(z0)
        shells = (
            (self._troposphere, self.r0, self.rt),
            (self._stratosphere, self.rt, _EARTH_M + _TOP_M),
        )
        for air, low, high in shells:
            r = np.linspace(low, high, _POINTS)
            n, slope = air(r)
            sine = invariant[:, np.newaxis] / (n * r)
            bend = -slope / n * sine / np.sqrt(1 - sine**2)
            weight = np.ones(_POINTS)
            weight[1:-1:2], weight[2:-1:2] = 4, 2
            total += bend @ weight * (high - low) / (_POINTS - 1) / 3
        return total

    def lift_of_true_altitude(self):
        """A smooth function from true altitude to lift, radians, from 9° to the zenith."""
        zenith = np.deg2rad(np.linspace(0.0, 82.0, 400))
        bend = self.refraction_rad(zenith)
        true = np.pi / 2 - zenith - bend
        return CubicSpline(true[::-1], bend[::-1])
