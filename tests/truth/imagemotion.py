"""How the air moves a star's image, for tests only: frozen layers carried by the wind, slow wander.

Fast motion is the slope of von Kármán phase screens (Taylor's frozen flow) over a small aperture,
its spectrum integrated numerically across the wind; the winds, the outer scale and the shares of
the layers are usual figures without a source. The slow wander of the whole field is a sum of waves:
"periods from a few to 20 minutes" and semi-amplitudes "from 0.05 to over 0.20 arcsec" (Pier, Munn,
Hindsley, Hennessy & Kent, AAS 194, 44.05, 1999); "several tenths of an arcsecond with timescales on
the order of ten minutes" (Taylor, McGraw, Zimmer & Pier, AAS 215, 387.05, 2010), both abstracts.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

import numpy as np
from scipy.special import j1

READING_S = 2.0
_PARTS = 8  # of a reading, over which the image is averaged
_POINTS = 2**14
_APERTURE_M, _OUTER_SCALE_M = 0.08, 50.0
_SHARES, _WINDS_M_PER_S = (0.6, 0.25, 0.15), (2.0, 8.0, 25.0)  # near the ground, halfway, high up
_WAVES, _SHORTEST_S, _LONGEST_S = 24, 400.0, 2000.0  # such that after 150 s 1/e is left


@dataclass(frozen=True)
class Layer:
    """Air carried along as it is; `towards` radians from east."""

    share: float
    wind_m_per_s: float
    towards: float


def layers(rng):
    """A night's layers."""
    winds = _WINDS_M_PER_S * np.exp(0.4 * rng.normal(size=3))
    ways = rng.uniform(0.0, 2.0 * np.pi, 3)
    return tuple(Layer(*one) for one in zip(_SHARES, winds, ways, strict=True))


def fast(rng, over, number, rms_arcsec):
    """East and north motion (number, 2) of readings of 2 s, of that rms in the mean of nights."""
    moved = np.zeros((_POINTS, 2))
    for layer in over:
        shocks = np.fft.rfft(rng.normal(size=(_POINTS, 2)), axis=0) * np.sqrt(_power(layer))
        along, across = np.fft.irfft(shocks, _POINTS, axis=0).T
        c, s = np.cos(layer.towards), np.sin(layer.towards)
        moved += np.stack([c * along - s * across, s * along + c * across], axis=1)
    readings = moved[: number * _PARTS].reshape(number, _PARTS, 2).mean(axis=1)
    return rms_arcsec * readings / np.sqrt(_covariance(over)[0].mean())


def fast_covariance(over, number):
    """Covariance (number, 2) of the readings east and north at lags of 0, 1, 2 … for rms 1."""
    covariance = _covariance(over)
    return covariance[: number * _PARTS : _PARTS] / covariance[0].mean()


def _covariance(over):
    """Of means over a reading, east and north (points, 2), at the lags of the fine grid."""
    turns = [(np.cos(one.towards) ** 2, np.sin(one.towards) ** 2) for one in over]
    power = sum(
        _power(one) @ np.array([[c2, s2], [s2, c2]])
        for one, (c2, s2) in zip(over, turns, strict=True)
    )
    part = np.pi * np.fft.rfftfreq(_POINTS)[1:]
    mean = np.append(1.0, np.sin(_PARTS * part) / (_PARTS * np.sin(part)))
    return np.fft.irfft(power * mean[:, np.newaxis] ** 2, _POINTS, axis=0)


def _power(layer):
    """Spectrum (points / 2 + 1, 2) of the motion along and across the wind."""
    frequency_hz = np.fft.rfftfreq(_POINTS, READING_S / _PARTS)
    wave, slopes = _slope_spectrum()
    per_m = np.maximum(2.0 * np.pi * frequency_hz / layer.wind_m_per_s, wave[0])
    found = [np.interp(np.log(per_m), np.log(wave), one) for one in slopes]
    return layer.share / layer.wind_m_per_s * np.stack(found, axis=-1)


@cache
def _slope_spectrum():
    """Wave numbers (m,) along the wind, 1/m; spectra (2, m) of the slopes along and across it.

    Von Kármán's phase spectrum (κ² + κ₀²)^(−11/6) times κ² and the Airy filter of the aperture.
    """
    along = np.geomspace(1e-5, 200.0, 600)
    across = np.append(0.0, np.geomspace(1e-5, 200.0, 900))
    square = along[:, np.newaxis] ** 2 + across**2
    x = np.sqrt(square) * _APERTURE_M / 2.0
    airy = (2.0 * j1(x) / x) ** 2
    phase = (square + (2.0 * np.pi / _OUTER_SCALE_M) ** 2) ** (-11.0 / 6.0) * airy
    parts = phase * along[:, np.newaxis] ** 2, phase * across**2
    return along, np.stack([np.trapezoid(part, across, axis=1) for part in parts])


def wander(rng, utc_s, rms_arcsec):
    """East and north motion (n, 2) of the whole field; 1/e of the correlation is left at 150 s."""
    spread = np.log(_LONGEST_S / _SHORTEST_S)
    period = _SHORTEST_S * np.exp(spread * rng.uniform(size=(2, _WAVES)))
    phase = rng.uniform(0.0, 2.0 * np.pi, (2, _WAVES))
    waves = np.cos(2.0 * np.pi * (utc_s - utc_s[0])[:, np.newaxis, np.newaxis] / period + phase)
    return rms_arcsec * np.sqrt(2.0 / _WAVES) * waves.sum(axis=-1)


def wander_correlation(lag_s):
    """What is left of the wander's correlation after lags (n,)."""
    spread = np.log(_LONGEST_S / _SHORTEST_S)
    period = _SHORTEST_S * np.exp(spread * (np.arange(2000) + 0.5) / 2000)
    return np.cos(2.0 * np.pi * np.asarray(lag_s)[:, np.newaxis] / period).mean(axis=-1)
