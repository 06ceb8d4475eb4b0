"""Lengths of time in short words."""

from __future__ import annotations

from core.language import say

MINUTE_S, HOUR_S = 60.0, 3600.0


def span_words(seconds: float) -> str:
    """Like "8.5 s", "40 s", "2.5 min", "1 h 05 min"; rounded, so never for a limit."""
    if seconds < 9.95:
        return say("{seconds:.2g} s", seconds=seconds)
    if seconds < 99.5:
        return say("{seconds:.0f} s", seconds=seconds)
    if seconds < 9.95 * MINUTE_S:
        return say("{minutes:.2g} min", minutes=seconds / MINUTE_S)
    minutes = round(seconds / MINUTE_S)
    if minutes < 60:
        return say("{minutes} min", minutes=minutes)
    hours, minutes = divmod(minutes, 60)
    if not minutes:
        return say("{hours} h", hours=hours)
    return say("{hours} h {minutes:02d} min", hours=hours, minutes=minutes)


def limit_words(seconds: float) -> str:
    """The same rounded down to two figures: a limit must not be stretched."""
    if seconds >= HOUR_S:
        return span_words(seconds // MINUTE_S * MINUTE_S)
    unit = MINUTE_S if seconds >= 2.0 * MINUTE_S else 1.0
    size = seconds / unit
    step = 1.0 if size >= 10.0 else 0.1 if size >= 1.0 else 0.01
    figure = int(size / step + 1e-9) * step
    if unit > 1.0:
        return say("{minutes:.4g} min", minutes=figure)
    return say("{seconds:.4g} s", seconds=figure)
