"""The view all round as a strip to draw the skyline on, with the mouse or the arrow keys."""

from __future__ import annotations

import numpy as np
from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QFontMetricsF,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QPolygonF,
)
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.ui.style import Theme
from core.sky.horizon import HIGHEST_DEG, Horizon, raised, redrawn

HEIGHTS_DEG = (0, 30, 60, 90)
STEP_DEG, FINE_DEG = 5.0, 1.0  # of the arrow keys; with Shift the finer
LIFT_DEG = 1.0
BESIDE_DEG = 1e-4


class Panorama(QWidget):
    """North at both ends, south in the middle; the ground at the bottom, the zenith at the top.

    `drawn` carries the new Horizon when the pen is lifted or a key pressed, `pointed` a sentence
    on what is under the pointer or the cursor.
    """

    drawn = Signal(object)
    pointed = Signal(str)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._horizon = Horizon.flat()
        self._stroke: list[tuple[float, float]] = []
        self._cursor_deg = 180.0
        self._pole: tuple[float, float] | None = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setCursor(Qt.CursorShape.CrossCursor)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(self.tr("Horizon all round"))
        theme.changed.connect(self._theme_changed)
        self._describe()

    def sizeHint(self) -> QSize:
        return QSize(720, round(150 + 70 * self._theme.scale))

    def minimumSizeHint(self) -> QSize:
        return QSize(280, self.sizeHint().height())

    def horizon(self) -> Horizon:
        return self._horizon

    def show_horizon(self, horizon: Horizon) -> None:
        self._horizon = horizon
        self._describe()
        self.update()

    def show_pole(self, azimuth_deg: float | None, altitude_deg: float = 0.0) -> None:
        """Where the elevated pole stands; None when that is not known."""
        self._pole = None if azimuth_deg is None else (azimuth_deg, altitude_deg)
        self.update()

    def point_at(self, azimuth_deg: float, altitude_deg: float) -> QPointF:
        """The place of a direction within the widget."""
        inner = self._inner()
        x = inner.left() + azimuth_deg / 360.0 * inner.width()
        return QPointF(x, inner.bottom() - altitude_deg / HIGHEST_DEG * inner.height())

    def cursor_deg(self) -> float:
        """The azimuth that the arrow keys raise and lower."""
        return self._cursor_deg

    def _direction_at(self, point: QPointF) -> tuple[float, float]:
        inner = self._inner()
        azimuth = (point.x() - inner.left()) / inner.width() * 360.0
        altitude = (inner.bottom() - point.y()) / inner.height() * HIGHEST_DEG
        return min(max(azimuth, 0.0), 360.0), min(max(altitude, 0.0), HIGHEST_DEG)

    def _inner(self) -> QRectF:
        metrics = QFontMetricsF(self.font())
        left = metrics.horizontalAdvance("90°") + 10.0
        half = metrics.horizontalAdvance("N") / 2.0 + 4.0
        return QRectF(self.rect()).adjusted(
            left, metrics.height() / 2.0 + 2.0, -half, -metrics.height() - 6.0
        )

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() is Qt.MouseButton.LeftButton:
            self._stroke = [self._direction_at(event.position())]
            self.update()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        azimuth_deg, altitude_deg = self._direction_at(event.position())
        if self._stroke:
            self._stroke.append((azimuth_deg, altitude_deg))
            self.update()
        self.pointed.emit(
            self.tr("Pointer at azimuth {azimuth:.0f}°, altitude {altitude:.0f}°.").format(
                azimuth=azimuth_deg % 360.0, altitude=altitude_deg
            )
        )

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if event.button() is Qt.MouseButton.LeftButton and self._stroke:
            self._cursor_deg = round(self._stroke[-1][0]) % 360.0
            stroke, self._stroke = self._stroke, []
            self._take(redrawn(self._horizon, stroke))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        fine = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
        aside = {Qt.Key.Key_Left: -1.0, Qt.Key.Key_Right: 1.0}.get(Qt.Key(event.key()))
        upward = {Qt.Key.Key_Up: 1.0, Qt.Key.Key_Down: -1.0}.get(Qt.Key(event.key()))
        if aside is not None:
            step = aside * (FINE_DEG if fine else STEP_DEG)
            self._cursor_deg = (self._cursor_deg + step) % 360.0
            self._describe()
            self.update()
        elif upward is not None:
            lift = upward * (LIFT_DEG if fine else STEP_DEG)
            self._take(raised(self._horizon, self._cursor_deg, lift))
        else:
            super().keyPressEvent(event)

    def _take(self, horizon: Horizon) -> None:
        self.show_horizon(horizon)
        self.drawn.emit(horizon)

    def _describe(self) -> None:
        sentence = self.tr("At azimuth {azimuth:.0f}° the sky begins {height:.0f}° high.").format(
            azimuth=self._cursor_deg, height=float(self._horizon.limit_deg(self._cursor_deg))
        )
        self.setAccessibleDescription(sentence)
        self.pointed.emit(sentence)

    def _theme_changed(self) -> None:
        self.updateGeometry()
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        look, inner = self._theme.look, self._inner()
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(inner, QColor(look.well))
        self._draw_grid(painter, inner)
        self._draw_skyline(painter)
        self._draw_pole(painter)
        if self.hasFocus():
            painter.setPen(QPen(QColor(look.accent), 2, Qt.PenStyle.DashLine))
            at = self._cursor_deg
            painter.drawLine(self.point_at(at, 0.0), self.point_at(at, HIGHEST_DEG))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(QColor(look.accent if self.hasFocus() else look.edge), 1))
        painter.drawRect(inner)
        painter.end()

    def _draw_grid(self, painter: QPainter, inner: QRectF) -> None:
        look, metrics = self._theme.look, QFontMetricsF(self.font())
        for height in HEIGHTS_DEG:
            place = self.point_at(0.0, height)
            painter.setPen(QPen(QColor(look.line), 1))
            painter.drawLine(place, self.point_at(360.0, height))
            painter.setPen(QColor(look.quiet))
            words = f"{height}°"
            shift = metrics.horizontalAdvance(words) + 6.0
            painter.drawText(place + QPointF(-shift, metrics.ascent() / 2.0 - 1.0), words)
        for azimuth, words in self._winds(inner):
            place = self.point_at(azimuth, 0.0)
            painter.setPen(QPen(QColor(look.line), 1))
            painter.drawLine(place, self.point_at(azimuth, 90.0))
            painter.setPen(QColor(look.text))
            half = metrics.horizontalAdvance(words) / 2.0
            painter.drawText(place + QPointF(-half, metrics.ascent() + 4.0), words)

    def _winds(self, inner: QRectF) -> list[tuple[int, str]]:
        wide = inner.width() > 26.0 * self.fontInfo().pixelSize()
        points = (
            *((0, self.tr("N")), (45, self.tr("NE")), (90, self.tr("E")), (135, self.tr("SE"))),
            *((180, self.tr("S")), (225, self.tr("SW")), (270, self.tr("W"))),
            *((315, self.tr("NW")), (360, self.tr("N"))),
        )
        return [point for point in points if wide or point[0] % 90 == 0]

    def _draw_skyline(self, painter: QPainter) -> None:
        look = self._theme.look
        shown = redrawn(self._horizon, self._stroke)
        # On either side of each point, so that upright edges are drawn upright.
        edges = (
            azimuth + side for azimuth in shown.azimuth_deg for side in (-BESIDE_DEG, BESIDE_DEG)
        )
        azimuths = np.array(sorted({*range(361), *edges}))
        places = zip(azimuths.tolist(), shown.limit_deg(azimuths).tolist(), strict=True)
        outline = [self.point_at(*place) for place in places]
        ground = [self.point_at(360.0, 0.0), self.point_at(0.0, 0.0)]
        painter.save()
        painter.setClipRect(self._inner())
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(look.chosen))
        painter.drawPolygon(QPolygonF([*outline, *ground]))
        painter.setPen(QPen(QColor(look.text), 2))
        painter.drawPolyline(QPolygonF(outline))
        painter.restore()

    def _draw_pole(self, painter: QPainter) -> None:
        if self._pole is None:
            return
        look, metrics = self._theme.look, QFontMetricsF(self.font())
        azimuth_deg, altitude_deg = self._pole
        place = self.point_at(azimuth_deg, altitude_deg)
        painter.setPen(QPen(QColor(look.accent), 2))
        arm = 6.0
        both_ends = (azimuth_deg, 360.0) if azimuth_deg == 0.0 else (azimuth_deg,)
        for mark in (self.point_at(azimuth, altitude_deg) for azimuth in both_ends):
            painter.drawLine(mark - QPointF(arm, 0), mark + QPointF(arm, 0))
            painter.drawLine(mark - QPointF(0, arm), mark + QPointF(0, arm))
        painter.drawText(place + QPointF(arm + 4.0, metrics.ascent() / 2.0 - 1.0), self.tr("pole"))
