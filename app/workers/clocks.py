"""The computer's clock set, or the computer asleep, while a star is watched."""

from __future__ import annotations

import time
from collections.abc import Callable
from dataclasses import dataclass
from enum import Enum

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QObject, QTimer, Signal

from core.alignment.driftlog.records import Leg
from core.language import say

# Noticing that the computer's clock was set while a star is watched.

STEP_BACK_S = 2.0  # less is two sources of time disagreeing; more is a clock that was set
LONGEST_GAP_S = 50 * 60.0  # a clock set forward by an hour leaves a gap longer than this


class TimeVerdict(Enum):
    """What to do with a reading, by its time."""

    GOES_ON = "goes on"
    REFUSED = "refused"
    WENT_BACK = "went back"
    LEFT_A_GAP = "left a gap"


def judge(last_utc_s: float | None, utc_s: float) -> TimeVerdict:
    """Compare the time of a reading with that of the one before in the same leg."""
    if last_utc_s is None or 0.0 < utc_s - last_utc_s <= LONGEST_GAP_S:
        return TimeVerdict.GOES_ON
    if utc_s > last_utc_s:
        return TimeVerdict.LEFT_A_GAP
    return TimeVerdict.REFUSED if last_utc_s - utc_s <= STEP_BACK_S else TimeVerdict.WENT_BACK


def refusal(step_s: float) -> str:
    """The sentence for a reading that is not later than the one before (`step_s` ≤ 0)."""
    if step_s == 0.0:
        return say(
            "A reading was not taken because its time lies at the same instant as the one before: "
            "check that only one source delivers readings."
        )
    return say(
        "A reading was not taken because its time lies {early_s:.1f} s before the one before: "
        "check that only one source delivers readings.",
        early_s=-step_s,
    )


def notice(verdict: TimeVerdict, step_s: float, old_label: str, new_label: str) -> str:
    """The sentence for a leg that was cut in two because of the clock."""
    if verdict is TimeVerdict.WENT_BACK:
        what = say("The clock went back by {span}", span=span_words(-step_s))
    else:
        what = say(
            "No reading came for {span}, or the clock was set forward", span=span_words(step_s)
        )
    return say(
        "{what}: leg “{ended}” was ended and “{begun}” begun. If the clock was set, check the time "
        "and date, then discard the leg that was read by the wrong time.",
        what=what,
        ended=old_label,
        begun=new_label,
    )


def span_words(seconds: float) -> str:
    """A span of time as one says it: "45 s", "12 min", "2.5 h"."""
    if seconds < 120.0:
        return say("{seconds:.0f} s", seconds=seconds)
    if seconds < 120.0 * 60.0:
        return say("{minutes:.0f} min", minutes=seconds / 60.0)
    return say("{hours:.1f} h", hours=seconds / 3600.0)


# What to do about a leg when the computer slept in the middle of it.

Floats = NDArray[np.float64]

LEAST_SLEEP_S = 5.0  # less is no sleep but two clocks read one after the other
TIME_TO_READ_S = 5 * 60.0  # to find the star again, before the gap is too long for one leg
FEWEST_READINGS = 4  # to tell how fast a star drifts


@dataclass(frozen=True)
class Woken:
    """`begins_anew`: the leg ends here and another on the same star begins. `sentence` for the
    person."""

    begins_anew: bool
    sentence: str


def woken(leg: Leg, slept_s: float, utc_s: float, across_arcmin: float) -> Woken:
    """Judge the leg under way by its drift so far and by how long it has not been read.

    `utc_s`: the time now. `across_arcmin`: of the field in view.
    """
    if not leg.utc_s.size:
        return Woken(False, _unread(leg, slept_s))
    gap_s = max(slept_s, utc_s - float(leg.utc_s[-1]))  # the clock may have been set meanwhile
    if moved_after_arcmin(leg, gap_s) >= across_arcmin / 2.0:
        return Woken(True, _out_of_field(leg, slept_s))
    left_s = LONGEST_GAP_S - gap_s
    if left_s < TIME_TO_READ_S:
        return Woken(True, _too_long(leg, slept_s, gap_s))
    return Woken(False, _goes_on(leg, slept_s, left_s))


def _unread(leg: Leg, slept_s: float) -> str:
    return say(
        "The computer slept for {slept} before “{label}” was read for the first time. See that "
        "the star is in view, then read it.",
        slept=span_words(slept_s),
        label=leg.label,
    )


def _goes_on(leg: Leg, slept_s: float, left_s: float) -> str:
    return say(
        "The computer slept for {slept} while “{label}” was watched. See that the star is still "
        "where it was read: when it is read again within {left}, the leg goes on and the gap "
        "stays empty.",
        slept=span_words(slept_s),
        label=leg.label,
        left=span_words(left_s),
    )


def _too_long(leg: Leg, slept_s: float, gap_s: float) -> str:
    return say(
        "The computer slept for {slept}, and “{label}” was last read {gap} ago: too long for one "
        "leg. A new leg on the same star is begun; both count. See that the star is still in view.",
        slept=span_words(slept_s),
        label=leg.label,
        gap=span_words(gap_s),
    )


def _out_of_field(leg: Leg, slept_s: float) -> str:
    return say(
        "The computer slept for {slept} while “{label}” was watched. At its drift the star has "
        "left the field: bring it back. A new leg on it is begun; both count.",
        slept=span_words(slept_s),
        label=leg.label,
    )


def moved_after_arcmin(leg: Leg, gap_s: float) -> float:
    """How far from where it was centred the star is after so long without a reading."""
    moved = []
    for offsets in (leg.north_arcsec, leg.east_arcsec):
        if offsets is None or not np.isfinite(offsets).all():
            continue
        moved.append(_expected_arcsec(leg.utc_s, offsets, gap_s))
    return float(np.linalg.norm(moved)) / 60.0


def _expected_arcsec(utc_s: Floats, offsets: Floats, gap_s: float) -> float:
    if offsets.size == 0:
        return 0.0
    so_far = float(offsets[-1] - offsets[0])
    if offsets.size < FEWEST_READINGS or utc_s[-1] <= utc_s[0]:
        return so_far
    rate = np.polynomial.Polynomial.fit(utc_s - utc_s[0], offsets, 1).convert().coef[-1]
    return so_far + float(rate) * gap_s


# Noticing at any time that the computer's clock was set: wall clock against a steady one.

LOOK_MS = 1000


def steady_s() -> float:
    """Seconds of a clock that nobody sets and that goes on while the computer sleeps."""
    # Linux has one of its own for that; elsewhere CLOCK_MONOTONIC (macOS) or the plain call do it.
    which = getattr(time, "CLOCK_BOOTTIME", getattr(time, "CLOCK_MONOTONIC", None))
    return time.monotonic() if which is None else time.clock_gettime(which)


def awake_s() -> float:
    """Seconds of a clock that nobody sets and that stands while the computer sleeps.

    Where there is none of that kind it goes on, and a sleep is only seen as a gap in the readings.
    """
    # macOS has one of its own for that; on Linux it is CLOCK_MONOTONIC.
    which = getattr(time, "CLOCK_UPTIME_RAW", getattr(time, "CLOCK_MONOTONIC", None))
    return time.monotonic() if which is None else time.clock_gettime(which)


class ClockWatch(QObject):
    """`jumped` carries a sentence each time the wall clock leaves the steady one; `slept` the
    seconds that the computer slept, when it has woken.

    `now`: seconds since 1970-01-01 UTC. `awake`: a clock that stands during sleep, None
    without. Slow corrections by a time service are not jumps.
    """

    jumped = Signal(str)
    slept = Signal(float)

    def __init__(
        self,
        now: Callable[[], float],
        steady: Callable[[], float],
        parent: QObject | None = None,
        awake: Callable[[], float] | None = None,
    ) -> None:
        super().__init__(parent)
        self._awake = awake or steady
        self._asleep_s = steady() - self._awake()
        self._now = now
        self._steady = steady
        self._ahead_s = now() - steady()
        self._timer = QTimer(self)
        self._timer.setInterval(LOOK_MS)
        self._timer.timeout.connect(self.look)

    def start(self) -> None:
        self._ahead_s = self._now() - self._steady()
        self._asleep_s = self._steady() - self._awake()
        self._timer.start()

    def stop(self) -> None:
        self._timer.stop()

    def look(self) -> None:
        """Compares the two clocks; a small step only moves the mark for the next look."""
        ahead_s = self._now() - self._steady()
        step_s, self._ahead_s = ahead_s - self._ahead_s, ahead_s
        if abs(step_s) > STEP_BACK_S:
            self.jumped.emit(sentence(step_s))
        asleep_s = self._steady() - self._awake()
        slept_s, self._asleep_s = asleep_s - self._asleep_s, asleep_s
        if slept_s > LEAST_SLEEP_S:
            self.slept.emit(slept_s)


def sentence(step_s: float) -> str:
    """What happened and what to look at; a positive step is forward."""
    if step_s > 0:
        jump = say("The computer's clock jumped forward by {span}.", span=span_words(step_s))
    else:
        jump = say("The computer's clock jumped back by {span}.", span=span_words(-step_s))
    look = say(
        "Compare the time on the Site page with a clock you trust; what was worked out before may "
        "be for the wrong time."
    )
    return f"{jump} {look}"
