"""The parts of a drift plot that belong to one leg."""

from __future__ import annotations

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QColor, QPen, QPolygonF
from PySide6.QtWidgets import QGraphicsPolygonItem

from app.theme.theme import Theme
from app.widgets.decimate import decimate
from app.widgets.driftseries import DriftSeries
from app.widgets.legshapes import SET_ASIDE, shape_code, tint

FEW = 300  # up to so many readings in the picture each gets a dot of its own
LINE_POINTS = 60  # the fitted line is smooth: a thick pen on a short line costs nothing


class LegCurves:
    """Readings as a thin quiet line, group means as shapes, fitted line with its band."""

    def __init__(self, plot: pg.PlotItem, theme: Theme) -> None:
        self._plot = plot
        self._theme = theme
        self._band = QGraphicsPolygonItem()
        self._readings = pg.PlotCurveItem(antialias=False, connect="all")
        self._dots = pg.ScatterPlotItem(size=4, pxMode=True, symbol="o")
        self._set_aside = pg.ScatterPlotItem(size=9, pxMode=True, symbol=SET_ASIDE)
        self._means = pg.ScatterPlotItem(size=10, pxMode=True)
        self._line = pg.PlotCurveItem()
        self._steps = pg.PlotCurveItem(connect="pairs", antialias=False)
        self._step_words: list[pg.TextItem] = []
        self._name = pg.TextItem(anchor=(1, 1))
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

    def show(self, leg: DriftSeries, left: float, right: float, columns: int) -> None:
        """`left`, `right`: minutes at the edges of the picture, `columns` pixels wide."""
        colour = tint(self._theme, leg.index)
        self._show_readings(leg, left, right, columns)
        self._show_set_aside(leg, left, right)
        self._means.setData(leg.mean_minutes, leg.mean_arcsec, symbol=shape_code(leg.index))
        self._means.setBrush(colour)
        self._means.setPen(QPen(QColor(self._theme.look.well), 1))
        self._show_line(leg, colour)
        self._show_steps(leg)
        self._show_name(leg, colour)

    def _show_readings(self, leg: DriftSeries, left: float, right: float, columns: int) -> None:
        quiet = QColor(self._theme.look.quiet)
        x, y = decimate(leg.minutes, leg.arcsec, left, right, columns)
        few = len(x) <= FEW
        self._dots.setData(x if few else [], y if few else [])
        self._dots.setBrush(quiet)
        self._dots.setPen(None)
        quiet.setAlpha(150)
        self._readings.setPen(QPen(quiet, 0, Qt.PenStyle.DotLine if few else Qt.PenStyle.SolidLine))
        self._readings.setData(x, y)

    def _show_set_aside(self, leg: DriftSeries, left: float, right: float) -> None:
        chosen = leg.set_aside & (leg.minutes >= left) & (leg.minutes <= right)
        self._set_aside.setData(leg.minutes[chosen], leg.arcsec[chosen])
        self._set_aside.setPen(QPen(QColor(self._theme.look.alarm), 2))

    def _show_line(self, leg: DriftSeries, colour: QColor) -> None:
        at = _spread(len(leg.line_minutes), LINE_POINTS)
        x = leg.line_minutes[at]
        self._line.setData(x, leg.line_arcsec[at])
        self._line.setPen(pg.mkPen(colour, width=2))
        around = [*zip(x, leg.low_arcsec[at], strict=True)]
        around += reversed([*zip(x, leg.high_arcsec[at], strict=True)])
        self._band.setPolygon(QPolygonF([QPointF(minute, arcsec) for minute, arcsec in around]))
        edge = pg.mkPen(colour, width=1, style=Qt.PenStyle.DashLine)
        self._band.setPen(edge)
        fill = QColor(colour)
        fill.setAlpha(45)
        self._band.setBrush(fill)

    def _show_steps(self, leg: DriftSeries) -> None:
        alarm = QColor(self._theme.look.alarm)
        high = float(leg.arcsec.max(initial=0.0))
        low = float(leg.arcsec.min(initial=0.0))
        x = np.repeat([minute for minute, _size in leg.steps], 2)
        self._steps.setData(x, np.tile([low, high], len(leg.steps)))
        self._steps.setPen(pg.mkPen(alarm, width=1, style=Qt.PenStyle.DashDotLine))
        for words in self._step_words:
            self._plot.removeItem(words)
        self._step_words = [self._step(minute, size, high) for minute, size in leg.steps]

    def _step(self, minute: float, size: float, high: float) -> pg.TextItem:
        words = pg.TextItem(f"step {abs(size):.1f}″", color=self._theme.look.alarm, anchor=(0, 0))
        words.setPos(minute, high)
        self._plot.addItem(words, ignoreBounds=True)
        return words

    def _show_name(self, leg: DriftSeries, colour: QColor) -> None:
        self._name.setText(leg.label, color=colour)
        if len(leg.line_minutes):
            self._name.setPos(leg.line_minutes[-1], leg.high_arcsec[-1])
        elif len(leg.minutes):
            self._name.setPos(leg.minutes[-1], leg.arcsec[-1])


def _spread(count: int, most: int) -> slice:
    """Every so-manieth of `count` points, both ends nearly kept."""
    return slice(None, None, max(1, -(-count // most)))
