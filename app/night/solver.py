"""The one worker thread that computes while the window stays free."""

from __future__ import annotations

import logging
import time
from collections.abc import Callable
from threading import Condition

from PySide6.QtCore import QObject, QThread, Signal

from app.night.question import AxisAnswer, AxisQuestion
from core.language import say

log = logging.getLogger(__name__)

SHORTEST_INTERVAL_S = 0.2  # between the starts of two computations
REST_TIMES = 3.0  # as long as the answer took


def failure_sentence(error: Exception) -> str:
    """What the person reads when a computation broke in a way nobody foresaw."""
    return say(
        "The axis error could not be computed from these readings because of a "
        "fault in the program ({fault}: {reason}). Every reading is kept: go on "
        "watching, discard the newest leg if the message stays, and report it.",
        fault=type(error).__name__,
        reason=error,
    )


class SolverThread(QThread):
    """Answers questions one at a time; of those that arrive meanwhile only the newest counts.

    It rests after each answer three times as long as that answer took, at least until
    `SHORTEST_INTERVAL_S` since it began: a long night never takes more than a quarter of one
    processor core, and leaves the window room between answers. `answered`
    carries an `Answer`. The owner calls `start`, then `ask`, and `close` before letting go.
    """

    answered = Signal(object)

    def __init__(
        self, compute: Callable[[AxisQuestion], AxisAnswer], parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._compute = compute
        self._changed = Condition()
        self._waiting: AxisQuestion | None = None
        self._closing = False

    def ask(self, question: AxisQuestion) -> None:
        """Put a question in place of any that still waits; returns at once."""
        with self._changed:
            self._waiting = question
            self._changed.notify()

    def close(self) -> None:
        """End the thread and wait for it; a computation under way is finished first."""
        with self._changed:
            self._closing = True
            self._changed.notify()
        self.wait()

    def run(self) -> None:
        """The thread's own loop; Qt calls it."""
        while (question := self._next()) is not None:
            began = time.monotonic()
            self.answered.emit(self._answer(question))
            took = time.monotonic() - began
            self._rest(max(REST_TIMES * took, SHORTEST_INTERVAL_S - took))

    def _next(self) -> AxisQuestion | None:
        with self._changed:
            self._changed.wait_for(lambda: self._closing or self._waiting is not None)
            question, self._waiting = self._waiting, None
            return None if self._closing else question

    def _rest(self, seconds: float) -> None:
        with self._changed:
            self._changed.wait_for(lambda: self._closing, timeout=seconds)

    def _answer(self, question: AxisQuestion) -> AxisAnswer:
        try:
            return self._compute(question)
        except Exception as error:
            log.exception("the computation failed")
            return AxisAnswer(question.revision, problem=failure_sentence(error))
