"""The site form: text in, place and air or sentences out."""

from dataclasses import replace

import pytest

from app.pages.sitereading import Typed, read_site

GOOD = Typed("Meadow", "48 06 N", "11.6", "520")


def test_a_good_form_is_a_site_and_its_air() -> None:
    reading = read_site(GOOD)
    assert not reading.wrong
    assert reading.site is not None
    assert reading.air is not None
    assert (reading.site.latitude_deg, reading.site.longitude_deg) == (48.1, 11.6)
    assert reading.site.name == "Meadow"
    assert reading.air.pressure_is_assumed
    # ISO 2533:1975 gives 952.3 hPa at 520 m (interpolated between its 500 m and 550 m).
    assert reading.air.pressure_hpa == pytest.approx(952.3, abs=0.5)
    assert "952 hPa assumed" in reading.understood["pressure"]
    assert "10 °C assumed" in reading.understood["temperature"]


def test_measured_air_is_taken_as_it_is() -> None:
    reading = read_site(replace(GOOD, temperature="-3,5 °C", pressure="948.2 hPa"))
    assert reading.air is not None
    assert (reading.air.pressure_hpa, reading.air.temperature_c) == (948.2, -3.5)
    assert not reading.air.pressure_is_assumed


@pytest.mark.parametrize(
    ("field", "text", "said"),
    [
        ("latitude", "95", "swapped"),
        ("latitude", "", "empty"),
        ("longitude", "48.1 N", "swapped"),
        ("elevation", "", "rough figure"),
        ("elevation", "9000", "outside"),
        ("elevation", "nan", "not a number"),
        ("elevation", "high", "not a number"),
        ("temperature", "inf", "not a number"),
        ("temperature", "99", "outside"),
        ("pressure", "30", "outside"),
    ],
)
def test_a_wrong_field_is_said_and_no_site_is_made(field: str, text: str, said: str) -> None:
    reading = read_site(replace(GOOD, **{field: text}))
    assert said in reading.wrong[field]
    assert reading.site is None
    assert reading.air is None


def test_pressure_reduced_to_sea_level_is_suspected_but_taken() -> None:
    reading = read_site(replace(GOOD, elevation="2000", pressure="1013"))
    assert "reduced to sea level" in reading.understood["pressure"]
    assert reading.air is not None
    assert reading.air.pressure_hpa == 1013.0
