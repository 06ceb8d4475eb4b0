"""A line to type in, with its name above and what is understood or wrong below."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QLineEdit, QSizePolicy, QVBoxLayout, QWidget

from app.widgets.caret import colour_caret
from app.widgets.text import Text


class Field(QWidget):
    """`edited` fires on every change by the person, `left` on leaving, `submitted` on Enter."""

    edited = Signal(str)
    left = Signal()
    submitted = Signal()

    def __init__(
        self,
        name: str,
        example: str = "",
        has_name_above: bool = True,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._name = Text(name)
        self._line = QLineEdit()
        self._line.setPlaceholderText(example)
        colour_caret(self._line)
        self._line.setAccessibleName(name)
        self._below = Text("", "small")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(3)
        for part in (self._name, self._line, self._below):
            column.addWidget(part)
        self._below.hide()
        self._name.setVisible(has_name_above)
        self._line.textEdited.connect(self.edited)
        self._line.editingFinished.connect(self.left)
        self._line.returnPressed.connect(self.submitted)
        self.setFocusProxy(self._line)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)

    def text(self) -> str:
        return self._line.text().strip()

    def show_text(self, text: str) -> None:
        self._line.setText(text)

    def select_all(self) -> None:
        self._line.selectAll()

    def note(self, sentence: str) -> None:
        """What is understood by the text, quietly; clears a complaint."""
        self._tell(sentence, wrong=False)

    def complain(self, sentence: str) -> None:
        """What is wrong with the text, in words and with a dashed outline."""
        self._tell(sentence, wrong=True)

    def line(self) -> QLineEdit:
        """Where the person types."""
        return self._line

    def is_wrong(self) -> bool:
        return bool(self._line.property("wrong"))

    def is_free(self) -> bool:
        """Nobody is typing here, and nothing typed waits to be put right."""
        return not self._line.hasFocus() and not self.is_wrong()

    def below(self) -> str:
        return self._below.text()

    def _tell(self, sentence: str, wrong: bool) -> None:
        self._below.say(sentence)
        self._line.setAccessibleDescription(sentence)
        if wrong != self.is_wrong():
            self._line.setProperty("wrong", wrong)
            self._below.setProperty("voice", "alarm" if wrong else "small")
            for part in (self._line, self._below):
                part.style().polish(part)
