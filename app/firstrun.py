"""The guide for the first start: four screens at most, above the page, skipped with one key."""

from __future__ import annotations

from PySide6.QtCore import QSettings, Signal
from PySide6.QtWidgets import QWidget

from app.helptexts import screens
from app.widgets.key import Key
from app.widgets.keyrow import KeyRow
from app.widgets.text import Panel, Text

SEEN = "guide_seen"


class FirstRun(Panel):
    """Hidden once it was read or skipped, for ever. `site_wanted` at the end of it."""

    site_wanted = Signal()

    def __init__(self, settings: QSettings, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self._settings = settings
        self._screens = screens()
        self._at = 0
        self._where = Text("", "small")
        self._title = Text("", "question")
        self._text = Text()
        self._next = Key("", "primary")
        self._back = Key(self.tr("Back"))
        self._skip = Key(self.tr("Skip the guide"))
        self._next.clicked.connect(self._go_on)
        self._back.clicked.connect(lambda: self._show(self._at - 1))
        self._skip.clicked.connect(self._end)
        keys = KeyRow((self._next, self._back, self._skip))
        for part in (self._where, self._title, self._text, keys):
            self.column.addWidget(part)
        self.setAccessibleName(self.tr("Guide for the first start"))
        self._show(0)
        self.setVisible(not settings.value(SEEN, False, bool))

    def title(self) -> str:
        return self._title.text()

    def next_button(self) -> Key:
        return self._next

    def back_button(self) -> Key:
        return self._back

    def skip_button(self) -> Key:
        return self._skip

    def _show(self, number: int) -> None:
        self._at = number
        screen, count = self._screens[number], len(self._screens)
        is_last = number == count - 1
        self._where.setText(self.tr("{n} of {count}").format(n=number + 1, count=count))
        self._title.setText(screen.title)
        self._text.setText(screen.text)
        self._next.setText(self.tr("Enter your site") if is_last else self.tr("Next"))
        self._back.setEnabled(number > 0)

    def _go_on(self) -> None:
        if self._at + 1 < len(self._screens):
            self._show(self._at + 1)
            return
        self._end()
        self.site_wanted.emit()

    def _end(self) -> None:
        self._settings.setValue(SEEN, True)
        self.hide()
