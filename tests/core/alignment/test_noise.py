"""The quick inverse of correlated noise against numpy's dense one."""

import numpy as np
import pytest

from core.alignment.drift.linefit import fit_line
from core.alignment.drift.noise import Gram, Groups, NoiseGrid, weights
from tests.truth.night import wandering


def groups_at(utc_s, north_arcsec, count=None, sigma=None):
    number = np.ones(utc_s.size) if count is None else count
    part = np.zeros(utc_s.size, dtype=np.intp)
    return Groups(utc_s, north_arcsec, number, part, sigma)


@pytest.mark.parametrize("stated", [False, True])
def test_the_quick_inverse_is_the_inverse(stated):
    rng = np.random.default_rng(1)
    utc_s = np.sort(rng.uniform(0.0, 400.0, 60))
    count = rng.integers(1, 5, 60).astype(float)
    sigma = rng.uniform(0.5, 2.0, 60) if stated else None
    groups = groups_at(utc_s, np.zeros(60), count, sigma)
    columns = rng.normal(size=(60, 4))
    grid = NoiseGrid.for_durations([400.0])
    gram = Gram.of(groups, columns, grid)
    spread = sigma**2 / np.mean(sigma**2) if stated else count.mean() / count
    for g, (time_s, share) in enumerate(
        zip(grid.correlation_time_s, grid.independent_fraction, strict=True)
    ):
        lag_s = np.abs(utc_s[:, np.newaxis] - utc_s)
        memory = np.exp(-lag_s / time_s) if time_s else np.zeros((60, 60))
        dense = (1.0 - share) * memory + share * np.diag(spread)
        expected = columns.T @ np.linalg.solve(dense, columns)
        np.testing.assert_allclose(gram.matrix[g], expected, rtol=1e-8, atol=1e-8)
        assert gram.log_det[g] == pytest.approx(np.linalg.slogdet(dense)[1], abs=1e-8)


def test_readings_of_the_same_moment_do_no_harm():
    utc_s = np.array([0.0, 0.0, 10.0, 10.0, 20.0, 30.0])
    groups = groups_at(utc_s, np.array([0.0, 0.3, 0.1, -0.2, 0.4, 0.2]))
    columns = np.column_stack([np.ones(6), utc_s, groups.north_arcsec])
    gram = Gram.of(groups, columns, NoiseGrid.for_durations([30.0]))
    assert np.isfinite(gram.matrix).all()


def test_the_weights_find_the_memory_of_the_noise():
    rng = np.random.default_rng(5)
    utc_s = np.arange(0.0, 900.0, 2.0)
    grid = NoiseGrid.for_durations([900.0])
    for time_s in (0.5, 4.0, 16.0):
        groups = groups_at(utc_s, wandering(rng, utc_s.size, 2.0, time_s, 0.7))
        line = fit_line(groups, groups.north_arcsec, np.empty((utc_s.size, 0)), grid)
        weight = weights([line.log_likelihood])
        found_s = float(weight @ grid.correlation_time_s)
        assert found_s == pytest.approx(time_s, rel=0.6, abs=0.6)
