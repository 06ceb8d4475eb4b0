"""Draws a picture of the night."""

from __future__ import annotations

import math

import numpy as np
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QFontMetricsF, QPainter, QPen, QPolygonF

from app.theme.look import Colour, Look
from app.widgets.nightlayout import PIN_PX, NightLayout, Placed, Row
from app.widgets.nightpicture import (
    Block,
    Floats,
    Graph,
    Lane,
    NightPicture,
    Stroke,
    Trace,
    clock_words,
)
from app.widgets.tones import between
from core.language import say

STROKES = {
    Stroke.MAIN: (2.0, Qt.PenStyle.SolidLine),
    Stroke.SECOND: (2.0, Qt.PenStyle.DashLine),
    Stroke.THIRD: (2.0, Qt.PenStyle.DotLine),
    Stroke.EDGE: (1.0, Qt.PenStyle.SolidLine),
}
HOUR_S = 3600.0


class NightPainter:
    """One drawing on `painter`. `chosen` is the moment picked, `pointed` the one pointed at."""

    def __init__(
        self, painter: QPainter, look: Look, picture: NightPicture, layout: NightLayout
    ) -> None:
        self._painter = painter
        self._look = look
        self._picture = picture
        self._layout = layout
        self._metrics = QFontMetricsF(painter.font())

    def draw(self, chosen: float, pointed: float, is_focused: bool) -> None:
        for row in self._layout.rows:
            self._ground(row)
            if isinstance(row.row, Graph):
                self._graph(row, row.row)
            else:
                self._lane(row, row.row)
            self._painter.setBrush(Qt.BrushStyle.NoBrush)
            self._painter.setPen(QPen(QColor(self._look.line), 1))
            self._painter.drawRect(row.area)
        self._hours()
        self._now()
        self._moment(pointed, self._look.quiet, 1, Qt.PenStyle.SolidLine, "")
        width = 3 if is_focused else 2
        self._moment(chosen, self._look.accent, width, Qt.PenStyle.SolidLine, "◆")

    def _ground(self, row: Row) -> None:
        """The darker the sky, the deeper; the words of a row stand above it."""
        deep, light = sorted((self._look.well, self._look.hover), key=_lightness)
        for shade in self._picture.shades:
            left = max(self._layout.x(shade.begin_utc_s), row.area.left())
            right = min(self._layout.x(shade.end_utc_s), row.area.right())
            if right > left:
                tone = between(light, deep, shade.darkness)
                area = QRectF(left, row.area.top(), right - left, row.area.height())
                self._painter.fillRect(area, tone)
        self._words(row.area.left(), row.area.top() - self._layout.line, row.row.title)

    def _words(self, left: float, top: float, words: str, colour: str = "") -> None:
        self._painter.setPen(QColor(colour or self._look.text))
        self._painter.drawText(QPointF(left, top + self._metrics.ascent()), words)

    def _hours(self) -> None:
        bottom = self._layout.bottom
        step = self._hour_step()
        begin, end = self._picture.begin_utc_s, self._picture.end_utc_s
        for utc_s in _full_hours(self._picture, begin, end):
            hour = self._picture.zone.civil(utc_s).hour
            x = self._layout.x(utc_s)
            labelled = hour % step == 0
            self._painter.setPen(QPen(QColor(self._look.edge), 1))
            self._painter.drawLine(QPointF(x, bottom), QPointF(x, bottom + (6 if labelled else 3)))
            if labelled:
                words = clock_words(self._picture.zone, utc_s)
                half = self._metrics.horizontalAdvance(words) / 2.0
                self._words(x - half, bottom + 6.0, words)

    def _hour_step(self) -> int:
        hours = (self._picture.end_utc_s - self._picture.begin_utc_s) / HOUR_S
        per_hour = (self._layout.right - self._layout.left) / max(hours, 1.0)
        needed = 1.4 * self._metrics.horizontalAdvance("00:00")
        return next((step for step in (1, 2, 3, 6) if step * per_hour >= needed), 12)

    def _graph(self, row: Row, graph: Graph) -> None:
        heights = height_of(graph, row.area, np.array(graph.ticks)).tolist()
        for tick, y in zip(graph.ticks, heights, strict=True):
            self._painter.setPen(QPen(QColor(self._look.line), 1))
            self._painter.drawLine(QPointF(row.area.left(), y), QPointF(row.area.right(), y))
            words = graph.words(tick)
            left = row.area.left() - self._metrics.horizontalAdvance(words) - 6.0
            self._words(left, y - self._metrics.height() / 2.0, words, self._look.quiet)
        self._painter.save()
        self._painter.setClipRect(row.area)
        for trace in graph.traces:
            self._trace(row.area, graph, trace)
        self._painter.restore()
        if len(graph.traces) > 1:
            self._legend(row, graph)

    def _trace(self, area: QRectF, graph: Graph, trace: Trace) -> None:
        width, style = STROKES[trace.stroke]
        colour = self._look.accent if trace.stroke is Stroke.MAIN else self._look.text
        for points in self._pieces(area, graph, trace):
            if trace.is_ground:
                floor = [
                    QPointF(points[-1].x(), area.bottom()),
                    QPointF(points[0].x(), area.bottom()),
                ]
                self._painter.setPen(Qt.PenStyle.NoPen)
                self._painter.setBrush(QBrush(QColor(self._look.edge), Qt.BrushStyle.BDiagPattern))
                self._painter.drawPolygon(QPolygonF([*points, *floor]))
            self._painter.setBrush(Qt.BrushStyle.NoBrush)
            self._painter.setPen(QPen(QColor(colour), width, style))
            self._painter.drawPolyline(QPolygonF(points))

    def _pieces(self, area: QRectF, graph: Graph, trace: Trace) -> list[list[QPointF]]:
        """The line where it has values, no denser than pixels; any gap breaks it."""
        every = max(1, len(trace.utc_s) // max(int(area.width()), 1))
        across = self._layout.x(trace.utc_s[::every])
        high = height_of(graph, area, trace.values[::every])
        known = np.isfinite(trace.values)
        whole = np.logical_and.reduceat(known, np.arange(0, len(known), every))
        edges = np.flatnonzero(np.diff(np.concatenate([[0], whole.astype(np.int8), [0]])))
        return [
            [QPointF(x, y) for x, y in zip(across[a:b].tolist(), high[a:b].tolist(), strict=True)]
            for a, b in zip(edges[::2], edges[1::2], strict=True)
            if b - a > 1
        ]

    def _legend(self, row: Row, graph: Graph) -> None:
        """Samples of the strokes with their names, at the right of the title."""
        right = row.area.right()
        y = row.area.top() - self._layout.line
        for trace in reversed(graph.traces):
            width, style = STROKES[trace.stroke]
            right -= self._metrics.horizontalAdvance(trace.name)
            free = row.area.left() + self._metrics.horizontalAdvance(graph.title) + 46.0
            if right < free:
                return
            self._words(right, y, trace.name, self._look.quiet)
            middle = y + self._metrics.height() / 2.0
            colour = self._look.accent if trace.stroke is Stroke.MAIN else self._look.text
            self._painter.setPen(QPen(QColor(colour), width, style))
            self._painter.drawLine(QPointF(right - 34.0, middle), QPointF(right - 6.0, middle))
            right -= 50.0

    def _lane(self, row: Row, _lane: Lane) -> None:
        for placed in row.placed:
            top = row.area.top() + placed.level * self._layout.level_height() + 1.0
            if isinstance(placed.item, Block):
                self._block(placed, placed.item, top)
            else:
                self._pin(placed, top)
            if placed.words:
                self._words(placed.words_left, top + 1.0, placed.words)

    def _block(self, placed: Placed, block: Block, top: float) -> None:
        height = self._layout.level_height() - 2.0
        area = QRectF(placed.left, top, placed.right - placed.left, height)
        self._painter.setPen(QPen(QColor(self._look.edge), 1))
        self._painter.setBrush(QColor(self._look.chosen))
        self._painter.drawRoundedRect(area, 3.0, 3.0)
        if block.is_hatched:
            self._painter.setBrush(QBrush(QColor(self._look.edge), Qt.BrushStyle.BDiagPattern))
            self._painter.drawRoundedRect(area, 3.0, 3.0)

    def _pin(self, placed: Placed, top: float) -> None:
        middle = QPointF(0.5 * (placed.left + placed.right), top + self._layout.level_height() / 2)
        arms = (QPointF(PIN_PX, 0), QPointF(0, PIN_PX), QPointF(-PIN_PX, 0), QPointF(0, -PIN_PX))
        self._painter.setPen(Qt.PenStyle.NoPen)
        self._painter.setBrush(QColor(self._look.accent))
        self._painter.drawPolygon(QPolygonF([middle + arm for arm in arms]))

    def _moment(
        self, utc_s: float, colour: str, width: int, style: Qt.PenStyle, words: str
    ) -> None:
        if not self._picture.begin_utc_s <= utc_s <= self._picture.end_utc_s:
            return  # NaN included
        x = self._layout.x(utc_s)
        self._painter.setPen(QPen(QColor(colour), width, style))
        for row in self._layout.rows:
            self._painter.drawLine(QPointF(x, row.area.top()), QPointF(x, row.area.bottom()))
        if words and self._layout.rows:
            half = self._metrics.horizontalAdvance(words) / 2.0
            self._words(x - half, self._layout.rows[0].area.top(), words, colour)

    def _now(self) -> None:
        """Dotted; its word stands beside it, where no moment picked strikes it through."""
        now = self._picture.now_utc_s
        self._moment(now, self._look.quiet, 1, Qt.PenStyle.DotLine, "")
        if self._layout.rows and self._picture.begin_utc_s <= now <= self._picture.end_utc_s:
            words, x = say("now"), self._layout.x(now)
            width = self._metrics.horizontalAdvance(words)
            left = x + 8.0 if x + 8.0 + width < self._layout.right else x - 8.0 - width
            self._words(left, self._layout.rows[0].area.top(), words, self._look.quiet)


def _lightness(colour: Colour) -> float:
    return QColor(colour).lightnessF()


def height_of(graph: Graph, area: QRectF, values: Floats) -> Floats:
    """Where values lie in the area of a graph."""
    low, high = graph.low, graph.high
    if graph.is_by_factors:
        low, high = (math.log(max(one, 1e-9)) for one in (low, high))
        values = np.log(np.maximum(values, 1e-9))
    return np.asarray(area.bottom() - (values - low) / (high - low) * area.height())


def _full_hours(picture: NightPicture, begin: float, end: float) -> Floats:
    """Whole hours of the clock: zones may be off by half an hour."""
    first = picture.zone.civil(begin)
    into = first.minute * 60.0 + first.second + first.microsecond * 1e-6
    start = begin - into + (HOUR_S if into else 0.0)
    return np.arange(start, end + 1.0, HOUR_S)
