"""Ticking, skipping, own steps; and that no caution goes with them."""

from __future__ import annotations

import json
from dataclasses import replace

import pytest

from core.night import checklist
from core.night.checklist import (
    Checklist,
    ChecklistStep,
    KnownFact,
    NightPart,
    NoReason,
    OwnStep,
    State,
    StepMark,
    UnusableStep,
    build,
    done,
    moved,
    new_key,
    newest,
    newly_seen,
    open_steps,
    reopened,
    skipped,
    state_of,
)
from tests.core.night.invented import IMAGING, keys, moments

NOW = 1_795_550_400.0


def made(*own: OwnStep) -> Checklist:
    return build(IMAGING, moments(), own)


def step(key: str, checklist: Checklist | None = None) -> ChecklistStep:
    return next(one for one in (checklist or made()).steps if one.key == key)


def test_a_step_is_done_skipped_or_open() -> None:
    marks = newest([done(step("level"), NOW), skipped(step("moon"), "  set at\nnine ", NOW)])
    assert state_of(step("level"), marks, ()) is State.DONE
    assert state_of(step("moon"), marks, ()) is State.SKIPPED
    assert marks["moon"].reason == "set at nine"
    assert state_of(step("focus"), marks, ()) is State.OPEN
    left = [one.step.key for one in open_steps(made(), marks, ())]
    assert "level" not in left
    assert "moon" not in left
    marks = newest([*marks.values(), reopened(step("level"), NOW + 1.0)])
    assert state_of(step("level"), marks, ()) is State.OPEN


def test_skipping_needs_a_reason() -> None:
    with pytest.raises(NoReason, match="why"):
        skipped(step("level"), " \n", NOW)


def test_a_step_ticks_itself_while_what_it_asks_is_so() -> None:
    seen = newly_seen(made(), {}, {KnownFact.SITE_CONFIRMED, KnownFact.CLOCK_CHECKED}, NOW)
    assert {mark.key for mark in seen} == {"site", "clock"}
    marks = newest(seen)
    assert newly_seen(made(), marks, {KnownFact.SITE_CONFIRMED}, NOW + 1.0) == []
    assert state_of(step("site"), marks, {KnownFact.SITE_CONFIRMED}) is State.SEEN
    # The bolts were turned again: within the budget is no longer so.
    assert state_of(step("site"), marks, ()) is State.OPEN
    by_hand = newest([*seen, done(step("site"), NOW + 2.0)])
    assert state_of(step("site"), by_hand, ()) is State.DONE


def test_skipping_everything_takes_no_caution_away() -> None:
    checklist = made()
    before = checklist.cautions
    marks = newest([skipped(one, "not tonight", NOW) for one in checklist.steps])
    assert open_steps(checklist, marks, ()) == ()
    assert checklist.cautions == before
    assert len(before) > 8


def test_marks_survive_the_way_through_json() -> None:
    mark = skipped(step("moon"), "set at nine", NOW)
    again = StepMark.from_object(json.loads(json.dumps(mark.as_object())), NOW)
    assert again == mark
    for nonsense in ({}, {"step": 3, "state": "done"}, {"step": "moon", "state": "eaten"}):
        assert StepMark.from_object(nonsense, NOW) is None


def test_own_steps_stand_where_they_were_put() -> None:
    tea = OwnStep("own 1", "Make tea.", NightPart.DARK, after="focus", minutes=10.0)
    gate = OwnStep("own 2", "Close the gate.", NightPart.CLOSING)
    checklist = made(tea, gate)
    order = keys(checklist)
    assert order.index("own 1") == order.index("focus") + 1
    assert order[-1] == "own 2"
    assert step("own 1", checklist).is_own
    times = {one.step.key: one.begin_utc_s for one in checklist.planned}
    assert times["own 1"] >= times["focus"] + 300.0
    assert times["own 2"] >= times["back"]
    without = {one.step.key: one.begin_utc_s for one in made().planned}
    assert times["focus"] == without["focus"] - 600.0


def test_an_own_step_moves_and_finds_its_part_when_its_neighbour_is_absent() -> None:
    own = (OwnStep("own 1", "Make tea.", NightPart.DARK, after="focus"),)
    (put,) = moved(own, "own 1", step("dew"))
    assert (put.after, put.part) == ("dew", NightPart.DUSK)
    lost = replace(put, after="no such step")
    order = keys(made(lost))
    assert order[order.index("own 1") - 1] == "look-round"  # the last of its part
    assert moved(own, "own 1", own[0].as_step(None)) == own


def test_own_steps_are_kept_as_json() -> None:
    own = (OwnStep(new_key(()), "Make tea.", NightPart.DARK, "focus", "Warm hands.", 10.0, True),)
    text = json.dumps([*checklist.to_objects(own), {"key": 1}, 7, {"part": "at sea"}])
    assert checklist.from_objects(json.loads(text)) == own
    assert new_key(own) != own[0].key


@pytest.mark.parametrize(("text", "minutes"), [("  ", 1.0), ("Tea", -1.0), ("Tea", float("nan"))])
def test_an_impossible_own_step_is_refused(text: str, minutes: float) -> None:
    with pytest.raises(UnusableStep, match=r"step (has|takes)"):
        OwnStep("own 1", text, NightPart.DARK, minutes=minutes)
