"""Invented equipment to try everything with: no products, and all figures made up."""

from __future__ import annotations

from dataclasses import replace
from typing import TypeVar

from core.language import marked, say
from core.mount.equipment import (
    Accessory,
    Camera,
    Counterweight,
    EquipmentSet,
    Guider,
    Inventory,
    Mount,
    MountingPlace,
    MountKind,
    Purpose,
    Record,
    Telescope,
)

# Invented mounts to try the comparison with. None is a product; every figure is made up.

Example = TypeVar("Example", bound=Record)

INVENTED_MOUNTS = (
    Mount(
        key="example-meadow",
        name=marked("Example: meadow equatorial"),
        is_invented=True,
        note=marked("Invented; no real product."),
        kind=MountKind.GERMAN_EQUATORIAL,
        is_driven=True,
        has_goto=True,
        has_object_database=True,
        has_autoguider_port=True,
        has_computer_control=True,
        has_error_training=True,
        capacity_kg=16.0,
        own_mass_kg=13.0,
        periodic_error_arcsec=18.0,
        worm_period_s=480.0,
        pointing_accuracy_arcmin=5.0,
        ease_of_use=2.0,
        price=1500.0,
    ),
    Mount(
        key="example-hill",
        name=marked("Example: hill equatorial"),
        is_invented=True,
        note=marked("Invented; no real product."),
        kind=MountKind.GERMAN_EQUATORIAL,
        is_driven=True,
        has_goto=False,
        has_autoguider_port=True,
        has_error_training=False,
        capacity_kg=9.0,
        own_mass_kg=7.0,
        periodic_error_arcsec=40.0,
        ease_of_use=3.0,
        price=600.0,
    ),
    Mount(
        key="example-balcony",
        name=marked("Example: balcony alt-azimuth"),
        is_invented=True,
        note=marked("Invented; no real product."),
        kind=MountKind.ALT_AZIMUTH,
        is_driven=True,
        has_goto=True,
        has_object_database=True,
        has_autoguider_port=False,
        capacity_kg=6.0,
        own_mass_kg=5.0,
        pointing_accuracy_arcmin=10.0,
        ease_of_use=5.0,
        price=500.0,
    ),
)


def said_example(example: Example) -> Example:
    """An invented record with its name and note in the person's language."""
    return replace(example, name=say(example.name), note=say(example.note))


# An invented set of equipment to try everything with: no products, and all figures made up.

_NOTE = marked("Invented; no real product.")
_MEADOW, *_OTHERS = INVENTED_MOUNTS

_MEADOW_MEASURED = replace(
    _MEADOW,
    capacity_distance_mm=230.0,
    past_meridian_deg=10.0,
    azimuth_bolt_arcmin_per_turn=42.0,
    altitude_bolt_arcmin_per_turn=55.0,
    saddle_distance_mm=165.0,
    saddle_length_mm=120.0,
    bar_start_mm=90.0,
    bar_length_mm=300.0,
    bar_mass_kg=1.4,
)
_CARRIED: tuple[Record, ...] = (
    Telescope(
        key="example-tube",
        name=marked("Example: 100 mm refractor"),
        is_invented=True,
        note=_NOTE,
        mass_kg=5.2,
        along_mm=35.0,
        height_mm=75.0,
        aperture_mm=100.0,
        focal_length_mm=600.0,
        length_mm=640.0,
        diameter_mm=110.0,
        dovetail_length_mm=300.0,
    ),
    Camera(
        key="example-camera",
        name=marked("Example: camera"),
        is_invented=True,
        note=_NOTE,
        mass_kg=0.7,
        along_mm=-360.0,
        height_mm=75.0,
        pixel_um=3.8,
        width_px=5200,
        height_px=3500,
    ),
    Guider(
        key="example-guider",
        name=marked("Example: guide telescope"),
        is_invented=True,
        note=_NOTE,
        mass_kg=0.8,
        along_mm=20.0,
        height_mm=170.0,
        pixel_um=3.0,
        width_px=1300,
        height_px=1000,
        focal_length_mm=160.0,
    ),
    Accessory(
        key="example-computer",
        name=marked("Example: small computer"),
        is_invented=True,
        note=_NOTE,
        mass_kg=0.5,
        place=MountingPlace.SADDLE,
        along_mm=0.0,
        height_mm=30.0,
    ),
    Accessory(
        key="example-second-tube",
        name=marked("Example: second tube"),
        is_invented=True,
        is_planned=True,
        note=_NOTE,
        mass_kg=3.0,
        along_mm=60.0,
        height_mm=190.0,
    ),
    Counterweight(
        key="example-weight",
        name=marked("Example: 5 kg weight"),
        is_invented=True,
        note=_NOTE,
        mass_kg=5.0,
        thickness_mm=60.0,
    ),
)

INVENTED_SET = EquipmentSet(
    key="example-set",
    name=marked("Example: imaging on the meadow"),
    purpose=Purpose.DEEP_SKY,
    mount=_MEADOW_MEASURED.key,
    parts=tuple(one.key for one in _CARRIED),
)
INVENTED_INVENTORY = Inventory((_MEADOW_MEASURED, *_OTHERS, *_CARRIED), (INVENTED_SET,))


def invented_inventory() -> Inventory:
    """The set as a person takes it over: names and notes in the person's language."""
    return Inventory(
        tuple(said_example(one) for one in INVENTED_INVENTORY.records),
        (replace(INVENTED_SET, name=say(INVENTED_SET.name)),),
    )
