"""Keys of which one is down."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QButtonGroup, QSizePolicy, QWidget

from app.widgets.flow import Flow
from app.widgets.key import Key


class Choice(QWidget):
    """Arrow keys move between them. `chosen` fires for the person, not for `show_choice`."""

    chosen = Signal(str)

    def __init__(
        self, name: str, options: Sequence[tuple[str, str]], parent: QWidget | None = None
    ) -> None:
        """`options`: pairs of a key and the words on it."""
        super().__init__(parent)
        self.setAccessibleName(name)
        self._keys: dict[str, Key] = {}
        self._group = QButtonGroup(self)
        self._flow = Flow(self)
        for option, words in options:
            self._add(name, option, words)
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    def _add(self, name: str, option: str, words: str) -> None:
        key = Key(words)
        key.setCheckable(True)
        key.setAccessibleName(f"{name}: {words}")
        key.clicked.connect(lambda: self.chosen.emit(option))
        self._group.addButton(key)
        self._keys[option] = key
        self._flow.addWidget(key)

    def choice(self) -> str:
        return next((option for option, key in self._keys.items() if key.isChecked()), "")

    def options(self) -> list[str]:
        """In the order of the keys."""
        return list(self._keys)

    def show_choice(self, option: str) -> None:
        self._keys[option].setChecked(True)

    def show_none(self) -> None:
        """All keys up."""
        self._group.setExclusive(False)
        for key in self._keys.values():
            key.setChecked(False)
        self._group.setExclusive(True)

    def button(self, option: str) -> Key:
        return self._keys[option]
