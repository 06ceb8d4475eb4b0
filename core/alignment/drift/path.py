"""The path of a leg's star: where a displaced axis would make it drift, at any time of the leg."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.alignment.drift.geometry import (
    altitude_azimuth_rad,
    axis_north_end,
    observed_direction,
    offsets_of_seen_rad,
)
from core.alignment.driftlog.records import Leg
from core.finding import Code, Finding
from core.sky.places import hour_angle_and_declination
from core.sky.refraction import Refraction
from core.sky.site import Air, Site
from core.units import ARCSEC_PER_RAD, SIDEREAL_ARCSEC_PER_MIN


class DriftFault(Code):
    """What no axis can cause."""

    TOO_FAST = "too fast"


Floats = NDArray[np.float64]

_ALIKE_RAD = np.deg2rad(10.0)
_DERIVATIVE_STEP_RAD = 1e-4  # the model is so smooth that the central difference errs by 1e-9
_STEPS = np.array([[0.0, 0.0], [1.0, 0.0], [-1.0, 0.0], [0.0, 1.0], [0.0, -1.0]])


@dataclass(frozen=True, eq=False)
class Path:
    """Directions (n + 1, 3) in which the star is seen, the leg's start first, and the mount's turn
    (n + 1,) since then, radians."""

    seen: Floats
    turned_rad: Floats
    latitude_rad: float

    def north_arcsec(self, axis_rad: Floats) -> Floats:
        """North offsets (…, n) since the leg's start for `axis_rad` (…, 2): azimuth, altitude."""
        axis = axis_north_end(self.latitude_rad, axis_rad[..., 0], axis_rad[..., 1])
        north, _ = offsets_of_seen_rad(self.seen, self.turned_rad, axis)
        return north[..., 1:] * ARCSEC_PER_RAD

    def east_arcsec(self, axis_rad: Floats) -> Floats:
        """East offsets (n,) since the leg's start for `axis_rad` (2,)."""
        axis = axis_north_end(self.latitude_rad, axis_rad[0], axis_rad[1])
        _, east = offsets_of_seen_rad(self.seen, self.turned_rad, axis)
        return east[1:] * ARCSEC_PER_RAD

    def upward(self) -> Floats:
        """Components (n, 3) of the plumb line, upward, along east, north and the line of sight."""
        pole = axis_north_end(self.latitude_rad, 0.0, 0.0)
        seen = self.seen[1:]
        east = np.cross(seen, pole)  # north, east, up is left-handed
        east /= np.linalg.norm(east, axis=1, keepdims=True)
        north = np.cross(east, seen)
        return np.column_stack([east[:, 2], north[:, 2], seen[:, 2]])

    def linearised(self, axis_rad: Floats) -> tuple[Floats, Floats]:
        """North offsets (n,) for one axis, and their derivatives (n, 2), arcsec per radian."""
        here, *beside = self.north_arcsec(axis_rad + _DERIVATIVE_STEP_RAD * _STEPS)
        azimuth_ahead, azimuth_behind, altitude_ahead, altitude_behind = beside
        slopes = np.column_stack([azimuth_ahead - azimuth_behind, altitude_ahead - altitude_behind])
        return here, slopes / (2.0 * _DERIVATIVE_STEP_RAD)


@dataclass(frozen=True, eq=False)
class ApparentTrack:
    """Hour angle west positive at `start_utc_s` and its rate; apparent declination."""

    start_utc_s: float
    end_utc_s: float
    hour_angle_rad: float
    rate_rad_per_s: float
    declination_rad: float
    latitude_rad: float
    refraction: Refraction

    @classmethod
    def of(cls, leg: Leg, site: Site, air: Air) -> ApparentTrack:
        """Apparent place for the middle of the leg, tracked from its first reading."""
        start_s, end_s = float(leg.utc_s[0]), float(leg.utc_s[-1])
        span_s = max(end_s - start_s, 60.0)
        hour_angle, declination = hour_angle_and_declination(
            leg.ra_deg, leg.dec_deg, site, np.array([start_s, start_s + span_s])
        )
        return cls(
            start_utc_s=start_s,
            end_utc_s=end_s,
            hour_angle_rad=float(hour_angle[0]),
            rate_rad_per_s=float((hour_angle[1] - hour_angle[0]) / span_s),
            declination_rad=float(declination),
            latitude_rad=float(np.deg2rad(site.latitude_deg)),
            refraction=Refraction.of(air),
        )

    def hour_angle_at(self, utc_s: Floats | float) -> Floats:
        """Hour angle, west positive, not wrapped within the leg."""
        elapsed_s = np.asarray(utc_s, dtype=float) - self.start_utc_s
        return np.asarray(self.hour_angle_rad + self.rate_rad_per_s * elapsed_s)

    def path(self, utc_s: Floats) -> Path:
        """The star's path at these times (n,), ready for any axis."""
        hour_angle = np.append(self.hour_angle_rad, self.hour_angle_at(utc_s))
        seen = observed_direction(
            hour_angle, self.declination_rad, self.latitude_rad, self.refraction
        )
        return Path(seen, hour_angle - self.hour_angle_rad, self.latitude_rad)

    def north_arcsec(self, utc_s: Floats, axis_rad: Floats) -> Floats:
        """North offsets (n,) since the leg's start for `axis_rad`: azimuth, altitude error."""
        return self.path(utc_s).north_arcsec(axis_rad)

    def middle(self) -> tuple[float, float, float]:
        """Hour angle (−π…π), observed altitude and azimuth, radians, at the middle of the leg."""
        hour_angle = self.hour_angle_at(0.5 * (self.start_utc_s + self.end_utc_s))
        seen = observed_direction(
            hour_angle, self.declination_rad, self.latitude_rad, self.refraction
        )
        altitude, azimuth = altitude_azimuth_rad(seen)
        wrapped = float((hour_angle + np.pi) % (2.0 * np.pi) - np.pi)
        return wrapped, float(altitude), float(azimuth)


def one_direction(tracks: Sequence[ApparentTrack]) -> bool:
    """Whether all legs show one direction of the axis: their middles at hour angles alike or 12 h
    apart. How long each lasts does not matter: a leg tells one rate.
    """
    angles = np.array([track.middle()[0] for track in tracks])
    apart = (angles - angles[0] + 0.5 * np.pi) % np.pi - 0.5 * np.pi
    return bool(np.ptp(apart) < _ALIKE_RAD)


# How fast a leg's star drifts, against the fastest that a displaced axis can make it.

# A star passing across the field of a mount that points a quarter of a turn beside the pole.


def north_arcsec_per_min(leg: Leg) -> float:
    """The usual northward speed of a leg of two readings or more, blind to single bumps.

    The median over pairs of readings a quarter of the leg apart, so that a step falls into a third
    of them at most; 0 where no two times differ.
    """
    apart = max(1, leg.utc_s.size // 4)
    minutes = (leg.utc_s[apart:] - leg.utc_s[:-apart]) / 60.0
    moved = (leg.north_arcsec[apart:] - leg.north_arcsec[:-apart])[minutes > 0.0]
    return float(np.median(moved / minutes[minutes > 0.0])) if moved.size else 0.0


def too_fast(leg: Leg) -> Finding | None:
    """Why no axis can cause the offsets; None where one can."""
    rate = abs(north_arcsec_per_min(leg))
    if rate <= SIDEREAL_ARCSEC_PER_MIN:
        return None
    return Finding.of(DriftFault.TOO_FAST, rate=rate, fastest=SIDEREAL_ARCSEC_PER_MIN)
