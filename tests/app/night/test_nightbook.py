"""What the person says of tonight is kept, once, and comes back."""

from __future__ import annotations

from app.night.notes import NightBook
from core.night.checklist import KnownFact, NightPart, done, load, skipped
from core.night.record import Kind
from tests.app.pages.tonight.conftest import NOW_S, BookMemory

FIRST = load()[0]


def book(memory: BookMemory) -> NightBook:
    return NightBook(memory, memory.entries, lambda: NOW_S)


def of_kind(memory: BookMemory, kind: Kind) -> list[dict]:
    return [one.content for one in memory.entries if one.kind == kind]


def test_marks_come_back_and_the_newest_holds() -> None:
    memory = BookMemory()
    made = book(memory)
    made.mark(skipped(FIRST, "no forecast here", NOW_S))
    made.mark(done(FIRST, NOW_S + 60.0))
    assert len(of_kind(memory, Kind.TICK)) == 2
    assert book(memory).marks()[FIRST.key].state.value == "done"


def test_own_steps_of_tonight_stay_with_the_night_and_kept_ones_come_again() -> None:
    memory = BookMemory()
    made = book(memory)
    made.add_step("Feed the cat", NightPart.CLOSING, "", is_kept=True)
    made.add_step("Borrow a chair", NightPart.DUSK, "", is_kept=False)
    assert len(of_kind(memory, Kind.OWN_STEPS)) == 1
    assert {one.text for one in book(memory).own()} == {"Feed the cat", "Borrow a chair"}
    memory.entries.clear()
    assert [one.text for one in book(memory).own()] == ["Feed the cat"]


def test_steps_of_two_nights_never_share_a_key() -> None:
    memory = BookMemory()
    book(memory).add_step("Tonight alone", NightPart.DUSK, "", is_kept=False)
    other = BookMemory()
    book(other).add_step("Every night", NightPart.DUSK, "", is_kept=True)
    memory.kept = other.kept
    keys = [one.key for one in book(memory).own()]
    assert len(keys) == len(set(keys)) == 2


def test_equipment_and_plan_are_one_entry_each_however_often_they_are_said() -> None:
    memory = BookMemory()
    made = book(memory)
    for target in ("M 31", "M 31", "M 33"):
        made.keep_around({Kind.PLAN: {"target": target}, Kind.EQUIPMENT: {"name": "small"}})
    assert of_kind(memory, Kind.PLAN) == [{"target": "M 33"}]
    again = book(memory)
    again.keep_around({Kind.PLAN: {"target": "M 42"}})
    assert of_kind(memory, Kind.PLAN) == [{"target": "M 42"}]


def test_a_night_begins_when_the_person_says_something() -> None:
    made = book(BookMemory())
    made.confirm_clock()
    assert not made.has_begun()
    assert KnownFact.CLOCK_CHECKED in made.facts()
    made.note("  ")
    assert not made.has_begun()
    made.note("Clear.")
    assert made.has_begun()
    assert KnownFact.NOTE_WRITTEN in made.facts()
