"""One slow question at a time, answered beside the window's thread."""

from __future__ import annotations

import logging
from collections.abc import Callable

from PySide6.QtCore import QObject, Qt, QThread, Signal

log = logging.getLogger(__name__)


class Errand(QThread):
    """`done` carries what the question gave back, None when it broke; of those that arrive
    meanwhile only the newest is answered. The owner calls `close` before letting go.
    """

    done = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._question: Callable[[], object] | None = None
        self._next: Callable[[], object] | None = None
        self._is_closed = False
        self._is_dropped = False
        self.finished.connect(self._go_on, Qt.ConnectionType.QueuedConnection)

    def send(self, question: Callable[[], object]) -> None:
        """Returns at once."""
        self._next = question
        if not self.isRunning():
            self._go_on()

    def is_wanted_again(self) -> bool:
        """Whether a newer question waits for its turn."""
        return self._next is not None

    def drop(self) -> None:
        """Nobody wants the answer any more: none comes, nor one to a question that waits."""
        self._next = None
        self._is_dropped = True

    def close(self) -> None:
        """Waits for what is under way; nothing more is answered. May be called twice."""
        self._is_closed = True
        self.wait()

    def run(self) -> None:
        """The thread's own work; Qt calls it."""
        question = self._question
        if question is None:
            return
        try:
            answer = question()
        except Exception:
            log.exception("a question could not be answered")
            answer = None
        if not self._is_dropped:
            self.done.emit(answer)

    def _go_on(self) -> None:
        if self._next is None or self._is_closed or self.isRunning():
            return
        self._question, self._next = self._next, None
        self._is_dropped = False
        self.start()
