"""Each change is told once."""

from types import SimpleNamespace

import pytest

from app.night.snapshot import BoltView
from app.pages.drift import words as say
from app.pages.drift.guide import Cueing
from app.pages.drift.turning import counted_arcmin, steer_chart
from app.pages.drift.words import (
    ALTITUDE,
    AZIMUTH,
    MOVES,
    Guidance,
    bolt_words,
    star_moves,
    turns_words,
)
from app.workers.tones import Cue
from core.alignment.guide.bolts import BoltScale, BoltTurn, of_sheet
from core.alignment.guide.procedure import Stage

NORTH, SOUTH = 48.0, -33.0


def _view(stage=Stage.WATCH, wanted=None, seen=None, moves=None, scale=None, width=None):
    bolt = BoltView(scale, 1.0 if scale else 0.0)
    return SimpleNamespace(
        stage=stage,
        wanted=wanted,
        wanted_width_arcmin=width,
        seen=seen,
        star_moves_arcsec=moves,
        azimuth_bolt=bolt,
        altitude_bolt=bolt,
    )


def test_a_star_that_has_told_enough_is_told_once() -> None:
    cueing = Cueing()
    watching, enough = Guidance("s", "on"), Guidance("s", "enough", primary=say.ENOUGH)
    told = [cueing.due(said, _view(), NORTH, 0.0) for said in (watching, enough, enough, watching)]
    assert told == [None, Cue.STAR_ENOUGH, None, None]


@pytest.mark.parametrize(
    ("primary", "cue"), [(say.TURN, Cue.TURN_NOW), (say.GOOD, Cue.GOOD_ENOUGH)]
)
def test_what_comes_next_has_its_own_tone(primary, cue) -> None:
    assert Cueing().due(Guidance("s", "x", primary=primary), _view(), NORTH, 0.0) is cue


def test_a_star_that_leaves_comes_before_all_else() -> None:
    warned = Guidance("s", "x", primary=say.ENOUGH, is_leaving=True)
    assert Cueing().due(warned, _view(), NORTH, 0.0) is Cue.STAR_LEAVING


def test_turning_ticks_once_a_second_and_stops_when_both_are_there() -> None:
    cueing, said = Cueing(), Guidance("s", "x")
    half = _view(Stage.TURN, BoltTurn(10.0, -4.0), BoltTurn(5.0, -4.0))
    there = _view(Stage.TURN, BoltTurn(10.0, -4.0), BoltTurn(10.1, -3.9))
    told = [cueing.due(said, half, NORTH, at_s) for at_s in (10.0, 10.5, 11.1)]
    assert told == [Cue.KEEP_TURNING, None, Cue.KEEP_TURNING]
    assert cueing.due(said, there, NORTH, 11.2) is Cue.STOP
    assert cueing.due(said, there, NORTH, 13.0) is None


@pytest.mark.parametrize(
    ("latitude", "turn", "azimuth", "altitude"),
    [
        # Greater azimuth is east of the north pole and west of the south pole.
        (NORTH, BoltTurn(12.4, 3.0), "turn it east", "raise it"),
        (NORTH, BoltTurn(-12.4, -3.0), "turn it west", "lower it"),
        (SOUTH, BoltTurn(12.4, 3.0), "turn it west", "raise it"),
        (SOUTH, BoltTurn(-12.4, -3.0), "turn it east", "lower it"),
    ],
)
def test_ways_to_turn_in_either_hemisphere(latitude, turn, azimuth, altitude) -> None:
    view = _view(Stage.TURN, turn)
    assert bolt_words(AZIMUTH, view, latitude).way == azimuth
    assert bolt_words(ALTITUDE, view, latitude).way == altitude
    assert bolt_words(AZIMUTH, view, latitude).figure == "12.4′"


def test_a_way_that_is_not_sure_is_only_supposed() -> None:
    view = _view(Stage.TURN, BoltTurn(5.0, -1.0), width=(1.0, 0.9))
    assert bolt_words(AZIMUTH, view, NORTH).way == "turn it east"
    assert bolt_words(ALTITUDE, view, NORTH).way == "probably lower it"


def test_a_turn_too_far_is_led_back_and_the_wrong_way_is_said() -> None:
    past = bolt_words(AZIMUTH, _view(Stage.TURN, BoltTurn(10.0, 0.0), BoltTurn(12.0, 0.0)), NORTH)
    assert (past.way, past.figure) == ("turn it west", "2.0′ to go")
    assert past.so_far == "too far: 12.0′ of 10.0′"
    wrong = bolt_words(AZIMUTH, _view(Stage.TURN, BoltTurn(10.0, 0.0), BoltTurn(-3.0, 0.0)), NORTH)
    assert (wrong.way, wrong.figure) == ("turn it east", "13.0′ to go")
    assert wrong.so_far == "3.0′ the other way so far"


def test_turns_are_told_once_learned_with_their_sigma() -> None:
    known = BoltView(BoltScale(20.0, 0.5, 1.0, 0.3, 3), 1.0)
    said = turns_words(10.0, known, MOVES[AZIMUTH](NORTH))
    assert said.startswith("About 0.50 ± 0.02 turns. Turn it the + way, the same way as last time:")
    assert "against the last turn" in turns_words(-10.0, known, MOVES[AZIMUTH](NORTH))
    assert "play 1.0′ ± 0.6′" in said
    assert turns_words(10.0, BoltView(), MOVES[AZIMUTH](NORTH)) == ""


@pytest.mark.parametrize(
    ("bolt", "latitude", "wanted", "way", "plus"),
    [
        # Greater azimuth is east of the north pole and west of the south pole; a bolt labelled the
        # other way has a negative scale.
        (AZIMUTH, NORTH, 10.0, "− way", "west"),
        (AZIMUTH, NORTH, -10.0, "+ way", "west"),
        (AZIMUTH, SOUTH, 10.0, "− way", "east"),
        (ALTITUDE, NORTH, 10.0, "− way", "down"),
        (ALTITUDE, SOUTH, -10.0, "+ way", "down"),
    ],
)
def test_a_bolt_labelled_the_other_way_is_turned_the_way_it_needs(
    bolt, latitude, wanted, way, plus
) -> None:
    learned = BoltView(BoltScale(-20.0, 0.5, 1.0, 0.3, 3), 1.0)
    said = turns_words(wanted, learned, MOVES[bolt](latitude))
    assert f"Turn it the {way}" in said
    assert f"counted as + move the axis {plus}." in said


def test_one_wrong_turn_already_tells_the_way_of_the_next() -> None:
    once = BoltView(BoltScale(-20.0, 1.0, 1.0, 1.5, 1), 1.0)
    said = turns_words(10.0, once, MOVES[AZIMUTH](NORTH))
    assert said.startswith("Turn it the − way, against the last turn")


def test_a_data_sheet_tells_how_far_but_not_which_way() -> None:
    said = turns_words(-30.0, BoltView(of_sheet(20.0)), MOVES[AZIMUTH](NORTH))
    assert said.startswith("About 1.50 ± 0.29 turns by the mount’s data sheet;")


def test_turns_that_contradict_each_other_tell_no_way() -> None:
    open_ = BoltView(BoltScale(20.0, 0.5, 1.0, 0.3, 2, has_sense=False), 1.0)
    assert "Which way is open" in turns_words(10.0, open_, MOVES[AZIMUTH](NORTH))
    assert "Turn it the" not in turns_words(10.0, open_, MOVES[AZIMUTH](NORTH))


@pytest.mark.parametrize(
    ("scale", "moved"),
    [
        (BoltScale(-20.0, 0.5, 1.0, 0.3, 3), -30.0),  # learned, the other way than meant
        (of_sheet(20.0), 30.0),  # only the size is known: as it was meant
        (BoltScale(-20.0, 0.5, 1.0, 0.3, 1), None),
        (None, None),
    ],
)
def test_counted_turns_in_arcminutes(scale, moved) -> None:
    found = counted_arcmin((1.5, None), (scale, None), (25.0, -4.0))
    assert found == (None if moved is None else (moved, -4.0))


def test_where_the_star_goes_is_told_in_the_sky_s_directions() -> None:
    said = star_moves(_view(moves=(-672.0, 30.0)), 30.0)
    assert "11.2′ to the south and 30″ to the east" in said
    assert "hardly moves" in star_moves(_view(moves=(1.0, 1.0)), 30.0)
    assert "beyond the field" not in said
    assert "beyond the field (6′ across)" in star_moves(_view(moves=(-672.0, 30.0)), 6.0)


def test_the_mark_to_steer_to_stands_in_the_field_as_the_sky_does() -> None:
    view = _view(moves=(60.0, 60.0))  # a minute north, a minute east: between 9 and 12 o'clock
    view.star_at_arcsec = (0.0, -30.0)
    chart = steer_chart(view, 6.0)
    mark, star = chart.spots
    assert chart.radius_arcmin == 3.0
    assert (mark.clock_angle_deg, mark.distance_arcmin) == pytest.approx((315.0, 2.0**0.5))
    assert (star.clock_angle_deg, star.distance_arcmin) == pytest.approx((90.0, 0.5))
    outside = steer_chart(view, 1.0).spots[0]
    assert outside.distance_arcmin == 0.5
    assert "outside the field" in outside.told
    assert steer_chart(_view(), 6.0) is None
