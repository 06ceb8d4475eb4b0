"""The window: pages on demand, the place, the look, a message."""

from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QLineEdit, QVBoxLayout, QWidget

from app.ui.form import Key
from app.ui.window import PageEntry, TopBar, Window
from app.workers.yielding import AGAIN
from core.sky.site import Site

NOW_S = 1_790_000_000.0


@pytest.fixture
def built() -> list[str]:
    return []


@pytest.fixture
def window(qtbot, theme, built) -> Window:
    def builder(name: str):
        def build() -> QLabel:
            built.append(name)
            return QLabel(name)

        return build

    made = Window(theme, lambda: NOW_S)
    made.offer([PageEntry("site", "Site", builder("site")), PageEntry("drift", "D", builder("d"))])
    qtbot.addWidget(made)
    made.show()
    return made


def test_a_page_is_built_when_first_looked_at_and_once(window: Window, built: list[str]) -> None:
    assert built == []
    window.show_page("site")
    window.show_page("drift")
    QTest.mouseClick(window.rail_button("site"), Qt.MouseButton.LeftButton)
    assert built == ["site", "d"]
    assert window.page("site").isVisible()
    assert window.rail_button("site").isChecked()


def test_a_page_asked_for_while_it_is_being_built_is_finished_first(
    window: Window, built: list[str], theme
) -> None:
    make, take_in, dress = window.building("site")
    make()
    take_in()
    assert dress() == AGAIN
    window.show_page("site")
    page = window.page("site")
    assert page.isVisible()
    assert page.palette().windowText().color().name() == theme.look.text.lower()
    assert dress() is None
    assert built == ["site"]


def test_until_the_first_page_is_there_the_window_says_what_it_does(window: Window) -> None:
    said = [label for label in window.findChildren(QLabel) if label.text().startswith("Opening")]
    assert [label.isVisible() for label in said] == [True]
    window.show_page("site")
    assert not said[0].isVisible()


def test_pages_are_reached_by_key(window: Window, built: list[str], qtbot) -> None:
    with qtbot.waitActive(window):
        window.activateWindow()
    QTest.keyClick(window, Qt.Key.Key_2, Qt.KeyboardModifier.AltModifier)
    qtbot.waitUntil(lambda: built == ["d"])  # a key press animates the button first


def test_the_strip_names_the_place(window: Window) -> None:
    strip = window.findChild(TopBar)
    assert any("No place yet" in label.text() for label in strip.findChildren(QLabel))
    window.show_site(Site(-33.5, 18.25, 1200.0, "Meadow"))
    texts = " ".join(label.text() for label in strip.findChildren(QLabel))
    assert "Meadow" in texts
    assert "33.5000° S, 18.2500° E" in texts
    assert "2026-09-21  14:13:20 UTC" in texts  # 1.79e9 s since 1970, by `date -u -d @1790000000`


def test_a_message_stays_until_it_is_read(window: Window) -> None:
    window.say("The disk is full.")
    assert window.notice() == "The disk is full."


def test_closing_is_told(window: Window, qtbot) -> None:
    with qtbot.waitSignal(window.closing):
        window.close()


def _drop(window: Window, *paths: str) -> None:
    dropped = QMimeData()
    dropped.setUrls([QUrl.fromLocalFile(path) for path in paths])
    middle = QPointF(window.rect().center())
    everything = (Qt.DropAction.CopyAction, dropped, Qt.MouseButton.LeftButton)
    plain = Qt.KeyboardModifier.NoModifier
    entering = QDragEnterEvent(middle.toPoint(), *everything, plain)
    QApplication.sendEvent(window, entering)
    assert entering.isAccepted()
    QApplication.sendEvent(window, QDropEvent(middle, *everything, plain))


def test_a_file_dropped_anywhere_is_passed_on(window: Window, qtbot) -> None:
    with qtbot.waitSignal(window.file_dropped) as got:
        _drop(window, "/tmp/night.csv")
    assert got.args == [Path("/tmp/night.csv")]


def test_several_files_at_once_are_refused_in_words(window: Window, qtbot) -> None:
    with qtbot.assertNotEmitted(window.file_dropped):
        _drop(window, "/tmp/a.csv", "/tmp/b.csv")
    assert "one file at a time" in window.notice()


def test_the_window_stays_when_there_is_a_reason(window: Window, qtbot) -> None:
    window.may_close = lambda: False
    with qtbot.assertNotEmitted(window.closing):
        assert not window.close()
    window.may_close = lambda: True
    assert window.close()


def test_tab_reaches_what_stands_above_where_the_page_begins(theme, qtbot) -> None:
    page = QWidget()
    column = QVBoxLayout(page)
    above, begin = QLineEdit(), QLineEdit()
    column.addWidget(above)
    column.addWidget(begin)
    page.setFocusProxy(begin)
    made = Window(theme, lambda: NOW_S)
    made.offer([PageEntry("one", "One", lambda: page)])
    qtbot.addWidget(made)
    with qtbot.waitActive(made):
        made.show()
        made.activateWindow()
    made.show_page("one")
    assert begin.hasFocus()
    for _ in range(20):
        QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
        if above.hasFocus():
            return
    raise AssertionError("the line above was never reached")


@pytest.mark.parametrize("stays", [False, True])
def test_the_focus_never_goes_to_a_look_by_itself(theme, qtbot, stays: bool) -> None:
    """Where a key is gone once it is pressed, the next Space would make the night bright."""
    page = QWidget()
    column = QVBoxLayout(page)
    going, other = Key("Start"), Key("Other")
    other.setVisible(stays)
    for key in (going, other):
        column.addWidget(key)
    going.clicked.connect(going.hide)
    window = Window(theme, lambda: NOW_S)
    window.offer([PageEntry("drift", "Drift", lambda: page)])
    qtbot.addWidget(window)
    with qtbot.waitActive(window):
        window.show()
        window.activateWindow()
    window.show_page("drift")
    going.setFocus()
    qtbot.waitUntil(going.hasFocus)
    QTest.keyClick(going, Qt.Key.Key_Space)
    qtbot.waitUntil(lambda: not going.isVisible())
    assert QApplication.focusWidget() is (other if stays else window.rail_button("drift"))
