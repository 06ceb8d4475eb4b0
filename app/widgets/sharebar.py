"""A part of a whole as a thin bar; what is not known yet stands open at its end."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.theme.theme import Theme


class ShareBar(QWidget):
    """`share` and `at_best` from 0 to 1. The words beside it say the same."""

    def __init__(
        self, theme: Theme, share: float, at_best: float, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._theme = theme
        self._share, self._at_best = share, at_best
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(self.tr("{share:.2f} of 1").format(share=share))

    def sizeHint(self) -> QSize:
        return QSize(80, round(10 * self._theme.scale))

    def paintEvent(self, _event: QPaintEvent) -> None:
        look = self._theme.look
        painter = QPainter(self)
        whole = QRectF(0.5, 0.5, self.width() - 1.0, self.height() - 1.0)
        painter.setPen(QPen(QColor(look.line), 1))
        painter.setBrush(QColor(look.well))
        painter.drawRect(whole)
        part = QRectF(whole.left(), whole.top(), whole.width() * self._share, whole.height())
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(look.accent))
        painter.drawRect(part)
        if self._at_best > self._share:
            end = whole.width() * self._at_best
            hope = QRectF(part.right(), whole.top(), end - part.width(), whole.height())
            painter.setPen(QPen(QColor(look.accent), 1, Qt.PenStyle.DashLine))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(hope)
        painter.end()
