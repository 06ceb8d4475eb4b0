"""Invented mounts to try the comparison with. None is a product; every figure is made up."""

from __future__ import annotations

from dataclasses import replace
from typing import TypeVar

from core.language import marked, say
from core.mount.equipment import Mount, MountKind, Record

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
