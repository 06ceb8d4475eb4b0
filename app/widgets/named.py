"""A quiet name above a widget that has none of its own."""

from __future__ import annotations

from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.widgets.text import Text


class Named(QWidget):
    """`below`: a small sentence under it."""

    def __init__(
        self, name: str, part: QWidget, below: str = "", parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(3)
        column.addWidget(Text(name))
        column.addWidget(part)
        if below:
            column.addWidget(Text(below, "small"))
        self.setFocusProxy(part)
