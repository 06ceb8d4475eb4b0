"""Legs that cannot be right together are named, never averaged; truth: `tests.truth.watched`."""

from dataclasses import replace

import numpy as np
import pytest

from core.alignment.axis.legset import CHANCE
from core.alignment.axis.solution import solve
from core.alignment.goal import Aim
from core.alignment.guide.judgement import minutes_left
from core.alignment.words import advise
from tests.truth.watched import air_motion, hard_night

MERIDIAN, EAST, WEST = (-3.0, 3.0), (-90.0, -70.0), (70.0, 90.0)
AXIS = (12.0, -9.0)  # arcmin: both far beyond any ± of six minutes


def night(seed, ranges, axis=AXIS):
    rng = np.random.default_rng(seed)
    night = hard_night(rng, ranges, axis, 6.0, 2.0, rng.choice([-1.0, 1.0]) * 48.0)
    return night, [star.leg(star.north + air_motion(rng, star.utc_s)) for star in night.stars]


def exchanged(leg):
    return replace(leg, north_arcsec=-leg.north_arcsec)


def off_by_half_widths(solution, night):
    return max(
        abs(getattr(solution, f"{one}_error_arcmin") - getattr(night, f"{one}_error_arcmin"))
        / getattr(solution, f"{one}_interval_factor")
        / getattr(solution, f"{one}_sigma_arcmin")
        for one in ("azimuth", "altitude")
    )


@pytest.mark.parametrize("seed", range(6))
def test_of_two_legs_of_one_star_drifting_both_ways_no_error_is_told(seed):
    made, legs = night(seed, (MERIDIAN, MERIDIAN))
    legs[1] = exchanged(legs[1])
    solution = solve(legs, made.site, made.air)
    assert solution.contradicting_labels == ("1", "2")
    assert solution.is_contradictory
    assert not solution.azimuth_determined
    assert not solution.altitude_determined
    assert solution.combination is None
    advice = advise(solution, Aim.TRUE_POLE)
    assert "contradict" in advice.azimuth
    assert not advice.azimuth_turn
    assert any("no error of the axis is told" in limit for limit in advice.limits)
    assert not any(note.code.value == "bends" for note in solution.notes)
    assert minutes_left(solution, "2", 1.0).minutes is None


@pytest.mark.parametrize("seed", range(6))
def test_the_odd_one_of_many_is_found_left_out_and_said(seed):
    made, legs = night(seed, (MERIDIAN, EAST, MERIDIAN, WEST, MERIDIAN, EAST))
    legs[2] = exchanged(legs[2])
    solution = solve(legs, made.site, made.air)
    assert solution.contradicting_labels == ("3",)
    assert solution.contradiction.left_out == (2,)
    assert solution.contradiction.exchanged == (2,)
    assert solution.determined
    assert off_by_half_widths(solution, made) < 1.5
    assert any("“3”" in str(note) and note.leg == "3" for note in solution.notes)
    assert not solution.information_arcmin2[2].any()


@pytest.mark.parametrize("seed", range(4))
def test_a_pair_against_another_names_all_four(seed):
    made, legs = night(seed, (MERIDIAN, MERIDIAN, MERIDIAN, MERIDIAN))
    legs[0], legs[3] = exchanged(legs[0]), exchanged(legs[3])
    solution = solve(legs, made.site, made.air)
    assert solution.contradicting_labels == ("1", "2", "3", "4")
    assert solution.is_contradictory


@pytest.mark.parametrize("seed", range(4))
def test_of_two_on_the_meridian_that_disagree_the_one_in_the_east_is_not_named(seed):
    made, legs = night(seed, (MERIDIAN, EAST, MERIDIAN))
    moved = legs[2].north_arcsec + 0.1 * (legs[2].utc_s - legs[2].utc_s[0])  # another star
    legs[2] = replace(legs[2], north_arcsec=moved)
    solution = solve(legs, made.site, made.air)
    assert solution.contradicting_labels == ("1", "3")


def test_three_legs_that_disagree_are_all_named():
    made, legs = night(1, (MERIDIAN, EAST, (-50.0, -40.0)))
    moved = legs[2].north_arcsec + 0.05 * (legs[2].utc_s - legs[2].utc_s[0])
    legs[2] = replace(legs[2], north_arcsec=moved)
    assert solve(legs, made.site, made.air).contradicting_labels == ("1", "2", "3")


def test_legs_that_agree_are_hardly_ever_alarmed_about():
    alarms = 0
    for seed in range(60):
        axis = np.random.default_rng(seed).uniform(-30.0, 30.0, 2)
        made, legs = night(seed, (MERIDIAN, EAST, MERIDIAN, WEST), axis)
        alarms += solve(legs, made.site, made.air).contradiction is not None
    assert CHANCE <= 0.01
    assert alarms <= 1


@pytest.mark.parametrize("apart_deg", [4.0, 8.0, 12.0])
def test_stars_a_few_degrees_apart_may_differ_as_the_axis_lets_them(apart_deg):
    # Far off the axis the small difference of their hour angles alone changes the drift.
    alarms = 0
    for seed in range(25):
        rng = np.random.default_rng(1000 + seed)
        first = rng.uniform(-60.0, 60.0)
        ranges = tuple((angle - 0.5, angle + 0.5) for angle in (first, first + apart_deg))
        made, legs = night(seed, ranges, rng.uniform(-60.0, 60.0, 2))
        solution = solve(legs, made.site, made.air)
        alarms += solution.contradiction is not None
        one = solution.combination
        if one is not None:
            truth = (
                one.azimuth_weight
                * made.azimuth_error_arcmin
                * np.cos(np.deg2rad(made.site.latitude_deg))
                + one.altitude_weight * made.altitude_error_arcmin
            )
            assert abs(truth - one.value_arcmin) < 3.0 * one.half_width_arcmin
    assert alarms <= 1
