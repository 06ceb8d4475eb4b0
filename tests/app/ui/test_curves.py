"""Pictures of curves as numbers, words and tables."""

import numpy as np
import pytest

from app.ui.curveplot import Curve, CurvePicture, CurvePlot, Ink, joined
from app.ui.text import Rows


def _picture(*curves: Curve) -> CurvePicture:
    return CurvePicture("Title", "x (s)", "y (″)", curves, y_words=lambda y: f"{y:.1f}″")


def test_thinning_keeps_every_peak() -> None:
    y = np.zeros(100_000)
    y[[12_345, 54_321]] = 7.0, -5.0
    thin = Curve("one", np.arange(100_000.0), y).thinned()
    assert thin.x.size < 10_000
    assert (thin.y.max(), thin.y.min()) == (7.0, -5.0)


def test_lines_of_one_name_are_drawn_as_one_with_gaps() -> None:
    x, band = np.array([0.0, 1.0]), np.array([0.0, 0.0])
    turns = [Curve("turn", x, x + number, Ink.THIN) for number in range(3)]
    mean = Curve("mean", x, x)
    dots = [Curve("star", x, x, Ink.DOTS), Curve("star", x, x, Ink.DOTS)]
    sure = Curve("sure", x, x, low=band, high=band)
    found = joined([*turns, mean, *dots, sure])
    assert [one.name for one in found] == ["turn", "mean", "star", "star", "sure"]
    np.testing.assert_array_equal(
        found[0].y, [0.0, 1.0, np.nan, 1.0, 2.0, np.nan, 2.0, 3.0, np.nan]
    )
    assert found[1] is mean


def test_words_name_the_nearest_known_value_of_every_curve() -> None:
    x = np.array([0.0, 1.0, 2.0])
    first = Curve("first", x, np.array([1.0, 2.0, np.nan]))
    second = Curve("second", x, np.array([5.0, 6.0, 7.0]), Ink.DASHED)
    assert _picture(first, second).words_at(1.9) == "1.9: first 2.0″, second 7.0″"


def test_curves_of_one_name_are_read_off_together_where_they_lie_together() -> None:
    x = np.array([0.0, 1.0])
    turns = [Curve("turn", x, x + shift, Ink.THIN) for shift in (3.0, 1.0, 2.0)]
    assert _picture(*turns).words_at(0.0) == "0: turn 1.0″ to 3.0″"
    pieces = [Curve("piece", x + start, x + start) for start in (0.0, 10.0)]
    assert _picture(*pieces).words_at(9.0) == "9: piece 10.0″"


def test_the_table_has_a_line_for_each_point_and_bands() -> None:
    x = np.array([0.0, 1.0])
    curve = Curve("one", x, x + 1.0, low=x, high=x + 2.0)
    assert _picture(curve).table().splitlines() == [
        "curve\tx (s)\ty (″)\tlow\thigh",
        "one\t0\t1\t0\t2",
        "one\t1\t2\t1\t3",
    ]


def test_nothing_known_still_has_a_span() -> None:
    empty = Curve("none", np.array([np.nan]), np.array([np.nan]))
    assert _picture(empty).x_span() == (0.0, 1.0)
    assert _picture(empty).words_at(0.5) == ""


@pytest.mark.parametrize(("at", "said"), [(-5.0, "0: one 3.0″"), (50.0, "2: one 9.0″")])
def test_reading_off_stays_inside(qtbot, theme, at: float, said: str) -> None:
    plot = CurvePlot(theme)
    qtbot.addWidget(plot)
    plot.show_picture(_picture(Curve("one", np.array([0.0, 1.0, 2.0]), np.array([3.0, 6.0, 9.0]))))
    plot.read_at(at)
    assert plot.readout() == said


def test_the_legend_stands_only_where_there_is_a_choice(qtbot, theme) -> None:
    plot = CurvePlot(theme)
    qtbot.addWidget(plot)
    x = np.array([0.0, 1.0])
    plot.show_picture(_picture(Curve("one", x, x)))
    assert plot.legend() == ""
    plot.show_picture(_picture(Curve("one", x, x), Curve("two", x, x, Ink.DOTTED)))
    assert "two" in plot.legend()


def test_rows_are_replaced(qtbot) -> None:
    rows = Rows("Table", ("a", "b"))
    qtbot.addWidget(rows)
    rows.show_rows([("1", "2"), ("3", "4")])
    rows.show_rows([("5", "6")])
    assert rows.rows() == [("5", "6")]
    assert rows.accessibleDescription() == "5, 6"
