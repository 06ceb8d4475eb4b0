"""A drawing in a circle: its size, its middle and radius, the arrow keys, the ring of the focus."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QKeyEvent, QPainter, QPen, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.theme.theme import Theme

WINDOW_SHARE = 0.55  # more of the window's height would only push the rest away
FOCUS_PX = 3

_ARROWS = {
    Qt.Key.Key_Left: QPointF(-1, 0),
    Qt.Key.Key_Right: QPointF(1, 0),
    Qt.Key.Key_Up: QPointF(0, -1),
    Qt.Key.Key_Down: QPointF(0, 1),
}


class RoundDrawing(QWidget):
    """`least_px`: (side, and how much of it grows with the text) of the smallest drawing.

    Room for letters is left round the rim. The drawing lies at the top where there is more height
    than a disc can use.
    """

    def __init__(
        self,
        theme: Theme,
        name: str,
        least_px: tuple[int, int],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._theme = theme
        self._least_px = least_px
        self.setAccessibleName(name)
        self.setMouseTracking(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        theme.changed.connect(self._restyle)

    def sizeHint(self) -> QSize:
        side = round(280 + 160 * self._theme.scale)
        return QSize(side, side)

    def minimumSizeHint(self) -> QSize:
        fixed, growing = self._least_px
        side = round(fixed + growing * self._theme.scale)
        return QSize(side, side)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if self.isWindow():
            return
        room = round(WINDOW_SHARE * self.window().height())
        self.setMaximumHeight(max(min(self.width(), room), self.minimumSizeHint().height()))

    def middle(self) -> QPointF:
        return QPointF(self.width() / 2.0, min(self.height(), self.width()) / 2.0)

    def radius(self) -> float:
        aside = QFontMetricsF(self.font()).height() + 8.0
        return max(min(self.width(), self.height()) / 2.0 - aside, 20.0)

    def share_of(self, point: QPointF) -> QPointF:
        """A point of the widget, from the middle, in parts of the radius."""
        return (point - self.middle()) / self.radius()

    def arrow_of(self, event: QKeyEvent) -> QPointF | None:
        """The way an arrow key points, of length one; None for any other key."""
        return _ARROWS.get(Qt.Key(event.key()))

    def draw_focus(self, painter: QPainter) -> None:
        """Round the rim, while the keys act here."""
        if self.hasFocus():
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(QColor(self._theme.look.accent), FOCUS_PX))
            painter.drawEllipse(self.middle(), self.radius(), self.radius())

    def _restyle(self) -> None:
        self.updateGeometry()
        self.update()
