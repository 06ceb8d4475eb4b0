"""Mounts side by side: musts, weights, reasons, what would change them."""

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLabel

from app.pages.mount.choosing import ChoosingSection
from app.pages.mount.page import CHOOSING
from core.mount.choice import Criterion, Must, Outcome
from core.mount.equipment import Purpose


@pytest.fixture
def section(make_page, filled) -> ChoosingSection:
    page = make_page()
    page.kept_alive += (filled,)
    page.show_section(CHOOSING)
    made = page.section(CHOOSING)
    made.page = page
    return made


def _names(section: ChoosingSection) -> list[str]:
    return [card.candidate.mount.key for card in section.candidate_cards()]


def _outcomes(section: ChoosingSection) -> list[Outcome]:
    return [card.candidate.outcome for card in section.candidate_cards()]


def _text(card) -> str:
    return "\n".join(label.text() for label in card.findChildren(QLabel))


def _type(line, text: str) -> None:
    line.clear()
    QTest.keyClicks(line, text)
    QTest.keyClick(line, Qt.Key.Key_Return)


def test_imaging_knocks_out_with_a_reason_and_a_remedy(section: ChoosingSection) -> None:
    assert _names(section)[0] == "example-meadow"
    assert _outcomes(section) == [Outcome.IN, Outcome.OUT, Outcome.OUT]
    hill = _text(section.candidate_cards()[1])
    assert "10.2 kg is more than the 9 kg it is listed to carry" in hill
    assert "It would be in if" in hill
    assert "✗  Carries the load" in hill
    assert "invented" in hill


def test_observing_puts_ease_first(section: ChoosingSection, qtbot) -> None:
    _type(section.form.load.line(), "5")
    section.form.purposes.button(Purpose.OBSERVING.name).click()
    _type(section.form.load.line(), "5")
    qtbot.waitUntil(lambda: _names(section)[0] == "example-balcony")
    assert _outcomes(section) == [Outcome.IN] * 3


def test_a_weight_is_changed_by_keys_and_turns_the_order(section, filled, qtbot) -> None:
    section.form.purposes.button(Purpose.OBSERVING.name).click()
    _type(section.form.load.line(), "5")
    for criterion in (Criterion.EASE, Criterion.OWN_WEIGHT):
        for _ in range(5):
            section.form.weights[criterion].less.click()
    for _ in range(9):
        section.form.weights[Criterion.CAPACITY].more.click()
    for _ in range(9):
        section.form.weights[Criterion.PERIODIC_ERROR].more.click()
    qtbot.waitUntil(lambda: _names(section)[0] == "example-meadow")
    kept = filled.adjusted(Purpose.OBSERVING).weights
    assert kept[Criterion.CAPACITY] == 9.0
    assert Criterion.EASE not in kept
    section.form.usual_key.click()
    qtbot.waitUntil(lambda: section.form.weights[Criterion.EASE].value() == 5.0)


def test_a_must_is_dropped_by_its_key(section: ChoosingSection, qtbot) -> None:
    _type(section.form.load.line(), "8")
    section.form.musts[Must.CARRIES].click()
    section.form.musts[Must.EQUATORIAL].click()
    section.form.musts[Must.AUTOGUIDER_PORT].click()
    qtbot.waitUntil(lambda: _outcomes(section) == [Outcome.IN] * 3)


def test_a_price_must_wants_a_price(section: ChoosingSection, filled, qtbot) -> None:
    section.form.musts[Must.PRICE].click()
    assert "enter the price" in section.form.problem.text()
    assert Must.PRICE not in filled.adjusted(Purpose.DEEP_SKY).musts
    _type(section.form.price.line(), "1000")
    qtbot.waitUntil(lambda: _outcomes(section) == [Outcome.OUT] * 3)
    assert "above 1000" in _text(section.candidate_cards()[0])
    assert not section.form.problem.isVisible()


def test_no_weight_at_all_is_refused(section: ChoosingSection, filled) -> None:
    for stepper in section.form.weights.values():
        while stepper.value():
            stepper.less.click()
    assert "at least one is above zero" in section.form.problem.text()
    assert sum(filled.adjusted(Purpose.DEEP_SKY).weights.values()) == 1.0


@pytest.mark.parametrize("text", ["-4", "much", "1.2.3"])
def test_a_load_that_cannot_be_is_refused(section: ChoosingSection, filled, text: str) -> None:
    _type(section.form.load.line(), text)
    assert section.form.load.is_wrong()
    assert filled.adjusted(Purpose.DEEP_SKY).load_kg is None


def test_what_is_not_known_is_open_and_says_so(section, filled, qtbot) -> None:
    mount = filled.inventory.find("example-meadow")
    filled.put(replace(mount, has_autoguider_port=None, periodic_error_arcsec=None))
    qtbot.waitUntil(lambda: _outcomes(section)[0] is Outcome.OPEN)
    text = _text(section.candidate_cards()[0])
    assert "whether it has an autoguider port is not known" in text
    assert "up to" in text


def test_with_fewer_than_two_mounts_examples_are_offered(make_page, equipment, qtbot) -> None:
    page = make_page()
    page.show_section(CHOOSING)
    section = page.section(CHOOSING)
    assert section.examples_key.isVisible()
    section.examples_key.click()
    qtbot.waitUntil(lambda: len(section.candidate_cards()) == 3)
    assert not section.examples_key.isVisible()
    assert all(one.is_invented for one in equipment.inventory.records)
