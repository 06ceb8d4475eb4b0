"""Tonight's exposure kept among the settings, and the task it makes."""

from dataclasses import replace

import pytest

from app.night.budget import KEY, VERSION, Budget, Wanted
from app.night.equipment import Equipment
from core.mount.equipment import ImpossibleValue
from core.mount.examples import INVENTED_INVENTORY
from tests.app.night.memory import Memory

TARGET = Wanted(name="Invented", declination_deg=40.0)


def _budget(memory: Memory, wanted: Wanted | None = TARGET) -> Budget:
    equipment = Equipment(memory)
    budget = Budget(memory, equipment)
    budget.equipment = equipment  # kept alive as long as the budget
    if wanted is not None:
        equipment.take(INVENTED_INVENTORY)
        budget.want(wanted)
    return budget


def test_the_task_has_the_optics_of_the_set_in_use() -> None:
    task = _budget(Memory()).task()
    assert (task.optics.focal_length_mm, task.optics.pixel_um) == (600.0, 3.8)
    assert (task.target.first_hour_angle_deg, task.target.last_hour_angle_deg) == (-45.0, 45.0)
    assert task.guide_star_offset_rad == pytest.approx(0.0, abs=1e-12)  # in the middle


def test_binning_and_reducer_count() -> None:
    wanted = replace(TARGET, binning=2, focal_factor=0.8, is_guided=False)
    task = _budget(Memory(), wanted).task()
    assert task.optics.focal_length_mm == pytest.approx(480.0)
    assert (task.optics.pixel_um, task.optics.width_px) == (7.6, 2600)
    assert not task.is_guided


def test_typed_optics_stand_for_the_set() -> None:
    own = {"focal_length_mm": 1000.0, "pixel_um": 5.0, "width_px": 4000, "height_px": 3000}
    budget = _budget(Memory(), replace(TARGET, has_own_optics=True, **own))
    assert budget.task().optics.focal_length_mm == 1000.0
    assert budget.optics_of_set().focal_length_mm == 600.0


@pytest.mark.parametrize(
    ("change", "said"),
    [
        ({"declination_deg": None}, "target"),
        ({"exposure_s": None}, "exposure"),
        ({"limit_px": None}, "smear allowed"),
        ({"last_hour_angle_h": None}, "end"),
        ({"focal_factor": None}, "reducer"),
        ({"has_own_optics": True}, "focal length"),
        ({"first_hour_angle_h": 4.0}, "before the first"),
        ({"guide_star_arcmin": 1.0}, "farthest corner"),
    ],
)
def test_what_is_missing_or_cannot_be_is_said(change: dict, said: str) -> None:
    budget = _budget(Memory(), replace(TARGET, **change))
    with pytest.raises(ValueError, match=said):
        budget.task()


def test_without_a_set_the_way_out_is_said() -> None:
    with pytest.raises(ImpossibleValue, match="Mount page"):
        _budget(Memory(), None).optics()


def test_it_comes_back() -> None:
    memory = Memory()
    _budget(memory, replace(TARGET, exposure_s=90.0, binning=3))
    assert _budget(memory, None).wanted == replace(TARGET, exposure_s=90.0, binning=3)


@pytest.mark.parametrize(
    "kept",
    [
        [],
        {"version": VERSION + 1},
        {"version": VERSION, "binning": 0, "name": 4, "is_guided": "yes", "width_px": 2.5},
    ],
)
def test_what_cannot_be_used_gives_way_to_the_usual(kept: object) -> None:
    assert _budget(Memory(**{KEY: kept}), None).wanted == Wanted()


def test_the_example_brings_a_set_only_where_none_can_be_used() -> None:
    budget = _budget(Memory(), None)
    budget.take_example("Invented target")
    assert budget.task().target.name == "Invented target"
    count = len(budget.equipment.inventory.records)
    budget.take_example("Invented target")
    assert len(budget.equipment.inventory.records) == count
