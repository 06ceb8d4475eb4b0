"""Times, angles and places of the Pole page in words."""

from __future__ import annotations

from datetime import UTC, datetime

from core.alignment.polarscope.view import clock_text
from core.language import say
from core.sky.words import direction_words


def span(seconds: float) -> str:
    """Like "3 h 12 min", "45 min"."""
    minutes = max(round(seconds / 60.0), 0)
    if minutes < 60:
        return say("{minutes} min", minutes=minutes)
    return say("{hours} h {minutes} min", hours=minutes // 60, minutes=minutes % 60)


def utc(utc_s: float) -> str:
    return say("{time:%H:%M} UTC", time=datetime.fromtimestamp(utc_s, UTC))


def hour_angle(hour_angle_deg: float) -> str:
    """Like "4 h 19 min west"; the meridian itself is neither."""
    minutes = round(abs(hour_angle_deg) * 4.0)
    size = say("{hours} h {minutes} min", hours=minutes // 60, minutes=minutes % 60)
    if minutes == 0:
        return size
    if hour_angle_deg > 0.0:
        return say("{hour_angle} west", hour_angle=size)
    return say("{hour_angle} east", hour_angle=size)


def distance(arcmin: float) -> str:
    return f"{arcmin:.1f}′" if arcmin < 120.0 else f"{arcmin / 60.0:.2f}°"


def size(error_arcmin: float) -> str:
    """Of an error, without its sign."""
    error = abs(error_arcmin)
    return f"{error:.1f}′" if error < 120.0 else f"{error / 60.0:.1f}°"


def on_clock(clock_angle_deg: float, distance_arcmin: float) -> str:
    """Like "10:20, 37.6′ from the middle"."""
    return say(
        "{clock}, {distance} from the middle",
        clock=clock_text(clock_angle_deg),
        distance=distance(distance_arcmin),
    )


def direction(azimuth_deg: float, altitude_deg: float) -> str:
    """Like "west-north-west (284.7°), 43.3° high"."""
    return say(
        "{direction} ({azimuth:.1f}°), {altitude:.1f}° high",
        direction=direction_words(azimuth_deg),
        azimuth=azimuth_deg % 360.0,
        altitude=altitude_deg,
    )


def signed(degrees: float) -> str:
    return f"{'+' if degrees >= 0.0 else '−'}{abs(degrees):.1f}°"
