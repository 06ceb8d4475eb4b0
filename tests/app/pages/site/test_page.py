"""The Site page at the keyboard."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.pages.site.page import SitePage
from core.sky.site import Air, Site

MEADOW = Site(-33.5, 18.25, 1200.0, "Meadow")


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


def test_inches_are_asked_about_and_taken_only_after_a_yes(page: SitePage, qtbot) -> None:
    _type(page, latitude="48.1", longitude="11.6", elevation="10", pressure="29.92")
    with qtbot.assertNotEmitted(page.site_given):
        QTest.keyClick(page.field("pressure").line(), Qt.Key.Key_Return)
    assert "inches of mercury" in page.form().asking("pressure").question()
    assert page.form().asking("pressure").yes().isVisible()
    page.form().asking("pressure").yes().click()
    assert page.field("pressure").text() == "1013.2"
    with qtbot.waitSignal(page.site_given) as given:
        page.use_button().click()
    assert given.args[1].pressure_hpa == 1013.2


def test_after_a_no_the_text_stays_and_is_judged_as_it_stands(page: SitePage) -> None:
    _type(page, latitude="48.1", longitude="11.6", elevation="10", pressure="760")
    page.use_button().click()
    page.form().asking("pressure").no().click()
    assert page.field("pressure").text() == "760"
    assert not page.form().asking("pressure").question()
    page.use_button().click()
    assert "usual at 10 m" in page.field("pressure").below()


@pytest.mark.parametrize(
    ("field", "text", "left", "taken"),
    [
        ("elevation", "1700 ft", "1700", 1700.0),
        ("elevation", "1,520", "1.52", 1.52),
        ("temperature", "50 F", "50", 50.0),
    ],
)
def test_a_no_leaves_the_number_alone_and_it_is_taken(
    page: SitePage, qtbot, field: str, text: str, left: str, taken: float
) -> None:
    _type(page, **{"latitude": "48.1", "longitude": "11.6", "elevation": "520", field: text})
    page.use_button().click()
    assert "answer the question" in page.answer()
    assert not page.field("pressure").is_wrong()
    page.form().asking(field).no().click()
    assert page.field(field).text() == left
    with qtbot.waitSignal(page.site_given) as given:
        page.use_button().click()
    site, air = given.args
    assert taken in (site.elevation_m, air.temperature_c)


def test_a_kept_place_is_never_asked_about(page: SitePage, qtbot) -> None:
    page.show_site(Site(48.1, 11.6, 1.234, "Quay"), None)
    with qtbot.waitSignal(page.site_given) as given:
        page.use_button().click()
    assert given.args[0].elevation_m == 1.23


def test_typing_on_withdraws_the_question(page: SitePage) -> None:
    _type(page, latitude="48.1", longitude="11.6", elevation="1700 ft")
    page.use_button().click()
    assert "feet" in page.form().asking("elevation").question()
    _type(page, elevation="518")
    assert not page.form().asking("elevation").question()


def test_a_sea_level_pressure_is_converted(page: SitePage, qtbot) -> None:
    _type(page, latitude="48.1", longitude="11.6", elevation="2000", pressure="1013.25")
    page.form().levels().button("sea level").click()
    assert not page.form().asking("pressure").question()
    with qtbot.waitSignal(page.site_given) as given:
        page.use_button().click()
    assert given.args[1].pressure_hpa == pytest.approx(794.95, abs=0.2)  # ISO 2533:1975, table 1


def test_places_are_kept_with_zone_and_horizon_and_come_back(page: SitePage, make_page) -> None:
    _give(page, MEADOW)
    line = page.clock().zone_field().line()
    line.setFocus()
    QTest.keyClicks(line, "UTC+2")
    QTest.keyClick(line, Qt.Key.Key_Return)
    QTest.keyClick(page.horizon().panorama(), Qt.Key.Key_Up)
    again = make_page()
    again.kept().button("Meadow").click()
    assert again.field("latitude").text() == "33.5000° S"
    assert again.clock().zone_field().text() == "UTC+02:00"
    assert again.horizon().panorama().horizon().limit_deg(180.0) == 5.0


def test_a_place_is_forgotten_only_after_a_yes(page: SitePage) -> None:
    _give(page, MEADOW)
    page.kept().forget_button().click()
    page.kept().asking().no().click()
    assert page.kept().button("Meadow").isVisible()
    page.kept().forget_button().click()
    page.kept().asking().yes().click()
    assert page.kept().isHidden()


def test_going_to_a_kept_place_gives_it_with_the_default_air(page: SitePage, qtbot) -> None:
    _give(page, MEADOW)
    _type(page, name="Hill", latitude="48.1", longitude="11.6", elevation="520", pressure="940")
    page.use_button().click()
    with qtbot.waitSignal(page.site_given) as given:
        page.kept().button("Meadow").click()
    assert given.args[0] == MEADOW
    assert given.args[1].pressure_is_assumed


def test_a_horizon_drawn_before_the_site_is_given_goes_with_it(page: SitePage, make_page) -> None:
    QTest.keyClick(page.horizon().panorama(), Qt.Key.Key_Up)
    _give(page, MEADOW)
    again = make_page()
    again.kept().button("Meadow").click()
    assert again.horizon().panorama().horizon().limit_deg(180.0) == 5.0


def _give(page: SitePage, site: Site) -> None:
    texts = {
        "latitude": f"{site.latitude_deg}",
        "longitude": f"{site.longitude_deg}",
        "elevation": f"{site.elevation_m}",
    }
    _type(page, name=site.name, **texts)
    page.use_button().click()
