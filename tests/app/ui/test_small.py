"""The small widgets: flow, choice, caret, file picker, verdict."""

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QApplication,
    QFileDialog,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QWidget,
)

from app.ui.filepicker import log_dialog
from app.ui.form import Choice, Flow, Key, colour_caret
from app.ui.style import LOOKS, TOUCH_PX
from app.ui.text import AxisVerdict, Columns, Verdict, VerdictBand
from app.ui.window import Notice, UtcClock

pytestmark = pytest.mark.usefixtures("theme")


def _shown(qtbot, widget: QWidget) -> QWidget:
    qtbot.addWidget(widget)
    with qtbot.waitExposed(widget):
        widget.show()
    return widget


@pytest.fixture
def four_keys(qtbot) -> QWidget:
    """In a flow wide enough for two in a line."""
    holder = QWidget()
    flow = Flow(holder)
    for number in range(4):
        flow.addWidget(Key(f"Key number {number}"))
    holder.resize(2 * holder.findChild(Key).sizeHint().width() + 10, 400)
    return _shown(qtbot, holder)


def test_keys_flow_into_the_next_line_where_the_width_ends(four_keys: QWidget) -> None:
    holder, flow, keys = four_keys, four_keys.layout(), four_keys.findChildren(Key)
    assert [key.y() == keys[0].y() for key in keys] == [True, True, False, False]
    assert flow.heightForWidth(10_000) < flow.heightForWidth(holder.width())
    keys[1].hide()
    assert flow.minimumSize().width() <= holder.width()
    assert flow.takeAt(9) is None


def test_a_flow_asks_its_items_again_once_one_has_changed(four_keys: QWidget) -> None:
    width, flow, keys = four_keys.width(), four_keys.layout(), four_keys.findChildren(Key)
    two_lines = flow.heightForWidth(width)
    keys[0].setText("A name as long as both of them together, and longer")
    QApplication.processEvents()
    three_lines = flow.heightForWidth(width)
    assert three_lines > two_lines
    keys[0].hide()
    assert flow.heightForWidth(width) == two_lines
    keys[0].show()
    assert flow.heightForWidth(width) == three_lines
    flow.takeAt(0)
    assert flow.heightForWidth(width) == two_lines
    keys[1].setStyleSheet("font-size: 60px")
    QApplication.processEvents()
    assert flow.heightForWidth(width) > two_lines


def test_a_key_is_never_smaller_than_a_finger(qtbot) -> None:
    key = _shown(qtbot, Key("1"))
    assert key.width() >= TOUCH_PX
    assert key.height() >= TOUCH_PX


def test_a_choice_is_made_by_pressing_and_by_arrow_keys(qtbot) -> None:
    choice = Choice("Speed", [("slow", "Slow"), ("fast", "Fast")])
    _shown(qtbot, choice)
    choice.show_choice("slow")
    choice.button("slow").setFocus()
    with qtbot.waitSignal(choice.chosen) as chosen:
        QTest.keyClick(choice.button("slow"), Qt.Key.Key_Right)
    assert chosen.args == ["fast"]
    assert choice.choice() == "fast"
    assert choice.button("fast").accessibleName() == "Speed: Fast"
    with qtbot.assertNotEmitted(choice.chosen):
        choice.show_choice("slow")


def test_the_caret_stands_where_the_next_letter_comes(qtbot) -> None:
    line = QLineEdit()
    colour_caret(line)
    _shown(qtbot, line)
    with qtbot.waitActive(line):
        line.activateWindow()
    line.setFocus()
    caret = line.findChild(QWidget)
    QTest.keyClicks(line, "4")
    first = caret.x()
    QTest.keyClicks(line, "8.137")
    assert caret.isVisible()
    assert caret.x() > first


def test_the_chosen_file_is_handed_on(qtbot, theme, tmp_path: Path) -> None:
    window = _shown(qtbot, QWidget())
    taken: list[Path] = []
    dialog = log_dialog(window, theme, taken.append)
    dialog.fileSelected.emit(str(tmp_path / "night.csv"))
    assert taken == [tmp_path / "night.csv"]
    dialog.close()


@pytest.mark.parametrize(("look", "own"), [("night", True), ("day", False), ("dark", False)])
def test_only_the_night_look_forgoes_the_systems_own_dialog(qtbot, theme, look, own) -> None:
    theme.choose(look)
    window = _shown(qtbot, QWidget())
    dialog = log_dialog(window, theme, lambda _path: None)
    assert dialog.testOption(QFileDialog.Option.DontUseNativeDialog) is own
    dialog.close()


def test_a_verdict_in_words_and_figures(qtbot) -> None:
    band = _shown(qtbot, VerdictBand())
    axis = AxisVerdict("12.4′ ± 0.8′", "east of the pole", "turn it west")
    unknown = AxisVerdict("", "not known yet", "")
    band.show_verdict(Verdict(axis, unknown, ("Quiet.",), "Found.", is_stale=True))
    azimuth, altitude = band.halves()
    assert azimuth.accessibleDescription() == "12.4′ ± 0.8′ east of the pole turn it west"
    assert altitude.accessibleDescription() == "not known yet"
    assert band.finding() == "Found."


def test_the_clock_ticks_only_while_it_is_seen(qtbot) -> None:
    now = [1_790_000_000.5]
    clock = UtcClock(lambda: now[0])
    _shown(qtbot, clock)
    assert clock.text() == "2026-09-21  14:13:20 UTC"
    now[0] += 1.0
    qtbot.waitUntil(lambda: clock.text() == "2026-09-21  14:13:21 UTC")
    clock.hide()  # the leak check fails when its timer goes on


def test_a_notice_is_closed_by_its_key(qtbot) -> None:
    notice = Notice()
    qtbot.addWidget(notice)
    notice.say("The disk is full.")
    assert notice.isVisible()
    notice.findChild(Key).click()
    assert not notice.isVisible()
    assert notice.sentence() == ""


def test_notices_not_read_yet_stand_together_newest_last_and_one_on_a_subject(qtbot) -> None:
    notice = Notice()
    qtbot.addWidget(notice)
    notice.say("From the next start on: German.", "language")
    notice.say("The log was damaged.")
    notice.say("This copy writes now.")
    notice.say("The log was damaged.")
    notice.say("From the next start on: English.", "language")
    lines = ["This copy writes now.", "The log was damaged.", "From the next start on: English."]
    assert notice.sentence().splitlines() == lines
    notice.say("The drive is full.")
    assert notice.sentence().splitlines() == [*lines[1:], "The drive is full."]


def test_columns_follow_words_that_grow(qtbot) -> None:
    words = [QLabel("few"), QLabel("few")]
    for one in words:
        one.setWordWrap(True)
    columns = Columns(words, 200)
    qtbot.addWidget(columns)
    columns.resize(900, 300)
    columns.show()
    columns.resize(250, 300)  # dealt out anew, into one column
    assert columns.count() == 1
    before = columns.heightForWidth(250)
    words[0].setText("many words " * 30)
    QApplication.processEvents()
    assert columns.heightForWidth(250) >= before + words[0].heightForWidth(250) // 2
    assert words[0].height() >= words[0].heightForWidth(words[0].width())


def test_the_focus_stands_out_on_a_filled_key_in_every_look(qtbot, theme) -> None:
    holder = QWidget()
    keys = [Key(words, "primary") for words in ("Watch", "Turn")]
    row = QHBoxLayout(holder)
    for key in keys:
        row.addWidget(key)
    qtbot.addWidget(holder)
    holder.show()
    theme.dress(holder)
    holder.activateWindow()
    keys[1].setFocus()
    qtbot.waitUntil(keys[1].hasFocus)
    for name in LOOKS:
        theme.choose(name)
        QApplication.processEvents()
        pictures = [key.grab().toImage() for key in keys]
        middle = pictures[0].height() // 2
        rims = [
            [picture.pixelColor(x, middle).lightnessF() for x in range(4, 12)]
            for picture in pictures
        ]
        spread = [max(rim) - min(rim) for rim in rims]
        assert spread[1] > spread[0] + 0.2, name
