"""Readings out of files: a drift log, and a run that another program is still writing."""

from __future__ import annotations

import codecs
import logging
from collections import deque
from pathlib import Path
from threading import Event

import numpy as np
from PySide6.QtCore import QObject, QThread, QTimer, Signal

from app.devices.source import Reading, Source
from core.alignment.driftlog.files import not_ordinary, read_file, size_if_ordinary
from core.alignment.driftlog.reader import ReadingRow
from core.alignment.driftlog.records import (
    BadRow,
    DriftLog,
    ReadingCancelled,
    Rejected,
    UnusableLog,
)
from core.language import say
from core.tracking.runlog import LineCutter, LiveLog, ScaleNeeded

# A drift log on disk, read while the window stays free.

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


# A run that another program is writing to a file, followed as it grows.

LOOK_MS = 250  # how often the file is looked at; a reading shall be on disk within a second
BUSY_MS = 10  # while there is more of it than one look takes
CHUNK_BYTES = 32_768  # some 500 lines, a few milliseconds
LONGEST_LINE_BYTES = 20_000
SIXTEEN_BIT_MARKS = (codecs.BOM_UTF16_LE, codecs.BOM_UTF16_BE)


class GrowingFileSource(Source):
    """Delivers the last leg of the file and what is added to it.

    `star` (label, ra_deg, dec_deg) comes before the first reading and whenever the file turns to
    another leg; `left_out` carries the `Rejected` lines of one look, be they old or new.
    `scale_needed` comes before `ended` when the offsets are in pixels of unknown size. Readings up
    to `after_utc_s` are passed over: they are known already.
    """

    star = Signal(str, float, float)
    left_out = Signal(tuple)
    scale_needed = Signal()

    def __init__(
        self,
        path: Path,
        scale_arcsec_per_px: float | None = None,
        after_utc_s: float | None = None,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self.name = path.name
        self._path = path
        self._scale = scale_arcsec_per_px
        self._after_utc_s = -np.inf if after_utc_s is None else after_utc_s
        self._timer = QTimer(self)
        self._timer.timeout.connect(self.look)
        self._begin()

    def _begin(self) -> None:
        self._log = LiveLog(self.name, self._scale)
        self._position = 0
        self._cutter = LineCutter()
        self._left_out: list[Rejected] = []  # lines not yet told of
        self._has_caught_up = False
        self._label: str | None = None
        self._waiting: deque[ReadingRow] = (
            deque()
        )  # the last leg, until the end of the file is known

    def start(self) -> None:
        """Look at the file now and from now on, from its beginning."""
        self.stop()
        self._begin()
        self._timer.start(BUSY_MS)

    def stop(self) -> None:
        self._timer.stop()

    def look(self) -> None:
        """Take what was added; the timer calls it."""
        try:
            chunk = self._added()
            self._take(chunk)
        except OSError as error:
            self._end(
                say(
                    "“{file}” can no longer be read ({reason}); what was recorded so far is kept. "
                    "Is the drive still there?",
                    file=self.name,
                    reason=error.strerror or str(error),
                )
            )
            return
        except UnusableLog as reason:
            if isinstance(reason, ScaleNeeded):
                self.scale_needed.emit()
            self._end(str(reason))
            return
        is_whole = len(chunk) < CHUNK_BYTES
        self._has_caught_up = self._has_caught_up or is_whole
        if self._timer.isActive():
            self._timer.setInterval(LOOK_MS if is_whole and not self._waiting else BUSY_MS)
        self._tell_left_out()
        self._deliver()

    def _added(self) -> bytes:
        """At most one chunk. Raises UnusableLog when there is no file any more to go on with."""
        size = size_if_ordinary(self._path)
        if size is None:
            raise UnusableLog(not_ordinary(self.name))
        if size < self._position:
            raise UnusableLog(
                say(
                    "“{file}” became shorter, so it was begun anew; what was recorded so far is "
                    "kept. Follow it again for the new run.",
                    file=self.name,
                )
            )
        with self._path.open("rb") as file:
            file.seek(self._position)
            return file.read(CHUNK_BYTES)

    def _take(self, chunk: bytes) -> None:
        if self._position == 0 and chunk.startswith(SIXTEEN_BIT_MARKS):
            raise UnusableLog(
                say(
                    "{name} is not text in UTF-8; choose a CSV file, or save it as UTF-8.",
                    name=self.name,
                )
            )
        self._position += len(chunk)
        for line in self._cutter.cut(chunk):
            self._take_line(line)
        if len(self._cutter.rest) > LONGEST_LINE_BYTES:
            raise UnusableLog(
                say(
                    "“{file}” has no lines of text that could be readings; choose a CSV file.",
                    file=self.name,
                )
            )

    def _take_line(self, line: bytes) -> None:
        try:
            row = self._log.take(line.decode("utf-8", "replace"))
        except BadRow as reason:
            self._left_out.append(Rejected(self._log.line_number, str(reason)))
            return
        if row is None or row.utc_s <= self._after_utc_s:
            return
        if not self._has_caught_up and self._waiting and self._waiting[-1].label != row.label:
            self._waiting.clear()
        self._waiting.append(row)

    def _tell_left_out(self) -> None:
        if self._left_out:
            told, self._left_out = tuple(self._left_out), []
            self.left_out.emit(told)

    def _deliver(self) -> None:
        """A part of what waits, so that the window stays free."""
        if not self._has_caught_up:
            return
        for _ in range(min(len(self._waiting), 200)):
            row = self._waiting.popleft()
            if row.label != self._label:
                self._label = row.label
                self.star.emit(row.label, row.ra_deg, row.dec_deg)
            self.reading.emit(_reading(row))

    def _end(self, sentence: str) -> None:
        self.stop()
        self._tell_left_out()
        self.ended.emit(sentence)


def _reading(row: ReadingRow) -> Reading:
    def known(value: float) -> float | None:
        return None if np.isnan(value) else value

    return Reading(row.utc_s, row.north_arcsec, known(row.east_arcsec), known(row.sigma_arcsec))
