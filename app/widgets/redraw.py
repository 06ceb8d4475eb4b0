"""Drawing at most so often, and only what is seen."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEvent, QObject, QTimer
from PySide6.QtWidgets import QWidget

from app.courtesy import window_works

PICTURE_MS = 100  # pictures, ten times a second
WORDS_MS = 1000  # words, which nobody reads faster


class Redraw(QObject):
    """`mark` says that something changed; `draw` follows, once in `interval_ms` at most.

    While the widget is hidden nothing is drawn; shown again, it catches up once.
    """

    def __init__(
        self, widget: QWidget, draw: Callable[[], None], interval_ms: int = PICTURE_MS
    ) -> None:
        super().__init__(widget)
        self._widget = widget
        self._draw = draw
        self._is_stale = False
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.setInterval(interval_ms)
        self._timer.timeout.connect(self._due)
        widget.installEventFilter(self)

    def mark(self) -> None:
        """The first mark after a pause draws at once."""
        self._is_stale = True
        if self._widget.isVisible() and not self._timer.isActive():
            self._due()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Show and self._is_stale and not self._timer.isActive():
            self._timer.start()
        elif event.type() == QEvent.Type.Hide:
            self._timer.stop()
        return super().eventFilter(watched, event)

    def _due(self) -> None:
        if not self._is_stale:
            return
        self._is_stale = False
        self._timer.start()  # first, so that a mark made by drawing waits its turn
        with window_works():
            self._draw()
