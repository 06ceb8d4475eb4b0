"""What times and obstructions the pages of the evening use."""

from dataclasses import replace

import pytest

from app.night.places import Place
from core.sky.horizon import Horizon
from tests.app.pages.eveningpages import AFTERNOON_S, HILL, SOUTH, evening


@pytest.mark.usefixtures("qapp")
def test_nothing_is_around_without_a_site() -> None:
    given = evening(None)
    assert given.around() is None
    assert given.zone().name == "UTC"


@pytest.mark.usefixtures("qapp")
def test_the_zone_of_the_place_is_used_until_utc_is_wanted() -> None:
    given = evening(HILL)
    assert given.zone().offset_h(AFTERNOON_S) == 2.0  # summer time, from the IANA database
    given.show_utc(True)
    assert given.zone().offset_h(AFTERNOON_S) == 0.0


@pytest.mark.usefixtures("qapp")
def test_a_place_with_an_unknown_zone_falls_back_and_says_so() -> None:
    given = evening(HILL, zone="Nowhere/Atall")
    assert given.zone().name == "UTC"
    assert "UTC" in given.around().zone_note


@pytest.mark.usefixtures("qapp")
def test_a_site_that_is_not_kept_has_utc_and_a_flat_horizon() -> None:
    given = evening(HILL)
    given.session.set_site(SOUTH)
    assert "No time zone is kept" in given.around().zone_note
    assert given.around().horizon.azimuth_deg.size == 0


def test_what_the_site_page_kept_meanwhile_is_taken_up(qtbot) -> None:
    given = evening(HILL)
    place = given.places.of(HILL)
    assert isinstance(place, Place)
    given.places.keep(replace(place, horizon=Horizon.through([(10.0, 20.0)])))
    with qtbot.waitSignal(given.changed):
        given.refresh()
    assert given.around().horizon.altitude_deg.tolist() == [20.0]
    with qtbot.assertNotEmitted(given.changed):
        given.refresh()
