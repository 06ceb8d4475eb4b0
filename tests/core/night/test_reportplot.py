"""Ticks are round, thinning keeps the mean, and no data breaks a plot."""

from __future__ import annotations

from xml.etree import ElementTree

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.night.reportplot import Plot, PlotSeries, thinned, ticks


@given(st.floats(-1e6, 1e6), st.floats(1e-3, 1e6))
def test_ticks_are_round_and_inside(low: float, wide: float) -> None:
    marks = ticks(low, low + wide)
    assert 2 <= len(marks) <= 8
    assert all(low - 1e-6 * wide <= mark <= low + wide * (1.0 + 1e-6) for mark in marks)
    steps = np.diff(marks)
    np.testing.assert_allclose(steps, steps[0], rtol=1e-6)
    leading = f"{steps[0]:.3e}"[:4]
    assert leading in ("1.00", "2.00", "5.00", "0.99", "9.99")


def test_thinning_uses_every_reading() -> None:
    x = np.arange(1000.0)
    y = np.random.default_rng(1).normal(size=1000)
    few_x, few_y = thinned(x, y, 250)
    assert few_x.size == 250
    assert few_y.mean() == pytest.approx(y.mean())
    assert few_x.mean() == pytest.approx(x.mean())
    assert thinned(x[:10], y[:10], 250)[0].size == 10


@pytest.mark.parametrize(
    "values", [[], [1.0], [5.0, 5.0], [np.nan, np.nan], [1e9, 1e9 + 1e-9], [0.0, np.nan, 2.0]]
)
def test_poor_data_still_draw(values: list[float]) -> None:
    array = np.array(values)
    plot = Plot(
        "p", "a < b", "x", "y", (PlotSeries(array, array, "s"), PlotSeries(array, array, "l", True))
    )
    text = plot.svg()
    assert ElementTree.fromstring(text) is not None
    assert "nan" not in text
    assert "inf" not in text


def test_the_picture_puts_points_where_the_axes_say() -> None:
    x, y = np.array([0.0, 10.0]), np.array([0.0, 100.0])
    tree = ElementTree.fromstring(Plot("p", "t", "x", "y", (PlotSeries(x, y, "s"),)).svg())
    space = "{http://www.w3.org/2000/svg}"
    circles = [(float(c.get("cx")), float(c.get("cy"))) for c in tree.iter(f"{space}circle")]
    labels = {
        "".join(t.itertext()): (float(t.get("x")), float(t.get("y")), t.get("text-anchor"))
        for t in tree.iter(f"{space}text")
    }
    assert circles[0][0] == pytest.approx(labels["0"][0] if labels["0"][2] == "middle" else 62.0)
    assert circles[1][0] == pytest.approx(labels["10"][0], abs=0.1)
    assert circles[1][1] == pytest.approx(labels["100"][1] - 4.0, abs=0.1)
