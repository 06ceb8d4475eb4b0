"""How long an alt-azimuth mount may expose, and what is left after stacking."""

from __future__ import annotations

from dataclasses import dataclass

import erfa
import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.imaging.rotation import RotationTrack, turn_within_rad
from core.language import say
from core.units import SIDEREAL_RATE_RAD_PER_S

# How long an alt-azimuth mount may expose before the corner of the picture smears.

Floats = NDArray[np.float64]

LONGEST_S = 6.0 * 3600.0  # nobody exposes longer; also where the field does not turn at all
_AT_ZENITH = 1e-9  # cosine of the altitude


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


def longest_s(track: RotationTrack, rotation_deg: float) -> Floats:
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
    return np.asarray(np.minimum(turn / SIDEREAL_RATE_RAD_PER_S, LONGEST_S))


def exposure_count(total_s: float, exposure_s: float) -> int:
    """Exposures of this length that make up at least so much light."""
    if not (total_s >= 0.0 and exposure_s > 0.0):
        raise ValueError(say("The whole time and the exposure must be longer than nothing."))
    return int(np.ceil(total_s / exposure_s - 1e-9))


# What is left of the picture after frames that turned against each other are stacked.

_SAME_TURN_DEG = 1e-9


@dataclass(frozen=True, eq=False)
class CommonField:
    """The part of the first frame that all frames saw, and the largest crop inside it.

    Corners in pixels from the centre, x to the right and y up, anticlockwise, in the first
    frame's axes. Angles grow as `Track.field_angle_deg`, which turns later frames anticlockwise
    over the stars in a picture that is not mirrored. `crop` keeps the frame's own proportions and
    may lie aslant, halfway between the outermost frames.
    """

    rotation_deg: float  # between the outermost frames
    common_outline_px: Floats  # (m, 2)
    common_percent: float  # of the frame's area
    crop_outline_px: Floats  # (4, 2)
    crop_percent: float
    crop_turned_deg: float  # against the first frame


def common_field(frame: Frame, angle_deg: ArrayLike) -> CommonField:
    """From the field's angle at each frame (n,), in any order; only differences matter.

    Give the angle at the beginning and at the end of each exposure, and a gap of some degrees is
    exact too: the outline is cut by every frame given, not by a curve in between.
    """
    angles = np.atleast_1d(np.asarray(angle_deg, dtype=np.float64)) - np.ravel(angle_deg)[0]
    distinct = np.unique(np.round(angles / _SAME_TURN_DEG)) * _SAME_TURN_DEG
    edges = _edges(frame, distinct)
    outline = _inside(edges)
    middle = 0.5 * (distinct[0] + distinct[-1])
    crop = _largest_crop(frame, middle, edges)
    area = frame.width_px * frame.height_px
    return CommonField(
        float(distinct[-1] - distinct[0]),
        outline,
        100.0 * _area(outline) / area,
        crop,
        100.0 * _area(crop) / area,
        float(middle),
    )


def stacked_field(frame: Frame, track: RotationTrack, exposure_utc_s: ArrayLike) -> CommonField:
    """Of exposures (n, 2), each with its beginning and end, on the track's target."""
    return common_field(frame, track.field_angle_at_deg(np.ravel(exposure_utc_s)))


def _edges(frame: Frame, angle_deg: Floats) -> Floats:
    """All sides of all frames as points n/d of the lines n·x = d, (4n, 2)."""
    half = np.array([frame.width_px, frame.height_px, frame.width_px, frame.height_px]) / 2.0
    towards = np.radians(angle_deg)[:, np.newaxis] + 0.5 * np.pi * np.arange(4)
    return np.stack([np.cos(towards) / half, np.sin(towards) / half], axis=-1).reshape(-1, 2)


def _inside(edges: Floats) -> Floats:
    """Corners of the polygon within all sides: the dual of the convex hull of their points."""
    hull = _hull(edges)
    following = np.roll(hull, -1, axis=0)
    crossing = hull[:, 0] * following[:, 1] - hull[:, 1] * following[:, 0]
    corner = np.stack([following[:, 1] - hull[:, 1], hull[:, 0] - following[:, 0]], axis=-1)
    return np.asarray(corner / crossing[:, np.newaxis])


def _hull(points: Floats) -> Floats:
    """Convex hull, anticlockwise, without points on its sides (Andrew's monotone chain, 1979)."""
    ordered = sorted(map(tuple, points.tolist()))
    lower = _chain(ordered)
    upper = _chain(ordered[::-1])
    return np.array([*lower[:-1], *upper[:-1]])


def _chain(ordered: list[tuple[float, ...]]) -> list[tuple[float, ...]]:
    chain: list[tuple[float, ...]] = []
    for point in ordered:
        while len(chain) > 1 and _turn(chain[-2], chain[-1], point) <= 0.0:
            chain.pop()
        chain.append(point)
    return chain


def _turn(first: tuple[float, ...], second: tuple[float, ...], third: tuple[float, ...]) -> float:
    """Positive where the way from first over second to third bends to the left."""
    ahead = (second[0] - first[0]) * (third[1] - first[1])
    return ahead - (second[1] - first[1]) * (third[0] - first[0])


def _largest_crop(frame: Frame, turned_deg: float, edges: Floats) -> Floats:
    cosine, sine = np.cos(np.radians(turned_deg)), np.sin(np.radians(turned_deg))
    half_across = frame.width_px / 2.0 * np.array([cosine, sine])
    half_up = frame.height_px / 2.0 * np.array([-sine, cosine])
    reach = np.abs(edges @ half_across) + np.abs(edges @ half_up)
    scale = 1.0 / float(np.max(reach))
    signs = ((-1, -1), (1, -1), (1, 1), (-1, 1))
    return np.array([scale * (x * half_across + y * half_up) for x, y in signs])


def _area(corners: Floats) -> float:
    """Gauss's area formula."""
    x, y = corners.T
    return float(0.5 * np.sum(x * np.roll(y, -1) - y * np.roll(x, -1)))
