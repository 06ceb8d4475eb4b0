"""The pointing error to expect, against mounts simulated with exact rotations and fitted freely.

The truth: a mount whose base is turned by an exact rotation, with a cone and axes not square; its
circles are read at the stars with errors; scipy fits its own six terms to them.
"""

from __future__ import annotations

import numpy as np
import pytest
from scipy.optimize import least_squares
from scipy.spatial.transform import Rotation

from core.night.setupstars import Uncertainty, covariance, effects, error_arcmin, mean_error_arcmin

KNOWN = Uncertainty(15.0, 30.0, 30.0, 8.0, 4.0, 1.5)
SIGMA_ARCMIN = np.array([15.0, 15.0, 30.0, 30.0, 8.0, 4.0])
STARS_DEG = np.array([[40.0, 35.0], [150.0, 60.0], [260.0, 25.0]])
PLACES_DEG = np.array([[10.0, 30.0], [100.0, 70.0], [200.0, 45.0], [300.0, 20.0], [60.0, 80.0]])
TRIALS = 400


def circles_deg(terms_arcmin: np.ndarray, sky_deg: np.ndarray) -> np.ndarray:
    """Where the circles of a wrong mount stand when it points at `sky_deg` (n, 2)."""
    longitude, latitude = np.radians(sky_deg).T
    vector = np.stack(
        [
            np.cos(latitude) * np.cos(longitude),
            np.cos(latitude) * np.sin(longitude),
            np.sin(latitude),
        ],
        axis=-1,
    )
    terms = np.radians(terms_arcmin / 60.0)
    x, y, z = Rotation.from_rotvec(terms[:3]).apply(vector).T
    beta = np.arcsin(z)
    along = terms[4] / np.cos(beta) + terms[5] * np.tan(beta)
    return np.degrees(np.stack([np.arctan2(y, x) + along, beta + terms[3]], axis=-1))


def on_sky_arcmin(difference_deg: np.ndarray, sky_deg: np.ndarray) -> np.ndarray:
    turned = (difference_deg + 180.0) % 360.0 - 180.0
    turned[:, 0] *= np.cos(np.radians(sky_deg[:, 1]))
    return turned * 60.0


def fitted(read_deg: np.ndarray) -> np.ndarray:
    def residuals(terms: np.ndarray) -> np.ndarray:
        misses = on_sky_arcmin(read_deg - circles_deg(terms, STARS_DEG), STARS_DEG)
        return np.concatenate([misses.ravel() / KNOWN.star_arcmin, terms / SIGMA_ARCMIN])

    return least_squares(residuals, np.zeros(6)).x


def test_expected_error_is_the_one_that_simulated_mounts_make() -> None:
    random = np.random.default_rng(7)
    squares = np.zeros(len(PLACES_DEG))
    for _ in range(TRIALS):
        terms = random.normal(0.0, SIGMA_ARCMIN)
        noise = random.normal(0.0, KNOWN.star_arcmin / 60.0, STARS_DEG.shape)
        noise[:, 0] /= np.cos(np.radians(STARS_DEG[:, 1]))
        found = fitted(circles_deg(terms, STARS_DEG) + noise)
        misses = circles_deg(found, PLACES_DEG) - circles_deg(terms, PLACES_DEG)
        squares += np.sum(on_sky_arcmin(misses, PLACES_DEG) ** 2, axis=1)
    seen = np.sqrt(squares / TRIALS)
    stars, places = effects(*np.radians(STARS_DEG).T), effects(*np.radians(PLACES_DEG).T)
    expected = error_arcmin(places, covariance(stars, KNOWN))
    assert seen == pytest.approx(expected, rel=0.12)  # 400 trials: 2.5 to 3.5 % each


def test_more_stars_never_point_worse_and_mean_is_over_the_places() -> None:
    stars, places = effects(*np.radians(STARS_DEG).T), effects(*np.radians(PLACES_DEG).T)
    two, three = covariance(stars[:2], KNOWN), covariance(stars, KNOWN)
    assert np.all(error_arcmin(places, three) <= error_arcmin(places, two))
    both = mean_error_arcmin(places, np.stack([two, three]))
    assert both[0] == pytest.approx(np.sqrt(np.mean(error_arcmin(places, two) ** 2)))
    assert both[1] < both[0]


def test_a_cone_shows_only_after_changing_sides() -> None:
    """Same star, both sides of the pier: the cone is then known to the error of the stars."""
    star = np.radians([30.0, 0.0])
    both_sides = effects(star[[0, 0]], star[[1, 1]], np.array([1.0, -1.0]))
    one_side = effects(star[[0, 0]], star[[1, 1]])
    cone = [np.sqrt(covariance(stars, KNOWN)[4, 4]) for stars in (both_sides, one_side)]
    assert cone[0] == pytest.approx(KNOWN.star_arcmin / np.sqrt(2.0), rel=0.05)
    assert cone[1] > 0.9 * KNOWN.cone_arcmin
