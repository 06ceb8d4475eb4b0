"""A computer that sleeps in the middle of a leg, with clocks moved by hand."""

import numpy as np
import pytest

from app.devices.source import Reading
from app.workers.clocks import ClockWatch, awake_s, moved_after_arcmin, steady_s
from core.alignment.driftlog.records import Leg
from core.sky.site import Air, Site
from tests.app.night.heard import heard
from tests.app.night.scripted import ScriptedLog

pytestmark = pytest.mark.usefixtures("qapp")
START_S = 1_798_761_540.0  # 2026-12-31 23:59:00 UTC: the year ends in the sleep
AWAKE_S = START_S + 60.0 + 720.0
VEGA = ("Vega", 279.2, 38.8)


class Clocks:
    wall_s, steady_s, awake_s = START_S, 70.0, 50.0

    def pass_time(self, seconds: float, asleep_s: float = 0.0, step_s: float = 0.0) -> None:
        self.wall_s += seconds + asleep_s + step_s
        self.steady_s += seconds + asleep_s
        self.awake_s += seconds


@pytest.fixture
def clocks() -> Clocks:
    return Clocks()


@pytest.fixture
def watch(clocks: Clocks) -> ClockWatch:
    return ClockWatch(lambda: clocks.wall_s, lambda: clocks.steady_s, None, lambda: clocks.awake_s)


def test_a_sleep_is_told_once_and_is_no_jump(watch, clocks, qtbot) -> None:
    clocks.pass_time(1.0, asleep_s=720.0)
    with qtbot.assertNotEmitted(watch.jumped), qtbot.waitSignal(watch.slept) as slept:
        watch.look()
    assert slept.args == [pytest.approx(720.0)]
    clocks.pass_time(1.0)
    with qtbot.assertNotEmitted(watch.slept):
        watch.look()


def test_a_clock_that_is_set_is_no_sleep(watch, clocks, qtbot) -> None:
    clocks.pass_time(1.0, step_s=3600.0)
    with qtbot.assertNotEmitted(watch.slept), qtbot.waitSignal(watch.jumped):
        watch.look()


def test_the_clock_that_stands_during_sleep_is_never_ahead() -> None:
    assert awake_s() <= steady_s() + 0.1
    assert awake_s() <= awake_s()


def _watching(begin, arcsec_per_s: float, log: ScriptedLog | None = None):
    session = begin(log=log)
    session.set_site(Site(48.0, 11.0, 500.0), Air(950.0))
    session.begin_leg(*VEGA)
    for second in range(0, 60, 3):
        session.add_reading(Reading(START_S + second, arcsec_per_s * second, 0.0))
    return session


def test_a_slow_star_goes_on_in_its_leg_with_the_gap_said(begin) -> None:
    session = _watching(begin, 0.01)
    label = heard(session).watching
    session.woke(720.0, AWAKE_S, 6.0)
    snapshot = heard(session)
    assert snapshot.watching == label
    assert "slept for 12 min while" in snapshot.problem
    assert "within 38 min, the leg goes on" in snapshot.problem  # no gap may last an hour
    session.add_reading(Reading(START_S + 780.0, 8.0, 0.0))
    (leg,) = heard(session).legs
    assert leg.utc_s.size == 21


def test_a_star_that_has_drifted_out_of_the_field_gets_a_new_leg(begin) -> None:
    log = ScriptedLog()
    session = _watching(begin, 0.5, log)
    first = heard(session).watching
    session.woke(720.0, AWAKE_S, 6.0)  # 0.5 a second for 12 minutes are 6 minutes of arc
    snapshot = heard(session)
    assert snapshot.watching not in (None, first)
    assert [leg.label for leg in snapshot.legs] == [first, snapshot.watching]
    assert "has left the field" in snapshot.problem
    assert log.names().count("add_leg") == 2


@pytest.mark.parametrize("before_s", [0.0, 1500.0])
def test_a_sleep_too_long_for_one_leg_begins_the_next_at_once(begin, before_s: float) -> None:
    session = _watching(begin, 0.0)
    first = heard(session).watching
    asleep_s = 3600.0 - before_s  # the star was not read for a while before the computer slept
    awake_s = START_S + 57.0 + 3600.0
    session.woke(asleep_s, awake_s, 6.0)
    snapshot = heard(session)
    assert snapshot.watching not in (None, first)
    assert "last read 60 min ago" in snapshot.problem
    session.add_reading(Reading(awake_s + 30.0, 0.0, 0.0))
    assert len(heard(session).legs) == 2  # and no second notice that a leg was ended
    assert heard(session).problem == snapshot.problem


def test_what_is_promised_after_a_sleep_is_kept(begin) -> None:
    session = _watching(begin, 0.0)
    first = heard(session).watching
    session.woke(2640.0, START_S + 57.0 + 2640.0, 6.0)
    assert "within 6 min, the leg goes on" in heard(session).problem
    session.add_reading(Reading(START_S + 57.0 + 3000.0, 0.0, 0.0))
    assert heard(session).watching == first


def test_a_star_not_read_yet_has_no_gap(begin) -> None:
    session = begin()
    session.begin_leg(*VEGA)
    first = heard(session).watching
    session.woke(7200.0, AWAKE_S + 7200.0, 6.0)
    assert heard(session).watching == first
    assert "for the first time" in heard(session).problem


def test_in_a_wide_field_the_same_star_is_still_there(begin) -> None:
    session = _watching(begin, 0.5)
    first = heard(session).watching
    session.woke(720.0, AWAKE_S, 60.0)
    assert heard(session).watching == first


def test_a_sleep_between_legs_says_nothing(begin) -> None:
    session = begin()
    session.woke(720.0, AWAKE_S, 6.0)
    assert heard(session).problem is None


def test_the_way_of_a_star_goes_on_as_it_began() -> None:
    utc_s = START_S + np.arange(0.0, 60.0, 2.0)
    leg = Leg("Vega", 0.0, 0.0, utc_s, 0.1 * (utc_s - START_S), np.zeros(30))
    # A tenth of an arcsecond a second, for 58 s and 600 s more.
    assert moved_after_arcmin(leg, 600.0) == pytest.approx(65.8 / 60.0, rel=1e-6)
