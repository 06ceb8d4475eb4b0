"""Equipment: what cannot be is refused in a sentence, and a file gives back what was written."""

import json
from dataclasses import replace

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from core.mount.equipment import (
    Camera,
    Counterweight,
    EquipmentSet,
    ImpossibleValue,
    Inventory,
    Mount,
    Purpose,
    Telescope,
    quantities,
)
from core.mount.equipmentfile import (
    KINDS,
    MAX_BYTES,
    UnusableEquipment,
    from_object,
    read,
    to_object,
    write,
)
from tests.core.mount.invented import CAMERA, INVENTORY, MOUNT, SET, TUBE, WHEEL

IMPOSSIBLE = [
    (
        lambda: replace(TUBE, mass_kg=-3.0),
        "mass of “Short refractor” is given as -3 kg; it is above",
    ),
    (lambda: replace(TUBE, mass_kg=0.0), "above zero: correct it, or leave it empty"),
    (lambda: replace(TUBE, mass_kg=float("nan")), "is not a number"),
    (lambda: replace(MOUNT, capacity_kg=1e6), "between 0.1 and 2000 kg"),
    (lambda: replace(MOUNT, bar_length_mm=-1.0), "bar's length"),
    (lambda: replace(MOUNT, past_meridian_deg=200.0), "between 0 and 180°"),
    (lambda: replace(CAMERA, pixel_um=0.0), "pixel size"),
    (lambda: Counterweight(key="w", name="W", mass_kg=-5.0), "mass"),
    (lambda: Camera(key="c", name="  "), "has no name"),
    (lambda: EquipmentSet(key="s", name="S", purpose=Purpose.DEEP_SKY, parts=("a", "a")), "twice"),
    (lambda: Inventory((TUBE, replace(CAMERA, key=TUBE.key))), "have the same key"),
]


@pytest.mark.parametrize(("make", "words"), IMPOSSIBLE)
def test_what_cannot_be_is_refused_in_a_sentence(make, words):
    with pytest.raises(ImpossibleValue, match=words) as raised:
        make()
    assert str(raised.value).endswith(".")


def test_unknown_figures_are_allowed_and_a_form_can_ask_for_each():
    assert Telescope(key="t", name="T").mass_kg is None
    figures = quantities(Mount)
    assert figures["capacity_kg"].unit == " kg"
    assert {"periodic_error_arcsec", "own_mass_kg", "price", "bar_length_mm"} <= set(figures)


def test_planned_things_count_on_demand_only():
    now = INVENTORY.parts_of(SET, with_planned=False)
    later = INVENTORY.parts_of(SET, with_planned=True)
    assert WHEEL not in now
    assert set(later) - set(now) == {WHEEL}
    assert INVENTORY.mount_of(SET) is MOUNT
    assert [one.mass_kg for one in INVENTORY.counterweights_of(SET, False)] == [5.0]
    assert INVENTORY.missing_from(replace(SET, parts=("tube-1", "gone"))) == ("gone",)


def test_records_are_changed_added_and_taken_out_of_sets_too():
    heavier = replace(TUBE, mass_kg=9.0)
    changed = INVENTORY.with_record(heavier)
    assert changed.find(TUBE.key) is heavier
    assert [one.key for one in changed.records] == [one.key for one in INVENTORY.records]
    assert INVENTORY.without(TUBE.key).with_record(TUBE).records[-1] is TUBE
    fewer = INVENTORY.without(TUBE.key).without(MOUNT.key)
    assert fewer.find(TUBE.key) is None
    assert (fewer.sets[0].mount, TUBE.key in fewer.sets[0].parts) == ("", False)
    assert INVENTORY.without(SET.key).sets == ()
    assert INVENTORY.planned() == (WHEEL,)


def test_a_file_gives_back_what_was_written():
    found = read(write(INVENTORY).encode())
    assert found.inventory == INVENTORY
    assert found.rejected == ()
    assert "made by" in found.notes[0]
    assert {type(one) for one in INVENTORY.records} == set(KINDS.values())


def test_fields_not_known_here_are_kept_reported_and_written_again():
    foreign = {**to_object(TUBE), "coating": ["a", 1], "other": 2}
    whole = {"format": "poleward equipment", "version": 1, "equipment": [foreign], "later": {}}
    found = read(json.dumps(whole).encode())
    assert "coating" in found.notes[0]
    assert "later" in found.notes[1]
    again = json.loads(write(found.inventory))
    assert again["equipment"] == [foreign]
    assert again["later"] == {}


BAD_ENTRIES = [
    ({"name": "X"}, "does not say what it is"),
    ("text", "not a group of fields"),
    ({"what": "camera", "name": "X"}, "has no “key”"),
    ({"what": "mount", "key": "x", "name": "X"}, "has no “kind”"),
    ({"what": "mount", "key": "x", "name": "X", "kind": "tripod"}, "one of German equatorial"),
    ({"what": "camera", "key": "x", "name": "X", "mass_kg": "3"}, "should be a number"),
    ({"what": "camera", "key": "x", "name": "X", "mass_kg": True}, "should be a number"),
    ({"what": "camera", "key": "x", "name": "X", "mass_kg": 10**400}, "should be a number"),
    ({"what": "camera", "key": "x", "name": "X", "mass_kg": -1}, "above zero"),
    ({"what": "camera", "key": "x", "name": "X", "width_px": 1.5}, "whole number"),
    ({"what": "camera", "key": "x", "name": "X", "is_planned": 1}, "true or false"),
    ({"what": "camera", "key": "x", "name": 5}, "should be a text"),
    ({"what": "camera", "key": "tube-1", "name": "X"}, "which is taken"),
    (
        {"what": "telescope", "key": "x", "name": "X", "flexure_arcsec_per_g": 301},
        "The flexure of “X” is given as 301″ per g; it lies between 0 and 300″ per g",
    ),
]


@pytest.mark.parametrize(("entry", "words"), BAD_ENTRIES)
def test_an_entry_that_cannot_be_is_reported_and_the_others_are_read(entry, words):
    whole = {"format": "poleward equipment", "version": 1, "equipment": [to_object(TUBE), entry]}
    found = read(json.dumps(whole).encode())
    assert found.inventory.records == (TUBE,)
    assert len(found.rejected) == 1
    assert words in found.rejected[0]
    assert found.rejected[0].startswith("Entry 2 of “equipment” is left out")


def test_a_set_is_read_strictly_too():
    sets = [
        {"key": "s", "name": "S", "purpose": "deep-sky imaging", "parts": ["gone"]},
        {"key": "t", "name": "T", "purpose": "sport"},
        {"key": "u", "name": "U", "purpose": "planetary", "parts": "tube-1"},
    ]
    whole = {"format": "poleward equipment", "version": 1, "sets": sets}
    found = read(json.dumps(whole).encode())
    assert [one.key for one in found.inventory.sets] == ["s"]
    assert "one of observing, planetary" in found.rejected[0]
    assert "list of texts" in found.rejected[1]
    assert "names things not there: gone" in found.notes[0]


BAD_FILES = [
    (b"", "line 1 is not JSON"),
    (b"\x00\xff\xfe", "not text"),
    (b"[1, 2]", "does not begin as an equipment file"),
    (b'{"format": "poleward equipment"}', "does not say its version"),
    (b'{"format": "poleward equipment", "version": 2}', "is of version 2"),
    (b'{"format": "poleward equipment", "version": 1, "equipment": 5}', "not a list"),
    (b'{"format": "poleward equipment", "format": 1}', "stands twice"),
    (b'{"a": NaN}', "NaN is not a number"),
    (b'{"a": [1e999]}', "too large a number"),
    (b'{"a": "\\ud800"}', "broken characters"),
    (b"[" * 100_000, "nested too deeply"),
    (b"1" * 5000, "number too long"),
    (b" " * (MAX_BYTES + 1), "far smaller"),
]


@pytest.mark.parametrize(("data", "words"), BAD_FILES)
def test_a_file_that_is_no_equipment_is_refused_in_a_sentence(data, words):
    with pytest.raises(UnusableEquipment, match=words):
        read(data)


JSON = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(max_size=5),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=4), inner),
    max_leaves=6,
)
ENTRY = st.fixed_dictionaries(
    {"what": st.sampled_from([*KINDS, "thing"]), "name": st.text(max_size=3) | JSON},
    optional={
        "key": st.sampled_from("ab") | JSON,
        "kind": st.sampled_from(["Dobsonian", "x"]) | JSON,
        "mass_kg": st.floats() | JSON,
        "place": JSON,
        "width_px": JSON,
        "is_driven": JSON,
        "note": JSON,
        "other": JSON,
    },
)


@settings(max_examples=150, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(st.lists(ENTRY | JSON, max_size=4), JSON)
def test_no_file_content_raises_anything_but_a_sentence(entries, sets):
    whole = {"format": "poleward equipment", "version": 1, "equipment": entries, "sets": sets}
    try:
        found = read(json.dumps(whole).encode())
    except UnusableEquipment:  # a sentence; anything else fails
        return
    assert len(found.inventory.records) + len(found.rejected) >= len(entries)
    assert read(write(found.inventory).encode()).inventory == found.inventory


def test_one_record_alone_for_whoever_stores_them():
    assert from_object(json.loads(json.dumps(to_object(MOUNT)))) == MOUNT
