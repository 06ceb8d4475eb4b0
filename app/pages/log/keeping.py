"""Keeping the log safe: a backup, the way back from one, and nights from elsewhere."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.widgets.key import Key
from app.widgets.keyrow import KeyRow
from app.widgets.text import Panel, Text


class Keeping(QWidget):
    """Each signal asks for the file picker."""

    back_up_wanted = Signal()
    take_in_wanted = Signal()
    salvage_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._back_up = Key(self.tr("Save a backup"), "primary")
        self._take_in = Key(self.tr("Restore or import"))
        self._salvage = Key(self.tr("Salvage a damaged log file…"))
        self._salvage.clicked.connect(self.salvage_wanted)
        self._back_up.clicked.connect(self.back_up_wanted)
        self._take_in.clicked.connect(self.take_in_wanted)
        out, back = Panel(self.tr("Backup")), Panel(self.tr("Restore and import"))
        out.column.addWidget(Text(self._out_words(), "quiet"))
        out.column.addWidget(KeyRow((self._back_up,)))
        back.column.addWidget(Text(self._back_words(), "quiet"))
        back.column.addWidget(KeyRow((self._take_in,)))
        damaged = Panel(self.tr("If the log is damaged"))
        damaged.column.addWidget(Text(self._damage_words(), "quiet"))
        damaged.column.addWidget(KeyRow((self._salvage,)))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(12)
        for part in (out, back, damaged):
            column.addWidget(part)
        column.addStretch()
        self.setFocusProxy(self._back_up)

    def back_up_button(self) -> Key:
        return self._back_up

    def take_in_button(self) -> Key:
        return self._take_in

    def salvage_button(self) -> Key:
        return self._salvage

    def _out_words(self) -> str:
        return self.tr(
            "All nights, all readings and all settings in one file. It is read back before you are "
            "told that it is good. Put it on another disk than this one."
        )

    def _back_words(self) -> str:
        return self.tr(
            "A backup or a night exported as JSON: what it holds is added to this log. Nothing "
            "that is here is replaced or lost."
        )

    def _damage_words(self) -> str:
        return self.tr(
            "A damaged log is salvaged by itself: the old file is kept untouched beside a new one, "
            "all that can be read is saved into the new one, and you are told how much that is. "
            "Any other damaged log, whatever its name, can be salvaged into this log here. Choose "
            "the log in use to have it looked through."
        )
