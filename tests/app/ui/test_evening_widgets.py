"""Small widgets of the evening's pages: spans, sections, amounts, the search for a target."""

import math

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLabel

from app.ui.drawings import place_words
from app.ui.form import Amount, Section, Sections
from app.ui.targetsearch import TargetSearch
from app.ui.text import limit_words, span_words
from core.mount.equipment import Quantity
from core.sky.targets import Target

DEGREES = Quantity("Limit", " °", -10.0, 10.0)
VEGA, VENUS = Target("Vega", "star", 279.2, 38.8, 0.0), Target("Venus", "planet", 1.0, 2.0)


@pytest.mark.parametrize(
    ("seconds", "span", "limit"),
    [
        (0.456, "0.46 s", "0.45 s"),
        (8.59, "8.6 s", "8.5 s"),
        (59.9, "60 s", "59 s"),
        (119.0, "2 min", "119 s"),
        (517.0, "8.6 min", "8.6 min"),
        (3599.0, "1 h", "59 min"),
        (4500.0, "1 h 15 min", "1 h 15 min"),
    ],
)
def test_spans_in_words(seconds: float, span: str, limit: str) -> None:
    assert (span_words(seconds), limit_words(seconds)) == (span, limit)


@pytest.mark.parametrize(
    ("angle_deg", "words"),
    [(0.0, "on top of the tube"), (90.0, "on the right of the tube"), (-90.0, "on the left of"),
     (180.0, "under the tube"), (-180.0, "under the tube")],
)  # fmt: skip
def test_places_round_the_tube(angle_deg: float, words: str) -> None:
    assert place_words(angle_deg).startswith(words)


def test_sections_are_built_when_looked_at(qtbot) -> None:
    built: list[str] = []

    def build(name: str) -> QLabel:
        built.append(name)
        return QLabel(name)

    sections = Sections(
        "Parts", [Section(name, name, lambda name=name: build(name)) for name in ("one", "two")]
    )
    qtbot.addWidget(sections)
    sections.show_section("one")
    assert built == ["one"]
    with qtbot.waitSignal(sections.shown) as shown:
        sections.keys().button("two").click()
    assert shown.args == ["two"]
    assert sections.section("one").isHidden()
    assert sections.current() == "two"


def test_an_amount_gives_what_can_be_used_and_complains_when_left(qtbot) -> None:
    amount = Amount(DEGREES)
    qtbot.addWidget(amount)
    with qtbot.waitSignal(amount.given) as given:
        QTest.keyClicks(amount.line(), "3")
    assert given.args == [3.0]
    QTest.keyClicks(amount.line(), ",")
    with qtbot.waitSignal(amount.given) as given:
        QTest.keyClicks(amount.line(), "5")
    assert given.args == [3.5]
    with qtbot.assertNotEmitted(amount.given):
        QTest.keyClicks(amount.line(), "x")
    assert not amount.is_wrong()
    QTest.keyClick(amount.line(), Qt.Key.Key_Return)
    assert amount.is_wrong()


def test_an_amount_that_may_be_empty_says_so_by_nan(qtbot) -> None:
    amount = Amount(DEGREES, when_empty="empty: none")
    qtbot.addWidget(amount)
    amount.show_amount(4.0)
    with qtbot.waitSignal(amount.given) as given:
        QTest.keyClick(amount.line(), Qt.Key.Key_Backspace)
    assert math.isnan(given.args[0])
    QTest.keyClick(amount.line(), Qt.Key.Key_Return)
    assert not amount.is_wrong()


@pytest.fixture
def search(qtbot) -> TargetSearch:
    made = TargetSearch()
    qtbot.addWidget(made)
    made.show()
    return made


def test_enter_takes_the_first_offered(search: TargetSearch, qtbot) -> None:
    QTest.keyClicks(search.field().line(), "ve")
    search.offer("ve", [VEGA, VENUS])
    with qtbot.waitSignal(search.chosen) as chosen:
        QTest.keyClick(search.field().line(), Qt.Key.Key_Return)
    assert chosen.args == [VEGA]
    assert search.field().text() == ""
    assert not search.found().isVisible()


def test_the_down_key_leads_into_the_list(search: TargetSearch, qtbot) -> None:
    with qtbot.waitActive(search):
        search.activateWindow()
    QTest.keyClicks(search.field().line(), "ve")
    search.offer("ve", [VEGA, VENUS])
    QTest.keyClick(search.field().line(), Qt.Key.Key_Down)
    QTest.keyClick(search.found(), Qt.Key.Key_Down)
    with qtbot.waitSignal(search.chosen) as chosen:
        QTest.keyClick(search.found(), Qt.Key.Key_Return)
    assert chosen.args == [VENUS]


def test_enter_before_the_answer_waits_for_it(search: TargetSearch, qtbot) -> None:
    QTest.keyClicks(search.field().line(), "ve")
    QTest.keyClick(search.field().line(), Qt.Key.Key_Return)
    with qtbot.waitSignal(search.chosen) as chosen:
        search.offer("ve", [VEGA])
    assert chosen.args == [VEGA]


def test_an_answer_to_an_older_text_is_passed_over(search: TargetSearch) -> None:
    QTest.keyClicks(search.field().line(), "ven")
    search.offer("ve", [VEGA])
    assert search.found().count() == 0


def test_nothing_found_says_how_to_give_coordinates(search: TargetSearch) -> None:
    QTest.keyClicks(search.field().line(), "zz")
    search.offer("zz", [])
    assert "00 42 44 +41 16 09" in search.field().below()
