"""Long work beside the window's thread, with progress, that gives up when it is told to."""

from __future__ import annotations

import threading
from collections.abc import Callable

from PySide6.QtCore import QObject, Signal

from app.session.errand import Errand

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
        self._errand = Errand(self)
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
