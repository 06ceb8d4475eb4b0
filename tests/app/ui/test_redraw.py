"""Redraw: never inside the call that marks, one drawing in a turn of the event loop."""

import pytest
from PySide6.QtWidgets import QApplication, QWidget

from app.ui.redraw import Redraw

INTERVAL_MS = 30


@pytest.fixture
def shown(qtbot) -> QWidget:
    widget = QWidget()
    qtbot.addWidget(widget)
    with qtbot.waitExposed(widget):
        widget.show()
    return widget


def _drawn_in_each_turn(done: list[str], turns: int) -> list[list[str]]:
    """What came to `done` in each turn of the event loop in which anything did."""
    told = []
    for _ in range(turns):
        before = len(done)
        QApplication.processEvents()
        told.append(done[before:])
    return [one for one in told if one]


def test_marking_draws_nothing_by_itself(shown: QWidget, qtbot) -> None:
    done: list[str] = []
    redraw = Redraw(shown, lambda: done.append("picture"), INTERVAL_MS)
    redraw.mark()
    assert done == []
    qtbot.waitUntil(lambda: done == ["picture"])


def test_what_is_due_together_takes_turns(shown: QWidget) -> None:
    done: list[str] = []
    names = ("picture", "words", "list")
    redraws = [Redraw(shown, lambda name=name: done.append(name), INTERVAL_MS) for name in names]
    for redraw in redraws:
        redraw.mark()
    assert _drawn_in_each_turn(done, 20) == [["picture"], ["words"], ["list"]]


def test_it_draws_once_an_interval_however_often_it_is_marked(shown: QWidget, qtbot) -> None:
    done: list[str] = []
    redraw = Redraw(shown, lambda: done.append("picture"), 10 * INTERVAL_MS)
    redraw.mark()
    qtbot.waitUntil(lambda: len(done) == 1)
    for _ in range(1000):
        redraw.mark()
    qtbot.wait(2 * INTERVAL_MS)
    assert len(done) == 1
    qtbot.waitUntil(lambda: len(done) == 2)


def test_hidden_it_waits_and_shown_again_it_catches_up_once(shown: QWidget, qtbot) -> None:
    done: list[str] = []
    redraw = Redraw(shown, lambda: done.append("picture"), INTERVAL_MS)
    shown.hide()
    redraw.mark()
    redraw.mark()
    qtbot.wait(2 * INTERVAL_MS)
    assert done == []
    shown.show()
    qtbot.waitUntil(lambda: len(done) == 1)
    qtbot.wait(3 * INTERVAL_MS)
    assert len(done) == 1
