"""Suggested stars stand where they are said to, at any hour and in either hemisphere."""

import pytest

from core.alignment.guide.nextstar import PLACES, suggestions
from core.practice.simulation import MEADOW_AIR, NORTHERN_MEADOW, SOUTHERN_MEADOW
from core.sky import places
from core.sky.catalogues import load_stars
from core.sky.site import Site

MIDNIGHT_UTC_S = 1_795_569_600.0
SITES = [NORTHERN_MEADOW, SOUTHERN_MEADOW, Site(0.0, 20.0), Site(65.0, 20.0), Site(-65.0, 0.0)]


@pytest.mark.parametrize("site", SITES, ids=lambda site: f"{site.latitude_deg:+.0f}")
@pytest.mark.parametrize("hours_later", range(0, 24, 3))
def test_every_place_has_a_star_and_it_stands_there(site: Site, hours_later: int) -> None:
    utc_s = MIDNIGHT_UTC_S + 3600.0 * hours_later
    found = suggestions(load_stars(), site, MEADOW_AIR, utc_s)
    assert {star.where for star in found} == set(PLACES)
    for star in found:
        azimuth_deg, altitude_deg = places.horizontal_deg(
            star.ra_deg, star.dec_deg, site, MEADOW_AIR, utc_s
        )
        assert float(altitude_deg) == pytest.approx(star.altitude_deg, abs=0.01)
        assert float(altitude_deg) >= 18.0 - 0.01
        if star.where == "low in the east":
            assert 0.0 < float(azimuth_deg) < 180.0
        if star.where == "low in the west":
            assert 180.0 < float(azimuth_deg) < 360.0
        if star.where == "near the meridian":
            assert abs(star.hour_angle_deg) < 12.0
