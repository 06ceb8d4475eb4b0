"""How much each cause does, as bars from the largest down, against what is allowed."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.theme.theme import Theme

GAP_PX = 12
ROOM = 1.04  # beyond the longest bar


@dataclass(frozen=True)
class Cause:
    """`size` in any unit, `words` the size with it."""

    name: str
    size: float
    words: str


class CauseBars(QWidget):
    """A bar past the dotted line is more than is allowed; it is filled, the others are hollow."""

    def __init__(self, theme: Theme, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._causes: tuple[Cause, ...] = ()
        self._allowed = Cause("", 0.0, "")
        self.setAccessibleName(name)
        policy = QSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setSizePolicy(policy)
        theme.changed.connect(self.updateGeometry)
        theme.changed.connect(self.update)

    def show_causes(self, causes: Sequence[Cause], allowed: Cause) -> None:
        """`allowed`: what one cause may do at most; its name stands beside the dotted line."""
        self._causes, self._allowed = tuple(causes), allowed
        said = [f"{one.name} {one.words}" for one in (*causes, allowed)]
        self.setAccessibleDescription("; ".join(said))
        self.updateGeometry()
        self.update()

    def causes(self) -> tuple[Cause, ...]:
        return self._causes

    def sizeHint(self) -> QSize:
        rows = len(self._causes) + 1
        return QSize(240, rows * self._row_px() if self._causes else 0)

    def minimumSizeHint(self) -> QSize:
        return self.sizeHint()

    def paintEvent(self, _event: QPaintEvent) -> None:
        if not self._causes:
            return
        painter = QPainter(self)
        scale = self._scale()
        for number, cause in enumerate(self._causes):
            self._draw_bar(painter, number, cause, scale)
        self._draw_allowed(painter, scale)
        painter.end()

    def _row_px(self) -> int:
        return round(1.5 * self.fontMetrics().height())

    def _left(self) -> int:
        widths = [self.fontMetrics().horizontalAdvance(one.name) for one in self._causes]
        return max(widths, default=0) + GAP_PX

    def _scale(self) -> float:
        """Pixels a unit, so that the longest bar and its words fit."""
        metrics = self.fontMetrics()
        words = max(metrics.horizontalAdvance(one.words) for one in self._causes) + GAP_PX
        room = max(self.width() - self._left() - words, 20)
        return room / max(*(ROOM * one.size for one in self._causes), self._allowed.size, 1e-9)

    def _draw_bar(self, painter: QPainter, number: int, cause: Cause, scale: float) -> None:
        look, row = self._theme.look, self._row_px()
        top, left = number * row, self._left()
        painter.setPen(QColor(look.text))
        side = Qt.AlignmentFlag.AlignVCenter
        painter.drawText(QRectF(0, top, left, row), side, cause.name)
        is_over = cause.size > self._allowed.size
        painter.setPen(QPen(QColor(look.accent if is_over else look.edge), 2))
        painter.setBrush(QColor(look.accent) if is_over else Qt.BrushStyle.NoBrush)
        length = max(cause.size * scale, 2.0)
        painter.drawRect(QRectF(left, top + 0.25 * row, length, 0.5 * row))
        painter.setPen(QColor(look.text))
        painter.drawText(QRectF(left + length + GAP_PX, top, row * 20, row), side, cause.words)

    def _draw_allowed(self, painter: QPainter, scale: float) -> None:
        look, row = self._theme.look, self._row_px()
        bottom = len(self._causes) * row
        x = self._left() + self._allowed.size * scale
        painter.setPen(QPen(QColor(look.text), 2, Qt.PenStyle.DotLine))
        painter.drawLine(round(x), 0, round(x), bottom + round(0.3 * row))
        painter.setPen(QColor(look.quiet))
        words = f"{self._allowed.name} {self._allowed.words}"
        width = self.fontMetrics().horizontalAdvance(words)
        start = min(max(x - 0.5 * width, 0.0), max(self.width() - width, 0.0))
        where = QRectF(start, bottom + 0.2 * row, width + 4, 0.8 * row)
        painter.drawText(where, Qt.AlignmentFlag.AlignVCenter, words)
