"""What is to be photographed tonight, with what, and how much smear is acceptable."""

from __future__ import annotations

import math
from dataclasses import dataclass

from core.alignment.geometry import ARCMIN_PER_RAD, ARCSEC_PER_RAD, SIDEREAL_RATE_RAD_PER_S
from core.language import marked, say
from core.sky.refraction import Refraction
from core.sky.site import Air, Site

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
class Target:
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

    target: Target
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
