"""The coming midnight of the practice night."""

import pytest

from core.practice.simulation import NORTHERN_MEADOW, SOUTHERN_MEADOW, coming_midnight_utc_s

HOUR_S = 3600.0
NOON_UTC_S = 1_795_521_600.0  # 2026-11-24T12:00:00 UTC


@pytest.mark.parametrize(
    ("longitude_deg", "hours_after_noon"),
    [(0.0, 12.0), (15.0, 11.0), (-20.0, 12.0 + 20.0 / 15.0), (179.9, 0.1 / 15.0), (-180.0, 24.0)],
)
def test_midnight_by_longitude(longitude_deg: float, hours_after_noon: float) -> None:
    midnight = coming_midnight_utc_s(NOON_UTC_S, longitude_deg)
    assert midnight - NOON_UTC_S == pytest.approx(hours_after_noon * HOUR_S, abs=1.0)


def test_one_second_later_the_next_midnight_comes() -> None:
    midnight = coming_midnight_utc_s(NOON_UTC_S, 0.0)
    assert coming_midnight_utc_s(midnight - 1.0, 0.0) == midnight
    assert coming_midnight_utc_s(midnight, 0.0) == midnight + 24 * HOUR_S


def test_meadows_say_that_they_are_invented() -> None:
    assert NORTHERN_MEADOW.latitude_deg > 0.0 > SOUTHERN_MEADOW.latitude_deg
    assert all("invented" in site.name for site in (NORTHERN_MEADOW, SOUTHERN_MEADOW))
