"""Equipment kept among the settings, whatever stands there."""

from dataclasses import replace
from pathlib import Path

import pytest

from app.night.equipment import EQUIPMENT_KEY, VERSION, Adjusted, Equipment
from app.store.nights import NightLog
from core.mount.choice import Criterion, Must
from core.mount.equipment import Mount, MountKind, Purpose, Telescope
from core.mount.examples import INVENTED_INVENTORY, INVENTED_SET
from tests.app.night.memory import Memory

TUBE = Telescope(key="tube", name="Tube", mass_kg=4.5)


def test_every_change_is_kept_at_once_and_comes_back(qtbot) -> None:
    memory = Memory()
    equipment = Equipment(memory)
    with qtbot.waitSignal(equipment.changed):
        equipment.take(INVENTED_INVENTORY)
    equipment.put(TUBE)
    equipment.put_set(replace(INVENTED_SET, key="mine", name="Mine"))
    equipment.use("mine")
    again = Equipment(memory)
    assert again.inventory == equipment.inventory
    assert again.inventory.find("tube") == TUBE
    assert again.set_in_use().name == "Mine"


def test_it_is_in_the_log_of_nights(tmp_path: Path) -> None:
    def log() -> NightLog:
        return NightLog.open(tmp_path / "n.sqlite", lambda: 1.79e9, lambda _: None, lambda _: None)

    first = log()
    Equipment(first).take(INVENTED_INVENTORY)
    assert first.close()
    again = log()
    kept = Equipment(again).inventory
    again.close()
    assert kept == INVENTED_INVENTORY


def test_a_changed_piece_stands_where_it_stood() -> None:
    equipment = Equipment(Memory())
    equipment.take(INVENTED_INVENTORY)
    order = [one.key for one in equipment.inventory.records]
    equipment.put(replace(equipment.inventory.find("example-tube"), mass_kg=6.0))
    assert [one.key for one in equipment.inventory.records] == order
    assert equipment.inventory.find("example-tube").mass_kg == 6.0


def test_what_is_removed_goes_out_of_the_sets() -> None:
    equipment = Equipment(Memory())
    equipment.take(INVENTED_INVENTORY)
    equipment.remove("example-tube")
    assert "example-tube" not in equipment.set_in_use().parts
    equipment.remove(INVENTED_SET.key)
    assert equipment.set_in_use() is None


def test_entries_this_version_cannot_read_are_kept() -> None:
    odd = {"what": "dome", "key": "d", "name": "Dome"}
    wrong = {"what": "telescope", "key": "t", "name": "T", "mass_kg": -4}
    memory = Memory(
        **{EQUIPMENT_KEY: {"version": VERSION, "equipment": [odd, wrong], "sets": ["?"]}}
    )
    equipment = Equipment(memory)
    assert equipment.inventory.things() == ()
    equipment.put(TUBE)
    kept = memory.get_setting(EQUIPMENT_KEY)
    assert [one["key"] for one in kept["equipment"]] == ["tube", "d", "t"]
    assert kept["sets"] == ["?"]
    assert Equipment(memory).inventory.records == (TUBE,)


@pytest.mark.parametrize("kept", [{"version": VERSION + 1, "equipment": [1]}, [], "x", 3])
def test_what_a_later_version_wrote_is_set_aside_and_never_lost(kept: object) -> None:
    memory = Memory(**{EQUIPMENT_KEY: kept})
    equipment = Equipment(memory)
    assert equipment.inventory.things() == ()
    equipment.put(TUBE)
    Equipment(memory).put(replace(TUBE, name="Longer tube"))
    assert memory.get_setting(EQUIPMENT_KEY)["set_aside"] == [kept]


def test_own_figures_come_back_for_their_purpose_alone() -> None:
    memory = Memory()
    own = Adjusted(0.5, (Must.CARRIES, Must.PRICE), {Criterion.EASE: 2.0}, 900.0, 12.0)
    Equipment(memory).adjust(Purpose.OBSERVING, own)
    again = Equipment(memory)
    assert again.adjusted(Purpose.OBSERVING) == own
    assert again.adjusted(Purpose.DEEP_SKY) == Adjusted.usual(Purpose.DEEP_SKY)
    assert own.wishes(Purpose.OBSERVING, 3.0).load_kg == 12.0
    assert own.practice(Purpose.OBSERVING).share(Purpose.OBSERVING) == 0.5


@pytest.mark.parametrize(
    "figures",
    [
        {"share": 7, "musts": [], "weights": {"EASE": 1}, "price_limit": None, "load_kg": None},
        {"share": 0.6, "musts": ["FLIES"], "weights": {}, "price_limit": None, "load_kg": None},
        {"share": 0.6, "musts": [], "weights": [], "price_limit": None, "load_kg": None},
        {"share": 0.6},
        "nonsense",
    ],
)
def test_own_figures_that_cannot_be_give_way_to_the_usual_ones(figures: object) -> None:
    kept = {"version": VERSION, "adjusted": {"DEEP_SKY": figures}}
    equipment = Equipment(Memory(**{EQUIPMENT_KEY: kept}))
    assert equipment.adjusted(Purpose.DEEP_SKY) == Adjusted.usual(Purpose.DEEP_SKY)


def test_the_set_in_use_is_the_first_when_the_chosen_one_is_gone() -> None:
    equipment = Equipment(Memory())
    equipment.take(INVENTED_INVENTORY)
    equipment.use("no such set")
    assert equipment.set_in_use() == INVENTED_SET
    mount = Mount(key="m", name="M", kind=MountKind.DOBSONIAN)
    equipment.put(mount)
    assert equipment.inventory.of_kind(Mount)[-1] == mount
