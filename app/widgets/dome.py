"""The sky above, to look at and to point into."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEvent, QPointF, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QFont,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QPixmap,
)
from PySide6.QtWidgets import QWidget

from app.theme.theme import Theme
from app.widgets.domepainter import DomePainter
from app.widgets.domepicture import DomePicture
from app.widgets.rounddrawing import RoundDrawing
from app.widgets.skyview import SkyView

SMALL_PX = 13
EDGE = 1e-6  # the rim itself belongs to the map
STEP, FINE = 0.05, 0.01  # of the arrow keys, in parts of the radius; with Shift the finer


class Dome(RoundDrawing):
    """`told` carries a sentence on the direction under the pointer or the cursor of the arrow keys.

    `value_at` writes what the map says of an azimuth and altitude in degrees.
    """

    told = Signal(str)

    def __init__(self, name: str, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(theme, name, (270, 60), parent)
        self._picture = DomePicture()
        self._value_at: Callable[[float, float], str] | None = None
        self._cursor = QPointF(0.0, 0.0)
        self._pixmap: QPixmap | None = None
        self._made_for: object = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)

    def show_picture(
        self, picture: DomePicture, value_at: Callable[[float, float], str] | None = None
    ) -> None:
        self._picture = picture
        self._value_at = value_at
        self.update()

    def picture(self) -> DomePicture:
        return self._picture

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        self._point_at(self.share_of(event.position()))

    def mousePressEvent(self, event: QMouseEvent) -> None:
        self._cursor = self.share_of(event.position())
        self._point_at(self._cursor)
        self.update()

    def leaveEvent(self, event: QEvent) -> None:
        self.told.emit("")
        super().leaveEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        way = self.arrow_of(event)
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
        self.draw_focus(painter)
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

    def _small(self) -> QFont:
        font = QFont(self.font())
        font.setPixelSize(round(SMALL_PX * self._theme.scale))
        return font

    def _draw_on(self, pixmap: QPixmap) -> None:
        painter = QPainter(pixmap)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setFont(self._small())
        winds = (self.tr("N"), self.tr("E"), self.tr("S"), self.tr("W"))
        where = self.middle(), self.radius()
        DomePainter(painter, self._theme.look, self._picture, *where, winds).draw()
        painter.end()

    def draw_focus(self, painter: QPainter) -> None:
        """With a cross where the arrow keys read."""
        super().draw_focus(painter)
        if not self.hasFocus():
            return
        place = self.middle() + self._cursor * self.radius()
        painter.setPen(QPen(QColor(self._theme.look.accent), 2))
        for arm in (QPointF(9, 0), QPointF(0, 9)):
            painter.drawLine(place - arm, place - arm * 0.3)
            painter.drawLine(place + arm * 0.3, place + arm)
