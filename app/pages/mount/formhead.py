"""The top of a form: what it is about, and the keys to keep, remove and close it."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QSizePolicy, QVBoxLayout, QWidget

from app.widgets.asking import Asking
from app.widgets.flow import Flow
from app.widgets.key import Key
from app.widgets.text import Text


class FormHead(QWidget):
    """Removing asks once more in place."""

    keep_wanted = Signal()
    removal_wanted = Signal()
    close_wanted = Signal()

    def __init__(self, title: str, is_new: bool, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._title = Text(title, "title")
        self.keep_key = Key(self.tr("Keep"), "primary")
        self.remove_key = Key(self.tr("Remove"))
        self.close_key = Key(self.tr("Close"))
        self.remove_key.setVisible(not is_new)
        self.asking = Asking()
        self._said = Text()
        self._said.hide()
        keys = QWidget()
        row = Flow(keys)
        for key in (self.keep_key, self.remove_key, self.close_key):
            row.addWidget(key)
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        keys.setSizePolicy(policy)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        for part in (self._title, keys, self.asking, self._said):
            column.addWidget(part)
        self.keep_key.clicked.connect(self.keep_wanted)
        self.close_key.clicked.connect(self.close_wanted)
        self.remove_key.clicked.connect(self._ask)
        self.asking.answered.connect(self._answered)

    def say(self, sentence: str, is_alarm: bool = False) -> None:
        self._said.setProperty("voice", "alarm" if is_alarm else "quiet")
        self._said.style().polish(self._said)
        self._said.say(sentence)

    def said(self) -> str:
        return self._said.text()

    def show_kept(self, name: str) -> None:
        self._title.setText(name)
        self.remove_key.setVisible(True)
        self.say(self.tr("Kept."))

    def _ask(self) -> None:
        form = self.tr("Remove “{name}”, from all sets too?")
        question = form.format(name=self._title.text())
        self.asking.ask(question, self.tr("Remove it"), self.tr("Leave it"))
        self.asking.no().setFocus()

    def _answered(self, is_yes: bool) -> None:
        if is_yes:
            self.removal_wanted.emit()
        else:
            self.remove_key.setFocus()
