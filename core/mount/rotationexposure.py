"""How long an alt-azimuth mount may expose before the corner of the picture smears."""

from __future__ import annotations

from dataclasses import dataclass

import erfa
import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.language import say
from core.mount.rotation import SIDEREAL_DEG_PER_HOUR
from core.mount.rotationspan import turn_within_rad
from core.mount.rotationtrack import Track

Floats = NDArray[np.float64]

LONGEST_S = 6.0 * 3600.0  # nobody exposes longer; also where the field does not turn at all
_AT_ZENITH = 1e-9  # cosine of the altitude
_SIDEREAL_RAD_PER_S = np.radians(SIDEREAL_DEG_PER_HOUR) / 3600.0


@dataclass(frozen=True)
class Frame:
    """A camera's field: pixels across and down, square pixels."""

    width_px: float
    height_px: float

    @property
    def corner_px(self) -> float:
        """From the centre, about which the field turns, to a corner."""
        return float(np.hypot(self.width_px, self.height_px) / 2.0)


def smear_px(frame: Frame, rotation_deg: ArrayLike) -> Floats:
    """How far a corner star moves when the field turns by so much: the chord of its arc."""
    half_turn = 0.5 * np.radians(np.minimum(np.abs(rotation_deg), 180.0))
    return np.asarray(2.0 * frame.corner_px * np.sin(half_turn))


def allowed_rotation_deg(frame: Frame, allowed_px: float) -> float:
    """The rotation that moves a corner star by `allowed_px`; raises ValueError, a sentence."""
    if not (allowed_px > 0.0 and frame.corner_px > 0.0):
        raise ValueError(say("The frame and the smear allowed in it must be larger than nothing."))
    return float(2.0 * np.degrees(np.arcsin(min(allowed_px / (2.0 * frame.corner_px), 1.0))))


def longest_map_s(
    latitude_deg: float, azimuth_deg: ArrayLike, altitude_deg: ArrayLike, rotation_deg: float
) -> Floats:
    """Longest exposure begun at each true place of the sky, exact; broadcasts like `turning`.

    At most `LONGEST_S`; nothing at the zenith. Beside the prime vertical, where the field stands
    still for a moment and turns back, it jumps to more than twice as long where the turn before
    that just fits.
    """
    azimuth, altitude = np.broadcast_arrays(np.radians(azimuth_deg), np.radians(altitude_deg))
    hour_angle, declination = erfa.ae2hd(azimuth, altitude, np.radians(latitude_deg))
    longest = _longest_s(hour_angle, declination, latitude_deg, rotation_deg)
    return np.where(np.cos(altitude) < _AT_ZENITH, 0.0, longest)


def longest_s(track: Track, rotation_deg: float) -> Floats:
    """Longest exposure begun at each moment of the track, (n,), exact; at most `LONGEST_S`.

    What counts is how far apart the field's angles come within the exposure, also when the field
    turns back before its end.
    """
    hour_angle, declination = np.radians(track.hour_angle_deg), np.radians(track.declination_deg)
    return _longest_s(hour_angle, declination, track.site.latitude_deg, rotation_deg)


def _longest_s(
    hour_angle_rad: Floats, declination_rad: ArrayLike, latitude_deg: float, rotation_deg: float
) -> Floats:
    latitude, rotation = float(np.radians(latitude_deg)), float(np.radians(rotation_deg))
    turn = turn_within_rad(hour_angle_rad, declination_rad, latitude, rotation)
    return np.asarray(np.minimum(turn / _SIDEREAL_RAD_PER_S, LONGEST_S))


def exposure_count(total_s: float, exposure_s: float) -> int:
    """Exposures of this length that make up at least so much light."""
    if not (total_s >= 0.0 and exposure_s > 0.0):
        raise ValueError(say("The whole time and the exposure must be longer than nothing."))
    return int(np.ceil(total_s / exposure_s - 1e-9))
