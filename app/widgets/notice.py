"""A sentence across the window that stays until it is read."""

from __future__ import annotations

from PySide6.QtWidgets import QFrame, QHBoxLayout, QWidget

from app.widgets.key import Key
from app.widgets.text import Text

MOST = 3  # more would push the page away


class Notice(QFrame):
    """The newest sentences not read yet, oldest first; one on the same subject takes its place."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("kind", "panel")
        self._unread: dict[str, str] = {}
        self._text = Text("", "alarm")
        self._done = Key(self.tr("Read"))
        self._done.setAccessibleName(self.tr("Close this message"))
        self._done.clicked.connect(self.clear)
        row = QHBoxLayout(self)
        row.addWidget(self._text, 1)
        row.addWidget(self._done)
        self.hide()

    def say(self, sentence: str, subject: str = "") -> None:
        """Without a subject the sentence is its own."""
        self._unread.pop(subject or sentence, None)
        self._unread[subject or sentence] = sentence
        for oldest in list(self._unread)[:-MOST]:
            del self._unread[oldest]
        self._text.setText("\n".join(self._unread.values()))
        self.setAccessibleName(" ".join(self._unread.values()))
        self.show()

    def clear(self) -> None:
        self._unread.clear()
        self._text.setText("")
        self.hide()

    def sentence(self) -> str:
        return self._text.text()
