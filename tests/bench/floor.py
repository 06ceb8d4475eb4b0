"""The least watching that could bring the axis within the target in the tests' own air."""

from __future__ import annotations

import numpy as np
from scipy.linalg import solve_toeplitz

from tests.bench.simulated_nights import NOISE_ARCSEC, TARGET_ARCMIN
from tests.truth import imagemotion
from tests.truth.imagemotion import READING_S

NIGHTS, MOST_READINGS = 40, 450
PER_MINUTE = 0.26252  # arcsec per minute and arcmin: derived, elementary


def floor_minutes(chance: float, wander_arcsec: float) -> float:
    """Watching time at which even the Cramér-Rao bound leaves this chance of meeting the target.

    Two stars across in the zenith, equally long, the hand perfect, the air's spectrum known; radius
    after Rayleigh.
    """
    wanted = PER_MINUTE * TARGET_ARCMIN / np.sqrt(-2.0 * np.log(1.0 - chance))
    covariance = _covariance(wander_arcsec)
    number = next(n for n in range(8, MOST_READINGS) if _rate_error(covariance, n) <= wanted)
    return 2.0 * number * READING_S / 60.0


def _covariance(wander_arcsec: float) -> np.ndarray:
    """Of north readings at lags of 0, 1, 2 … (n,), arcsec², in the mean of nights."""
    rng = np.random.default_rng(1)
    nights = [
        imagemotion.fast_covariance(imagemotion.layers(rng), MOST_READINGS)[:, 1]
        for _ in range(NIGHTS)
    ]
    slow = imagemotion.wander_correlation(READING_S * np.arange(MOST_READINGS))
    return NOISE_ARCSEC**2 * np.mean(nights, axis=0) + wander_arcsec**2 * slow


def _rate_error(covariance: np.ndarray, number: int) -> float:
    """Standard deviation of the drift rate, arcsec per minute, from so many readings."""
    minutes = READING_S / 60.0 * np.arange(number)
    columns = np.column_stack([np.ones(number), minutes])
    information = columns.T @ solve_toeplitz(covariance[:number], columns)
    return float(np.sqrt(np.linalg.inv(information)[1, 1]))
