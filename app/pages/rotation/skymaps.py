"""The maps of the sky above: how fast the field turns, how long one may expose."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from app.widgets.contours import Contour, Values, bands, contours
from app.widgets.skyview import FROM_ZENITH_DEG
from app.widgets.spans import span_words
from core.imaging.rotation import rate_deg_per_hour
from core.imaging.rotationexposure import longest_map_s
from core.language import say
from core.sky.site import Air
from core.units import SIDEREAL_DEG_PER_HOUR

Floats = NDArray[np.float64]

_RATES = (0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0)
_SLOWEST, _FASTEST = 0.12, 5.0  # of the rate at the horizon due south; faster lies at the zenith
_LEAST_RATE = 0.01  # at a pole the field does not turn at all
_NO_RATE, _UNTOLD_RATE = 1e-3, 1e5  # on the prime vertical it is none, at the zenith without bound
_EXPOSURES_S = (0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 30.0, 120.0, 600.0, 3600.0)
_SHARES = 4.0, 96.0  # per cent of the sky between which a line of equal exposure is worth drawing


@dataclass(frozen=True, eq=False)
class SkyMap:
    """`levels` that the contours stand at; none where the field does not turn at all."""

    levels: tuple[float, ...]
    contours: tuple[Contour, ...]
    bands: Floats | None


@lru_cache(maxsize=8)
def rate_map(latitude_deg: float, air: Air, rim_deg: float = FROM_ZENITH_DEG) -> SkyMap:
    """Field rotation over the sky in degrees per hour, contours of either sign and of zero."""
    at_rim = float(np.cos(np.radians(latitude_deg)) / np.sin(np.radians(rim_deg)))
    sizes = _rates(SIDEREAL_DEG_PER_HOUR * at_rim, rim_deg == FROM_ZENITH_DEG)
    if not sizes:
        return SkyMap((), (), None)

    def values(azimuth: Floats, altitude: Floats) -> Floats:
        return rate_deg_per_hour(latitude_deg, azimuth, altitude, air)

    levels = (*(-size for size in reversed(sizes)), 0.0, *sizes)
    return _map(values, levels, rate_words, rim_deg)


def _rates(at_rim: float, is_whole: bool) -> tuple[float, ...]:
    """Sizes worth a line; near the zenith alone they know no bound."""
    if at_rim < _LEAST_RATE:
        return ()
    if is_whole:
        return tuple(one for one in _RATES if _SLOWEST * at_rim <= one <= _FASTEST * at_rim)
    first = 10.0 ** float(np.floor(np.log10(at_rim)))
    return tuple(first * digit for digit in (1.0, 5.0, 20.0))


@lru_cache(maxsize=8)
def exposure_map(latitude_deg: float, rotation_deg: float) -> SkyMap:
    """Longest exposure over the sky in seconds before the field turns by so much."""

    def values(azimuth: Floats, altitude: Floats) -> Floats:
        return longest_map_s(latitude_deg, azimuth, altitude, rotation_deg)

    azimuth, altitude = (
        np.arange(0.0, 360.0, 5.0),
        np.degrees(np.arcsin(np.arange(0.02, 1.0, 0.05))),
    )
    sky = values(azimuth[np.newaxis], altitude[:, np.newaxis])
    low, high = np.percentile(sky, _SHARES)
    fitting = [level for level in _EXPOSURES_S if low <= level <= high]
    return _map(values, tuple(fitting), span_words, FROM_ZENITH_DEG)


def rate_words(rate_deg_per_hour: float) -> str:
    """As it stands on a contour or under the pointer: three figures, also where it is slow."""
    size = abs(rate_deg_per_hour)
    if size > _UNTOLD_RATE:
        return say("more than {rate:,.0f}°/h", rate=_UNTOLD_RATE)
    shown = float(f"{size:.3g}") if size >= _NO_RATE else 0.0
    sign = "" if shown == 0.0 else "−" if rate_deg_per_hour < 0.0 else "+"
    return say("{sign}{rate:.6g}°/h", sign=sign, rate=shown)


def _map(
    values: Values, levels: tuple[float, ...], words: Callable[[float], str], rim_deg: float
) -> SkyMap:
    lines = contours(values, levels, words, rim_deg)
    return SkyMap(levels, lines, bands(values, levels, rim_deg))
