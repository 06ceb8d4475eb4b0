"""What happens in the program of the folder this is started in, as one line of JSON.

How many files a typed reading passes, how long the start takes, how long a change of look keeps
the window from answering. Started by `structure.py --run`.
"""

from __future__ import annotations

import importlib
import json
import os
import pkgutil
import statistics
import subprocess
import sys
import tempfile
import threading
import time
from collections.abc import Callable
from pathlib import Path
from types import FrameType
from typing import Any

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
ROOT = Path.cwd()
sys.path.insert(0, str(ROOT))

from PySide6.QtCore import QEventLoop, QSettings, QThread, QTimer  # noqa: E402
from PySide6.QtTest import QTest  # noqa: E402
from PySide6.QtWidgets import QApplication, QLineEdit  # noqa: E402

# The same thing in the layouts this script has seen, the newest first: the first that is there.
HOMES = {
    "Program": ("app.compose",),
    "DriftPage": ("app.pages.drift.page",),
    "ByHand": ("app.pages.drift.typed", "app.pages.drift.byhand"),
    "ChosenStar": ("app.pages.drift.starchoice",),
    "ReadingPad": ("app.pages.drift.typed", "app.pages.drift.readingpad"),
    "DRIFT": ("app.pagetable", "app.pagenames"),
    "SWITCH_INTERVAL_S": ("app.__main__",),
    "Site": ("core.sky.site",),
}
PAINTING = ("app/ui/", "app/widgets/", "app/theme/")
PRODUCT = "app"  # the package of which every module is loaded to find its threads
READINGS = 6  # before the one that is followed, so that there is a trend to say
EVERY_S = 60.0
SETTLE_MS = 1500
ROUNDS = 5
QUIET_S = 0.1  # without work in the window, and a change of look is over
BUSY_MS = 0.2  # a turn of the event loop that takes longer had work to do


def named(name: str) -> Any:
    for home in HOMES[name]:
        try:
            return getattr(importlib.import_module(home), name)
        except ModuleNotFoundError:
            continue
    raise SystemExit(f"{name} is in none of {HOMES[name]}")


class Passed:
    """The files of the product in which something was called, in whichever thread."""

    def __init__(self) -> None:
        self.files: set[str] = set()
        self._is_noting = False

    def follow_threads(self) -> None:
        """Before any thread starts: Python offers no way into one that runs already."""
        threading.setprofile(self._note)
        for kind in _own_threads():
            kind.run = self._followed(kind.run)  # type: ignore[method-assign]

    def _followed(self, run: Callable[[QThread], None]) -> Callable[[QThread], None]:
        def followed(thread: QThread) -> None:
            sys.setprofile(self._note)
            run(thread)

        return followed

    def __enter__(self) -> Passed:
        self.files.clear()
        self._is_noting = True
        sys.setprofile(self._note)
        return self

    def __exit__(self, *_: object) -> None:
        sys.setprofile(None)
        self._is_noting = False

    def _note(self, frame: FrameType, event: str, _: Any) -> None:
        if self._is_noting and event == "call":
            name = frame.f_code.co_filename
            if name.startswith((f"{ROOT}/app/", f"{ROOT}/core/")):
                self.files.add(name[len(str(ROOT)) + 1 :])


def _own_threads() -> list[type[QThread]]:
    """Those of Qt's kind that the product defines, with everything loaded."""
    product = importlib.import_module(PRODUCT)
    for one in pkgutil.walk_packages(product.__path__, f"{PRODUCT}."):
        importlib.import_module(one.name)
    return [kind for kind in QThread.__subclasses__() if kind.__module__.startswith(PRODUCT)]


def until_no_new_file(passed: Passed) -> None:
    """Every answer has come, of the worker too, and its words stand."""
    before = -1
    while before < len(passed.files):
        before = len(passed.files)
        settle()


def settle(milliseconds: int = SETTLE_MS) -> None:
    loop = QEventLoop()
    QTimer.singleShot(milliseconds, loop.quit)
    loop.exec()


class Clock:
    def __init__(self) -> None:
        self.utc_s = 1_790_017_200.0  # 2026-09-21 19:00 UTC

    def __call__(self) -> float:
        return self.utc_s


def started(app: QApplication, folder: Path, clock: Clock) -> Any:
    settings = QSettings(str(folder / "s.ini"), QSettings.Format.IniFormat)
    program = named("Program")(app, settings, folder / "nights.sqlite", clock)
    program.window.resize(1280, 800)
    program.ready.connect(lambda: app.exit(0))
    program.start()
    app.exec()
    settle()
    return program


def files_of_a_reading(program: Any, clock: Clock, passed: Passed) -> dict[str, Any]:
    """From the keys pressed until the new words stand, the answer of the worker included."""
    session = program.session
    session.set_site(named("Site")(48.2, 11.6, 520.0))
    program.window.show_page(named("DRIFT"))
    page = program.window.page(named("DRIFT"))
    page.take_way("hand")
    page.findChild(named("ByHand")).watch(named("ChosenStar")("Vega", 279.2347, 38.7837))
    settle()
    line = _line_to_type_in(page)
    for number in range(READINGS):
        clock.utc_s += EVERY_S
        QTest.keyClicks(line, str(number))
        QTest.keyClick(line, " ")
        settle(300)
    settle()
    with passed:
        until_no_new_file(passed)
    resting = sorted(passed.files)
    clock.utc_s += EVERY_S
    with passed:
        QTest.keyClicks(line, "7")
        QTest.keyClick(line, " ")
        until_no_new_file(passed)
    read = sum(leg.utc_s.size for leg in _legs(session))
    assert read == READINGS + 1, f"{read} readings"
    beside = sorted(one for one in passed.files if not one.startswith(PAINTING))
    return {
        "files a typed reading passes": sorted(passed.files),
        "the same without drawing": beside,
        "files passed while nobody types": resting,
    }


def _line_to_type_in(page: Any) -> QLineEdit:
    pad = page.findChild(named("ReadingPad"))
    return next(one for one in pad.findChildren(QLineEdit) if one.isVisible())


def _legs(session: Any) -> Any:
    """Of a session that is asked, or of one that says what it has when one follows it."""
    if hasattr(session, "snapshot"):
        return session.snapshot().legs
    heard: list[Any] = []
    session.follow(heard.append)
    return heard[-1].legs


def change_of_look(app: QApplication, program: Any) -> dict[str, float]:
    """Milliseconds, median of single changes: the longest stretch, and all until it is over."""
    program.theme.choose("day")
    settle()
    longest, whole = [], []
    for name in ("night", "day") * ROUNDS:
        settle(400)
        spent = _work_ms(app, lambda name=name: program.theme.choose(name))
        longest.append(max(spent))
        whole.append(sum(spent))
    return {
        "change of look, longest stretch, ms": round(statistics.median(longest), 1),
        "change of look, all, ms": round(statistics.median(whole), 1),
    }


def _work_ms(app: QApplication, act: Callable[[], object]) -> list[float]:
    """The act and each turn of the event loop with work in it, until there is none."""
    spent = [_spent_ms(act)]
    last = time.perf_counter()
    while time.perf_counter() - last < QUIET_S:
        took = _spent_ms(app.processEvents)
        if took > BUSY_MS:
            spent.append(took)
            last = time.perf_counter()
    return spent


def _spent_ms(act: Callable[[], object]) -> float:
    began = time.perf_counter()
    act()
    return 1000.0 * (time.perf_counter() - began)


STARTING = """
import sys, time
from PySide6.QtCore import QTimer
began_s = float(sys.argv[1])
sys.path.insert(0, sys.argv[2])
import app.__main__ as entry
def tell(what):
    print(what, time.monotonic() - began_s, flush=True)
start = entry.Program.start
def told(program):
    program.ready.connect(lambda: tell("ready"))
    start(program)
    QTimer.singleShot(0, lambda: tell("shown"))
entry.Program.start = told
sys.exit(entry.main(["--check", "--log", sys.argv[3]]))
"""


def start_times(folder: Path) -> dict[str, float]:
    """Seconds since the process began, median; the first start, which fills caches, not counted."""
    told = [_start_s(folder / f"{number}.sqlite") for number in range(ROUNDS + 1)][1:]
    return {
        f"start until {what}, s": round(statistics.median(one[what] for one in told), 2)
        for what in ("shown", "ready")
    }


def _start_s(log: Path) -> dict[str, float]:
    """By the clock of the system, which both processes read alike."""
    command = [sys.executable, "-c", STARTING, str(time.monotonic()), str(ROOT), str(log)]
    ran = subprocess.run(command, cwd=ROOT, check=True, stdout=subprocess.PIPE, text=True)
    lines = (line.split() for line in ran.stdout.splitlines())
    return {words[0]: float(words[1]) for words in lines if len(words) == 2}


def main() -> None:
    sys.setswitchinterval(named("SWITCH_INTERVAL_S"))
    app = QApplication(sys.argv[:1])
    clock = Clock()
    passed = Passed()
    passed.follow_threads()
    with tempfile.TemporaryDirectory() as scratch:
        program = started(app, Path(scratch), clock)
        found: dict[str, Any] = files_of_a_reading(program, clock, passed)
        found |= change_of_look(app, program)
        program.window.close()
        program.close()
        found |= start_times(Path(scratch))
    print(json.dumps(found), flush=True)


if __name__ == "__main__":
    main()
