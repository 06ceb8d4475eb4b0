"""Help on every page, the words, the keys, and the guide for the first start."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from PySide6.QtCore import QSettings, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QWidget

from app.ui.help import (
    KEYS,
    PAGE,
    SEEN,
    TABLE,
    WORDS,
    FirstRun,
    HelpPanel,
    glossary,
    keys,
    page_help,
    screens,
    source_texts,
)
from app.ui.style import SCALES
from app.ui.window import PageEntry, Window
from tests.app.pages import reach

NOW_S = 1_790_000_000.0
PAGES = json.loads(TABLE.read_text(encoding="utf-8"))["pages"]


@pytest.fixture
def window(qtbot, theme) -> Window:
    made = Window(theme, lambda: NOW_S)
    made.offer([PageEntry("site", "Site", QWidget), PageEntry("drift", "Drift", QWidget)])
    qtbot.addWidget(made)
    made.resize(1280, 800)
    made.show()
    made.show_page("drift")
    return made


@pytest.mark.parametrize("name", PAGES)
def test_each_page_says_what_how_source_and_sign(name: str) -> None:
    found = page_help(name)
    for text in (found.what, found.how, found.source, found.sign):
        assert text.endswith(".")
        assert len(text) > 40


def test_every_page_of_the_program_has_help() -> None:
    """The names are those by which the window knows its pages, and each page is made."""
    table = (Path(__file__).parents[2] / "app" / "pagetable.py").read_text(encoding="utf-8")
    assert all(f'"{name}"' in table for name in PAGES)
    assert table.count(" PageEntry(") == len(PAGES)


def test_help_is_opened_on_the_page_in_view_and_closed_by_key(window: Window, qtbot) -> None:
    with qtbot.waitActive(window):
        window.activateWindow()
    QTest.keyClick(window, Qt.Key.Key_F1)
    qtbot.waitUntil(lambda: window.help() is not None and window.help().isVisible())
    assert "drift north or south" in window.help().said()
    QTest.keyClick(window.help(), Qt.Key.Key_Escape)
    assert not window.help().isVisible()
    assert window.page("drift").isVisible()


def test_help_stands_beside_the_page_where_there_is_room(window: Window) -> None:
    window.help_button().click()
    assert not window.page("drift").isVisible()
    window.resize(1900, 1000)
    QApplication.processEvents()
    assert window.page("drift").isVisible()
    window.show_page("site")
    assert "Where the mount stands" in window.help().said()


def test_words_and_keys_are_listed(qtbot, theme) -> None:
    panel = HelpPanel()
    panel.theme = theme
    qtbot.addWidget(panel)
    panel.show_page("drift", "Drift")
    panel.show()
    for section, entries in ((WORDS, glossary()), (KEYS, keys())):
        panel.sections().show_section(section)
        shown = [label.text() for label in panel.sections().section(section).findChildren(QLabel)]
        assert shown == [text for entry in entries for text in entry]


def test_words_of_the_glossary_stand_once() -> None:
    words = [word for word, _ in glossary()]
    assert len(words) == len(set(words)) > 20
    assert len(source_texts()) > 100


@pytest.mark.parametrize("scale", SCALES)
@pytest.mark.parametrize("section", [PAGE, WORDS, KEYS])
def test_the_help_is_named_large_enough_and_whole(qtbot, theme, scale, section) -> None:
    theme.enlarge(scale)
    panel = HelpPanel()
    qtbot.addWidget(panel)
    panel.resize(1000, 700)
    panel.show_page("drift", "Drift")
    panel.show()
    panel.sections().show_section(section)
    for _ in range(6):
        QApplication.processEvents()
    assert reach.nameless(panel) == []
    assert reach.small(panel) == []
    assert reach.clipped(panel) == []


def test_the_guide_has_four_screens_at_most_and_ends_at_the_site(qtbot, tmp_path: Path) -> None:
    settings = QSettings(str(tmp_path / "fresh.ini"), QSettings.Format.IniFormat)
    guide = FirstRun(settings)
    qtbot.addWidget(guide)
    assert not guide.isHidden()
    titles = [guide.title()]
    for _ in range(len(screens()) - 1):
        QTest.keyClick(guide.next_button(), Qt.Key.Key_Space)
        titles.append(guide.title())
    assert len(set(titles)) == len(screens()) <= 4
    with qtbot.waitSignal(guide.site_wanted):
        QTest.keyClick(guide.next_button(), Qt.Key.Key_Space)
    assert guide.isHidden()
    assert FirstRun(settings).isHidden()


def test_the_guide_is_skipped_for_ever(qtbot, tmp_path: Path) -> None:
    settings = QSettings(str(tmp_path / "fresh.ini"), QSettings.Format.IniFormat)
    guide = FirstRun(settings)
    qtbot.addWidget(guide)
    QTest.keyClick(guide.skip_button(), Qt.Key.Key_Space)
    assert guide.isHidden()
    assert settings.value(SEEN, False, bool) is True
