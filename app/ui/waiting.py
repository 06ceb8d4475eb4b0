"""That something takes its time, and a key to stop waiting for it."""

from __future__ import annotations

from PySide6.QtCore import QTimer, Signal
from PySide6.QtWidgets import QHBoxLayout, QWidget

from app.ui.form import Key
from app.ui.text import Text

PATIENCE_MS = 500  # what takes less is not worth a word


class Waiting(QWidget):
    """`begin` shows it after a moment, `end` takes it away; `stopped` when the person stops it."""

    stopped = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._words = Text("", "side")
        self._stop = Key(self.tr("Stop"))
        self._stop.setAccessibleName(self.tr("Stop working it out"))
        self._stop.clicked.connect(self._stopped)
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.setInterval(PATIENCE_MS)
        self._timer.timeout.connect(self._show)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self._words, 1)
        row.addWidget(self._stop)
        self.hide()

    def stop_button(self) -> Key:
        return self._stop

    def said(self) -> str:
        return self._words.text()

    def begin(self) -> None:
        """Once more while it waits already changes nothing."""
        if not self._timer.isActive() and not self._stop.isVisible():
            self._timer.start()

    def end(self) -> None:
        self._timer.stop()
        self.hide()

    def _show(self) -> None:
        self._words.say(self.tr("Being worked out … What stands here is from before."))
        self._stop.show()
        self.show()

    def _stopped(self) -> None:
        self.stopped.emit()
        self._stop.hide()
        self._words.say(self.tr("Stopped: what stands here is from before."))
