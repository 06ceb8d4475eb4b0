"""Drawing at most so often, only what is seen, and before it is first shown."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEvent, QObject, QPoint, QSize, QTimer
from PySide6.QtGui import QPixmap, QRegion
from PySide6.QtWidgets import QWidget

from app.workers.yielding import window_works

# What Qt would do at the first showing of a part, done before it is shown.


def polish(part: QWidget) -> None:
    """Gives all that the part holds its style."""
    for inside in part.findChildren(QWidget):
        inside.ensurePolished()


def lay_out(part: QWidget, size: QSize) -> None:
    """Lays out all that a hidden part holds, by rendering one pixel of it; not one that is seen."""
    if part.isHidden():
        part.resize(size)
        part.render(QPixmap(1, 1), QPoint(), QRegion(0, 0, 1, 1))


# Once a second, just after the second turns, while something is seen.

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


# Drawing at most so often, one thing in a turn of the event loop, and only what is seen.

PICTURE_MS = 100  # pictures, ten times a second
WORDS_MS = 1000  # words, which nobody reads faster


class LoopTurn:
    """A turn of the window's event loop, which has room for one drawing."""

    def __init__(self) -> None:
        self._is_taken = False

    def take(self) -> bool:
        """Whether nobody has drawn in this turn yet; if so, it is taken."""
        if self._is_taken:
            return False
        self._is_taken = True
        QTimer.singleShot(0, self._end)
        return True

    def _end(self) -> None:
        self._is_taken = False


_turn = LoopTurn()


class Redraw(QObject):
    """`mark` says that something changed; `draw` follows, once in `interval_ms` at most.

    Of all that is due only one thing is drawn in a turn of the event loop, so that keys and
    readings find room between them. While the widget is hidden nothing is drawn; shown again, it
    catches up once.
    """

    def __init__(
        self, widget: QWidget, draw: Callable[[], None], interval_ms: int = PICTURE_MS
    ) -> None:
        super().__init__(widget)
        self._widget = widget
        self._draw = draw
        self._interval_ms = interval_ms
        self._is_stale = False
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.timeout.connect(self._due)
        widget.installEventFilter(self)

    def mark(self) -> None:
        """The first mark after a pause draws in the next turn."""
        self._is_stale = True
        if self._widget.isVisible() and not self._timer.isActive():
            self._timer.start(0)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Show and self._is_stale and not self._timer.isActive():
            self._timer.start(self._interval_ms)  # there is enough to do in showing it
        elif event.type() == QEvent.Type.Hide:
            self._timer.stop()
        return super().eventFilter(watched, event)

    def _due(self) -> None:
        if not self._is_stale:
            return
        if not _turn.take():
            self._timer.start(0)
            return
        self._is_stale = False
        self._timer.start(self._interval_ms)  # first, so that a mark made by drawing waits its turn
        with window_works():
            self._draw()
