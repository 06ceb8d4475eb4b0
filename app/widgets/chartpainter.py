"""Draws the chart of a round field."""

from __future__ import annotations

import math

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF

from app.theme.look import Look
from app.widgets.chart import Chart, Shape, Spot, arc_words
from app.widgets.wordroom import WordRoom

RING_WORDS_DEG = 106.0  # clock angle along which the rings are numbered: seldom in the way
HOURS = range(1, 13)


class ChartPainter:
    """One drawing: on `painter`, about `middle`, `radius` pixels to the edge of the field."""

    def __init__(
        self,
        painter: QPainter,
        look: Look,
        scale: float,
        middle: QPointF,
        radius: float,
        chart: Chart,
    ) -> None:
        self._painter = painter
        self._look = look
        self._scale = scale
        self._middle = middle
        self._radius = radius
        self._chart = chart
        self._words = WordRoom(painter)

    def draw(self) -> None:
        self._field()
        self._rings()
        self._clock()
        inside = [spot for spot in self._chart.spots if self._is_inside(spot)]
        for spot in inside:
            self._words.take(self._box(spot))
        self._path()
        for spot in inside:
            self._spot(spot)
        self._rim()
        for spot in sorted(inside, key=lambda spot: not spot.is_main):
            self._words_beside(spot)

    def _is_inside(self, spot: Spot) -> bool:
        return spot.distance_arcmin <= self._chart.radius_arcmin

    def _at(self, clock_angle_deg: float, distance_arcmin: float) -> QPointF:
        share = distance_arcmin / self._chart.radius_arcmin
        return self._out(clock_angle_deg, share * self._radius)

    def _out(self, clock_angle_deg: float, reach_px: float) -> QPointF:
        angle = math.radians(clock_angle_deg)
        return self._middle + QPointF(reach_px * math.sin(angle), -reach_px * math.cos(angle))

    def _field(self) -> None:
        self._painter.setPen(QPen(QColor(self._look.edge), 1))
        self._painter.setBrush(QColor(self._look.well))
        self._painter.drawEllipse(self._middle, self._radius, self._radius)

    def _rings(self) -> None:
        self._painter.setBrush(Qt.BrushStyle.NoBrush)
        for ring in self._chart.rings_arcmin:
            reach = ring / self._chart.radius_arcmin * self._radius
            self._painter.setPen(QPen(QColor(self._look.line), 1))
            self._painter.drawEllipse(self._middle, reach, reach)
            self._words.write(self._out(RING_WORDS_DEG, reach), arc_words(ring), self._look.quiet)

    def _clock(self) -> None:
        for hour in HOURS:
            angle = 30.0 * hour
            self._painter.setPen(QPen(QColor(self._look.edge), 1))
            self._painter.drawLine(
                self._out(angle, self._radius - 6.0), self._out(angle, self._radius)
            )
            outward = self._radius + 5.0 + self._words.metrics.height() / 2.0
            self._words.write(self._out(angle, outward), str(hour), self._look.text, must=True)

    def _rim(self) -> None:
        for angle, words in self._chart.rim:
            width = self._words.metrics.horizontalAdvance(words)
            sideways = abs(math.sin(math.radians(angle)))
            inward = 12.0 + max(self._words.metrics.height() / 2.0, sideways * width / 2.0)
            where = self._out(angle, self._radius - inward)
            self._words.write(where, words, self._look.quiet, must=True)

    def _path(self) -> None:
        line = QPolygonF([self._at(*place) for place in self._chart.path])
        self._painter.setBrush(Qt.BrushStyle.NoBrush)
        self._painter.setPen(QPen(QColor(self._look.accent), 2, Qt.PenStyle.DotLine))
        self._painter.drawPolyline(line)

    def _spot(self, spot: Spot) -> None:
        place = self._at(spot.clock_angle_deg, spot.distance_arcmin)
        colour = QColor(self._look.accent if spot.is_main else self._look.text)
        size = spot.size * math.sqrt(self._scale)
        if spot.shape is Shape.STAR:
            self._painter.setPen(Qt.PenStyle.NoPen)
            self._painter.setBrush(colour)
            self._painter.drawEllipse(place, size, size)
            return
        self._painter.setPen(QPen(colour, 2))
        self._painter.setBrush(Qt.BrushStyle.NoBrush)
        if spot.shape is Shape.HOLLOW:
            self._painter.drawEllipse(place, size, size)
        elif spot.shape is Shape.DIAMOND:
            self._painter.drawPolygon(QPolygonF([place + arm for arm in _arms(size, 0.0)]))
        else:
            turn = 0.0 if spot.shape is Shape.CROSS else 45.0
            for arm in _arms(size, turn)[:2]:
                self._painter.drawLine(place - arm, place + arm)

    def _box(self, spot: Spot) -> QRectF:
        place = self._at(spot.clock_angle_deg, spot.distance_arcmin)
        side = 2.0 * spot.size * math.sqrt(self._scale)
        return QRectF(place.x() - side / 2.0, place.y() - side / 2.0, side, side)

    def _words_beside(self, spot: Spot) -> None:
        box = self._box(spot)
        gap = QPointF(box.width() / 2.0 + 5.0, box.height() / 2.0)
        colour = self._look.accent if spot.is_main else self._look.text
        self._words.beside(box.center(), gap, spot.words, colour)


def _arms(size: float, turned_deg: float) -> list[QPointF]:
    """Four arms of a cross, a quarter turn apart, the first upward."""
    angles = [math.radians(turned_deg + quarter) for quarter in (0.0, 90.0, 180.0, 270.0)]
    return [QPointF(size * math.sin(angle), -size * math.cos(angle)) for angle in angles]
