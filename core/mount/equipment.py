"""What a person owns or means to buy: mounts and what they carry, as data sheets describe it.

Places on the mount, positive outward: `height_mm` from the saddle's face, away from the polar axis;
`along_mm` along the tube from the middle of the dovetail bar, positive towards the sky. Both are of
the part's centre of gravity. Empty figures (None) are not known, and whoever uses them says so.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import Enum
from typing import Any

from core.alignment.axis.priors import RANGES
from core.language import marked, say
from core.mount.quantities import ImpossibleValue, check, quantity


class Purpose(Enum):
    """What a set of equipment, or a mount, is for."""

    OBSERVING = marked("observing")
    PLANETARY = marked("planetary")
    DEEP_SKY = marked("deep-sky imaging")


class MountKind(Enum):
    """How the axes stand."""

    GERMAN_EQUATORIAL = marked("German equatorial")
    FORK_ON_WEDGE = marked("fork on a wedge")
    ALT_AZIMUTH = marked("alt-azimuth")
    DOBSONIAN = marked("Dobsonian")

    @property
    def is_equatorial(self) -> bool:
        """One axis is meant to point at the pole."""
        return self in (MountKind.GERMAN_EQUATORIAL, MountKind.FORK_ON_WEDGE)


class Place(Enum):
    """What a part rides on."""

    TUBE = "on the tube"  # slides with the dovetail
    SADDLE = "on the saddle, beside the tube"
    HEAD = "on the mount's head, not turned by its axes"
    GROUND = "on the tripod or the ground"


@dataclass(frozen=True, kw_only=True)
class Record:
    """One thing. `key` tells it from all others; `other` holds what a file said beyond this form.

    `is_planned`: still to be bought. `is_invented`: an example, no real product. `price`: the
    person's own figure, in whatever currency the person keeps to.
    """

    key: str
    name: str
    is_planned: bool = False
    is_invented: bool = False
    price: float | None = quantity(marked("The price"), "", 0.0, 1e9)
    note: str = ""
    other: Mapping[str, Any] = field(default_factory=dict, hash=False)

    def __post_init__(self) -> None:
        if not self.key.strip() or not self.name.strip():
            raise ImpossibleValue(say("A piece of equipment has no name; give it one."))
        check(self, self.name)


@dataclass(frozen=True, kw_only=True)
class Part(Record):
    """Anything with a mass that goes on a mount."""

    mass_kg: float | None = quantity(marked("The mass"), " kg", 0.001, 500.0)
    place: Place = Place.TUBE
    along_mm: float | None = quantity(marked("The position along the tube"), " mm", -5000.0, 5000.0)
    height_mm: float | None = quantity(
        marked("The height above the saddle"), " mm", -1000.0, 3000.0
    )


@dataclass(frozen=True, kw_only=True)
class Telescope(Part):
    """A tube with its rings and dovetail bar.

    `flexure_arcsec_per_g`: how far it yields when gravity turns round in it.
    """

    aperture_mm: float | None = quantity(marked("The aperture"), " mm", 5.0, 5000.0)
    focal_length_mm: float | None = quantity(marked("The focal length"), " mm", 5.0, 50_000.0)
    length_mm: float | None = quantity(marked("The length"), " mm", 10.0, 10_000.0)
    diameter_mm: float | None = quantity(marked("The outer diameter"), " mm", 5.0, 5000.0)
    dovetail_length_mm: float | None = quantity(
        marked("The dovetail's length"), " mm", 10.0, 3000.0
    )
    flexure_arcsec_per_g: float | None = quantity(
        marked("The flexure"), marked("″ per g"), *RANGES["flexure_arcsec_per_g"][:2]
    )


@dataclass(frozen=True, kw_only=True)
class Camera(Part):
    """A sensor. Pixels are square."""

    pixel_um: float | None = quantity(marked("The pixel size"), " µm", 0.3, 100.0)
    width_px: int | None = quantity(marked("The width"), marked(" pixels"), 1, 200_000)
    height_px: int | None = quantity(marked("The height"), marked(" pixels"), 1, 200_000)


@dataclass(frozen=True, kw_only=True)
class Guider(Camera):
    """A guide camera; with its own guide telescope, or without a focal length when off-axis."""

    focal_length_mm: float | None = quantity(marked("The guide focal length"), " mm", 5.0, 50_000.0)


@dataclass(frozen=True, kw_only=True)
class Eyepiece(Part):
    """An eyepiece; only its mass loads the mount."""

    focal_length_mm: float | None = quantity(marked("The focal length"), " mm", 1.0, 200.0)
    apparent_field_deg: float | None = quantity(marked("The apparent field"), "°", 5.0, 150.0)


@dataclass(frozen=True, kw_only=True)
class Accessory(Part):
    """Finder, focuser, filter wheel, computer, dew heater, cable, plate, rings."""


@dataclass(frozen=True, kw_only=True)
class Counterweight(Record):
    """A weight for the counterweight bar; not part of the payload."""

    mass_kg: float | None = quantity(marked("The mass"), " kg", 0.001, 200.0)
    thickness_mm: float | None = quantity(marked("The thickness along the bar"), " mm", 1.0, 1000.0)


@dataclass(frozen=True, kw_only=True)
class Mount(Record):
    """A mount as its data sheet has it; yes-or-no figures may be unknown too.

    `capacity_kg`: listed payload, counterweights not counted. `capacity_distance_mm`: distance of
    the load from the polar axis at which it is listed. `periodic_error_arcsec`: peak to peak.
    `past_meridian_deg`: how far it may track past the meridian. `saddle_distance_mm`: polar axis to
    the saddle's face. `bar_start_mm`: polar axis to where a weight's inner face can go;
    `bar_length_mm`: from there to the end (toe stop in place); `bar_mass_kg`: of that length.
    `head_imbalance_kg_m`: of the turning head itself, positive on the telescope's side.
    `ease_of_use`: the person's own mark, 1 (a struggle) to 5 (out and observing at once).
    """

    kind: MountKind
    is_driven: bool | None = None
    has_goto: bool | None = None
    has_object_database: bool | None = None
    has_autoguider_port: bool | None = None
    has_computer_control: bool | None = None
    has_error_training: bool | None = None
    capacity_kg: float | None = quantity(marked("The listed capacity"), " kg", 0.1, 2000.0)
    capacity_distance_mm: float | None = quantity(
        marked("The capacity's distance"), " mm", 1.0, 3000.0
    )
    own_mass_kg: float | None = quantity(marked("The own weight"), " kg", 0.1, 5000.0)
    periodic_error_arcsec: float | None = quantity(marked("The periodic error"), "″", 0.0, 3600.0)
    worm_period_s: float | None = quantity(marked("The worm period"), " s", 1.0, 36_000.0)
    pointing_accuracy_arcmin: float | None = quantity(
        marked("The pointing accuracy"), "′", 0.001, 600.0
    )
    drive_limit_deg_per_s: float | None = quantity(
        marked("The drive speed limit"), "°/s", 0.001, 100.0
    )
    past_meridian_deg: float | None = quantity(marked("The way past the meridian"), "°", 0.0, 180.0)
    azimuth_bolt_arcmin_per_turn: float | None = quantity(
        marked("The azimuth bolt"), marked("′/turn"), 0.1, 1200.0
    )
    altitude_bolt_arcmin_per_turn: float | None = quantity(
        marked("The altitude bolt"), marked("′/turn"), 0.1, 1200.0
    )
    saddle_distance_mm: float | None = quantity(marked("The saddle's distance"), " mm", 1.0, 3000.0)
    saddle_length_mm: float | None = quantity(marked("The saddle's length"), " mm", 5.0, 2000.0)
    bar_start_mm: float | None = quantity(marked("The bar's beginning"), " mm", 1.0, 3000.0)
    bar_length_mm: float | None = quantity(marked("The bar's length"), " mm", 1.0, 3000.0)
    bar_mass_kg: float | None = quantity(marked("The bar's mass"), " kg", 0.001, 200.0)
    head_imbalance_kg_m: float | None = quantity(
        marked("The head's imbalance"), " kg m", -50.0, 50.0
    )
    ease_of_use: float | None = quantity(marked("The ease of use"), "", 1.0, 5.0)
