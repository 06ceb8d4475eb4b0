"""Parts in as many columns as the width has room for, each column filled from the top."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QSize
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from app.widgets.reflow import USUAL_TEXT_PX

GAP_PX = 12


class Columns(QWidget):
    """`least_px`: width of a column at the usual text size. `are_rows`: parts of a row line up
    (they are dealt out from left to right), else the columns are kept about equally long.
    """

    def __init__(
        self,
        parts: Sequence[QWidget],
        least_px: int,
        most: int = 4,
        are_rows: bool = False,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._parts: list[QWidget] = []
        self._least_px = least_px
        self._most = most
        self._are_rows = are_rows
        self._columns: list[QVBoxLayout] = []
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(GAP_PX)
        for _ in range(most):
            column = QVBoxLayout()
            column.setSpacing(GAP_PX)
            row.addLayout(column)
            self._columns.append(column)
        self.show_parts(parts)

    def show_parts(self, parts: Sequence[QWidget]) -> None:
        """Other parts; those left out are deleted."""
        for gone in [part for part in self._parts if part not in parts]:
            gone.hide()
            gone.deleteLater()
        self._parts = list(parts)
        self._deal(self._fitting())

    def parts(self) -> list[QWidget]:
        """In order."""
        return list(self._parts)

    def count(self) -> int:
        """How many columns there are now."""
        return sum(column.count() > 1 for column in self._columns)

    def minimumSizeHint(self) -> QSize:
        """One column has to fit, however many stand side by side now."""
        width = max((part.minimumSizeHint().width() for part in self._parts), default=0)
        return QSize(width, super().minimumSizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if self._fitting() != self.count():
            self._deal(self._fitting())

    def _fitting(self) -> int:
        least = self._least_px * self.fontInfo().pixelSize() / USUAL_TEXT_PX
        room = int((self.width() + GAP_PX) // (least + GAP_PX))
        return max(1, min(room, self._most, len(self._parts)))

    def _deal(self, count: int) -> None:
        for column in self._columns:
            while (item := column.itemAt(0)) is not None:
                held = item.widget()
                if held is None:
                    column.removeItem(item)
                else:  # deletes the item, whose memory of heights would outlive it otherwise
                    column.removeWidget(held)
        row = self.layout()
        assert isinstance(row, QHBoxLayout)
        heights = [0] * count
        for number, part in enumerate(self._parts):
            place = number % count if self._are_rows else heights.index(min(heights))
            heights[place] += part.sizeHint().height()
            self._columns[place].addWidget(part)
        for number, column in enumerate(self._columns):
            if column.count():
                column.addStretch()
            row.setStretch(number, 1 if number < count else 0)
