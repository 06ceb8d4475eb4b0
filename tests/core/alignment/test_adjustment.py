"""Turns of the bolts against a rigid rotation written another way, and against plain geometry."""

import numpy as np
import pytest
from scipy.spatial.transform import Rotation

from core.alignment.axis.evidence import PriorAxis
from core.alignment.axis.solution import solve
from core.alignment.drift.geometry import axis_north_end, true_direction
from core.alignment.guide.bolts import (
    Base,
    BoltTurn,
    TurnAccuracy,
    known_after,
    moved_errors_arcmin,
    star_shift_arcsec,
)
from core.sky.site import Site

SITES = [Site(48.0, 11.0), Site(-33.0, 19.0)]
LEVEL = Base()


@pytest.mark.parametrize("site", SITES)
def test_on_a_level_base_each_bolt_moves_its_own_error(site):
    assert moved_errors_arcmin(site, 5.0, 7.0, BoltTurn(30.0, 0.0), LEVEL) == pytest.approx(
        (35.0, 7.0)
    )
    assert moved_errors_arcmin(site, 5.0, 7.0, BoltTurn(0.0, 30.0), LEVEL) == pytest.approx(
        (5.0, 37.0)
    )


def by_scipy(site, azimuth_arcmin, altitude_arcmin, turn, base):
    """The same with scipy's rotations in a right-handed frame: east, north, up."""
    south = site.latitude_deg < 0
    azimuth = np.deg2rad((180.0 if south else 0.0) + azimuth_arcmin / 60.0)
    altitude = np.deg2rad(abs(site.latitude_deg) + altitude_arcmin / 60.0)
    end = np.array([np.cos(altitude) * np.sin(azimuth), np.cos(altitude) * np.cos(azimuth),
                    np.sin(altitude)])  # fmt: skip
    lean, towards = np.deg2rad([base.tilt_deg, base.azimuth_deg])
    normal = np.array([np.sin(lean) * np.sin(towards), np.sin(lean) * np.cos(towards),
                       np.cos(lean)])  # fmt: skip
    pole = np.array(
        [0.0, np.cos(np.deg2rad(site.latitude_deg)), np.sin(np.deg2rad(site.latitude_deg))]
    )
    elevated = -pole if south else pole
    axle = np.cross(elevated, normal)  # raising turns the elevated end towards the normal
    axle = Rotation.from_rotvec(-normal * np.deg2rad(azimuth_arcmin / 60.0)).apply(
        axle / np.linalg.norm(axle)
    )
    raised = Rotation.from_rotvec(axle * np.deg2rad(turn.altitude_arcmin / 60.0)).apply(end)
    moved = Rotation.from_rotvec(-normal * np.deg2rad(turn.azimuth_arcmin / 60.0)).apply(raised)
    heading = np.rad2deg(np.arctan2(moved[0], moved[1])) - (180.0 if south else 0.0)
    return (
        ((heading + 180.0) % 360.0 - 180.0) * 60.0,
        (np.rad2deg(np.arcsin(moved[2])) - abs(site.latitude_deg)) * 60.0,
    )


@pytest.mark.parametrize("site", SITES)
@pytest.mark.parametrize("base", [Base(3.0, 90.0), Base(2.0, 10.0), Base(4.0, 230.0)])
def test_a_leaning_base_mixes_the_errors(site, base):
    turn = BoltTurn(40.0, -25.0)
    ours = moved_errors_arcmin(site, -12.0, 30.0, turn, base)
    assert ours == pytest.approx(by_scipy(site, -12.0, 30.0, turn, base), abs=0.02)
    level = moved_errors_arcmin(site, -12.0, 30.0, turn, LEVEL)
    assert abs(ours[0] - level[0]) + abs(ours[1] - level[1]) > 0.5


# Plain geometry, star at declination 0: turning the whole mount 10′ in azimuth moves the pointing
# 10′ cos h sideways; raising the axis by 10′ in the north lowers a telescope that looks south.
SHIFTS = [
    (45.0, 0.0, BoltTurn(10.0, 0.0), (0.0, 10.0 * np.cos(np.deg2rad(45.0)))),
    (45.0, 0.0, BoltTurn(0.0, 10.0), (10.0, 0.0)),
    (-30.0, 0.0, BoltTurn(10.0, 0.0), (0.0, -10.0 * np.cos(np.deg2rad(60.0)))),
    (-30.0, 0.0, BoltTurn(0.0, 10.0), (-10.0, 0.0)),
]


@pytest.mark.parametrize(("latitude_deg", "hour_angle_deg", "turn", "expected"), SHIFTS)
def test_the_star_in_view_moves_as_plain_geometry_says(
    latitude_deg, hour_angle_deg, turn, expected
):
    site = Site(latitude_deg, 0.0)
    latitude = np.deg2rad(latitude_deg)
    star = true_direction(np.deg2rad(hour_angle_deg), 0.0, latitude)
    north, east = star_shift_arcsec(star, axis_north_end(latitude, 0.0, 0.0), turn, site, LEVEL)
    assert (north / 60.0, east / 60.0) == pytest.approx(expected, abs=0.02)


def test_what_was_known_is_moved_and_widened_by_the_hand():
    known = PriorAxis(np.array([20.0, -10.0]), np.diag([0.25, 0.16]))
    site = Site(60.0, 0.0)
    after = known_after(known, BoltTurn(-40.0, 10.0), site, LEVEL, TurnAccuracy(0.1, 0.5))
    assert after.sky_arcmin == pytest.approx([0.0, 0.0], abs=0.01)  # 40′ of azimuth are 20′ there
    lean = np.deg2rad(1.25)  # of a base that nobody measured: each bolt moves the axis across
    assert np.diag(after.covariance_arcmin2) == pytest.approx(
        [0.25 + 2.0**2 + 0.25**2 + (lean * 10.0) ** 2, 0.16 + 1.0**2 + 0.5**2 + (lean * 20.0) ** 2]
    )


def test_earlier_legs_help_after_a_turn(make_leg, air):
    site = SITES[0]
    before = solve([make_leg(site, 1.0, 20.0, -30.0), make_leg(site, -75.0, 20.0, -30.0, seed=2)],
                   site, air)  # fmt: skip
    turn, hand = BoltTurn(-20.0, 30.0), TurnAccuracy(0.1, 0.5)
    expected = known_after(before.knowledge, turn, site, LEVEL, hand)
    leg = make_leg(site, 1.0, 1.5, 2.0, minutes=4.0, seed=3)  # the hand erred by 1.5′ and 2′
    alone = solve([leg], site, air)
    helped = solve([leg], site, air, expected)
    assert not alone.altitude_determined
    assert helped.altitude_determined
    assert helped.altitude_error_arcmin == pytest.approx(
        0.0, abs=3.0 * helped.altitude_sigma_arcmin
    )
    assert helped.azimuth_error_arcmin == pytest.approx(1.5, abs=3.0 * helped.azimuth_sigma_arcmin)


def test_a_turn_the_wrong_way_is_noticed(make_leg, air):
    site = SITES[0]
    before = solve([make_leg(site, 1.0, 20.0, -5.0), make_leg(site, -75.0, 20.0, -5.0, seed=2)],
                   site, air)  # fmt: skip
    expected = known_after(before.knowledge, BoltTurn(-20.0, 0.0), site, LEVEL, TurnAccuracy())
    wrong = [make_leg(site, 1.0, 40.0, -5.0, seed=4), make_leg(site, -75.0, 40.0, -5.0, seed=5)]
    solution = solve(wrong, site, air, expected)
    assert any(note.code.value == "unexpected axis" for note in solution.notes)
    assert solution.azimuth_error_arcmin == pytest.approx(40.0, abs=1.5)


def test_a_turn_the_wrong_way_is_noticed_early_when_that_is_asked_after(make_leg, air):
    site, hand = SITES[0], TurnAccuracy(0.1, 0.5)
    known = PriorAxis(np.array([2.0, 0.0]), np.diag([0.6, 0.6]))
    told, other = (known_after(known, BoltTurn(way, 0.0), site, LEVEL, hand) for way in (-3.0, 3.0))

    def is_dropped(azimuth_arcmin, rivals):
        leg = make_leg(site, 1.0, azimuth_arcmin, 0.0, minutes=3.0, seed=4)
        notes = solve([leg], site, air, told, rivals=rivals).notes
        return any(note.code.value == "unexpected axis" for note in notes)

    assert not is_dropped(6.0, [])
    assert is_dropped(6.0, [other])
    assert not is_dropped(0.0, [other])
