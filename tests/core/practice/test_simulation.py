"""The practice sky moves its stars as the published rule says, and repeats by seed."""

import math

import numpy as np
import pytest

from core.practice.simulation import (
    MEADOW_AIR,
    NORTHERN_MEADOW,
    Bolt,
    PracticeMount,
    PracticeSky,
    Worm,
)
from core.sky.clocks import local_sidereal_time_hours
from core.sky.site import Air

VACUUM = Air(pressure_hpa=0.0)
START_UTC_S = 1_795_568_400.0
STILL_WORM = Worm(480.0, (0.0,), (0.0,))
SIDEREAL_ARCSEC_PER_MIN_PER_ARCMIN = 0.26252  # 2π / 1 sidereal day × 1′, derived


def mount(azimuth_arcmin: float, altitude_arcmin: float, worm: Worm = STILL_WORM) -> PracticeMount:
    tight = Bolt(1.0, 0.0), Bolt(1.0, 0.0)
    return PracticeMount(azimuth_arcmin, altitude_arcmin, *tight, worm)


def sky(one: PracticeMount, seed: int = 4, air: Air = VACUUM, gusts: float = 0.0) -> PracticeSky:
    return PracticeSky(one, NORTHERN_MEADOW, air, np.random.default_rng(seed), gusts)


def star_at(hour_angle_deg: float) -> float:
    sidereal_deg = 15.0 * float(local_sidereal_time_hours(START_UTC_S, NORTHERN_MEADOW))
    return (sidereal_deg - hour_angle_deg) % 360.0


def drift_arcsec_per_min(one: PracticeMount, hour_angle_deg: float) -> float:
    utc_s = START_UTC_S + np.arange(-300.0, 302.0, 2.0)
    model = sky(one)
    model.centre(star_at(hour_angle_deg), 5.0, utc_s[0])
    north, _ = model.readings(utc_s)
    return 60.0 * float(np.polyfit(utc_s - START_UTC_S, north, 1)[0])


@pytest.mark.parametrize(
    ("azimuth_arcmin", "altitude_arcmin", "hour_angle_deg"),
    [(20.0, 0.0, 0.0), (0.0, 20.0, -75.0), (0.0, 20.0, 75.0), (-15.0, 25.0, 40.0)],
)
def test_drift_follows_the_small_angle_rule(
    azimuth_arcmin: float, altitude_arcmin: float, hour_angle_deg: float
) -> None:
    # dδ/dt = −ω (Δh sin H + ΔA cos φ cos H), Scheiner's method; derived.
    hour_angle = math.radians(hour_angle_deg)
    latitude = math.radians(NORTHERN_MEADOW.latitude_deg)
    expected = -SIDEREAL_ARCSEC_PER_MIN_PER_ARCMIN * (
        altitude_arcmin * math.sin(hour_angle)
        + azimuth_arcmin * math.cos(latitude) * math.cos(hour_angle)
    )
    measured = drift_arcsec_per_min(mount(azimuth_arcmin, altitude_arcmin), hour_angle_deg)
    assert measured == pytest.approx(expected, abs=0.07)  # seeing over 10 min, second order at 20′


def test_a_seed_repeats_the_night_even_read_in_pieces() -> None:
    utc_s = START_UTC_S + np.arange(1.0, 200.0) * 2.0
    whole, pieces = (sky(PracticeMount.hidden(np.random.default_rng(8)), 9) for _ in range(2))
    for model in (whole, pieces):
        model.centre(star_at(-20.0), 12.0, START_UTC_S)
    north, east = whole.readings(utc_s)
    parts = [pieces.readings(utc_s[:3]), pieces.readings(utc_s[3:])]
    # The apparent place is taken at the middle of each request: a thousandth of an arcsecond.
    np.testing.assert_allclose(np.concatenate([part[0] for part in parts]), north, atol=2e-3)
    np.testing.assert_allclose(np.concatenate([part[1] for part in parts]), east, atol=2e-2)


def test_the_worm_shows_in_east_only_and_returns_after_its_period() -> None:
    utc_s = START_UTC_S + np.arange(0.0, 962.0, 2.0)
    worm = Worm(480.0, (10.0, 3.0), (0.3, 1.0))
    with_worm, without = sky(mount(0.0, 0.0, worm)), sky(mount(0.0, 0.0))
    offsets = []
    for model in (with_worm, without):
        model.centre(star_at(0.0), 60.0, START_UTC_S)
        offsets.append(model.readings(utc_s))
    np.testing.assert_array_equal(offsets[0][0], offsets[1][0])
    slip = offsets[0][1] - offsets[1][1]
    assert slip[240] == pytest.approx(slip[0], abs=1e-6)
    assert np.ptp(slip) == pytest.approx(0.5 * np.ptp(worm.lead_arcsec(utc_s)), rel=0.02)


def test_refraction_alone_moves_a_low_star_of_a_mount_on_the_true_pole() -> None:
    utc_s = START_UTC_S + np.arange(0.0, 602.0, 2.0)
    bare, airy = sky(mount(0.0, 0.0)), sky(mount(0.0, 0.0), air=MEADOW_AIR)
    for model in (bare, airy):
        model.centre(star_at(-60.0), 0.0, START_UTC_S)
    change = airy.readings(utc_s)[0] - bare.readings(utc_s)[0]
    assert change[-1] < -3.0  # about half an arcsecond a minute at this place, derived


def test_bolts_move_the_errors_the_way_they_say() -> None:
    one = mount(10.0, -10.0)
    one.turn_azimuth(-4.0)
    one.turn_altitude(3.0)
    assert (one.azimuth_error_arcmin, one.altitude_error_arcmin) == pytest.approx((6.0, -7.0))


def test_hidden_errors_are_worth_finding_and_at_most_a_degree() -> None:
    mounts = [PracticeMount.hidden(np.random.default_rng(seed)) for seed in range(100)]
    errors = np.array([(m.azimuth_error_arcmin, m.altitude_error_arcmin) for m in mounts])
    assert np.all((np.abs(errors) >= 8.0) & (np.abs(errors) <= 60.0))
    assert np.all(errors.min(axis=0) < 0.0)
    assert np.all(errors.max(axis=0) > 0.0)


def test_gusts_throw_some_readings_far_out() -> None:
    utc_s = START_UTC_S + np.arange(0.0, 7200.0, 2.0)
    calm, windy = (sky(mount(0.0, 0.0), gusts=rate) for rate in (0.0, 60.0))
    far = []
    for model in (calm, windy):
        model.centre(star_at(0.0), 20.0, START_UTC_S)
        far.append(int(np.sum(np.abs(model.readings(utc_s)[0]) > 5.0)))
    assert far[0] == 0
    assert 15 < far[1] < 90


def test_reading_without_a_star_is_refused() -> None:
    with pytest.raises(LookupError, match="no star"):
        sky(mount(1.0, 1.0)).readings(np.array([START_UTC_S]))
