"""Which night is meant, how dark it gets, and what is said where there is none."""

from __future__ import annotations

import pytest

from core.night.darkness import night_of
from core.sky.almanac import Light
from core.sky.clocks import format_utc, parse_utc
from core.sky.site import Site

MIDLAND = Site(48.0, 11.0)
FAR_NORTH = Site(70.0, 20.0)


@pytest.mark.parametrize(
    ("utc", "begins_on"),
    [
        ("2026-11-24T15:00Z", "2026-11-24"),  # before sunset: the coming night
        ("2026-11-24T22:00Z", "2026-11-24"),
        ("2026-11-25T03:00Z", "2026-11-24"),  # past midnight: still the same night
        ("2026-11-25T08:00Z", "2026-11-25"),  # after sunrise: the coming one
    ],
)
def test_the_night_under_way_or_the_coming_one(utc: str, begins_on: str) -> None:
    assert format_utc(round(night_of(MIDLAND, parse_utc(utc)).begin_utc_s))[:10] == begins_on


def test_ordinary_night() -> None:
    night = night_of(MIDLAND, parse_utc("2026-11-24T20:00Z"))
    assert night.sentences == ()
    assert night.usable_light is Light.NIGHT
    [(begin, end)] = night.usable_spans
    assert night.sunset_utc_s is not None
    assert night.sunrise_utc_s is not None
    assert night.sunset_utc_s < begin < end < night.sunrise_utc_s
    wider = night.spans_of(Light.CIVIL)
    assert wider[0][0] == night.sunset_utc_s


def test_polar_summer_is_said_plainly() -> None:
    night = night_of(FAR_NORTH, parse_utc("2026-06-20T22:00Z"))
    assert night.usable_spans == ()
    assert night.usable_light is None
    assert night.sunset_utc_s is None
    [sentence] = night.sentences
    assert sentence.startswith("The Sun does not set: polar summer, no night at all.")


def test_white_night() -> None:
    night = night_of(Site(60.0, 25.0), parse_utc("2026-06-20T22:00Z"))
    assert night.usable_light is Light.NAUTICAL
    assert "no darker than nautical twilight" in night.sentences[0]
    lighter = night_of(Site(64.0, 25.0), parse_utc("2026-06-20T22:00Z"))
    assert lighter.usable_spans == ()
    assert "no darker than civil twilight" in lighter.sentences[0]


def test_polar_night() -> None:
    night = night_of(FAR_NORTH, parse_utc("2026-12-20T22:00Z"))
    assert "polar night" in night.sentences[0]
    assert night.usable_light is Light.NIGHT
    whole = night_of(Site(-89.0, 0.0), parse_utc("2026-06-20T22:00Z"))
    assert whole.usable_spans == ((whole.begin_utc_s, whole.end_utc_s),)
