"""The star field, and the ways to a hidden pole."""

import pytest
from PySide6.QtCore import QPoint
from PySide6.QtTest import QTest

from app.pages.pole.page import FIELD, HIDDEN, PolePage
from app.ui.fieldchart import Shape
from core.sky.pole import elevated_pole
from core.sky.site import Site
from core.sky.words import SHADOW_CAUTION, SUN_CAUTION
from tests.app.pages.pole.conftest import AIR, NIGHT_S, NORTH, SOUTH


@pytest.mark.parametrize(
    ("site", "star", "least"), [(NORTH, "Polaris", 12), (SOUTH, "σ Octantis", 25)]
)
def test_the_pole_star_and_its_neighbours_are_there(make_page, site, star, least) -> None:
    page = make_page(site)
    page.take_way(FIELD)
    spots = page.field_view().chart().chart().spots
    assert sum(spot.shape is Shape.STAR for spot in spots) >= least
    assert star in [spot.words for spot in spots]


def test_close_up_the_two_poles_stand_apart_by_the_refraction(page: PolePage) -> None:
    page.take_way(FIELD)
    page.field_view().reach().button("10").click()
    page.field_view().views().button("ERECT").click()
    refracted = next(s for s in _spots(page) if s.shape is Shape.SALTIRE)
    lift_arcmin = elevated_pole(NORTH, AIR).refraction_arcsec / 60.0
    assert refracted.distance_arcmin == pytest.approx(lift_arcmin)
    assert refracted.clock_angle_deg == pytest.approx(0.0, abs=1e-6)
    assert refracted.words == "refracted pole"


def test_a_star_chosen_in_the_list_is_pointed_out(page: PolePage) -> None:
    page.take_way(FIELD)
    page.field_view().star_list().setCurrentRow(2)
    name = page.field_view().star_list().item(2).text().split("   ")[0]
    assert name in [spot.words for spot in _spots(page) if spot.is_main]


def test_a_star_under_the_pointer_is_read_off(page: PolePage, qtbot) -> None:
    page.take_way(FIELD)
    chart = page.field_view().chart()
    polaris = next(spot for spot in _spots(page) if spot.words == "Polaris")
    place = chart.place_of(polaris.clock_angle_deg, polaris.distance_arcmin).toPoint()
    QTest.mouseMove(chart, QPoint(2, 2))
    with qtbot.waitSignal(chart.pointed, check_params_cb=lambda told: "Polaris, mag" in told):
        QTest.mouseMove(chart, place)


def test_the_next_turns_come_in_order_with_their_waiting(page: PolePage, outside) -> None:
    page.take_way(FIELD)
    first = page.field_view().turns().texts()
    assert all(word in first for word in ("upper", "lower", "east", "west", "UTC", "h"))
    outside.utc_s += 86_164.0
    page.take_way(FIELD)
    assert page.field_view().turns().texts() != first


def test_a_hidden_pole_by_compass_star_and_shadow(page: PolePage, qtbot) -> None:
    page.take_way(HIDDEN)
    qtbot.waitUntil(lambda: page.hidden_view().marks().count() > 5, timeout=10_000)
    said = page.hidden_view().texts()
    assert "True north is at compass bearing" in said
    assert "raise it to 47.0°" in said
    assert "declination" in said
    assert "points true north" in said
    rows = [page.hidden_view().marks().item(row).text() for row in range(5)]
    assert not any(row.startswith("Sun") for row in rows)
    shown = _all_texts(page)
    assert SUN_CAUTION in shown
    assert SHADOW_CAUTION in shown


def test_without_a_noon_shadow_the_reason_is_said(make_page, qtbot) -> None:
    page = make_page(Site(80.0, 20.0))  # at the end of November the Sun does not rise there
    page.take_way(HIDDEN)
    qtbot.waitUntil(lambda: "there is no shadow" in page.hidden_view().texts(), timeout=10_000)


def test_where_no_compass_works_the_reason_is_said(make_page) -> None:
    # WMM2025: the north magnetic pole lies near 85.8° N, 139° E in 2025 (NOAA's own page).
    page = make_page(Site(85.8, 139.0))
    page.take_way(HIDDEN)
    assert "compass is no use here" in page.hidden_view().texts()


def test_by_day_nothing_faint_is_offered(make_page, outside, qtbot) -> None:
    outside.utc_s = NIGHT_S + 12.0 * 3600.0
    page = make_page(NORTH)
    page.take_way(HIDDEN)
    qtbot.waitUntil(lambda: "UTC" in page.hidden_view().texts(), timeout=10_000)
    rows = page.hidden_view().marks().count()
    texts = [page.hidden_view().marks().item(row).text() for row in range(rows)]
    assert not any("magnitude" in text for text in texts)


def _spots(page: PolePage):
    return page.field_view().chart().chart().spots


def _all_texts(page: PolePage) -> str:
    from app.ui.text import Text

    return " ".join(text.text() for text in page.hidden_view().findChildren(Text))
