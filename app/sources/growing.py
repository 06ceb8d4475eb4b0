"""A run that another program is writing to a file, followed as it grows."""

from __future__ import annotations

from collections import deque
from pathlib import Path

import numpy as np
from PySide6.QtCore import QObject, QTimer, Signal

from app.sources.source import Reading, Source
from core.language import say
from core.tracking.livelog import BadRow, LiveLog, Row, ScaleNeeded, UnusableLog

LOOK_MS = 250  # how often the file is looked at; a reading shall be on disk within a second
BUSY_MS = 10  # while there is more of it than one look takes
CHUNK_BYTES = 32_768  # some 500 lines, a few milliseconds
LONGEST_LINE_BYTES = 20_000


class GrowingFileSource(Source):
    """Delivers the last leg of the file and what is added to it.

    `star` (label, ra_deg, dec_deg) comes before the first reading and whenever the file turns to
    another leg; `left_out` carries a reason for each line that cannot be used. `scale_needed` comes
    before `ended` when the offsets are in pixels of unknown size. Readings up to `after_utc_s` are
    passed over: they are known already.
    """

    star = Signal(str, float, float)
    left_out = Signal(str)
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
        self._rest = b""
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
        if chunk is None:
            self._end(
                say(
                    "“{file}” became shorter, so it was begun anew; what was recorded so far is "
                    "kept. Follow it again for the new run.",
                    file=self.name,
                )
            )
            return
        try:
            self._take(chunk)
        except UnusableLog as reason:
            if isinstance(reason, ScaleNeeded):
                self.scale_needed.emit()
            self._end(str(reason))
            return
        is_whole = len(chunk) < CHUNK_BYTES
        if is_whole and not self._has_caught_up:
            self._has_caught_up = True
        if self._timer.isActive():
            self._timer.setInterval(LOOK_MS if is_whole and not self._waiting else BUSY_MS)
        self._deliver()

    def _added(self) -> bytes | None:
        """At most one chunk; None when the file became shorter than what was read."""
        with self._path.open("rb") as file:
            if file.seek(0, 2) < self._position:
                return None
            file.seek(self._position)
            return file.read(CHUNK_BYTES)

    def _take(self, chunk: bytes) -> None:
        self._position += len(chunk)
        *lines, self._rest = (self._rest + chunk).split(b"\n")
        for line in lines:
            self._take_line(line)
        if len(self._rest) > LONGEST_LINE_BYTES:
            raise UnusableLog(
                say(
                    "“{file}” has no lines of text that could be readings; choose a CSV file.",
                    file=self.name,
                )
            )

    def _take_line(self, line: bytes) -> None:
        try:
            row = self._log.take(line.decode("utf-8-sig", "replace"))
        except BadRow as reason:
            if self._has_caught_up:
                self.left_out.emit(str(reason))
            return
        if row is None or row.utc_s <= self._after_utc_s:
            return
        if not self._has_caught_up and self._waiting and self._waiting[-1].label != row.label:
            self._waiting.clear()
        self._waiting.append(row)

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
        self.ended.emit(sentence)


def _reading(row: Row) -> Reading:
    def known(value: float) -> float | None:
        return None if np.isnan(value) else value

    return Reading(row.utc_s, row.north_arcsec, known(row.east_arcsec), known(row.sigma_arcsec))
