"""The Mount page as a whole: the first step, its sections, names and room for the words."""

from dataclasses import replace

import numpy as np
import pytest
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QApplication, QWidget

from app.pages.mount.page import CHOOSING, EQUIPMENT, IMAGE, LOAD, MountPage
from app.ui.style import SCALES
from core.mount.examples import INVENTED_SET
from tests.app.pages import reach

SECTIONS = (EQUIPMENT, LOAD, IMAGE, CHOOSING)


def _settled(page: MountPage) -> MountPage:
    for _ in range(4):
        QApplication.processEvents()
    return page


def test_an_empty_page_says_what_it_is_for_and_offers_the_first_step(make_page) -> None:
    page = make_page()
    assert page.start().isVisible()
    assert not page.sections.isVisible()
    assert page.start().example_key.property("kind") == "primary"


def test_the_invented_set_is_marked_as_such_and_shown(make_page, equipment) -> None:
    page = make_page()
    page.start().example_key.click()
    assert all(one.is_invented for one in equipment.inventory.records)
    assert equipment.set_in_use() == INVENTED_SET
    assert page.sections.choice() == LOAD
    assert not page.start().isVisible()


def test_ones_own_mount_begins_with_an_empty_form(make_page) -> None:
    page = make_page()
    page.start().own_key.click()
    assert page.section(EQUIPMENT).form().key() == ""


def test_the_set_in_use_is_chosen_by_its_key(make_page, filled) -> None:
    filled.put_set(replace(INVENTED_SET, key="other", name="Other"))
    page = make_page()
    page.sets.keys().button("other").click()
    assert filled.set_in_use().key == "other"


@pytest.mark.usefixtures("filled")
def test_sections_can_be_left_and_taken_up_again(make_page) -> None:
    page = make_page()
    for name in (*SECTIONS, EQUIPMENT):
        page.sections.button(name).click()
        assert page.section(name).isVisible()


@pytest.mark.parametrize("scale", SCALES)
@pytest.mark.parametrize("name", ["empty", *SECTIONS])
def test_everything_is_named_large_enough_and_whole(make_page, theme, scale, name) -> None:
    theme.enlarge(scale)
    page = make_page()
    if name != "empty":
        page.start().example_key.click()
        page.show_section(name)
    if name == EQUIPMENT:
        page.section(name).open("example-meadow")
    _settled(page)
    assert reach.nameless(page) == []
    assert reach.small(page) == []
    assert reach.clipped(page) == []


def _green_and_blue(widget: QWidget) -> int:
    image = widget.grab().toImage().convertToFormat(QImage.Format.Format_RGB888)
    rows = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), -1)
    pixels = rows[:, : 3 * image.width()].reshape(image.height(), image.width(), 3)
    assert pixels[..., 0].max() > 0, "nothing was rendered"
    return int(pixels[..., 1:].max())


@pytest.mark.parametrize("name", ["empty", *SECTIONS])
def test_at_night_every_section_is_red_alone(make_page, theme, name) -> None:
    theme.choose("night")
    page = make_page()
    page.resize(1100, 2600)
    if name != "empty":
        page.start().example_key.click()
        page.show_section(name)
    if name == EQUIPMENT:
        page.section(name).open("example-tube")
    _settled(page)
    assert _green_and_blue(page) == 0
