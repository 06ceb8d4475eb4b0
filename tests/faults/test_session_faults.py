"""A clock that jumps, a disk that fails, a computation that breaks: the night goes on."""

from __future__ import annotations

import logging
import threading
from collections.abc import Iterator

import pytest
from pytestqt.qtbot import QtBot

from app.devices.source import Reading
from app.night.question import AxisAnswer, AxisQuestion, work_out
from app.night.session import Session
from core.alignment.drift.prepared import LegNote, UnusableLegs
from core.sky.site import Site
from tests.app.night.heard import heard
from tests.app.night.scripted import ScriptedLog, counting_answer

SITE = Site(50.0, 10.0, 500.0)
VEGA = ("Vega", 279.23, 38.78)
START_UTC_S = 1_795_568_400.0
HOUR_S = 3600.0


class Sessions:
    """Makes sessions with a site and a leg under way, and closes them."""

    def __init__(self) -> None:
        self.made: list[Session] = []

    def __call__(self, compute=counting_answer, log: ScriptedLog | None = None) -> Session:  # type: ignore[no-untyped-def]
        session = Session(compute, log)
        self.made.append(session)
        session.set_site(SITE)
        session.begin_leg(*VEGA)
        return session


@pytest.fixture
def watching(qtbot: QtBot) -> Iterator[Sessions]:
    sessions = Sessions()
    yield sessions
    for session in sessions.made:
        session.close()
    qtbot.wait(0)


def read(session: Session, count: int, start_utc_s: float = START_UTC_S) -> None:
    for i in range(count):
        session.add_reading(Reading(start_utc_s + 2.0 * i, 0.1 * i, 0.2 * i))


def leg_sizes(session: Session) -> dict[str, int]:
    return {leg.label: leg.utc_s.size for leg in heard(session).legs}


def test_a_clock_set_back_begins_a_new_leg_and_says_so(watching: Sessions) -> None:
    session = watching()
    read(session, 30)
    read(session, 20, START_UTC_S - HOUR_S)
    assert leg_sizes(session) == {"1 Vega": 30, "2 Vega": 20}
    problem = heard(session).problem or ""
    assert "went back by 61 min" in problem
    assert "“1 Vega” was ended and “2 Vega” begun" in problem
    session.end_leg()
    assert heard(session).problem is None


def test_a_clock_set_forward_by_an_hour_is_noticed(watching: Sessions) -> None:
    session = watching()
    read(session, 30)
    read(session, 20, START_UTC_S + 60.0 + HOUR_S)
    assert leg_sizes(session) == {"1 Vega": 30, "2 Vega": 20}
    assert "set forward" in (heard(session).problem or "")


def test_a_reading_that_comes_twice_is_refused_and_the_next_is_taken(watching: Sessions) -> None:
    session = watching()
    read(session, 3)
    session.add_reading(Reading(START_UTC_S + 4.0, 9.9))
    assert "same instant" in (heard(session).problem or "")
    assert leg_sizes(session) == {"1 Vega": 3}
    read(session, 1, START_UTC_S + 6.0)
    assert heard(session).problem is None
    assert leg_sizes(session) == {"1 Vega": 4}


def test_a_disk_that_fails_mid_night_costs_a_sentence_only(
    qtbot: QtBot, watching: Sessions
) -> None:
    log = ScriptedLog(fails_from=10)
    session = watching(log=log)
    with qtbot.waitSignal(
        session.changed, check_params_cb=lambda s: "no space left" in (s.problem or "")
    ) as got:
        read(session, 30)
    assert "export it as a drift log" in got.args[0].problem
    assert leg_sizes(session) == {"1 Vega": 30}
    session.bolts_turned()
    session.begin_leg(*VEGA)
    read(session, 5, START_UTC_S + 300.0)
    assert leg_sizes(session) == {"2 Vega": 5}


def test_the_writer_thread_may_report_and_take_back(qtbot: QtBot, watching: Sessions) -> None:
    session = watching()
    for sentence in ("The disk is full: free some space.", None):
        with qtbot.waitSignal(session.changed) as got:
            writer = threading.Thread(target=session.report_storage, args=(sentence,))
            writer.start()
        writer.join()
        assert got.args[0].problem == sentence


def test_a_broken_computation_keeps_the_last_solution(
    qtbot: QtBot, watching: Sessions, caplog: pytest.LogCaptureFixture
) -> None:
    def compute(question: AxisQuestion) -> AxisAnswer:
        if question.target_arcmin == 3.0:
            raise FloatingPointError("a matrix without an inverse")
        return counting_answer(question)

    session = watching(compute)
    with qtbot.waitSignal(session.changed, check_params_cb=lambda s: s.solution is not None):
        read(session, 30)
    with (
        caplog.at_level(logging.ERROR),
        qtbot.waitSignal(session.changed, check_params_cb=lambda s: s.problem is not None) as got,
    ):
        session.set_target(3.0)
    assert "a matrix without an inverse" in got.args[0].problem
    assert got.args[0].solution is not None
    assert got.args[0].solution_is_stale
    with qtbot.waitSignal(
        session.changed, check_params_cb=lambda s: s.problem is None and not s.solution_is_stale
    ):
        session.set_target(1.0)


def test_unusable_legs_are_explained_in_their_own_sentence(
    qtbot: QtBot, watching: Sessions, monkeypatch: pytest.MonkeyPatch
) -> None:
    def solve(*_: object, **__: object) -> None:
        raise UnusableLegs(LegNote.NONE)

    monkeypatch.setattr("core.alignment.axis.solution.solve", solve)
    session = watching(work_out)
    with qtbot.waitSignal(session.changed, check_params_cb=lambda s: s.problem is not None) as got:
        read(session, 30)
    assert got.args[0].problem == str(LegNote.NONE)
    assert got.args[0].solution is None


def test_closing_in_the_middle_of_a_computation_waits_for_it(watching: Sessions) -> None:
    entered, proceed = threading.Event(), threading.Event()

    def slow(question: AxisQuestion) -> AxisAnswer:
        entered.set()
        assert proceed.wait(5.0)
        return counting_answer(question)

    session = watching(slow)
    read(session, 30)
    assert entered.wait(5.0)
    threading.Timer(0.05, proceed.set).start()
    session.close()
    assert leg_sizes(session) == {"1 Vega": 30}
