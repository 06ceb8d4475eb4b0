"""The drift plot: drawn when due, following until the person takes over."""

from dataclasses import replace
from types import SimpleNamespace

import numpy as np
import pyqtgraph as pg
import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QColor, QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QGraphicsPathItem, QLabel, QPushButton

from app.ui.driftplot import DriftPlot, Feed, LegCurves
from app.ui.driftseries import DriftSeries, series
from core.alignment.driftlog.records import Leg


@pytest.fixture
def plot(qtbot, theme) -> DriftPlot:
    made = DriftPlot(theme)
    made.resize(900, 500)
    qtbot.addWidget(made)
    with qtbot.waitExposed(made):
        made.show()
    return made


def _legend_names(plot: DriftPlot) -> list[str]:
    texts = [item for item in plot.plot_item().items if isinstance(item, pg.TextItem)]
    return [text.toPlainText() for text in texts if text.toPlainText()]


def _feed(*legs: DriftSeries) -> Feed:
    return lambda most: (legs[-most:], max(len(legs) - most, 0))


def _zoom(plot: DriftPlot) -> None:
    view = plot.findChild(pg.PlotWidget)
    middle = QPointF(view.viewport().rect().center())
    QApplication.sendEvent(
        view.viewport(),
        QWheelEvent(
            middle,
            view.viewport().mapToGlobal(middle),
            QPoint(),
            QPoint(0, 240),
            Qt.MouseButton.NoButton,
            Qt.KeyboardModifier.NoModifier,
            Qt.ScrollPhase.NoScrollPhase,
            False,
        ),
    )


def test_legs_with_and_without_a_fit_are_drawn(plot, qtbot, leg: Leg, trend) -> None:
    other = Leg("Deneb", 310.0, 45.0, leg.utc_s, leg.north_arcsec)
    plot.feed_from(_feed(series(leg, trend, 0), series(other, None, 1)))
    qtbot.waitUntil(lambda: {"Vega", "Deneb", "step 3.0″"} <= set(_legend_names(plot)))


def test_a_discarded_leg_disappears(plot, qtbot, leg: Leg) -> None:
    legs = [series(leg, None, 0)]
    plot.feed_from(lambda _: (legs, 0))
    qtbot.waitUntil(lambda: _legend_names(plot) == ["Vega"])
    legs.clear()
    plot.mark_stale()
    qtbot.waitUntil(lambda: _legend_names(plot) == [])


def test_the_picture_follows_until_zoomed_and_again_on_request(plot, qtbot, leg: Leg) -> None:
    plot.feed_from(_feed(series(leg, None, 0)))
    qtbot.waitUntil(lambda: plot.plot_item().viewRange()[0][1] > 6.6)
    _zoom(plot)
    assert not plot.is_following()
    zoomed = plot.plot_item().viewRange()
    plot.draw()
    assert plot.plot_item().viewRange() == zoomed
    follow = next(b for b in plot.findChildren(QPushButton) if "Follow" in b.text())
    QTest.mouseClick(follow, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: plot.plot_item().viewRange()[0][1] > 6.6)
    assert plot.is_following()


def test_many_marks_are_few_pictures_and_none_while_hidden(plot, qtbot, leg: Leg) -> None:
    asked: list[int] = []

    def ask(_: int) -> tuple[list[DriftSeries], int]:
        asked.append(1)
        return [series(leg, None, 0)], 0

    plot.feed_from(ask)
    qtbot.waitUntil(lambda: bool(asked))
    before = len(asked)
    for _ in range(1000):
        plot.mark_stale()
    assert len(asked) <= before + 1
    plot.hide()
    hidden = len(asked)
    plot.mark_stale()
    assert len(asked) == hidden
    plot.show()
    qtbot.waitUntil(lambda: len(asked) == hidden + 1)


def test_values_are_read_off_with_the_pointer(plot, qtbot, leg: Leg) -> None:
    plot.feed_from(_feed(series(leg, None, 0)))
    qtbot.waitUntil(lambda: plot.plot_item().viewRange()[0][1] > 6.6)
    view = plot.plot_item().getViewBox()
    plot.plot_item().scene().sigMouseMoved.emit(view.mapViewToScene(QPointF(2.0, 1.0)))
    assert plot.readout() == "Vega: 1.0″ north after 2.0 min, at 14:15:20 UTC"


def test_copying_is_asked_for_once_there_is_something(plot, qtbot, leg: Leg) -> None:
    copy = next(b for b in plot.findChildren(QPushButton) if "Copy" in b.text())
    assert not copy.isEnabled()
    plot.feed_from(_feed(series(leg, None, 0)))
    qtbot.waitUntil(copy.isEnabled)
    with qtbot.waitSignal(plot.copy_wanted):
        QTest.mouseClick(copy, Qt.MouseButton.LeftButton)


@pytest.mark.parametrize("count", [1, 2])
def test_one_or_two_readings_give_a_readable_axis(plot, qtbot, leg: Leg, count: int) -> None:
    short = Leg("Vega", 0.0, 0.0, leg.utc_s[:count], leg.north_arcsec[:count])
    plot.feed_from(_feed(series(short, None, 0)))
    qtbot.waitUntil(lambda: _legend_names(plot) == ["Vega"])
    (left, right), (low, high) = plot.plot_item().viewRange()
    assert right - left >= 0.5
    assert high - low >= 2.0


def _range(plot: DriftPlot) -> tuple[list[float], list[float]]:
    x, y = plot.plot_item().getViewBox().viewRange()
    return x, y


def _press(plot: DriftPlot, key: Qt.Key, modifier=Qt.KeyboardModifier.NoModifier) -> None:
    QTest.keyClick(plot.findChild(pg.PlotWidget), key, modifier)


def test_arrows_pan_and_plus_and_minus_zoom(plot, qtbot, leg: Leg) -> None:
    plot.feed_from(_feed(series(leg, None, 0)))
    qtbot.waitUntil(lambda: _legend_names(plot) == ["Vega"])
    (left, right), (low, high) = _range(plot)
    _press(plot, Qt.Key.Key_Right)
    _press(plot, Qt.Key.Key_Up)
    (left2, right2), (low2, high2) = _range(plot)
    assert left2 - left == pytest.approx(0.1 * (right - left))
    assert low2 - low == pytest.approx(0.1 * (high - low))
    _press(plot, Qt.Key.Key_Plus)
    (left3, right3), (low3, high3) = _range(plot)
    assert right3 - left3 == pytest.approx(0.8 * (right2 - left2))
    assert high3 - low3 == pytest.approx(0.8 * (high2 - low2))
    _press(plot, Qt.Key.Key_Minus)
    assert _range(plot)[0] == pytest.approx([left2, right2])
    assert not plot.is_following()


def test_readings_are_walked_through_and_copied_by_key(plot, qtbot, leg: Leg) -> None:
    other = Leg("Deneb", 310.0, 45.0, leg.utc_s[:50], leg.north_arcsec[:50])
    plot.feed_from(_feed(series(leg, None, 0), series(other, None, 1)))
    qtbot.waitUntil(lambda: len(_legend_names(plot)) == 2)
    _press(plot, Qt.Key.Key_Comma)
    assert plot.readout().startswith("Deneb: 0.8″ north after 1.6 min")  # reading 49 of 0…49
    _press(plot, Qt.Key.Key_PageUp)
    assert "after 1.0 min" in plot.readout()  # 29 × 2 s
    _press(plot, Qt.Key.Key_Comma)
    _press(plot, Qt.Key.Key_Period)
    assert "after 1.0 min" in plot.readout()
    _press(plot, Qt.Key.Key_L)
    assert plot.readout().startswith("Vega: ")
    _press(plot, Qt.Key.Key_C, Qt.KeyboardModifier.ControlModifier)
    assert QApplication.clipboard().text() == plot.readout()


@pytest.mark.parametrize("width", [320, 560, 900])
def test_names_are_whole_whatever_the_width(plot, qtbot, leg: Leg, width: int) -> None:
    long = Leg("12 Alpheratz, practice", 2.1, 29.1, leg.utc_s, leg.north_arcsec)
    plot.resize(width, 500)
    plot.feed_from(_feed(series(long, None, 0)))
    qtbot.waitUntil(lambda: len(_legend_names(plot)) == 1)
    plot.draw()
    names = [item for item in plot.plot_item().items if isinstance(item, pg.TextItem)]
    seen = plot.plot_item().getViewBox().sceneBoundingRect()
    for zoom in (False, True):
        if zoom:
            _press(plot, Qt.Key.Key_Plus)
            plot.draw()
        for name in names:
            assert name.sceneBoundingRect().right() <= seen.right() + 1.0


def test_only_the_newest_of_many_legs_are_drawn_and_that_is_said(plot, qtbot, leg: Leg) -> None:
    many = [
        Leg(f"Star {number}", 279.2, 38.8, leg.utc_s, leg.north_arcsec) for number in range(1, 11)
    ]
    plot.feed_from(_feed(*(series(each, None, i) for i, each in enumerate(many))))
    qtbot.waitUntil(lambda: set(_legend_names(plot)) == {f"Star {n}" for n in range(5, 11)})
    said = " ".join(label.text() for label in plot.findChildren(QLabel))
    assert "The newest 6 legs are drawn; the 4 before count as well." in said


def test_the_line_of_readings_stops_where_none_came(plot, qtbot) -> None:
    utc_s = 1.79e9 + np.concatenate([np.arange(0.0, 600.0), 1200.0 + np.arange(0.0, 600.0)])
    plot.feed_from(_feed(series(Leg("Vega", 279.2, 38.8, utc_s, np.zeros(1200)), None, 0)))
    qtbot.waitUntil(lambda: _legend_names(plot) == ["Vega"])
    plot.draw()
    paths = [item.path() for item in plot.plot_item().items if isinstance(item, QGraphicsPathItem)]
    (readings,) = [path for path in paths if path.elementCount() == 1200]
    begun = [i for i in range(1200) if readings.elementAt(i).isMoveTo()]
    assert begun == [0, 600]


def test_many_legs_come_piece_by_piece_but_another_look_at_once(plot, qtbot, leg, theme) -> None:
    many = [Leg(f"Star {n}", 279.2, 38.8, leg.utc_s, leg.north_arcsec) for n in range(1, 6)]
    plot.feed_from(_feed(*(series(each, None, i) for i, each in enumerate(many))))
    plot.draw()
    assert _legend_names(plot) == ["Star 5", "Star 1"]  # the newest first
    qtbot.waitUntil(lambda: len(_legend_names(plot)) == 5)
    theme.choose("day")
    theme.choose("night")
    assert _grounds(plot) == {QColor(theme.look.well).name()}


def test_a_new_reading_leaves_what_came_from_the_fit(plot, leg: Leg, trend, monkeypatch) -> None:
    anew: list[str] = []
    monkeypatch.setattr(LegCurves, "_show_steps", lambda _, leg: anew.append(leg.label))
    another = SimpleNamespace(**vars(trend), is_another=True)
    for count, judged in ((190, trend), (191, trend), (191, another)):
        part = replace(leg, utc_s=leg.utc_s[:count], north_arcsec=leg.north_arcsec[:count])
        plot.feed_from(_feed(series(part, judged, 0)))
        plot.draw()
        anew.append(f"{count}")
    assert anew == ["Vega", "190", "191", "Vega", "191"]


def test_a_plot_that_was_hidden_comes_back_in_the_look_of_now(plot, qtbot, leg, theme) -> None:
    plot.feed_from(_feed(series(leg, None, 0)))
    theme.choose("day")
    qtbot.waitUntil(lambda: _grounds(plot) == {QColor(theme.look.well).name()})
    plot.hide()
    theme.choose("night")
    plot.show()
    assert _grounds(plot) == {QColor(theme.look.well).name()}


def _grounds(plot: DriftPlot) -> set[str]:
    """The colours under the names."""
    texts = [item for item in plot.plot_item().items if isinstance(item, pg.TextItem)]
    return {text.fill.color().name() for text in texts}
