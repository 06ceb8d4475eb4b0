"""The sky above, to look at and to point into."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEvent, QPointF, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QFont,
    QFontMetricsF,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QPixmap,
)
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.theme.theme import Theme
from app.widgets.domepainter import DomePainter
from app.widgets.domepicture import DomePicture
from app.widgets.skyview import SkyView

SMALL_PX = 13
EDGE = 1e-6  # the rim itself belongs to the map
STEP, FINE = 0.05, 0.01  # of the arrow keys, in parts of the radius; with Shift the finer


class Dome(QWidget):
    """`told` carries a sentence on the direction under the pointer or the cursor of the arrow keys.

    `value_at` writes what the map says of an azimuth and altitude in degrees.
    """

    told = Signal(str)

    def __init__(self, name: str, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._picture = DomePicture()
        self._value_at: Callable[[float, float], str] | None = None
        self._cursor = QPointF(0.0, 0.0)
        self._pixmap: QPixmap | None = None
        self._made_for: object = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setAccessibleName(name)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        theme.changed.connect(self._restyle)

    def sizeHint(self) -> QSize:
        return QSize(420, 440)

    def minimumSizeHint(self) -> QSize:
        side = round(270 + 60 * self._theme.scale)
        return QSize(side, side)

    def show_picture(
        self, picture: DomePicture, value_at: Callable[[float, float], str] | None = None
    ) -> None:
        self._picture = picture
        self._value_at = value_at
        self.update()

    def picture(self) -> DomePicture:
        return self._picture

    def _restyle(self) -> None:
        self.updateGeometry()
        self.update()

    def _small(self) -> QFont:
        font = QFont(self.font())
        font.setPixelSize(round(SMALL_PX * self._theme.scale))
        return font

    def _middle(self) -> QPointF:
        """At the top where there is more height than a disc can use."""
        return QPointF(self.width() / 2.0, min(self.height(), self.width()) / 2.0)

    def _radius(self) -> float:
        """The letters of the winds stand outside the rim."""
        metrics = QFontMetricsF(self._small())
        aside = max(metrics.height(), metrics.horizontalAdvance(self.tr("W"))) + 6.0
        return max(min(self.width(), self.height()) / 2.0 - aside, 20.0)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        self._point_at((event.position() - self._middle()) / self._radius())

    def mousePressEvent(self, event: QMouseEvent) -> None:
        self._cursor = (event.position() - self._middle()) / self._radius()
        self._point_at(self._cursor)
        self.update()

    def leaveEvent(self, event: QEvent) -> None:
        self.told.emit("")
        super().leaveEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        way = {
            Qt.Key.Key_Left: QPointF(-1, 0),
            Qt.Key.Key_Right: QPointF(1, 0),
            Qt.Key.Key_Up: QPointF(0, -1),
            Qt.Key.Key_Down: QPointF(0, 1),
        }.get(Qt.Key(event.key()))
        if way is None:
            super().keyPressEvent(event)
            return
        fine = event.modifiers() & Qt.KeyboardModifier.ShiftModifier
        there = self._cursor + way * (FINE if fine else STEP)
        if there.x() ** 2 + there.y() ** 2 <= 1.0 + EDGE:
            self._cursor = there
        self._point_at(self._cursor)
        self.update()

    def _point_at(self, place: QPointF) -> None:
        azimuth, altitude = SkyView(self._picture.rim_deg).direction(place.x(), place.y())
        if altitude < 90.0 - self._picture.rim_deg - EDGE:
            self.told.emit("")
            return
        said = self.tr("Azimuth {azimuth:.0f}°, {altitude} high").format(
            azimuth=float(azimuth), altitude=self._height(abs(float(altitude)))
        )
        if not self._picture.horizon.is_clear(azimuth, altitude):
            said = self.tr("{place}: obstructed").format(place=said)
        elif self._value_at is not None:
            said = f"{said}: {self._value_at(float(azimuth), float(altitude))}"
        self.setAccessibleDescription(said)
        self.told.emit(said)

    def _height(self, altitude_deg: float) -> str:
        digits = 0 if self._picture.rim_deg > 20.0 else 2
        return f"{altitude_deg:.{digits}f}°"

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.drawPixmap(0, 0, self._drawn())
        if self.hasFocus():
            self._draw_focus(painter)
        painter.end()

    def _drawn(self) -> QPixmap:
        """The picture as it was drawn last, or drawn anew where anything of it has changed."""
        ratio = self.devicePixelRatioF()
        made_for = self._picture, self.size(), self._theme.look.name, self._theme.scale, ratio
        if self._pixmap is None or made_for != self._made_for:
            self._made_for = made_for
            self._pixmap = QPixmap(self.size() * ratio)
            self._pixmap.setDevicePixelRatio(ratio)
            self._pixmap.fill(Qt.GlobalColor.transparent)
            self._draw_on(self._pixmap)
        return self._pixmap

    def _draw_on(self, pixmap: QPixmap) -> None:
        painter = QPainter(pixmap)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setFont(self._small())
        winds = (self.tr("N"), self.tr("E"), self.tr("S"), self.tr("W"))
        where = self._middle(), self._radius()
        DomePainter(painter, self._theme.look, self._picture, *where, winds).draw()
        painter.end()

    def _draw_focus(self, painter: QPainter) -> None:
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(QColor(self._theme.look.accent), 3))
        painter.drawEllipse(self._middle(), self._radius(), self._radius())
        place = self._middle() + self._cursor * self._radius()
        painter.setPen(QPen(QColor(self._theme.look.accent), 2))
        for arm in (QPointF(9, 0), QPointF(0, 9)):
            painter.drawLine(place - arm, place - arm * 0.3)
            painter.drawLine(place + arm * 0.3, place + arm)
