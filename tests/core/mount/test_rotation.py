"""Field rotation by properties that need no formula: signs, continuity, symmetry, special sites."""

from __future__ import annotations

import numpy as np
import pytest

from core.imaging.rotation import (
    NO_AIR,
    FieldTurning,
    field_angle_deg,
    rate_deg_per_hour,
    track,
    turning,
)
from core.sky.site import Air, Site
from core.units import SIDEREAL_DEG_PER_HOUR

NIGHT = 1.795e9 + np.arange(0.0, 86400.0 * 1.2, 120.0)
LATITUDES = (0.0, 20.0, 48.0, 89.0, -0.5, -33.0, -89.0)
DECLINATIONS = (-70.0, -20.0, 0.0, 30.0, 80.0)


def quantities(rates: FieldTurning) -> list[np.ndarray]:
    return [
        rates.parallactic_angle_deg,
        rates.rate_deg_per_hour,
        rates.azimuth_rate_deg_per_hour,
        rates.altitude_rate_deg_per_hour,
    ]


def test_signs_at_a_northern_site() -> None:
    """South: the angle passes from east (−) to west (+). East: rising, no rotation at azimuth 90°.
    North, above the pole: the other way round."""
    south, east, west, north = (turning(48.0, azimuth, 50.0) for azimuth in (180, 90, 270, 0))
    assert south.rate_deg_per_hour > 0.0 > north.rate_deg_per_hour
    assert east.rate_deg_per_hour == pytest.approx(0.0, abs=1e-9)
    assert east.parallactic_angle_deg < 0.0 < west.parallactic_angle_deg
    assert east.altitude_rate_deg_per_hour > 0.0 > west.altitude_rate_deg_per_hour
    assert south.azimuth_rate_deg_per_hour > 0.0 > north.azimuth_rate_deg_per_hour


def test_mirrored_site() -> None:
    """The sky of latitude −φ is that of φ in a mirror between north and south."""
    northern, southern = turning(35.0, 150.0, 40.0), turning(-35.0, 30.0, 40.0)
    assert southern.rate_deg_per_hour == pytest.approx(-northern.rate_deg_per_hour)
    assert southern.azimuth_rate_deg_per_hour == pytest.approx(-northern.azimuth_rate_deg_per_hour)
    assert southern.altitude_rate_deg_per_hour == pytest.approx(northern.altitude_rate_deg_per_hour)
    both = southern.parallactic_angle_deg + northern.parallactic_angle_deg
    assert both % 360.0 == pytest.approx(180.0)


def test_at_the_pole_only_the_azimuth_runs() -> None:
    rates = turning(90.0, [10.0, 200.0], 40.0)
    assert rates.rate_deg_per_hour == pytest.approx(0.0, abs=1e-9)
    assert rates.altitude_rate_deg_per_hour == pytest.approx(0.0, abs=1e-9)
    assert rates.azimuth_rate_deg_per_hour == pytest.approx(SIDEREAL_DEG_PER_HOUR)


def test_map_equals_single_places() -> None:
    azimuth, altitude = np.linspace(0.0, 350.0, 8), np.linspace(5.0, 89.0, 6)
    whole = quantities(turning(48.0, azimuth[np.newaxis, :], altitude[:, np.newaxis], Air(960.0)))
    for row, high in enumerate(altitude):
        for column, aside in enumerate(azimuth):
            one = quantities(turning(48.0, aside, high, Air(960.0)))
            assert [cells[row, column] for cells in whole] == pytest.approx(one)


def test_many_places_in_no_order_are_worked_out_like_each_alone() -> None:
    random = np.random.default_rng(5)
    azimuth = random.uniform(0.0, 360.0, (2, 40_001))
    altitude = random.uniform(-5.0, 90.0, azimuth.shape)
    many = quantities(turning(-34.0, azimuth, altitude, Air(960.0)))
    for place in [(0, 0), (0, 32_767), (0, 32_768), (1, 25_534), (1, 25_535), (1, 40_000)]:
        one = quantities(turning(-34.0, azimuth[place], altitude[place], Air(960.0)))
        assert [cells[place] for cells in many] == pytest.approx(one)


def test_zenith_is_finite_and_the_rate_alone_agrees() -> None:
    assert np.isfinite(rate_deg_per_hour(48.0, 180.0, 90.0))
    both = turning(48.0, 130.0, 33.0, Air(1000.0)).rate_deg_per_hour
    assert rate_deg_per_hour(48.0, 130.0, 33.0, Air(1000.0)) == pytest.approx(both)


@pytest.mark.parametrize("latitude_deg", LATITUDES)
@pytest.mark.parametrize("declination_deg", DECLINATIONS)
def test_field_angle_is_continuous_and_its_slope_is_the_rate(
    latitude_deg: float, declination_deg: float
) -> None:
    followed = track(123.0, declination_deg, Site(latitude_deg, 11.0), NO_AIR, NIGHT)
    assert np.max(np.abs(np.diff(followed.field_angle_deg))) < 181.0  # half a turn at the zenith
    slope = np.gradient(followed.field_angle_deg, NIGHT)[1:-1] * 3600.0
    slow = (np.abs(followed.altitude_deg) < 70.0)[1:-1]  # the nadir is as quick as the zenith
    expected = followed.rate_deg_per_hour[1:-1][slow]
    assert slope[slow] == pytest.approx(expected, abs=0.02, rel=1e-2)


def test_rotation_between_two_moments_does_not_depend_on_the_steps() -> None:
    fine = track(123.0, 40.0, Site(48.0, 11.0), Air(960.0), NIGHT)
    coarse = track(123.0, 40.0, Site(48.0, 11.0), Air(960.0), NIGHT[[0, -1]])
    begin, end = NIGHT[100], NIGHT[500]
    assert coarse.rotation_deg(begin, end) == pytest.approx(fine.rotation_deg(begin, end), abs=1e-3)


def test_star_through_the_zenith_turns_by_half_a_turn_at_once() -> None:
    before, after = field_angle_deg([-0.001, 0.001], 30.0, 30.0)
    assert abs(after - before) == pytest.approx(180.0, abs=0.01)


def test_a_star_round_the_pole_turns_its_field_once_a_day() -> None:
    hours = np.arange(-400.0, 800.0, 1.0)
    for declination, way in ((70.0, -360.0), (-70.0, 360.0)):
        angle = field_angle_deg(hours, declination, 48.0)
        assert angle[360:] - angle[:-360] == pytest.approx(way)
        assert np.max(np.abs(np.diff(angle))) < 4.0


def test_times_must_rise() -> None:
    with pytest.raises(ValueError, match="rising order"):
        track(0.0, 0.0, Site(48.0, 11.0), NO_AIR, [2.0, 1.0])
