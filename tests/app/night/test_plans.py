"""Plans for the evening: kept, taken up again, and what equipment knows in their stead."""

import math

import pytest

from app.night.equipment import Equipment, known_of
from app.night.plan import KEY, Plans
from core.mount.equipment import Camera, EquipmentSet, Mount, MountKind, Purpose
from core.sky.bodies import Body
from core.sky.targets import Target, of_body
from tests.app.pages.eveningpages import ANDROMEDA, Memory


def test_everything_is_taken_up_again(qtbot) -> None:
    settings = Memory()
    plans = Plans(settings)
    with qtbot.waitSignals([plans.changed] * 3):
        plans.set_target(ANDROMEDA)
        plans.set_number("smear_px", 0.7)
        plans.set_word("clock", "utc")
    again = Plans(settings)
    assert again.target() == ANDROMEDA
    assert (again.number("smear_px", 0.5), again.word("clock", "place")) == (0.7, "utc")


@pytest.mark.usefixtures("qapp")
def test_a_planet_is_kept_as_what_moves() -> None:
    settings = Memory()
    Plans(settings).set_target(of_body(Body.SATURN))
    assert Plans(settings).target().body is Body.SATURN


@pytest.mark.usefixtures("qapp")
def test_a_figure_left_open_is_kept_as_such() -> None:
    settings = Memory()
    Plans(settings).set_number("exposure_s", math.nan)
    assert math.isnan(Plans(settings).number("exposure_s", 5.0))


def test_the_same_again_is_no_change(qtbot) -> None:
    plans = Plans(Memory())
    plans.set_target(ANDROMEDA)
    with qtbot.assertNotEmitted(plans.changed):
        plans.set_target(ANDROMEDA)


@pytest.mark.parametrize(
    "kept",
    [
        None,
        "nonsense",
        {"version": 99, "target": {}},
        {"version": 1, "target": {"name": "x"}},
        {"version": 1, "target": 3, "smear_px": "much", "clock": 7},
    ],
)
@pytest.mark.usefixtures("qapp")
def test_what_cannot_be_read_does_no_harm(kept: object) -> None:
    plans = Plans(Memory({KEY: kept}))
    assert plans.target() is None
    assert plans.number("smear_px", 0.5) == 0.5
    assert plans.word("clock", "place") == "place"


@pytest.mark.usefixtures("qapp")
def test_equipment_knows_until_the_person_says() -> None:
    equipment = Equipment(Memory())
    equipment.put(Mount(key="m", name="Invented", kind=MountKind.DOBSONIAN))
    equipment.put(Camera(key="c", name="Invented", width_px=3000, height_px=2000))
    made = EquipmentSet(key="s", name="s", purpose=Purpose.PLANETARY, mount="m", parts=("c",))
    equipment.put_set(made)
    plans = Plans(Memory(), lambda name: known_of(equipment, name))
    assert plans.word("mount_kind", "") == "DOBSONIAN"
    assert plans.word("purpose", "") == "PLANETARY"
    assert plans.number("frame_width_px", 1.0) == 3000.0
    assert plans.number("drive_deg_per_s", 3.0) == 3.0  # the mount's sheet does not say
    plans.set_number("frame_width_px", 640.0)
    assert plans.number("frame_width_px", 1.0) == 640.0


@pytest.mark.usefixtures("qapp")
def test_two_targets_differ() -> None:
    plans = Plans(Memory())
    plans.set_target(ANDROMEDA)
    other = Target("Other", "coordinates", 1.0, 2.0)
    plans.set_target(other)
    assert plans.target() == other
