"""Pictures of the night: scales, words, tables, and lanes in which nothing overlaps."""

import itertools

import numpy as np
import pytest
from PySide6.QtGui import QFont, QFontMetricsF

from app.ui.timeline import Graph, Lane, NightLayout, NightPicture, Pin, TimeBlock, Trace, steps
from core.sky.clocks import find

BEGIN_S = 1_790_000_000.0
END_S = BEGIN_S + 36_000.0


def _picture(*rows) -> NightPicture:
    return NightPicture(BEGIN_S, END_S, find("UTC"), rows)


def _graph() -> Graph:
    times = np.linspace(BEGIN_S, END_S, 11)
    values = np.where(np.arange(11) > 7, np.nan, np.arange(11.0))
    trace = Trace("turned", times, values)
    return Graph("Turned", (trace,), (0.0, 5.0, 10.0), 0.0, 10.0, lambda value: f"{value:.1f}°")


@pytest.mark.parametrize(
    ("low", "high", "most", "is_angle", "expected"),
    [
        (0.0, 10.0, 5, False, (0.0, 2.0, 4.0, 6.0, 8.0, 10.0)),
        (-1.0, 1.0, 4, False, (-1.0, -0.5, 0.0, 0.5, 1.0)),
        (0.0, 90.0, 3, True, (0.0, 30.0, 60.0, 90.0)),
        (-180.0, 180.0, 4, True, (-180.0, -90.0, 0.0, 90.0, 180.0)),
        (0.0, 0.004, 4, False, (0.0, 0.001, 0.002, 0.003, 0.004)),
    ],
)
def test_scales_have_round_steps(low, high, most, is_angle, expected) -> None:
    assert steps(low, high, most, is_angle) == pytest.approx(expected, abs=1e-12)


def test_a_moment_is_told_with_all_that_it_holds() -> None:
    lane = Lane("Mount", (TimeBlock(BEGIN_S, BEGIN_S + 7200.0, "flip possible"),))
    picture = _picture(_graph(), lane)
    assert picture.told_at(BEGIN_S + 3600.0) == "15:13; turned 1.0°; flip possible"
    assert picture.told_at(END_S) == "00:13"  # nothing is known there


def test_the_table_has_a_line_a_sample() -> None:
    lines = _picture(_graph()).as_text().splitlines()
    assert lines[0] == 'utc,"turned"'
    assert lines[2] == "2026-09-21T15:13:20Z,1"
    assert len(lines) == 12
    assert _picture(Lane("empty")).as_text() == ""
    assert not _picture(Lane("empty")).has_values


@pytest.mark.parametrize("width", [300.0, 700.0, 1500.0])
@pytest.mark.usefixtures("qapp")
def test_nothing_in_a_lane_overlaps(width: float) -> None:
    blocks = [
        TimeBlock(BEGIN_S + 1800.0 * n, BEGIN_S + 1800.0 * n + 5400.0, "words") for n in range(4)
    ]
    pins = [Pin(BEGIN_S + 3000.0 * n, "a pin with words") for n in range(6)]
    metrics = QFontMetricsF(QFont())
    (row,) = NightLayout(_picture(Lane("l", tuple(blocks), tuple(pins))), metrics, width, 1).rows
    frames = []
    for one in row.placed:
        frames.append((one.level, one.left, one.right, one))
        if one.words and not one.left <= one.words_left <= one.right:
            end = one.words_left + metrics.horizontalAdvance(one.words)
            frames.append((one.level, one.words_left, end, one))
    assert len(row.placed) == 10
    crowded = [one for one in row.placed if not one.words]
    for first, second in itertools.combinations(frames, 2):
        if first[3] is second[3] or first[3] in crowded or second[3] in crowded:
            continue
        apart = first[0] != second[0] or first[2] <= second[1] or second[2] <= first[1]
        assert apart, (first, second)


@pytest.mark.usefixtures("qapp")
def test_places_and_moments_belong_together() -> None:
    layout = NightLayout(_picture(_graph()), QFontMetricsF(QFont()), 800.0, 300.0)
    for utc_s in (BEGIN_S, BEGIN_S + 12_345.0, END_S):
        assert layout.utc_s(layout.x(utc_s)) == pytest.approx(utc_s)
    assert layout.utc_s(-50.0) == BEGIN_S
