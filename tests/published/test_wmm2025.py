"""Magnetic declination against the official test values of the World Magnetic Model 2025.

Source: NOAA/NCEI and British Geological Survey, WMM2025_TestValues.txt, the 100 rows that come
with the model's coefficients (public domain), and the twelve of its report's table; here year,
height, place, declination and horizontal field. Copied from two public transcriptions that agree.
"""

from __future__ import annotations

import csv
from pathlib import Path

import pytest

from core.sky.clocks import parse_utc
from core.sky.compass import BLACKOUT_NT, NoDeclination, decimal_year, declination
from core.sky.site import Site

TABLE = Path(__file__).parent / "wmm2025_test_values.csv"
DECLINATION_DEG = 0.006  # printed to 0.01
HORIZONTAL_NT = 0.06  # printed to 0.1

# Table of the report (WMM2025_TEST_VALUES.txt): year, km, latitude, longitude, declination.
REPORT = [
    (2025.0, 0, 80, 0, 1.28), (2025.0, 0, 0, 120, -0.16), (2025.0, 0, -80, 240, 68.78),
    (2025.0, 100, 80, 0, 0.85), (2025.0, 100, 0, 120, -0.15), (2025.0, 100, -80, 240, 68.21),
    (2027.5, 0, 80, 0, 2.59), (2027.5, 0, 0, 120, -0.24), (2027.5, 0, -80, 240, 68.49),
    (2027.5, 100, 80, 0, 2.16), (2027.5, 100, 0, 120, -0.23), (2027.5, 100, -80, 240, 67.93),
]  # fmt: skip


def rows() -> list[list[float]]:
    with TABLE.open(encoding="ascii", newline="") as file:
        _, *lines = csv.reader(file)
    return [[float(text) for text in line] for line in lines]


def utc_of_year(year: float) -> float:
    start_s, end_s = (parse_utc(f"{int(year) + more}-01-01T00Z") for more in (0, 1))
    return start_s + (year - int(year)) * (end_s - start_s)


def test_the_official_hundred() -> None:
    refused = 0
    table = rows()
    assert len(table) == 100
    for year, height_km, latitude, longitude, expected_deg, horizontal_nt in table:
        site, utc_s = Site(latitude, longitude, 1000.0 * height_km), utc_of_year(year)
        if horizontal_nt < BLACKOUT_NT:
            refused += 1
            with pytest.raises(NoDeclination, match="no use here"):
                declination(site, utc_s)
            continue
        found = declination(site, utc_s)
        assert found.declination_deg == pytest.approx(expected_deg, abs=DECLINATION_DEG)
        assert found.horizontal_nt == pytest.approx(horizontal_nt, abs=HORIZONTAL_NT)
    assert refused == 2


def test_the_two_rows_in_a_blackout_zone(monkeypatch: pytest.MonkeyPatch) -> None:
    """The model's own value there, which the program declines to give."""
    monkeypatch.setattr("core.sky.compass.BLACKOUT_NT", 0.0)
    for year, height_km, latitude, longitude, expected_deg, horizontal_nt in rows():
        if horizontal_nt < BLACKOUT_NT:
            found = declination(Site(latitude, longitude, 1000.0 * height_km), utc_of_year(year))
            assert found.declination_deg == pytest.approx(expected_deg, abs=DECLINATION_DEG)


@pytest.mark.parametrize(("year", "height_km", "latitude", "longitude", "expected_deg"), REPORT)
def test_the_table_of_the_report(
    year: float, height_km: float, latitude: float, longitude: float, expected_deg: float
) -> None:
    found = declination(Site(latitude, longitude, 1000.0 * height_km), utc_of_year(year))
    assert found.declination_deg == pytest.approx(expected_deg, abs=DECLINATION_DEG)


@pytest.mark.parametrize("year", [2025.0, 2026.5, 2028.25, 2028.5])
def test_decimal_years(year: float) -> None:
    assert decimal_year(utc_of_year(year)) == pytest.approx(year, abs=1e-9)
