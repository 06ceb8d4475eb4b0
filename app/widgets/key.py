"""A key to press: never smaller than a cold finger."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize
from PySide6.QtGui import QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QApplication, QPushButton, QWidget

from app.theme.sheet import TOUCH_PX

MARGIN_PX = 2  # around a key, where the ring of the focus goes
RING_PX = 2
RING_INSET = (6.0, 6.0, -6.0, -6.0)  # within the ring of the style sheet
RING_RADIUS_PX = 3.0
LEAST = QSize(TOUCH_PX + 2 * MARGIN_PX, TOUCH_PX + 2 * MARGIN_PX)


class Key(QPushButton):
    """`kind`: primary for the one action of a page, link for a quiet one; plain when empty."""

    def __init__(self, words: str = "", kind: str = "", parent: QWidget | None = None) -> None:
        super().__init__(words, parent)
        self.setProperty("kind", kind)

    def sizeHint(self) -> QSize:
        return super().sizeHint().expandedTo(LEAST)

    def minimumSizeHint(self) -> QSize:
        """Words are never cut: a key asks for all the room they take."""
        return self.sizeHint()

    def paintEvent(self, event: QPaintEvent) -> None:
        """On the filled key of a page the ring of the style sheet hardly stands out: at night both
        are red. A second one within it, in the colour of fields, does.
        """
        super().paintEvent(event)
        if self.hasFocus() and self.property("kind") == "primary":
            painter = QPainter(self)
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(QPen(QApplication.palette().base().color(), RING_PX))
            inside = QRectF(self.rect()).adjusted(*RING_INSET)
            painter.drawRoundedRect(inside, RING_RADIUS_PX, RING_RADIUS_PX)
