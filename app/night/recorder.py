"""Where anything of a night beside its legs is kept: a tick, a note, a result, a picture."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING, Any, Protocol, TypeVar

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QObject, Signal

from app.devices.source import Reading
from app.night.legs import Labels, LegBuffer
from app.store.records import StoredLeg
from app.workers.clocks import TimeVerdict, judge, refusal
from core.alignment.driftlog.records import Leg
from core.language import say
from core.night.record import Kind, LegPurpose, adjustment_content, goal_content, result_content
from core.sky.site import Air, Site

if TYPE_CHECKING:  # brings scipy along, which the first window must not wait for
    from core.alignment.axis.solution import Solution
    from core.alignment.goal import Aim, Goal
    from core.alignment.guide.bolts import BoltTurn


class EntryLog(Protocol):
    """The log of nights is one; every call returns at once."""

    def put_entry(
        self,
        kind: str,
        content: Mapping[str, Any],
        attachment: bytes | None = None,
        entry_id: int | None = None,
    ) -> int:
        """Of tonight. With an `entry_id` in that entry's place. The key of the entry."""
        ...


# Handing everything at once to the log of nights, whatever state the disk is in.

Floats = NDArray[np.float64]
T = TypeVar("T")


class LogOfNight(Protocol):
    """What the session needs of `app.store.nights.NightLog`; every call returns at once."""

    def add_leg(
        self, label: str, star_name: str, ra_deg: float, dec_deg: float, purpose: str = ...
    ) -> int: ...

    def add_samples(
        self,
        leg_id: int,
        utc_s: Floats,
        north_arcsec: Floats,
        east_arcsec: Floats | None = None,
        sigma_arcsec: Floats | None = None,
    ) -> None: ...

    def delete_last_sample(self, leg_id: int) -> None: ...

    def end_leg(self, leg_id: int) -> None: ...

    def discard_leg(self, leg_id: int) -> None: ...

    def begin_axis_state(self) -> int: ...

    def set_site(self, site: Site, air: Air) -> None: ...

    def set_aim(self, aim: Aim) -> None: ...

    def set_target(self, arcmin: float) -> None: ...

    def put_setting(self, key: str, value: Any) -> None: ...

    def get_setting(self, key: str, default: Any = None) -> Any: ...

    def put_entry(self, kind: str, content: Mapping[str, Any]) -> int: ...

    @property
    def axis_state_id(self) -> int: ...


def failure_sentence(error: Exception) -> str:
    """What the person reads when the log of nights refuses."""
    return say(
        "The log of nights could not be written ({reason}). What you measure "
        "stays in memory only: export it as a drift log before you close the "
        "program.",
        reason=error or type(error).__name__,
    )


class Recorder:
    """Passes every step on to the log. A log that fails costs a sentence, never the night.

    Without a log (None) nothing is kept. `failed` gets one sentence per failure.
    """

    def __init__(self, log: LogOfNight | None, failed: Callable[[str], None]) -> None:
        self._log = log
        self._failed = failed

    @property
    def keeps(self) -> bool:
        """Whether there is a log at all."""
        return self._log is not None

    def add_leg(self, label: str, star_name: str, ra_deg: float, dec_deg: float) -> int | None:
        """The number the log gives the leg; None when it is not kept."""
        return self._try(lambda log: log.add_leg(label, star_name, ra_deg, dec_deg))

    def add_run(self, label: str, ra_deg: float, dec_deg: float, purpose: LegPurpose) -> int | None:
        """Likewise of a run that is watched for the drive."""
        return self._try(lambda log: log.add_leg(label, "", ra_deg, dec_deg, purpose))

    def add_reading(self, leg_id: int | None, reading: Reading) -> None:
        """Keep one reading."""
        east, sigma = reading.east_arcsec, reading.sigma_arcsec
        if leg_id is not None:
            self._try(
                lambda log: log.add_samples(
                    leg_id,
                    np.array([reading.utc_s]),
                    np.array([reading.north_arcsec]),
                    None if east is None else np.array([east]),
                    None if sigma is None else np.array([sigma]),
                )
            )

    def add_readings(self, leg_id: int | None, leg: Leg) -> None:
        """Keep all readings of a leg."""
        if leg_id is not None:
            columns = (leg.utc_s, leg.north_arcsec, leg.east_arcsec, leg.sigma_arcsec)
            self._try(lambda log: log.add_samples(leg_id, *columns))

    def delete_last_reading(self, leg_id: int | None) -> None:
        """Take the newest reading of a leg back."""
        if leg_id is not None:
            self._try(lambda log: log.delete_last_sample(leg_id))

    def end_leg(self, leg_id: int | None) -> None:
        """Mark a leg as ended."""
        if leg_id is not None:
            self._try(lambda log: log.end_leg(leg_id))

    def discard_leg(self, leg_id: int | None) -> None:
        """Mark a leg as discarded; its readings stay on disk."""
        if leg_id is not None:
            self._try(lambda log: log.discard_leg(leg_id))

    def begin_axis_state(self) -> None:
        """Mark that the bolts were turned."""
        self._try(lambda log: log.begin_axis_state())

    def put_site(self, site: Site, air: Air) -> None:
        """Keep where the mount stands."""
        self._try(lambda log: log.set_site(site, air))

    def put_aim(self, aim: Aim) -> None:
        """Keep which pole to align on."""
        self._try(lambda log: log.set_aim(aim))

    def put_target(self, arcmin: float) -> None:
        """Keep how small the error bars should become."""
        self._try(lambda log: log.set_target(arcmin))

    def put_setting(self, key: str, value: Any) -> None:
        """Keep anything JSON can hold."""
        self._try(lambda log: log.put_setting(key, value))

    def get_setting(self, key: str, default: Any = None) -> Any:
        """What was kept under a key, else `default`."""
        return default if self._log is None else self._log.get_setting(key, default)

    def put_result(
        self, solution: Solution, aim: Aim, goal: Goal, chance_within: float | None
    ) -> None:
        """Keep what was found of the axis, and the verdict on it."""
        self._put_entry(
            Kind.RESULT,
            lambda state: {
                **result_content(solution, aim, state),
                **goal_content(goal, chance_within),
            },
        )

    def put_adjustment(
        self, turn: BoltTurn | None, counted: tuple[float | None, float | None]
    ) -> None:
        """Keep how the bolts were turned, before the axis state that follows begins."""
        meant: tuple[float | None, float | None] = (None, None)
        if turn is not None:
            meant = turn.azimuth_arcmin, turn.altitude_arcmin
        self._put_entry(
            Kind.ADJUSTMENT, lambda state: adjustment_content(state, *meant, counted[0], counted[1])
        )

    def _put_entry(self, kind: Kind, made: Callable[[int], dict[str, Any]]) -> None:
        """`made` gives the content for the key of the axis state; its faults are not the disk's."""
        state = self._try(lambda log: log.axis_state_id)
        if state is not None:
            content = made(state)
            self._try(lambda log: log.put_entry(kind, content))

    def _try(self, step: Callable[[LogOfNight], T]) -> T | None:
        if self._log is None:
            return None
        try:
            return step(self._log)
        except Exception as error:
            self._failed(failure_sentence(error))
            return None


# A run of tracking under way: every reading reaches the log of nights at once.


class RunRecorder(QObject):
    """`changed`: a run was begun or ended; `reading_added`: at every reading, and cheap.

    `trouble` is a sentence about the newest reading that was not taken as it came, else empty.
    """

    changed = Signal()
    reading_added = Signal()

    def __init__(self, keeper: Recorder, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._keeper = keeper
        self._labels = Labels()
        self._buffer: LegBuffer | None = None
        self.leg_id: int | None = None
        self.purpose = LegPurpose.TRACKING
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
        self, label: str, ra_deg: float, dec_deg: float, purpose: LegPurpose = LegPurpose.TRACKING
    ) -> None:
        """Records a star (ICRS place) from now on; ends the run under way."""
        self.end()
        self.purpose, self.trouble = purpose, ""
        self._open(self._labels.take(label), ra_deg, dec_deg)
        self.changed.emit()

    def resume(self, stored: StoredLeg) -> None:
        """Goes on with a run that was under way when the program ended."""
        self.end()
        self.purpose = LegPurpose(stored.purpose)
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
        if verdict is TimeVerdict.GOES_ON:
            return ""
        if verdict is TimeVerdict.REFUSED:
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
