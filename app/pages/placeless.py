"""What a page is for, shown while nobody has said where they are."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QWidget

from app.widgets.key import Key
from app.widgets.text import Panel, Text


class Placeless(Panel):
    """`site_wanted`: the person wants to say where they are."""

    site_wanted = Signal()

    def __init__(self, explanation: str, why: str, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self._to_site = Key(self.tr("Enter your site"), "primary")
        self._to_site.clicked.connect(self.site_wanted)
        self.column.addWidget(Text(explanation))
        self.column.addWidget(Text(why, "quiet"))
        self.column.addWidget(self._to_site, 0, Qt.AlignmentFlag.AlignLeft)

    def site_button(self) -> Key:
        return self._to_site
