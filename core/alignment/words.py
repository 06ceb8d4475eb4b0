"""Axis errors in words: a size with its ±, the side, and the way to turn."""

from __future__ import annotations

from dataclasses import dataclass

from core.alignment.drift.geometry import hemisphere_sign
from core.language import say

_DEGREES_FROM_ARCMIN = 120.0  # larger figures read better in degrees


@dataclass(frozen=True)
class AxisSide:
    """Where the axis lies and how to bring it back."""

    where: str
    turn: str


def azimuth_side(azimuth_error: float, latitude_rad: float) -> AxisSide:
    """Greater azimuth is east of the north pole and west of the south pole."""
    if azimuth_error * hemisphere_sign(latitude_rad) > 0.0:
        return AxisSide(say("east of the pole"), say("turn it west"))
    return AxisSide(say("west of the pole"), say("turn it east"))


def altitude_side(altitude_error: float) -> AxisSide:
    """The elevated end of the axis, whichever pole it seeks."""
    if altitude_error > 0.0:
        return AxisSide(say("too high"), say("lower it"))
    return AxisSide(say("too low"), say("raise it"))


def figure(size_arcmin: float, half_width_arcmin: float) -> str:
    """Size with ±, no more digits than the ± earns: ``12.4′ ± 0.8′`` or ``2.31° ± 0.02°``."""
    size, half_width, unit = abs(size_arcmin), half_width_arcmin, "′"
    if max(size, half_width) >= _DEGREES_FROM_ARCMIN:
        size, half_width, unit = size / 60.0, half_width / 60.0, "°"
    digits = 0 if half_width >= 9.95 else 1 if half_width >= 0.0995 else 2
    return f"{size:.{digits}f}{unit} ± {_rounded_up(half_width, digits)}{unit}"


def _rounded_up(half_width: float, digits: int) -> str:
    """A ± too small for the digits shown is given as their smallest step, never as zero."""
    return f"{max(half_width, 10.0**-digits):.{digits}f}"
