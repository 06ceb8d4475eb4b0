"""The tests' own bolts move the mount as a rigid body on the base it stands on."""

import numpy as np
import pytest

from tests.truth.bolts import ALTITUDE, AZIMUTH, Bolt, BoltedMount, leaning

LEVEL = leaning(0.0, 0.0)
TUBE = np.linalg.qr(np.array([[0.2, 0.5, 0.8], [0.9, -0.3, 0.1], [0.4, 0.4, -0.7]]))[0]


@pytest.mark.parametrize("latitude_deg", [48.0, -33.0])
def test_on_a_level_base_each_bolt_moves_its_own_error(latitude_deg):
    mount = BoltedMount(latitude_deg, 20.0, -10.0, LEVEL)
    assert mount.errors_arcmin == pytest.approx([20.0, -10.0], abs=1e-9)
    mount.move(AZIMUTH, 30.0, TUBE)
    assert mount.errors_arcmin == pytest.approx([50.0, -10.0], abs=1e-9)
    mount.move(ALTITUDE, 25.0, TUBE)
    assert mount.errors_arcmin == pytest.approx([50.0, 15.0], abs=1e-9)


@pytest.mark.parametrize("latitude_deg", [48.0, -33.0])
def test_elevated_ends_move_as_the_bolts_say(latitude_deg):
    mount = BoltedMount(latitude_deg, 0.0, 0.0, LEVEL)
    mount.move(ALTITUDE, 60.0, TUBE)
    assert np.rad2deg(np.arcsin(mount.elevated[2])) == pytest.approx(abs(latitude_deg) + 1.0)
    assert np.sign(mount.north_end[2]) == np.sign(latitude_deg)
    mount.move(AZIMUTH, 60.0, TUBE)  # to greater azimuth: east in the north, west in the south
    assert np.sign(mount.elevated[0]) == np.sign(latitude_deg)


@pytest.mark.parametrize("towards_deg", [0.0, 75.0, 200.0])
def test_on_a_leaning_base_the_bolts_turn_a_rigid_body(towards_deg):
    mount = BoltedMount(48.0, 20.0, -10.0, leaning(3.0, towards_deg))
    to_normal, in_tube = mount.elevated @ mount.normal, TUBE @ mount.elevated
    tube = mount.move(AZIMUTH, 90.0, TUBE)
    assert mount.elevated @ mount.normal == pytest.approx(to_normal, abs=1e-14)
    assert tube @ mount.elevated == pytest.approx(in_tube, abs=1e-14)
    axle = mount.axle
    tube = mount.move(ALTITUDE, -70.0, tube)
    assert mount.axle == pytest.approx(axle, abs=1e-14)
    assert [axle @ mount.elevated, axle @ mount.normal] == pytest.approx([0.0, 0.0], abs=1e-14)
    assert tube @ mount.elevated == pytest.approx(in_tube, abs=1e-14)
    assert tube @ tube.T == pytest.approx(np.eye(3), abs=1e-14)


def test_on_a_base_that_leans_east_turning_east_lowers_the_axis():
    # Elementary: the axis moves at right angles to the normal, so it falls by 60′ tan 3° or so.
    mount = BoltedMount(45.0, -30.0, 0.0, leaning(3.0, 90.0))
    mount.move(AZIMUTH, 60.0, TUBE)
    assert mount.errors_arcmin[1] == pytest.approx(-60.0 * np.sin(np.deg2rad(3.0)), abs=0.01)


def test_the_distance_from_the_pole_counts_azimuth_by_the_cosine_of_the_latitude():
    assert BoltedMount(60.0, 6.0, 4.0, LEVEL).from_pole_arcmin == pytest.approx(5.0, abs=0.01)


def test_play_is_taken_up_before_anything_moves():
    bolt = Bolt(play_arcmin=3.0, slack_arcmin=3.0)
    assert [bolt.turn(arcmin) for arcmin in (5.0, -2.0, -4.0, 1.0, 3.0)] == [5, 0, -3, 0, 1]
