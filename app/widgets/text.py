"""Lines of text in one of the voices the style sheet knows."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QLabel, QVBoxLayout, QWidget


class Text(QLabel):
    """`voice` is how loud: figure, turn, time, title, question, quiet, small, caution, alarm; or
    plain.
    """

    def __init__(self, text: str = "", voice: str = "", parent: QWidget | None = None) -> None:
        super().__init__(text, parent)
        self.setProperty("voice", voice)
        self.setWordWrap(True)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)

    def say(self, text: str) -> None:
        """Shows the text, or nothing at all when there is none."""
        if text != self.text():
            self.setText(text)
        self.setVisible(bool(text))


class Panel(QFrame):
    """A raised area with its own column of widgets."""

    def __init__(self, title: str = "", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("kind", "panel")
        self.column = QVBoxLayout(self)
        self.column.setContentsMargins(16, 12, 16, 12)
        self.column.setSpacing(8)
        if title:
            self.column.addWidget(Text(title, "title"))
            self.setAccessibleName(title)
