"""The load section: kilograms, balance, cautions, and what is not known."""

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLabel

from app.pages.mount.load import LoadSection, ShortCaution
from app.pages.mount.page import LOAD
from core.mount import payload
from core.mount.equipment import Purpose
from core.mount.examples import INVENTED_SET


@pytest.fixture
def section(make_page, filled) -> LoadSection:
    page = make_page()
    page.kept_alive += (filled,)
    page.show_section(LOAD)
    made = page.section(LOAD)
    made.page = page
    return made


def _change(equipment, key: str, **figures: object) -> None:
    equipment.put(replace(equipment.inventory.find(key), **figures))


def _settled(qtbot, said) -> None:
    qtbot.waitUntil(said, timeout=2000)


def test_the_load_now_and_with_what_is_planned(section: LoadSection) -> None:
    # 5.2 + 0.7 + 0.8 + 0.5 kg, and 3.0 kg to be bought, on a mount listed for 16 kg
    assert section.load.now.figure.text() == "7.2 kg"
    assert section.load.planned.figure.text() == "10.2 kg"
    assert "within 60 %" in section.load.now.sentence.text()
    assert "above 60 %" in section.load.planned.sentence.text()
    assert "common practice, no source" in section.load.share.below()
    load = section.load.bar.load()
    assert (load.now_kg, load.later_kg) == pytest.approx((7.2, 3.0))
    assert not section.load.warning.isVisible()


def test_nothing_planned_shows_one_figure(section: LoadSection, filled, qtbot) -> None:
    filled.remove("example-second-tube")
    _settled(qtbot, lambda: not section.load.planned.isVisible())
    assert not section.count_planned.isVisible()


def test_an_overload_says_what_may_happen(section: LoadSection, filled, qtbot) -> None:
    _change(filled, "example-tube", mass_kg=19.0)
    _settled(qtbot, lambda: section.load.now.standing.text() == "Too heavy")
    for word in ("slip", "fall", "take parts off"):
        assert word in section.load.warning.text()


def test_a_planned_overload_is_warned_of_as_planned(section, filled, qtbot) -> None:
    _change(filled, "example-second-tube", mass_kg=12.0)
    _settled(qtbot, lambda: section.load.warning.isVisible())
    assert section.load.warning.text().startswith("With what is to be bought")


def test_a_mass_that_is_not_known_is_said(section: LoadSection, filled, qtbot) -> None:
    _change(filled, "example-camera", mass_kg=None)
    _settled(qtbot, lambda: section.load.now.figure.text() == "≥ 6.5 kg")
    assert "Example: camera" in section.load.not_judged.text()
    assert "cannot be placed without the mass of “Example: camera”" in section.polar.sentence.text()


def test_the_part_of_the_capacity_is_ones_own(section: LoadSection, filled, qtbot) -> None:
    line = section.load.share.line()
    line.clear()
    QTest.keyClicks(line, "40 %")
    QTest.keyClick(line, Qt.Key.Key_Return)
    _settled(qtbot, lambda: "above 40 %" in section.load.now.sentence.text())
    assert "your own figure" in section.load.share.below()
    assert filled.adjusted(Purpose.DEEP_SKY).share == 0.4


def test_an_impossible_part_is_refused(section: LoadSection, filled) -> None:
    line = section.load.share.line()
    line.clear()
    QTest.keyClicks(line, "250")
    QTest.keyClick(line, Qt.Key.Key_Return)
    assert section.load.share.is_wrong()
    assert filled.adjusted(Purpose.DEEP_SKY).share == 0.6


def test_the_counterweight_lies_where_torques_are_equal(section: LoadSection) -> None:
    blocks = {block.name: block for block in section.polar.drawing.beam().blocks}
    weight = blocks.pop("the counterweight")
    # by hand: load side, less the 1.4 kg bar with its middle at 240 mm
    load = sum(block.mass_kg * block.arm_mm for block in blocks.values())
    assert weight.arm_mm == pytest.approx(-(load - 1.4 * 240.0) / 5.0)
    assert f"{-weight.arm_mm:.0f} mm" in section.polar.sentence.text()
    assert section.polar.drawing.accessibleDescription().startswith("It balances")


def test_a_bar_too_short_says_what_to_change(section: LoadSection, qtbot) -> None:
    section.count_planned.click()
    _settled(qtbot, lambda: "too light" in section.polar.sentence.text())
    assert "mm longer" in section.polar.sentence.text()
    assert "kg would balance" in section.polar.more.text()


def test_the_tube_is_slid_the_way_the_arrow_points(section: LoadSection) -> None:
    assert "8 mm forward" in section.tube.sentence.text()
    # by hand: 5.2 × 35 − 0.7 × 360 + 0.8 × 20 = −54 kg mm, over the 6.7 kg that slide
    assert section.tube.drawing.beam().slide_mm == pytest.approx(54.0 / 6.7)


def test_the_short_caution_is_not_scrolled_away(section: LoadSection) -> None:
    short = section.findChild(ShortCaution)
    assert short.isVisible()
    assert short.parent() is section
    for word in ("locked", "first and off last", "toe stop", "Fingers"):
        assert word in short.words.text()


def test_every_caution_is_on_the_page(section: LoadSection) -> None:
    text = "\n".join(label.text() for label in section.findChildren(QLabel))
    groups = (payload.PUTTING_ON, payload.TAKING_OFF, payload.BALANCING, payload.LIFTING)
    for line in (payload.FIRST, *(line for group in groups for line in group)):
        assert line in text


def test_without_a_set_or_a_mount_the_next_step_is_said(section, filled, qtbot) -> None:
    filled.put_set(replace(INVENTED_SET, mount=""))
    _settled(qtbot, lambda: "has no mount" in section.no_mount.text())
    filled.remove(INVENTED_SET.key)
    _settled(qtbot, lambda: "no set yet" in section.no_mount.text())
    assert section.findChild(ShortCaution).isVisible()


def test_things_a_set_names_that_are_gone_are_said(section, filled, qtbot) -> None:
    filled.put_set(replace(INVENTED_SET, parts=(*INVENTED_SET.parts, "lost-piece")))
    _settled(qtbot, lambda: "lost-piece" in section.missing.text())


def test_a_mount_without_a_bar_needs_no_drawing(section, filled, qtbot) -> None:
    filled.put_set(replace(INVENTED_SET, mount="example-balcony"))
    _settled(qtbot, lambda: "no counterweight bar" in section.polar.sentence.text())
    assert not section.polar.drawing.isVisible()
