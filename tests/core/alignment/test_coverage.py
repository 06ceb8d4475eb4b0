"""The printed ± is earned: coverage and efficiency over simulated nights with a wandering image.

Image motion of 0.7″ rms per 2 s reading with correlation times of 1 to 5 s: common practice for
2.5″ seeing, no source. The floor is the Cramér-Rao bound for exactly that noise.
"""

from dataclasses import replace
from functools import cache

import numpy as np
import pytest

from core.alignment.axis.priors import NONE
from core.alignment.geometry import ARCMIN_PER_RAD
from core.alignment.solution import solve
from core.alignment.track import Track
from tests.truth.night import random_night, wandering

NIGHTS, REPEATS = 40, 16
RMS_ARCSEC, INTERVAL_S = 0.7, 2.0


def floor_arcmin(night, correlation_time_s):
    """Cramér-Rao standard deviations (2,) of azimuth and altitude error."""
    information = np.zeros((2, 2))
    axis = np.array([night.azimuth_error_arcmin, night.altitude_error_arcmin]) / ARCMIN_PER_RAD
    for leg in night.legs:
        _, slopes = Track.of(leg, night.site, night.air).path(leg.utc_s).linearised(axis)
        columns = np.column_stack([slopes, np.ones(leg.utc_s.size)])
        lag = np.abs(leg.utc_s[:, np.newaxis] - leg.utc_s)
        noise = RMS_ARCSEC**2 * np.exp(-lag / correlation_time_s)
        full = columns.T @ np.linalg.solve(noise, columns)
        information += full[:2, :2] - np.outer(full[:2, 2], full[2, :2]) / full[2, 2]
    return np.sqrt(np.diag(np.linalg.inv(information))) * ARCMIN_PER_RAD


@cache
def outcomes():
    """Errors over the floor, and whether the 95 % interval held, (nights × repeats, 2) each."""
    rng = np.random.default_rng(20261124)
    ratios, held = [], []
    for _ in range(NIGHTS):
        night = random_night(rng)
        correlation_time_s = rng.uniform(1.0, 5.0)
        floor = floor_arcmin(night, correlation_time_s)
        truth = np.array([night.azimuth_error_arcmin, night.altitude_error_arcmin])
        for _ in range(REPEATS):
            legs = [
                replace(
                    leg,
                    north_arcsec=leg.north_arcsec
                    + wandering(rng, leg.utc_s.size, INTERVAL_S, correlation_time_s, RMS_ARCSEC),
                )
                for leg in night.legs
            ]
            found = solve(legs, night.site, night.air, priors=NONE)
            error = np.array([found.azimuth_error_arcmin, found.altitude_error_arcmin]) - truth
            half_width = np.array(
                [
                    found.azimuth_interval_factor * found.azimuth_sigma_arcmin,
                    found.altitude_interval_factor * found.altitude_sigma_arcmin,
                ]
            )
            ratios.append(error / floor)
            held.append(np.abs(error) <= half_width)
    return np.array(ratios), np.array(held)


@pytest.mark.parametrize("axis", [0, 1], ids=["azimuth", "altitude"])
def test_95_percent_intervals_hold_the_truth_in_93_to_97_percent_of_nights(axis):
    _, held = outcomes()
    assert 0.93 <= held[:, axis].mean() <= 0.97


@pytest.mark.parametrize("axis", [0, 1], ids=["azimuth", "altitude"])
def test_the_spread_is_close_to_the_cramer_rao_floor(axis):
    ratios, _ = outcomes()
    assert np.sqrt(np.mean(ratios[:, axis] ** 2)) < 1.15
