"""Thinning keeps every peak and the order of time."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.ui.curveplot import decimate, thinned


def _noisy(count: int) -> tuple[np.ndarray, np.ndarray]:
    random = np.random.default_rng(7)
    return np.sort(random.uniform(0.0, 100.0, count)), random.normal(size=count)


def test_a_short_line_comes_back_as_it_is() -> None:
    x, y = _noisy(50)
    thin_x, thin_y = decimate(x, y, -1.0, 101.0, 100)
    assert np.array_equal(thin_x, x)
    assert np.array_equal(thin_y, y)


@given(count=st.integers(1, 20_000), columns=st.integers(1, 800))
def test_peaks_survive_and_the_size_is_bounded(count: int, columns: int) -> None:
    x, y = _noisy(count)
    thin_x, thin_y = decimate(x, y, 0.0, 100.0, columns)
    assert (thin_y.min(), thin_y.max()) == (y.min(), y.max())
    assert len(thin_x) <= 4 * columns
    assert np.all(np.diff(thin_x) >= 0)


def test_one_spike_among_a_hundred_thousand_is_still_drawn() -> None:
    x = np.arange(100_000.0)
    y = np.zeros(100_000)
    y[54_321] = 9.0
    thin_x, thin_y = decimate(x, y, 0.0, 100_000.0, 500)
    assert thin_y.max() == 9.0
    assert abs(thin_x[thin_y.argmax()] - 54_321) <= 200  # within its column


def test_only_the_part_in_view_with_a_neighbour_on_either_side() -> None:
    x = np.arange(1000.0)
    thin_x, _ = decimate(x, x, 400.5, 403.5, 100)
    assert thin_x.tolist() == [400.0, 401.0, 402.0, 403.0, 404.0]


@pytest.mark.parametrize("count", [0, 1])
def test_hardly_anything_is_no_trouble(count: int) -> None:
    x = np.zeros(count)
    assert len(decimate(x, x, 0.0, 1.0, 100)[0]) == count


def test_a_dense_circle_keeps_its_ends_and_its_shape() -> None:
    turn = np.linspace(0.0, 2.0 * np.pi, 5000)
    x, y = thinned(100.0 * np.cos(turn), 100.0 * np.sin(turn), 3.0)
    assert 180 < len(x) < 230  # its length over 3
    assert (x[0], x[-1]) == pytest.approx((100.0, 100.0))
    assert np.max(np.hypot(np.diff(x), np.diff(y))) < 6.1
    assert np.hypot(x, y) == pytest.approx(100.0)
