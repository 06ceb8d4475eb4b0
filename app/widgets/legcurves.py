"""The parts of a drift plot that belong to one leg."""

from __future__ import annotations

import numpy as np
import pyqtgraph as pg
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QBrush, QColor, QFont, QPolygonF
from PySide6.QtWidgets import QGraphicsPathItem, QGraphicsPolygonItem

from app.theme.theme import Theme
from app.widgets.decimate import decimate
from app.widgets.driftseries import DriftSeries, Floats
from app.widgets.legshapes import SET_ASIDE, shape_code, tint
from core.language import say

FEW = 300  # up to so many readings in the picture each is a dot, more are a line
SMALL_PX = 14
MOST_SHAPES = 24
LINE_POINTS = 60  # the fitted line is smooth: a thick pen on a short line costs nothing


class LegCurves:
    """Readings as a thin quiet line, group means as shapes, fitted line with its band.

    Lines are Qt's own items: those of the plot library are painted in Python, which takes several
    times as long and waits for every thread that computes.
    """

    def __init__(self, plot: pg.PlotItem, theme: Theme) -> None:
        self._plot = plot
        self._theme = theme
        self._band = QGraphicsPolygonItem()
        self._readings = QGraphicsPathItem()
        self._dots = pg.ScatterPlotItem(size=4, pxMode=True, symbol="o", antialias=True)
        self._set_aside = pg.ScatterPlotItem(size=9, pxMode=True, symbol=SET_ASIDE, antialias=True)
        self._means = pg.ScatterPlotItem(size=10, pxMode=True, antialias=True)
        self._line = QGraphicsPathItem()
        self._steps = QGraphicsPathItem()
        self._step_words: list[pg.TextItem] = []
        self._drawn: object = None  # from what the picture was made
        self._fit: object = None  # from what the parts that come from the fit were made
        self._name = pg.TextItem(anchor=(0, 0.5))
        self._items = (
            self._band,
            self._readings,
            self._dots,
            self._steps,
            self._set_aside,
            self._line,
            self._means,
            self._name,
        )
        for item in self._items:
            plot.addItem(item, ignoreBounds=True)

    def remove(self) -> None:
        for item in (*self._items, *self._step_words):
            self._plot.removeItem(item)

    def shows(self, leg: DriftSeries, left: float, right: float, columns: int) -> bool:
        """Whether `show` would change nothing."""
        return self._state(leg, left, right, columns) == self._drawn

    def _state(self, leg: DriftSeries, *edges: float) -> object:
        return len(leg.minutes), edges, self._fit_state(leg)

    def _fit_state(self, leg: DriftSeries) -> object:
        made_from = len(leg.minutes) if leg.judged is None else leg.judged
        return made_from, self._theme.look, self._theme.scale

    def show(self, leg: DriftSeries, left: float, right: float, columns: int) -> None:
        """`left`, `right`: minutes at the edges of the picture, `columns` pixels wide."""
        self._drawn = self._state(leg, left, right, columns)
        colour = tint(self._theme, leg.index)
        self._show_readings(leg, left, right, columns)
        self._show_set_aside(leg, left, right)
        if self._fit != self._fit_state(leg):
            self._fit = self._fit_state(leg)
            self._show_means(leg, colour)
            self._show_line(leg, colour)
            self._show_steps(leg)
        self._show_name(leg, colour, right, (right - left) / columns)

    def _show_readings(self, leg: DriftSeries, left: float, right: float, columns: int) -> None:
        quiet = QColor(self._theme.look.quiet)
        x, y = decimate(leg.minutes, leg.arcsec, left, right, columns)
        few = len(x) <= FEW
        if few:
            self._dots.setData(x, y, brush=QBrush(quiet), pen=None)
        else:
            quiet.setAlpha(150)
            self._readings.setPen(pg.mkPen(quiet, width=0))
            joined = _joined(x, leg.minutes[leg.pauses])
            self._readings.setPath(pg.arrayToQPath(x, y, connect=joined))
        self._dots.setVisible(few)
        self._readings.setVisible(not few)

    def _show_set_aside(self, leg: DriftSeries, left: float, right: float) -> None:
        chosen = np.flatnonzero(leg.set_aside)
        chosen = chosen[(leg.minutes[chosen] >= left) & (leg.minutes[chosen] <= right)]
        self._set_aside.setVisible(chosen.size > 0)  # what is empty takes time to paint too
        if not chosen.size:
            return
        pen = pg.mkPen(self._theme.look.alarm, width=2)
        self._set_aside.setData(leg.minutes[chosen], leg.arcsec[chosen], pen=pen, brush=None)

    def _show_means(self, leg: DriftSeries, colour: QColor) -> None:
        self._means.setData(
            _grouped(leg.mean_minutes),
            _grouped(leg.mean_arcsec),
            symbol=shape_code(leg.index),
            brush=colour,
            pen=pg.mkPen(self._theme.look.well, width=1),
        )

    def _show_line(self, leg: DriftSeries, colour: QColor) -> None:
        at = _spread(len(leg.line_minutes), LINE_POINTS)
        x = leg.line_minutes[at]
        self._line.setPath(pg.arrayToQPath(x, leg.line_arcsec[at]))
        self._line.setPen(pg.mkPen(colour, width=2))
        around = [*zip(x, leg.low_arcsec[at], strict=True)]
        around += reversed([*zip(x, leg.high_arcsec[at], strict=True)])
        self._band.setPolygon(QPolygonF([QPointF(minute, arcsec) for minute, arcsec in around]))
        edge = pg.mkPen(colour, width=0, style=Qt.PenStyle.DashLine)
        self._band.setPen(edge)
        fill = QColor(colour)
        fill.setAlpha(45)
        self._band.setBrush(fill)

    def _show_steps(self, leg: DriftSeries) -> None:
        for words in self._step_words:
            self._plot.removeItem(words)
        self._step_words = []
        self._steps.setVisible(bool(leg.steps))
        if not leg.steps:
            return
        alarm = QColor(self._theme.look.alarm)
        high = float(leg.arcsec.max(initial=0.0))
        low = float(leg.arcsec.min(initial=0.0))
        x = np.repeat([minute for minute, _size in leg.steps], 2)
        y = np.tile([low, high], len(leg.steps))
        self._steps.setPath(pg.arrayToQPath(x, y, connect="pairs"))
        self._steps.setPen(pg.mkPen(alarm, width=0, style=Qt.PenStyle.DashDotLine))
        self._step_words = [self._step(minute, size, high) for minute, size in leg.steps]

    def _step(self, minute: float, size: float, high: float) -> pg.TextItem:
        words = pg.TextItem(
            say("step {size:.1f}″", size=abs(size)), color=self._theme.look.alarm, anchor=(0, 0)
        )
        words.setPos(minute, high)
        self._lay_under(words)
        words.setFont(self._font())
        self._plot.addItem(words, ignoreBounds=True)
        return words

    def _font(self) -> QFont:
        font = QFont(self._plot.font())
        font.setPixelSize(round(SMALL_PX * self._theme.scale))
        return font

    def _lay_under(self, words: pg.TextItem) -> None:
        """Words stay readable where lines cross them."""
        under = QColor(self._theme.look.well)
        under.setAlpha(190)
        words.fill = QBrush(under)
        words.setZValue(10)

    def _show_name(self, leg: DriftSeries, colour: QColor, right: float, per_px: float) -> None:
        """At the end of the line, or so far before it that the whole name is in the picture."""
        self._name.setText(leg.label, color=colour)
        self._lay_under(self._name)
        self._name.setFont(self._font())
        drawn = (
            (leg.line_minutes, leg.line_arcsec),
            (leg.mean_minutes, leg.mean_arcsec),
            (leg.minutes, leg.arcsec),
        )
        x, y = next((one for one in drawn if len(one[0])), drawn[-1])
        if len(x):
            at = min(float(x[-1]), right - per_px * self._name.boundingRect().width())
            self._name.setPos(at, float(np.interp(at, x, y)))


def _joined(x: Floats, pauses: Floats) -> NDArray[np.int32]:
    """Which points of a line (n,) are joined to the next: 1, but 0 at the last before a pause."""
    joined = np.ones(len(x), np.int32)
    last = np.searchsorted(x, pauses, side="right") - 1
    joined[last[last >= 0]] = 0
    return joined


def _grouped(means: Floats) -> Floats:
    """Means of neighbours, so that shapes stand apart and the line shows between them."""
    size = -(-len(means) // MOST_SHAPES)
    if size <= 1:
        return means
    starts = np.arange(0, len(means), size)
    counts = np.diff(np.append(starts, len(means)))
    return np.asarray(np.add.reduceat(means, starts) / counts)


def _spread(count: int, most: int) -> slice:
    """Every so-manieth of `count` points, both ends nearly kept."""
    return slice(None, None, max(1, -(-count // most)))
