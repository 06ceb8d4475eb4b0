"""A row of keys of which one is down."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QPushButton, QWidget


class Choice(QWidget):
    """Arrow keys move within the row. `chosen` fires for the person, not for `show_choice`."""

    chosen = Signal(str)

    def __init__(
        self, name: str, options: Sequence[tuple[str, str]], parent: QWidget | None = None
    ) -> None:
        """`options`: pairs of a key and the words on it."""
        super().__init__(parent)
        self.setAccessibleName(name)
        self._buttons: dict[str, QPushButton] = {}
        self._group = QButtonGroup(self)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(4)
        for key, words in options:
            self._add(row, name, key, words)
        row.addStretch()

    def _add(self, row: QHBoxLayout, name: str, key: str, words: str) -> None:
        button = QPushButton(words)
        button.setCheckable(True)
        button.setAccessibleName(f"{name}: {words}")
        button.clicked.connect(lambda: self.chosen.emit(key))
        self._group.addButton(button)
        self._buttons[key] = button
        row.addWidget(button)

    def choice(self) -> str:
        return next((key for key, button in self._buttons.items() if button.isChecked()), "")

    def show_choice(self, key: str) -> None:
        self._buttons[key].setChecked(True)

    def button(self, key: str) -> QPushButton:
        return self._buttons[key]
