"""Times, angles and places of the Pole page in words."""

from __future__ import annotations

from datetime import UTC, datetime

from core.alignment.sight import clock_text
from core.sky.compass import direction_words


def span(seconds: float) -> str:
    """Like "3 h 12 min", "45 min"."""
    minutes = max(round(seconds / 60.0), 0)
    return f"{minutes // 60} h {minutes % 60} min" if minutes >= 60 else f"{minutes} min"


def utc(utc_s: float) -> str:
    return f"{datetime.fromtimestamp(utc_s, UTC):%H:%M} UTC"


def hour_angle(hour_angle_deg: float) -> str:
    """Like "4 h 19 min west"; the meridian itself is neither."""
    minutes = round(abs(hour_angle_deg) * 4.0)
    size = f"{minutes // 60} h {minutes % 60} min"
    side = " west" if hour_angle_deg > 0.0 else " east"
    return size if minutes == 0 else size + side


def distance(arcmin: float) -> str:
    return f"{arcmin:.1f}′" if arcmin < 120.0 else f"{arcmin / 60.0:.2f}°"


def size(error_arcmin: float) -> str:
    """Of an error, without its sign."""
    error = abs(error_arcmin)
    return f"{error:.1f}′" if error < 120.0 else f"{error / 60.0:.1f}°"


def on_clock(clock_angle_deg: float, distance_arcmin: float) -> str:
    """Like "10:20, 37.6′ from the middle"."""
    return f"{clock_text(clock_angle_deg)}, {distance(distance_arcmin)} from the middle"


def direction(azimuth_deg: float, altitude_deg: float) -> str:
    """Like "west-north-west (284.7°), 43.3° high"."""
    return f"{direction_words(azimuth_deg)} ({azimuth_deg % 360.0:.1f}°), {altitude_deg:.1f}° high"


def signed(degrees: float) -> str:
    return f"{'+' if degrees >= 0.0 else '−'}{abs(degrees):.1f}°"
