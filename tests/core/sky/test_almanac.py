"""Plain results where the Sun or Moon stays up or down, and words for the sky by day."""

from __future__ import annotations

import numpy as np
import pytest

from core.sky import compass
from core.sky.almanac import Light, light_at, light_course, losses, visits
from core.sky.bodies import Body, BodyNow, bodies_now, body_now
from core.sky.clocks import parse_utc
from core.sky.compass import (
    NoShadow,
    marks,
    noon_shadow,
)
from core.sky.site import Air, Site
from core.sky.words import direction_words, shadow_words, sun_check, where_words

JUNE, DECEMBER = parse_utc("2026-06-21T00Z"), parse_utc("2026-12-21T00Z")
AIR = Air(1000.0)


@pytest.mark.parametrize("latitude_deg", [90.0, 85.0, 70.0])
def test_polar_day_and_night_are_plain_results(latitude_deg: float) -> None:
    for site, bright, dark in (
        (Site(latitude_deg, 20.0), JUNE, DECEMBER), (Site(-latitude_deg, 20.0), DECEMBER, JUNE),
    ):  # fmt: skip
        day, night = visits(Body.SUN, site, bright), visits(Body.SUN, site, dark)
        assert (day.stays_up, day.stays_down) == (True, False)
        assert (night.stays_up, night.stays_down) == (False, True)
        assert len(day.transits) == len(night.transits) == 1
        assert light_course(site, bright).changes == ()
        assert light_course(site, bright).at_start is Light.DAY
        assert light_course(site, dark).darkest is not Light.DAY


def test_white_nights_get_no_darker_than_civil_twilight() -> None:
    course = light_course(Site(62.0, 30.0), JUNE + 43200.0)
    assert course.darkest is Light.CIVIL
    assert [change.light for change in course.changes] == [Light.CIVIL, Light.DAY]


def test_night_is_all_five_lights_twice() -> None:
    course = light_course(Site(40.0, 0.0), DECEMBER + 43200.0)
    down, up = course.changes[:4], course.changes[4:]
    assert [change.light for change in down] == list(Light)[1:]
    assert [change.light for change in up] == list(Light)[3::-1]
    times = [change.utc_s for change in course.changes]
    assert times == sorted(times)


def test_moon_stays_up_for_days_at_the_pole() -> None:
    days = [visits(Body.MOON, Site(90.0, 0.0), JUNE + day * 86400.0) for day in range(0, 28, 2)]
    assert {(day.stays_up, day.stays_down) for day in days} >= {(True, False), (False, True)}


@pytest.mark.parametrize(
    ("altitude_deg", "light"),
    [(10.0, Light.DAY), (-0.83, Light.DAY), (-0.84, Light.CIVIL), (-6.1, Light.NAUTICAL),
     (-12.1, Light.ASTRONOMICAL), (-18.1, Light.NIGHT), (-90.0, Light.NIGHT)],
)  # fmt: skip
def test_light_by_height(altitude_deg: float, light: Light) -> None:
    assert light_at(altitude_deg) is light


def test_sixteen_winds() -> None:
    assert direction_words(250.0) == "west-south-west"
    assert direction_words(359.0) == direction_words(0.0) == "north"
    assert direction_words(11.3) == "north-north-east"
    assert len({direction_words(22.5 * wind) for wind in range(16)}) == 16


@pytest.mark.parametrize(
    ("body", "azimuth_deg", "altitude_deg", "sentence"),
    [
        (Body.SUN, 247.0, 12.2, "The Sun should now be 12° above the west-south-west horizon."),
        (Body.MOON, 90.0, 84.0, "The Moon should now be almost overhead, 84° high in the east."),
        (Body.VENUS, 270.0, 0.2, "Venus should now be on the west horizon."),
        (Body.SUN, 0.0, -8.0,
         "The Sun should now be 8° below the north horizon: it should be nautical twilight."),
        (Body.SUN, 0.0, -40.0,
         "The Sun should now be 40° below the north horizon: it should be night."),
        (Body.MOON, 10.0, -40.0, "The Moon should now be 40° below the north horizon."),
    ],
)  # fmt: skip
def test_where_a_body_should_be(
    body: Body, azimuth_deg: float, altitude_deg: float, sentence: str
) -> None:
    now = BodyNow(body, azimuth_deg, altitude_deg, altitude_deg, 0.0)
    assert where_words(now) == sentence


def test_the_check_of_the_clock_warns_of_the_sun_while_it_is_up() -> None:
    noon, midnight = JUNE + 43200.0, JUNE
    site = Site(45.0, 0.0)
    assert "above the south horizon" in sun_check(site, AIR, noon)
    assert sun_check(site, AIR, noon).endswith("never look at the Sun.")
    assert "never look" not in sun_check(site, AIR, midnight)
    assert "longitude is wrong" in sun_check(site, AIR, midnight)


@pytest.mark.parametrize(
    ("latitude_deg", "when_s", "towards"),
    [
        (50.0, JUNE, "north"),
        (-35.0, JUNE, "south"),
        (10.0, JUNE, "south"),
        (10.0, DECEMBER, "north"),
    ],
)
def test_noon_shadow_lies_along_the_meridian(
    latitude_deg: float, when_s: float, towards: str
) -> None:
    site = Site(latitude_deg, 25.0)
    shadow = noon_shadow(site, AIR, when_s)
    assert shadow.towards == towards
    before, after = (body_now(Body.SUN, site, AIR, shadow.utc_s + step) for step in (-60.0, 60.0))
    pole = 180.0 if towards == "north" else 0.0
    turned = [(sun.azimuth_deg - pole + 180.0) % 360.0 - 180.0 for sun in (before, after)]
    assert turned[0] * turned[1] < 0.0
    assert abs(turned[1] - turned[0]) / 2.0 == pytest.approx(shadow.turns_deg_per_min, rel=0.01)
    height = np.tan(np.radians(shadow.sun_altitude_deg))
    assert shadow.length_per_height == pytest.approx(1.0 / height)
    assert f"true {towards}" in shadow_words(shadow)


@pytest.mark.parametrize(
    ("latitude_deg", "when_s", "words"),
    [(80.0, DECEMBER, "below the horizon"), (64.5, DECEMBER, "has no end"),
     (23.4, JUNE, "almost overhead")],
)  # fmt: skip
def test_no_shadow_is_said_with_its_reason(latitude_deg: float, when_s: float, words: str) -> None:
    with pytest.raises(NoShadow, match=words):
        noon_shadow(Site(latitude_deg, 0.0), AIR, when_s)


def test_marks_are_never_the_sun_nor_near_it_by_day() -> None:
    site = Site(20.0, 0.0)
    dropped = 0
    for day in range(0, 365, 9):
        noon = JUNE + day * 86400.0 + 43200.0
        sun, *others = bodies_now(site, AIR, noon)
        offered = marks(site, AIR, noon)
        assert sun.altitude_deg > 20.0
        assert all(mark.body is not Body.SUN for mark in offered)
        assert all(compass.apart_deg(mark, sun) >= compass.SAFE_FROM_SUN_DEG for mark in offered)
        heights = [mark.altitude_deg for mark in offered]
        assert heights == sorted(heights, reverse=True)
        dropped += sum(other.altitude_deg > 10.0 for other in others) - len(offered)
    assert dropped > 0


def test_marks_by_night_are_whatever_is_up() -> None:
    site, midnight = Site(20.0, 0.0), DECEMBER
    up = [now for now in bodies_now(site, AIR, midnight) if now.altitude_deg >= 10.0]
    assert {mark.body for mark in marks(site, AIR, midnight)} == {now.body for now in up}


@pytest.mark.parametrize(("year", "count"), [(1995, 0), (2026, 0), (2040, 1), (2060, 2)])
def test_losses_are_said(year: int, count: int) -> None:
    said = losses(parse_utc(f"{year}-01-01T00Z"))
    assert len(said) == count
    assert all(str(one).endswith(".") for one in said)


@pytest.mark.parametrize("year", [1880, 1990, 2030, 2045, 2060, 2150])
def test_any_year_has_its_day_without_a_warning(year: int) -> None:
    day = visits(Body.SUN, Site(45.0, 0.0), parse_utc(f"{year}-03-21T00Z"))
    assert len(day.rises) == len(day.transits) == len(day.sets) == 1
    assert day.rises[0].azimuth_deg == pytest.approx(90.0, abs=2.0)


def test_a_leap_second_falls_between_two_places_of_the_moon() -> None:
    """Unix time steps by one second where two go by."""
    midnight = parse_utc("2017-01-01T00Z")
    before, after = (body_now(Body.SUN, Site(0, 0), AIR, midnight - step) for step in (1.0, 0.0))
    turned_s = (after.hour_angle_deg - before.hour_angle_deg) % 360.0 * 240.0
    assert turned_s == pytest.approx(2.0, abs=0.002)


def test_unreadable_table_of_bodies_is_said_in_a_sentence(tmp_path, monkeypatch) -> None:
    import skyfield_data

    from core.sky import bodies

    monkeypatch.setattr(skyfield_data, "__file__", str(tmp_path / "__init__.py"))
    bodies._kernel.cache_clear()
    try:
        with pytest.raises(RuntimeError, match=r"de421\.bsp cannot be read .* Install Poleward"):
            body_now(Body.SUN, Site(0, 0), AIR, JUNE)
    finally:
        bodies._kernel.cache_clear()
