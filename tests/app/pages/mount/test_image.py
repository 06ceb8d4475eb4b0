"""What a pixel sees, against the relations every handbook has."""

import math
from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.pages.mount.image import ImageSection
from app.pages.mount.page import IMAGE
from core.mount.examples import INVENTED_SET


@pytest.fixture
def section(make_page, filled) -> ImageSection:
    page = make_page()
    page.kept_alive += (filled,)
    page.show_section(IMAGE)
    made = page.section(IMAGE)
    made.page = page
    return made


def _type(section: ImageSection, name: str, text: str) -> None:
    line = section.form.figures[name].line()
    line.clear()
    QTest.keyClicks(line, text)
    QTest.keyClick(line, Qt.Key.Key_Return)


def test_scale_and_field(section: ImageSection) -> None:
    # 206.265 × 3.8 µm / 600 mm; 2 atan(5200 × 3.8 µm / 2 / 600 mm)
    assert section.scale.text() == f"{206.265 * 3.8 / 600.0:.2f}″"
    width_deg = math.degrees(2.0 * math.atan(5200 * 0.0038 / 2.0 / 600.0))
    assert section.field.text().startswith(f"{width_deg:.2f}°")


def test_binning_and_reducer_change_it(section: ImageSection, qtbot) -> None:
    section.form.binning.button("2").click()
    qtbot.waitUntil(lambda: section.scale.text() == "2.61″")
    _type(section, "focal_factor", "0,8")
    qtbot.waitUntil(lambda: section.scale.text() == "3.27″")
    assert section.page.budget.wanted.focal_factor == 0.8


def test_seeing_is_judged_and_can_be_unknown(section: ImageSection, qtbot) -> None:
    assert "a fitting sampling" in section.sampling.text()
    _type(section, "seeing_arcsec", "1,5")
    qtbot.waitUntil(lambda: "coarse" in section.sampling.text())
    _type(section, "seeing_arcsec", "")
    qtbot.waitUntil(lambda: "seeing is not entered" in section.missing.text())


@pytest.mark.parametrize("text", ["0", "-1", "bad"])
def test_figures_that_cannot_be_change_nothing(section: ImageSection, text: str) -> None:
    _type(section, "seeing_arcsec", text)
    assert section.form.figures["seeing_arcsec"].is_wrong()
    assert section.page.budget.wanted.seeing_arcsec == 3.0


def test_guiding_is_judged_or_said_to_be_missing(section, filled, qtbot) -> None:
    assert "fine enough" in section.guiding.text()
    filled.put(replace(filled.inventory.find("example-guider"), focal_length_mm=None))
    qtbot.waitUntil(lambda: "looks through the telescope" in section.guiding.text())
    filled.remove("example-guider")
    qtbot.waitUntil(lambda: "no guide camera" in section.missing.text())


def test_the_longest_unguided_exposure_is_worked_out(section: ImageSection, qtbot) -> None:
    qtbot.waitUntil(lambda: "Longest exposure" in section.exposure.text(), timeout=10_000)
    assert "declination 0°, the axis 5′ off" in section.exposure.text()


@pytest.mark.usefixtures("filled")
def test_without_a_site_it_says_what_it_needs(make_page) -> None:
    page = make_page(site=None)
    page.show_section(IMAGE)
    assert "needs your site" in page.section(IMAGE).exposure.text()


def test_a_missing_figure_is_named(section: ImageSection, filled, qtbot) -> None:
    filled.put(replace(filled.inventory.find("example-camera"), pixel_um=None))
    qtbot.waitUntil(lambda: "pixel size of “Example: camera”" in section.problem.text())
    filled.put_set(replace(INVENTED_SET, parts=()))
    qtbot.waitUntil(lambda: "no telescope with a camera" in section.problem.text())


def test_of_two_cameras_one_is_chosen(section: ImageSection, filled, qtbot) -> None:
    camera = filled.inventory.find("example-camera")
    filled.put(replace(camera, key="second", name="Second", pixel_um=7.6))
    filled.put_set(replace(INVENTED_SET, parts=(*INVENTED_SET.parts, "second")))
    qtbot.waitUntil(lambda: section.form.cameras.isVisible())
    section.form.cameras.keys().button("second").click()
    qtbot.waitUntil(lambda: section.scale.text() == "2.61″")
