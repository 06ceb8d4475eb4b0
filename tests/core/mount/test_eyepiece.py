"""The eyepiece of a Newtonian in positions anyone can picture, and carried step by step."""

from __future__ import annotations

import numpy as np
import pytest

from core.night.eyepiece import EyeHeights, Newtonian, best_turn_deg, eyepiece_path
from core.night.flip import PierSide
from tests.truth.mount import rotate

TUBE = Newtonian(1.3, 0.3, 0.6, 0.2, 0.0)


def test_tube_west_of_the_pier_on_the_southern_meridian() -> None:
    """Facing south with the tube in the west: away from the mount is to the right."""
    path = eyepiece_path(0.0, 0.0, 48.0, TUBE, PierSide.WEST)
    assert path.round_tube_deg == pytest.approx(90.0)
    assert path.height_m == pytest.approx(1.3 + 0.6 * np.sin(np.radians(42.0)))


def test_other_side_of_the_pier_is_the_mirror() -> None:
    west = eyepiece_path([-40.0, 0.0, 40.0], 20.0, 48.0, TUBE, PierSide.WEST)
    east = eyepiece_path([40.0, 0.0, -40.0], 20.0, 48.0, TUBE, PierSide.EAST)
    assert east.round_tube_deg == pytest.approx(-west.round_tube_deg)
    assert east.height_m == pytest.approx(west.height_m)


def test_looking_east_with_the_counterweight_down_the_tube_is_on_top() -> None:
    """At six hours east the declination axis points up along the meridian plane."""
    path = eyepiece_path(-90.0, 0.0, 0.0, TUBE, PierSide.WEST)  # equator: straight up
    assert path.height_m == pytest.approx(1.3 + 0.3 + 0.2)


@pytest.mark.parametrize("turned_deg", [0.0, 40.0, 90.0, -120.0])
def test_turning_the_tube_in_its_rings_turns_the_eyepiece_clockwise(turned_deg: float) -> None:
    turned = Newtonian(1.3, 0.3, 0.6, 0.2, turned_deg)
    path = eyepiece_path(0.0, 0.0, 48.0, turned, PierSide.WEST)
    assert (path.round_tube_deg - 90.0 - turned_deg) % 360.0 == pytest.approx(0.0, abs=1e-9)


def test_heights_by_carrying_the_eyepiece_about_the_polar_axis() -> None:
    """Right-handed frame east, north, up; from the meridian by Rodrigues' rotation."""
    latitude, declination = np.radians([48.0, 20.0])
    pole = np.array([0.0, np.cos(latitude), np.sin(latitude)])
    south_altitude = np.pi / 2.0 - latitude + declination
    star = np.array([0.0, -np.cos(south_altitude), np.sin(south_altitude)])
    out = np.array([-1.0, 0.0, 0.0])  # west, away from the mount
    eye = 0.3 * out + 0.6 * star + 0.2 * out
    hours = np.array([-60.0, -20.0, 35.0, 80.0])
    carried = rotate(eye, pole, -np.radians(hours))  # the sky goes clockwise about the north pole
    path = eyepiece_path(hours, 20.0, 48.0, TUBE, PierSide.WEST)
    assert path.height_m == pytest.approx(1.3 + carried[:, 2])


def test_advice_when_the_eyepiece_gets_out_of_reach() -> None:
    hours = np.linspace(-75.0, 0.0, 30)
    under = Newtonian(1.3, 0.3, 0.6, 0.2, 120.0)
    path = eyepiece_path(hours, 20.0, 48.0, under, PierSide.WEST)
    assert not np.all(path.is_comfortable)
    assert "Turn the tube in its rings" in path.sentence
    better = best_turn_deg(hours, 20.0, 48.0, under, PierSide.WEST)
    turned = Newtonian(1.3, 0.3, 0.6, 0.2, better)
    improved = eyepiece_path(hours, 20.0, 48.0, turned, PierSide.WEST)
    assert np.mean(improved.is_comfortable) > np.mean(path.is_comfortable)
    assert improved.tube_turn_deg == pytest.approx(path.tube_turn_deg)


def test_in_reach_all_the_time() -> None:
    path = eyepiece_path([0.0, 10.0], 0.0, 48.0, TUBE, PierSide.WEST, EyeHeights(0.5, 2.5))
    assert path.sentence.endswith("in reach all the time.")
