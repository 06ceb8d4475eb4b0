"""A drawing of what is left of a picture after frames that turned are stacked."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.theme.theme import Theme
from app.widgets.decimate import thinned

Floats = NDArray[np.float64]

LEAST_PX = 0.5


class CropDrawing(QWidget):
    """The first frame, the last one, the part common to all, and the largest crop in it."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._size = (0.0, 0.0)
        self._turned_deg = 0.0
        self._common: Floats | None = None
        self._crop: Floats | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(self.tr("Drawing of the stacked picture"))
        theme.changed.connect(self.update)

    def sizeHint(self) -> QSize:
        return QSize(320, 240)

    def minimumSizeHint(self) -> QSize:
        return QSize(180, 150)

    def show_stack(
        self,
        size_px: tuple[float, float],
        turned_deg: float,
        common_px: Floats | None,
        crop_px: Floats | None,
    ) -> None:
        """Width and height of a frame, the last frame's turn, outlines (n, 2) from its centre, x to
        the right and y up; angles anticlockwise."""
        self._size, self._turned_deg = size_px, turned_deg
        self._common, self._crop = common_px, crop_px
        self.update()

    def _scale(self) -> float:
        reach = float(np.hypot(*self._size))
        return (min(self.width(), self.height()) - 12.0) / max(reach, 1e-9)

    def _polygon(self, points: Floats) -> QPolygonF:
        scale, middle = self._scale(), QRectF(self.rect()).center()
        right, down = thinned(scale * points[:, 0], -scale * points[:, 1], LEAST_PX)
        return QPolygonF(
            [middle + QPointF(x, y) for x, y in zip(right.tolist(), down.tolist(), strict=True)]
        )

    def _frame(self, turned_deg: float) -> QPolygonF:
        half = np.array(self._size) / 2.0
        corners = np.array([(-1, -1), (1, -1), (1, 1), (-1, 1)]) * half
        turn = np.radians(turned_deg)
        cosine, sine = np.cos(turn), np.sin(turn)
        return self._polygon(corners @ np.array([[cosine, sine], [-sine, cosine]]))

    def paintEvent(self, _event: QPaintEvent) -> None:
        if self._common is None or self._crop is None:
            return
        look = self._theme.look
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(QColor(look.quiet), 1.5))
        painter.setBrush(QColor(look.well))
        painter.drawPolygon(self._frame(0.0))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QBrush(QColor(look.chosen)))
        painter.drawPolygon(self._polygon(self._common))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(QColor(look.quiet), 1.5, Qt.PenStyle.DashLine))
        painter.drawPolygon(self._frame(self._turned_deg))
        painter.setPen(QPen(QColor(look.accent), 3))
        painter.drawPolygon(self._polygon(self._crop))
        painter.end()
