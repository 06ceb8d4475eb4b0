"""Skipping a step: the reason first, in its place below the step."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFrame, QVBoxLayout, QWidget

from app.widgets.field import Field
from app.widgets.key import Key
from app.widgets.keyrow import KeyRow


class Skipping(QFrame):
    """`skip` carries the reason; `left` follows when it is skipped or kept."""

    skip = Signal(str)
    left = Signal()

    def __init__(self, step: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("kind", "asking")
        self.setAccessibleName(self.tr("Skip “{step}”").format(step=step))
        self._reason = Field(self.tr("Why is it skipped tonight?"), self.tr("in a few words"))
        self._sure = Key(self.tr("Skip it"))
        self._keep = Key(self.tr("Leave it open"))
        self._reason.submitted.connect(self._submit)
        self._sure.clicked.connect(self._submit)
        self._keep.clicked.connect(self._leave)
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 8, 12, 8)
        column.addWidget(self._reason)
        column.addWidget(KeyRow((self._sure, self._keep)))
        self.setFocusProxy(self._reason)
        self.hide()

    def ask(self) -> None:
        self._reason.show_text("")
        self._reason.note(self.tr("It goes into the report. Cautions stay."))
        self.show()
        self._reason.setFocus()

    def reason(self) -> Field:
        return self._reason

    def sure_button(self) -> Key:
        return self._sure

    def keep_button(self) -> Key:
        return self._keep

    def _submit(self) -> None:
        if not self._reason.text():
            self._reason.complain(self.tr("Say in a few words why it is skipped."))
            self._reason.setFocus()
            return
        self.hide()
        self.skip.emit(self._reason.text())
        self.left.emit()

    def _leave(self) -> None:
        self.hide()
        self.left.emit()
