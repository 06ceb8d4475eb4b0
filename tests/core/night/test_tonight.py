"""Where in the night we are, in words and figures."""

from __future__ import annotations

import pytest

from core.night.checklist import KnownFact, build, done, newest
from core.night.darkness import night_of
from core.night.progress import AlignmentState, AxisNow, alignment_state, night_now
from core.sky.almanac import Light
from core.sky.clocks import parse_utc
from core.sky.site import Site
from tests.core.night.invented import EVENING, IMAGING, invented_night, moments

NIGHT = invented_night()
CHECKLIST = build(IMAGING, moments())


def at(utc_s: float, marks=(), facts=()):
    return night_now(NIGHT, CHECKLIST, newest(list(marks)), facts, AxisNow(), utc_s)


def test_by_day_the_dark_is_still_to_come() -> None:
    sunset = NIGHT.sunset_utc_s
    assert sunset is not None
    now = at(sunset - 600.0)
    assert now.light is Light.DAY
    assert now.darkest is Light.NIGHT
    # Astronomical twilight in late November at 47° lasts about an hour and three quarters.
    assert now.darker_in_s == pytest.approx(115 * 60.0, abs=8 * 60.0)
    assert now.light_sentence.startswith("It is day; dark begins in 1 h")
    later = at(sunset + 4 * 3600.0)
    assert (later.light, later.darker_in_s) == (Light.NIGHT, None)
    assert later.light_sentence == "It is dark."


def test_the_next_step_is_the_first_open_one() -> None:
    first, second, *_ = CHECKLIST.planned
    assert first.begin_utc_s is not None
    now = at(first.begin_utc_s + 90.0)
    assert now.next == first
    assert now.next_in_s == -90.0
    assert now.steps_left == len(CHECKLIST.planned)
    after = at(first.begin_utc_s, [done(first.step, first.begin_utc_s)])
    assert after.next == second
    seen = at(first.begin_utc_s, facts={KnownFact.EQUIPMENT_CHOSEN})
    assert seen.steps_left == now.steps_left - 1


def test_who_comes_late_is_told_by_how_much() -> None:
    first = CHECKLIST.planned[0]
    assert first.begin_utc_s is not None
    assert at(first.begin_utc_s).behind_s == 0.0
    assert CHECKLIST.starts_utc_s is not None
    late = at(CHECKLIST.starts_utc_s)
    before = [one.step for one in CHECKLIST.planned if one.step.when.at is None]
    work_s = 60.0 * sum(one.minutes for one in before)
    assert work_s <= late.behind_s <= work_s + 3600.0  # and the wait for the glass to cool
    ready = at(CHECKLIST.starts_utc_s, [done(one, 0.0) for one in before])
    assert ready.behind_s == 0.0


@pytest.mark.parametrize(
    ("axis", "state", "words"),
    [
        (AxisNow(is_needed=False), AlignmentState.NOT_NEEDED, "no polar axis"),
        (AxisNow(budget_arcmin=3.0), AlignmentState.NOT_MEASURED, "not been measured"),
        (AxisNow(2.0, 0.5), AlignmentState.NO_BUDGET, "how much is allowed"),
        (AxisNow(2.0, 0.5, 3.0), AlignmentState.WITHIN, "2.0′ ± 0.5′ off: good enough"),
        (AxisNow(2.0, 1.5, 3.0), AlignmentState.NOT_CLEAR, "watch longer"),
        (AxisNow(5.0, 0.5, 3.0), AlignmentState.BEYOND, "turn the bolts"),
        (AxisNow(2.0, 1.5, 3.0, True, 0.97), AlignmentState.WITHIN, "good enough"),
        (AxisNow(2.0, 0.5, 3.0, True, 0.90), AlignmentState.NOT_CLEAR, "watch longer"),
        (AxisNow(2.0, 0.5, 3.0, True, 0.02), AlignmentState.BEYOND, "turn the bolts"),
    ],
)
def test_alignment_against_the_budget(axis: AxisNow, state: AlignmentState, words: str) -> None:
    assert alignment_state(axis) is state
    now = night_now(NIGHT, CHECKLIST, {}, (), axis, EVENING)
    assert words in now.alignment_sentence


def test_polar_summer_says_so() -> None:
    start = parse_utc("2026-06-21T12:00:00Z")
    night = night_of(Site(75.0, 20.0), start)
    now = night_now(night, CHECKLIST, {}, (), AxisNow(), start)
    assert now.light_sentence == "The Sun does not set tonight."
    assert now.darker_in_s is None
