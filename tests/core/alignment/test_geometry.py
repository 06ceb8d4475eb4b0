"""Signs of the drift, as tabulated in `core.alignment.drift.geometry`, for both hemispheres."""

import numpy as np
import pytest

from core.alignment.drift.geometry import axis_north_end, direction, offsets_arcsec, sky_error_rad
from core.sky.refraction import Refraction
from core.units import ARCMIN_PER_RAD, SIDEREAL_RATE_RAD_PER_S

NO_AIR = Refraction(0.0, 0.0)
MINUTE_RAD = 60.0 * SIDEREAL_RATE_RAD_PER_S


def drift_in_a_minute(hour_angle_deg, dec_deg, latitude_deg, azimuth_arcmin, altitude_arcmin):
    hour_angle = np.deg2rad(hour_angle_deg) + np.array([-0.5, 0.5]) * MINUTE_RAD
    north, _ = offsets_arcsec(
        hour_angle,
        np.deg2rad(dec_deg),
        np.deg2rad(latitude_deg),
        azimuth_arcmin / ARCMIN_PER_RAD,
        altitude_arcmin / ARCMIN_PER_RAD,
        NO_AIR,
    )
    return north[1]


# latitude, axis azimuth error, altitude error, hour angle -> the star drifts north (+) or south (−)
SIGNS = [
    (45, +1, 0, 0, -1),  # north: axis east of the pole, star on the meridian drifts south
    (45, -1, 0, 0, +1),
    (45, 0, +1, -90, +1),  # north: axis too high, star in the east drifts north
    (45, 0, -1, -90, -1),
    (45, 0, +1, +90, -1),  # in the west the other way
    (-45, +1, 0, 0, -1),  # south: greater azimuth is west of the pole; the star drifts south
    (-45, -1, 0, 0, +1),
    (-45, 0, +1, -90, -1),  # south: axis too high, star in the east drifts south
    (-45, 0, +1, +90, +1),
]


@pytest.mark.parametrize(("latitude", "azimuth", "altitude", "hour_angle", "sign"), SIGNS)
def test_the_sign_table_holds(latitude, azimuth, altitude, hour_angle, sign):
    drift = drift_in_a_minute(hour_angle, 0.0, latitude, azimuth, altitude)
    assert np.sign(drift) == sign
    assert abs(drift) > 0.1


def test_a_greater_azimuth_of_the_elevated_end_is_east_in_the_north_and_west_in_the_south():
    one_degree = np.deg2rad(1.0)
    north_site = axis_north_end(np.deg2rad(45.0), one_degree, 0.0)
    south_site = -axis_north_end(np.deg2rad(-45.0), one_degree, 0.0)  # the elevated end
    assert north_site[1] > 0.0  # east component
    assert south_site[1] < 0.0


@pytest.mark.parametrize("latitude_deg", [50.0, -50.0])
def test_a_positive_altitude_error_raises_the_elevated_end(latitude_deg):
    raised = axis_north_end(np.deg2rad(latitude_deg), 0.0, np.deg2rad(1.0))
    elevated = raised if latitude_deg > 0 else -raised
    assert np.rad2deg(np.arcsin(elevated[2])) == pytest.approx(51.0)


def test_the_sky_error_shrinks_azimuth_by_the_cosine_of_latitude():
    # Spherical law of cosines, for the same altitude: sin(s/2) = cos φ sin(ΔA/2).
    size = sky_error_rad(np.deg2rad(60.0), np.deg2rad(1.0), 0.0)
    assert np.sin(size / 2) == pytest.approx(0.5 * np.sin(np.deg2rad(0.5)), rel=1e-12)


def test_a_mount_on_the_pole_without_air_keeps_every_star_still():
    hour_angle = np.linspace(-1.0, 1.0, 50)
    for dec_deg in (-30.0, 0.0, 70.0):
        north, east = offsets_arcsec(
            hour_angle, np.deg2rad(dec_deg), np.deg2rad(48.0), 0.0, 0.0, NO_AIR
        )
        # Diurnal aberration remains: at most 0.32″ cos φ in each direction.
        assert np.abs(north).max() < 0.45
        assert np.abs(east).max() < 0.45


def test_directions_are_unit_vectors_north_east_up():
    np.testing.assert_allclose(direction(np.deg2rad(90.0), 0.0), [0.0, 1.0, 0.0], atol=1e-15)
    np.testing.assert_allclose(direction(0.3, np.deg2rad(90.0)), [0.0, 0.0, 1.0], atol=1e-15)
