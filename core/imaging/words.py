"""Exposures and smear in words."""

from __future__ import annotations

from core.imaging.task import Task
from core.language import say

_DEGREES_FROM_ARCMIN = 120.0


def exposure_words(exposure_s: float) -> str:
    """``5-minute``, ``90-second``: as an attribute of exposures."""
    if exposure_s >= 120.0 and round(exposure_s / 60.0, 1) == exposure_s / 60.0:
        return say("{minutes:g}-minute", minutes=exposure_s / 60.0)
    return say("{seconds:.3g}-second", seconds=exposure_s)


def exposures_at(task: Task) -> str:
    """``guided 5-minute exposures at 600 mm``."""
    return say(
        "{length} exposures at {focal_length:g} mm",
        length=exposure_words(task.exposure_s),
        focal_length=task.optics.focal_length_mm,
    )


def duration(seconds: float) -> str:
    """``40 seconds``, ``2.5 minutes``, two figures."""
    if seconds < 1.95:
        return f"{seconds:.2g} s"
    if seconds < 120.0:
        return say("{seconds:.0f} seconds", seconds=seconds)
    minutes = seconds / 60.0
    if minutes < 9.95:
        return say("{minutes:.1f} minutes", minutes=minutes)
    return say("{minutes:.0f} minutes", minutes=minutes)


def pixels(size_px: float) -> str:
    """``0.3 of a pixel``, ``1.8 pixels``, two figures below one."""
    if size_px < 0.01:
        return say("less than 0.01 of a pixel")
    if size_px < 0.995:
        return say("{size} of a pixel", size=_short(size_px))
    return say("1 pixel") if _short(size_px) == "1" else say("{size} pixels", size=_short(size_px))


def near(size_px: float, limit_px: float) -> str:
    """As `pixels`, with one figure unless that would hide on which side of the limit it lies."""
    rough = float(f"{size_px:.1g}") if size_px < 1.0 else float(f"{size_px:.2g}")
    hidden = (rough < limit_px) != (size_px < limit_px) or rough == limit_px
    return pixels(size_px) if hidden else pixels(rough)


def between(low_px: float, high_px: float) -> str:
    """``between 0.3 and 0.8 of a pixel``."""
    low, high = _short(low_px), _short(high_px)
    if high_px < 0.995:
        return say("between {low} and {high} of a pixel", low=low, high=high)
    return say("between {low} and {high} pixels", low=low, high=high)


def arc(size_arcmin: float) -> str:
    """Arcminutes, degrees from two on; never rounded up."""
    if size_arcmin >= _DEGREES_FROM_ARCMIN:
        return f"{_down(size_arcmin / 60.0)}°"
    return f"{_down(size_arcmin)}′"


def _short(size: float) -> str:
    return f"{size:.2g}" if size < 99.5 else f"{size:.0f}"


def _down(size: float) -> str:
    """Two figures, rounded down: a tolerance must not be stretched."""
    step = 10.0 if size >= 1000.0 else 1.0 if size >= 10.0 else 0.1 if size >= 1.0 else 0.01
    return f"{int(size / step + 1e-9) * step:.{2 if step < 0.1 else 1 if step < 1.0 else 0}f}"
