"""The legs of the present axis state: shape, figures, a way to discard each or to turn it over."""

from __future__ import annotations

from collections.abc import Collection, Sequence

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
    exchange = Signal()

    def __init__(self, theme: Theme, index: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._index = index
        self._name = Text()
        self._rate = Text()
        self._facts = Text("", "small")
        self._ask = Key(self.tr("Discard"))
        self._sure = Key(self.tr("Discard it"))
        self._keep = Key(self.tr("Keep it"))
        self._contradicts = Text(self.tr("Contradicts the others."), "caution")
        self._exchange = Key(self.tr("Exchange north and south"))
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
        grid.addWidget(self._contradicts, 4, 1, 1, 2)
        grid.addWidget(self._exchange, 5, 1, 1, 2, Qt.AlignmentFlag.AlignLeft)
        self._ask.clicked.connect(lambda: self._asking(True))
        self._keep.clicked.connect(lambda: self._asking(False))
        self._sure.clicked.connect(self.discard)
        self._exchange.clicked.connect(self.exchange)
        self._asking(False)

    def show_words(
        self,
        words: LegWords,
        is_watched: bool,
        contradicts: bool = False,
        is_exchanged: bool = False,
    ) -> None:
        """`contradicts`: it may be the leg that is wrong among those that disagree; `is_exchanged`:
        its north and south are read exchanged.
        """
        self._name.setText(
            self.tr("{star}, watched now").format(star=words.label) if is_watched else words.label
        )
        self._rate.say(words.rate)
        self._facts.say("\n".join(line for line in (words.place, words.extent) if line))
        self._ask.setAccessibleName(self.tr("Discard the leg {leg}").format(leg=words.label))
        self._exchange.setAccessibleName(
            self.tr("Exchange north and south of the leg {leg}").format(leg=words.label)
        )
        self._exchange.setText(
            self.tr("Exchange back") if is_exchanged else self.tr("Exchange north and south")
        )
        self._contradicts.setVisible(contradicts)
        self._exchange.setVisible(contradicts or is_exchanged)
        self.setAccessibleName(f"{words.label}, {shape_name(self._index)}, {words.rate}")

    def _asking(self, asking: bool) -> None:
        self._ask.setVisible(not asking)
        self._sure.setVisible(asking)
        self._keep.setVisible(asking)
        if asking:
            self._keep.setFocus()

    def exchange_key(self) -> Key:
        """Shown while the leg contradicts others."""
        return self._exchange

    def buttons(self) -> tuple[Key, Key, Key]:
        """Ask, sure, keep."""
        return self._ask, self._sure, self._keep


class LegList(QWidget):
    """`discard` carries the label of the leg to leave out, `exchange` of that to turn over."""

    discard = Signal(str)
    exchange = Signal(str)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._rows: dict[str, LegRow] = {}
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(0)

    def show_legs(
        self,
        legs: Sequence[tuple[int, LegWords]],
        watching: str | None,
        contradicting: Collection[str] = (),
        exchanged: Collection[str] = (),
    ) -> None:
        """`legs`: index of the shape, and the words, of each; the others: labels of some."""
        present = {words.label for _index, words in legs}
        for gone in [label for label in self._rows if label not in present]:
            row = self._rows.pop(gone)
            self._column.removeWidget(row)
            row.deleteLater()
        for index, words in legs:
            if words.label not in self._rows:
                self._rows[words.label] = self._new_row(index, words.label)
            self._rows[words.label].show_words(
                words,
                words.label == watching,
                words.label in contradicting,
                words.label in exchanged,
            )

    def _new_row(self, index: int, label: str) -> LegRow:
        row = LegRow(self._theme, index)
        row.discard.connect(lambda: self.discard.emit(label))
        row.exchange.connect(lambda: self.exchange.emit(label))
        self._column.addWidget(row)
        return row

    def row(self, label: str) -> LegRow:
        return self._rows[label]
