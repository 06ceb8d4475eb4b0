"""The polar-axis sight: sense of rotation, and the way from sky to clock face and back.

Truth: skyfield's altitudes and azimuths, a traced ray for the air, and a sight built from
right-handed vectors (east, north, up) and turned by Rodrigues' formula; nothing from `core`.
"""

from __future__ import annotations

import math
from functools import cache

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from core.alignment.polarscope.reading import error_from_sighting, expected_in_sight
from core.alignment.polarscope.view import (
    ScopeView,
    UnusableSighting,
    View,
    axis_under,
    clock_angle_of_text,
    clock_text,
    dial_angle_deg,
    scope_view,
)
from core.alignment.words import azimuth_side
from core.sky import catalogues
from core.sky.clocks import parse_utc
from core.sky.pole import elevated_pole, pole_star, pole_star_of
from core.sky.site import Air, Site
from tests.truth.mount import lifted, rotate, star_vectors
from tests.truth.raytrace import RayTrace

UTC_S = parse_utc("2026-11-24T20:00Z")
NO_AIR = Air(0.0)
HOURS = UTC_S + 3600.0 * np.arange(0.0, 24.0, 1.7)


@cache
def traced_lift(site: Site, air: Air):
    return RayTrace.over(site, air).lift_of_true_altitude()


@cache
def seen_vector(site: Site, air: Air, utc_s: float) -> np.ndarray:
    """The pole star's direction, east, north, up, by skyfield and a traced ray."""
    star = pole_star_of(site)
    moved = catalogues.load_stars().at_epoch(star, utc_s)
    place = site.latitude_deg, site.longitude_deg, site.elevation_m
    vector = star_vectors(*moved, *place, np.array([utc_s]))
    if air.pressure_hpa > 0.0:
        vector = lifted(vector, traced_lift(site, air))
    return vector[0]


def axis_vector(site: Site, azimuth_error_deg: float, altitude_error_deg: float) -> np.ndarray:
    """The pole's direction, raised and then swung eastward in the north by turning a vector."""
    south = -1.0 if site.latitude_deg < 0 else 1.0
    level = np.array([0.0, south, 0.0])
    height = np.radians([abs(site.latitude_deg) + altitude_error_deg])
    raised = rotate(level, np.array([south, 0.0, 0.0]), height)[0]
    return rotate(raised, np.array([0.0, 0.0, 1.0]), -np.radians([azimuth_error_deg]))[0]


def place_by_vectors(star: np.ndarray, axis: np.ndarray) -> tuple[float, float]:
    """Clockwise angle from up, degrees, and distance, arcminutes, to an eye behind the axis."""
    right = np.cross(axis, [0.0, 0.0, 1.0])
    right /= np.linalg.norm(right)
    up = np.cross(right, axis)
    angle = np.degrees(np.arctan2(star @ right, star @ up))
    distance = np.degrees(np.arctan2(np.linalg.norm(np.cross(axis, star)), axis @ star))
    return angle % 360.0, 60.0 * distance


def turned_deg(first: float, second: float) -> float:
    return (first - second + 180.0) % 360.0 - 180.0


# Stated: erect, 12 o'clock to the zenith. West is to the left looking north, right looking south.
@pytest.mark.parametrize(
    ("hour_angle_deg", "north", "south"),
    [(0.0, "12:00", "12:00"), (90.0, "9:00", "3:00"), (180.0, "6:00", "6:00"),
     (-90.0, "3:00", "9:00"), (30.0, "11:00", "1:00")],
)  # fmt: skip
def test_sense_of_rotation(hour_angle_deg: float, north: str, south: str) -> None:
    assert clock_text(float(dial_angle_deg(hour_angle_deg, 50.0, View.ERECT))) == north
    assert clock_text(float(dial_angle_deg(hour_angle_deg, -50.0, View.ERECT))) == south


def test_views_of_one_place() -> None:
    """10 o'clock upside down is 4 o'clock, in a mirror 2 o'clock."""
    faces = [clock_text(float(dial_angle_deg(60.0, 50.0, view))) for view in View]
    assert faces == ["10:00", "4:00", "2:00"]


@pytest.mark.parametrize("latitude_deg", [50.0, -50.0, 20.0, -20.0])
@pytest.mark.parametrize("utc_s", HOURS)
def test_dial_follows_azimuth_and_altitude(latitude_deg: float, utc_s: float) -> None:
    """Against the offsets of skyfield's azimuth and altitude from the pole, no air."""
    site = Site(latitude_deg, 11.0)
    angle, distance = place_by_vectors(seen_vector(site, NO_AIR, utc_s), axis_vector(site, 0, 0))
    star = pole_star(site, NO_AIR, utc_s)
    ours = float(dial_angle_deg(star.hour_angle_deg, latitude_deg, View.ERECT))
    assert abs(turned_deg(ours, angle)) < 0.01  # diurnal aberration: 0.3″ of 37′
    assert distance == pytest.approx(star.polar_distance_arcmin, abs=0.006)
    exact = expected_in_sight(site, NO_AIR, utc_s, View.ERECT, refracted=False)
    assert abs(turned_deg(float(exact.clock_angle_deg), angle)) < 1e-3
    assert exact.distance_arcmin == pytest.approx(distance, abs=1e-3)


@pytest.mark.parametrize("latitude_deg", [60.0, -60.0, 47.0, -33.0, 18.0, 85.0, -85.0, 89.0])
@pytest.mark.parametrize(
    ("azimuth_error_deg", "altitude_error_deg"), [(0.0, 0.0), (0.4, -0.3), (-1.5, 1.0), (0.2, 0.5)]
)
@pytest.mark.parametrize("view", View)
def test_sighting_gives_the_axis_error_back(
    latitude_deg: float, azimuth_error_deg: float, altitude_error_deg: float, view: View
) -> None:
    """Round trip through an independent sight, with refraction of a traced ray."""
    site, air = Site(latitude_deg, -20.0, 300.0), Air(978.0, 8.0)
    azimuth_error_deg /= np.cos(np.radians(latitude_deg))
    for utc_s in HOURS[::3]:
        axis = axis_vector(site, azimuth_error_deg, altitude_error_deg)
        if axis[2] > 0.999999 or axis[1] * latitude_deg < 0:
            continue  # the axis would point beyond the zenith
        erect, distance = place_by_vectors(seen_vector(site, air, utc_s), axis)
        shown = {View.ERECT: erect, View.INVERTED: erect + 180.0, View.MIRRORED: -erect}[view]
        place = ScopeView(np.asarray(shown), np.asarray(distance))
        found = error_from_sighting(place, view, site, air, utc_s)
        on_sky = np.cos(np.radians(latitude_deg))
        missed = turned_deg(found.azimuth_error_arcmin / 60.0, azimuth_error_deg) * 60.0
        assert missed * on_sky == pytest.approx(0.0, abs=0.005)
        assert found.altitude_error_arcmin == pytest.approx(60 * altitude_error_deg, abs=0.005)
        pole = elevated_pole(site, air)
        lift = found.altitude_error_arcmin - found.altitude_error_refracted_arcmin
        assert lift * 60.0 == pytest.approx(pole.refraction_arcsec, abs=1e-6)


@pytest.mark.parametrize("latitude_deg", [5.0, -5.0, 0.0])
def test_sighting_on_the_horizon_without_air(latitude_deg: float) -> None:
    site = Site(latitude_deg, 100.0)
    for utc_s in HOURS:
        axis = axis_vector(site, 0.7, 1.2)
        erect, distance = place_by_vectors(seen_vector(site, NO_AIR, utc_s), axis)
        place = ScopeView(np.asarray(erect), np.asarray(distance))
        found = error_from_sighting(place, View.ERECT, site, NO_AIR, utc_s)
        assert found.azimuth_error_arcmin == pytest.approx(42.0, abs=0.005)
        assert found.altitude_error_arcmin == pytest.approx(72.0, abs=0.005)
        on_sky = np.degrees(np.arccos(axis @ axis_vector(site, 0.0, 0.0))) * 60.0
        assert found.sky_error_arcmin == pytest.approx(on_sky, abs=0.005)


@pytest.mark.parametrize("site", [Site(47.0, 11.0, 500.0), Site(-33.0, 18.0)])
@pytest.mark.parametrize("refracted", [True, False])
def test_star_at_its_place_means_no_error(site: Site, refracted: bool) -> None:
    air = Air(960.0)
    for utc_s in HOURS:
        place = expected_in_sight(site, air, utc_s, View.INVERTED, refracted)
        found = error_from_sighting(place, View.INVERTED, site, air, utc_s)
        altitude = (
            found.altitude_error_refracted_arcmin if refracted else found.altitude_error_arcmin
        )
        assert found.azimuth_error_arcmin == pytest.approx(0.0, abs=1e-6)
        assert altitude == pytest.approx(0.0, abs=1e-6)


@given(
    azimuth=st.floats(-40.0, 40.0), altitude=st.floats(-5.0, 88.0), view=st.sampled_from(View),
    axis_azimuth=st.floats(-40.0, 40.0), axis_altitude=st.floats(-5.0, 88.0),
)  # fmt: skip
def test_axis_under_undoes_in_sight(
    azimuth: float, altitude: float, view: View, axis_azimuth: float, axis_altitude: float
) -> None:
    """Near the zenith two axes may fit; what is given back shows the star in the same place."""
    place = scope_view(azimuth, altitude, axis_azimuth, axis_altitude, view)
    assume(float(place.distance_arcmin) > 1e-3)
    found = axis_under(azimuth, altitude, place, view, 0.0)
    again = scope_view(azimuth, altitude, *found, view)
    assert float(again.distance_arcmin) == pytest.approx(float(place.distance_arcmin), abs=1e-4)
    apart = np.radians(turned_deg(float(again.clock_angle_deg), float(place.clock_angle_deg)))
    assert abs(apart) * float(place.distance_arcmin) < 1e-3


def test_many_stars_at_once() -> None:
    place = scope_view(
        np.array([0.0, 1.0, 359.0]), np.array([51.0, 50.0, 50.0]), 0.0, 50.0, View.ERECT
    )
    assert place.clock_angle_deg == pytest.approx([0.0, 89.6, 270.4], abs=0.1)
    assert place.distance_arcmin == pytest.approx([60.0, 38.57, 38.57], abs=0.01)


def test_the_error_is_east_where_azimuth_is_greater_and_south_the_other_way() -> None:
    """South: greater azimuth is west."""
    for site, side in ((Site(47, 11), "east of the pole"), (Site(-33, 18), "west of the pole")):
        erect, distance = place_by_vectors(
            seen_vector(site, NO_AIR, UTC_S), axis_vector(site, 0.5, -0.25)
        )
        place = ScopeView(np.asarray(erect), np.asarray(distance))
        found = error_from_sighting(place, View.ERECT, site, NO_AIR, UTC_S)
        assert found.azimuth_error_arcmin == pytest.approx(30.0, abs=0.05)
        assert found.altitude_error_arcmin == pytest.approx(-15.0, abs=0.05)
        latitude_rad = math.radians(site.latitude_deg)
        assert azimuth_side(found.azimuth_error_arcmin, latitude_rad).where == side


@pytest.mark.parametrize(
    ("latitude_deg", "words"), [(86.0, "almost upright"), (-3.0, "on the horizon")]
)
def test_limits_are_said(latitude_deg: float, words: str) -> None:
    site = Site(latitude_deg, 0.0)
    place = expected_in_sight(site, NO_AIR, UTC_S, View.ERECT, refracted=False)
    (limit,) = error_from_sighting(place, View.ERECT, site, NO_AIR, UTC_S).limits
    assert words in str(limit)


def test_impossible_sightings_are_refused_in_a_sentence() -> None:
    far = ScopeView(np.asarray(90.0), np.asarray(3000.0))
    with pytest.raises(UnusableSighting, match=r"No axis shows the star"):
        axis_under(0.0, 89.0, far, View.ERECT, 0.0)
    near = ScopeView(np.asarray(90.0), np.asarray(30.0))
    with pytest.raises(UnusableSighting, match="has no azimuth"):
        error_from_sighting(near, View.ERECT, Site(90.0, 0.0), NO_AIR, UTC_S)
    nothing = ScopeView(np.asarray(np.nan), np.asarray(30.0))
    with pytest.raises(UnusableSighting):
        error_from_sighting(nothing, View.ERECT, Site(47.0, 0.0), NO_AIR, UTC_S)


@pytest.mark.parametrize(
    ("text", "angle_deg"),
    [("10:20", 310.0), (" 3.05 ", 92.5), ("12", 0.0), ("12:30", 15.0), ("0:30", 15.0), ("6", 180)],
)
def test_clock_faces_are_read(text: str, angle_deg: float) -> None:
    assert clock_angle_of_text(text) == angle_deg
    assert clock_angle_of_text(clock_text(angle_deg)) == angle_deg


@pytest.mark.parametrize("text", ["", "13:00", "10:60", "ten", "-3", "3:1:1", "٣x"])
def test_other_texts_are_refused_in_a_sentence(text: str) -> None:
    with pytest.raises(UnusableSighting, match="no place on a clock face"):
        clock_angle_of_text(text)
