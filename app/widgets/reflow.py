"""Parts side by side where there is room, one above the other where there is not."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QWidget

Direction = QBoxLayout.Direction
USUAL_TEXT_PX = 15


class Reflow(QWidget):
    """`room_px` is the width from which all fit side by side, at the usual text size.

    `shares`: how the width is divided then; equally when empty. `at_top`: parts of unlike height
    begin at one height. `reflowed` tells whether they now stand side by side.
    """

    reflowed = Signal(bool)

    def __init__(
        self,
        parts: Sequence[QWidget],
        room_px: int,
        shares: Sequence[int] = (),
        at_top: bool = False,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._room_px = room_px
        self._box = QBoxLayout(Direction.LeftToRight, self)
        self._box.setContentsMargins(0, 0, 0, 0)
        self._box.setSpacing(12)
        for part, share in zip(parts, shares or [1] * len(parts), strict=True):
            where = Qt.AlignmentFlag.AlignTop if at_top else Qt.AlignmentFlag(0)
            self._box.addWidget(part, share, where)

    def is_side_by_side(self) -> bool:
        return self._box.direction() is Direction.LeftToRight

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        # The text size is the measure: twice the text needs twice the room.
        enough = self.width() >= self._room_px * self.fontInfo().pixelSize() / USUAL_TEXT_PX
        wanted = Direction.LeftToRight if enough else Direction.TopToBottom
        if self._box.direction() is not wanted:
            self._box.setDirection(wanted)
            self.reflowed.emit(enough)
