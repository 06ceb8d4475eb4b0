"""A choice whose options come and go."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QBoxLayout, QWidget

from app.widgets.choice import Choice
from app.widgets.text import Text


class OptionKeys(QWidget):
    """A name beside or above keys that are rebuilt only when the options are others than before."""

    chosen = Signal(str)

    def __init__(self, name: str, is_beside: bool = False, parent: QWidget | None = None) -> None:
        """`is_beside`: the name stands beside the keys."""
        super().__init__(parent)
        self._name = name
        self._options: list[tuple[str, str]] = []
        self._choice: Choice | None = None
        way = QBoxLayout.Direction.LeftToRight if is_beside else QBoxLayout.Direction.TopToBottom
        self._box = QBoxLayout(way, self)
        self._box.setContentsMargins(0, 0, 0, 0)
        self._box.setSpacing(8 if is_beside else 3)
        title = Text(name, "quiet" if is_beside else "")
        title.setWordWrap(not is_beside)
        self._box.addWidget(title)

    def offer(self, options: Sequence[tuple[str, str]], chosen: str) -> None:
        """`options`: pairs of a key and the words on it."""
        if list(options) != self._options:
            self._options = list(options)
            self._rebuild()
        if self._choice is not None and chosen in self._choice.options():
            self._choice.show_choice(chosen)

    def choice(self) -> str:
        """Empty without options."""
        return "" if self._choice is None else self._choice.choice()

    def keys(self) -> Choice | None:
        return self._choice

    def _rebuild(self) -> None:
        if self._choice is not None:
            self._choice.hide()
            self._box.removeWidget(self._choice)
            self._choice.deleteLater()
            self._choice = None
        if self._options:
            self._choice = Choice(self._name, self._options)
            self._choice.chosen.connect(self.chosen)
            self._box.addWidget(self._choice, 1)
