"""Which legs of a drift log join tonight's, and what is asked before they do."""

from dataclasses import replace

import numpy as np
import pytest

from app.night.joining import Joining, joining, joining_question
from core.alignment.driftlog.records import DriftLog, Header, Leg
from core.sky.site import Site

HILL = Site(48.0, 11.0, 500.0)


def leg(label: str, first: float = 0.0) -> Leg:
    utc_s = 1.79e9 + np.arange(5.0)
    return Leg(label, 40.0, 10.0, utc_s, first + np.arange(5.0))


def test_what_is_here_already_is_not_taken_twice() -> None:
    log = DriftLog(Header(), (leg("a"), leg("b", 1.0)))
    assert joining(log, HILL, ()).legs == log.legs
    again = joining(log, HILL, [replace(leg("x"), label="another name")])
    assert [one.label for one in again.legs] == ["b"]
    assert "1 of its legs" in again.sentence
    assert joining(log, HILL, log.legs).legs == ()


@pytest.mark.parametrize(
    ("latitude_deg", "longitude_deg", "joins"),
    [(48.05, 11.05, True), (48.2, 11.0, False), (-48.0, 11.0, False), (48.0, -169.0, False)],
)
def test_a_log_joins_only_where_it_was_measured(
    latitude_deg: float, longitude_deg: float, joins: bool
) -> None:
    log = DriftLog(Header(latitude_deg, longitude_deg), (leg("a"),))
    assert bool(joining(log, HILL, ()).legs) is joins
    assert joining(log, None, ()).legs == log.legs


def later(one: Leg, hours: float) -> Leg:
    return replace(one, utc_s=one.utc_s + 3600.0 * hours)


def test_nothing_is_asked_where_no_legs_meet() -> None:
    assert joining_question(Joining((leg("a"),)), ()) == ""
    assert joining_question(Joining((), "nothing"), (leg("a"),)) == ""


def test_the_question_tells_how_many_legs_meet_and_when_they_were_read() -> None:
    here = [leg("a"), later(leg("b"), 0.5)]
    asked = joining_question(Joining((later(leg("c"), 2.0),)), here)
    assert "last turned: 2 (2026-09-21 14:13 UTC to 2026-09-21 14:43 UTC)" in asked
    assert "in the log: 1 (2026-09-21 16:13 UTC)" in asked
    assert "another night" not in asked


@pytest.mark.parametrize(
    ("hours", "is_another_night"), [(11.9, False), (12.1, True), (-11.9, False), (-12.1, True)]
)
def test_a_log_of_another_night_is_named_so(hours: float, is_another_night: bool) -> None:
    asked = joining_question(Joining((later(leg("c"), hours),)), [leg("a")])
    assert ("another night" in asked) is is_another_night


def test_a_star_chosen_but_not_read_is_asked_about_too() -> None:
    chosen = Leg("a", 40.0, 10.0, np.empty(0), np.empty(0))
    asked = joining_question(Joining((leg("c"),)), [chosen])
    assert "last turned: 1 (not read yet)" in asked
    assert "another night" not in asked
