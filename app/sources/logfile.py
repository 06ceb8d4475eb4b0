"""A drift log on disk, read while the window stays free."""

from __future__ import annotations

import logging
from pathlib import Path
from threading import Event

from PySide6.QtCore import QObject, QThread, Signal

from app.sources.source import Source
from core.alignment.driftlog.files import read_file
from core.alignment.driftlog.records import DriftLog, ReadingCancelled, UnusableLog
from core.language import say

log = logging.getLogger(__name__)


class _Reader(QThread):
    """Reads one file and emits what came of it."""

    progressed = Signal(float)
    read = Signal(object)
    failed = Signal(str)

    def __init__(self, path: Path, parent: QObject) -> None:
        super().__init__(parent)
        self._path = path
        self.cancelled = Event()

    def run(self) -> None:
        """The thread's own work; Qt calls it."""
        try:
            self.read.emit(read_file(self._path, self._keep_going))
        except UnusableLog as reason:
            self.failed.emit(str(reason))
        except ReadingCancelled:
            return
        except Exception as error:
            log.exception("reading a drift log failed")
            self.failed.emit(
                say(
                    "{file} could not be read because of a fault in the program ({fault}: "
                    "{reason}): nothing was taken from it. Report it.",
                    file=self._path.name,
                    fault=type(error).__name__,
                    reason=error,
                )
            )

    def _keep_going(self, share_read: float) -> bool:
        self.progressed.emit(share_read)
        return not self.cancelled.is_set()


class LogFileSource(Source):
    """Delivers a whole `DriftLog` through `log_read`, or says through `ended` why there is none.

    `progressed` carries the share read, 0 to 1. `stop` cancels, and nothing comes afterwards.
    """

    log_read = Signal(object)
    progressed = Signal(float)

    def __init__(self, path: Path, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.name = path.name
        self._path = path
        self._reader: _Reader | None = None

    def start(self) -> None:
        """Begin to read, afresh when it is called again."""
        self.stop()
        reader = _Reader(self._path, self)
        reader.progressed.connect(self._pass_on)
        reader.read.connect(self._take)
        reader.failed.connect(self._fail)
        self._reader = reader
        reader.start()

    def stop(self) -> None:
        """Cancel, and wait for the thread to end; that takes some 20 ms."""
        reader, self._reader = self._reader, None
        if reader is not None:
            reader.cancelled.set()
            reader.wait()
            reader.deleteLater()

    def _pass_on(self, share_read: float) -> None:
        if self.sender() is self._reader:  # what a cancelled reader said before may still arrive
            self.progressed.emit(share_read)

    def _take(self, drift_log: DriftLog) -> None:
        if self.sender() is self._reader:
            self.stop()
            self.log_read.emit(drift_log)
            self.ended.emit(say("{file} has been read.", file=self.name))

    def _fail(self, sentence: str) -> None:
        if self.sender() is self._reader:
            self.stop()
            self.ended.emit(sentence)
