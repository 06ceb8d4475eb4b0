"""Bodies to set the axis by roughly, and what to set on the circles."""

import erfa
import numpy as np
import pytest

from core.alignment.polarscope.roughmarks import (
    HIGHEST_DEG,
    LOWEST_DEG,
    declination_deg,
    rough_marks,
)
from core.sky.bodies import Body, body_now
from core.sky.clocks import parse_utc
from core.sky.site import Air, Site

AIR = Air(1000.0)
SITES = [Site(47.0, -20.0), Site(-33.0, -20.0), Site(0.0, -20.0), Site(89.9, 0.0), Site(-90.0, 0.0)]
NIGHT_S = parse_utc("2026-11-24T01:30Z")
NOON_S = parse_utc("2026-11-24T13:20Z")


@pytest.mark.parametrize("site", SITES, ids=lambda site: f"{site.latitude_deg:g}")
def test_circles_and_place_belong_together(site):
    for mark in rough_marks(site, AIR, NIGHT_S):
        # eraAe2hd: azimuth and altitude to hour angle and declination, one library's own way.
        angles = np.radians([mark.azimuth_deg, mark.altitude_deg, site.latitude_deg])
        hour_angle, declination = np.degrees(erfa.ae2hd(*angles))
        assert mark.declination_deg == pytest.approx(declination, abs=1e-9)
        # The hour angle is without refraction, which at 10° lifts by 5′.
        if abs(site.latitude_deg) < 89.0:
            apart = (mark.hour_angle_deg - hour_angle + 180.0) % 360.0 - 180.0
            assert abs(apart) * np.cos(np.radians(declination)) < 0.1
        assert LOWEST_DEG <= mark.altitude_deg <= HIGHEST_DEG


def test_at_night_there_are_bright_stars_with_their_magnitude():
    marks = rough_marks(SITES[0], AIR, NIGHT_S)
    stars = [mark for mark in marks if mark.magnitude is not None]
    assert 5 < len(stars) <= 20
    assert stars[0].magnitude < 1.0


@pytest.mark.parametrize("site", SITES, ids=lambda site: f"{site.latitude_deg:g}")
def test_never_the_sun_and_no_stars_by_day(site):
    for hours in range(24):
        utc_s = NOON_S + 3600.0 * hours
        marks = rough_marks(site, AIR, utc_s)
        assert all(mark.name != Body.SUN.value for mark in marks)
        if body_now(Body.SUN, site, AIR, utc_s).true_altitude_deg > -6.0:
            assert all(mark.magnitude is None for mark in marks)


def test_the_celestial_equator_in_the_east_has_declination_zero():
    assert declination_deg(90.0, 0.0, 51.0) == pytest.approx(0.0)
    assert declination_deg(0.0, 51.0, 51.0) == pytest.approx(90.0)
