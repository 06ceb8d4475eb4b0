"""The division of the readings is found, and coarse readings say what they can, no more."""

import numpy as np
import pytest

from core.alignment.axis.solution import solve
from core.alignment.drift.prepared import reading_steps_arcsec
from core.alignment.drift.readingstep import is_coarse, rate_of_rounded, reading_step_arcsec
from core.alignment.driftlog.records import Leg
from core.alignment.priors import USUAL, Priors
from core.sky.site import Site

SITE = Site(48.0, 11.0, 500.0)


@pytest.mark.parametrize("division", [0.5, 1.0, 4.7, 5.0, 10.0])
@pytest.mark.parametrize("decimals", [1, 2, 6])
def test_the_division_is_found_however_the_figures_are_written(division, decimals):
    rng = np.random.default_rng(1)
    drift = 0.02 * np.arange(0.0, 600.0, 10.0) + 0.3 * division * rng.normal(size=60)
    written = np.round(np.round(drift / division) * division + 3.1, decimals)
    assert reading_step_arcsec(written) == pytest.approx(division, rel=0.02)


@pytest.mark.parametrize("seed", range(5))
def test_fine_readings_have_no_division_to_speak_of(seed):
    rng = np.random.default_rng(seed)
    assert reading_step_arcsec(np.round(rng.normal(size=200), 3)) < 0.01
    assert reading_step_arcsec(rng.normal(size=200)) == 0.0


def test_an_even_drift_without_noise_is_no_division():
    assert reading_step_arcsec(0.457 * np.arange(100.0)) == 0.0


def test_readings_that_never_change_are_as_coarse_as_the_others_of_the_night():
    still, moving = (
        Leg(label, 0.0, 0.0, 10.0 * np.arange(20.0), north)
        for label, north in (("a", np.zeros(20)), ("b", np.repeat([0.0, 5.0, 10.0, 20.0], 5)))
    )
    assert reading_step_arcsec(still.north_arcsec) is None
    assert reading_steps_arcsec([still, moving], USUAL) == [5.0, 5.0]
    assert reading_steps_arcsec([still], USUAL) == [10.0]  # a usual reticle
    stated = Priors(reading_step_arcsec=2.0)
    assert reading_steps_arcsec([still, moving], stated) == [2.0, 2.0]


def test_readings_estimated_between_two_lines_do_not_hide_the_division():
    lines = np.repeat([0.0, 10.0, 20.0], 12)
    lines[[4, 15, 16, 30]] = 3.0, 7.0, 14.0, 21.0
    assert reading_step_arcsec(lines) == pytest.approx(10.0)
    one_line = np.zeros(40)
    one_line[[4, 20]] = 4.0, -3.0
    assert reading_step_arcsec(one_line) == pytest.approx(8.0)  # half of it is 4 at the least


def test_a_drift_told_by_two_readings_has_no_division():
    two = Leg("a", 0.0, 0.0, np.array([0.0, 300.0]), np.array([0.0, 40.0]), None, np.ones(2))
    still = Leg("b", 0.0, 0.0, np.array([0.0, 300.0]), np.zeros(2), None, np.ones(2))
    assert reading_steps_arcsec([two, still], USUAL) == [0.0, 0.0]


def brute_force(minutes, offsets, step, scatter, rates, origins):
    """Mean and variance of the rate by every line within half a division of every reading."""
    line = origins[:, None, None] + rates[None, :, None] * (minutes - minutes.mean())
    allowed = (np.abs(offsets - line) <= 0.5 * step + scatter).all(axis=2).sum(axis=0)
    share = allowed / allowed.sum()
    mean = share @ rates
    return mean, share @ (rates - mean) ** 2


@pytest.mark.parametrize("rate", [0.3, 1.7, -4.2])
def test_exactly_rounded_readings_allow_what_all_their_limits_allow(rate):
    minutes = np.arange(0.0, 10.0, 0.25)
    offsets = 10.0 * np.round((rate * minutes + 2.3) / 10.0)
    assert is_coarse(minutes, offsets, np.zeros(minutes.size, dtype=np.intp), 10.0)
    nothing = np.zeros(minutes.size)
    mean, variance = rate_of_rounded(
        minutes, offsets, nothing, np.zeros(minutes.size, dtype=np.intp), 10.0
    )
    wide = rate + np.linspace(-3.0, 3.0, 1201)
    origins = offsets.mean() + np.linspace(-10.0, 10.0, 401)
    expected, spread = brute_force(minutes, offsets, 10.0, 0.3, wide, origins)
    assert mean == pytest.approx(expected, abs=0.5 * np.sqrt(spread) + 0.05)
    assert np.sqrt(variance) == pytest.approx(np.sqrt(spread), rel=0.6)
    assert abs(mean - rate) < 2.5 * np.sqrt(variance)


def test_ordinary_readings_are_not_taken_for_coarse_ones():
    rng = np.random.default_rng(2)
    minutes = np.arange(0.0, 6.0, 1.0 / 30.0)
    offsets = np.round(0.7 * rng.normal(size=minutes.size), 1)
    assert not is_coarse(minutes, offsets, np.zeros(minutes.size, dtype=np.intp), 0.1)
    assert not is_coarse(minutes, np.round(offsets), np.zeros(minutes.size, dtype=np.intp), 1.0)


@pytest.mark.parametrize("division", [1.0, 5.0, 10.0])
@pytest.mark.parametrize("every_s", [1.0, 10.0, 30.0])
def test_plateaus_are_neither_bumps_nor_gusts(make_leg, air, division, every_s):
    legs = []
    for number, hour_angle_deg in enumerate((1.0, 75.0)):
        fine = make_leg(
            SITE, hour_angle_deg, 6.0, -8.0, interval_s=every_s, noise_arcsec=0.1 * division,
            minutes=10.0, seed=number,
        )  # fmt: skip
        rounded = np.round(fine.north_arcsec / division) * division
        legs.append(Leg(fine.label, fine.ra_deg, fine.dec_deg, fine.utc_s, rounded))
    solution = solve(legs, SITE, air)
    assert not any(leg.steps or leg.rejected.any() for leg in solution.legs)
    half_width = solution.azimuth_interval_factor * solution.azimuth_sigma_arcmin
    assert abs(solution.azimuth_error_arcmin - 6.0) < 1.5 * half_width
