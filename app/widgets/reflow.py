"""Two parts side by side where there is room, one above the other where there is not."""

from __future__ import annotations

from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QWidget

Direction = QBoxLayout.Direction


class Reflow(QWidget):
    """`room_px` is the width from which both fit side by side, at the usual text size."""

    def __init__(
        self,
        first: QWidget,
        second: QWidget,
        room_px: int,
        shares: tuple[int, int] = (1, 1),
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._room_px = room_px
        self._box = QBoxLayout(Direction.LeftToRight, self)
        self._box.setContentsMargins(0, 0, 0, 0)
        self._box.setSpacing(12)
        self._box.addWidget(first, shares[0])
        self._box.addWidget(second, shares[1])

    def is_side_by_side(self) -> bool:
        return self._box.direction() is Direction.LeftToRight

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        # The text size is the measure: twice the text needs twice the room.
        enough = self.width() >= self._room_px * self.fontInfo().pixelSize() / 15
        wanted = Direction.LeftToRight if enough else Direction.TopToBottom
        if self._box.direction() is not wanted:
            self._box.setDirection(wanted)
