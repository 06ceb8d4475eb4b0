"""Widgets in a row that goes on in the next line where the width ends."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QRect, QSize, Qt
from PySide6.QtWidgets import QLayout, QLayoutItem, QWidget


class Flow(QLayout):
    """Items keep the size they ask for; lines are as high as their highest item.

    Qt asks for the height at a width some hundred times while a page is laid out, so what was
    found is kept until an item changes.
    """

    def __init__(self, parent: QWidget | None = None, gap_px: int = 2) -> None:
        super().__init__(parent)
        self._gap_px = gap_px
        self._items: list[QLayoutItem] = []
        self._height: dict[int, int] = {}  # by width
        self.setContentsMargins(0, 0, 0, 0)

    def addItem(self, item: QLayoutItem) -> None:
        self._items.append(item)
        self.invalidate()

    def count(self) -> int:
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:
        return self._items[index] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:
        if not 0 <= index < len(self._items):
            return None
        self.invalidate()
        return self._items.pop(index)

    def expandingDirections(self) -> Qt.Orientation:
        return Qt.Orientation(0)

    def hasHeightForWidth(self) -> bool:
        return True

    def invalidate(self) -> None:
        self._height.clear()
        super().invalidate()

    def heightForWidth(self, width: int) -> int:
        if width not in self._height:
            self._height[width] = self._lay(QRect(0, 0, width, 0), only_measure=True)
        return self._height[width]

    def setGeometry(self, where: QRect) -> None:
        super().setGeometry(where)
        self._lay(where, only_measure=False)

    def sizeHint(self) -> QSize:
        """All in one row."""
        sizes = [item.sizeHint() for item in self._shown()]
        width = sum(size.width() for size in sizes) + self._gap_px * max(len(sizes) - 1, 0)
        return QSize(width, max((size.height() for size in sizes), default=0))

    def minimumSize(self) -> QSize:
        sizes = [item.minimumSize() for item in self._shown()]
        return QSize(
            max((size.width() for size in sizes), default=0),
            max((size.height() for size in sizes), default=0),
        )

    def _shown(self) -> list[QLayoutItem]:
        return [item for item in self._items if not item.isEmpty()]

    def _lay(self, where: QRect, only_measure: bool) -> int:
        """Places the items and returns the height they take."""
        x, y, line = where.x(), where.y(), 0
        for item in self._shown():
            size = item.sizeHint()
            if x > where.x() and x + size.width() > where.x() + where.width():
                x, y, line = where.x(), y + line + self._gap_px, 0
            if not only_measure:
                item.setGeometry(QRect(QPoint(x, y), size))
            x += size.width() + self._gap_px
            line = max(line, size.height())
        return y + line - where.y()
