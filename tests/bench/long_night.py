"""A night of twelve hours at five readings a second, in a process of its own.

Prints one JSON line: growth of memory in MB, the longest and mean update of the main thread in ms,
and how many snapshots came. Run with the minutes of one leg and the path of a new log of nights as
arguments.
"""

from __future__ import annotations

import gc
import json
import os
import sys
import time
from pathlib import Path

import numpy as np
from PySide6.QtCore import QCoreApplication

from app.devices.source import Reading
from app.night.session import Session
from app.night.snapshot import Snapshot
from app.store.nights import NightLog
from core.sky.clocks import local_sidereal_time_hours
from core.sky.site import Air, Site
from tests.app.night.heard import heard

SITE, AIR = Site(47.0, -20.0, 300.0), Air(978.0)
START_UTC_S = 1_795_552_200.0
RATE_HZ = 5.0
READINGS = int(12 * 3600 * RATE_HZ)
BETWEEN_LOOKS = 25  # readings between two looks of the window; one to five in a real night
BETWEEN_FLUSHES = 2000  # lets the disk keep up: this night runs thousands of times too fast


def resident_mb() -> float:
    pages = int(Path("/proc/self/statm").read_text(encoding="ascii").split()[1])
    return pages * os.sysconf("SC_PAGE_SIZE") / 1e6


def north_arcsec() -> list[float]:
    """A drift of half an arcsecond a minute under correlated seeing."""
    memory = float(np.exp(-1.0 / (2.0 * RATE_HZ)))
    kicks = np.random.default_rng(5).normal(0.0, 0.7 * np.sqrt(1.0 - memory**2), READINGS)
    seeing, offsets = 0.0, []
    for i, kick in enumerate(kicks.tolist()):
        seeing = memory * seeing + kick
        offsets.append(seeing + i / RATE_HZ / 120.0)
    return offsets


class LongNight:
    """Feeds a session as fast as it takes readings, and looks at it as a window does."""

    def __init__(self, app: QCoreApplication, minutes_per_leg: float, log: NightLog) -> None:
        self._app = app
        self._per_leg = int(minutes_per_leg * 60.0 * RATE_HZ)
        self._log = log
        self._session = Session(log=log)
        self._session.resume(log.resume_or_begin_night(START_UTC_S))
        self._session.changed.connect(self._look)
        self._snapshots = 0
        self._newest: Snapshot = heard(self._session)
        self._session.set_site(SITE, AIR)

    def run(self) -> dict[str, float]:
        offsets = north_arcsec()
        settled = READINGS // 100
        self._feed(offsets[:settled], 0)
        self._wait_for(settled)
        before_mb = resident_mb()
        spent_ms = self._feed(offsets[settled:], settled)
        self._wait_for(READINGS)
        growth_mb = resident_mb() - before_mb
        self._session.close()
        return {
            "growth_mb": growth_mb,
            "longest_update_ms": float(spent_ms.max()),
            "mean_update_ms": float(spent_ms.mean()),
            "snapshots": self._snapshots,
        }

    def _feed(self, offsets: list[float], first: int) -> np.ndarray:
        spent_s = np.zeros(len(offsets))
        for k, offset in enumerate(offsets):
            began = time.perf_counter()
            self._update(first + k, offset)
            spent_s[k] = time.perf_counter() - began
            if k % BETWEEN_FLUSHES == 0:
                assert self._log.flush(timeout_s=60.0)
        return 1000.0 * spent_s

    def _update(self, i: int, offset: float) -> None:
        utc_s = START_UTC_S + i / RATE_HZ
        if i % self._per_leg == 0:
            self._begin_leg(utc_s, i // self._per_leg)
        self._session.add_reading(Reading(utc_s, offset, 0.0))
        if i % BETWEEN_LOOKS == 0:
            self._app.processEvents()
            heard(self._session)

    def _begin_leg(self, utc_s: float, number: int) -> None:
        sidereal_deg = 15.0 * float(local_sidereal_time_hours(utc_s, SITE))
        ra_deg = (sidereal_deg - (0.0, -70.0)[number % 2]) % 360.0
        self._session.begin_leg(f"Star {number}", ra_deg, 15.0)

    def _look(self, snapshot: Snapshot) -> None:
        self._snapshots += 1
        self._newest = snapshot

    def _wait_for(self, readings: int) -> None:
        while self._readings_solved() < readings:
            self._app.processEvents()
            time.sleep(0.01)

    def _readings_solved(self) -> int:
        solution = self._newest.solution
        return sum(leg.sample_count for leg in solution.legs) if solution else 0


def main() -> None:
    app = QCoreApplication(sys.argv[:1])
    sys.setswitchinterval(0.001)
    gc.freeze()
    log = NightLog.open(Path(sys.argv[2]), lambda: START_UTC_S, refuse, refuse)
    told = LongNight(app, float(sys.argv[1]), log).run()
    assert log.close()
    print(json.dumps(told))


def refuse(sentence: str | None) -> None:
    """The log of nights has nothing to say in a good night."""
    assert sentence is None, sentence


if __name__ == "__main__":
    main()
