"""Readings thrown off by a gust or a touch: found against their neighbours and set aside."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from scipy.ndimage import median_filter

Floats = NDArray[np.float64]
Flags = NDArray[np.bool_]

_WINDOW = 15  # readings; up to seven thrown-off neighbours cannot carry the median
_NARROWEST = 5  # readings; one thrown off among four others does not carry their median
_THRESHOLD = 6.0  # in robust standard deviations: honest seeing hardly ever gets there
_FEW = 20  # fewer readings know their own scatter badly, and more has to be asked of an odd one
_THRESHOLD_OF_FEW = 9.5  # reached by one leg in two hundred of 7 to 19 honest readings
_FEWEST = 7  # fewer readings cannot tell which of them is odd
_DIVISIONS = 1.6  # a reading beside a boundary of divisions may be one off, its neighbour half
_NORMAL_MAD = 1.4826  # standard deviation of a normal distribution over its median deviation


def set_aside(utc_s: Floats, north_arcsec: Floats, reading_step_arcsec: float = 0.0) -> Flags:
    """Flags (n,) of readings far off the running median of their neighbourhood.

    `reading_step_arcsec`: the division they were read to; a division and a half is no gust yet.
    """
    if utc_s.size < _FEWEST:
        return np.zeros(utc_s.size, dtype=bool)
    level = north_arcsec - _resistant_line(utc_s, north_arcsec)
    window = min(_WINDOW, max(2 * (utc_s.size // 4) + 1, _NARROWEST))
    is_few = utc_s.size < _FEW
    around = _median_of_others if is_few else _median_around
    deviation = np.abs(level - around(level, window))
    scatter = _NORMAL_MAD * float(np.median(np.abs(level - np.median(level))))
    nearby = _NORMAL_MAD * float(np.median(deviation))
    scale = max(nearby, 0.25 * scatter)  # coarse readings repeat: their nearby scatter is zero
    if scale <= 0.0:
        return np.zeros(utc_s.size, dtype=bool)
    far = (_THRESHOLD_OF_FEW if is_few else _THRESHOLD) * scale
    return np.asarray(deviation > max(far, _DIVISIONS * reading_step_arcsec))


def _median_around(level: Floats, window: int) -> Floats:
    return np.asarray(median_filter(level, size=window, mode="mirror"))


def _median_of_others(level: Floats, window: int) -> Floats:
    """Without the reading itself: in a window of three or five it would often be its own median,
    and the scatter come out far too small.
    """
    half = window // 2
    windows = np.lib.stride_tricks.sliding_window_view(np.pad(level, half, mode="reflect"), window)
    return np.asarray(np.median(np.delete(windows, half, axis=1), axis=1))


def _resistant_line(utc_s: Floats, north_arcsec: Floats) -> Floats:
    """Line through the medians of the outer thirds (Tukey's resistant line)."""
    third = utc_s.size // 3
    early, late = slice(0, third), slice(utc_s.size - third, utc_s.size)
    first_s, last_s = np.median(utc_s[early]), np.median(utc_s[late])
    first, last = np.median(north_arcsec[early]), np.median(north_arcsec[late])
    return np.asarray(first + (last - first) * (utc_s - first_s) / (last_s - first_s))
