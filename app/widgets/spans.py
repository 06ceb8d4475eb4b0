"""Lengths of time in short words."""

from __future__ import annotations

MINUTE_S, HOUR_S = 60.0, 3600.0


def span_words(seconds: float) -> str:
    """Like "8.5 s", "40 s", "2.5 min", "1 h 05 min"; rounded, so never for a limit."""
    if seconds < 9.95:
        return f"{seconds:.2g} s"
    if seconds < 99.5:
        return f"{seconds:.0f} s"
    if seconds < 9.95 * MINUTE_S:
        return f"{seconds / MINUTE_S:.2g} min"
    minutes = round(seconds / MINUTE_S)
    if minutes < 60:
        return f"{minutes} min"
    return f"{minutes // 60} h {minutes % 60:02d} min" if minutes % 60 else f"{minutes // 60} h"


def limit_words(seconds: float) -> str:
    """The same rounded down to two figures: a limit must not be stretched."""
    if seconds >= HOUR_S:
        return span_words(seconds // MINUTE_S * MINUTE_S)
    unit = MINUTE_S if seconds >= 2.0 * MINUTE_S else 1.0
    size = seconds / unit
    step = 1.0 if size >= 10.0 else 0.1 if size >= 1.0 else 0.01
    return f"{int(size / step + 1e-9) * step:.4g} {'min' if unit > 1.0 else 's'}"
