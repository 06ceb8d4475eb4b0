"""How the air lifts a star: from true to observed altitude and back."""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import lru_cache

import erfa
import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.sky.site import Air

# How far the air bends a ray on its way to the ground: an integral through layers of air.
#
# The integral is Auer & Standish's (Astron. J. 119, 2472, 2000; from memory): bending gathers over
# the local zenith distance ψ as −d/(1 + d) dψ with d = d ln n / d ln r, and n r sin ψ stays the
# same. It has no singular place at the horizon or below. The air is that of the standard atmosphere
# (ISO 2533:1975) moved to the temperature on the ground: 6.5 K cooler each kilometre for 11 km
# above the station, of one temperature from there on, in balance with gravity. Water vapour thins
# out by e in 2 km, as in the reference atmosphere of ITU-R P.835.

Floats = NDArray[np.float64]

_EARTH_M = 6_371_000.0
_LAPSE_K_PER_M, _TROPOPAUSE_M, _TOP_M = 0.0065, 11_000.0, 80_000.0
_GRAVITY_K_PER_M = 9.80665 / 287.05287  # ISO 2533: gravity over the gas constant of dry air
_VAPOUR_M = 2000.0
_NODES = 12  # of Gauss and Legendre, on either side of the tropopause: right to 0.001″
_ROUNDS = 4  # of Newton for the height, each squares an error of at first a hundredth


class Layers:
    """Air over a station. `dry`: n − 1 of dry air at the ground, `vapour`: what vapour takes away.

    Heights are geopotential, in which gravity is the same everywhere.
    """

    def __init__(self, dry: float, vapour: float, temperature_k: float) -> None:
        self._dry, self._vapour, self._ground_k = dry, vapour, temperature_k
        self._high_k = temperature_k - _LAPSE_K_PER_M * _TROPOPAUSE_M
        self._power = _GRAVITY_K_PER_M / _LAPSE_K_PER_M - 1.0
        self._high = dry * (self._high_k / temperature_k) ** self._power

    def bending_rad(self, observed_altitude_rad: Floats) -> Floats:
        """Observed minus true altitude (n,) of rays seen at these altitudes, from −2° upwards."""
        observed = 0.5 * np.pi - observed_altitude_rad
        constant = (1.0 + self._dry - self._vapour) * _EARTH_M * np.sin(observed)
        at_tropopause = self._zenith_distance(constant, _TROPOPAUSE_M)
        low = self._part(constant, at_tropopause, observed, False)
        at_top = self._zenith_distance(constant, _TOP_M)
        return low + self._part(constant, at_top, at_tropopause, True)

    def _part(self, constant: Floats, begin: Floats, end: Floats, is_high: bool) -> Floats:
        places, weights = np.polynomial.legendre.leggauss(_NODES)
        half = 0.5 * (end - begin)[:, np.newaxis]
        zenith_distance = begin[:, np.newaxis] + half * (places + 1.0)
        reduced = constant[:, np.newaxis] / np.sin(zenith_distance)  # n r
        radius = reduced
        for _ in range(_ROUNDS):
            excess, slope = self._excess(radius, is_high)
            surplus = (1.0 + excess) * radius - reduced
            radius = radius - surplus / (1.0 + excess + radius * slope)
        excess, slope = self._excess(radius, is_high)
        change = radius * slope / (1.0 + excess)
        return np.asarray((-change / (1.0 + change) * half) @ weights)

    def _zenith_distance(self, constant: Floats, height_m: float) -> Floats:
        """Of the rays, as seen from a geopotential height at or above the tropopause."""
        radius = _EARTH_M * _EARTH_M / (_EARTH_M - height_m)
        excess, _ = self._excess(np.asarray(radius), True)
        return np.asarray(np.arcsin(constant / ((1.0 + excess) * radius)))

    def _excess(self, radius: Floats, is_high: bool) -> tuple[Floats, Floats]:
        """n − 1 at these distances from the Earth's centre, m, and its change a metre."""
        height = _EARTH_M * (radius - _EARTH_M) / radius
        if is_high:
            decay = _GRAVITY_K_PER_M / self._high_k
            dry = self._high * np.exp(decay * (_TROPOPAUSE_M - height))
            thinning = decay * dry
        else:
            warmth = 1.0 - _LAPSE_K_PER_M / self._ground_k * height
            dry = self._dry * warmth**self._power
            thinning = self._power * _LAPSE_K_PER_M / self._ground_k * dry / warmth
        vapour = self._vapour * np.exp(-height / _VAPOUR_M)
        slope = (vapour / _VAPOUR_M - thinning) * (_EARTH_M / radius) ** 2
        return dry - vapour, slope


# How the air lifts a star: from true to observed altitude and back.
#
# Above 16° observed altitude this is A tan z + B tan³ z in the observed zenith distance z, with A
# and B from ERFA's `refco` (Hohenkerk & Sinclair's ray trace). Two terms fall short of the trace by
# up to 0.1″ at 14° and by 25″ at 5°, so below 14° a polynomial in 1/(h + 4.6°) follows rays
# integrated through this very air (`core.sky.refraction`) down to 1° below the horizon; between the
# two they are blended so that no drifting star meets a jump. There is no table of coefficients:
# each state of the air has its own.
#
# From −20 to +30 °C and 1030 to 700 hPa, dry or saturated, it keeps to Hohenkerk & Sinclair's ray
# trace within 0.1″ above 10°, 0.2″ at 8°, 0.5″ at 5°, 0.8″ at 4°, 2.6″ at 2° and 9″ at half a
# degree; the largest of these are those of hot and saturated air. Real air near the ground differs
# from any such model, at the horizon by arcminutes (Schaefer & Liller, PASP 102, 796, 1990; from
# memory).

PLAIN_RAD = float(np.deg2rad(16.0))  # above this observed altitude it is the plain series
_LOW_RAD = float(np.deg2rad(14.0))
_FLOOR_RAD = float(np.deg2rad(-1.0))  # below this the lift is held; nothing is watched there
_SHIFT_RAD = 0.08  # 4.6°: in 1/(h + 4.6°) the lift is nearly straight
_NEAR, _FAR = 1.0 / (_FLOOR_RAD + _SHIFT_RAD), 1.0 / (PLAIN_RAD + _SHIFT_RAD)
_MIDDLE, _HALF = 0.5 * (_NEAR + _FAR), 0.5 * (_NEAR - _FAR)
_DEGREE = 10
_FREEZING_K = 273.15
_KEPT = 256  # states of the air


def standard_pressure_hpa(elevation_m: float) -> float:
    """Station pressure of the standard atmosphere, ISO 2533:1975, for the troposphere."""
    return float(1013.25 * (1.0 - 2.25577e-5 * elevation_m) ** 5.25588)


@dataclass(frozen=True)
class Refraction:
    """Refraction for one state of the air. `a_rad`, `b_rad`: constants of ERFA's `refco`.

    `low_rad`: coefficients, rising, of the polynomial that serves below 14°; without any the series
    serves alone and is held there.
    """

    a_rad: float
    b_rad: float
    low_rad: tuple[float, ...] = ()

    @classmethod
    def of(cls, air: Air) -> Refraction:
        """For `air`; no pressure means no refraction."""
        if air.pressure_hpa <= 0.0:
            return cls(0.0, 0.0)
        return _of(air)

    def lift_rad(self, observed_altitude_rad: ArrayLike) -> Floats:
        """Observed minus true altitude, for a given observed altitude."""
        return self.lift_and_slope(observed_altitude_rad)[0]

    def lift_and_slope(self, observed_altitude_rad: ArrayLike) -> tuple[Floats, Floats]:
        """The lift, and how much it changes with the observed altitude (negative, no unit)."""
        altitude = np.asarray(observed_altitude_rad, dtype=float)
        cotangent = 1.0 / np.tan(np.maximum(altitude, _LOW_RAD))
        squared = cotangent * cotangent
        lift = np.array(cotangent * (self.a_rad + self.b_rad * squared))
        slope = np.array(-(1.0 + squared) * (self.a_rad + 3.0 * self.b_rad * squared))
        is_low = altitude < PLAIN_RAD
        if self.low_rad and np.any(is_low):
            lift[is_low], slope[is_low] = self._blended(
                altitude[is_low], lift[is_low], slope[is_low]
            )
        return lift, slope

    def _blended(self, altitude: Floats, high: Floats, high_slope: Floats) -> tuple[Floats, Floats]:
        """Lift and slope below 16°, from what the series gives there, or at 14°."""
        low, low_slope = self._low(altitude)
        width = PLAIN_RAD - _LOW_RAD
        part = np.clip((altitude - _LOW_RAD) / width, 0.0, 1.0)
        weight = part * part * (3.0 - 2.0 * part)
        turning = 6.0 * part * (1.0 - part) / width * (high - low)
        return low + weight * (high - low), low_slope + weight * (high_slope - low_slope) + turning

    def _low(self, altitude: Floats) -> tuple[Floats, Floats]:
        held = np.maximum(altitude, _FLOOR_RAD)
        place = _place(held)
        coefficients = np.array(self.low_rad)
        rising = coefficients[1:] * np.arange(1, coefficients.size)
        lift, slope = (np.polynomial.polynomial.polyval(place, c) for c in (coefficients, rising))
        slope = slope * _place_slope(held)
        return lift, np.where(altitude < _FLOOR_RAD, 0.0, slope)

    def observed_altitude_rad(self, true_altitude_rad: ArrayLike) -> Floats:
        """Altitude at which a star of this true altitude is seen; the inverse to rounding."""
        true_altitude = np.asarray(true_altitude_rad, dtype=float)
        observed = true_altitude
        if self.a_rad != 0.0:
            for _ in range(_ROUNDS):
                lift, slope = self.lift_and_slope(observed)
                observed = observed + (true_altitude + lift - observed) / (1.0 - slope)
        return observed


@lru_cache(maxsize=_KEPT)
def _of(air: Air) -> Refraction:
    a_rad, b_rad = _constants_rad(air, air.relative_humidity)
    dry = _excess_of_index(*_constants_rad(air, 0.0))
    vapour = dry - _excess_of_index(a_rad, b_rad)
    layers = Layers(dry, vapour, air.temperature_c + _FREEZING_K)
    nodes = np.cos(np.pi * (np.arange(_DEGREE + 1) + 0.5) / (_DEGREE + 1))  # Chebyshev's
    altitude = 1.0 / (_MIDDLE + _HALF * nodes) - _SHIFT_RAD
    series = np.polynomial.chebyshev.chebfit(nodes, layers.bending_rad(altitude), _DEGREE)
    low = np.polynomial.chebyshev.cheb2poly(series)
    return Refraction(a_rad, b_rad, tuple(low.tolist()))


def _constants_rad(air: Air, humidity: float) -> tuple[float, float]:
    a_rad, b_rad = erfa.refco(air.pressure_hpa, air.temperature_c, humidity, air.wavelength_um)
    return float(a_rad), float(b_rad)


def _excess_of_index(a_rad: float, b_rad: float) -> float:
    """n − 1 on the ground, γ in Green, Spherical Astronomy (1987), expression 4.31, as `refco` has
    it: A = γ (1 − β), B = −γ (β − γ/2).
    """
    return 1.0 - math.sqrt(1.0 - 2.0 * (a_rad - b_rad))


def _place(altitude_rad: Floats) -> Floats:
    """Where in the polynomial an altitude lies: −1 at 16°, 1 at the floor."""
    return np.asarray((1.0 / (altitude_rad + _SHIFT_RAD) - _MIDDLE) / _HALF)


def _place_slope(altitude_rad: Floats) -> Floats:
    return np.asarray(-1.0 / (_HALF * (altitude_rad + _SHIFT_RAD) ** 2))
