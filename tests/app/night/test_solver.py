"""The worker answers the newest question, survives faults and stops when told."""

import logging
from collections.abc import Callable, Iterator

import pytest
from pytestqt.qtbot import QtBot

from app.night.question import AxisAnswer, AxisQuestion
from app.night.solver import SolverThread
from core.alignment.goal import Aim
from core.sky.site import Air, Site

from .scripted import HeldComputation, counting_answer

Start = Callable[[Callable[[AxisQuestion], AxisAnswer]], SolverThread]


def question(revision: int) -> AxisQuestion:
    return AxisQuestion(revision, (), Site(50.0, 0.0), Air(1000.0), Aim.TRUE_POLE, 1.0, None)


@pytest.fixture
def start() -> Iterator[Start]:
    started: list[SolverThread] = []

    def begin(compute: Callable[[AxisQuestion], AxisAnswer]) -> SolverThread:
        started.append(SolverThread(compute))
        started[-1].start()
        return started[-1]

    yield begin
    for thread in started:
        thread.close()


def test_answers_carry_the_revision_of_their_question(qtbot: QtBot, start: Start) -> None:
    solver = start(counting_answer)
    with qtbot.waitSignal(solver.answered) as got:
        solver.ask(question(7))
    assert got.args[0].revision == 7


def test_only_the_newest_waiting_question_is_answered(qtbot: QtBot, start: Start) -> None:
    held = HeldComputation()
    solver = start(held)
    solver.ask(question(1))
    assert held.entered.wait(5.0)
    for revision in range(2, 50):
        solver.ask(question(revision))
    answers: list[int] = []
    solver.answered.connect(lambda answer: answers.append(answer.revision))
    with qtbot.waitSignal(solver.answered, check_params_cb=lambda answer: answer.revision == 49):
        held.release.set()
    assert answers == [1, 49]


def test_a_fault_becomes_a_sentence_and_the_worker_goes_on(
    qtbot: QtBot, start: Start, caplog: pytest.LogCaptureFixture
) -> None:
    def faulty(asked: AxisQuestion) -> AxisAnswer:
        if asked.revision == 1:
            raise ZeroDivisionError("a leg of no length")
        return counting_answer(asked)

    solver = start(faulty)
    with caplog.at_level(logging.ERROR), qtbot.waitSignal(solver.answered) as first:
        solver.ask(question(1))
    assert "a leg of no length" in first.args[0].problem
    assert "Every reading is kept" in first.args[0].problem
    assert "Traceback" not in first.args[0].problem
    assert [record.name for record in caplog.records] == ["app.night.solver"]
    with qtbot.waitSignal(solver.answered) as second:
        solver.ask(question(2))
    assert second.args[0].problem is None


def test_closing_ends_the_thread_at_once_while_it_rests(qtbot: QtBot, start: Start) -> None:
    solver = start(counting_answer)
    with qtbot.waitSignal(solver.answered):
        solver.ask(question(1))
    solver.ask(question(2))
    solver.close()
    assert solver.isFinished()


def test_closing_twice_is_harmless(start: Start) -> None:
    solver = start(counting_answer)
    solver.close()
    solver.close()
    assert solver.isFinished()
