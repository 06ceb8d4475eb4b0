"""How the air lifts a star: from true to observed altitude and back.

Above 10° observed altitude this is A tan z + B tan³ z in the observed zenith distance z, with A and
B from ERFA's `refco` (Hohenkerk & Sinclair's ray trace; 0.1″ down to 14°, 0.7″ at 10°). Below 5° it
is Bennett's form (J. Navigation 35, 255, 1982) scaled to meet the other at 10°, which stays finite
at the horizon; between the two they are blended so that no drifting star meets a jump. At
1010 hPa and 10 °C it falls short of a full ray trace by 2.0″ at 8° and by 6.8″ at 5°.
"""

from __future__ import annotations

from dataclasses import dataclass

import erfa
import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.sky.site import Air

Floats = NDArray[np.float64]

_UPPER_RAD = np.deg2rad(10.0)
_LOWER_RAD = np.deg2rad(5.0)
_FLOOR_RAD = np.deg2rad(-1.0)  # below this the lift is held; nothing is watched there
_SLOPE_STEP_RAD = 1e-4
_ITERATIONS = 6  # each shrinks the remainder at least fivefold, above 10° a hundredfold


def standard_pressure_hpa(elevation_m: float) -> float:
    """Station pressure of the standard atmosphere, ISO 2533:1975, for the troposphere."""
    return float(1013.25 * (1.0 - 2.25577e-5 * elevation_m) ** 5.25588)


def _bennett_rad(observed_altitude_rad: Floats) -> Floats:
    """Bennett's refraction; the argument and the result in radians."""
    altitude_deg = np.rad2deg(observed_altitude_rad)
    argument = np.deg2rad(altitude_deg + 7.31 / (altitude_deg + 4.4))
    return np.asarray(np.deg2rad(1.0 / np.tan(argument) / 60.0))


@dataclass(frozen=True)
class Refraction:
    """Refraction for one state of the air. `a_rad`, `b_rad`: constants of ERFA's `refco`."""

    a_rad: float
    b_rad: float

    @classmethod
    def of(cls, air: Air) -> Refraction:
        """Constants for `air`; no pressure means no refraction."""
        if air.pressure_hpa <= 0.0:
            return cls(0.0, 0.0)
        a_rad, b_rad = erfa.refco(
            air.pressure_hpa, air.temperature_c, air.relative_humidity, air.wavelength_um
        )
        return cls(float(a_rad), float(b_rad))

    def _series_rad(self, observed_altitude_rad: Floats) -> Floats:
        tangent = 1.0 / np.tan(observed_altitude_rad)
        return tangent * (self.a_rad + self.b_rad * tangent * tangent)

    def lift_rad(self, observed_altitude_rad: ArrayLike) -> Floats:
        """Observed minus true altitude, for a given observed altitude."""
        altitude = np.maximum(np.asarray(observed_altitude_rad, dtype=float), _FLOOR_RAD)
        if self.a_rad == 0.0:
            return np.zeros_like(altitude)
        lift = np.array(self._series_rad(np.maximum(altitude, _LOWER_RAD)))
        is_low = altitude < _UPPER_RAD
        if np.any(is_low):
            lift[is_low] = self._blended_rad(altitude[is_low], lift[is_low])
        return lift

    def lift_and_slope(self, observed_altitude_rad: ArrayLike) -> tuple[Floats, Floats]:
        """The lift, and how much it changes with the observed altitude (negative, no unit)."""
        altitude = np.asarray(observed_altitude_rad, dtype=float)
        cotangent = 1.0 / np.tan(np.maximum(altitude, _LOWER_RAD))
        squared = cotangent * cotangent
        lift = np.array(cotangent * (self.a_rad + self.b_rad * squared))
        slope = np.array(-(1.0 + squared) * (self.a_rad + 3.0 * self.b_rad * squared))
        is_low = altitude < _UPPER_RAD + _SLOPE_STEP_RAD
        if np.any(is_low):
            low = altitude[is_low]
            below, above = (self.lift_rad(low + d) for d in (-_SLOPE_STEP_RAD, _SLOPE_STEP_RAD))
            lift[is_low] = self.lift_rad(low)
            slope[is_low] = (above - below) / (2.0 * _SLOPE_STEP_RAD)
        return lift, slope

    def _blended_rad(self, altitude: Floats, high: Floats) -> Floats:
        """Below 10°, from what the series gives there."""
        meeting = np.asarray(_UPPER_RAD)
        scale = self._series_rad(meeting) / _bennett_rad(meeting)
        low = scale * _bennett_rad(altitude)
        part = np.clip((altitude - _LOWER_RAD) / (_UPPER_RAD - _LOWER_RAD), 0.0, 1.0)
        weight = part * part * (3.0 - 2.0 * part)
        return np.asarray(weight * high + (1.0 - weight) * low)

    def observed_altitude_rad(self, true_altitude_rad: ArrayLike) -> Floats:
        """Altitude at which a star of this true altitude is seen."""
        true_altitude = np.asarray(true_altitude_rad, dtype=float)
        observed = true_altitude
        if self.a_rad != 0.0:
            for _ in range(_ITERATIONS):
                observed = true_altitude + self.lift_rad(observed)
        return observed
