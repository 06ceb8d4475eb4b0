"""Time zones by name and offset, and what is said of those that are none."""

import pytest

from core.sky import clocks
from core.sky.clocks import UnusableZone, parse_utc

WINTER_S = parse_utc("2026-01-15T12:00Z")
SUMMER_S = parse_utc("2026-07-15T12:00Z")


@pytest.mark.parametrize(
    ("text", "name", "winter_h", "summer_h"),
    [
        # Offsets as the IANA time zone database has them (files "europe", "asia", "australasia").
        ("Europe/Lisbon", "Europe/Lisbon", 0.0, 1.0),
        ("lisbon", "Europe/Lisbon", 0.0, 1.0),
        (" asia/kolkata ", "Asia/Kolkata", 5.5, 5.5),
        ("Lord Howe", "Australia/Lord_Howe", 11.0, 10.5),
        ("utc", "UTC", 0.0, 0.0),
        ("UTC+5:45", "UTC+05:45", 5.75, 5.75),
        ("−3", "UTC−03:00", -3.0, -3.0),
        ("gmt-0330", "UTC−03:30", -3.5, -3.5),
    ],
)
def test_a_zone_is_found_and_keeps_its_summer_time(text, name, winter_h, summer_h):
    zone = clocks.find(text)
    assert zone.name == name
    assert (zone.offset_h(WINTER_S), zone.offset_h(SUMMER_S)) == (winter_h, summer_h)
    assert clocks.find(zone.name) == zone


def test_the_civil_time_of_summer_and_winter():
    zone = clocks.find("Europe/Lisbon")
    assert f"{zone.civil(SUMMER_S):%H:%M}" == "13:00"
    assert zone.offset_words(SUMMER_S) == "UTC+01:00"


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("", "empty"),
        ("Europe/Lisbom", "Is Europe/Lisbon meant?"),
        ("5", "no time zone"),
        ("UTC+15", "−12 to +14"),
        ("-12:30", "−12 to +14"),
        ("indianapolis", "write which"),
        ("../../etc/passwd", "no time zone"),
    ],
)
def test_what_is_no_zone_is_said(text, said):
    with pytest.raises(UnusableZone, match=said.replace("+", r"\+").replace("?", r"\?")):
        clocks.find(text)


def test_a_zone_far_from_the_longitude_is_doubted():
    zone = clocks.find("UTC-8")
    assert zone.doubt(-118.0, SUMMER_S) is None
    assert "E or W" in str(zone.doubt(118.0, SUMMER_S))
    # Across the date line the clocks differ by a day, not the hours by the Sun.
    assert clocks.find("UTC+14").doubt(-157.0, SUMMER_S) is None
