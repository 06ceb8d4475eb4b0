"""Once a second, just after the second turns, while something is seen."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEvent, QObject, QTimer
from PySide6.QtWidgets import QWidget

SECOND_MS = 1000
AFTER_MS = 5


class Ticking(QObject):
    """Calls `tick` with `now()` at every second that `widget` is shown, and as it appears.

    `now`: seconds since 1970-01-01 UTC.
    """

    def __init__(
        self, widget: QWidget, now: Callable[[], float], tick: Callable[[float], None]
    ) -> None:
        super().__init__(widget)
        self._widget = widget
        self._now = now
        self._tick = tick
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.timeout.connect(self.tick)
        widget.installEventFilter(self)

    def tick(self) -> None:
        """Now, out of turn."""
        now = self._now()
        self._tick(now)
        if self._widget.isVisible():
            self._timer.start(SECOND_MS - int(now % 1.0 * SECOND_MS) + AFTER_MS)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Show:
            self.tick()
        elif event.type() == QEvent.Type.Hide:
            self._timer.stop()
        return super().eventFilter(watched, event)
