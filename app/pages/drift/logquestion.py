"""Whether a log that was read joins the legs that are here: nobody but the person knows."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from app.widgets.asking import Asking

if TYPE_CHECKING:
    from app.session.session import Session
    from core.alignment.driftlog.records import DriftLog


class LogQuestion(Asking):
    """Hands a log to the session, and asks first where its legs would meet others.

    `taken` carries the log and a Joining; `left` the sentence when nothing was taken.
    """

    taken = Signal(object, object)
    left = Signal(str)

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._log: DriftLog | None = None
        self._met: object = None  # the legs here when the question was asked
        self.answered.connect(self._answered)
        self.declined.connect(self._declined)

    def give(self, log: DriftLog) -> None:
        """A log was read; the answer nearest at hand leaves everything as it is."""
        question = self._session.question_on(log)
        if not question:
            self.taken.emit(log, self._session.take_log(log))
            return
        self._log, self._met = log, self._here()
        self.ask(
            question,
            self.tr("Solve them together"),
            self.tr("Begin a new state with the log"),
            self.tr("Leave the log"),
        )
        if self.isVisible():
            self.neither().setFocus()

    def _answered(self, is_together: bool) -> None:
        log, self._log = self._log, None
        if log is None:
            return
        if self._met != self._here():
            self.left.emit(
                self.tr(
                    "The legs here have changed since the question was asked, and nothing was "
                    "taken: read the log again."
                )
            )
            return
        take = self._session.take_log if is_together else self._session.take_log_apart
        self.taken.emit(log, take(log))

    def _declined(self) -> None:
        self._log = None
        self.left.emit(self.tr("The log was left; nothing was taken from it."))

    def _here(self) -> object:
        """Which legs a log would meet."""
        snapshot = self._session.snapshot()
        return snapshot.axis_state, [leg.label for leg in snapshot.legs]
