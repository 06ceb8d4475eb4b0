from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.sky import clocks
from core.sky.site import Site

GREENWICH = Site(51.48, 0.0)

TIMES = [
    ("1970-01-01T00:00:00Z", 0.0),
    ("2026-11-24T20:15:30Z", 1795551330.0),
    ("2026-11-24T20:15:30", 1795551330.0),
    ("2026-11-24 20:15:30.25", 1795551330.25),
    ("2026-11-24T20:15:30,25Z", 1795551330.25),
    ("2026-11-24T21:15:30+01:00", 1795551330.0),
    ("2026-11-24T15:15:30-0500", 1795551330.0),
    (" 2026-11-24t20:15:30z\n", 1795551330.0),
    ("20261124T201530Z", 1795551330.0),
    ("2026-11-24T20:15", 1795551300.0),
    ("1969-12-31T23:59:59Z", -1.0),
]


@pytest.mark.parametrize(("text", "utc_s"), TIMES)
def test_parse_utc(text: str, utc_s: float) -> None:
    assert clocks.parse_utc(text) == utc_s


@pytest.mark.parametrize(
    "text",
    ["", "yesterday", "2026-13-01T00:00Z", "24.11.2026 20:15", "2026-11-24", "20261124", "20:15",
     "2026-11-24T25:00Z", "1795551330", "2026-11-24T20:15:30 CET"],
)  # fmt: skip
def test_what_is_no_time_is_said_in_a_sentence(text: str) -> None:
    with pytest.raises(ValueError, match=r"is not a date and time; write it like .*\.$"):
        clocks.parse_utc(text)


def time_or_sentence(text: str) -> float | str:
    try:
        return clocks.parse_utc(text)
    except ValueError as error:
        return str(error)


@given(st.text(max_size=60) | st.from_regex(r"\d{4}-?\d\d-?\d\d[T ]?\d\d:?\d\d.{0,9}"))
def test_any_text_is_a_time_or_a_sentence(text: str) -> None:
    answer = time_or_sentence(text)
    assert answer.endswith(".") if isinstance(answer, str) else np.isfinite(answer)


FORMATTED = [
    (1795551330.0, "2026-11-24T20:15:30Z"),
    (1795551330.25, "2026-11-24T20:15:30.25Z"),
    (1795551300.0, "2026-11-24T20:15:00Z"),
    (0.000001, "1970-01-01T00:00:00.000001Z"),
    (-0.5, "1969-12-31T23:59:59.5Z"),
]


@pytest.mark.parametrize(("utc_s", "text"), FORMATTED)
def test_format_utc(utc_s: float, text: str) -> None:
    assert clocks.format_utc(utc_s) == text


@given(st.floats(-6e10, 2.5e11))
def test_format_and_parse_agree_to_the_microsecond(utc_s: float) -> None:
    back = clocks.parse_utc(clocks.format_utc(utc_s))
    assert back == pytest.approx(utc_s, abs=6e-7 + abs(utc_s) * 2.3e-16)


@pytest.mark.parametrize("utc_s", [1e20, -1e20, float("nan"), float("inf")])
def test_impossible_times_are_refused(utc_s: float) -> None:
    with pytest.raises(ValueError, match="is no time in the years"):
        clocks.format_utc(utc_s)


@pytest.mark.parametrize(
    ("day", "tt_minus_utc_s"),
    [
        ("1995-06-01", 61.184),
        ("2026-11-24", 69.184),
        ("2028-11-24", 69.184),
        ("2040-11-24", 69.184),
    ],
)
def test_terrestrial_time(day: str, tt_minus_utc_s: float) -> None:
    utc_s = clocks.parse_utc(f"{day}T06:00Z")
    whole, part = clocks.julian_dates_tt(utc_s)
    assert whole == clocks.UNIX_EPOCH_JD + np.floor(utc_s / 86400.0)
    assert part == pytest.approx(0.25 + tt_minus_utc_s / 86400.0, abs=1e-11)


def test_sidereal_time_follows_longitude() -> None:
    utc_s = clocks.parse_utc("2026-11-24T20:00Z")
    here = clocks.local_sidereal_time_hours(utc_s, Site(48.0, 15.0))
    assert (here - clocks.local_sidereal_time_hours(utc_s, GREENWICH)) % 24.0 == pytest.approx(1.0)


def test_sidereal_day() -> None:
    start = clocks.parse_utc("2026-11-24T20:00Z")
    first, later = clocks.local_sidereal_time_hours([start, start + 86164.09], GREENWICH)
    assert later == pytest.approx(first, abs=1e-5)
