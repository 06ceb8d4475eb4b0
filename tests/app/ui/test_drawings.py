"""Drawings of the Mount and Budget pages: to scale, in their own colours, read by keyboard."""

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.ui.bars import Load, LoadBar
from app.ui.beam import Beam, BeamDrawing, BeamMass, stacked
from app.ui.skymap import SkyDisc
from app.ui.skyview import picture
from app.ui.smearplot import SmearLines, SmearPlot
from app.ui.style import DARK, DAY, NIGHT

TUBE, CAMERA, WEIGHT = (
    BeamMass("tube", 6.0, 240.0),
    BeamMass("camera", 0.6, 240.0),
    BeamMass("weight", 5.0, -300.0, is_weight=True),
)


def _pixels(image: QImage) -> np.ndarray:
    image = image.convertToFormat(QImage.Format.Format_RGBA8888)
    rows = np.frombuffer(image.constBits(), np.uint8)
    return rows.reshape(image.height(), image.width(), 4).copy()  # the image goes away


def test_a_beam_is_drawn_to_scale(qtbot, theme) -> None:
    drawing = BeamDrawing(theme, "Beam")
    qtbot.addWidget(drawing)
    drawing.resize(700, 200)
    drawing.show_beam(Beam((TUBE, CAMERA, WEIGHT), "axis", "left", "right"))
    zero, right, left = (drawing.place_px(mm) for mm in (0.0, 240.0, -300.0))
    assert (right - zero) / (zero - left) == pytest.approx(240.0 / 300.0)
    assert 0.0 < left < right < 700.0


def test_blocks_never_cover_each_other() -> None:
    bases = stacked((TUBE, CAMERA, WEIGHT), [40.0, 12.0, 36.0], 1.0)
    assert bases[0] == bases[2] == 0.0
    assert bases[1] > 40.0


def test_a_drawing_without_blocks_is_drawn_too(qtbot, theme) -> None:
    drawing = BeamDrawing(theme, "Beam")
    qtbot.addWidget(drawing)
    drawing.show_beam(Beam((), "axis", "left", "right", slide_mm=-8.0))
    assert not drawing.grab().isNull()


@pytest.mark.parametrize("load", [Load(0.0, 0.0, None, None), Load(20.0, 3.0, 9.6, 16.0, "Words")])
def test_a_load_bar_holds_what_is_heavier_than_the_capacity(qtbot, theme, load: Load) -> None:
    bar = LoadBar(theme)
    qtbot.addWidget(bar)
    bar.show_load(load)
    assert load.reach_kg >= load.whole_kg
    assert bar.accessibleDescription() == load.words
    assert not bar.grab().isNull()


def _half_bad() -> np.ndarray:
    """Too much in the north half of a small disc."""
    north, east = np.mgrid[-1.0:1.0:101j, -1.0:1.0:101j]
    return np.where(np.hypot(north, east) > 1.0, np.nan, np.where(north > 0.0, 0.9, 0.1))


def test_the_sky_has_north_on_top_and_nothing_outside() -> None:
    pixels = _pixels(picture(_half_bad(), 0.5, DARK))
    assert pixels[0, 0].tolist() == [0, 0, 0, 0]
    text = [int(DARK.text[place : place + 2], 16) for place in (1, 3, 5)]
    hatched = (pixels[..., :3] == text).all(axis=-1)
    assert hatched[10:45].mean() > 0.05  # the north, on top, is hatched
    assert not hatched[60:90].any()


@pytest.mark.parametrize("look", [DAY, DARK, NIGHT])
def test_shades_within_the_limit_differ_from_those_beyond(look) -> None:
    pixels = _pixels(picture(_half_bad(), 0.5, look))
    assert pixels[75, 50, :3].tolist() != pixels[20, 55, :3].tolist()
    if look.red_only:
        assert pixels[..., 1:3].max() == 0


def test_the_sky_is_read_with_the_arrow_keys(qtbot, theme) -> None:
    disc = SkyDisc(theme, "Sky")
    qtbot.addWidget(disc)
    disc.resize(400, 400)
    disc.show_sky(_half_bad(), 0.5, 15.0, [(90.0, 30.0), (180.0, 60.0)])
    disc.show()
    with qtbot.waitSignal(disc.pointed) as pointed:
        QTest.keyClick(disc, Qt.Key.Key_Right)
    assert pointed.args == [185.0, 45.0]
    for _ in range(20):
        QTest.keyClick(disc, Qt.Key.Key_Down)
    assert disc.cursor_place() == (185.0, 15.0)
    assert not disc.grab().isNull()


def test_north_lies_above_and_east_to_the_right(qtbot, theme) -> None:
    disc = SkyDisc(theme, "Sky")
    qtbot.addWidget(disc)
    disc.resize(400, 400)
    disc.show_sky(_half_bad(), 0.5, 15.0, [])
    assert disc.place_of(0.0, 30.0).y() < 200.0
    assert disc.place_of(90.0, 30.0).x() > 200.0
    assert disc.place_of(0.0, 90.0).x() == pytest.approx(200.0)


def test_a_curve_is_read_off_and_copied(qtbot, theme) -> None:
    plot = SmearPlot(theme)
    qtbot.addWidget(plot)
    minutes = np.array([1.0, 2.0, 3.0])
    plot.show_lines(SmearLines(minutes, 0.1 * minutes, np.array([0.2, 0.4, np.nan]), 0.5, 2.0))
    plot.copy()
    rows = QApplication.clipboard().text().split("\n")
    assert rows[2] == "120.0\t0.2000\t0.4000"
    assert "does not stay up" in plot.accessibleDescription()
