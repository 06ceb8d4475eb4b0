"""What follows from field rotation: exposures, crops, the blind zone, derotators, wedges."""

from __future__ import annotations

import numpy as np
import pytest

from core.imaging.rotation import NO_AIR, RotationTrack, field_angle_deg, rate_deg_per_hour, track
from core.imaging.rotationdrive import (
    Derotator,
    blind_outline_deg,
    blind_zone,
    derotation,
    losses,
    platform_rate_deg_per_hour,
    wedge_rate_deg_per_hour,
)
from core.imaging.rotationexposure import (
    LONGEST_S,
    Frame,
    allowed_rotation_deg,
    common_field,
    exposure_count,
    longest_map_s,
    longest_s,
    smear_px,
    stacked_field,
)
from core.sky.site import Air, Site
from core.units import SIDEREAL_DEG_PER_HOUR
from tests.truth.mount import rotate

FRAME = Frame(4000.0, 3000.0)
START_S = 1.795e9
SITE = Site(48.0, 11.0, 500.0)


def night(
    dec_deg: float, site: Site = SITE, hours: float = 24.0, step_s: float = 60.0
) -> RotationTrack:
    return track(100.0, dec_deg, site, NO_AIR, START_S + np.arange(0.0, hours * 3600.0, step_s))


def test_smear_is_the_chord_at_the_corner() -> None:
    assert FRAME.corner_px == 2500.0
    assert smear_px(FRAME, -0.01) == pytest.approx(2500.0 * np.radians(0.01), rel=1e-6)
    assert smear_px(FRAME, 180.0) == pytest.approx(5000.0)
    assert smear_px(FRAME, allowed_rotation_deg(FRAME, 0.5)) == pytest.approx(0.5)


@pytest.mark.parametrize("latitude_deg", [48.0, -33.0, 0.0, 89.0, -89.0])
def test_longest_exposure_by_brute_force(latitude_deg: float) -> None:
    """Star trails drawn second by second: the longest that stays within the smear."""
    allowed_px, site = 2.0, Site(latitude_deg, 11.0)
    followed = night(20.0, site, step_s=3600.0)
    found = longest_s(followed, allowed_rotation_deg(FRAME, allowed_px))
    seconds = np.arange(0.0, LONGEST_S, 1.0)
    for at in range(0, 24, 5):
        hours = followed.hour_angle_deg[at] + seconds / 3600.0 * SIDEREAL_DEG_PER_HOUR
        angle = field_angle_deg(hours, followed.declination_deg, latitude_deg)
        span = np.maximum.accumulate(angle) - np.minimum.accumulate(angle)
        expected = seconds[smear_px(FRAME, span) <= allowed_px][-1]
        assert expected <= found[at] + 1e-6 <= expected + 1.001


def test_map_of_exposures_agrees_with_the_exact_track() -> None:
    allowed = allowed_rotation_deg(FRAME, 0.5)
    for dec_deg in (-20.0, 20.0, 70.0):
        followed = night(dec_deg)
        mapped = longest_map_s(48.0, followed.azimuth_deg, followed.altitude_deg, allowed)
        ratio = mapped / longest_s(followed, allowed)
        assert np.percentile(np.abs(ratio - 1.0), 99.5) < 0.03
        assert np.max(mapped) < 1200.0  # also where the rate passes through zero


def test_number_of_exposures() -> None:
    assert exposure_count(3600.0, 30.0) == 120
    assert exposure_count(3601.0, 30.0) == 121
    with pytest.raises(ValueError, match="longer than nothing"):
        exposure_count(10.0, 0.0)


def test_crop_of_one_frame_is_the_frame() -> None:
    field = common_field(FRAME, [12.0])
    assert field.common_percent == pytest.approx(100.0)
    assert field.crop_percent == pytest.approx(100.0)


def test_crop_of_two_frames_across_each_other() -> None:
    """A square of 3000 px is common to both; the largest 4:3 crop askew by 45° follows from it."""
    field = common_field(FRAME, [0.0, 90.0])
    assert field.common_percent == pytest.approx(75.0)
    assert np.max(np.abs(field.common_outline_px)) == pytest.approx(1500.0)
    half_diagonal_reach = (2000.0 + 1500.0) / np.sqrt(2.0)
    assert field.crop_percent == pytest.approx(100.0 * (1500.0 / half_diagonal_reach) ** 2)


@pytest.mark.parametrize("rotation_deg", [7.0, -35.0, 80.0, 200.0])
def test_common_field_by_counting_points(rotation_deg: float) -> None:
    angles = np.linspace(0.0, rotation_deg, 60)
    field = common_field(FRAME, 33.0 + angles)
    points = np.random.default_rng(3).uniform([-2000.0, -1500.0], [2000.0, 1500.0], (100_000, 2))
    inside = np.ones(len(points), dtype=bool)
    for angle in np.radians(angles):
        x = points @ [np.cos(angle), np.sin(angle)]
        y = points @ [-np.sin(angle), np.cos(angle)]
        inside &= (np.abs(x) <= 2000.0) & (np.abs(y) <= 1500.0)
    assert field.common_percent == pytest.approx(100.0 * np.mean(inside), abs=0.6)
    for angle in np.radians(angles):
        back = np.array([[np.cos(angle), np.sin(angle)], [-np.sin(angle), np.cos(angle)]])
        for outline in (field.common_outline_px, field.crop_outline_px):
            assert np.all(np.abs(outline @ back.T) <= np.array([2000.0, 1500.0]) + 1e-6)


def test_field_of_a_stack_of_exposures() -> None:
    followed = night(20.0)
    begins = START_S + 300.0 * np.arange(12)
    exposures = np.stack([begins, begins + 240.0], axis=-1)
    field = stacked_field(FRAME, followed, exposures)
    turned = abs(followed.rotation_deg(begins[0], begins[-1] + 240.0))
    assert field.rotation_deg == pytest.approx(turned, abs=0.01)
    assert field.crop_percent < field.common_percent < 100.0


def test_blind_zone_edge_is_where_the_azimuth_rate_reaches_the_limit() -> None:
    for latitude_deg in (40.0, -25.0, 0.0):
        azimuth, altitude = blind_outline_deg(latitude_deg, 0.5)
        aside = np.abs(np.cos(np.radians(azimuth))) > 1e-3
        sine, cosine = np.sin(np.radians(latitude_deg)), np.cos(np.radians(latitude_deg))
        speed = sine - cosine * np.tan(np.radians(altitude)) * np.cos(np.radians(azimuth))
        limit = 0.5 * 3600.0 / SIDEREAL_DEG_PER_HOUR
        assert np.abs(speed[aside]) == pytest.approx(limit, rel=1e-9)
        zone = blind_zone(latitude_deg, 0.5)
        assert 90.0 - altitude[90] == pytest.approx(zone.south_deg)
        assert 90.0 - altitude[0] == pytest.approx(zone.north_deg)


def test_drive_loses_a_star_only_inside_the_zone_and_catches_it_again() -> None:
    """A drive simulated second by second that always turns towards the star."""
    zone = blind_zone(48.0, 0.2)
    outside = losses(night(48.0 - zone.south_deg - 0.1), 0.2)
    assert outside == []
    followed = night(48.0 - 0.5 * zone.south_deg + 0.026, step_s=30.0)
    [loss] = losses(followed, 0.2)
    assert loss.caught_up
    assert loss.highest_altitude_deg == pytest.approx(np.max(followed.altitude_deg), abs=0.02)
    fine = track(100.0, 48.0 - 0.5 * zone.south_deg + 0.026, SITE, NO_AIR,
                 np.arange(loss.enters_utc_s - 600.0, loss.leaves_utc_s + 600.0, 1.0))  # fmt: skip
    star, drive, behind = np.unwrap(fine.azimuth_deg, period=360.0), fine.azimuth_deg[0], []
    for utc_s, azimuth in zip(fine.utc_s, star, strict=True):
        drive += float(np.clip(azimuth - drive, -0.2, 0.2))
        if abs(azimuth - drive) > 1e-9:
            behind.append(utc_s)
    assert behind[0] == pytest.approx(loss.enters_utc_s, abs=3.0)
    assert behind[-1] == pytest.approx(loss.leaves_utc_s, abs=3.0)


def test_star_through_the_zenith_costs_half_a_turn_of_the_drive() -> None:
    """180° at 0.5° a second, once the star is past."""
    declination = night(48.0).declination_deg
    [loss] = losses(night(48.0 + (48.0 - declination)), 0.5)
    assert loss.leaves_utc_s - loss.enters_utc_s == pytest.approx(360.0, abs=60.0)


def test_a_drive_slower_than_the_sky_is_refused() -> None:
    with pytest.raises(ValueError, match="slower than the stars turn"):
        blind_zone(40.0, 0.004)


def test_derotator_with_enough_range_and_speed_holds() -> None:
    followed = night(20.0, hours=8.0)
    needed = float(np.ptp(followed.field_angle_deg))
    done = derotation(followed, Derotator(0.0, 350.0, 5.0))
    assert done.holds
    assert done.needed_range_deg == pytest.approx(needed)
    assert np.min(done.angle_deg) == pytest.approx(350.0 - np.max(done.angle_deg))
    assert np.diff(done.angle_deg) == pytest.approx(np.diff(followed.field_angle_deg))
    assert "in one go" in done.sentence


def test_derotator_rewinds_by_half_turns_at_its_stops() -> None:
    followed = night(75.0)  # turns once round
    done = derotation(followed, Derotator(-100.0, 100.0, 5.0))
    assert len(done.rewind_utc_s) == 1
    assert np.all(np.abs(done.angle_deg) <= 100.0 + 1e-9)
    turned = done.angle_deg - done.angle_deg[0]
    field = followed.field_angle_deg - followed.field_angle_deg[0]
    half_turns = (turned - field) / 180.0
    assert half_turns == pytest.approx(np.round(half_turns), abs=1e-9)
    assert "once" in done.sentence


def test_derotator_too_slow_near_the_zenith() -> None:
    followed = night(47.9)
    done = derotation(followed, Derotator(-300.0, 300.0, 0.1))
    assert done.too_fast_utc_s is not None
    assert not done.holds
    with pytest.raises(ValueError, match="at least 180°"):
        derotation(followed, Derotator(0.0, 90.0, 1.0))


def mount_camera_angle_rad(
    hour_deg: float, dec_deg: float, latitude_deg: float, kept: np.ndarray
) -> float:
    """Angle on the sky, at the star, from the celestial pole to the direction `kept`."""
    hour, dec, latitude = np.radians([hour_deg, dec_deg, latitude_deg])
    star = np.array(
        [
            np.sin(dec) * np.cos(latitude) - np.cos(dec) * np.cos(hour) * np.sin(latitude),
            -np.cos(dec) * np.sin(hour),
            np.sin(dec) * np.sin(latitude) + np.cos(dec) * np.cos(hour) * np.cos(latitude),
        ]
    )
    pole = np.array([np.cos(latitude), 0.0, np.sin(latitude)])
    east = np.cross(star, pole)
    return float(np.arctan2(kept @ east / np.linalg.norm(east), kept @ np.cross(east, star)
                            / np.linalg.norm(east)))  # fmt: skip


@pytest.mark.parametrize(("latitude_deg", "set_deg"), [(48.0, 45.0), (-33.0, -30.0), (10.0, 0.0)])
def test_wedge_for_another_latitude_by_the_direction_of_its_own_pole(
    latitude_deg: float, set_deg: float
) -> None:
    axis = np.array([np.cos(np.radians(set_deg)), 0.0, np.sin(np.radians(set_deg))])
    for hour_deg in (-70.0, 5.0, 50.0):
        before, after = (
            mount_camera_angle_rad(hour_deg + step, 25.0, latitude_deg, axis)
            for step in (-0.01, 0.01)
        )
        expected = np.degrees(after - before) / 0.02 * SIDEREAL_DEG_PER_HOUR
        rate = wedge_rate_deg_per_hour(hour_deg, 25.0, latitude_deg, set_deg)
        assert rate == pytest.approx(expected, rel=1e-4)


def test_wedge_at_home_turns_nothing_and_no_drive_is_an_alt_azimuth_mount() -> None:
    assert wedge_rate_deg_per_hour([0.0, 60.0], 20.0, 48.0, 48.0) == pytest.approx(0.0, abs=1e-12)
    assert platform_rate_deg_per_hour(30.0, 20.0, 48.0, 48.0, 5.0) == pytest.approx(0.0, abs=1e-12)


def test_platform_carries_its_vertical() -> None:
    """Followed step by step: the platform turns, then two corrections bring the star back."""
    latitude, declination, hour, span = 48.0, 30.0, 20.0, 0.02
    axis = np.array([np.cos(np.radians(44.0)), 0.0, np.sin(np.radians(44.0))])
    angles = []
    for step in (-0.5 * span, 0.5 * span):
        # A right-handed turn in a left-handed frame (north, east, up) goes the way of the sky.
        [vertical] = rotate(np.array([0.0, 0.0, 1.0]), axis, np.radians([8.0 + step]))
        angles.append(mount_camera_angle_rad(hour + step, declination, latitude, vertical))
    expected = np.degrees(angles[1] - angles[0]) / span * SIDEREAL_DEG_PER_HOUR
    rate = platform_rate_deg_per_hour(hour, declination, latitude, 44.0, 8.0)
    assert rate == pytest.approx(expected, rel=1e-4)
    plain = rate_deg_per_hour(latitude, 180.0, 60.0, Air(0.0))
    assert abs(float(rate)) < abs(float(plain))
