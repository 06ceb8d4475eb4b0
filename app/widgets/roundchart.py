"""A round field with the face of a clock about it, to look at and to put a mark into."""

from __future__ import annotations

import math

from PySide6.QtCore import QPointF, Qt, Signal
from PySide6.QtGui import (
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
)
from PySide6.QtWidgets import QWidget

from app.theme.theme import Theme
from app.widgets.chart import Chart, Shape, Spot
from app.widgets.chartpainter import ChartPainter
from app.widgets.rounddrawing import RoundDrawing

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
