"""The sky above as a disc of figures with lines of equal value, read with the pointer."""

from __future__ import annotations

import math

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, QRectF, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QFontMetricsF,
    QImage,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
)
from PySide6.QtWidgets import QWidget

from app.ui.skyview import RoundDrawing, picture
from app.ui.style import Theme

Floats = NDArray[np.float64]

STEP_DEG = 5.0
RINGS_DEG = (30.0, 60.0)


class SkyDisc(RoundDrawing):
    """North on top, east on the right, the zenith in the middle, like a map of the ground.

    `pointed` carries azimuth and altitude, degrees, of the place being read.
    """

    pointed = Signal(float, float)

    def __init__(self, theme: Theme, name: str, parent: QWidget | None = None) -> None:
        super().__init__(theme, name, (220, 80), parent)
        self._values: Floats | None = None
        self._limit = 1.0
        self._lowest_deg = 15.0
        self._track: list[tuple[float, float]] = []
        self._cursor: tuple[float, float] | None = None
        self._image: QImage | None = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        theme.changed.connect(self._paint_afresh)

    def show_sky(
        self,
        values: Floats | None,
        limit: float,
        lowest_deg: float,
        track: list[tuple[float, float]],
    ) -> None:
        """`values` (n, n), rows from south to north, columns from west to east, NaN outside.
        `track`: azimuth and altitude, degrees, along the way of the target."""
        self._values, self._limit, self._lowest_deg = values, limit, lowest_deg
        self._track = track
        self._paint_afresh()

    def place_of(self, azimuth_deg: float, altitude_deg: float) -> QPointF:
        """Where in the widget a place in the sky is."""
        reach = (90.0 - altitude_deg) / (90.0 - self._lowest_deg) * self.radius()
        angle = math.radians(azimuth_deg)
        return self.middle() + QPointF(reach * math.sin(angle), -reach * math.cos(angle))

    def cursor_place(self) -> tuple[float, float] | None:
        """Azimuth and altitude of the place being read."""
        return self._cursor

    def _paint_afresh(self) -> None:
        self._image = None
        self.update()

    def _read(self, azimuth_deg: float, altitude_deg: float) -> None:
        self._cursor = azimuth_deg % 360.0, min(max(altitude_deg, self._lowest_deg), 90.0)
        self.pointed.emit(*self._cursor)
        self.update()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        way = self.share_of(event.position())
        share = math.hypot(way.x(), way.y())
        if share <= 1.0:
            azimuth = math.degrees(math.atan2(way.x(), -way.y())) % 360.0
            self._read(azimuth, 90.0 - share * (90.0 - self._lowest_deg))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        way = self.arrow_of(event)
        if way is None:
            super().keyPressEvent(event)
            return
        azimuth, altitude = self._cursor or (180.0, 45.0)
        self._read(azimuth + STEP_DEG * way.x(), altitude - STEP_DEG * way.y())

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        middle, radius = self.middle(), self.radius()
        if self._values is not None:
            if self._image is None:
                self._image = picture(self._values, self._limit, self._theme.look)
            painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
            box = QRectF(middle.x() - radius, middle.y() - radius, 2.0 * radius, 2.0 * radius)
            painter.drawImage(box, self._image)
        self._draw_frame(painter)
        self._draw_track(painter)
        self._draw_cursor(painter)
        painter.end()

    def _draw_frame(self, painter: QPainter) -> None:
        look = self._theme.look
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for altitude in RINGS_DEG:
            reach = (90.0 - altitude) / (90.0 - self._lowest_deg) * self.radius()
            painter.setPen(QPen(QColor(look.edge), 1, Qt.PenStyle.DotLine))
            painter.drawEllipse(self.middle(), reach, reach)
        painter.setPen(QPen(QColor(look.edge), 1))
        painter.drawEllipse(self.middle(), self.radius(), self.radius())
        self.draw_focus(painter)
        painter.setPen(QColor(look.text))
        metrics = QFontMetricsF(self.font())
        for azimuth, words in self._winds():
            angle = math.radians(azimuth)
            reach = self.radius() + metrics.height() / 2.0 + 2.0
            place = self.middle() + QPointF(reach * math.sin(angle), -reach * math.cos(angle))
            half = QPointF(metrics.horizontalAdvance(words), -metrics.capHeight()) / 2.0
            painter.drawText(place - half, words)

    def _winds(self) -> tuple[tuple[float, str], ...]:
        return (
            (0.0, self.tr("N")),
            (90.0, self.tr("E")),
            (180.0, self.tr("S")),
            (270.0, self.tr("W")),
        )

    def _draw_track(self, painter: QPainter) -> None:
        """The way of the target, an arrow's worth thicker than any other line."""
        seen = [self.place_of(*one) for one in self._track if one[1] >= self._lowest_deg]
        look = self._theme.look
        for colour, width in ((look.ground, 7), (look.accent, 4)):
            painter.setPen(QPen(QColor(colour), width, c=Qt.PenCapStyle.RoundCap))
            painter.drawPolyline(seen)
        if seen:
            painter.setBrush(QColor(look.accent))
            painter.setPen(QPen(QColor(look.ground), 2))
            painter.drawEllipse(seen[0], 7.0, 7.0)

    def _draw_cursor(self, painter: QPainter) -> None:
        if self._cursor is None:
            return
        place = self.place_of(*self._cursor)
        painter.setPen(QPen(QColor(self._theme.look.text), 2))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawEllipse(place, 6.0, 6.0)
