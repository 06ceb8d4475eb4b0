"""A picture of the person's own, at night in red alone."""

from __future__ import annotations

import numpy as np
from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QImage, QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.ui.style import Theme

WIDEST_PX = 420


class Photo(QWidget):
    """As wide as there is room, no wider than `WIDEST_PX`."""

    def __init__(
        self, theme: Theme, image: QImage, name: str, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._theme = theme
        self._image = image
        self._red = _red_alone(image)
        self.setAccessibleName(name)
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)
        self.setMinimumWidth(60)
        theme.changed.connect(self.update)

    def sizeHint(self) -> QSize:
        return QSize(min(WIDEST_PX, self._image.width()), self.heightForWidth(WIDEST_PX))

    def heightForWidth(self, width: int) -> int:
        shown = min(width, WIDEST_PX, self._image.width())
        return round(shown * self._image.height() / max(self._image.width(), 1))

    def hasHeightForWidth(self) -> bool:
        return True

    def paintEvent(self, event: QPaintEvent) -> None:
        del event
        image = self._red if self._theme.look.red_only else self._image
        width = min(self.width(), WIDEST_PX, image.width())
        smooth = Qt.TransformationMode.SmoothTransformation
        painter = QPainter(self)
        painter.drawImage(0, 0, image.scaledToWidth(max(width, 1), smooth))
        painter.end()


def small(data: bytes) -> QImage | None:
    """A picture no wider than is shown; None for what is none. For a worker thread too."""
    image = QImage.fromData(data)
    if image.isNull():
        return None
    if image.width() > WIDEST_PX:
        image = image.scaledToWidth(WIDEST_PX, Qt.TransformationMode.SmoothTransformation)
    return image.convertToFormat(QImage.Format.Format_RGB32)


def _red_alone(image: QImage) -> QImage:
    """Its brightness in the red channel, half as bright as it is by day."""
    grey = image.convertToFormat(QImage.Format.Format_Grayscale8)
    rows = np.frombuffer(grey.constBits(), np.uint8).reshape(grey.height(), -1)
    red = np.zeros((grey.height(), grey.width(), 3), np.uint8)
    red[..., 0] = rows[:, : grey.width()] // 2
    width, height = grey.width(), grey.height()
    made = QImage(red.tobytes(), width, height, 3 * width, QImage.Format.Format_RGB888)
    return made.convertToFormat(QImage.Format.Format_RGB32)  # owns its memory
