"""What the Pole page says before there is a site."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.widgets.key import Key
from app.widgets.text import Panel, Text


class Empty(Panel):
    site_wanted = Signal()
    practice_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent=parent)
        self._to_site = Key(self.tr("Enter your site"), "primary")
        self._practice = Key(self.tr("Look round at an invented site"))
        self._to_site.clicked.connect(self.site_wanted)
        self._practice.clicked.connect(self.practice_wanted)
        words = self.tr(
            "How high to set the axis, where the pole star stands in a polar-axis sight, and how "
            "to come near the pole when it is hidden: all that follows from where you are."
        )
        self.column.addWidget(Text(words))
        keys = QWidget()
        column = QVBoxLayout(keys)
        column.setContentsMargins(0, 0, 0, 0)
        for key in (self._to_site, self._practice):
            column.addWidget(key, 0, Qt.AlignmentFlag.AlignLeft)
        self.column.addWidget(keys)

    def site_button(self) -> Key:
        return self._to_site

    def practice_button(self) -> Key:
        return self._practice
