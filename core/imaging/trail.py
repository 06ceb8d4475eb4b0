"""The trails stars leave on the sensor while a displaced mount follows them."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property
from itertools import combinations
from typing import cast

import numpy as np
from numpy.typing import NDArray

from core.alignment.drift.geometry import (
    altitude_azimuth_rad,
    axis_north_end,
    direction,
    hemisphere_sign,
    true_direction,
)
from core.imaging.task import (
    DIRECTIONS,
    INSTANTS,
    Exposures,
    FieldDirections,
    Task,
    Vantage,
    seen_field,
)

# How the circle on which a guide star may stand passes the end of the mount's axis.
#
# Guiding holds a star by turning about both axes, and the field turns about that star meanwhile: to
# first order by the star's drift across the target's hour circle over its distance from the axis
# along it (its reach). Between the target and the axis the reach is least. Where the star stands
# 90° of right ascension from the target it vanishes: there neither axis moves the star towards the
# pole.

Floats = NDArray[np.float64]

_FAR = 2.6  # ratio from which even directions serve, to a third of a per cent
_CLEAR = 2.0  # times the gap at which a star may drift to where it cannot be brought back
_CLUSTER = 10  # directions on either side of a critical one
_NEAREST_RAD = 1e-3


@dataclass(frozen=True, eq=False)
class Passage:
    """For exposures (n,): where the axis is, as the sky has it without air.

    `towards_rad`: the way from the target to the elevated end, from north through east.
    `ratio`: tan of the distance from there over tan of the guide star's from the target; between
    −1 and 1 the circle goes round an end of the axis. `gap_rad`: from the circle to the nearer
    end, negative inside. `drift_rad`: how far the sky carries a star beside the axis.
    """

    towards_rad: Floats
    ratio: Floats
    gap_rad: Floats
    drift_rad: Floats
    offset_rad: float

    @classmethod
    def of(cls, exposures: Exposures, axis_rad: Floats, task: Task, vantage: Vantage) -> Passage:
        """For an axis error (2,), radians, and a guided task."""
        hour_angle, declination = exposures.hour_angle_rad, exposures.declination_rad
        latitude, end = vantage.latitude_rad, end_without_air(axis_rad, vantage)
        along = _dot(hour_angle, declination, latitude, end)
        north = _dot(hour_angle, declination + 0.5 * np.pi, latitude, end)
        east = _dot(hour_angle - 0.5 * np.pi, np.zeros_like(declination), latitude, end)
        across, offset = np.hypot(north, east), task.guide_star_offset_rad
        reach = across * np.cos(offset), along * np.sin(offset)
        pole = hemisphere_sign(latitude) * axis_north_end(latitude, 0.0, 0.0)
        apart = np.linalg.norm(end - pole)
        return cls(
            towards_rad=np.arctan2(east, north),
            ratio=reach[0] / np.where(np.abs(reach[1]) > 1e-12, reach[1], 1e-12),
            gap_rad=np.arcsin(reach[0] - np.abs(reach[1])),
            drift_rad=np.asarray(2.0 * apart * np.sin(np.minimum(exposures.turn_rad, np.pi) / 2.0)),
            offset_rad=offset,
        )

    @property
    def room_rad(self) -> float:
        """How much nearer an end may come before even directions no longer serve; also negative."""
        offset = np.tan(self.offset_rad)
        return float(np.min(np.arctan(np.abs(self.ratio) * offset)) - np.arctan(_FAR * offset))

    @property
    def clearance_rad(self) -> Floats:
        """How wide the gap (n,) has to be for the first order to hold."""
        return np.asarray(_CLEAR * np.cbrt(self.drift_rad**2 * np.sin(self.offset_rad)))

    def spaced_rad(self) -> Floats:
        """Directions (n, m) of the guide star, closer together where the axis is nearer.

        Trails are trigonometric polynomials of low degree in the evenly spaced angle behind them:
        1 over the reach is a Poisson kernel on the circle, which a Möbius map levels.
        """
        crowding = self._crowding()[:, np.newaxis]
        even = np.exp(2j * np.pi / DIRECTIONS * np.arange(DIRECTIONS))
        around = np.angle((even + crowding) / (1.0 + crowding * even))
        return np.asarray(self.towards_rad[:, np.newaxis] + around)

    def clustered_rad(self) -> Floats:
        """Directions (n, m) of the guide star about those of least and of no reach."""
        beside = np.geomspace(_NEAREST_RAD, np.pi, _CLUSTER)
        cluster = np.concatenate([-beside, [0.0], beside])
        none = np.arccos(np.clip(self.ratio, -1.0, 1.0))
        least = np.where(self.ratio < 0.0, np.pi, 0.0)
        middle = self.towards_rad + np.stack([none, -none, least])
        return np.concatenate([one[:, np.newaxis] + cluster for one in middle], axis=1)

    def _crowding(self) -> Floats:
        """Parameter (n,) of the Möbius map in (−1, 1); 0 leaves the directions even."""
        size = np.maximum(np.abs(self.ratio), 1.0)
        return np.asarray(np.sign(self.ratio) / (size + np.sqrt(size * size - 1.0)))


def end_without_air(axis_rad: Floats, vantage: Vantage) -> Floats:
    """Where among the stars, unrefracted, the elevated end of the axis points."""
    latitude = vantage.latitude_rad
    north_end = axis_north_end(latitude, float(axis_rad[0]), float(axis_rad[1]))
    altitude, azimuth = altitude_azimuth_rad(hemisphere_sign(latitude) * north_end)
    return direction(azimuth, altitude - vantage.refraction.lift_rad(altitude))


def _dot(hour_angle: Floats, declination: Floats, latitude_rad: float, end: Floats) -> Floats:
    as_one = cast(float, declination)  # it takes an array of declinations as well as one
    return np.asarray(true_direction(hour_angle, as_one, latitude_rad) @ end)


# The trails stars leave on the sensor while a displaced mount follows them.

_FINE_DIRECTIONS = 4 * DIRECTIONS


@dataclass(frozen=True, eq=False)
class Trails:
    """Places on the sensor, pixels north and east (towards the mount's axis and across).

    `centre` (n, c, k, 2) with c = 1 unguided, else one for each direction of the guide star;
    `corner` (n, m, k, 2). `is_smooth` as of the field that was seen.
    """

    centre: Floats
    corner: Floats
    is_smooth: bool

    def __sub__(self, other: Trails) -> Trails:
        return replace(self, centre=self.centre - other.centre, corner=self.corner - other.corner)

    def times(self, factor: float) -> Trails:
        """All places scaled."""
        return replace(self, centre=self.centre * factor, corner=self.corner * factor)

    def smear_px(self) -> tuple[Floats, Floats]:
        """Largest extent (n,) of the trail at the centre and at the worst corner."""
        parts = (_between(part) if self.is_smooth else part for part in (self.centre, self.corner))
        centre, corner = (extents(part).max(axis=1) for part in parts)
        return centre, corner


def trails(seen: FieldDirections, axis_rad: Floats, task: Task, vantage: Vantage) -> Trails:
    """Trails with the axis displaced by `axis_rad` (2,): azimuth and altitude error, radians.

    The mount turns about its axis at its tracking rate; when guided it also moves about both axes
    so that the guide star keeps its place. The camera is fixed to the mount.
    """
    frame = _axis_frame(vantage.latitude_rad, axis_rad)
    centre = _Equatorial.of(seen.centre, frame)
    corner = _Equatorial.of(seen.corner, frame)
    pointing = _Pointing.at_start(centre)
    if seen.guide is None:
        pointing = pointing.turned(task.tracking_rate * seen.turn_rad)
    else:
        pointing = pointing.holding(_Equatorial.of(seen.guide, frame))
    scale = task.optics.px_per_rad
    return Trails(pointing.plane(centre) * scale, pointing.plane(corner) * scale, seen.is_smooth)


def extents(trail: Floats) -> Floats:
    """Largest distance (n, m) between two points of each trail (n, m, k, 2)."""
    north, east = np.moveaxis(trail, (3, 2), (0, 1))
    largest = np.zeros(trail.shape[:2])
    for one, other in combinations(range(trail.shape[2]), 2):
        apart = (north[one] - north[other]) ** 2 + (east[one] - east[other]) ** 2
        np.maximum(largest, apart, out=largest)
    return np.sqrt(largest)


def _between(trail: Floats) -> Floats:
    """Trails (n, f, k, 2) in finer directions too."""
    if trail.shape[1] == 1:
        return trail
    return np.moveaxis(np.tensordot(_all_round(), trail, (1, 1)), 0, 1)


def _all_round() -> Floats:
    """Trigonometric interpolation (f, m) from the directions computed to finer ones."""
    given = np.arange(DIRECTIONS) / DIRECTIONS
    wanted = np.arange(_FINE_DIRECTIONS) / _FINE_DIRECTIONS
    apart = 2.0 * np.pi * (wanted[:, np.newaxis] - given)
    waves = np.arange(1, DIRECTIONS // 2 + 1)[:, np.newaxis, np.newaxis]
    return np.asarray((1.0 + 2.0 * np.cos(waves * apart).sum(axis=0)) / DIRECTIONS)


def _axis_frame(latitude_rad: float, axis_rad: Floats) -> Floats:
    """Columns (3, 3): two perpendicular directions, the second east of the first, and the axis."""
    axis = axis_north_end(latitude_rad, float(axis_rad[0]), float(axis_rad[1]))
    outward = np.eye(3)[np.argmin(np.abs(axis))]
    outward = outward - (outward @ axis) * axis
    outward /= np.linalg.norm(outward)
    return np.stack([outward, np.cross(outward, axis), axis], axis=-1)


@dataclass(frozen=True, eq=False)
class _Equatorial:
    """Directions about the mount's axis: component across it (complex, east = i) and along it."""

    across: NDArray[np.complex128]
    along: Floats

    @classmethod
    def of(cls, seen: Floats, frame: Floats) -> _Equatorial:
        turned = seen @ frame
        return cls(turned[..., 0] + 1j * turned[..., 1], turned[..., 2])


@dataclass(frozen=True, eq=False)
class _Pointing:
    """Where the camera points: unit complex `heading` about the axis, and its declination."""

    heading: NDArray[np.complex128]
    sin_dec: Floats
    cos_dec: Floats

    @classmethod
    def at_start(cls, centre: _Equatorial) -> _Pointing:
        """On the target at the first instant."""
        across, along = centre.across[..., :1], centre.along[..., :1]
        size = np.maximum(np.abs(across), 1e-12)
        return cls(across / size, along, size)

    def camera(self, star: _Equatorial) -> tuple[Floats, Floats, Floats]:
        """Components of a star's direction: towards the pointing, north, and east of it."""
        ahead = star.across * np.conj(self.heading)
        depth = self.sin_dec * star.along + self.cos_dec * ahead.real
        return depth, self.cos_dec * star.along - self.sin_dec * ahead.real, ahead.imag

    def plane(self, star: _Equatorial) -> Floats:
        """Places north and east on the tangent plane."""
        depth, north, east = self.camera(star)
        return np.stack([north / depth, east / depth], axis=-1)

    def turned(self, angle_rad: Floats) -> _Pointing:
        """After the drive has turned westward."""
        return _Pointing(self.heading * np.exp(-1j * angle_rad), self.sin_dec, self.cos_dec)

    def holding(self, guide: _Equatorial) -> _Pointing:
        """At every instant so that the guide star stays where it was at the first.

        Its height along the axis fixes the declination, its heading then the turn.
        """
        first = _Equatorial(guide.across[..., :1], guide.along[..., :1])
        depth, north, east = self.camera(first)
        reach = np.hypot(depth, north)
        sine = np.clip(guide.along / reach, -1.0, 1.0)
        declination = self._declination(np.arcsin(sine), np.arctan2(north, depth))
        sin_dec, cos_dec = np.sin(declination), np.cos(declination)
        own = (cos_dec * depth - sin_dec * north) + 1j * east
        heading = guide.across * np.conj(own)
        return _Pointing(heading / np.maximum(np.abs(heading), 1e-12), sin_dec, cos_dec)

    def _declination(self, slant: Floats, tilt: Floats) -> Floats:
        """Of the two declinations that serve, the one that began at the present pointing."""
        begun = np.arctan2(self.sin_dec, self.cos_dec) + tilt
        return np.where(np.cos(begun) >= 0.0, slant, np.pi - slant) - tilt


# The field of a task, looked at with the guide star wherever it does worst.

_CLOSER = 3  # times: within 1 %
_WORST = 3  # directions that are looked at more closely
_BETWEEN = np.array([0.2, 0.4, 0.6, 0.8])


class Watched:
    """Exposures of a task from a vantage, for any error of the axis.

    Far from the axis seven even directions of the guide star tell all others. Nearer they crowd
    towards it, and where its circle touches or encloses an end of the axis the worst is searched
    for. A star that the two axes cannot bring back is followed as near as they can.
    """

    def __init__(
        self,
        exposures: Exposures,
        task: Task,
        vantage: Vantage,
        instants: int = INSTANTS,
        closer: int = _CLOSER,
    ) -> None:
        """`closer`: how often the search goes on between the worst directions found so far."""
        self._exposures, self._task, self._vantage = exposures, task, vantage
        self._instants, self._closer = instants, closer
        self._room_rad = float("inf")
        if task.is_guided and task.guide_star_offset_rad > 0.0:
            self._room_rad = Passage.of(exposures, np.zeros(2), task, vantage).room_rad

    @cached_property
    def _even(self) -> FieldDirections:
        return seen_field(self._exposures, self._task, self._vantage, None, self._instants)

    def is_far(self, axis_rad: Floats) -> bool:
        """Whether the guide star keeps away from an axis with this error (2,), radians."""
        return self._passage(axis_rad) is None

    def seen(self, axis_rad: Floats) -> FieldDirections:
        """The field from the directions that matter for this error of the axis."""
        passage = self._passage(axis_rad)
        if passage is None:
            return self._even
        if np.all(passage.gap_rad > passage.clearance_rad):
            return self._from(passage.spaced_rad())
        return self._searched(axis_rad, passage.clustered_rad())

    def trails(self, axis_rad: Floats) -> Trails:
        """With the axis there."""
        return self.trails_in(self.seen(axis_rad), axis_rad)

    def trails_in(self, seen: FieldDirections, axis_rad: Floats) -> Trails:
        """With the axis there, in a field seen for another, so that the two can be compared."""
        return trails(seen, axis_rad, self._task, self._vantage)

    def _passage(self, axis_rad: Floats) -> Passage | None:
        if float(np.abs(axis_rad).sum()) < self._room_rad:
            return None
        passage = Passage.of(self._exposures, axis_rad, self._task, self._vantage)
        return None if passage.room_rad > 0.0 else passage

    def _from(self, guide_rad: Floats) -> FieldDirections:
        return seen_field(self._exposures, self._task, self._vantage, guide_rad, self._instants)

    def _searched(self, axis_rad: Floats, guide_rad: Floats) -> FieldDirections:
        """With more directions wherever the corner smears most."""
        seen = replace(self._from(guide_rad), is_smooth=False)
        smear = self._smear_px(seen, axis_rad)
        for _ in range(self._closer):
            finer_rad = _beside_the_worst(guide_rad, smear)
            finer = self._from(finer_rad)
            guide_rad = np.concatenate([guide_rad, finer_rad], axis=1)
            smear = np.concatenate([smear, self._smear_px(finer, axis_rad)], axis=1)
            seen = seen.joined(finer)
        return seen

    def _smear_px(self, seen: FieldDirections, axis_rad: Floats) -> Floats:
        return extents(self.trails_in(seen, axis_rad).corner)


def _beside_the_worst(around_rad: Floats, smear: Floats) -> Floats:
    """Directions (n, 8 _WORST) between the worst of all (n, m) and their neighbours."""
    order = np.argsort(around_rad % (2.0 * np.pi), axis=1)
    around = np.take_along_axis(around_rad % (2.0 * np.pi), order, axis=1)
    size = np.take_along_axis(smear, order, axis=1)
    before, after = np.roll(around, 1, axis=1), np.roll(around, -1, axis=1)
    before[:, 0] -= 2.0 * np.pi
    after[:, -1] += 2.0 * np.pi
    is_peak = (size >= np.roll(size, 1, axis=1)) & (size >= np.roll(size, -1, axis=1))
    worst = np.argsort(np.where(is_peak, -size, 1.0), axis=1)[:, :_WORST]
    low, top, high = (np.take_along_axis(part, worst, 1) for part in (before, around, after))
    sides = [part[..., np.newaxis] + (end - part)[..., np.newaxis] * _BETWEEN
             for part, end in ((low, top), (top, high))]  # fmt: skip
    return np.concatenate(sides, axis=1).reshape(around.shape[0], -1)
