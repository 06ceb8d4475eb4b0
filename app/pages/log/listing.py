"""Reading which nights there are: the newest first, for they are seen at once, then all."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QObject, QTimer, Signal

from app.pages.log.parts import LogParts
from app.session.errand import Errand
from app.session.nightfiles import Listed
from app.storage.records import NightSummary

SEEN_AT_ONCE = 20  # at least as many as a tall window has rows for
SEEN_FIRST_MS = 50
KEPT_WITHIN_S = 0.5


class Listing(QObject):
    """`newest`: the nights that are seen first are up to date; `whole`: all are. `failed`: a fault
    kept them from being read; `closed`: no file can be read now.
    """

    newest = Signal()
    whole = Signal()
    failed = Signal()
    closed = Signal()

    def __init__(self, parts: LogParts, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._files, self._log = parts.files, parts.log
        self.nights: Sequence[NightSummary] = ()
        self.is_whole = False  # else there may be earlier nights than these
        self._errand = Errand(self)
        self._errand.done.connect(self._take)

    def refresh(self) -> None:
        """Reads anew, with what was measured until now."""
        files, log = self._files, self._log

        def read() -> object:
            log.flush(KEPT_WITHIN_S)  # a disk that takes nothing is not waited for
            return files.newest(SEEN_AT_ONCE)

        self._errand.send(read)

    def stop(self) -> None:
        """Waits for what is under way; harmless twice."""
        self._errand.close()

    def _take(self, answer: object) -> None:
        if isinstance(answer, Listed) and not answer.is_open:
            self.closed.emit()
            return
        if not isinstance(answer, Listed):
            self.failed.emit()
            return
        self.nights = answer.nights if answer.is_all else self._with_known(answer.nights)
        self.is_whole = self.is_whole or answer.is_all
        if not answer.is_rest:
            self.newest.emit()
        if answer.is_all:
            self.whole.emit()
        else:  # once these are drawn, or both threads would wait for each other
            QTimer.singleShot(SEEN_FIRST_MS, self, self._read_all)

    def _read_all(self) -> None:
        if not self._errand.is_wanted_again():
            self._errand.send(self._files.all)

    def _with_known(self, newest: Sequence[NightSummary]) -> Sequence[NightSummary]:
        """Before them those known from earlier, which may have changed since."""
        fresh = {one.night_id for one in newest}
        oldest_s = min((one.started_utc_s for one in newest), default=0.0)
        known = (one for one in self.nights if one.started_utc_s <= oldest_s)
        return (*newest, *(one for one in known if one.night_id not in fresh))
