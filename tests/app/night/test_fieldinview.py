"""The field in view: typed, kept, else from the equipment."""

from dataclasses import replace

import pytest

from app.night.equipment import FIELD_KEY, Equipment, FieldInView
from core.imaging.sampling import ASSUMED_ARCMIN
from core.mount.equipment import (
    Camera,
    EquipmentSet,
    Inventory,
    Mount,
    MountKind,
    Purpose,
    Telescope,
)
from tests.app.night.memory import Memory

TUBE = Telescope(key="t", name="Tube", focal_length_mm=1000.0)
CAMERA = Camera(key="c", name="Sensor", pixel_um=4.0, width_px=3000, height_px=2000)
POST = Mount(key="m", name="Post", kind=MountKind.GERMAN_EQUATORIAL)
SET = EquipmentSet(key="s", name="S", purpose=Purpose.DEEP_SKY, mount="m", parts=("t", "c"))


def test_it_follows_the_equipment_until_something_is_typed(qtbot) -> None:
    memory = Memory()
    equipment = Equipment(memory)
    field = FieldInView(memory, equipment)
    assert field.now().across_arcmin == ASSUMED_ARCMIN
    with qtbot.waitSignal(field.changed):
        equipment.take(Inventory((TUBE, CAMERA, POST), (SET,)))
    assert field.now().across_arcmin == pytest.approx(27.5, rel=1e-3)
    with qtbot.waitSignal(field.changed):
        equipment.put(replace(TUBE, focal_length_mm=500.0))
    assert field.now().across_arcmin == pytest.approx(55.0, rel=1e-3)
    with qtbot.waitSignal(field.changed):
        field.type(12.0)
    assert field.now().across_arcmin == 12.0
    assert FieldInView(memory, equipment).now().across_arcmin == 12.0
    field.type(None)
    assert FieldInView(memory, equipment).now().across_arcmin == pytest.approx(55.0, rel=1e-3)


@pytest.mark.parametrize(
    "kept", [3, {"version": 9}, *({"version": 1, "across_arcmin": bad} for bad in ("x", True, -4))]
)
def test_what_cannot_be_is_not_taken(kept) -> None:
    field = FieldInView(Memory(**{FIELD_KEY: kept}))
    assert field.typed_arcmin is None
