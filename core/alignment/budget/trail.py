"""The trails stars leave on the sensor while a displaced mount follows them."""

from __future__ import annotations

from dataclasses import dataclass, replace
from itertools import combinations

import numpy as np
from numpy.typing import NDArray

from core.alignment.budget.field import DIRECTIONS, SeenField
from core.alignment.budget.task import Task, Vantage
from core.alignment.geometry import axis_north_end

Floats = NDArray[np.float64]

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


def trails(seen: SeenField, axis_rad: Floats, task: Task, vantage: Vantage) -> Trails:
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
