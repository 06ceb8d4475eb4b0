"""What is seen is dressed at once, what is hidden when there is time or when it is shown."""

import pytest
from PySide6.QtWidgets import QLabel, QStackedWidget

from app.theme.dressing import Dressing

RED, GREEN = "QLabel { color: #ff0000; }", "QLabel { color: #00ff00; }"


@pytest.fixture
def pages(qtbot) -> QStackedWidget:
    stack = QStackedWidget()
    for words in ("seen", "hidden"):
        stack.addWidget(QLabel(words))
    qtbot.addWidget(stack)
    with qtbot.waitExposed(stack):
        stack.show()
    return stack


@pytest.fixture
def dressing(qapp, pages: QStackedWidget):
    made = Dressing()
    made.change(RED)
    for index in range(pages.count()):
        made.add(pages.widget(index))
    yield made
    qapp.processEvents()
    qapp.processEvents()


def _sheets(pages: QStackedWidget) -> list[str]:
    return [pages.widget(index).styleSheet() for index in range(pages.count())]


def test_what_is_seen_comes_first(dressing: Dressing, pages, qtbot) -> None:
    dressing.change(GREEN)
    assert _sheets(pages) == [GREEN, RED]
    qtbot.waitUntil(lambda: _sheets(pages) == [GREEN, GREEN])


def test_what_is_shown_meanwhile_is_dressed_then(dressing: Dressing, pages) -> None:
    dressing.change(GREEN)
    pages.setCurrentIndex(1)
    assert _sheets(pages) == [GREEN, GREEN]


def test_a_part_that_is_gone_is_forgotten(dressing: Dressing, pages, qtbot) -> None:
    gone = pages.widget(1)
    with qtbot.waitSignal(gone.destroyed):
        gone.deleteLater()
    dressing.change(GREEN)
    assert _sheets(pages) == [GREEN]
