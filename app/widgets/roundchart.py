"""A round field with the face of a clock about it, to look at and to put a mark into."""

from __future__ import annotations

import math

from PySide6.QtCore import QPointF, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QFontMetricsF,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QResizeEvent,
)
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.theme.theme import Theme
from app.widgets.chart import Chart, Shape, Spot
from app.widgets.chartpainter import ChartPainter

STEP = 0.01  # of the radius, by an arrow key; with Shift ten times that
NEAR_PX = 14.0
WINDOW_SHARE = 0.55


class RoundChart(QWidget):
    """`placed` carries (clock angle, distance) while a mark is dragged or moved by arrow keys;
    `pointed` says what is under the pointer, or nothing.
    """

    placed = Signal(float, float)
    pointed = Signal(str)

    def __init__(
        self, theme: Theme, name: str, can_place: bool = False, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._theme = theme
        self._chart = Chart(60.0)
        self._can_place = can_place
        self.setAccessibleName(name)
        self.setMouseTracking(True)
        if can_place:
            self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
            self.setCursor(Qt.CursorShape.CrossCursor)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        theme.changed.connect(self.update)

    def sizeHint(self) -> QSize:
        side = round(300 + 160 * self._theme.scale)
        return QSize(side, side)

    def minimumSizeHint(self) -> QSize:
        side = round(250 + 90 * self._theme.scale)
        return QSize(side, side)

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
        reach = distance_arcmin / self._chart.radius_arcmin * self._radius()
        return self._middle() + QPointF(reach * math.sin(angle), -reach * math.cos(angle))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """A chart higher than it is wide, or than most of the window, would only push the rest
        away.
        """
        super().resizeEvent(event)
        room = round(WINDOW_SHARE * self.window().height())
        self.setMaximumHeight(max(min(self.width(), room), self.minimumSizeHint().height()))

    def _middle(self) -> QPointF:
        return QPointF(self.width() / 2.0, min(self.width(), self.height()) / 2.0)

    def _radius(self) -> float:
        """Room for the numbers of the clock is left all round."""
        metrics = QFontMetricsF(self.font())
        return max(min(self.width(), self.height()) / 2.0 - metrics.height() - 8.0, 20.0)

    def _taken(self, point: QPointF) -> tuple[float, float]:
        """Clock angle and distance of a point, kept within the field."""
        way = point - self._middle()
        distance = math.hypot(way.x(), way.y()) / self._radius() * self._chart.radius_arcmin
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
        way = {
            Qt.Key.Key_Left: QPointF(-1, 0),
            Qt.Key.Key_Right: QPointF(1, 0),
            Qt.Key.Key_Up: QPointF(0, -1),
            Qt.Key.Key_Down: QPointF(0, 1),
        }.get(Qt.Key(event.key()))
        if way is None or not self._can_place:
            super().keyPressEvent(event)
            return
        coarse = 10.0 if event.modifiers() & Qt.KeyboardModifier.ShiftModifier else 1.0
        self.placed.emit(*self._taken(self._start() + way * (STEP * coarse * self._radius())))

    def _start(self) -> QPointF:
        """The mark the arrow keys move: the one placed, else the one that shows where to."""
        for shape in (Shape.DIAMOND, Shape.HOLLOW):
            for spot in self._chart.spots:
                if spot.shape is shape:
                    return self.place_of(spot.clock_angle_deg, spot.distance_arcmin)
        return self._middle()

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
        where = self._middle(), self._radius()
        ChartPainter(painter, look, scale, *where, self._chart).draw()
        if self.hasFocus():
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(QColor(self._theme.look.accent), 3))
            painter.drawEllipse(self._middle(), self._radius(), self._radius())
        painter.end()
