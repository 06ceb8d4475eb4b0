"""Polar misalignment against published relations. Each source stands beside its check."""

import numpy as np
import pytest

from core.alignment.drift.geometry import offsets_arcsec
from core.sky.refraction import Refraction
from core.units import ARCMIN_PER_RAD, ARCSEC_PER_RAD, SIDEREAL_RATE_RAD_PER_S

NO_AIR = Refraction(0.0, 0.0)
TANGENT_AIR = Refraction(58.3 / ARCSEC_PER_RAD, 0.0)
PER_MINUTE = 60.0 * SIDEREAL_RATE_RAD_PER_S


def rates(hour_angle_deg, dec_deg, latitude_deg, azimuth_arcmin, altitude_arcmin, air=NO_AIR):
    """North and east rates, arcsec per minute, by central difference over 20 s."""
    half = 1e-3
    turn = np.array([0.0, half, 2 * half]) - half
    offsets = offsets_arcsec(
        np.deg2rad(hour_angle_deg) + turn,
        np.deg2rad(dec_deg),
        np.deg2rad(latitude_deg),
        azimuth_arcmin / ARCMIN_PER_RAD,
        altitude_arcmin / ARCMIN_PER_RAD,
        air,
    )
    return [float(offset[2] - offset[0]) / (2 * half) * PER_MINUTE for offset in offsets]


# Derived: dδ/dt = −ω(Δh sin H + ΔA cos φ cos H) with ω·1′ = 0.26252″ per minute; elementary.
def test_drift_on_the_meridian_and_in_the_east():
    assert rates(0, 0, 45, 1, 0)[0] == pytest.approx(-0.18563, abs=1e-5)
    assert rates(-90, 0, 45, 0, 1)[0] == pytest.approx(+0.26252, abs=1e-5)


def test_the_trade_rule_of_3_8():
    # The trade's "3.8 rule": error in arcmin = 3.81 × arcsec / minutes (derived: 3.809 sidereal).
    drift = rates(-90, 0, 40, 0, 1)[0]
    assert 1.0 / drift == pytest.approx(3.809, abs=1e-3)
    assert 1.0 / drift * 1.00273791 == pytest.approx(3.820, abs=1e-3)  # 24 h in place of 23.934 h


@pytest.mark.parametrize("dec_deg", [-60.0, -30.0, 30.0, 60.0, 75.0])
@pytest.mark.parametrize("hour_angle_deg", [-90.0, -40.0, 0.0, 70.0])
def test_the_drift_does_not_grow_with_declination(dec_deg, hour_angle_deg):
    # A factor 1/cos δ in this rule is an error that circulates; at 75° it would be 3.9.
    at_equator = rates(hour_angle_deg, 0.0, 45.0, 0.7, 0.7)[0]
    assert rates(hour_angle_deg, dec_deg, 45.0, 0.7, 0.7)[0] == pytest.approx(at_equator, abs=2e-3)


# Scheiner's method as in published practice, northern site; the south is the mirror image.
@pytest.mark.parametrize(
    ("hour_angle_deg", "azimuth_arcmin", "altitude_arcmin"), [(0, +5, 0), (-90, 0, -5)]
)
def test_scheiner_a_star_drifting_south(hour_angle_deg, azimuth_arcmin, altitude_arcmin):
    # Near the meridian: the axis is too far east. In the east: the axis is too low.
    assert rates(hour_angle_deg, 0, 45, azimuth_arcmin, altitude_arcmin)[0] < -0.5
    if altitude_arcmin:
        assert rates(-hour_angle_deg, 0, 45, azimuth_arcmin, altitude_arcmin)[0] > 0.5
        assert rates(hour_angle_deg, 0, -45, azimuth_arcmin, altitude_arcmin)[0] > 0.5


# Derived numerically: refraction 58.3″ tan z alone, axis on the true pole.
@pytest.mark.parametrize(
    ("latitude_deg", "hour_angle_deg", "expected"),
    [(45, -60, -0.878), (45, 45, 0.360), (30, -60, -0.508), (60, -60, -1.510)],
)
def test_refraction_alone_drifts(latitude_deg, hour_angle_deg, expected):
    north = rates(hour_angle_deg, 0, latitude_deg, 0, 0, TANGENT_AIR)[0]
    assert north == pytest.approx(expected, abs=1e-3)


def king_minutes_a_day(latitude_deg, dec_deg, hour_angle_deg):
    """King rate less the sidereal day, minutes (formula from memory, verified numerically)."""
    lat, dec, h = np.deg2rad([latitude_deg, dec_deg, hour_angle_deg])
    sine = np.sin(lat) * np.sin(dec) + np.cos(lat) * np.cos(dec) * np.cos(h)
    inner = np.cos(lat) * np.cos(dec) + np.sin(lat) * np.sin(dec) * np.cos(h)
    return 0.4059 * (
        np.cos(lat) / np.cos(dec) * inner / sine**2 - np.tan(dec) / np.tan(lat) * np.cos(h)
    )


KING = [(45, 0, 0, 0.4059), (45, 30, 0, 0.1088), (30, 30, 0, 0.0), (45, 0, 45, 0.8118)]


@pytest.mark.parametrize(("latitude_deg", "dec_deg", "hour_angle_deg", "minutes"), KING)
def test_king_rate(latitude_deg, dec_deg, hour_angle_deg, minutes):
    # King, as quoted in public notes: the drive period is 1436.07 min plus this, for an axis on
    # the refracted pole. A slower apparent star falls behind a sidereal drive: it drifts east.
    lift_arcmin = 58.3 / np.tan(np.deg2rad(latitude_deg)) / 60.0
    east = rates(hour_angle_deg, dec_deg, latitude_deg, 0, lift_arcmin, TANGENT_AIR)[1]
    expected = king_minutes_a_day(latitude_deg, dec_deg, hour_angle_deg)
    assert expected == pytest.approx(minutes, abs=1e-4)
    sidereal_arcsec_per_min = PER_MINUTE * ARCSEC_PER_RAD * np.cos(np.deg2rad(dec_deg))
    slower = east / sidereal_arcsec_per_min
    # King's series is first order in the refraction; at 60° zenith distance that costs 4e-3.
    assert slower * 1436.07 == pytest.approx(minutes, abs=4e-3)


def test_king_pole_star_trail():
    # King's simplified check, as quoted in public notes: with the drive running, the pole star's
    # trail over 1371 s, times ten, is the distance between the axis and the pole.
    hour_angle = np.array([0.0, 1371.0 * SIDEREAL_RATE_RAD_PER_S])
    for start_deg in (0.0, 70.0, 200.0):
        north, east = offsets_arcsec(
            hour_angle + np.deg2rad(start_deg),
            np.deg2rad(89.3),
            np.deg2rad(45.0),
            0.0,
            10.0 / ARCMIN_PER_RAD,
            NO_AIR,
        )
        assert np.hypot(north[1], east[1]) * 10.0 / 60.0 == pytest.approx(10.0, abs=0.05)
