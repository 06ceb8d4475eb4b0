"""A few rows of short texts under quiet heads, to read and to copy, not to press."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QWidget

from app.widgets.text import Text


class Rows(QWidget):
    """The first column reads from the left, figures stand to the right of theirs."""

    def __init__(self, name: str, heads: Sequence[str], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        self._cells: list[Text] = []
        self._rows: list[tuple[str, ...]] = []
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(18)
        self._grid.setVerticalSpacing(2)
        for column, head in enumerate(heads):
            self._put(0, column, head, "small")
            self._grid.setColumnStretch(column, 1)
        self._heads = len(heads)

    def show_rows(self, rows: Sequence[tuple[str, ...]]) -> None:
        """Each as many texts as there are heads."""
        if list(rows) == self._rows:
            return
        self._rows = list(rows)
        for cell in self._cells:
            cell.hide()
            cell.deleteLater()
        self._cells = [
            self._put(number, column, text, "")
            for number, row in enumerate(rows, start=1)
            for column, text in enumerate(row)
        ]
        self.setAccessibleDescription("; ".join(", ".join(row) for row in rows))
        self.setVisible(bool(rows))

    def rows(self) -> list[tuple[str, ...]]:
        return list(self._rows)

    def _put(self, row: int, column: int, text: str, voice: str) -> Text:
        cell = Text(text, voice)
        side = Qt.AlignmentFlag.AlignRight if column else Qt.AlignmentFlag.AlignLeft
        cell.setAlignment(side | Qt.AlignmentFlag.AlignTop)
        self._grid.addWidget(cell, row, column)
        return cell
