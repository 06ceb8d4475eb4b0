"""Gusts are set aside, steps are found and bridged, and calm nights are left alone."""

from dataclasses import replace

import numpy as np
import pytest

from core.alignment.axis.solution import solve
from core.alignment.drift.noise import set_aside
from core.sky.site import Site
from tests.truth.night import wandering

SITE = Site(48.0, 11.0, 500.0)


def with_north(leg, north_arcsec):
    return replace(leg, north_arcsec=north_arcsec)


@pytest.mark.parametrize("interval_s", [2.0, 0.5])  # without and with grouping of readings
def test_a_step_is_found_measured_and_bridged(make_leg, air, interval_s):
    calm = [
        make_leg(SITE, 2.0, 25.0, -40.0),
        make_leg(SITE, -80.0, 25.0, -40.0, seed=2, interval_s=interval_s),
    ]
    north = calm[1].north_arcsec.copy()
    bumped_at = north.size // 3
    north[bumped_at:] += 8.0
    solution = solve([calm[0], with_north(calm[1], north)], SITE, air)
    (step,) = solution.legs[1].steps
    assert step.utc_s == pytest.approx(calm[1].utc_s[bumped_at], abs=2.0)
    assert abs(step.size_arcsec - 8.0) < 3.0 * step.sigma_arcsec
    assert abs(solution.altitude_error_arcmin + 40.0) < 3.0 * solution.altitude_sigma_arcmin
    assert any(note.code.value == "step" and "8" in str(note) for note in solution.notes)


def test_two_steps_are_both_found(make_leg, air):
    leg = make_leg(SITE, -80.0, 5.0, 5.0, minutes=8.0)
    north = leg.north_arcsec.copy()
    north[80:] -= 9.0
    north[160:] += 7.0
    other = make_leg(SITE, 2.0, 5.0, 5.0, seed=3)
    solution = solve([other, with_north(leg, north)], SITE, air)
    sizes = [step.size_arcsec for step in solution.legs[1].steps]
    assert sizes == pytest.approx([-9.0, 7.0], abs=1.5)


def test_calm_legs_hardly_ever_show_a_step(make_leg, air):
    false = 0
    for seed in range(100):
        rng = np.random.default_rng(seed)
        legs = [make_leg(SITE, angle, 10.0, 10.0, noise_arcsec=0.0) for angle in (2.0, -80.0)]
        legs = [
            with_north(
                leg,
                leg.north_arcsec + wandering(rng, leg.utc_s.size, 2.0, rng.uniform(1.0, 5.0), 0.7),
            )
            for leg in legs
        ]
        false += sum(len(leg.steps) for leg in solve(legs, SITE, air).legs)
    assert false <= 2  # of 200 legs


def test_gusts_are_set_aside_and_change_nothing_much(make_leg, air):
    calm = [make_leg(SITE, 2.0, 25.0, -40.0), make_leg(SITE, -80.0, 25.0, -40.0, seed=2)]
    north = calm[1].north_arcsec.copy()
    thrown = [20, 21, 22, 100, 150, 151]
    north[thrown] += np.array([12.0, -15.0, 9.0, 30.0, -8.0, 11.0])
    solution = solve([calm[0], with_north(calm[1], north)], SITE, air)
    undisturbed = solve(calm, SITE, air)
    assert set(np.flatnonzero(solution.legs[1].rejected)) == set(thrown)
    moved = abs(solution.altitude_error_arcmin - undisturbed.altitude_error_arcmin)
    assert moved < 0.5 * undisturbed.altitude_sigma_arcmin


def test_a_steep_drift_is_no_gust():
    utc_s = np.arange(0.0, 300.0, 2.0)
    rng = np.random.default_rng(4)
    north = 0.5 * utc_s + wandering(rng, utc_s.size, 2.0, 2.0, 0.7)  # 30″ a minute
    assert not set_aside(utc_s, north).any()


def test_readings_rounded_to_whole_divisions_are_kept():
    utc_s = np.arange(0.0, 600.0, 10.0)
    north = np.round(0.02 * utc_s / 5.0) * 5.0
    assert not set_aside(utc_s, north).any()


def test_a_leg_that_bends_against_its_star_is_said(make_leg, air):
    legs = [make_leg(SITE, 2.0, 10.0, 10.0), make_leg(SITE, -80.0, 10.0, 10.0, seed=2)]
    assert not any(note.code.value == "bends" for note in solve(legs, SITE, air).notes)
    minutes = (legs[1].utc_s - legs[1].utc_s.mean()) / 60.0
    bent = with_north(legs[1], legs[1].north_arcsec + 0.6 * minutes**2)
    notes = solve([legs[0], bent], SITE, air).notes
    assert any(note.code.value == "bends" and legs[1].label in str(note) for note in notes)


@pytest.mark.parametrize("count", [7, 9, 11, 14, 19])
def test_a_few_honest_readings_are_hardly_ever_called_a_gust(count):
    rng = np.random.default_rng(count)
    utc_s = 20.0 * np.arange(count)
    alarms = [set_aside(utc_s, rng.normal(size=count)).any() for _ in range(1500)]
    assert np.mean(alarms) < 0.015
    thrown = rng.normal(size=count)
    thrown[count // 2] += 40.0
    assert set_aside(utc_s, thrown).nonzero()[0].tolist() == [count // 2]


def test_a_few_missing_east_offsets_change_nothing(make_leg, air):
    site = Site(48.0, 11.0)
    legs = [make_leg(site, 1.0, 20.0, 12.0), make_leg(site, -75.0, 20.0, 12.0, seed=2)]
    minutes = [(leg.utc_s - leg.utc_s[0]) / 60.0 for leg in legs]
    whole = [
        replace(leg, east_arcsec=10.0 * np.sin(2.0 * np.pi * minute / 7.0))
        for leg, minute in zip(legs, minutes, strict=True)
    ]
    holed = [replace(leg, east_arcsec=leg.east_arcsec.copy()) for leg in whole]
    for leg in holed:
        leg.east_arcsec[[3, 4, 50]] = np.nan
    with_all, with_most, without = (solve(one, site, air) for one in (whole, holed, legs))
    told = [(one.azimuth_error_arcmin, one.azimuth_sigma_arcmin) for one in (with_all, with_most)]
    assert told[1] == pytest.approx(told[0], abs=0.01)
    assert without.azimuth_sigma_arcmin > 1.05 * with_all.azimuth_sigma_arcmin
