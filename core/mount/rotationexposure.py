"""How long an alt-azimuth mount may expose before the corner of the picture smears."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.language import say
from core.mount.rotation import SIDEREAL_DEG_PER_HOUR, rate_deg_per_hour
from core.mount.rotationtrack import Track, field_angle_deg

Floats = NDArray[np.float64]

LONGEST_S = 6.0 * 3600.0  # nobody exposes longer; also where the field does not turn at all
_SIDEREAL_RAD_PER_S = np.radians(SIDEREAL_DEG_PER_HOUR) / 3600.0
_HALVINGS = 40


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
    """Longest exposure begun at each true place of the sky; broadcasts like `turning`.

    From the rate and its change at that place, exactly to second order; without the second the
    prime vertical, where the field stands still for a moment, would promise endless exposures.
    Within a few per cent of the exact one for rotations up to half a degree; see `longest_s` for
    one target. At most `LONGEST_S`.
    """
    rate = np.radians(rate_deg_per_hour(latitude_deg, azimuth_deg, altitude_deg)) / 3600.0
    change = _change_of_rate_per_s2(latitude_deg, azimuth_deg, altitude_deg)
    speed, growth = np.abs(rate), np.where(rate < 0.0, -change, change)
    allowed = np.radians(rotation_deg)
    with np.errstate(divide="ignore", invalid="ignore"):
        onward = 2.0 * allowed / (speed + np.sqrt(speed * speed + 2.0 * growth * allowed))
        back = -speed / growth + np.sqrt(-2.0 * allowed / growth)
    turns_back = speed * speed + 2.0 * growth * allowed < 0.0
    return np.asarray(np.minimum(np.where(turns_back, back, onward), LONGEST_S))


def longest_s(track: Track, rotation_deg: float) -> Floats:
    """Longest exposure begun at each moment of the track, (n,), exact; at most `LONGEST_S`.

    What counts is how far apart the field's angles come within the exposure, also when the field
    turns back before its end.
    """
    short, long = np.zeros_like(track.utc_s), np.full_like(track.utc_s, LONGEST_S)
    for _ in range(_HALVINGS):
        middle = 0.5 * (short + long)
        fits = rotation_span_deg(track, middle) <= rotation_deg
        short, long = np.where(fits, middle, short), np.where(fits, long, middle)
    fits = rotation_span_deg(track, LONGEST_S) <= rotation_deg
    return np.asarray(np.where(fits, LONGEST_S, short))


def rotation_span_deg(track: Track, exposure_s: ArrayLike) -> Floats:
    """How far apart the field's angles come in exposures begun at each moment; (n,)."""
    begun = track.hour_angle_deg
    ended = begun + np.asarray(exposure_s) / 3600.0 * SIDEREAL_DEG_PER_HOUR
    hours = [begun, ended]
    for turning_point in _turning_points_deg(track):
        nearest = turning_point + 360.0 * np.ceil((begun - turning_point) / 360.0)
        hours.append(np.minimum(nearest, ended))
    latitude_deg = track.site.latitude_deg
    angles = [field_angle_deg(hour, track.declination_deg, latitude_deg) for hour in hours]
    return np.asarray(np.max(angles, axis=0) - np.min(angles, axis=0))


def exposure_count(total_s: float, exposure_s: float) -> int:
    """Exposures of this length that make up at least so much light."""
    if not (total_s >= 0.0 and exposure_s > 0.0):
        raise ValueError(say("The whole time and the exposure must be longer than nothing."))
    return int(np.ceil(total_s / exposure_s - 1e-9))


def _turning_points_deg(track: Track) -> tuple[float, ...]:
    """Hour angles on the prime vertical, where the rotation changes its way; none beyond it."""
    declination, latitude = np.radians(track.declination_deg), np.radians(track.site.latitude_deg)
    if abs(declination) >= abs(latitude):
        return ()
    hour_angle = float(np.degrees(np.arccos(np.tan(declination) / np.tan(latitude))))
    return hour_angle, -hour_angle


def _change_of_rate_per_s2(
    latitude_deg: float, azimuth_deg: ArrayLike, altitude_deg: ArrayLike
) -> Floats:
    """Second derivative of the parallactic angle, rad/s²: `turning`'s rates differentiated."""
    latitude, azimuth = np.radians(latitude_deg), np.radians(azimuth_deg)
    altitude = np.radians(altitude_deg)
    cos_alt = np.maximum(np.cos(altitude), 1e-12)
    tan_alt = np.sin(altitude) / cos_alt
    north, east = np.cos(latitude) * np.cos(azimuth), np.cos(latitude) * np.sin(azimuth)
    azimuth_rate = np.sin(latitude) - tan_alt * north
    change = (east * azimuth_rate - north * tan_alt * east) / cos_alt
    return np.asarray(change * _SIDEREAL_RAD_PER_S**2)
