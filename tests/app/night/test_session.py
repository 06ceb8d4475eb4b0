"""Steps and readings go in, snapshots come out."""

from collections.abc import Callable

import numpy as np
import pytest
from pytestqt.qtbot import QtBot

from app.devices.source import Reading
from app.night.session import Session
from app.night.snapshot import Snapshot
from core.alignment.driftlog.records import DriftLog, Header, Leg
from core.alignment.goal import Aim
from core.night.record import Kind
from core.sky.site import Air, Site
from tests.app.night.heard import heard

from .conftest import Begin
from .scripted import ScriptedLog

SITE, AIR = Site(50.0, 10.0, 500.0), Air(955.0)
VEGA = ("Vega", 279.23, 38.78)
ALTAIR = ("Altair", 297.70, 8.87)
START_UTC_S = 1_795_568_400.0


def read(session: Session, count: int, start_utc_s: float = START_UTC_S) -> None:
    for i in range(count):
        session.add_reading(Reading(start_utc_s + 10.0 * i, 0.5 * i, sigma_arcsec=0.7))


def is_solved(label: str, count: int) -> Callable[[Snapshot], bool]:
    """Whether a snapshot's solution knows `count` readings of a leg."""

    def check(snapshot: Snapshot) -> bool:
        solution = snapshot.solution
        return solution is not None and getattr(solution, "counts", {}).get(label) == count

    return check


@pytest.fixture
def session(begin: Begin) -> Session:
    session = begin()
    session.set_site(SITE, AIR)
    return session


def test_a_fresh_session_is_empty_and_well(begin: Begin) -> None:
    snapshot = heard(begin())
    assert (snapshot.site, snapshot.legs, snapshot.watching) == (None, (), None)
    assert (snapshot.solution, snapshot.problem, snapshot.axis_state) == (None, None, 1)


def test_readings_are_solved_away_from_the_window(qtbot: QtBot, session: Session) -> None:
    label = session.begin_leg(*VEGA)
    assert label == "1 Vega"
    with qtbot.waitSignal(session.changed, check_params_cb=is_solved(label, 6)) as got:
        read(session, 6)
    snapshot = got.args[0]
    assert not snapshot.solution_is_stale
    assert snapshot.watching == label
    assert snapshot.forecast.label == label
    assert snapshot.legs[0].north_arcsec.tolist() == [0.0, 0.5, 1.0, 1.5, 2.0, 2.5]


def test_every_reading_is_told_and_none_emits_a_snapshot(session: Session) -> None:
    session.begin_leg(*VEGA)
    told: list[str] = []
    session.reading_added.connect(lambda: told.append("reading"))
    session.changed.connect(lambda _: told.append("changed"))
    read(session, 3)
    assert told == ["reading"] * 3


def test_a_leg_just_begun_is_not_asked_about(qtbot: QtBot, session: Session) -> None:
    first = session.begin_leg(*VEGA)
    read(session, 5)
    with qtbot.waitSignal(session.changed, check_params_cb=is_solved(first, 5)):
        second = session.begin_leg(*ALTAIR)
    assert heard(session).watching == second == "2 Altair"
    with qtbot.waitSignal(session.changed, check_params_cb=is_solved(second, 4)):
        read(session, 4, START_UTC_S + 600.0)


def test_labels_never_come_twice(session: Session) -> None:
    labels = [session.begin_leg(*VEGA), session.begin_leg(*VEGA)]
    session.discard_leg(labels[1])
    labels.append(session.begin_leg("", 1.0, 2.0))
    session.bolts_turned()
    labels.append(session.begin_leg(*VEGA))
    assert labels == ["1 Vega", "2 Vega", "3", "4 Vega"]


def test_settings_ask_again_and_mark_the_old_answer(qtbot: QtBot, session: Session) -> None:
    label = session.begin_leg(*VEGA)
    with qtbot.waitSignal(session.changed, check_params_cb=is_solved(label, 5)):
        read(session, 5)
    session.set_aim(Aim.REFRACTED_POLE)
    session.set_target(2.5)
    assert heard(session).solution_is_stale
    with qtbot.waitSignal(
        session.changed, check_params_cb=lambda snapshot: not snapshot.solution_is_stale
    ) as got:
        pass
    assert got.args[0].advice.aim is Aim.REFRACTED_POLE
    assert got.args[0].forecast.target == 2.5


def test_without_a_site_it_says_so_and_keeps_the_readings(qtbot: QtBot, begin: Begin) -> None:
    session = begin()
    label = session.begin_leg(*VEGA)
    read(session, 5)
    snapshot = heard(session)
    assert "latitude and longitude" in (snapshot.problem or "")
    assert snapshot.legs[0].utc_s.size == 5
    with qtbot.waitSignal(session.changed, check_params_cb=is_solved(label, 5)) as got:
        session.set_site(SITE)
    assert got.args[0].problem is None
    assert got.args[0].air.pressure_is_assumed


def test_turned_bolts_begin_anew(qtbot: QtBot, session: Session) -> None:
    label = session.begin_leg(*VEGA)
    with qtbot.waitSignal(session.changed, check_params_cb=is_solved(label, 5)):
        read(session, 5)
    with qtbot.waitSignal(session.changed) as got:
        session.bolts_turned()
    snapshot = got.args[0]
    assert (snapshot.axis_state, snapshot.legs, snapshot.watching) == (2, (), None)
    assert (snapshot.solution, snapshot.advice, snapshot.solution_is_stale) == (None, None, False)


def test_a_discarded_leg_leaves_the_solution(qtbot: QtBot, session: Session) -> None:
    bad, good = session.begin_leg(*VEGA), None
    read(session, 5)
    good = session.begin_leg(*ALTAIR)
    read(session, 5, START_UTC_S + 600.0)
    session.end_leg()
    with qtbot.waitSignal(session.changed, check_params_cb=lambda s: bad not in labels_solved(s)):
        session.discard_leg(bad)
    assert [leg.label for leg in heard(session).legs] == [good]
    session.discard_leg(bad)
    assert "no leg “1 Vega”" in (heard(session).problem or "")


def labels_solved(snapshot: Snapshot) -> set[str]:
    counts = getattr(snapshot.solution, "counts", {"1 Vega": 0})
    return set(counts)


def test_the_last_reading_can_be_taken_back(session: Session) -> None:
    assert not session.remove_last_reading()
    session.begin_leg(*VEGA)
    assert not session.remove_last_reading()
    read(session, 3)
    early = heard(session)
    assert session.remove_last_reading()
    assert heard(session).legs[0].north_arcsec.tolist() == [0.0, 0.5]
    assert early.legs[0].north_arcsec.tolist() == [0.0, 0.5, 1.0]


@pytest.mark.parametrize(
    ("utc_s", "north_arcsec"), [(np.nan, 1.0), (START_UTC_S + 99.0, np.inf), (np.inf, 0.0)]
)
def test_readings_that_are_no_numbers_are_refused(
    session: Session, utc_s: float, north_arcsec: float
) -> None:
    session.begin_leg(*VEGA)
    read(session, 2)
    session.add_reading(Reading(utc_s, north_arcsec))
    snapshot = heard(session)
    assert "not a number" in (snapshot.problem or "")
    assert snapshot.legs[0].utc_s.size == 2
    session.add_reading(Reading(START_UTC_S + 100.0, 1.0))
    assert heard(session).problem is None


def test_a_reading_of_no_star_is_refused(session: Session) -> None:
    read(session, 1)
    assert "begin a leg first" in (heard(session).problem or "")
    session.begin_leg(*VEGA)
    assert heard(session).problem is None


def imported(label: str) -> Leg:
    utc_s = START_UTC_S + np.arange(8) * 30.0
    return Leg(label, 279.2, 38.8, utc_s, np.linspace(0.0, 4.0, 8))


def test_a_log_joins_the_legs_and_brings_its_place(qtbot: QtBot, begin: Begin) -> None:
    session = begin()
    log = DriftLog(Header(-33.0, 18.0, 200.0), (imported("east"), imported("east"), imported("")))
    with qtbot.waitSignal(session.changed, check_params_cb=is_solved("east (2)", 8)) as got:
        session.take_log(log)
    assert [leg.label for leg in got.args[0].legs] == ["east", "east (2)", "3"]
    assert got.args[0].site == Site(-33.0, 18.0, 200.0)


def test_a_log_does_not_move_the_site(session: Session) -> None:
    label = session.begin_leg(*VEGA)
    session.take_log(DriftLog(Header(-33.0, 18.0), (imported("a"),)))
    snapshot = heard(session)
    assert snapshot.site == SITE
    assert snapshot.watching == label


def test_a_log_kept_apart_begins_an_axis_state_of_its_own(qtbot: QtBot, begin: Begin) -> None:
    log = ScriptedLog()
    session = begin(log=log)
    session.set_site(SITE, AIR)
    label = session.begin_leg(*VEGA)
    with qtbot.waitSignal(session.changed, check_params_cb=is_solved(label, 6)):
        read(session, 6)
    taken = DriftLog(Header(), (imported(label),))
    assert session.question_on(taken)
    assert heard(session).watching == label  # a question changes nothing
    with qtbot.waitSignal(session.changed, check_params_cb=is_solved(f"{label} (2)", 8)) as got:
        session.take_log_apart(taken)
    snapshot = got.args[0]
    assert [leg.label for leg in snapshot.legs] == [f"{label} (2)"]
    assert (snapshot.axis_state, snapshot.watching) == (2, None)
    assert snapshot.guide.last_turn is None  # nobody turned a bolt
    steps = [name for name in log.names() if name in ("end_leg", "begin_axis_state", "add_leg")]
    assert steps == ["add_leg", "end_leg", "begin_axis_state", "add_leg", "end_leg"]
    assert [kind for kind, _ in log.entries] == [Kind.RESULT]


def test_nothing_is_asked_about_a_log_that_meets_no_legs(session: Session) -> None:
    taken = DriftLog(Header(), (imported("a"),))
    assert session.question_on(taken) == ""
    session.take_log(taken)
    assert session.question_on(taken) == ""  # all here already
    session.bolts_turned()
    assert session.question_on(taken) == ""


def test_a_leg_measured_as_a_whole_gets_a_number(qtbot: QtBot, session: Session) -> None:
    with qtbot.waitSignal(session.changed, check_params_cb=is_solved("1 Vega", 8)):
        assert session.take_leg("Vega", imported("anything")) == "1 Vega"
    assert heard(session).watching is None
