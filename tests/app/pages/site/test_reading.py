"""The site form: text in, place and air or sentences out."""

from dataclasses import replace

import pytest

from app.pages.site.reading import Typed, read_site

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
    assert "default for 520 m is assumed, 952 hPa" in reading.understood["pressure"]
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
        ("elevation", "7000", "outside"),
        ("elevation", "nan", "not a number"),
        ("elevation", "high", "not a number"),
        ("temperature", "inf", "not a number"),
        ("temperature", "150", "outside"),
        ("elevation", "520 yards", "not a number of m"),
        ("latitude", "north", "cannot be read"),
        ("longitude", "", "empty"),
        ("longitude", "400", "between"),
        ("temperature", "cold", "not a number"),
        ("temperature", "-99", "outside"),
        ("temperature", "280 K", "not a number"),
        ("pressure", "3", "outside"),
        ("pressure", "-950", "outside"),
        ("pressure", "high", "not a number"),
        ("pressure", "nan", "not a number"),
        ("pressure", "950 psi", "not a number"),
    ],
)
def test_a_wrong_field_is_said_and_no_site_is_made(field: str, text: str, said: str) -> None:
    reading = read_site(replace(GOOD, **{field: text}))
    assert said in reading.wrong[field]
    assert reading.site is None
    assert reading.air is None


# One inch of mercury is 33.86389 hPa, one millimetre 1.333224 hPa (ISO 80000-4), one foot 0.3048 m.
# 1013.25 hPa at sea level are 794.95 hPa at 2000 m (ISO 2533:1975, table 1).
@pytest.mark.parametrize(
    ("changes", "field", "guess", "said"),
    [
        ({"elevation": "10", "pressure": "29.92"}, "pressure", 1013.2, "inches of mercury"),
        ({"elevation": "10", "pressure": "29.92 inHg"}, "pressure", 1013.2, "inches of mercury"),
        ({"elevation": "10", "pressure": "760"}, "pressure", 1013.3, "millimetres of mercury"),
        ({"elevation": "10", "pressure": "101.3 kPa"}, "pressure", 1013.0, "kilopascals"),
        ({"elevation": "2000", "pressure": "1013.25"}, "pressure", 795.0, "sea level"),
        ({"elevation": "2000", "pressure": "29.92"}, "pressure", 794.9, "sea level"),
        ({"elevation": "30", "temperature": "59"}, "temperature", 15.0, "°F"),
        ({"elevation": "30", "temperature": "50 F"}, "temperature", 10.0, "°F"),
        ({"elevation": "5280", "pressure": "835"}, "elevation", 1609.3, "feet"),
        ({"elevation": "1700 ft"}, "elevation", 518.2, "feet"),
        ({"elevation": "9300"}, "elevation", 2834.6, "feet"),
        ({"elevation": "1,520"}, "elevation", 1520.0, "as 1520 m or as 1.52 m"),
        ({"elevation": "1.520 m"}, "elevation", 1520.0, "as 1520 m or as 1.52 m"),
        ({"elevation": "12,345"}, "elevation", 12345.0, "as 12345 m or as 12.345 m"),
        ({"elevation": "5,280 ft"}, "elevation", 1609.3, "5280 feet are 1609 m"),
    ],
)
def test_another_unit_is_asked_about_and_nothing_taken(changes, field, guess, said) -> None:
    reading = read_site(replace(GOOD, **changes))
    assert reading.offers[field].guess == pytest.approx(guess, abs=0.11)
    assert said in str(reading.offers[field].question)
    assert reading.site is None
    assert field not in reading.wrong


@pytest.mark.parametrize(
    ("text", "metres"),
    [("520,5", 520.5), ("1.52", 1.52), ("0.520", 0.52), ("-1,5", -1.5), ("520.125", 520.125)],
)
def test_decimals_that_can_be_nothing_else_are_taken(text: str, metres: float) -> None:
    reading = read_site(replace(GOOD, elevation=text))
    assert reading.site is not None
    assert reading.site.elevation_m == metres


@pytest.mark.parametrize("changes", [{"pressure": ""}, {"pressure": "1013", "at_sea_level": True}])
def test_what_waits_for_the_elevation_is_not_wrong(changes) -> None:
    reading = read_site(replace(GOOD, elevation="1700 ft", **changes))
    assert list(reading.offers) == ["elevation"]
    assert not reading.wrong
    assert "elevation" in reading.understood["pressure"]


def test_a_heat_that_is_meant_is_out_of_bounds_and_asked_about_once() -> None:
    meant = frozenset({("temperature", "59")})
    reading = read_site(replace(GOOD, temperature="59", meant=meant))
    assert not reading.offers
    assert "outside" in reading.wrong["temperature"]


def test_meant_as_it_stands_it_is_taken_where_that_is_possible() -> None:
    typed = replace(GOOD, elevation="2000", pressure="1013")
    meant = replace(typed, meant=frozenset({("pressure", "1013")}))
    reading = read_site(meant)
    assert reading.air is not None
    assert reading.air.pressure_hpa == 1013.0
    assert "usual at 2000 m" in reading.understood["pressure"]
    inches = replace(GOOD, pressure="29.92", meant=frozenset({("pressure", "29.92")}))
    assert "outside" in read_site(inches).wrong["pressure"]


def test_a_pressure_at_sea_level_is_converted_and_the_result_said() -> None:
    reading = read_site(replace(GOOD, elevation="2000", pressure="1013.25", at_sea_level=True))
    assert reading.air is not None
    # ISO 2533:1975, table 1: 794.95 hPa at 2000 m.
    assert reading.air.pressure_hpa == pytest.approx(794.95, abs=0.2)
    assert not reading.air.pressure_is_assumed
    assert "795.0 hPa at 2000 m" in reading.understood["pressure"]


@pytest.mark.parametrize(
    ("text", "said"), [("600", "outside"), ("1200", "outside"), ("fair", "not a number")]
)
def test_no_pressure_at_sea_level(text: str, said: str) -> None:
    reading = read_site(replace(GOOD, pressure=text, at_sea_level=True))
    assert said in reading.wrong["pressure"]
