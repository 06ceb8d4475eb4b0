"""The date and time in UTC, ticking while it is seen."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime

from PySide6.QtCore import QTimer
from PySide6.QtGui import QHideEvent, QShowEvent
from PySide6.QtWidgets import QWidget

from app.widgets.text import Text


class UtcClock(Text):
    def __init__(self, now: Callable[[], float], parent: QWidget | None = None) -> None:
        """`now`: seconds since 1970-01-01 UTC."""
        super().__init__("", "quiet", parent)
        self._now = now
        self.setWordWrap(False)
        self.setAccessibleName(self.tr("Time in UTC"))
        self._timer = QTimer(self)
        self._timer.timeout.connect(self._tick)
        self._tick()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._tick()

    def hideEvent(self, event: QHideEvent) -> None:
        self._timer.stop()
        super().hideEvent(event)

    def _tick(self) -> None:
        """Once a second, just after the second turns."""
        now = self._now()
        shown = datetime.fromtimestamp(now, UTC).strftime("%Y-%m-%d  %H:%M:%S")
        self.setText(self.tr("{time} UTC").format(time=shown))
        if self.isVisible():
            self._timer.start(1000 - int(now % 1.0 * 1000) + 5)
