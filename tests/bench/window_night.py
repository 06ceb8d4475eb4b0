"""A night of twelve hours at five readings a second behind the real window, in its own process.

Prints one JSON line a stage: hours so far, growth of memory in MB since the first stage, the
longest stretch of the window's thread in ms (a reading taken, or all events that wait seen to) and
what it works on one reading and all it sets off, at the pace of the night itself; the longest
collection of garbage since the stage before, as the program does them, and what a full one takes at
the end of the stage, in ms. The first stage is the start itself, with all pages built.
Run with the minutes of one leg and the path of a new folder as arguments.
"""

from __future__ import annotations

import gc
import json
import os
import sys
import time
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
sys.path.insert(0, str(Path(__file__).parents[2]))

from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QApplication

from app.__main__ import SWITCH_INTERVAL_S
from app.compose import Program
from app.devices.source import Reading
from app.pagetable import DRIFT
from app.workers.garbage import WindowGarbage
from tests.app.night.heard import heard
from tests.bench.long_night import AIR, RATE_HZ, SITE, START_UTC_S, north_arcsec, resident_mb
from tests.bench.stretch import spent_ms

STAGES_H = (0.25, 1.0, 4.0, 12.0)
SAMPLED = 120  # readings timed one by one at each stage
PACE_S = 0.2  # the pace of the night itself, once a stage is reached
BREATH_S = 0.002  # between two looks for events
BETWEEN_BREATHS = 500
MOST_S = 30.0  # for the answer to what was fed in one go
DRAWN_S = 2.0  # words follow a second after the answer
BUILT_S = 4.0  # for all that the window builds when it is idle


class Collections:
    """Times every collection of garbage."""

    def __init__(self) -> None:
        self.longest_ms = 0.0
        self._began = 0.0
        gc.callbacks.append(self._note)

    def since(self) -> float:
        """The longest since this was asked last, in ms."""
        longest_ms, self.longest_ms = self.longest_ms, 0.0
        return longest_ms

    def _note(self, phase: str, _: dict[str, int]) -> None:
        if phase == "start":
            self._began = time.perf_counter()
        else:
            spent_ms = 1000.0 * (time.perf_counter() - self._began)
            self.longest_ms = max(self.longest_ms, spent_ms)


class WindowNight:
    """Feeds the session of a running program and looks how long the window is busy."""

    def __init__(
        self, app: QApplication, program: Program, minutes_per_leg: float, collections: Collections
    ) -> None:
        assert program.session is not None
        self._app = app
        self._session = program.session
        self._per_leg = int(minutes_per_leg * 60.0 * RATE_HZ)
        self._offsets = north_arcsec()
        self._fed = 0
        self._session.set_site(SITE, AIR)
        self._collections = collections

    def run(self) -> None:
        first_mb = 0.0
        print(json.dumps({"hours": 0.0} | self._garbage_ms()), flush=True)
        for hours in STAGES_H:
            self._feed_until(int(hours * 3600.0 * RATE_HZ) - SAMPLED)
            stretches_ms = self._sampled()
            now_mb = resident_mb()
            first_mb = first_mb or now_mb
            told = {"hours": hours, "growth_mb": now_mb - first_mb}
            told |= self._garbage_ms()
            told |= {
                "longest_ms": max(stretches_ms),
                "mean_ms": sum(stretches_ms) / SAMPLED,
            }
            print(json.dumps(told), flush=True)

    def _garbage_ms(self) -> dict[str, float]:
        own_ms = self._collections.since()
        gc.collect()
        return {"collection_ms": own_ms, "full_ms": self._collections.since()}

    def _feed_until(self, count: int) -> None:
        while self._fed < count:
            self._take_one()
            if self._fed % BETWEEN_BREATHS == 0:
                self._app.processEvents()

    def _sampled(self) -> list[float]:
        """Each stretch in which the window could not answer: a reading taken, or events seen to."""
        self._settle()
        stretches_ms: list[float] = []
        for _ in range(SAMPLED):
            due = time.perf_counter() + PACE_S
            stretches_ms.append(spent_ms(self._take_one))
            while time.perf_counter() < due:
                stretches_ms.append(spent_ms(self._app.processEvents))
                time.sleep(BREATH_S)
        return stretches_ms

    def _take_one(self) -> None:
        utc_s = START_UTC_S + self._fed / RATE_HZ
        if self._fed % self._per_leg == 0:
            self._session.begin_leg(f"Star {self._fed // self._per_leg}", *self._star(utc_s))
        self._session.add_reading(Reading(utc_s, self._offsets[self._fed], 0.0))
        self._fed += 1

    def _star(self, utc_s: float) -> tuple[float, float]:
        from core.sky.clocks import local_sidereal_time_hours

        turned = (0.0, -70.0)[self._fed // self._per_leg % 2]
        return (15.0 * float(local_sidereal_time_hours(utc_s, SITE)) - turned) % 360.0, 15.0

    def _settle(self) -> None:
        """Until the answer to all that was fed has been drawn."""
        given_up = time.monotonic() + MOST_S
        while heard(self._session).solution_is_stale and time.monotonic() < given_up:
            rest(self._app, 0.1)
        rest(self._app, DRAWN_S)


def rest(app: QApplication, seconds: float) -> None:
    done = time.monotonic() + seconds
    while time.monotonic() < done:
        app.processEvents()
        time.sleep(0.01)


def main() -> None:
    sys.setswitchinterval(SWITCH_INTERVAL_S)
    app = QApplication(sys.argv[:1])
    garbage = WindowGarbage()
    garbage.start()
    collections = Collections()
    folder = Path(sys.argv[2])
    settings = QSettings(str(folder / "s.ini"), QSettings.Format.IniFormat)
    program = Program(app, settings, folder / "nights.sqlite", lambda: START_UTC_S)
    program.window.resize(1280, 800)
    program.ready.connect(lambda: app.exit(0))
    program.start()
    app.exec()
    rest(app, BUILT_S)
    program.window.show_page(DRIFT)
    WindowNight(app, program, float(sys.argv[1]), collections).run()
    program.window.close()
    program.close()
    garbage.stop()


if __name__ == "__main__":
    main()
