"""One start of the program over a log of nights, and what a person does on the Log page.

    python tests/bench/window_log.py LOG NOW_UTC_S

In a process of its own. Prints a JSON line for each thing done: its name, how long it took in ms,
the longest stretch in ms in which the window could not answer, the most its thread worked in such a
stretch, and the memory used in MB after it.
"""

from __future__ import annotations

import json
import os
import resource
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
sys.path.insert(0, str(Path(__file__).parents[2]))

from PySide6.QtCore import QEventLoop, QSettings, Qt, QTimer
from PySide6.QtWidgets import QApplication

from app.__main__ import SWITCH_INTERVAL_S
from app.compose import Program
from app.pages.log.page import COMPARE, NIGHTS, LogPage
from app.pagetable import DRIFT, LOG
from core.sky.site import Air, Site

BEAT_MS = 2
SETTLE_MS = 400
TIMES_AGAIN = 6
LONGEST_WAIT_MS = 60_000


class Beat:
    """Ticks while the window answers; the longest gap is the longest pause.

    `busiest_ms`: the most the window's thread itself worked in a gap, whatever else the machine
    has to do.
    """

    def __init__(self) -> None:
        self._timer = QTimer()
        self._timer.setTimerType(Qt.TimerType.PreciseTimer)
        self._timer.timeout.connect(self._tick)
        self._timer.start(BEAT_MS)
        self.begin()

    def begin(self) -> None:
        self._last, self._last_cpu = time.perf_counter(), time.thread_time()
        self.longest_ms = self.busiest_ms = 0.0

    def _tick(self) -> None:
        now, now_cpu = time.perf_counter(), time.thread_time()
        self.longest_ms = max(self.longest_ms, 1000.0 * (now - self._last))
        self.busiest_ms = max(self.busiest_ms, 1000.0 * (now_cpu - self._last_cpu))
        self._last, self._last_cpu = now, now_cpu


def settle(ms: int = SETTLE_MS) -> None:
    loop = QEventLoop()
    QTimer.singleShot(ms, loop.quit)
    loop.exec()


def wait_until_idle(program: Program) -> None:
    """All pages are built, and so are their parts."""
    settle()
    while program._idle._steps:
        settle()


def timed(beat: Beat, name: str, signal: object, act: Callable[[], object]) -> None:
    """From the act to the signal that its outcome is shown, and until the window is quiet again."""
    loop = QEventLoop()
    signal.connect(loop.quit)  # type: ignore[attr-defined]
    QTimer.singleShot(LONGEST_WAIT_MS, loop.quit)
    beat.begin()
    began = time.perf_counter()
    QTimer.singleShot(0, act)
    loop.exec()
    took_ms = 1000.0 * (time.perf_counter() - began)
    signal.disconnect(loop.quit)  # type: ignore[attr-defined]
    settle()
    tell(name, took_ms, beat)


def tell(name: str, took_ms: float, beat: Beat) -> None:
    told = [name, took_ms, beat.longest_ms, beat.busiest_ms, used_mb()]
    print(json.dumps(told), flush=True)


def used_mb() -> float:
    statm = Path("/proc/self/statm")
    if not statm.exists():
        return 0.0
    return int(statm.read_text().split()[1]) * resource.getpagesize() / 1e6


def main(path: Path, now_utc_s: float) -> None:
    sys.setswitchinterval(SWITCH_INTERVAL_S)
    app = QApplication(sys.argv[:1])
    with tempfile.TemporaryDirectory() as scratch:
        settings = QSettings(str(Path(scratch) / "s.ini"), QSettings.Format.IniFormat)
        program = Program(app, settings, path, lambda: now_utc_s)
        program.window.resize(1280, 800)
        program.ready.connect(lambda: app.exit(0))
        began = time.perf_counter()
        program.start()
        app.exec()
        tell("ready", 1000.0 * (time.perf_counter() - began), Beat())
        wait_until_idle(program)
        look_through(program)
        program.window.close()
        program.close()


def look_through(program: Program) -> None:
    program.window.build_page(LOG)
    page = program.window.page(LOG)
    assert isinstance(page, LogPage)
    wait_until_idle(program)
    beat = Beat()
    timed(beat, "log page", page.newest, lambda: program.window.show_page(LOG))
    for time_again in range(TIMES_AGAIN):
        program.window.show_page(DRIFT)
        settle()
        again = f"log page again {time_again}"
        timed(beat, again, page.newest, lambda: program.window.show_page(LOG))
    assert program.session is not None
    program.session.set_site(Site(48.1, 11.6, 520.0, "Hill"), Air(952.0))
    settle()  # what was written makes the list of before out of date
    timed(beat, "whole list", page.listed, page.refresh)
    shown = page.list().list()
    if shown.count():
        for row in range(20):
            timed(beat, f"night {row}", page.shown, lambda row=row: shown.choose(row))
        line = page.list().search_field().line()
        timed(beat, "search", page.found, lambda: line.insert("wind dew") or search(page, line))
        timed(beat, "search cleared", page.listed, lambda: clear(page, line))
        timed(
            beat,
            "compare",
            page.sections().shown,
            lambda: page.sections().show_section(COMPARE),
        )
        page.sections().show_section(NIGHTS)
        program.window.show_page(DRIFT)
        settle()
        timed(beat, "with a night", page.newest, lambda: program.window.show_page(LOG))


def search(page: LogPage, line: object) -> None:
    page.list().searched.emit(line.text())  # type: ignore[attr-defined]


def clear(page: LogPage, line: object) -> None:
    line.clear()  # type: ignore[attr-defined]
    page.list().searched.emit("")
    page.refresh()


if __name__ == "__main__":
    main(Path(sys.argv[1]), float(sys.argv[2]))
