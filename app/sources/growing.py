"""A run that another program is writing to a file, followed as it grows."""

from __future__ import annotations

import codecs
from collections import deque
from pathlib import Path

import numpy as np
from PySide6.QtCore import QObject, QTimer, Signal

from app.sources.source import Reading, Source
from core.alignment.driftlog.files import not_ordinary, size_if_ordinary
from core.alignment.driftlog.reader import Row
from core.alignment.driftlog.records import BadRow, Rejected, UnusableLog
from core.language import say
from core.tracking.runlog import LineCutter, LiveLog, ScaleNeeded

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
        self._waiting: deque[Row] = deque()  # the last leg, until the end of the file is known

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


def _reading(row: Row) -> Reading:
    def known(value: float) -> float | None:
        return None if np.isnan(value) else value

    return Reading(row.utc_s, row.north_arcsec, known(row.east_arcsec), known(row.sigma_arcsec))
