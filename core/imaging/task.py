"""What is to be photographed tonight, with what, and where its stars are seen."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import cast

import numpy as np
from numpy.typing import NDArray

from core.alignment.drift.geometry import observed_direction
from core.language import marked, say
from core.sky.refraction import Refraction
from core.sky.site import Air, Site
from core.units import ARCMIN_PER_RAD, ARCSEC_PER_RAD, SIDEREAL_RATE_RAD_PER_S

# What is to be photographed tonight, with what, and how much smear is acceptable.

LONGEST_EXPOSURE_S = 6.0 * 3600.0
LOWEST_ALTITUDE_DEG = 10.0  # below, the air's lift is too uncertain to promise anything

_RANGES = {
    "declination_deg": (-90.0, 90.0, marked("The target's declination"), "°"),
    "first_hour_angle_deg": (-360.0, 360.0, marked("The first hour angle"), "°"),
    "last_hour_angle_deg": (-360.0, 360.0, marked("The last hour angle"), "°"),
    "focal_length_mm": (1.0, 100_000.0, marked("The focal length"), " mm"),
    "pixel_um": (0.1, 1000.0, marked("The pixel size"), " µm"),
    "exposure_s": (0.001, LONGEST_EXPOSURE_S, marked("The exposure"), " s"),
    "limit_px": (0.01, 100.0, marked("The smear allowed"), marked(" pixels")),
    "tracking_rate": (
        0.0,
        2.0,
        marked("The mount's tracking rate"),
        marked(" of the sidereal rate"),
    ),
    "width_px": (1, 1_000_000, marked("The width of the sensor"), marked(" pixels")),
    "height_px": (1, 1_000_000, marked("The height of the sensor"), marked(" pixels")),
}


class UnusableTask(ValueError):
    """The text is a sentence for the person."""


def _check(record: object) -> None:
    for name, value in vars(record).items():
        low, high, what, unit = _RANGES.get(name, (-math.inf, math.inf, name, ""))
        if name in _RANGES and not low <= value <= high:  # not-a-number fails too
            raise UnusableTask(
                say(
                    "{what} is given as {value:g}{unit}; it lies between {low:g} and "
                    "{high:g}{unit}.",
                    what=say(what),
                    value=value,
                    unit=say(unit),
                    low=low,
                    high=high,
                )
            )


@dataclass(frozen=True)
class ImagedTarget:
    """Apparent declination (of date) and the hour angles, west positive, between which it is taken.

    The last hour angle is not before the first; a span over lower culmination may pass 180°.
    """

    declination_deg: float
    first_hour_angle_deg: float
    last_hour_angle_deg: float
    name: str = ""

    def __post_init__(self) -> None:
        _check(self)
        if not 0.0 <= self.last_hour_angle_deg - self.first_hour_angle_deg <= 360.0:
            raise UnusableTask(
                say(
                    "The last hour angle is before the first, or more than a day after it; "
                    "give them in the order of time, east of the meridian negative."
                )
            )


@dataclass(frozen=True)
class Optics:
    """Telescope and sensor; `pixel_um` is the binned pixel, the counts are of binned pixels."""

    focal_length_mm: float
    pixel_um: float
    width_px: int
    height_px: int

    def __post_init__(self) -> None:
        _check(self)
        if self.half_diagonal_rad > math.radians(30.0):
            raise UnusableTask(
                say(
                    "The field is more than 60° across; check the focal length, the pixel "
                    "size and the number of pixels."
                )
            )

    @property
    def px_per_rad(self) -> float:
        """Pixels per unit of the tangent plane."""
        return self.focal_length_mm * 1000.0 / self.pixel_um

    @property
    def scale_arcsec_per_px(self) -> float:
        """At the centre of the field."""
        return ARCSEC_PER_RAD / self.px_per_rad

    @property
    def half_diagonal_rad(self) -> float:
        """Angle from the centre to a corner."""
        return math.atan(math.hypot(self.width_px, self.height_px) / 2.0 / self.px_per_rad)


@dataclass(frozen=True)
class Task:
    """One kind of exposure of one target.

    `guide_star_to_far_corner_arcmin`: from the guide star to the corner of the field farthest from
    it; None means unguided. The farthest corner is at least half a diagonal away, which is where it
    is when the guide star stands in the middle. `limit_px`: smear allowed in one exposure.
    `tracking_rate`: the mount's, in sidereal rates; guiding overrides it.
    """

    target: ImagedTarget
    optics: Optics
    exposure_s: float
    guide_star_to_far_corner_arcmin: float | None = None
    limit_px: float = 0.5
    tracking_rate: float = 1.0

    def __post_init__(self) -> None:
        _check(self)
        if self.is_guided and not -1e-9 <= self.guide_star_offset_rad <= math.radians(60.0):
            half_diagonal_arcmin = self.optics.half_diagonal_rad * ARCMIN_PER_RAD
            raise UnusableTask(
                say(
                    "The guide star is given as {given:g}′ from the farthest corner; that "
                    "corner is {corner:.1f}′ from the middle of the field, so the figure is "
                    "at least that, and at most 60° more.",
                    given=self.guide_star_to_far_corner_arcmin,
                    corner=half_diagonal_arcmin,
                )
            )

    @property
    def is_guided(self) -> bool:
        """A guide star is held in its place."""
        return self.guide_star_to_far_corner_arcmin is not None

    @property
    def guide_star_offset_rad(self) -> float:
        """From the middle of the field to the guide star; 0 when unguided."""
        if self.guide_star_to_far_corner_arcmin is None:
            return 0.0
        whole = self.guide_star_to_far_corner_arcmin / ARCMIN_PER_RAD
        return whole - self.optics.half_diagonal_rad

    @property
    def exposure_turn_rad(self) -> float:
        """How far the sky turns in one exposure."""
        return self.exposure_s * SIDEREAL_RATE_RAD_PER_S


@dataclass(frozen=True)
class Vantage:
    """Latitude and what the air does there."""

    latitude_rad: float
    refraction: Refraction

    @classmethod
    def of(cls, site: Site, air: Air) -> Vantage:
        """For a place and the air above it."""
        return cls(math.radians(site.latitude_deg), Refraction.of(air))

    @property
    def pole_lift_rad(self) -> float:
        """How far the air lifts the elevated pole."""
        pole = abs(self.latitude_rad)
        return float(self.refraction.observed_altitude_rad(pole)) - pole


# Where the stars of a field are seen during exposures, before any mount enters.

Floats = NDArray[np.float64]

DIRECTIONS = 7  # round the field; where trails vary smoothly with it the rest is interpolated
INSTANTS = 5
_EXPOSURES = 13  # looked at within a span of hour angles


@dataclass(frozen=True, eq=False)
class Exposures:
    """Exposures to judge: hour angle at the beginning, declination, duration; each (n,)."""

    hour_angle_rad: Floats
    declination_rad: Floats
    duration_s: Floats

    @classmethod
    def over_span(cls, task: Task, vantage: Vantage) -> Exposures:
        """Evenly over the target's span, those that stay above 10°; UnusableTask if none does."""
        target = task.target
        first, last = np.deg2rad([target.first_hour_angle_deg, target.last_hour_angle_deg])
        start = np.linspace(first, max(first, last - task.exposure_turn_rad), _EXPOSURES)
        start = start[:1] if start[-1] == start[0] else start
        declination = float(np.deg2rad(target.declination_deg))
        up = start[_stays_up(start, declination, task.exposure_turn_rad, vantage)]
        if up.size == 0:
            raise UnusableTask(
                say(
                    "At declination {declination:g}° the target is never above {lowest:g}° "
                    "for a whole exposure between hour angles {first:g}° and {last:g}°; "
                    "choose other hours, or check the latitude.",
                    declination=target.declination_deg,
                    lowest=LOWEST_ALTITUDE_DEG,
                    first=target.first_hour_angle_deg,
                    last=target.last_hour_angle_deg,
                )
            )
        return cls(up, np.full_like(up, declination), np.full_like(up, task.exposure_s))

    @property
    def turn_rad(self) -> Floats:
        """How far the sky turns in each, (n,)."""
        return SIDEREAL_RATE_RAD_PER_S * self.duration_s

    def some(self, chosen: NDArray[np.bool]) -> Exposures:
        """Those that are `chosen` (n,)."""
        return Exposures(
            self.hour_angle_rad[chosen], self.declination_rad[chosen], self.duration_s[chosen]
        )


def _stays_up(start: Floats, declination: float, turn: float, vantage: Vantage) -> NDArray[np.bool]:
    """Whether each exposure begins and ends high enough."""
    ends = np.stack([start, start + turn])
    seen = observed_direction(ends, declination, vantage.latitude_rad, vantage.refraction)
    return np.asarray((seen[..., 2] >= np.sin(np.deg2rad(LOWEST_ALTITUDE_DEG))).all(axis=0))


@dataclass(frozen=True, eq=False)
class FieldDirections:
    """Unit vectors north, east, up: `centre` (n, 1, k, 3), `corner` and `guide` (n, m, k, 3).

    n exposures, m directions round the field, k instants of an exposure. The corner lies half a
    diagonal from the centre, the guide star on the other side of it; how the sensor is turned and
    where the guide star stands is left open, so that the worst of all directions can be taken.
    `turn_rad` (n, 1, k): how far the sky has turned. `guide` is None when unguided. `is_smooth`:
    the directions are placed so that trails between them may be interpolated evenly.
    """

    centre: Floats
    corner: Floats
    guide: Floats | None
    turn_rad: Floats
    is_smooth: bool = True

    def joined(self, other: FieldDirections) -> FieldDirections:
        """With the directions of another field of the same exposures, both guided."""
        assert self.guide is not None
        assert other.guide is not None
        corner = np.concatenate([self.corner, other.corner], axis=1)
        return replace(self, corner=corner, guide=np.concatenate([self.guide, other.guide], axis=1))


def seen_field(
    exposures: Exposures,
    task: Task,
    vantage: Vantage,
    guide_rad: Floats | None = None,
    instants: int = INSTANTS,
) -> FieldDirections:
    """The field of `task` during `exposures`; their durations count, not the task's.

    `guide_rad` (n, m): directions in which the guide star stands, from north through east; evenly
    all round when None.
    """
    even = np.arange(DIRECTIONS)[np.newaxis] * (2.0 * np.pi / DIRECTIONS)
    around = even if guide_rad is None else guide_rad
    turn = exposures.turn_rad[:, np.newaxis, np.newaxis] * np.linspace(0.0, 1.0, instants)
    guide = np.stack([np.cos(around), np.sin(around)])
    return FieldDirections(
        _seen(exposures, np.zeros((2, 1, 1)), turn, vantage),
        _seen(exposures, -np.tan(task.optics.half_diagonal_rad) * guide, turn, vantage),
        _seen(exposures, np.tan(task.guide_star_offset_rad) * guide, turn, vantage)
        if task.is_guided
        else None,
        turn,
    )


def _seen(exposures: Exposures, tangent: Floats, turn: Floats, vantage: Vantage) -> Floats:
    """Directions (n, m, k, 3) of stars at tangent-plane places (2, n or 1, m), north and east.

    Inverse of the gnomonic projection: Smart, Spherical Astronomy (1977), section 161; from memory.
    """
    north, east = tangent[..., np.newaxis]
    centre = exposures.declination_rad[:, np.newaxis, np.newaxis]
    outward = np.cos(centre) - north * np.sin(centre)
    behind = np.arctan2(east, outward)
    declination = np.arctan2(np.sin(centre) + north * np.cos(centre), np.hypot(outward, east))
    hour_angle = exposures.hour_angle_rad[:, np.newaxis, np.newaxis] - behind + turn
    hour_angle, declination = np.broadcast_arrays(hour_angle, declination)
    as_one = cast(float, declination)  # it takes an array of declinations as well as one
    return observed_direction(hour_angle, as_one, vantage.latitude_rad, vantage.refraction)
