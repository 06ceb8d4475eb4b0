"""A key to press: never smaller than a cold finger."""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QPushButton, QWidget

from app.theme.sheet import TOUCH_PX

MARGIN_PX = 2  # around a key, where the ring of the focus goes
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
