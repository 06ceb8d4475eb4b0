from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.sky.horizon import Horizon, UnusableHorizon, parse

HILL = Horizon.through([(350.0, 10.0), (30.0, 20.0), (90.0, 0.0), (180.0, 5.0)])


def test_straight_between_points_and_through_north() -> None:
    assert HILL.limit_deg([350.0, 10.0, 30.0, 60.0]) == pytest.approx([10.0, 15.0, 20.0, 10.0])
    assert HILL.limit_deg(0.0) == pytest.approx(12.5)
    assert HILL.limit_deg([360.0, -10.0, 710.0]) == pytest.approx([12.5, 10.0, 10.0])


def test_clear_is_above_the_skyline() -> None:
    clear = HILL.is_clear([0.0, 0.0, 60.0], [12.6, 12.5, 45.0])
    assert clear.tolist() == [True, False, True]
    assert HILL.is_clear(np.zeros((3, 1)), np.array([0.0, 20.0])).shape == (3, 2)
    assert HILL.is_clear(90.0, 0.1).shape == ()


def test_flat_and_single_points() -> None:
    assert Horizon.flat().limit_deg([0.0, 200.0]).tolist() == [0.0, 0.0]
    assert bool(Horizon.flat().is_clear(10.0, 0.1))
    assert Horizon.through([(77.0, 15.0)]).limit_deg([0.0, 77.0, 300.0]).tolist() == [15.0] * 3


def test_upright_edges() -> None:
    house = parse("100 5\n100 40\n140 40\n140 5")
    assert house.limit_deg([99.0, 101.0, 139.0, 141.0]) == pytest.approx([5.0, 40.0, 40.0, 5.0])


def test_a_panorama_from_0_to_360_has_its_ends_on_the_right_sides() -> None:
    ends = Horizon.through([(0.0, 10.0), (180.0, 0.0), (360.0, 20.0)])
    assert ends.limit_deg([359.999, 0.001]) == pytest.approx([20.0, 10.0], abs=0.01)


@pytest.mark.parametrize(
    "text",
    ["10 5\n200 12.5", "10, 5\n200, 12.5", "10;5\r\n200;12,5", "10\t5 | 200\t12.5",
     "# seen\n\n200: 12.5°  # the barn\n10° 5°", "10,5\n200,12.5", "10/5|200/12,5",
     "10 +5|200 12.5"],
)  # fmt: skip
def test_pairs_are_read_in_many_forms(text: str) -> None:
    found = parse(text)
    assert found.azimuth_deg.tolist() == [10.0, 200.0]
    assert found.altitude_deg.tolist() == [5.0, 12.5]


def test_decimal_commas_and_valleys() -> None:
    assert parse("12,5 −3,25").altitude_deg.tolist() == [-3.25]
    assert parse("12,5 −3,25").azimuth_deg.tolist() == [12.5]
    assert parse("").azimuth_deg.size == 0
    assert parse("360 4").azimuth_deg.tolist() == [0.0]


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("10 5\nnorth 3", "Line 2 of the horizon, “north 3”"),
        ("400 5", "azimuth 400° is not between 0 and 360"),
        ("10 95", "the azimuth goes first"),
        ("5", "write two numbers"),
        ("1 2 3", "write two numbers"),
        ("10 nan", "write two numbers"),
    ],
)
def test_what_is_wrong_is_said_with_its_line(text: str, words: str) -> None:
    with pytest.raises(UnusableHorizon, match=words):
        parse(text)


@pytest.mark.parametrize("point", [(float("nan"), 1.0), (1.0, float("inf")), (-1.0, 0.0)])
def test_drawn_points_are_checked_too(point: tuple[float, float]) -> None:
    with pytest.raises(UnusableHorizon):
        Horizon.through([point])


@given(
    st.lists(
        st.tuples(st.integers(0, 35999).map(lambda n: n / 100.0),
                  st.integers(-3000, 9000).map(lambda n: n / 100.0)),
        max_size=12, unique_by=lambda point: point[0],
    )
)  # fmt: skip
def test_what_is_written_is_read_back(points: list[tuple[float, float]]) -> None:
    skyline = Horizon.through(points)
    again = parse(skyline.as_text())
    assert again.azimuth_deg == pytest.approx(skyline.azimuth_deg)
    assert again.altitude_deg == pytest.approx(skyline.altitude_deg)
    limits = skyline.limit_deg(np.arange(0.0, 360.0, 7.0))
    if points:
        heights = [altitude for _, altitude in points]
        assert min(heights) - 1e-9 <= limits.min() <= limits.max() <= max(heights) + 1e-9


@given(st.text(max_size=60))
def test_any_text_is_a_skyline_or_a_sentence(text: str) -> None:
    said = "."
    try:
        parse(text)
    except UnusableHorizon as problem:
        said = str(problem)
    assert said.endswith(".")
