"""The pole star's turns by skyfield's path of the star, and the field around the pole."""

from __future__ import annotations

import numpy as np
import pytest

from core.sky import catalogues, places
from core.sky.clocks import parse_utc
from core.sky.pole import (
    NORTH_HIP,
    SOUTH_HIP,
    PoleStarTurns,
    elevated_pole,
    pole_field,
    pole_star,
    pole_star_of,
    pole_star_turns,
)
from core.sky.site import Air, Site
from tests.truth.mount import star_vectors

UTC_S = parse_utc("2026-11-24T20:00Z")
NO_AIR = Air(0.0)
DAY_S = 86164.1


def path(site: Site, utc_s: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Azimuth from the pole's, and altitude, degrees, by skyfield."""
    moved = catalogues.load_stars().at_epoch(pole_star_of(site), UTC_S)
    east, north, up = star_vectors(*moved, site.latitude_deg, site.longitude_deg, 0.0, utc_s).T
    south = -1.0 if site.latitude_deg < 0 else 1.0
    azimuth = np.degrees(np.arctan2(south * east, south * north))
    return azimuth, np.degrees(np.arcsin(up))


def vertex_s(times: np.ndarray, values: np.ndarray) -> float:
    """Where the smooth curve through the values turns, near the middle."""
    middle = times[times.size // 2]
    slope = np.polyder(np.polyfit((times - middle) / 900.0, values, 4))
    roots = np.roots(slope)
    return float(middle + 900.0 * roots[np.argmin(np.abs(roots))].real)


SITES = [Site(48.0, 11.0), Site(-34.0, 151.0), Site(5.0, -75.0), Site(-5.0, 30.0), Site(85.0, 0.0),
         Site(-85.0, 100.0), Site(0.0, 0.0)]  # fmt: skip


@pytest.mark.parametrize("site", SITES, ids=lambda site: f"{site.latitude_deg:g}")
def test_turns_as_skyfield_sees_them(site: Site) -> None:
    turns = pole_star_turns(site, UTC_S)
    around_s = np.arange(-900.0, 901.0, 150.0)
    for time_s, is_upper in (
        (turns.upper_culmination_utc_s, True), (turns.lower_culmination_utc_s, False),
    ):  # fmt: skip
        azimuth, altitude = path(site, time_s + around_s)
        crossing_s = np.interp(0.0, azimuth * np.sign(azimuth[-1]), time_s + around_s)
        assert time_s == pytest.approx(crossing_s, abs=3.0)  # diurnal aberration: 0.3″ of 37′
        assert bool(altitude[6] > abs(site.latitude_deg)) is is_upper
    for time_s, side in (
        (turns.eastern_elongation_utc_s, 1.0), (turns.western_elongation_utc_s, -1.0),
    ):  # fmt: skip
        assert time_s is not None
        azimuth, _ = path(site, time_s + around_s)
        eastward = azimuth * (1.0 if site.latitude_deg >= 0 else -1.0)
        assert side * eastward[6] > 0.5
        assert vertex_s(time_s + around_s, azimuth) == pytest.approx(time_s, abs=3.0)
        assert abs(azimuth[6]) == pytest.approx(turns.widest_deg, abs=2e-3)


@pytest.mark.parametrize("site", SITES, ids=lambda site: f"{site.latitude_deg:g}")
@pytest.mark.parametrize("later_s", [0.0, 20000.0, 43000.0, 86000.0])
def test_turns_are_the_next_ones(site: Site, later_s: float) -> None:
    now_s = UTC_S + later_s
    turns = pole_star_turns(site, now_s)
    for time_s in (turns.upper_culmination_utc_s, turns.lower_culmination_utc_s,
                   turns.eastern_elongation_utc_s, turns.western_elongation_utc_s):  # fmt: skip
        assert time_s is not None
        assert -1e-3 <= time_s - now_s <= DAY_S + 10.0


@pytest.mark.parametrize("latitude_deg", [90.0, -90.0, 89.9, -89.5])
def test_close_to_the_earths_poles_there_are_no_elongations(latitude_deg: float) -> None:
    turns = pole_star_turns(Site(latitude_deg, 0.0), UTC_S)
    assert turns == PoleStarTurns(
        turns.upper_culmination_utc_s, turns.lower_culmination_utc_s, None, None, None
    )
    assert np.isfinite(turns.upper_culmination_utc_s)


@pytest.mark.parametrize(
    ("latitude_deg", "azimuth_deg", "hip"),
    [(48.0, 0.0, NORTH_HIP), (0.0, 0.0, NORTH_HIP), (-0.01, 180.0, SOUTH_HIP),
     (90.0, 0.0, NORTH_HIP), (-90.0, 180.0, SOUTH_HIP)],
)  # fmt: skip
def test_which_pole_and_star(latitude_deg: float, azimuth_deg: float, hip: int) -> None:
    site = Site(latitude_deg, 0.0)
    pole = elevated_pole(site, Air(1000.0))
    assert pole.azimuth_deg == azimuth_deg
    assert pole.true_altitude_deg == abs(latitude_deg)
    assert pole_star_of(site).hip == hip


def test_air_lifts_the_pole_nowhere_at_the_zenith_and_most_on_the_horizon() -> None:
    air = Air(1013.25)
    lifts = [elevated_pole(Site(lat, 0.0), air).refraction_arcsec for lat in (90, 85, 45, 5, 0)]
    assert lifts[0] == pytest.approx(0.0, abs=1e-6)
    assert lifts == sorted(lifts)
    assert 1500.0 < lifts[-1] < 2000.0
    assert elevated_pole(Site(45.0, 0.0), NO_AIR).refraction_arcsec == 0.0


def test_hour_angle_is_that_of_the_drift() -> None:
    """The same star, time and site by the path that the drift legs take."""
    site = Site(48.0, 11.0)
    star = pole_star(site, NO_AIR, UTC_S)
    moved = catalogues.load_stars().at_epoch(star.star, UTC_S)
    hour_angle, _ = places.hour_angle_and_declination(*moved, site, UTC_S)
    assert star.hour_angle_deg == pytest.approx(float(np.degrees(hour_angle)), abs=1e-9)


@pytest.mark.parametrize(("latitude_deg", "hip"), [(48.0, NORTH_HIP), (-34.0, SOUTH_HIP)])
def test_field_around_the_pole(latitude_deg: float, hip: int) -> None:
    site, air = Site(latitude_deg, 11.0), Air(950.0)
    field, star = pole_field(site, air, UTC_S), pole_star(site, air, UTC_S)
    index = [one.hip for one in field.stars].index(hip)
    assert field.polar_distance_arcmin[index] == pytest.approx(
        star.polar_distance_arcmin, abs=0.006
    )
    assert field.hour_angle_deg[index] == pytest.approx(star.hour_angle_deg, abs=0.01)
    assert field.azimuth_deg[index] == pytest.approx(star.azimuth_deg, abs=1e-9)
    assert field.altitude_deg[index] == pytest.approx(star.altitude_deg, abs=1e-9)
    assert len(field.stars) >= 10
    assert field.polar_distance_arcmin.max() <= 180.0
    assert np.all(np.diff(field.magnitude) >= 0.0)
    assert np.all(np.sign([one.dec_deg for one in field.stars]) == np.sign(latitude_deg))


def test_a_narrower_field_has_the_nearer_stars() -> None:
    wide = pole_field(Site(-34.0, 18.0), NO_AIR, UTC_S)
    narrow = pole_field(Site(-34.0, 18.0), NO_AIR, UTC_S, within_deg=1.5)
    near = wide.polar_distance_arcmin <= 90.0
    assert 0 < len(narrow.stars) == near.sum() < len(wide.stars)
