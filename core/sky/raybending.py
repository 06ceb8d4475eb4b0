"""How far the air bends a ray on its way to the ground: an integral through layers of air.

The integral is Auer & Standish's (Astron. J. 119, 2472, 2000; from memory): bending gathers over
the local zenith distance ψ as −d/(1 + d) dψ with d = d ln n / d ln r, and n r sin ψ stays the same.
It has no singular place at the horizon or below. The air is that of the standard atmosphere
(ISO 2533:1975) moved to the temperature on the ground: 6.5 K cooler each kilometre for 11 km above
the station, of one temperature from there on, in balance with gravity. Water vapour thins out by
e in 2 km, as in the reference atmosphere of ITU-R P.835.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

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
