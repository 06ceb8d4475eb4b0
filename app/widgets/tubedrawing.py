"""A tube seen from behind, with the eyepiece where it sits round it."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.theme.theme import Theme
from core.language import say

TUBE, STALK, WIDE = 0.52, 0.34, 0.2  # in parts of half the drawing
GROUND = 0.96


class TubeDrawing(QWidget):
    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._round_tube_deg: float | None = None
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(self.tr("Drawing: the tube from behind, with its eyepiece"))
        theme.changed.connect(self._restyle)

    def sizeHint(self) -> QSize:
        side = round(80 + 40 * self._theme.scale)
        return QSize(side, side)

    def show_eyepiece(self, round_tube_deg: float | None) -> None:
        """0 on top, 90 on the right for somebody behind the tube."""
        self._round_tube_deg = round_tube_deg
        self.setAccessibleDescription("" if round_tube_deg is None else place_words(round_tube_deg))
        self.update()

    def _restyle(self) -> None:
        self.updateGeometry()
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        if self._round_tube_deg is None:
            return
        look = self._theme.look
        half = min(self.width(), self.height()) / 2.0
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.translate(QRectF(self.rect()).center())
        painter.setPen(QPen(QColor(look.edge), 2))
        painter.drawLine(QPointF(-half, GROUND * half), QPointF(half, GROUND * half))
        painter.save()
        painter.rotate(self._round_tube_deg)
        painter.setPen(QPen(QColor(look.accent), 2))
        painter.setBrush(QColor(look.chosen))
        eyepiece = QRectF(-WIDE * half / 2, -(TUBE + STALK) * half, WIDE * half, STALK * half + 4)
        painter.drawRoundedRect(eyepiece, 3, 3)
        painter.restore()
        painter.setPen(QPen(QColor(look.text), 3))
        painter.setBrush(QColor(look.well))
        painter.drawEllipse(QPointF(0.0, 0.0), TUBE * half, TUBE * half)
        painter.setPen(QPen(QColor(look.quiet), 1, Qt.PenStyle.DashLine))
        painter.drawLine(QPointF(0.0, -TUBE * half), QPointF(0.0, -0.3 * TUBE * half))
        painter.end()


def place_words(round_tube_deg: float) -> str:
    """Where the eyepiece sits, in one of eight places."""
    places = (
        say("on top of the tube"),
        say("on top, towards the right"),
        say("on the right of the tube"),
        say("under the tube, towards the right"),
        say("under the tube"),
        say("under the tube, towards the left"),
        say("on the left of the tube"),
        say("on top, towards the left"),
    )
    return places[round(round_tube_deg / 45.0) % len(places)]
