"""The Pole page: its figures, its ways, both hemispheres and the ends of the Earth."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.pages.pole.page import FIELD, HIDDEN, SIGHT, PolePage
from app.ui.fieldchart import Shape
from core.alignment.goal import Aim
from core.alignment.polarscope.reading import expected_in_sight
from core.alignment.polarscope.view import View
from core.sky.horizon import parse
from core.sky.pole import pole_star_turns
from core.sky.site import Site
from tests.app.pages.pole.conftest import AIR, NIGHT_S, NORTH, SOUTH

WAYS = (SIGHT, FIELD, HIDDEN)


def test_without_a_site_it_says_what_it_is_for_and_offers_the_first_step(make_page, qtbot) -> None:
    page = make_page(None)
    assert page.band().isHidden()
    with qtbot.waitSignal(page.site_wanted):
        page.empty().site_button().click()
    page.empty().practice_button().click()
    assert page.band().isVisible()
    assert "47.00°" in page.band().texts()


def test_a_site_given_later_takes_the_place_of_the_invented_one(make_page) -> None:
    page = make_page(None)
    page.empty().practice_button().click()
    page.session.set_site(SOUTH)
    assert "33.00°" in page.band().texts()
    assert page.empty().isHidden()


def test_the_height_to_set_follows_the_pole_aimed_at(page: PolePage) -> None:
    assert "true pole, due north" in page.band().texts()
    page.sight_view().aims().button(Aim.REFRACTED_POLE.name).click()
    # Refraction at 47° is 58.2″ · cot 47° · 1000 hPa/1010 hPa · 283/278 K = 55″ (Saemundsson's
    # rule in its simplest form), that is 0.015°.
    assert "47.02°" in page.band().texts()
    assert "refracted pole, due north" in page.band().texts()


@pytest.mark.parametrize(("site", "star"), [(NORTH, "Polaris"), (SOUTH, "σ Octantis")])
@pytest.mark.parametrize("view", list(View))
def test_the_dial_shows_where_the_star_belongs(make_page, site, star, view) -> None:
    page = make_page(site)
    page.sight_view().views().button(view.name).click()
    belongs = _spot(page, Shape.HOLLOW)
    place = expected_in_sight(site, AIR, NIGHT_S, view, refracted=False)
    assert belongs.words == star
    assert belongs.clock_angle_deg == pytest.approx(float(place.clock_angle_deg))
    assert belongs.distance_arcmin == pytest.approx(float(place.distance_arcmin))
    assert star in page.sight_view().chart().accessibleDescription()


@pytest.mark.parametrize(("site", "anticlockwise"), [(NORTH, True), (SOUTH, False)])
def test_the_dial_ticks_the_way_the_sky_turns(make_page, outside, site, anticlockwise) -> None:
    page = make_page(site)
    page.sight_view().views().button(View.ERECT.name).click()
    before = _spot(page, Shape.HOLLOW).clock_angle_deg
    ahead = page.sight_view().chart().chart().path[-1][0]
    outside.utc_s += 3600.0
    page.take_way(SIGHT)
    after = _spot(page, Shape.HOLLOW).clock_angle_deg
    turned = (after - before + 180.0) % 360.0 - 180.0
    assert turned == pytest.approx(-15.04 if anticlockwise else 15.04, abs=0.4)
    assert (after - ahead + 180.0) % 360.0 - 180.0 == pytest.approx(0.0, abs=0.4)


@pytest.mark.parametrize("way", WAYS)
@pytest.mark.parametrize("latitude_deg", [0.0, 5.0, -5.0, 85.0, -85.0, 89.9, -89.9, 90.0, -90.0])
def test_at_the_equator_and_the_poles_it_says_what_can_be_done(
    make_page, way: str, latitude_deg: float
) -> None:
    page = make_page(Site(latitude_deg, -20.0))
    page.take_way(way)
    said = page.band().texts()
    if abs(latitude_deg) > 85.0:
        assert "almost upright" in said
    if abs(latitude_deg) < 5.0:
        assert "the pole is on the horizon" in said


def test_at_the_very_pole_a_sight_is_refused_with_what_to_do(make_page) -> None:
    page = make_page(Site(90.0, 0.0))
    page.sight_view().placed.emit(30.0, 40.0)
    assert "spirit level" in page.sight_view().verdict().finding()
    page.take_way(FIELD)
    assert "goes round the zenith" in page.field_view().turns().texts()
    page.take_way(HIDDEN)
    assert "spirit level" in page.hidden_view().texts()


def test_a_pole_star_behind_the_horizon_is_said(make_page, outside) -> None:
    outside.horizon = parse("340 60 | 20 60")
    assert "Polaris is hidden now" in make_page(NORTH).band().texts()


def test_a_star_below_the_horizon_is_said(make_page, outside) -> None:
    site = Site(-0.01, -20.0)
    outside.utc_s = pole_star_turns(site, NIGHT_S).lower_culmination_utc_s
    assert "below the horizon now" in make_page(site).band().texts()


def test_the_ways_are_reached_by_keyboard(page: PolePage) -> None:
    page.setFocus()
    QTest.keyClick(page.ways().button(SIGHT), Qt.Key.Key_Right)
    QTest.keyClick(page.ways().button(FIELD), Qt.Key.Key_Space)
    assert page.field_view().isVisible()
    assert page.sight_view().isHidden()


def _spot(page: PolePage, shape: Shape):
    spots = page.sight_view().chart().chart().spots
    return next(spot for spot in spots if spot.shape is shape)
