"""Strokes of a pen over a skyline."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.sky.horizon import PEN_DEG, Horizon, parse, raised, redrawn

AROUND = np.arange(0.25, 360.0, 0.5)


def test_a_touch_on_a_flat_horizon_raises_one_pen_width():
    drawn = redrawn(Horizon.flat(), [(135.0, 20.0)])
    inside = np.abs(AROUND - 135.0) < PEN_DEG / 2.0
    assert drawn.limit_deg(AROUND[inside]) == pytest.approx(20.0)
    assert drawn.limit_deg(AROUND[~inside]) == pytest.approx(0.0, abs=1e-4)


def test_a_slope_is_followed_and_the_rest_stays():
    before = redrawn(Horizon.flat(), [(300.0, 40.0)])
    drawn = redrawn(before, [(100.0, 10.0), (140.0, 30.0)])
    assert drawn.limit_deg(120.0) == pytest.approx(20.0, abs=0.6)
    assert drawn.limit_deg(300.0) == pytest.approx(40.0)


def test_drawn_from_either_side_it_is_the_same_slope():
    ahead = redrawn(Horizon.flat(), [(100.0, 10.0), (140.0, 30.0)])
    back = redrawn(Horizon.flat(), [(140.0, 30.0), (100.0, 10.0)])
    middle = np.arange(103.0, 137.0)
    assert ahead.limit_deg(middle) == pytest.approx(back.limit_deg(middle), abs=0.6)


def test_later_counts_where_the_pen_goes_twice():
    drawn = redrawn(Horizon.flat(), [(90.0, 50.0), (100.0, 50.0), (90.0, 5.0)])
    assert drawn.limit_deg(90.0) == pytest.approx(5.0, abs=0.5)


def test_the_edges_of_the_panorama_leave_the_other_side_of_north():
    drawn = redrawn(Horizon.flat(), [(350.0, 15.0), (360.0, 15.0)])
    assert drawn.limit_deg(359.0) == pytest.approx(15.0)
    assert drawn.limit_deg(1.0) == pytest.approx(0.0, abs=1e-4)


def test_the_whole_circle_at_once():
    drawn = redrawn(parse("90 40"), [(0.0, 12.0), (360.0, 12.0)])
    assert drawn.limit_deg(AROUND) == pytest.approx(12.0)


def test_raised_steps_add_up_and_stop_at_the_ground_and_the_zenith():
    twice = raised(raised(Horizon.flat(), 0.0, 1.0), 0.0, 1.0)
    assert twice.limit_deg(0.0) == pytest.approx(2.0)
    assert raised(twice, 0.0, -9.0).limit_deg(0.0) == pytest.approx(0.0)
    assert raised(twice, 0.0, 200.0).limit_deg(0.0) == pytest.approx(90.0)


@given(st.lists(st.tuples(st.floats(0.0, 360.0), st.floats(-20.0, 120.0)), min_size=1, max_size=8))
def test_any_stroke_gives_a_horizon_that_survives_its_text(stroke):
    drawn = redrawn(parse("10 3\n80 25\n200 7"), stroke)
    again = parse(drawn.as_text())
    # Edges may move by the hundredth of a degree that the text keeps.
    away = np.min(np.abs(AROUND[:, None] - drawn.azimuth_deg[None, :]), axis=1) > 0.02
    assert again.limit_deg(AROUND[away]) == pytest.approx(drawn.limit_deg(AROUND[away]), abs=0.9)
