"""A round field with the face of a clock about it: rings, stars and marks."""

from __future__ import annotations

import math
from dataclasses import dataclass, field
from enum import Enum

from PySide6.QtCore import QPointF, QRectF, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QPolygonF,
)
from PySide6.QtWidgets import QWidget

from app.ui.skydisc import WordRoom
from app.ui.skyview import RoundDrawing
from app.ui.style import Look, Theme

# What a chart of a round field shows: rings, stars and marks by clock angle and distance.


class Shape(Enum):
    """Each kind of spot has a shape of its own, so that colour need not tell them apart."""

    STAR = "star"  # a filled disc
    CROSS = "cross"  # an upright cross
    SALTIRE = "saltire"  # a cross on its side
    HOLLOW = "hollow"  # an open circle: here something belongs
    DIAMOND = "diamond"  # where the person has put something


@dataclass(frozen=True)
class Spot:
    """`clock_angle_deg` clockwise from 12; `size` is the radius in pixels at the usual text size.

    `words` stand beside it; `told` is read out for it, else `words`. `is_main`: in the accent.
    """

    clock_angle_deg: float
    distance_arcmin: float
    shape: Shape
    size: float = 5.0
    words: str = ""
    told: str = ""
    is_main: bool = False


@dataclass(frozen=True)
class Chart:
    """`radius_arcmin` of the field; `rings_arcmin` in it; `path`: a line through (clock angle,
    distance) places; `rim`: words just inside the edge, by clock angle.
    """

    radius_arcmin: float
    rings_arcmin: tuple[float, ...] = ()
    spots: tuple[Spot, ...] = ()
    path: tuple[tuple[float, float], ...] = ()
    rim: tuple[tuple[float, str], ...] = field(default=())


# Steps that divide a degree and an hour of arc well.
_STEPS_ARCMIN = (0.5, 1.0, 2.0, 5.0, 10.0, 15.0, 20.0, 30.0, 60.0, 120.0, 180.0, 300.0)


def rings(radius_arcmin: float) -> tuple[float, ...]:
    """One to three round distances within a radius."""
    step = next((step for step in _STEPS_ARCMIN if radius_arcmin / step <= 4.0), 600.0)
    return tuple(step * turn for turn in range(1, 4) if step * turn < 0.98 * radius_arcmin)


def arc_words(arcmin: float) -> str:
    """30 is "30′", 120 is "2°"."""
    return f"{arcmin / 60.0:g}°" if arcmin >= 60.0 and arcmin % 30.0 == 0.0 else f"{arcmin:g}′"


def star_size(magnitude: float) -> float:
    """Brighter stars are larger; the faintest of the table are still seen."""
    return max(1.6, 6.5 - 0.65 * (magnitude - 1.0))


# Draws the chart of a round field.

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


# A round field with the face of a clock about it, to look at and to put a mark into.

STEP = 0.01  # of the radius, by an arrow key; with Shift ten times that
NEAR_PX = 14.0


class RoundChart(RoundDrawing):
    """`placed` carries (clock angle, distance) while a mark is dragged or moved by arrow keys;
    `pointed` says what is under the pointer, or nothing.
    """

    placed = Signal(float, float)
    pointed = Signal(str)

    def __init__(
        self, theme: Theme, name: str, can_place: bool = False, parent: QWidget | None = None
    ) -> None:
        super().__init__(theme, name, (250, 90), parent)
        self._chart = Chart(60.0)
        self._can_place = can_place
        if can_place:
            self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
            self.setCursor(Qt.CursorShape.CrossCursor)

    def chart(self) -> Chart:
        return self._chart

    def show_chart(self, chart: Chart) -> None:
        if chart != self._chart:
            self._chart = chart
            self.setAccessibleDescription(
                " ".join(spot.told for spot in chart.spots if spot.told and spot.is_main)
            )
            self.update()

    def place_of(self, clock_angle_deg: float, distance_arcmin: float) -> QPointF:
        """Where in the widget a place of the field is."""
        angle = math.radians(clock_angle_deg)
        reach = distance_arcmin / self._chart.radius_arcmin * self.radius()
        return self.middle() + QPointF(reach * math.sin(angle), -reach * math.cos(angle))

    def _taken(self, point: QPointF) -> tuple[float, float]:
        """Clock angle and distance of a point, kept within the field."""
        way = self.share_of(point)
        distance = math.hypot(way.x(), way.y()) * self._chart.radius_arcmin
        angle = math.degrees(math.atan2(way.x(), -way.y())) % 360.0
        return angle, min(distance, self._chart.radius_arcmin)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if self._can_place and event.button() is Qt.MouseButton.LeftButton:
            self.placed.emit(*self._taken(event.position()))

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._can_place and event.buttons() & Qt.MouseButton.LeftButton:
            self.placed.emit(*self._taken(event.position()))
        self.pointed.emit(self._told_at(event.position()))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        way = self.arrow_of(event)
        if way is None or not self._can_place:
            super().keyPressEvent(event)
            return
        coarse = 10.0 if event.modifiers() & Qt.KeyboardModifier.ShiftModifier else 1.0
        self.placed.emit(*self._taken(self._start() + way * (STEP * coarse * self.radius())))

    def _start(self) -> QPointF:
        """The mark the arrow keys move: the one placed, else the one that shows where to."""
        for shape in (Shape.DIAMOND, Shape.HOLLOW):
            for spot in self._chart.spots:
                if spot.shape is shape:
                    return self.place_of(spot.clock_angle_deg, spot.distance_arcmin)
        return self.middle()

    def _told_at(self, point: QPointF) -> str:
        def away(spot: Spot) -> float:
            way = self.place_of(spot.clock_angle_deg, spot.distance_arcmin) - point
            return math.hypot(way.x(), way.y())

        nearest = min(self._chart.spots, key=away, default=None)
        if nearest is None or away(nearest) > NEAR_PX:
            return ""
        return nearest.told or nearest.words

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        look, scale = self._theme.look, self._theme.scale
        where = self.middle(), self.radius()
        ChartPainter(painter, look, scale, *where, self._chart).draw()
        self.draw_focus(painter)
        painter.end()
