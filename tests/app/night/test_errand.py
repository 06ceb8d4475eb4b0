"""A slow question beside the window's thread."""

import threading

import pytest

from app.workers.latest import LatestOnly

pytestmark = pytest.mark.usefixtures("qapp")


@pytest.fixture
def errand():
    made = LatestOnly()
    yield made
    made.close()


def test_it_answers_from_another_thread(errand: LatestOnly, qtbot) -> None:
    with qtbot.waitSignal(errand.done) as done:
        errand.send(threading.get_ident)
    assert done.args[0] != threading.get_ident()


def test_of_those_that_wait_the_newest_is_answered(errand: LatestOnly, qtbot) -> None:
    answers: list[object] = []
    gate = threading.Event()
    errand.done.connect(answers.append)
    errand.send(lambda: gate.wait(5) and "first")
    errand.send(lambda: "second")
    errand.send(lambda: "third")
    gate.set()
    qtbot.waitUntil(lambda: answers == ["first", "third"])


def test_a_question_that_breaks_is_answered_by_none(errand: LatestOnly, qtbot, caplog) -> None:
    with qtbot.waitSignal(errand.done) as done:
        errand.send(lambda: 1 / 0)
    assert done.args == [None]
    assert "ZeroDivisionError" in caplog.text


def test_after_closing_nothing_more_is_answered(errand: LatestOnly, qtbot) -> None:
    errand.close()
    with qtbot.assertNotEmitted(errand.done, wait=20):
        errand.send(lambda: "late")
