"""The legs of the present axis state, each with its shape, its figures and a way to discard it."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QGridLayout, QHBoxLayout, QVBoxLayout, QWidget

from app.pages.drift.legwords import LegWords
from app.theme.theme import Theme
from app.widgets.key import Key
from app.widgets.legshapes import LegShape, shape_name
from app.widgets.text import Text


class LegRow(QFrame):
    """Discarding asks once more in place, so that no cold finger throws a leg away."""

    discard = Signal()

    def __init__(self, theme: Theme, index: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._index = index
        self._name = Text()
        self._rate = Text()
        self._facts = Text("", "small")
        self._ask = Key(self.tr("Discard"))
        self._sure = Key(self.tr("Discard it"))
        self._keep = Key(self.tr("Keep it"))
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 6, 0, 6)
        grid.setHorizontalSpacing(10)
        grid.setVerticalSpacing(0)
        grid.setColumnStretch(1, 1)
        grid.addWidget(LegShape(theme, index), 0, 0, Qt.AlignmentFlag.AlignVCenter)
        grid.addWidget(self._name, 0, 1)
        grid.addWidget(self._ask, 0, 2, 2, 1, Qt.AlignmentFlag.AlignTop)
        grid.addWidget(self._rate, 1, 1)
        grid.addWidget(self._facts, 2, 1, 1, 2)
        sure = QHBoxLayout()
        sure.addWidget(self._sure)
        sure.addWidget(self._keep)
        sure.addStretch()
        grid.addLayout(sure, 3, 1, 1, 2)
        self._ask.clicked.connect(lambda: self._asking(True))
        self._keep.clicked.connect(lambda: self._asking(False))
        self._sure.clicked.connect(self.discard)
        self._asking(False)

    def show_words(self, words: LegWords, is_watched: bool) -> None:
        self._name.setText(
            self.tr("{star}, watched now").format(star=words.label) if is_watched else words.label
        )
        self._rate.say(words.rate)
        self._facts.say("\n".join(line for line in (words.place, words.extent) if line))
        self._ask.setAccessibleName(self.tr("Discard the leg {leg}").format(leg=words.label))
        self.setAccessibleName(f"{words.label}, {shape_name(self._index)}, {words.rate}")

    def _asking(self, asking: bool) -> None:
        self._ask.setVisible(not asking)
        self._sure.setVisible(asking)
        self._keep.setVisible(asking)
        if asking:
            self._keep.setFocus()

    def buttons(self) -> tuple[Key, Key, Key]:
        """Ask, sure, keep."""
        return self._ask, self._sure, self._keep


class LegList(QWidget):
    """`discard` carries the label of the leg to leave out."""

    discard = Signal(str)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._rows: dict[str, LegRow] = {}
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(0)

    def show_legs(self, legs: Sequence[tuple[int, LegWords]], watching: str | None) -> None:
        """`legs`: index of the shape, and the words, of each."""
        present = {words.label for _index, words in legs}
        for gone in [label for label in self._rows if label not in present]:
            row = self._rows.pop(gone)
            self._column.removeWidget(row)
            row.deleteLater()
        for index, words in legs:
            if words.label not in self._rows:
                self._rows[words.label] = self._new_row(index, words.label)
            self._rows[words.label].show_words(words, words.label == watching)

    def _new_row(self, index: int, label: str) -> LegRow:
        row = LegRow(self._theme, index)
        row.discard.connect(lambda: self.discard.emit(label))
        self._column.addWidget(row)
        return row

    def row(self, label: str) -> LegRow:
        return self._rows[label]
