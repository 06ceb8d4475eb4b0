"""What is seen is dressed first and in one picture, the rest when there is time or when shown."""

import pytest
from PySide6.QtCore import QEvent, QObject
from PySide6.QtWidgets import (
    QApplication,
    QLabel,
    QScrollArea,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from app.ui.style import GROWS, MOST_WIDGETS, Dressing, cut, tell_grown

RED, GREEN = "QLabel { color: #ff0000; }", "QLabel { color: #00ff00; }"
FLOORS = 4  # of as many labels as a piece may hold, less its own frame


@pytest.fixture
def pages(qtbot) -> QStackedWidget:
    stack = QStackedWidget()
    for words in ("seen", "hidden"):
        stack.addWidget(_page(words))
    qtbot.addWidget(stack)
    with qtbot.waitExposed(stack):
        stack.show()
    return stack


@pytest.fixture
def dressing(pages: QStackedWidget, qtbot):
    made = Dressing()
    made.change(RED)
    for index in range(pages.count()):
        for _ in made.add_page(pages.widget(index)):
            pass
    yield made
    qtbot.waitUntil(made.is_settled)
    made.close()


def _page(words: str) -> QWidget:
    page = QWidget()
    column = QVBoxLayout(page)
    for _ in range(FLOORS):
        floor = QWidget()
        inner = QVBoxLayout(floor)
        for _ in range(MOST_WIDGETS - 1):
            inner.addWidget(QLabel(words))
        column.addWidget(floor)
    return page


def _colours(widget: QWidget) -> set[str]:
    labels = widget.findChildren(QLabel)
    for label in labels:
        label.ensurePolished()
    return {label.palette().windowText().color().name() for label in labels}


def test_what_is_seen_comes_first(dressing: Dressing, pages, qtbot) -> None:
    with qtbot.waitSignal(dressing.settled):
        dressing.change(GREEN)
    assert _colours(pages.widget(0)) == {"#00ff00"}
    qtbot.waitUntil(lambda: _colours(pages.widget(1)) == {"#00ff00"})


def test_no_picture_is_drawn_before_all_that_is_seen_is_dressed(
    dressing: Dressing, pages, qtbot
) -> None:
    assert pages.updatesEnabled()
    dressing.change(GREEN)
    assert not pages.updatesEnabled()
    qtbot.waitUntil(dressing.is_settled)
    assert pages.updatesEnabled()


class _Paints(QObject):
    """What reaches the screen; a grab renders afresh and would look right on a frozen window."""

    def __init__(self, dressing: Dressing) -> None:
        super().__init__()
        self._dressing = dressing
        self.early = 0
        self.late = 0

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Paint:
            if self._dressing.is_settled():
                self.late += 1
            else:
                self.early += 1
        return super().eventFilter(watched, event)


@pytest.mark.parametrize("is_pending", [False, True])
def test_the_screen_shows_each_change_whatever_was_to_be_painted(
    dressing: Dressing, pages, qtbot, is_pending: bool
) -> None:
    label = pages.widget(0).findChild(QLabel)
    for sheet in (GREEN, RED, GREEN):
        QApplication.processEvents()
        paints = _Paints(dressing)
        label.installEventFilter(paints)
        if is_pending:
            pages.update()
        dressing.change(sheet)
        qtbot.waitUntil(lambda paints=paints: paints.late > 0)
        assert paints.early == 0
        label.removeEventFilter(paints)


def test_what_is_shown_meanwhile_waits_for_nothing_but_itself(
    dressing: Dressing, pages, qtbot
) -> None:
    qtbot.waitUntil(dressing.is_settled)
    dressing.change(GREEN)
    pages.setCurrentIndex(1)
    assert not pages.updatesEnabled()
    qtbot.waitUntil(dressing.is_settled)
    assert _colours(pages.widget(1)) == {"#00ff00"}


def test_a_part_that_is_gone_is_forgotten(dressing: Dressing, pages, qtbot) -> None:
    gone = pages.widget(1)
    with qtbot.waitSignal(gone.destroyed):
        gone.deleteLater()
    dressing.change(GREEN)
    qtbot.waitUntil(dressing.is_settled)
    assert _colours(pages.widget(0)) == {"#00ff00"}


@pytest.mark.parametrize("is_shown", [True, False])
def test_what_comes_into_a_page_later_is_dressed(dressing, pages, qtbot, is_shown: bool) -> None:
    late = QLabel("late")
    late.setVisible(False)
    pages.widget(0).layout().addWidget(late)
    late.setVisible(is_shown)
    qtbot.waitUntil(lambda: late.styleSheet() == RED)
    dressing.change(GREEN)
    qtbot.waitUntil(lambda: late.styleSheet() == GREEN)


def test_what_is_told_of_is_dressed_at_once(dressing: Dressing, pages) -> None:
    late = QLabel("late")
    late.hide()
    pages.widget(1).layout().addWidget(late)
    assert not late.styleSheet()
    tell_grown(pages.widget(1))
    assert late.styleSheet() == RED
    assert dressing.is_settled()


def test_pieces_are_small_and_leave_nothing_out(pages) -> None:
    page = pages.widget(0)
    made = cut(page)
    assert [len(piece.findChildren(QWidget)) + 1 for piece in made.pieces] == (
        [MOST_WIDGETS] * FLOORS
    )
    assert made.frames == [page]


def test_what_grows_is_no_piece(qtbot) -> None:
    grows = QWidget()
    grows.setProperty(GROWS, True)
    child = QLabel("child", grows)
    page = QScrollArea()
    qtbot.addWidget(page)
    holder = QWidget()
    grows.setParent(holder)
    page.setWidget(holder)
    made = cut(page.viewport())
    assert grows in made.frames
    assert child in made.pieces


def test_a_change_between_two_slices_reaches_the_whole_page(
    dressing: Dressing, pages, qtbot
) -> None:
    page = _page("late")
    pages.addWidget(page)
    slices = dressing.add_page(page)
    next(slices)
    dressing.change(GREEN)
    for _ in slices:
        pass
    qtbot.waitUntil(dressing.is_settled)
    pages.setCurrentWidget(page)
    qtbot.waitUntil(dressing.is_settled)
    assert _colours(page) == {"#00ff00"}
