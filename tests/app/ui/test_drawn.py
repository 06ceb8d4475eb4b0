"""The round chart, the panorama and the lines of text, by what they paint."""

import numpy as np
import pytest
from PySide6.QtGui import QColor, QImage
from PySide6.QtWidgets import QWidget

from app.ui.fieldchart import Chart, RoundChart, Shape, Spot, arc_words, rings
from app.ui.form import Lines
from app.ui.panorama import Panorama
from app.ui.style import NIGHT
from core.sky.horizon import parse


def _pixels(widget: QWidget) -> np.ndarray:
    """(height, width, 3)"""
    image = widget.grab().toImage().convertToFormat(QImage.Format.Format_RGB888)
    rows = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), -1)
    pixels = rows[:, : 3 * image.width()].reshape(image.height(), image.width(), 3)
    return pixels.copy()  # the image and its bytes go away here


def _is(widget: QWidget, x: float, y: float, colour: str) -> bool:
    wanted = QColor(colour)
    found = _pixels(widget)[round(y), round(x)]
    return tuple(int(part) for part in found) == (wanted.red(), wanted.green(), wanted.blue())


@pytest.fixture
def chart(qtbot, theme) -> RoundChart:
    made = RoundChart(theme, "A chart", can_place=True)
    made.theme = theme
    qtbot.addWidget(made)
    made.resize(500, 500)
    made.show()
    return made


def test_a_star_is_painted_where_it_belongs(chart: RoundChart, theme) -> None:
    chart.show_chart(Chart(60.0, (), (Spot(90.0, 30.0, Shape.STAR, 6.0),)))
    place = chart.place_of(90.0, 30.0)
    assert place.x() > 250 + 50
    assert place.y() == chart.height() / 2
    assert _is(chart, place.x(), place.y(), theme.look.text)
    opposite = chart.place_of(270.0, 30.0)
    assert _is(chart, opposite.x(), opposite.y(), theme.look.well)


def test_what_lies_outside_the_field_is_not_painted(chart: RoundChart) -> None:
    empty = _pixels(chart)
    chart.show_chart(Chart(60.0, (), (Spot(90.0, 61.0, Shape.STAR, 6.0, "outside"),)))
    assert np.array_equal(_pixels(chart), empty)


@pytest.mark.parametrize(
    ("radius", "found"),
    [
        (10.0, (5.0,)),
        (60.0, (15.0, 30.0, 45.0)),
        (150.0, (60.0, 120.0)),
        (180.0, (60.0, 120.0)),
    ],
)
def test_rings_are_round_distances(radius: float, found: tuple[float, ...]) -> None:
    assert rings(radius) == found


@pytest.mark.parametrize(
    ("arcmin", "words"), [(15.0, "15′"), (60.0, "1°"), (90.0, "1.5°"), (0.5, "0.5′")]
)
def test_arcs_in_words(arcmin: float, words: str) -> None:
    assert arc_words(arcmin) == words


def test_the_ground_is_filled_below_the_skyline(qtbot, theme) -> None:
    panorama = Panorama(theme)
    panorama.theme = theme
    qtbot.addWidget(panorama)
    panorama.resize(760, 220)
    panorama.show()
    panorama.show_horizon(parse("0 20 | 360 20"))
    below, above = panorama.point_at(200.0, 10.0), panorama.point_at(200.0, 45.0)
    assert _is(panorama, below.x(), below.y(), theme.look.chosen)
    assert _is(panorama, above.x(), above.y(), theme.look.well)


def test_the_caret_of_several_lines_is_in_the_accent(qtbot, theme) -> None:
    theme.choose(NIGHT.name)
    lines = Lines("Pairs")
    qtbot.addWidget(lines)
    lines.show_text("0 5\n90 12")
    without = _pixels(lines)
    with qtbot.waitActive(lines):
        lines.show()
        lines.activateWindow()
    lines.setFocus()
    shown = _pixels(lines)
    assert shown[..., 1:].max() == 0
    where = lines.cursorRect().translated(lines.viewport().pos()).center()
    assert not np.array_equal(shown, without)
    assert _is(lines, where.x() + 1, where.y(), theme.look.accent)
