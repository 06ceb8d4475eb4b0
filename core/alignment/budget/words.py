"""Exposures and smear in words."""

from __future__ import annotations

from core.alignment.budget.task import Task

_DEGREES_FROM_ARCMIN = 120.0


def exposure_words(exposure_s: float) -> str:
    """``5-minute``, ``90-second``: as an attribute of exposures."""
    if exposure_s >= 120.0 and round(exposure_s / 60.0, 1) == exposure_s / 60.0:
        return f"{exposure_s / 60.0:g}-minute"
    return f"{exposure_s:.3g}-second"


def exposures_at(task: Task) -> str:
    """``guided 5-minute exposures at 600 mm``."""
    return f"{exposure_words(task.exposure_s)} exposures at {task.optics.focal_length_mm:g} mm"


def duration(seconds: float) -> str:
    """``40 seconds``, ``2.5 minutes``, two figures."""
    if seconds < 1.95:
        return f"{seconds:.2g} s"
    if seconds < 120.0:
        return f"{seconds:.0f} seconds"
    minutes = seconds / 60.0
    return f"{minutes:.1f} minutes" if minutes < 9.95 else f"{minutes:.0f} minutes"


def pixels(size_px: float) -> str:
    """``0.3 of a pixel``, ``1.8 pixels``, two figures below one."""
    if size_px < 0.01:
        return "less than 0.01 of a pixel"
    if size_px < 0.995:
        return f"{_short(size_px)} of a pixel"
    return "1 pixel" if _short(size_px) == "1" else f"{_short(size_px)} pixels"


def near(size_px: float, limit_px: float) -> str:
    """As `pixels`, with one figure unless that would hide on which side of the limit it lies."""
    rough = float(f"{size_px:.1g}") if size_px < 1.0 else float(f"{size_px:.2g}")
    hidden = (rough < limit_px) != (size_px < limit_px) or rough == limit_px
    return pixels(size_px) if hidden else pixels(rough)


def between(low_px: float, high_px: float) -> str:
    """``between 0.3 and 0.8 of a pixel``."""
    unit = "of a pixel" if high_px < 0.995 else "pixels"
    return f"between {_short(low_px)} and {_short(high_px)} {unit}"


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
