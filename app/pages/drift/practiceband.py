"""Says that what is seen is practice, and leads back to the real night."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from app.widgets.key import Key
from app.widgets.reflow import Reflow
from app.widgets.text import Panel, Text
from core.language import say
from core.sky.site import Site


class PracticeBand(Panel):
    """`back` asks for tonight."""

    back = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self.setAccessibleName(self.tr("Practice"))
        self._said = Text("", "quiet")
        self._back = Key(self.tr("Back to tonight"))
        self._back.clicked.connect(self.back)
        self.column.setContentsMargins(16, 4, 8, 4)
        self.column.addWidget(Reflow((self._said, self._back), 520, (1, 0)))
        self.hide()

    def show_practice(self, site: Site | None) -> None:
        """`site` of the practice under way, None when what is seen is real."""
        self.setVisible(site is not None)
        if site is not None:
            where = say(site.name) if site.name else self.tr("your site")
            self._said.say(
                self.tr(
                    "Practice at {where}: nothing here is kept; your own night is untouched."
                ).format(where=where)
            )

    def said(self) -> str:
        return self._said.text()

    def back_button(self) -> Key:
        return self._back
