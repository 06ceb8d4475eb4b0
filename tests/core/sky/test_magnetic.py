from __future__ import annotations

import numpy as np
import pytest

from core.sky.clocks import parse_utc
from core.sky.compass import Compass, NoDeclination, declination
from core.sky.site import Site
from core.sky.words import compass_words

NOW = parse_utc("2026-11-24T20:00Z")


def test_bearing_of_true_north_in_words() -> None:
    found = declination(Site(48.1, 11.6, 520.0), NOW)
    assert found.declination_deg == pytest.approx(
        4.4, abs=0.1
    )  # east: the needle is right of north
    assert found.pole_bearing_deg == pytest.approx(360.0 - found.declination_deg)
    assert compass_words(found) == "True north is at compass bearing 355.6° here ± 0.4°."
    assert found.caution is None


def test_in_the_south_it_is_true_south() -> None:
    found = declination(Site(-34.0, 18.0), NOW)
    assert found.declination_deg < -20.0
    assert found.pole_bearing_deg == pytest.approx(180.0 - found.declination_deg)
    assert compass_words(found).startswith("True south is at compass bearing 206.")


def test_error_follows_the_models_own_rule() -> None:
    found = declination(Site(60.0, 10.0), NOW)
    expected = np.sqrt(0.26**2 + (5417.0 / found.horizontal_nt) ** 2)
    assert found.sigma_deg == pytest.approx(expected, rel=1e-12)


def test_the_compass_is_refused_and_doubted_near_the_magnetic_poles() -> None:
    with pytest.raises(NoDeclination, match="no use here: so near the magnetic pole"):
        declination(Site(86.0, 140.0), NOW)
    with pytest.raises(NoDeclination, match="no use here"):
        declination(Site(-64.0, 136.0), NOW)
    doubted = declination(Site(72.0, -95.0), NOW)
    assert 2000.0 < doubted.horizontal_nt < 6000.0
    assert doubted.caution is not None
    assert doubted.caution.code is Compass.WEAK_FIELD


@pytest.mark.parametrize("utc", ["2024-12-31T23:59:58Z", "2030-01-01T00:00:01Z", "1905-06-01T00Z"])
def test_outside_its_years_it_says_so(utc: str) -> None:
    with pytest.raises(NoDeclination, match="holds from 2025 to the end of 2029"):
        declination(Site(48.0, 11.0), parse_utc(utc))


@pytest.mark.parametrize("utc", ["2025-01-01T00Z", "2029-12-31T23:59:59Z"])
@pytest.mark.parametrize("latitude_deg", [-90.0, -85.0, -5.0, 0.0, 5.0])
def test_to_the_ends_of_years_and_latitudes(utc: str, latitude_deg: float) -> None:
    assert np.isfinite(declination(Site(latitude_deg, 0.0, 9000.0), parse_utc(utc)).sigma_deg)


def test_longitude_may_be_counted_either_way() -> None:
    west, east = (declination(Site(40.0, lon), NOW).declination_deg for lon in (-100.25, 259.75))
    assert west == pytest.approx(east, abs=1e-9)
