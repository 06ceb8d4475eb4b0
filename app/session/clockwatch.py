"""Noticing at any time that the computer's clock was set: wall clock against a steady one."""

from __future__ import annotations

import time
from collections.abc import Callable

from PySide6.QtCore import QObject, QTimer, Signal

from app.session.clockcheck import STEP_BACK_S, span_words
from app.session.sleepcheck import LEAST_SLEEP_S
from core.language import say

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
