"""Work done in slices, one each time the window has nothing else to do."""

from __future__ import annotations

from collections import deque
from collections.abc import Callable, Iterable

from PySide6.QtCore import QObject, QTimer

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
