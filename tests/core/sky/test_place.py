from __future__ import annotations

import erfa
import numpy as np
import pytest

from core.sky import clocks, places
from core.sky.site import Air, Site

NORTH = Site(48.0, 11.0, 500.0)
SOUTH = Site(-34.0, 18.5, 50.0)
NO_AIR = Air(0.0)
START = clocks.parse_utc("2026-11-24T20:00Z")
ARCSEC = np.radians(1.0 / 3600.0)


@pytest.mark.parametrize("site", [NORTH, SOUTH])
def test_star_crosses_the_meridian_and_goes_west(site: Site) -> None:
    """Hour angle grows; east of the meridian negative, with azimuth east; then positive."""
    ra_deg = 15.0 * float(clocks.local_sidereal_time_hours(START, site))
    times = START + np.array([-7200.0, 0.0, 7200.0])
    hour_angle, dec = places.hour_angle_and_declination(ra_deg, 5.0, site, times)
    assert np.degrees(hour_angle) == pytest.approx([-30.08, 0.0, 30.08], abs=0.5)
    assert np.degrees(dec) == pytest.approx(5.0, abs=0.2)
    azimuth, _ = places.horizontal_deg(ra_deg, 5.0, site, NO_AIR, times)
    assert azimuth[0] < 180.0 < azimuth[2] or azimuth[2] > 180.0 > azimuth[0]


def test_precession_is_in_the_place() -> None:
    """27 years of it move a star on the equator at 0h by 9′ in declination (20.04″ a year)."""
    _, dec = places.hour_angle_and_declination(0.0, 0.0, NORTH, START)
    assert np.degrees(dec) * 60.0 == pytest.approx(26.9 * 20.04 / 60.0, abs=0.5)


def test_hour_angle_is_continuous_through_lower_culmination() -> None:
    ra_deg = 15.0 * float(clocks.local_sidereal_time_hours(START, NORTH)) - 180.0
    times = START + np.arange(-18000.0, 18001.0, 60.0)
    hour_angle, _ = places.hour_angle_and_declination(ra_deg, 70.0, NORTH, times)
    turned = np.diff(hour_angle)
    assert turned == pytest.approx(np.radians(15.041 / 60.0), abs=1e-6)
    assert abs(hour_angle[len(times) // 2]) <= np.pi


def test_one_time_many_stars_and_one_star_many_times() -> None:
    ra = np.array([10.0, 80.0, 200.0])
    azimuth, altitude = places.horizontal_deg(ra, 20.0, NORTH, Air(950.0), START)
    assert azimuth.shape == altitude.shape == (3,)
    singly = [places.horizontal_deg(one, 20.0, NORTH, Air(950.0), START) for one in ra]
    assert azimuth == pytest.approx([float(pair[0]) for pair in singly], abs=1e-10)
    times = START + np.arange(0.0, 5.0)
    assert places.horizontal_deg(10.0, 20.0, NORTH, Air(950.0), times)[0].shape == (5,)
    table = places.horizontal_deg(ra[:, None], 20.0, NORTH, Air(950.0), times)[1]
    assert table.shape == (3, 5)


def test_shared_apparent_place_costs_less_than_it_says() -> None:
    """Over a day one apparent place stands for all: 0.2″; over longer each time has its own."""
    day = START + np.linspace(0.0, 86400.0, 25)
    shared = places.geometric_place_rad(40.0, 30.0, NORTH, day)
    each = [places.geometric_place_rad(40.0, 30.0, NORTH, time) for time in day]
    apart = erfa.seps(*shared, *np.array(each).T)
    assert apart.max() < 0.25 * ARCSEC
    week = START + np.linspace(0.0, 7 * 86400.0, 25)
    shared = places.geometric_place_rad(40.0, 30.0, NORTH, week)
    each = [places.geometric_place_rad(40.0, 30.0, NORTH, time) for time in week]
    assert erfa.seps(*shared, *np.array(each).T).max() < 1e-6 * ARCSEC


def test_leg_and_horizon_agree() -> None:
    times = START + np.arange(0.0, 600.0, 10.0)
    hour_angle, dec = places.hour_angle_and_declination(40.0, 30.0, SOUTH, times)
    azimuth, altitude = erfa.hd2ae(hour_angle, dec, np.radians(SOUTH.latitude_deg))
    seen = places.horizontal_deg(40.0, 30.0, SOUTH, NO_AIR, times)
    assert np.degrees(azimuth) == pytest.approx(seen[0], abs=1e-10)
    assert np.degrees(altitude) == pytest.approx(seen[1], abs=1e-10)


def test_air_lifts_and_does_not_turn() -> None:
    bare = places.horizontal_deg(40.0, 30.0, NORTH, NO_AIR, START)
    seen = places.horizontal_deg(40.0, 30.0, NORTH, Air(1010.0), START)
    assert seen[0] == bare[0]
    assert seen[1] > bare[1]


@pytest.mark.parametrize("year", [1995, 2026, 2028, 2040])
def test_any_year_works_without_a_warning(year: int) -> None:
    utc_s = clocks.parse_utc(f"{year}-11-24T20:00Z")
    hour_angle, dec = places.hour_angle_and_declination(40.0, 30.0, NORTH, utc_s)
    assert np.isfinite(hour_angle)
    assert np.degrees(dec) == pytest.approx(30.0, abs=0.3)
    assert np.isfinite(clocks.local_sidereal_time_hours(utc_s, NORTH))
