"""A small number with a key to lower and one to raise it."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QWidget

from app.widgets.key import Key
from app.widgets.text import Text


class Stepper(QWidget):
    """Whole steps from 0 to `most`. `stepped` carries the new number, for the person alone."""

    stepped = Signal(float)

    def __init__(self, name: str, most: float, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._most = most
        self._value = 0.0
        self._number = Text()
        self._number.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.less, self.more = Key("−"), Key("+")
        self.less.setAccessibleName(self.tr("{name}: less").format(name=name))
        self.more.setAccessibleName(self.tr("{name}: more").format(name=name))
        self.less.clicked.connect(lambda: self._step(-1.0))
        self.more.clicked.connect(lambda: self._step(1.0))
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(6)
        row.addWidget(Text(name), 1)
        for part in (self.less, self._number, self.more):
            row.addWidget(part)
        self.show_value(0.0)

    def value(self) -> float:
        return self._value

    def show_value(self, value: float) -> None:
        self._value = value
        self._number.setText(f"{value:g}")
        self._number.setMinimumWidth(2 * self.fontMetrics().horizontalAdvance("00"))
        self.less.setEnabled(value > 0.0)
        self.more.setEnabled(value < self._most)
        for key in (self.less, self.more):
            key.setAccessibleDescription(f"{value:g}")

    def _step(self, way: float) -> None:
        wanted = min(max(self._value + way, 0.0), self._most)
        if wanted != self._value:
            self.show_value(wanted)
            self.stepped.emit(wanted)
