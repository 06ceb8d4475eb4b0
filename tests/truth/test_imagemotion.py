"""The tests' own air: its motion is as large and remembers as long as is said."""

import numpy as np
import pytest

from tests.truth import imagemotion


def test_fast_motion_has_the_size_and_memory_of_its_spectrum():
    rng = np.random.default_rng(1)
    layers = imagemotion.layers(rng)
    nights = [imagemotion.fast(rng, layers, 600, 0.6) for _ in range(100)]
    stated = 0.36 * imagemotion.fast_covariance(layers, 3)
    for lag in range(3):
        pairs = [(one[: 600 - lag] * one[lag:]).mean(axis=0) for one in nights]
        assert np.mean(pairs, axis=0) == pytest.approx(stated[lag], abs=0.012)
    assert stated[0].mean() == pytest.approx(0.36)


def test_fast_motion_is_correlated_and_soon_forgets():
    rng = np.random.default_rng(2)
    left = np.mean(
        [imagemotion.fast_covariance(imagemotion.layers(rng), 6) for _ in range(50)], axis=0
    )
    assert (left[1] > 0.1 * left[0]).all()
    assert (np.abs(left[5]) < 0.05 * left[0]).all()


def test_the_slow_wander_forgets_to_a_third_in_150_seconds():
    rng = np.random.default_rng(3)
    utc_s = 1.797e9 + np.arange(0.0, 600.0, 2.0)
    fields = [imagemotion.wander(rng, utc_s, 0.17) for _ in range(1500)]
    assert np.std(fields) == pytest.approx(0.17, rel=0.03)
    kept = np.mean([(one[0] * one[75]).mean() for one in fields]) / 0.17**2
    assert kept == pytest.approx(float(imagemotion.wander_correlation([150.0])[0]), abs=0.08)
    assert imagemotion.wander_correlation([0.0, 150.0]) == pytest.approx(
        [1.0, np.exp(-1.0)], abs=0.03
    )
