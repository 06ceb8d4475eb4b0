"""Ticks while it is seen, and only then."""

import pytest
from PySide6.QtWidgets import QWidget

from app.ui.redraw import Ticking

JUST_BEFORE_S = 1_790_000_000.999  # so that the next second is a millisecond away


@pytest.fixture
def ticks() -> list[float]:
    return []


@pytest.fixture
def widget(qtbot, ticks) -> QWidget:
    made = QWidget()
    made.ticking = Ticking(made, lambda: JUST_BEFORE_S, ticks.append)
    qtbot.addWidget(made)
    return made


def test_it_ticks_as_it_appears_and_goes_on(widget: QWidget, ticks: list[float], qtbot) -> None:
    assert ticks == []
    widget.show()
    assert ticks == [JUST_BEFORE_S]
    qtbot.waitUntil(lambda: len(ticks) > 3)


def test_hidden_it_stops(widget: QWidget, ticks: list[float], qtbot) -> None:
    widget.show()
    widget.hide()
    before = len(ticks)
    qtbot.wait(50)  # fifty times as long as a tick would take
    assert len(ticks) == before
