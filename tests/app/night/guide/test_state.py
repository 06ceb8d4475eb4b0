"""Where the person stands: steps that skip a stage, what is kept, and what a resume believes."""

import json

import numpy as np
import pytest

from app.night.snapshot import Guide, How, KnownNorth, TurnMade, as_json, from_json
from core.alignment.axis.evidence import PriorAxis
from core.alignment.guide.bolts import Base, BoltTurn
from core.alignment.guide.procedure import NotNow, ProcedureEvent, Stage


@pytest.mark.parametrize(
    ("stage", "event", "then"),
    [
        (Stage.CHOOSE, ProcedureEvent.STAR_TAKEN, Stage.WATCH),
        (
            Stage.WATCH,
            ProcedureEvent.STAR_TAKEN,
            Stage.WATCH,
        ),  # the next star without ending the leg
        (Stage.TURN, ProcedureEvent.STAR_TAKEN, Stage.WATCH),
        (Stage.DONE, ProcedureEvent.STAR_TAKEN, Stage.WATCH),
        (Stage.FIND_NORTH, ProcedureEvent.STAR_TAKEN, Stage.WATCH),
        (Stage.DONE, ProcedureEvent.TURN_WORTHWHILE, Stage.TURN),
        (Stage.WATCH, ProcedureEvent.BOLTS_TURNED, Stage.CHOOSE),
        (Stage.FIND_NORTH, ProcedureEvent.TRIPOD_MOVED, Stage.CHOOSE),
    ],
)
def test_what_a_person_does_may_skip_a_stage(
    stage: Stage, event: ProcedureEvent, then: Stage
) -> None:
    guide = Guide()
    guide.stage = stage
    guide.happened(event)
    assert guide.stage is then


def test_what_has_no_place_is_refused_in_words() -> None:
    with pytest.raises(NotNow, match="has no place"):
        Guide().happened(ProcedureEvent.LEG_ENOUGH)


def _guide() -> Guide:
    guide = Guide()
    guide.stage, guide.north, guide.axis_state = Stage.TURN, KnownNorth.EXCHANGED, 3
    guide.base, guide.exchanged, guide.turns_made = Base(1.5, 70.0), {"4 Vega"}, 2
    was = PriorAxis(np.array([3.0, -4.0]), np.array([[1.0, 0.1], [0.1, 2.0]]))
    guide.last_turn = TurnMade(
        *(1.79e9, How.COUNTED, BoltTurn(5.0, -6.0), 1.25, None, was, guide.base, "screw")
    )
    return guide


def test_what_is_kept_comes_back_the_same() -> None:
    guide = _guide()
    again = from_json(json.loads(json.dumps(as_json(guide))))
    assert as_json(again) == as_json(guide)
    assert again.stage is Stage.TURN
    assert again.last_turn is not None
    assert again.last_turn.turn == BoltTurn(5.0, -6.0)
    assert again.last_turn.mount == "screw"


def test_a_turn_kept_before_mounts_were_told_apart_comes_back_without_one() -> None:
    kept = as_json(_guide())
    del kept["last_turn"]["mount"]
    again = from_json(kept)
    assert again.last_turn is not None
    assert again.last_turn.mount is None


@pytest.mark.parametrize("kept", [None, 5, {}, {"version": 1}, {"version": 99, "stage": "WATCH"}])
def test_what_cannot_be_read_begins_anew(kept: object) -> None:
    assert as_json(from_json(kept)) == as_json(Guide())


def test_a_spoilt_part_begins_anew() -> None:
    kept = as_json(_guide())
    kept["last_turn"]["was"] = [[1.0], "nonsense"]
    assert as_json(from_json(kept)) == as_json(Guide())


@pytest.mark.parametrize(
    ("stage", "axis_state", "watching", "then"),
    [
        (Stage.TURN, 3, None, Stage.TURN),
        (Stage.CHOOSE, 3, "5 Deneb", Stage.WATCH),  # killed between the leg and the stage
        (Stage.WATCH, 3, None, Stage.CHOOSE),
        (Stage.DONE, 4, None, Stage.CHOOSE),  # killed while the record of a turn was on its way
    ],
)
def test_the_log_of_nights_comes_first(stage, axis_state, watching, then) -> None:
    guide = _guide()
    guide.stage = stage
    guide.agree_with(axis_state, watching)
    assert guide.stage is then
    assert (guide.last_turn is None) == (axis_state == 4)
