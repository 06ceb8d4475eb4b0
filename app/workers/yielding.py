"""Letting others come first: a worker the window's thread, long work in it whatever is asked.

Python runs one thread at a time. While a worker computes, the window waits for it at each call into
Qt, so that an update of 15 ms can take 60. A worker that looks up now and then avoids that.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager
from threading import Event

from PySide6.QtCore import QObject, QTimer

LONGEST_WAIT_S = 0.05  # then it is the worker's turn, however busy the window
_window_is_free = Event()
_window_is_free.set()


@contextmanager
def window_works() -> Iterator[None]:
    """For the window's thread: what is done inside should not be held up."""
    was_free = _window_is_free.is_set()
    _window_is_free.clear()
    try:
        yield
    finally:
        if was_free:
            _window_is_free.set()


def let_the_window_pass() -> None:
    """For a worker, every few milliseconds; returns at once when the window is free."""
    _window_is_free.wait(LONGEST_WAIT_S)


# Work done in slices, one each time the window has nothing else to do.

AGAIN = "again"  # what a step returns that has more to do
BETWEEN_MS = 1  # so that no two steps follow each other before other events have been seen to


class Idle(QObject):
    """Takes steps in order; each must be short, for the person may press a key meanwhile.

    One that returns `AGAIN` is taken again before the next.
    """

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._steps: deque[Callable[[], object]] = deque()
        self._timer = QTimer(self)
        self._timer.setInterval(BETWEEN_MS)
        self._timer.timeout.connect(self._next)

    def do(self, steps: Iterable[Callable[[], object]]) -> None:
        """Adds steps to those that wait."""
        self._steps.extend(steps)
        if self._steps:
            self._timer.start()

    def close(self) -> None:
        """Leaves out what has not begun."""
        self._steps.clear()
        self._timer.stop()

    def _next(self) -> None:
        step = self._steps.popleft()
        if not self._steps:
            self._timer.stop()
        if step() == AGAIN:
            self._steps.appendleft(step)
            self._timer.start()
