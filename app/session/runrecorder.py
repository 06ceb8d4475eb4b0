"""A run of tracking under way: every reading reaches the log of nights at once."""

from __future__ import annotations

import math

from PySide6.QtCore import QObject, Signal

from app.session.clockcheck import Verdict, judge, refusal
from app.session.keeper import Keeper
from app.session.labels import Labels
from app.session.legbuffer import LegBuffer
from app.sources.source import Reading
from app.storage.records import StoredLeg
from core.alignment.driftlog.records import Leg
from core.language import say
from core.night.record import Purpose


class RunRecorder(QObject):
    """`changed`: a run was begun or ended; `reading_added`: at every reading, and cheap.

    `trouble` is a sentence about the newest reading that was not taken as it came, else empty.
    """

    changed = Signal()
    reading_added = Signal()

    def __init__(self, keeper: Keeper, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._keeper = keeper
        self._labels = Labels()
        self._buffer: LegBuffer | None = None
        self.leg_id: int | None = None
        self.purpose = Purpose.TRACKING
        self.trouble = ""

    @property
    def is_recording(self) -> bool:
        return self._buffer is not None

    def leg(self) -> Leg | None:
        """What is recorded so far, None while nothing is; costs no copy."""
        return None if self._buffer is None else self._buffer.leg()

    def know(self, label: str) -> None:
        """A run of this night that has the label already."""
        self._labels.take(label)

    def begin(
        self, label: str, ra_deg: float, dec_deg: float, purpose: Purpose = Purpose.TRACKING
    ) -> None:
        """Records a star (ICRS place) from now on; ends the run under way."""
        self.end()
        self.purpose, self.trouble = purpose, ""
        self._open(self._labels.take(label), ra_deg, dec_deg)
        self.changed.emit()

    def resume(self, stored: StoredLeg) -> None:
        """Goes on with a run that was under way when the program ended."""
        self.end()
        self.purpose = Purpose(stored.purpose)
        self._buffer = LegBuffer.of(stored.leg, self._labels.take(stored.leg.label))
        self.leg_id = stored.leg_id
        self.changed.emit()

    def add_reading(self, reading: Reading) -> None:
        """Takes one reading of the run under way; what cannot be used is said in `trouble`."""
        self.trouble = self._taken(reading)
        self.reading_added.emit()

    def end(self) -> Leg | None:
        """Records no more; the run stays. What was recorded, None when nothing was."""
        buffer, self._buffer = self._buffer, None
        if buffer is None:
            return None
        self._keeper.end_leg(self.leg_id)
        if not len(buffer):
            self._keeper.discard_leg(self.leg_id)
        self.changed.emit()
        return buffer.leg() if len(buffer) else None

    def _taken(self, reading: Reading) -> str:
        if self._buffer is None:
            return ""
        if not (math.isfinite(reading.utc_s) and math.isfinite(reading.north_arcsec)):
            return say("A reading was left out because its time or its offset is not a number.")
        if reading.east_arcsec is None or not math.isfinite(reading.east_arcsec):
            return say(
                "A reading was left out because it has no east offset, and the drive shows in "
                "these alone."
            )
        said = self._check_clock(self._buffer, reading.utc_s)
        if said is None:
            return refusal(reading.utc_s - (self._buffer.last_utc_s or 0.0))
        self._buffer.append(reading)
        self._keeper.add_reading(self.leg_id, reading)
        return said

    def _check_clock(self, buffer: LegBuffer, utc_s: float) -> str | None:
        """None for a reading to refuse; a clock that was set begins another run."""
        verdict = judge(buffer.last_utc_s, utc_s)
        if verdict is Verdict.GOES_ON:
            return ""
        if verdict is Verdict.REFUSED:
            return None
        self._keeper.end_leg(self.leg_id)
        self._open(self._labels.take(buffer.label), buffer.ra_deg, buffer.dec_deg)
        return say(
            "The times of the readings jumped, so run “{old}” was ended and “{new}” begun: was "
            "the clock set, or the recording interrupted?",
            old=buffer.label,
            new=self._buffer.label if self._buffer is not None else "",
        )

    def _open(self, label: str, ra_deg: float, dec_deg: float) -> None:
        self._buffer = LegBuffer(label, ra_deg, dec_deg)
        self.leg_id = self._keeper.add_run(label, ra_deg, dec_deg, self.purpose)
