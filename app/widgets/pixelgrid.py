"""A star's image drawn over the pixels that see it, to scale."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen, QRadialGradient
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.theme.theme import Theme

FEWEST = 5  # pixels across the drawing
MOST = 40
ROUND = 3.2  # the drawing is so many times as wide as the star


class PixelGrid(QWidget):
    """`across`: pixels across the star's width at half its brightness; None shows nothing."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._across: float | None = None
        self.setAccessibleName(self.tr("A star over the pixels of the camera, to scale"))
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        theme.changed.connect(self.updateGeometry)

    def sizeHint(self) -> QSize:
        side = round(130 + 40 * self._theme.scale)
        return QSize(side, side)

    def show_across(self, across: float | None) -> None:
        self._across = across
        words = "" if across is None else self.tr("{n:.1f} pixels across the star")
        self.setAccessibleDescription(words.format(n=across))
        self.setVisible(across is not None)
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        if self._across is None:
            return
        look = self._theme.look
        painter = QPainter(self)
        count = min(max(round(self._across * ROUND), FEWEST), MOST) | 1  # a pixel in the middle
        side = self.width() / count
        box = QRectF(0.5, 0.5, self.width() - 1.0, self.height() - 1.0)
        painter.fillRect(box, QColor(look.well))
        middle, radius = box.center(), self._across * side / 2.0
        glow = QRadialGradient(middle, 2.0 * radius)
        for place, strength in ((0.0, 1.0), (0.25, 0.84), (0.5, 0.5), (0.75, 0.2), (1.0, 0.0)):
            colour = QColor(look.accent)
            colour.setAlphaF(strength)
            glow.setColorAt(place, colour)
        painter.fillRect(box, glow)
        painter.setPen(QPen(QColor(look.line), 1))
        for number in range(1, count):
            place = number * side
            painter.drawLine(QPointF(place, box.top()), QPointF(place, box.bottom()))
            painter.drawLine(QPointF(box.left(), place), QPointF(box.right(), place))
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(QColor(look.text), 2, Qt.PenStyle.DashLine))
        painter.drawEllipse(middle, radius, radius)
        painter.setPen(QPen(QColor(look.edge), 1))
        painter.drawRect(box)
        painter.end()
