"""How far apart the angles of a field come while it turns, and how long they stay within a span.

A star that passes between the zenith and a pole turns its field one way for ever; any other turns
it back on the prime vertical, of either side. Angles are parallactic, west positive.
"""

from __future__ import annotations

import erfa
import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.mount.rotation import SIDEREAL_DEG_PER_HOUR
from core.mount.rotationtrack import Track, field_angle_deg

Floats = NDArray[np.float64]

_ROUND = 2.0 * np.pi
_AT_ZENITH = 1e-12  # sine of the zenith distance


def rotation_span_deg(track: Track, exposure_s: ArrayLike) -> Floats:
    """How far apart the field's angles come in exposures begun at each moment; (n,)."""
    begun = track.hour_angle_deg
    ended = begun + np.asarray(exposure_s) / 3600.0 * SIDEREAL_DEG_PER_HOUR
    latitude_deg, declination_deg = track.site.latitude_deg, track.declination_deg
    hours = [begun, ended]
    if abs(declination_deg) < abs(latitude_deg):
        west = _turning_point_rad(*np.radians([declination_deg, latitude_deg]).tolist())
        for turning_point in np.degrees([west, -west]):
            nearest = turning_point + 360.0 * np.ceil((begun - turning_point) / 360.0)
            hours.append(np.minimum(nearest, ended))
    angles = [field_angle_deg(hour, declination_deg, latitude_deg) for hour in hours]
    return np.asarray(np.max(angles, axis=0) - np.min(angles, axis=0))


def turn_within_rad(
    hour_angle_rad: ArrayLike, declination_rad: ArrayLike, latitude_rad: float, span_rad: float
) -> Floats:
    """How far the sky may turn until the field's angles lie `span_rad` (below π) apart.

    Broadcasts; infinite where they never do. In closed form: the field's angle is the direction in
    which the zenith is seen from the star, and the zenith goes round the pole on a small circle.
    """
    begun, declination = np.broadcast_arrays(
        np.asarray(hour_angle_rad, dtype=np.float64), np.asarray(declination_rad, dtype=np.float64)
    )
    swings = np.abs(declination) < abs(latitude_rad)
    back, swing_way = _next_turning_point(begun, declination, latitude_rad)
    way = np.where(swings, swing_way, np.where(declination > 0.0, -1.0, 1.0))
    angle, last = (erfa.hd2pa(hour, declination, latitude_rad) for hour in (begun, back))
    onward = way * ((last - angle + np.pi) % _ROUND - np.pi)
    is_before = ~swings | (onward >= span_rad)
    start = np.where(is_before, begun, back)
    wanted = np.where(is_before, angle + way * span_rad, last - way * span_rad)
    turn = start - begun + _turn_to(wanted, start, declination, latitude_rad)
    return np.where(swings & (_swing_rad(declination, latitude_rad) < span_rad), np.inf, turn)


def _turning_point_rad(declination_rad: Floats | float, latitude_rad: float) -> Floats:
    """Hour angle in the west on the prime vertical: cos H = tan δ / tan φ, without the tangents."""
    squared = np.sin(latitude_rad - declination_rad) * np.sin(latitude_rad + declination_rad)
    south = np.sin(declination_rad) * np.cos(latitude_rad) * np.sign(latitude_rad)
    return np.asarray(np.arctan2(np.sqrt(np.maximum(squared, 0.0)), south))


def _next_turning_point(
    begun: Floats, declination: Floats, latitude_rad: float
) -> tuple[Floats, Floats]:
    """Its hour angle, not before `begun`, and the sign of the rotation until then."""
    west = _turning_point_rad(declination, latitude_rad)
    to_west, to_east = (west - begun) % _ROUND, (-west - begun) % _ROUND
    way = np.where(to_west <= to_east, 1.0, -1.0) * np.sign(latitude_rad)
    return begun + np.minimum(to_west, to_east), way


def _swing_rad(declination: Floats, latitude_rad: float) -> Floats:
    """From one turning point to the other; the star's angle there is a right triangle's."""
    ratio = np.cos(latitude_rad) / np.maximum(np.cos(declination), _AT_ZENITH)
    return np.asarray(2.0 * np.arcsin(np.minimum(ratio, 1.0)))


def _turn_to(angle_rad: Floats, start: Floats, declination: Floats, latitude_rad: float) -> Floats:
    """From hour angle `start` to the next one with this field angle, in [0, 2π); infinite if none.

    Along the great circle from the star in that direction the zenith is where the sine of the
    declination, sin δ cos z + cos δ cos q sin z, is that of the latitude.
    """
    sin_dec, cos_dec = np.sin(declination), np.cos(declination)
    poleward = cos_dec * np.cos(angle_rad)
    middle = np.arctan2(poleward, sin_dec)
    size = np.maximum(np.hypot(poleward, sin_dec), _AT_ZENITH)
    aside = np.arccos(np.clip(np.sin(latitude_rad) / size, -1.0, 1.0))
    turns = []
    for zenith_distance in (middle - aside, middle + aside):
        sine, cosine = np.sin(zenith_distance), np.cos(zenith_distance)
        across = sine * np.sin(angle_rad)
        hour_angle = np.arctan2(across, cos_dec * cosine - sin_dec * np.cos(angle_rad) * sine)
        turns.append(np.where(sine >= -_AT_ZENITH, (hour_angle - start) % _ROUND, np.inf))
    return np.asarray(np.minimum(turns[0], turns[1]))
