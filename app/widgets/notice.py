"""A sentence across the window that stays until it is read."""

from __future__ import annotations

from PySide6.QtWidgets import QFrame, QHBoxLayout, QWidget

from app.widgets.key import Key
from app.widgets.text import Text


class Notice(QFrame):
    """One sentence at a time; the same one again changes nothing."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("kind", "panel")
        self._text = Text("", "alarm")
        self._done = Key(self.tr("Read"))
        self._done.setAccessibleName(self.tr("Close this message"))
        self._done.clicked.connect(self.clear)
        row = QHBoxLayout(self)
        row.addWidget(self._text, 1)
        row.addWidget(self._done)
        self.hide()

    def say(self, sentence: str) -> None:
        self._text.setText(sentence)
        self.setAccessibleName(sentence)
        self.show()

    def clear(self) -> None:
        self._text.setText("")
        self.hide()

    def sentence(self) -> str:
        return self._text.text()
