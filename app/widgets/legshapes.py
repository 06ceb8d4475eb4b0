"""The shapes that tell legs apart, in plots and beside names."""

from __future__ import annotations

from pyqtgraph.graphicsItems.ScatterPlotItem import Symbols
from PySide6.QtCore import QPointF, QRectF, QSize
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QWidget

from app.theme.theme import Theme
from core.language import marked, say

# Name for the person, code of pyqtgraph. The cross is kept for readings that are set aside.
SHAPES = (
    (marked("circle"), "o"),
    (marked("square"), "s"),
    (marked("triangle"), "t1"),
    (marked("diamond"), "d"),
    (marked("star"), "star"),
    (marked("pentagon"), "p"),
    (marked("inverted triangle"), "t"),
    (marked("plus"), "+"),
)
SET_ASIDE = "x"


def shape_name(index: int) -> str:
    return say(SHAPES[index % len(SHAPES)][0])


def shape_code(index: int) -> str:
    return SHAPES[index % len(SHAPES)][1]


def tint(theme: Theme, index: int) -> QColor:
    return QColor(theme.look.legs[index % len(theme.look.legs)])


class LegShape(QWidget):
    """One shape, as tall as a line of text."""

    def __init__(self, theme: Theme, index: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._index = index
        self.setAccessibleName(shape_name(index))
        self.setToolTip(shape_name(index))

    def sizeHint(self) -> QSize:
        side = round(20 * self._theme.scale)
        return QSize(side, side)

    def minimumSizeHint(self) -> QSize:
        return self.sizeHint()

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        colour = tint(self._theme, self._index)
        painter.setPen(QPen(colour, 0))
        painter.setBrush(colour)
        side = 0.7 * min(self.width(), self.height())
        painter.translate(QPointF(QRectF(self.rect()).center()))
        painter.scale(side, side)
        painter.drawPath(Symbols[shape_code(self._index)])
        painter.end()
