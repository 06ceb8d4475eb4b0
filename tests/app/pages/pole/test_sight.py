"""What is read in the sight, by typing, dragging and arrow keys, and what it says of the axis."""

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest

from app.pages.pole.page import PolePage
from app.ui.fieldchart import Shape
from core.alignment.polarscope.view import View, clock_text, scope_view
from core.sky.pole import elevated_pole, pole_star
from core.sky.site import Site
from tests.app.pages.pole.conftest import AIR, NIGHT_S, NORTH, SOUTH


def _told(page: PolePage) -> tuple[str, str]:
    azimuth, altitude = page.sight_view().verdict().halves()
    return azimuth.accessibleDescription(), altitude.accessibleDescription()


def _type(page: PolePage, clock: str, distance: str) -> None:
    for field, text in zip(page.sight_view().reading().fields(), (clock, distance), strict=True):
        field.show_text(text)
    page.sight_view().reading().take_button().click()


@pytest.mark.parametrize("view", list(View))
@pytest.mark.parametrize(
    ("site", "azimuth_said"),
    # Greater azimuth is east of the pole in the north and west of it in the south.
    [
        (NORTH, "40.0′ east of the pole turn it west"),
        (SOUTH, "40.0′ west of the pole turn it east"),
    ],
)
def test_a_displaced_axis_is_found_from_where_the_star_is_seen(
    make_page, site: Site, azimuth_said: str, view: View
) -> None:
    page = make_page(site)
    page.sight_view().views().button(view.name).click()
    pole, star = elevated_pole(site, AIR), pole_star(site, AIR, NIGHT_S)
    axis = pole.azimuth_deg + 40.0 / 60.0, pole.true_altitude_deg - 25.0 / 60.0
    seen = scope_view(star.azimuth_deg, star.altitude_deg, *axis, view)
    page.sight_view().placed.emit(float(seen.clock_angle_deg), float(seen.distance_arcmin))
    assert _told(page) == (azimuth_said, "25.0′ too low raise it")


def test_typed_it_is_the_same_as_dragged_within_the_digits(page: PolePage) -> None:
    _type(page, "6:40", "55")
    assert page.sight_view().verdict().isVisible()
    typed = _told(page)
    page.sight_view().placed.emit(200.0, 55.0)
    assert _told(page) == typed
    clock, distance = page.sight_view().reading().fields()
    assert (clock.text(), distance.text()) == ("6:40", "55")


def test_the_mark_is_dragged_on_the_dial(page: PolePage) -> None:
    chart = page.sight_view().chart()
    start, end = chart.place_of(90.0, 20.0), chart.place_of(200.0, 55.0)
    QTest.mousePress(chart, Qt.MouseButton.LeftButton, pos=start.toPoint())
    QTest.mouseRelease(chart, Qt.MouseButton.LeftButton, pos=start.toPoint())
    QTest.mousePress(chart, Qt.MouseButton.LeftButton, pos=end.toPoint())
    clock, distance = page.sight_view().reading().fields()
    assert clock.text().startswith("6:")
    assert float(distance.text()) == pytest.approx(55.0, abs=1.5)  # a pixel is 0.7′ here
    QTest.mouseRelease(chart, Qt.MouseButton.LeftButton, pos=end.toPoint())


def test_beyond_the_edge_the_mark_stays_in_the_field(page: PolePage) -> None:
    chart = page.sight_view().chart()
    QTest.mousePress(chart, Qt.MouseButton.LeftButton, pos=QPoint(1, 1))
    assert float(page.sight_view().reading().fields()[1].text()) == 150.0
    QTest.mouseRelease(chart, Qt.MouseButton.LeftButton, pos=QPoint(1, 1))


def test_the_arrow_keys_move_the_mark_from_where_the_star_belongs(page: PolePage) -> None:
    chart = page.sight_view().chart()
    belongs = next(spot for spot in chart.chart().spots if spot.shape is Shape.HOLLOW)
    QTest.keyClick(chart, Qt.Key.Key_Up, Qt.KeyboardModifier.ShiftModifier)
    QTest.keyClick(chart, Qt.Key.Key_Down, Qt.KeyboardModifier.ShiftModifier)
    clock, distance = page.sight_view().reading().fields()
    assert clock.text() == clock_text(belongs.clock_angle_deg)
    assert float(distance.text()) == pytest.approx(belongs.distance_arcmin, abs=0.1)
    assert _told(page)[1].startswith("0.0′")


@pytest.mark.parametrize(
    ("clock", "distance", "wrong", "said"),
    [
        ("", "55", 0, "no place on a clock face"),
        ("25:00", "55", 0, "no place on a clock face"),
        ("6:75", "55", 0, "no place on a clock face"),
        ("-3", "55", 0, "no place on a clock face"),
        ("north", "55", 0, "no place on a clock face"),
        ("55", "6:40", 0, "no place on a clock face"),
        ("6:40", "", 1, "empty"),
        ("6:40", "far", 1, "not a number"),
        ("6:40", "-5", 1, "between"),
        ("6:40", "nan", 1, "not a number"),
        ("6:40", "151", 1, "outside a field 5° across"),
        ("6:40", "9999", 1, "between"),
    ],
)
def test_what_cannot_be_is_said_and_nothing_read(
    page: PolePage, outside, clock: str, distance: str, wrong: int, said: str
) -> None:
    _type(page, clock, distance)
    field = page.sight_view().reading().fields()[wrong]
    assert field.is_wrong()
    assert said in field.below()
    assert page.sight_view().verdict().isHidden()
    assert not outside.kept


@pytest.mark.parametrize("text", ["", "0", "-5", "wide", "21", "5 5", "nan"])
def test_a_field_of_view_that_cannot_be_leaves_the_last_one(page: PolePage, text: str) -> None:
    line = page.sight_view().field().line()
    line.selectAll()
    line.setText(text)
    line.textEdited.emit(text)
    assert page.sight_view().field().is_wrong()
    assert page.sight_view().chart().chart().radius_arcmin == 150.0


def test_the_field_of_view_is_the_persons(page: PolePage, make_page) -> None:
    line = page.sight_view().field().line()
    line.selectAll()
    QTest.keyClicks(line, "2,5")
    assert page.sight_view().chart().chart().radius_arcmin == 75.0
    again = make_page(NORTH)
    assert again.sight_view().chart().chart().radius_arcmin == 75.0


def test_a_reading_is_kept_for_its_night_and_place(make_page, outside) -> None:
    make_page(NORTH).sight_view().placed.emit(200.0, 55.0)
    assert make_page(NORTH).sight_view().verdict().isVisible()
    assert make_page(SOUTH).sight_view().verdict().isHidden()
    outside.utc_s += 20.0 * 3600.0
    assert make_page(NORTH).sight_view().verdict().isHidden()


def test_a_reading_stays_true_for_its_moment_and_can_be_taken_back(page, outside) -> None:
    page.sight_view().placed.emit(200.0, 55.0)
    told = _told(page)
    outside.utc_s += 1800.0
    page.take_way("sight")
    assert _told(page) == told
    page.sight_view().reading().forget_button().click()
    assert page.sight_view().verdict().isHidden()


@pytest.mark.parametrize("kept", [{"version": 9}, "text", 7, {"version": 1, "view": "SIDEWAYS"}])
def test_a_sight_kept_in_another_form_is_left_and_the_usual_shown(make_page, outside, kept) -> None:
    outside.kept["polar-axis sight"] = kept
    assert make_page(NORTH).sight_view().chart().chart().radius_arcmin == 150.0
