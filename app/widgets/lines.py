"""Several lines to type in, with a caret in a colour of the look."""

from __future__ import annotations

from PySide6.QtCore import QRect, Signal
from PySide6.QtGui import QFocusEvent, QPainter, QPaintEvent, QPalette
from PySide6.QtWidgets import QPlainTextEdit, QWidget

from app.widgets.caret import WIDTH_PX


class Lines(QPlainTextEdit):
    """Tab leaves it. `left` fires when the person does."""

    left = Signal()

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        self.setTabChangesFocus(True)
        self.setCursorWidth(0)  # Qt's own caret inverts what lies beneath: white at night
        self.cursorPositionChanged.connect(self.viewport().update)

    def text(self) -> str:
        return self.toPlainText()

    def show_text(self, text: str) -> None:
        if text != self.toPlainText():
            self.setPlainText(text)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self.left.emit()

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        if not self.hasFocus():
            return
        where = self.cursorRect()
        painter = QPainter(self.viewport())
        painter.fillRect(
            QRect(where.x(), where.y(), WIDTH_PX, where.height()),
            self.palette().color(QPalette.ColorRole.Accent),
        )
        painter.end()
