"""What people type for a place, and what it means."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.sky.coordinates import (
    UnusableCoordinates,
    format_latitude,
    format_longitude,
    parse_declination,
    parse_latitude,
    parse_longitude,
    parse_pair,
    parse_right_ascension,
)

LATITUDES = {
    "48.1": 48.1,
    " 48,1 ": 48.1,
    "-33.5": -33.5,
    "−33.5": -33.5,
    "33.5 S": -33.5,
    "S33.5": -33.5,
    "n 48.1": 48.1,
    "48°06′00″": 48.1,
    "48° 6' 0\" N": 48.1,
    "48:06:00": 48.1,
    "48 06": 48.1,
    "48 06,5 N": 48 + 6.5 / 60,
    "48d06m00s": 48.1,
    "48d06m00sS": -48.1,
    "-0 30": -0.5,
    "0° 30′ S": -0.5,
    "90": 90.0,
    "48.1 deg": 48.1,
}


@pytest.mark.parametrize(("text", "expected"), LATITUDES.items())
def test_latitude_forms(text: str, expected: float) -> None:
    assert parse_latitude(text) == pytest.approx(expected, abs=1e-12)


LONGITUDES = {
    "11.6": 11.6,
    "11,6 E": 11.6,
    "77°03′56″ W": -(77 + 3 / 60 + 56 / 3600),
    "W 77 03 56": -(77 + 3 / 60 + 56 / 3600),
    "-180": -180.0,
    "282.5": -77.5,
    "11 36 e": 11.6,
    "0h46m24s": 11.6,  # an hour is 15 degrees
    "0h 46min 24s": 11.6,
    "0h46m24s E": 11.6,
    "-5h 10m": -77.5,
    "5.5h W": -82.5,
    "18h 50m": -77.5,
}


@pytest.mark.parametrize(("text", "expected"), LONGITUDES.items())
def test_longitude_forms(text: str, expected: float) -> None:
    assert parse_longitude(text) == pytest.approx(expected, abs=1e-12)


PAIRS = [
    "48.1, 11.6",
    "48.1 11.6",
    "48.1;11.6",
    "48,1; 11,6",
    "48,1, 11,6",
    "48.1,11.6",
    "48.1N 11.6E",
    "48.1 N, 11.6 E",
    "11.6 E, 48.1 N",
    "N 48 06 00, E 11 36 00",
    "N48 06 00 E11 36 00",
    "48°06′00″N 11°36′00″E",
    "48.1\t11.6",
    "48.1, 0h46m24s",
]


@pytest.mark.parametrize("text", PAIRS)
def test_pair_forms(text: str) -> None:
    assert parse_pair(text) == pytest.approx((48.1, 11.6), abs=1e-12)


@pytest.mark.parametrize(
    ("text", "expected"),
    {
        "5 14 32.3": (5 + 14 / 60 + 32.3 / 3600) * 15,
        "05:14:32": (5 + 14 / 60 + 32 / 3600) * 15,
        "5h14m32s": (5 + 14 / 60 + 32 / 3600) * 15,
        "5.24h": 78.6,
        "78.6°": 78.6,
        "78.6 deg": 78.6,
        "78°36′": 78.6,
        "5h 14,5m": (5 + 14.5 / 60) * 15,
    }.items(),
)
def test_right_ascension_forms(text: str, expected: float) -> None:
    assert parse_right_ascension(text) == pytest.approx(expected, abs=1e-10)


@pytest.mark.parametrize(
    ("text", "expected"),
    {"-8 12 06": -(8 + 12 / 60 + 6 / 3600), "+8.2": 8.2, "-8°12′06″": -8.201666666667}.items(),
)
def test_declination_forms(text: str, expected: float) -> None:
    assert parse_declination(text) == pytest.approx(expected, abs=1e-10)


@pytest.mark.parametrize(
    ("parse", "text", "said"),
    [
        (parse_latitude, "95", "swapped"),
        (parse_latitude, "3h 12m", "in hours; a latitude is in degrees"),
        (parse_latitude, "3h 12m 24s", "in hours; a latitude is in degrees"),
        (parse_longitude, "1h 5°", "mixes hours with degrees"),
        (parse_longitude, "25h", "between 180° W and 180° E"),
        (parse_latitude, "11.6 E", "swapped"),
        (parse_longitude, "48.1 N", "swapped"),
        (parse_longitude, "361", "between 180° W and 180° E"),
        (parse_longitude, "-200", "between 180° W and 180° E"),
        (parse_latitude, "", "empty"),
        (parse_latitude, "north", "cannot be read"),
        (parse_latitude, "-48 N", "Leave one of them out"),
        (parse_latitude, "48.1 06", "only the last number"),
        (parse_latitude, "48 61", "below 60"),
        (parse_latitude, "48.1, 11.6", "cannot be read"),
        (parse_latitude, "1 2 3 4", "cannot be read"),
        (parse_latitude, "nan", "cannot be read"),
        (parse_pair, "48.1", "not a latitude and a longitude"),
        (parse_pair, "95, 11.6", "swapped"),
        (parse_right_ascension, "5.24", "hours or degrees"),
        (parse_right_ascension, "25 00 00", "between 0 and 24 hours"),
        (parse_right_ascension, "-1h", "between 0 and 24 hours"),
        (parse_declination, "5h14m", "hours"),
        (parse_declination, "+91", "swapped"),
    ],
)
def test_what_is_wrong_is_said(parse, text: str, said: str) -> None:
    with pytest.raises(UnusableCoordinates, match=said):
        parse(text)


@pytest.mark.parametrize(
    "parse",
    [parse_latitude, parse_longitude, parse_pair, parse_right_ascension, parse_declination],
)
@given(text=st.text(max_size=40))
def test_any_text_is_a_finite_place_or_a_sentence(parse, text: str) -> None:
    said, value = "said.", 0.0
    try:
        value = parse(text)
    except UnusableCoordinates as problem:
        said = str(problem)
    assert said.endswith(".")
    assert np.all(np.isfinite(value))


@given(st.floats(-90, 90), st.floats(-180, 180))
def test_what_is_shown_can_be_typed(latitude: float, longitude: float) -> None:
    shown = f"{format_latitude(latitude)}, {format_longitude(longitude)}"
    assert parse_pair(shown) == pytest.approx((latitude, longitude), abs=6e-5)
