"""Places of the two pole stars against NOVAS, a surveyors' table, and a cross-computation."""

from __future__ import annotations

import erfa
import numpy as np
import pytest

from core.sky import catalogues, clocks, places
from core.sky.catalogues import Star
from core.sky.clocks import bundled, tai_minus_utc_s
from core.sky.site import Site
from core.units import SECONDS_PER_DAY

ON_THE_SKY_ARCSEC = 0.05  # catalogue's radial velocity, Jupiter's deflection: far below this
DIURNAL_ABERRATION_ARCSEC = 0.3192  # at the equator; Explanatory Supplement (1992), eq. 3.257-1

POLARIS = Star(
    11767, "Polaris", ra_deg=2.530301028 * 15.0, dec_deg=89.264109444, pm_ra_mas_yr=44.22,
    pm_dec_mas_yr=-11.75, parallax_mas=7.56, magnitude=2.0, constellation="Ursa Minor",
)  # fmt: skip


def utc_of_tt(julian_date: float) -> float:
    tt_s = (julian_date - clocks.UNIX_EPOCH_JD) * SECONDS_PER_DAY
    return float(tt_s - tai_minus_utc_s(tt_s) - clocks.TT_MINUS_TAI_S)


def apparent(star: Star, utc_s: float) -> tuple[float, float]:
    """Geocentric apparent right ascension (true equinox) and declination, radians."""
    ra, dec = places.apparent_place_rad(*catalogues.load_stars().at_epoch(star, utc_s), utc_s)
    return float(ra - erfa.eo06a(*clocks.julian_dates_tt(utc_s))), float(dec)


def apart_arcsec(ra: float, dec: float, expected_hours: float, expected_deg: float) -> float:
    expected = np.radians(15.0 * expected_hours), np.radians(expected_deg)
    return float(np.degrees(erfa.seps(ra, dec, *expected)) * 3600.0)


@pytest.mark.parametrize(
    ("julian_date_tt", "ra_hours", "dec_deg"),
    [
        (2451545.0, 2.5459982729, 89.2669732845),
        (2456164.5, 2.8064741334, 89.3136939266),
    ],
)
def test_geocentric_as_novas(julian_date_tt: float, ra_hours: float, dec_deg: float) -> None:
    """USNO NOVAS, values kept in skyfield's tests (test_against_novas.py)."""
    ra, dec = apparent(POLARIS, utc_of_tt(julian_date_tt))
    assert apart_arcsec(ra, dec, ra_hours, dec_deg) < ON_THE_SKY_ARCSEC


def test_topocentric_as_novas_checkout_file() -> None:
    """USNO NOVAS checkout file: TT 2450203.5, ΔT 60 s, latitude 45°, longitude −75°, sea level.

    Diurnal aberration, which `place` leaves to the geometry of the drift, is added by its formula.
    """
    utc_s = utc_of_tt(2450203.5)
    ra, dec = apparent(POLARIS, utc_s)
    ut1_jd = 2450203.5, -60.0 / SECONDS_PER_DAY
    sidereal = erfa.gst06a(*ut1_jd, 2450203.5, 0.0) + np.radians(-75.0)
    east = np.radians(DIURNAL_ABERRATION_ARCSEC / 3600.0) * np.cos(np.radians(45.0))
    ra_seen = ra + east * np.cos(sidereal - ra) / np.cos(dec)
    dec_seen = dec + east * np.sin(sidereal - ra) * np.sin(dec)
    assert apart_arcsec(ra_seen, dec_seen, 2.446988922, 89.24635149) < ON_THE_SKY_ARCSEC


def test_surveyors_table() -> None:
    """A surveyors' table of Polaris, November 2009: 2009-11-01 0h UT1, +89°18′30.1″,
    Greenwich hour angle 359°04′37.5″. It uses FK5's proper motion: 20″ in hour angle is 0.25″.
    """
    ut1_s = clocks.parse_utc("2009-11-01T00:00:00Z")
    utc_s = ut1_s - bundled().ut1_minus_utc_s(ut1_s)
    stars = catalogues.load_stars()
    polaris = stars.find("Polaris")
    assert polaris is not None
    hour_angle, dec = places.hour_angle_and_declination(
        *stars.at_epoch(polaris, float(utc_s)), Site(0.0, 0.0), utc_s
    )
    west_deg = np.degrees(hour_angle) % 360.0
    assert np.degrees(dec) == pytest.approx(89 + 18 / 60 + 30.1 / 3600, abs=0.3 / 3600)
    assert west_deg == pytest.approx(359 + 4 / 60 + 37.5 / 3600, abs=20.0 / 3600)


@pytest.mark.parametrize(("name", "distance_arcmin"), [("Polaris", 37.28), ("σ Octantis", 69.13)])
def test_polar_distance_in_2026(name: str, distance_arcmin: float) -> None:
    """2026-11-24 0h TT: a cross-check computed with skyfield and Hipparcos-2, not published."""
    star = catalogues.load_stars().find(name)
    assert star is not None
    utc_s = clocks.parse_utc("2026-11-24T00:00:00Z") - 69.184
    _, dec = apparent(star, utc_s)
    assert 60.0 * (90.0 - abs(np.degrees(dec))) == pytest.approx(distance_arcmin, abs=0.02)
