"""The night look shines red alone: the window, its pages, menus, tooltips, lists and dialogs."""

from collections.abc import Callable
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import QSettings
from PySide6.QtGui import QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QComboBox, QFileDialog, QLineEdit, QToolTip, QWidget

from app.compose import Program
from app.pages.drift.page import DriftPage
from app.pages.log.page import COMPARE, KEEP, NIGHTS, LogPage
from app.pages.pole.page import PolePage
from app.pages.site.page import SitePage
from app.pages.tonight.page import TonightPage
from app.pagetable import DRIFT, LOG, POLE, SITE, TONIGHT
from app.ui.filepicker import log_dialog
from app.ui.style import Theme
from app.ui.window import Window
from core.night.checklist import NightPart
from core.sky.site import Air, Site
from tests.app.night.heard import heard
from tests.core.night.recorded import whole_night

NOW_S = 1_790_000_000.0
HILL = Site(48.1, 11.6, 520.0, "Hill")


def _green_and_blue(widget: QWidget) -> int:
    """The strongest green or blue among all pixels of a widget as it is rendered."""
    image = widget.grab().toImage().convertToFormat(QImage.Format.Format_RGB888)
    rows = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), -1)
    pixels = rows[:, : 3 * image.width()].reshape(image.height(), image.width(), 3)
    assert pixels[..., 0].max() > 0, "nothing was rendered"
    return int(pixels[..., 1:].max())


@pytest.fixture
def program(qapp: QApplication, settings: QSettings, tmp_path: Path, qtbot) -> Program:
    settings.setValue("look", "night")
    made = Program(qapp, settings, tmp_path / "nights.sqlite", lambda: NOW_S)
    made.window.resize(1280, 800)
    with qtbot.waitSignal(made.ready, timeout=20_000):
        made.start()
    yield made
    made.window.close()
    made.close()


def test_the_measure_sees_green_and_blue(qtbot, theme: Theme) -> None:
    theme.choose("dark")
    widget = QLineEdit("text")
    qtbot.addWidget(widget)
    assert _green_and_blue(widget) > 100


def test_the_first_picture_is_dark(qapp: QApplication, settings: QSettings, qtbot) -> None:
    settings.setValue("look", "night")
    window = Window(Theme(qapp, settings), lambda: NOW_S)
    qtbot.addWidget(window)
    assert _green_and_blue(window) == 0


def test_every_page_is_red_alone(program: Program) -> None:
    for name in (TONIGHT, SITE, POLE, DRIFT, LOG):
        program.window.show_page(name)
        assert _green_and_blue(program.window) == 0, name


@pytest.mark.parametrize("way", ["practice", "hand", "log"])
def test_every_way_in_is_red_alone(program: Program, qtbot, way: str) -> None:
    program.window.show_page(DRIFT)
    program.window.show()
    page = program.window.page(DRIFT)
    assert isinstance(page, DriftPage)
    page.take_way(way)
    if way == "practice":
        controls = page.ways().panel.controls(way)
        controls.set_speed("60")
        qtbot.waitUntil(lambda: bool(controls.star_buttons()))
        controls.star_buttons()[0].click()
        qtbot.waitUntil(lambda: heard(page.shown()).solution is not None, timeout=20_000)
        qtbot.waitUntil(lambda: "a minute" in _texts(page), timeout=5_000)
        controls.set_speed("0")
    assert _green_and_blue(program.window) == 0
    for scale in (1.5, 2.0):
        program.theme.enlarge(scale)
        qtbot.waitUntil(program.theme.is_settled)
        assert _green_and_blue(program.window) == 0


def test_the_checklist_of_tonight_is_red_alone(program: Program, qtbot) -> None:
    program.session.set_site(HILL, Air(952.0))
    program.window.show_page(TONIGHT)
    page = program.window.page(TONIGHT)
    assert isinstance(page, TonightPage)
    qtbot.waitUntil(page.is_up_to_date, timeout=20_000)
    page.steps().show_part(NightPart.DAYLIGHT)
    qtbot.waitUntil(page.steps().is_whole)
    page.steps().row("tube").skip_button().click()
    page.steps().row("level").tick().click()
    page.weather().line("temperature_c").complain("wrong")
    assert _green_and_blue(page.steps()) == 0
    assert _green_and_blue(page.weather()) == 0
    assert _green_and_blue(page.form()) == 0
    assert _green_and_blue(program.window) == 0


def test_the_log_with_a_night_opened_is_red_alone(program: Program, qtbot) -> None:
    program.window.show_page(LOG)
    page = program.window.page(LOG)
    assert isinstance(page, LogPage)
    page.files().archive.take_in_record(whole_night())
    page.refresh()
    qtbot.waitUntil(lambda: page.list().list().count() == 1, timeout=10_000)

    def is_open() -> bool:  # the list may have opened its only night by itself already
        page.list().list().choose(0)
        return page.sheet().isVisibleTo(page)

    qtbot.waitUntil(is_open, timeout=10_000)
    with qtbot.waitSignal(page.sheet().again.solved, timeout=30_000):
        page.sheet().again.solve()
    page.carrying.ask_to_take_in(Path("night.json"))
    assert _green_and_blue(page.sheet()) == 0
    for part in (NIGHTS, COMPARE, KEEP):
        page.sections().show_section(part)
        assert _green_and_blue(program.window) == 0


@pytest.mark.parametrize("way", ["sight", "field", "hidden"])
def test_every_way_to_the_pole_is_red_alone(program: Program, qtbot, way: str) -> None:
    program.session.set_site(HILL, Air(952.0))
    program.window.show_page(POLE)
    page = program.window.page(POLE)
    assert isinstance(page, PolePage)
    page.take_way(way)
    page.sight_view().placed.emit(200.0, 55.0)
    if way == "hidden":
        qtbot.waitUntil(lambda: "UTC" in page.hidden_view().texts(), timeout=20_000)
        page.hidden_view().marks().setFocus()
    page.sight_view().chart().setFocus()
    for scale in (1.0, 2.0):
        program.theme.enlarge(scale)
        qtbot.waitUntil(program.theme.is_settled)
        assert _green_and_blue(program.window) == 0
        assert _green_and_blue(page.sight_view()) == 0


def test_the_site_with_its_horizon_and_a_question_is_red_alone(program: Program) -> None:
    program.window.show_page(SITE)
    page = program.window.page(SITE)
    assert isinstance(page, SitePage)
    page.show_site(HILL, None)
    page.field("pressure").show_text("29.92")
    page.use_button().click()
    page.horizon().pairs().setPlainText("0 20 | 90 5")
    page.horizon().pairs().left.emit()
    page.horizon().panorama().setFocus()
    assert page.form().asking("pressure").question()
    assert _green_and_blue(page.form()) == 0
    assert _green_and_blue(page.horizon()) == 0
    assert _green_and_blue(page.clock()) == 0


def test_a_line_being_typed_in_is_red_alone(program: Program, qtbot) -> None:
    program.window.show_page(SITE)
    line = program.window.page(SITE).field("latitude").line()
    with qtbot.waitActive(program.window):
        program.window.activateWindow()
    line.setFocus()
    QTest.keyClicks(line, "48.1")
    line.setSelection(1, 2)
    assert line.hasFocus()
    assert _green_and_blue(program.window) == 0


def test_a_message_is_red_alone(program: Program) -> None:
    program.window.say("The disk is full.")
    assert _green_and_blue(program.window) == 0


def _texts(page: DriftPage) -> str:
    return " ".join(
        words.text() for words in page.work().legs().findChildren(QWidget) if hasattr(words, "text")
    )


def _file_dialog(page: QWidget, theme: Theme) -> QWidget:
    dialog = log_dialog(page, theme, lambda _path: None)
    assert dialog.testOption(QFileDialog.Option.DontUseNativeDialog)
    dialog.setDirectory(str(Path(__file__).parent))
    dialog.open()
    return dialog


def _menu(page: QWidget, _theme: Theme) -> QWidget:
    line = QLineEdit("text", page)
    line.selectAll()
    menu = line.createStandardContextMenu()
    menu.popup(page.mapToGlobal(page.rect().center()))
    return menu


def _combo_list(page: QWidget, _theme: Theme) -> QWidget:
    combo = QComboBox(page)
    combo.addItems(["one", "two"])
    combo.show()
    combo.showPopup()
    return combo.view().window()


def _tooltip(page: QWidget, _theme: Theme) -> QWidget:
    QToolTip.showText(page.mapToGlobal(page.rect().center()), "a word", page)
    return next(w for w in QApplication.topLevelWidgets() if w.inherits("QTipLabel"))


@pytest.mark.parametrize("opened", [_file_dialog, _menu, _combo_list, _tooltip])
def test_what_opens_over_the_window_is_red_alone(
    program: Program, qtbot, opened: Callable[[QWidget, Theme], QWidget]
) -> None:
    over = opened(program.window.page(DRIFT), program.theme)
    with qtbot.waitExposed(over):
        over.show()
    assert _green_and_blue(over) == 0
    QToolTip.hideText()
    over.close()
