"""Worked examples of J. Meeus, Astronomical Algorithms: sidereal time, precession, places."""

from __future__ import annotations

import erfa
import numpy as np
import pytest
from numpy.typing import NDArray

from core.sky import catalogues, clocks, places
from core.sky.catalogues import Star
from core.sky.clocks import bundled, tai_minus_utc_s
from core.sky.site import Air, Site

NO_AIR = Air(0.0)
GREENWICH = Site(0.0, 0.0)
MILLISECOND_HOURS = 1e-3 / 3600.0


def hours(degrees_or_hours: int, minutes: int, seconds: float) -> float:
    return degrees_or_hours + minutes / 60.0 + seconds / 3600.0


def utc_of_ut1(text: str) -> float:
    ut1_s = clocks.parse_utc(text)
    return float(ut1_s - bundled().ut1_minus_utc_s(ut1_s))


def universal_dates(text: str) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    utc_s = utc_of_ut1(text)
    return clocks.julian_dates_ut1(utc_s, bundled().ut1_minus_utc_s(utc_s))


def utc_of_tt(text: str) -> float:
    tt_s = clocks.parse_utc(text)
    return float(tt_s - tai_minus_utc_s(tt_s) - clocks.TT_MINUS_TAI_S)


def by_true_equinox_deg(ra_deg: float, dec_deg: float, utc_s: float) -> tuple[float, float]:
    """Apparent place by the true equinox of date, which Meeus counts right ascension from."""
    ra_rad, dec_rad = places.apparent_place_rad(ra_deg, dec_deg, utc_s)
    origins_rad = erfa.eo06a(*clocks.julian_dates_tt(utc_s))
    return float(np.degrees(erfa.anp(ra_rad - origins_rad))), float(np.degrees(dec_rad))


def by_the_models_of_1980_deg(ra_deg: float, dec_deg: float, utc_s: float) -> tuple[float, float]:
    """The same place with precession IAU 1976 and nutation IAU 1980 in place of ours."""
    tt = clocks.julian_dates_tt(utc_s)
    ours = erfa.s2c(*np.radians(by_true_equinox_deg(ra_deg, dec_deg, utc_s)))
    ra_rad, dec_rad = erfa.c2s(erfa.pnm80(*tt) @ erfa.pnm06a(*tt).T @ ours)
    return float(np.degrees(erfa.anp(ra_rad))), float(np.degrees(dec_rad))


# (UT1, mean, apparent): ex. 12.a and 12.b
SIDEREAL = [
    ("1987-04-10T00:00:00Z", hours(13, 10, 46.3668), hours(13, 10, 46.1351)),
    ("1987-04-10T19:21:00Z", hours(8, 34, 57.0896), None),
]


@pytest.mark.parametrize(("ut", "mean_hours", "apparent_hours"), SIDEREAL)
def test_sidereal_time_by_the_definition_of_1982(
    ut: str, mean_hours: float, apparent_hours: float | None
) -> None:
    """Meeus's own definition, from our UT1: 1 ms."""
    ut1 = universal_dates(ut)
    assert np.degrees(erfa.gmst82(*ut1)) / 15.0 == pytest.approx(mean_hours, abs=MILLISECOND_HOURS)
    if apparent_hours is not None:
        apparent = np.degrees(erfa.gst94(*ut1)) / 15.0
        assert apparent == pytest.approx(apparent_hours, abs=MILLISECOND_HOURS)


@pytest.mark.parametrize(("ut", "mean_hours", "apparent_hours"), SIDEREAL)
def test_sidereal_time(ut: str, mean_hours: float, apparent_hours: float | None) -> None:
    """Ours, by IAU 2006/2000A: the correction of precession makes it 3.3 ms later in 1987."""
    utc_s = utc_of_ut1(ut)
    apparent = clocks.local_sidereal_time_hours(utc_s, GREENWICH)
    equinoxes = np.degrees(erfa.ee06a(*clocks.julian_dates_tt(utc_s))) / 15.0
    assert apparent - equinoxes == pytest.approx(mean_hours, abs=4.0 * MILLISECOND_HOURS)
    if apparent_hours is not None:
        assert apparent == pytest.approx(apparent_hours, abs=4.0 * MILLISECOND_HOURS)


def test_precession_of_polaris_to_2050() -> None:
    """Ch. 21, exercise: FK5 place of α UMi carried by proper motion and IAU 1976 precession.

    0.3″ on the sky: the difference of that precession from IAU 2006, and of FK5 from ICRS.
    """
    star = Star(
        11767, "α UMi", ra_deg=15.0 * hours(2, 31, 48.704), dec_deg=hours(89, 15, 50.72),
        pm_ra_mas_yr=0.19877 * 15000.0 * np.cos(np.radians(hours(89, 15, 50.72))),
        pm_dec_mas_yr=-15.2, parallax_mas=0.0, magnitude=2.0, constellation="Ursa Minor",
    )  # fmt: skip
    utc_s = utc_of_tt("2050-01-01T00:00:00Z")
    moved = np.radians(catalogues.load_stars().at_epoch(star, utc_s))
    matrix = erfa.pmat06(*clocks.julian_dates_tt(utc_s))
    ra, dec = erfa.c2s(matrix @ erfa.s2c(*moved))
    separation = erfa.seps(
        ra, dec, np.radians(15.0 * hours(3, 48, 16.43)), np.radians(hours(89, 27, 15.38))
    )
    assert np.degrees(separation) * 3600.0 < 0.3


def test_apparent_place_of_theta_persei() -> None:
    """Ex. 23.a: 2028-11-13.19 TD; 0.005 s and 0.05″ by Meeus's models, 0.1″ by ours.

    The models of 1980 have moved off by 0.05″ by then: precession was corrected by 0.3″ a century.
    """
    star = Star(
        12777, "θ Per", ra_deg=15.0 * hours(2, 44, 11.986), dec_deg=hours(49, 13, 42.48),
        pm_ra_mas_yr=0.03425 * 15000.0 * np.cos(np.radians(hours(49, 13, 42.48))),
        pm_dec_mas_yr=-89.5, parallax_mas=0.0, magnitude=4.1, constellation="Perseus",
    )  # fmt: skip
    utc_s = utc_of_tt("2028-11-13T04:33:36Z")
    moved = catalogues.load_stars().at_epoch(star, utc_s)
    expected_ra, expected_dec = 15.0 * hours(2, 46, 14.390), hours(49, 21, 7.45)
    ra_deg, dec_deg = by_the_models_of_1980_deg(*moved, utc_s)
    assert ra_deg == pytest.approx(expected_ra, abs=15.0 * 0.005 / 3600.0)
    assert dec_deg == pytest.approx(expected_dec, abs=0.05 / 3600.0)
    ra_deg, dec_deg = by_true_equinox_deg(*moved, utc_s)
    assert ra_deg == pytest.approx(expected_ra, abs=0.1 / 3600.0)
    assert dec_deg == pytest.approx(expected_dec, abs=0.1 / 3600.0)


def test_horizontal_coordinates() -> None:
    """Ex. 13.b: Venus from 38°55′17″ N, 77°03′56″ W, 1987-04-10 19:21 UT: 248.034°, 15.125°.

    The example starts from the apparent place; its ICRS place comes from ERFA's inverse chain.
    """
    site = Site(hours(38, 55, 17.0), -hours(77, 3, 56.0))
    utc_s = utc_of_ut1("1987-04-10T19:21:00Z")
    tt = clocks.julian_dates_tt(utc_s)
    ra_cio = np.radians(15.0 * hours(23, 9, 16.641)) + erfa.eo06a(*tt)
    ra, dec, _ = erfa.atic13(ra_cio, -np.radians(hours(6, 43, 11.61)), *tt)
    azimuth, altitude = places.horizontal_deg(np.degrees(ra), np.degrees(dec), site, NO_AIR, utc_s)
    assert azimuth == pytest.approx(248.034, abs=0.001)
    assert altitude == pytest.approx(15.125, abs=0.001)
