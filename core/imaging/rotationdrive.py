"""What a drive, a derotator and a wedge have to do against field rotation."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.alignment.drift.geometry import axis_north_end, true_direction
from core.imaging.rotation import RotationTrack
from core.language import say
from core.units import SIDEREAL_DEG_PER_HOUR

# What a field derotator has to do for one target, and whether its limits hold.

Floats = NDArray[np.float64]

HALF_TURN_DEG = 180.0  # a rectangular frame turned by this covers the same field again


@dataclass(frozen=True)
class Derotator:
    """A derotator's stops and speed. Angles grow the way the parallactic angle does."""

    lowest_deg: float
    highest_deg: float
    fastest_deg_per_s: float

    @property
    def range_deg(self) -> float:
        return self.highest_deg - self.lowest_deg


@dataclass(frozen=True, eq=False)
class Derotation:
    """The derotator's angle along the track, (n,), rewinds included; begins where they are fewest.

    `rewind_utc_s`: moments by which it must have been turned back by half turns, since the next
    reading would lie beyond a stop. `too_fast_utc_s`: first and last moment at which the field
    turns faster than it can; None if it never does. `holds`: neither happens.
    """

    angle_deg: Floats
    rate_deg_per_hour: Floats
    start_deg: float
    needed_range_deg: float
    fastest_deg_per_s: float
    rewind_utc_s: tuple[float, ...]
    too_fast_utc_s: tuple[float, float] | None

    @property
    def holds(self) -> bool:
        return not self.rewind_utc_s and self.too_fast_utc_s is None

    @property
    def sentence(self) -> str:
        """Whether its limits hold, for the person."""
        if self.holds:
            return say(
                "The field turns through {turn:.0f}° on this track; the derotator manages it from "
                "{start:.0f}° in one go.",
                turn=self.needed_range_deg,
                start=self.start_deg,
            )
        return say(
            "The field turns through {turn:.0f}° on this track; {troubles}. Stop the exposure for "
            "that time.",
            turn=self.needed_range_deg,
            troubles=say(" and ").join(self._troubles()),
        )

    def _troubles(self) -> Iterator[str]:
        times = len(self.rewind_utc_s)
        if times == 1:
            yield say("it must be turned back by half a turn once")
        elif times > 1:
            yield say("it must be turned back by half a turn {times} times", times=times)
        if self.too_fast_utc_s is not None:
            minutes = (self.too_fast_utc_s[1] - self.too_fast_utc_s[0]) / 60.0
            yield say(
                "near the zenith the field turns at up to {speed:.2f}° a second, faster than it "
                "can, for {minutes:.0f} min",
                speed=self.fastest_deg_per_s,
                minutes=max(minutes, 1.0),
            )


def derotation(track: RotationTrack, derotator: Derotator) -> Derotation:
    """What is needed for the whole track. Raises ValueError, a sentence, for impossible limits."""
    if not (derotator.range_deg >= HALF_TURN_DEG and derotator.fastest_deg_per_s > 0.0):
        raise ValueError(
            say(
                "A derotator with {range:.0f}° between its stops cannot be used: it needs at "
                "least 180°, and a speed above zero. Correct its limits.",
                range=derotator.range_deg,
            )
        )
    field = track.field_angle_deg - track.field_angle_deg[0]
    start = _best_start_deg(field, derotator)
    angle, rewinds = _within_stops(start + field, derotator)
    speed = np.abs(track.rate_deg_per_hour) / 3600.0
    fast = track.utc_s[speed > derotator.fastest_deg_per_s]
    return Derotation(
        *(angle, track.rate_deg_per_hour, start, float(np.ptp(field)), float(np.max(speed))),
        tuple(track.utc_s[rewinds].tolist()),
        (float(fast[0]), float(fast[-1])) if fast.size else None,
    )


def _best_start_deg(field_deg: Floats, derotator: Derotator) -> float:
    """In the middle of what fits; at the stop that leaves the longest way when not all does."""
    if np.ptp(field_deg) <= derotator.range_deg:
        spare = derotator.range_deg - np.ptp(field_deg)
        return float(derotator.lowest_deg - np.min(field_deg) + 0.5 * spare)
    return derotator.lowest_deg if field_deg[-1] >= field_deg[0] else derotator.highest_deg


def _within_stops(wanted_deg: Floats, derotator: Derotator) -> tuple[Floats, list[int]]:
    """The angles with half turns taken off where a stop is in the way, and where that begins."""
    angle, shift, rewinds = np.empty_like(wanted_deg), 0.0, []
    for index, wanted in enumerate(wanted_deg.tolist()):
        turns = _half_turns(wanted + shift, derotator)
        if turns != 0.0:
            shift += turns
            rewinds.append(index)
        angle[index] = wanted + shift
    return angle, rewinds


def _half_turns(angle_deg: float, derotator: Derotator) -> float:
    """What to add, in half turns, to come back as far from the stop as the range allows."""
    above, below = angle_deg - derotator.highest_deg, derotator.lowest_deg - angle_deg
    most = HALF_TURN_DEG * (derotator.range_deg // HALF_TURN_DEG)
    if above > 0.0:
        return -max(most, HALF_TURN_DEG * float(np.ceil(above / HALF_TURN_DEG)))
    if below > 0.0:
        return max(most, HALF_TURN_DEG * float(np.ceil(below / HALF_TURN_DEG)))
    return 0.0


# Where an alt-azimuth drive is too slow: the blind zone about the zenith.

_STEP_S = 1.0


@dataclass(frozen=True)
class BlindZone:
    """How far from the zenith, along the meridian, stars outrun the azimuth drive. Degrees."""

    south_deg: float
    north_deg: float

    @property
    def extent_deg(self) -> float:
        """From its southern to its northern end: Borkowski, Acta Astronomica 37, 79 (1987)."""
        return self.south_deg + self.north_deg


@dataclass(frozen=True)
class Loss:
    """A passage that the drive cannot follow.

    `enters_utc_s`: the star begins to outrun the drive, which goes on at its limit;
    `leaves_utc_s`: the drive has caught up with it, or the track ended first
    (`caught_up` False). A mount that runs ahead of the star instead loses about half as long on
    either side of the transit. `highest_altitude_deg`: of the star, within.
    """

    enters_utc_s: float
    leaves_utc_s: float
    caught_up: bool
    highest_altitude_deg: float
    fastest_azimuth_deg_per_s: float

    @property
    def minutes(self) -> float:
        return (self.leaves_utc_s - self.enters_utc_s) / 60.0


def blind_zone(latitude_deg: float, limit_deg_per_s: float) -> BlindZone:
    """The zone for a limit of the azimuth drive. Raises ValueError, a sentence, for slow drives."""
    limit = _sidereal_rates(limit_deg_per_s)
    sine, cosine = np.sin(np.radians(latitude_deg)), np.cos(np.radians(latitude_deg))
    south, north = np.arctan2(cosine, limit - sine), np.arctan2(cosine, limit + sine)
    return BlindZone(float(np.degrees(south)), float(np.degrees(north)))


def blind_outline_deg(
    latitude_deg: float, limit_deg_per_s: float, points: int = 181
) -> tuple[Floats, Floats]:
    """Azimuth and altitude of the zone's edge, each (points,), once round the zenith."""
    limit = _sidereal_rates(limit_deg_per_s)
    latitude = np.radians(latitude_deg)
    azimuth_deg = np.linspace(0.0, 360.0, points)
    north = np.cos(np.radians(azimuth_deg))
    speed = np.where(north > 0.0, limit + np.sin(latitude), limit - np.sin(latitude))
    zenith_distance = np.arctan2(np.cos(latitude) * np.abs(north), speed)
    return azimuth_deg, 90.0 - np.degrees(zenith_distance)


def losses(track: RotationTrack, limit_deg_per_s: float) -> list[Loss]:
    """All passages on the track that outrun the drive, in order; to the second."""
    _sidereal_rates(limit_deg_per_s)
    times = np.arange(track.utc_s[0], track.utc_s[-1] + _STEP_S, _STEP_S)
    azimuth_deg, altitude_deg = _fine_path_deg(track, times)
    speed = np.abs(np.gradient(azimuth_deg, times)) if times.size > 1 else np.zeros(1)
    too_fast = (speed > limit_deg_per_s) & (altitude_deg > 0.0)
    found: list[Loss] = []
    at = 0
    while at < times.size and bool(np.any(too_fast[at:])):
        begin = at + int(np.argmax(too_fast[at:]))
        end, caught_up = _caught_up(azimuth_deg, times, begin, limit_deg_per_s)
        within = slice(begin, end + 1)
        found.append(
            Loss(
                *(float(times[begin]), float(times[end]), caught_up),
                *(float(np.max(altitude_deg[within])), float(np.max(speed[within]))),
            )
        )
        at = end + 1
    return found


def _fine_path_deg(track: RotationTrack, times: Floats) -> tuple[Floats, Floats]:
    """Continuous azimuth, and true altitude, each second: both from the hour angle."""
    hour_angle = np.radians(np.interp(times, track.utc_s, track.hour_angle_deg))
    declination, latitude = np.radians([track.declination_deg, track.site.latitude_deg])
    south = np.sin(latitude) * np.cos(declination) * np.cos(hour_angle)
    south -= np.cos(latitude) * np.sin(declination)
    west = np.cos(declination) * np.sin(hour_angle)
    up = np.sin(latitude) * np.sin(declination)
    up = up + np.cos(latitude) * np.cos(declination) * np.cos(hour_angle)
    azimuth = np.unwrap(np.arctan2(-west, -south))
    return np.degrees(azimuth), np.degrees(np.arcsin(np.clip(up, -1.0, 1.0)))


def _caught_up(
    azimuth_deg: Floats, times: Floats, begin: int, limit_deg_per_s: float
) -> tuple[int, bool]:
    """First index after `begin` at which a drive at its limit is level with the star again."""
    if begin + 1 >= times.size:
        return begin, False
    way = np.sign(azimuth_deg[begin + 1] - azimuth_deg[begin])
    star = way * (azimuth_deg[begin + 1 :] - azimuth_deg[begin])
    drive = limit_deg_per_s * (times[begin + 1 :] - times[begin])
    lag = star - drive
    level = (lag[1:] <= 0.0) if lag.size > 1 else np.zeros(0, dtype=bool)
    if not np.any(level):
        return times.size - 1, False
    return begin + 2 + int(np.argmax(level)), True


def _sidereal_rates(limit_deg_per_s: float) -> float:
    """The limit in units of the sidereal rate."""
    limit = limit_deg_per_s * 3600.0 / SIDEREAL_DEG_PER_HOUR
    if not limit > 1.0:
        raise ValueError(
            say(
                "A drive limit of {limit:g}° a second is slower than the stars turn (0.0042° a "
                "second); such a mount cannot follow anywhere. Correct the limit.",
                limit=limit_deg_per_s,
            )
        )
    return float(limit)


# Residual field rotation when a wedge or an equatorial platform is set for another latitude.
#
# The drive turns about an axis beside the pole, the star is kept in place by small corrections
# about a second axis: its own polar axis for a fork on a wedge, the vertical of the telescope for a
# Dobsonian on a platform. What remains is a slow turn about the line of sight. With no drive and
# corrections about the vertical it is the field rotation of a plain alt-azimuth mount. Rates are
# the change of the parallactic angle, as everywhere; refraction is left out.

_SMALLEST_COSINE = 1e-12


def wedge_rate_deg_per_hour(
    hour_angle_deg: ArrayLike,
    declination_deg: float,
    latitude_deg: float,
    set_latitude_deg: float,
    azimuth_error_deg: float = 0.0,
) -> Floats:
    """Residual rotation of a fork on a wedge, shaped as `hour_angle_deg`, guided on its target.

    `set_latitude_deg`: the latitude the wedge is set for; `azimuth_error_deg` as the azimuth error
    of a polar axis (its northern end east of the pole).
    """
    star = _star(hour_angle_deg, declination_deg, latitude_deg)
    pole, axis = _poles(latitude_deg, set_latitude_deg, azimuth_error_deg)
    return _residual(star, axis - pole, axis)


def platform_rate_deg_per_hour(
    hour_angle_deg: ArrayLike,
    declination_deg: float,
    latitude_deg: float,
    set_latitude_deg: float,
    platform_turn_deg: ArrayLike = 0.0,
    azimuth_error_deg: float = 0.0,
) -> Floats:
    """The same for a Dobsonian on an equatorial platform, corrected in its own two axes.

    `platform_turn_deg`: how far the platform has turned past its level middle, west positive.
    """
    star = _star(hour_angle_deg, declination_deg, latitude_deg)
    pole, axis = _poles(latitude_deg, set_latitude_deg, azimuth_error_deg)
    return _residual(star, axis - pole, _carried_vertical(axis, platform_turn_deg))


def _star(hour_angle_deg: ArrayLike, declination_deg: float, latitude_deg: float) -> Floats:
    angles = float(np.radians(declination_deg)), float(np.radians(latitude_deg))
    return true_direction(np.radians(hour_angle_deg), *angles)


def _poles(
    latitude_deg: float, set_latitude_deg: float, azimuth_error_deg: float
) -> tuple[Floats, Floats]:
    """The celestial north pole and the drive's northern end."""
    pole = axis_north_end(float(np.radians(latitude_deg)), 0.0, 0.0)
    axis = axis_north_end(
        float(np.radians(set_latitude_deg)), float(np.radians(azimuth_error_deg)), 0.0
    )
    return pole, axis


def _residual(star: Floats, excess: Floats, corrected_about: Floats) -> Floats:
    """Turn about the line of sight left by a drive that turns by `excess` more than the sky.

    The correction cancels the part of the excess across the line towards `corrected_about`; it
    turns the camera by its sine where the star lies as high above that axis's equator.
    """
    sine = np.sum(star * corrected_about, axis=-1)
    cosine = np.maximum(np.sqrt(np.maximum(1.0 - sine * sine, 0.0)), _SMALLEST_COSINE)
    along = star @ excess
    towards = (np.sum(corrected_about * excess, axis=-1) - sine * along) / cosine
    return np.asarray(SIDEREAL_DEG_PER_HOUR * (along - sine / cosine * towards))


def _carried_vertical(axis: Floats, platform_turn_deg: ArrayLike) -> Floats:
    """The telescope's vertical after the platform's turn: Rodrigues' formula about the axis."""
    turn = np.radians(np.asarray(platform_turn_deg, dtype=np.float64))[..., np.newaxis]
    up = np.array([0.0, 0.0, 1.0])
    westward = np.cross(axis, up)  # north, east, up is left-handed
    along = axis * float(up @ axis)
    return np.asarray(along + (up - along) * np.cos(turn) + westward * np.sin(turn))
