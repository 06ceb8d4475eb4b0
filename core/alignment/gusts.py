"""Readings thrown off by a gust or a touch: found against their neighbours and set aside."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from scipy.ndimage import median_filter

Floats = NDArray[np.float64]
Flags = NDArray[np.bool_]

_WINDOW = 15  # readings; up to seven thrown-off neighbours cannot carry the median
_THRESHOLD = 6.0  # in robust standard deviations: honest seeing never gets there
_FEWEST = 7  # fewer readings cannot tell which of them is odd
_NORMAL_MAD = 1.4826  # standard deviation of a normal distribution over its median deviation


def set_aside(utc_s: Floats, north_arcsec: Floats) -> Flags:
    """Flags (n,) of readings far off the running median of their neighbourhood."""
    if utc_s.size < _FEWEST:
        return np.zeros(utc_s.size, dtype=bool)
    level = north_arcsec - _resistant_line(utc_s, north_arcsec)
    window = min(_WINDOW, 2 * (utc_s.size // 4) + 1)
    deviation = np.abs(level - median_filter(level, size=window, mode="mirror"))
    scatter = _NORMAL_MAD * float(np.median(np.abs(level - np.median(level))))
    nearby = _NORMAL_MAD * float(np.median(deviation))
    scale = max(nearby, 0.25 * scatter)  # coarse readings repeat: their nearby scatter is zero
    if scale <= 0.0:
        return np.zeros(utc_s.size, dtype=bool)
    return np.asarray(deviation > _THRESHOLD * scale)


def _resistant_line(utc_s: Floats, north_arcsec: Floats) -> Floats:
    """Line through the medians of the outer thirds (Tukey's resistant line)."""
    third = utc_s.size // 3
    early, late = slice(0, third), slice(utc_s.size - third, utc_s.size)
    first_s, last_s = np.median(utc_s[early]), np.median(utc_s[late])
    first, last = np.median(north_arcsec[early]), np.median(north_arcsec[late])
    return np.asarray(first + (last - first) * (utc_s - first_s) / (last_s - first_s))
