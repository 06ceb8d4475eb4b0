"""A key that stays down, with a mark that says so."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from app.widgets.key import Key


class Tick(Key):
    """`ticked` fires for the person, not for `show_tick`."""

    ticked = Signal(bool)

    def __init__(self, words: str, name: str = "", parent: QWidget | None = None) -> None:
        """`name`: for those who cannot see what the key belongs to."""
        super().__init__(parent=parent)
        self._words = words
        self.setCheckable(True)
        self.setAccessibleName(name or words)
        self.toggled.connect(lambda _down: self._show_words())
        self.clicked.connect(self.ticked)
        self._show_words()

    def show_tick(self, down: bool) -> None:
        self.setChecked(down)

    def _show_words(self) -> None:
        self.setText(f"{'☑' if self.isChecked() else '☐'}  {self._words}")
