"""Keeping the log safe: a backup, the way back from one, and nights from elsewhere."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.widgets.key import Key
from app.widgets.keyrow import KeyRow
from app.widgets.text import Panel, Text


class Keeping(QWidget):
    """`back_up_wanted` and `take_in_wanted` ask for the file picker."""

    back_up_wanted = Signal()
    take_in_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._back_up = Key(self.tr("Save a backup"), "primary")
        self._take_in = Key(self.tr("Restore or import"))
        self._back_up.clicked.connect(self.back_up_wanted)
        self._take_in.clicked.connect(self.take_in_wanted)
        out, back = Panel(self.tr("Backup")), Panel(self.tr("Restore and import"))
        out.column.addWidget(Text(self._out_words(), "quiet"))
        out.column.addWidget(KeyRow((self._back_up,)))
        back.column.addWidget(Text(self._back_words(), "quiet"))
        back.column.addWidget(KeyRow((self._take_in,)))
        damaged = Panel(self.tr("If the log is damaged"))
        damaged.column.addWidget(Text(self._damage_words(), "quiet"))
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

    def _out_words(self) -> str:
        return self.tr(
            "All nights, all readings and all settings in one file. It is read back before you are "
            "told that it is good. Put it on another disk than this one."
        )

    def _back_words(self) -> str:
        return self.tr(
            "A backup, a night exported as JSON, or a damaged log that was set aside: what it "
            "holds is added to this log. Nothing that is here is replaced or lost."
        )

    def _damage_words(self) -> str:
        return self.tr(
            "The program notices a damaged log when it starts: it keeps the old file beside the "
            "new one, saves into the new one all that can be read, and says how much that is. The "
            "old file can be given here again, for instance after it was repaired."
        )
