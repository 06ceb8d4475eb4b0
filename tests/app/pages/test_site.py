"""The Site page at the keyboard."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.pages.site import SitePage
from core.sky.site import Air, Site

MEADOW = Site(-33.5, 18.25, 1200.0, "Meadow")


@pytest.fixture
def page(qtbot, theme) -> SitePage:
    made = SitePage()
    made.theme = theme  # kept alive as long as the page
    qtbot.addWidget(made)
    made.show()
    return made


def _type(page: SitePage, **texts: str) -> None:
    for name, text in texts.items():
        line = page.field(name).line()
        line.clear()
        QTest.keyClicks(line, text)


def test_typed_and_entered_it_is_given(page: SitePage, qtbot) -> None:
    _type(page, name="Meadow", latitude="33 30 S", longitude="18,25", elevation="1200")
    with qtbot.waitSignal(page.site_given) as given:
        QTest.keyClick(page.field("elevation").line(), Qt.Key.Key_Return)
    site, air = given.args
    assert site == MEADOW
    assert air.pressure_is_assumed


def test_a_pasted_pair_goes_to_both_fields(page: SitePage, qtbot) -> None:
    _type(page, latitude="48.1, 11.6", elevation="520")
    with qtbot.waitSignal(page.site_given) as given:
        QTest.keyClick(page.field("latitude").line(), Qt.Key.Key_Return)
    assert (given.args[0].latitude_deg, given.args[0].longitude_deg) == (48.1, 11.6)
    assert page.field("longitude").text() == "11.6000° E"


def test_nothing_is_given_and_the_reason_shown_when_wrong(page: SitePage, qtbot) -> None:
    _type(page, latitude="95", longitude="11.6", elevation="520")
    with qtbot.assertNotEmitted(page.site_given):
        QTest.mouseClick(page.use_button(), Qt.MouseButton.LeftButton)
    assert page.field("latitude").is_wrong()
    assert "swapped" in page.field("latitude").below()
    assert not page.field("longitude").is_wrong()
    assert "dashed" in page.answer()


def test_no_complaint_while_typing(page: SitePage) -> None:
    _type(page, latitude="4")
    assert not any(page.field(name).is_wrong() for name in ("latitude", "longitude", "elevation"))


def test_the_site_in_use_is_shown_and_can_be_given_again(page: SitePage, qtbot) -> None:
    page.show_site(MEADOW, Air(880.0, 4.0))
    assert page.field("latitude").text() == "33.5000° S"
    assert page.field("pressure").text() == "880"
    with qtbot.waitSignal(page.site_given) as given:
        page.use_button().click()
    assert given.args == [MEADOW, Air(880.0, 4.0)]
