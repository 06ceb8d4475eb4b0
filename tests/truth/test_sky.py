"""The tests' own sky: its quick places are skyfield's, its pole is the sky's, its air refracts."""

import numpy as np
import pytest
from skyfield.api import Star, wgs84

from tests.truth.mount import SIDEREAL_DAY_S, apparent_vectors
from tests.truth.sky import Sky

ARCSEC = np.deg2rad(1.0 / 3600.0)
START_S = 1.797e9


@pytest.mark.parametrize("latitude_deg", [52.0, -33.0])
@pytest.mark.parametrize("dec_deg", [-60.0, 5.0, 74.0])
def test_between_its_knots_the_sky_is_skyfields_to_a_thousandth_of_an_arcsecond(
    latitude_deg, dec_deg
):
    star = Star(ra_hours=7.3, dec_degrees=dec_deg, ra_mas_per_year=900.0, dec_mas_per_year=-1200.0)
    utc_s = START_S + np.arange(0.0, 40.0 * 60.0, 97.0)
    ours = Sky(latitude_deg, 11.0, 300.0, 0.0).seen(star, utc_s)
    theirs = apparent_vectors(star, wgs84.latlon(latitude_deg, 11.0, 300.0), utc_s)
    assert np.linalg.norm(ours - theirs, axis=1).max() < 1e-3 * ARCSEC


@pytest.mark.parametrize("latitude_deg", [52.0, -33.0])
def test_the_pole_is_the_middle_of_a_polar_stars_daily_circle(latitude_deg):
    star = Star(ra_hours=3.0, dec_degrees=89.0)
    thirds_s = START_S + SIDEREAL_DAY_S * np.arange(3) / 3.0
    around = apparent_vectors(star, wgs84.latlon(latitude_deg, 11.0, 300.0), thirds_s).sum(axis=0)
    middle = around / np.linalg.norm(around)
    # Diurnal aberration (Explanatory Supplement: 0.32″ cos φ to the east) moves the whole circle.
    aside = 0.32 * np.cos(np.deg2rad(latitude_deg)) * ARCSEC
    moved = Sky(latitude_deg, 11.0, 300.0, 0.0).pole + aside * np.array([1.0, 0.0, 0.0])
    assert np.linalg.norm(middle - moved) < 0.2 * ARCSEC  # annual aberration in 16 h


def test_the_air_lifts_a_star_towards_the_zenith():
    # Bessel's mean refraction, printed table: 57.7″ at an apparent altitude of 45°.
    star, place = Star(ra_hours=7.3, dec_degrees=5.0), (48.0, 11.0, 0.0)
    utc_s = START_S + np.arange(0.0, 86400.0, 120.0)
    bare, lifted = (Sky(*place, pressure_hpa).seen(star, utc_s) for pressure_hpa in (0.0, 1003.0))
    at = np.argmin(np.abs(lifted[:, 2] - np.sqrt(0.5)) + 9.0 * (lifted[:, 2] < 0.2))
    lift = np.arcsin(lifted[at, 2]) - np.arcsin(bare[at, 2])
    assert lift / ARCSEC == pytest.approx(57.7, abs=1.0)
    across = np.cross(lifted[at], bare[at])
    assert abs(across[2]) < 1e-9  # no motion sideways
