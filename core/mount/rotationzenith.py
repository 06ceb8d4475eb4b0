"""Where an alt-azimuth drive is too slow: the blind zone about the zenith."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.language import say
from core.mount.rotation import SIDEREAL_DEG_PER_HOUR
from core.mount.rotationtrack import Track

Floats = NDArray[np.float64]

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


def losses(track: Track, limit_deg_per_s: float) -> list[Loss]:
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


def _fine_path_deg(track: Track, times: Floats) -> tuple[Floats, Floats]:
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
