"""A question with its answers, in its place on the page rather than over it."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFrame, QSizePolicy, QVBoxLayout, QWidget

from app.widgets.flow import Flow
from app.widgets.key import Key
from app.widgets.text import Text


class Asking(QFrame):
    """Hidden until something is asked. `answered` carries True for yes, and hides it again;
    `declined` comes instead when neither is the answer, where that is offered."""

    answered = Signal(bool)
    declined = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("kind", "asking")
        self._question = Text()
        self._yes, self._no, self._neither = Key(), Key(), Key()
        for key, is_yes in ((self._yes, True), (self._no, False)):
            key.clicked.connect(lambda _down, is_yes=is_yes: self._answer(is_yes))
        self._neither.clicked.connect(self._decline)
        keys = QWidget()
        row = Flow(keys)
        for key in (self._yes, self._no, self._neither):
            row.addWidget(key)
        self._neither.hide()
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        keys.setSizePolicy(policy)
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 8, 12, 8)
        column.addWidget(self._question)
        column.addWidget(keys)
        self.hide()

    def ask(self, question: str, yes: str, no: str, neither: str = "") -> None:
        self._question.setText(question)
        self.setAccessibleName(question)
        for key, words in ((self._yes, yes), (self._no, no), (self._neither, neither)):
            key.setText(words)
            key.setAccessibleName(words)
            key.setAccessibleDescription(question)
        self._neither.setVisible(bool(neither))
        self.show()

    def clear(self) -> None:
        self._question.setText("")
        self.hide()

    def question(self) -> str:
        """Empty when nothing is asked."""
        return self._question.text()

    def yes(self) -> Key:
        return self._yes

    def no(self) -> Key:
        return self._no

    def neither(self) -> Key:
        return self._neither

    def _decline(self) -> None:
        self.clear()
        self.declined.emit()

    def _answer(self, is_yes: bool) -> None:
        self.clear()
        self.answered.emit(is_yes)
