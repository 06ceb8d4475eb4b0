"""Slow questions answered beside the window's thread, the newest first; progress, and giving up."""

from __future__ import annotations

import logging
import threading
from collections.abc import Callable

from PySide6.QtCore import QObject, Qt, QThread, Signal

# One slow question at a time, answered beside the window's thread.

log = logging.getLogger(__name__)


class LatestOnly(QThread):
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


# Long work beside the window's thread, with progress, that gives up when it is told to.

KeepGoing = Callable[[float], bool]


class Job(QObject):
    """`done` carries what the work gave back, None when it broke; `progressed` the share done.

    New work makes the old give up. Work is called with a function that takes the share done and
    says whether to go on. `close` waits; call it before letting go.
    """

    done = Signal(object)
    progressed = Signal(float)
    began = Signal()
    ended = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._given_up = threading.Event()
        self._errand = LatestOnly(self)
        self._errand.done.connect(self._finish)
        self._sent = 0

    def send(self, work: Callable[[KeepGoing], object]) -> None:
        """Returns at once."""
        self._given_up.set()
        given_up = threading.Event()
        self._given_up = given_up
        self._sent += 1
        number = self._sent

        def keep_going(share: float) -> bool:
            if not given_up.is_set():
                self.progressed.emit(share)
            return not given_up.is_set()

        self.began.emit()
        self._errand.send(lambda: (number, work(keep_going)))

    def stop(self) -> None:
        """What is under way gives up; nothing of it arrives."""
        self._given_up.set()
        self._sent += 1
        self.ended.emit()

    def close(self) -> None:
        """Waits for what is under way; may be called twice."""
        self.stop()
        self._errand.close()

    def _finish(self, answer: object) -> None:
        number, found = answer if isinstance(answer, tuple) else (self._sent, None)
        if number == self._sent:
            self.ended.emit()
            self.done.emit(found)
