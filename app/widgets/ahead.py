"""What Qt would do at the first showing of a part, done before it is shown."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QSize
from PySide6.QtGui import QPixmap, QRegion
from PySide6.QtWidgets import QWidget


def polish(part: QWidget) -> None:
    """Gives all that the part holds its style."""
    for inside in part.findChildren(QWidget):
        inside.ensurePolished()


def lay_out(part: QWidget, size: QSize) -> None:
    """Lays out all that a hidden part holds, by rendering one pixel of it; not one that is seen."""
    if part.isHidden():
        part.resize(size)
        part.render(QPixmap(1, 1), QPoint(), QRegion(0, 0, 1, 1))
