"""Figures a person types from a data sheet: label, unit and what is possible, in one table."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field, fields, replace
from enum import Enum
from typing import Any, TypeVar

from core.alignment.priors import RANGES
from core.language import marked, say

_KEY = "quantity"


class ImpossibleValue(ValueError):
    """The text is a sentence for the person."""


@dataclass(frozen=True)
class Quantity:
    """A figure of a record. `low` and `high` are possible themselves."""

    label: str
    unit: str
    low: float
    high: float
    advice: str = marked("correct it, or leave it empty if it is not known")


def quantity(label: str, unit: str, low: float, high: float, default: float | None = None) -> Any:
    """A dataclass field for a figure; empty (None) means not known."""
    return field(default=default, metadata={_KEY: Quantity(label, unit, low, high)})


def quantities(record: object) -> dict[str, Quantity]:
    """The figures of a record or its class, by name, in order: what a form shows."""
    return {
        one.name: one.metadata[_KEY]
        for one in fields(record)  # type: ignore[arg-type]
        if _KEY in one.metadata
    }


def check(record: object, name: str) -> None:
    """Raises `ImpossibleValue` for the first figure of `record` that cannot be."""
    for attribute, limits in quantities(record).items():
        value = getattr(record, attribute)
        if value is None or limits.low <= value <= limits.high:
            continue
        raise ImpossibleValue(_sentence(name, limits, value))


def _sentence(name: str, limits: Quantity, value: float) -> str:
    label, unit, advice = say(limits.label), said_unit(limits), say(limits.advice)
    if limits.low > 0.0 and value <= 0.0 and math.isfinite(value):
        return say(
            "{label} of “{name}” is given as {value:g}{unit}; it is above zero: {advice}.",
            label=label,
            name=name,
            value=value,
            unit=unit,
            advice=advice,
        )
    if limits.low > 0.0 and value <= 0.0:
        return say(
            "{label} of “{name}” is not a number; it is above zero: {advice}.",
            label=label,
            name=name,
            advice=advice,
        )
    if not math.isfinite(value):
        return say(
            "{label} of “{name}” is not a number; it lies between {low:g} and {high:g}{unit}: "
            "{advice}.",
            label=label,
            name=name,
            low=limits.low,
            high=limits.high,
            unit=unit,
            advice=advice,
        )
    return say(
        "{label} of “{name}” is given as {value:g}{unit}; it lies between {low:g} and "
        "{high:g}{unit}: {advice}.",
        label=label,
        name=name,
        value=value,
        low=limits.low,
        high=limits.high,
        unit=unit,
        advice=advice,
    )


def said_unit(limits: Quantity) -> str:
    """The unit behind a figure, its gap included; nothing for a bare number."""
    return say(limits.unit) if limits.unit else ""


# What a person owns or means to buy: mounts and what they carry, as data sheets describe it.
#
# Places on the mount, positive outward: `height_mm` from the saddle's face, away from the polar
# axis; `along_mm` along the tube from the middle of the dovetail bar, positive towards the sky.
# Both are of the part's centre of gravity. Empty figures (None) are not known, and whoever uses
# them says so.


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


class MountingPlace(Enum):
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
    place: MountingPlace = MountingPlace.TUBE
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


# All equipment of one person, and the sets it is used in.

Kind = TypeVar("Kind", bound=Record)


@dataclass(frozen=True, kw_only=True)
class EquipmentSet:
    """Things used together, by key: a mount and what goes on it, counterweights included.

    A set may name things still to be bought; they count only when asked for.
    """

    key: str
    name: str
    purpose: Purpose
    mount: str = ""
    parts: tuple[str, ...] = ()
    other: Mapping[str, Any] = field(default_factory=dict, hash=False)

    def __post_init__(self) -> None:
        if not self.key.strip() or not self.name.strip():
            raise ImpossibleValue(say("A set of equipment has no name; give it one."))
        twice = {part for part in self.parts if self.parts.count(part) > 1}
        if twice:
            raise ImpossibleValue(
                say(
                    "The set “{name}” names “{part}” twice; enter a second piece of the same "
                    "kind as a piece of its own.",
                    name=self.name,
                    part=min(twice),
                )
            )


@dataclass(frozen=True)
class Inventory:
    """Records in the person's order. Raises `ImpossibleValue` for keys used twice."""

    records: tuple[Record, ...] = ()
    sets: tuple[EquipmentSet, ...] = ()
    other: Mapping[str, Any] = field(default_factory=dict, hash=False)

    def __post_init__(self) -> None:
        seen: dict[str, str] = {}
        for one in self.things():
            if one.key in seen:
                raise ImpossibleValue(
                    say(
                        "“{name}” and “{other}” have the same key, {key}; each needs its own.",
                        name=one.name,
                        other=seen[one.key],
                        key=one.key,
                    )
                )
            seen[one.key] = one.name

    def things(self) -> tuple[Record | EquipmentSet, ...]:
        """Records, then sets."""
        return (*self.records, *self.sets)

    def of_kind(self, kind: type[Kind]) -> tuple[Kind, ...]:
        """All records of exactly this kind."""
        return tuple(one for one in self.records if type(one) is kind)

    def planned(self) -> tuple[Record, ...]:
        """What is still to be bought."""
        return tuple(one for one in self.records if one.is_planned)

    def with_record(self, record: Record) -> Inventory:
        """The record put in the place of the one with its key, or at the end."""
        if self.find(record.key) is None:
            return replace(self, records=(*self.records, record))
        changed = (record if one.key == record.key else one for one in self.records)
        return replace(self, records=tuple(changed))

    def without(self, key: str) -> Inventory:
        """The record or set taken out, and the record out of all sets."""
        return replace(
            self,
            records=tuple(one for one in self.records if one.key != key),
            sets=tuple(_set_without(one, key) for one in self.sets if one.key != key),
        )

    def find(self, key: str) -> Record | None:
        """None when there is no such thing."""
        return next((one for one in self.records if one.key == key), None)

    def mount_of(self, chosen: EquipmentSet) -> Mount | None:
        """None when the set has none, or none that is known."""
        found = self.find(chosen.mount)
        return found if isinstance(found, Mount) else None

    def parts_of(self, chosen: EquipmentSet, with_planned: bool) -> tuple[Part, ...]:
        """What the mount carries; planned purchases only on demand."""
        return tuple(_wanted(self._named(chosen), Part, with_planned))

    def counterweights_of(
        self, chosen: EquipmentSet, with_planned: bool
    ) -> tuple[Counterweight, ...]:
        """What balances it."""
        return tuple(_wanted(self._named(chosen), Counterweight, with_planned))

    def missing_from(self, chosen: EquipmentSet) -> tuple[str, ...]:
        """Keys the set names and nothing answers to."""
        named = (chosen.mount, *chosen.parts) if chosen.mount else chosen.parts
        return tuple(key for key in named if self.find(key) is None)

    def _named(self, chosen: EquipmentSet) -> Iterable[Record]:
        return (found for key in chosen.parts if (found := self.find(key)) is not None)


def _set_without(chosen: EquipmentSet, key: str) -> EquipmentSet:
    mount = "" if chosen.mount == key else chosen.mount
    return replace(chosen, mount=mount, parts=tuple(one for one in chosen.parts if one != key))


def _wanted(records: Iterable[Record], kind: type[Kind], with_planned: bool) -> Iterable[Kind]:
    for one in records:
        if isinstance(one, kind) and (with_planned or not one.is_planned):
            yield one
