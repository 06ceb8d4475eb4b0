"""What happens in the program of the folder this is started in, as one line of JSON.

How many files a typed reading passes, how long the start takes, how long a change of look keeps
the window from answering. Started by `structure.py --run`.
"""

from __future__ import annotations

import importlib
import json
import os
import statistics
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path
from types import FrameType
from typing import Any

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
ROOT = Path.cwd()
sys.path.insert(0, str(ROOT))

from PySide6.QtCore import QEventLoop, QSettings, QTimer  # noqa: E402
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
    "solve": ("core.alignment.axis.solution", "core.alignment.solution"),
}
PAINTING = ("app/ui/", "app/widgets/", "app/theme/")
READINGS = 6  # before the one that is followed, so that there is a trend to say
EVERY_S = 60.0
SETTLE_MS = 1500
ROUNDS = 5
SLICES = 60  # of the event loop after a change of look


def named(name: str) -> Any:
    for home in HOMES[name]:
        try:
            return getattr(importlib.import_module(home), name)
        except ModuleNotFoundError:
            continue
    raise SystemExit(f"{name} is in none of {HOMES[name]}")


class Passed:
    """The files of the product in which something was called, in the window and in its worker."""

    def __init__(self) -> None:
        self.files: set[str] = set()
        self._solve = named("solve")
        self._home = sys.modules[self._solve.__module__]

    def __enter__(self) -> Passed:
        self._home.solve = self._solve_noted  # type: ignore[attr-defined]
        sys.setprofile(self._note)
        return self

    def __exit__(self, *_: object) -> None:
        sys.setprofile(None)
        self._home.solve = self._solve  # type: ignore[attr-defined]

    def _solve_noted(self, *given: Any, **named_too: Any) -> Any:
        """In the worker, a thread of Qt's that Python cannot be told to follow from outside."""
        sys.setprofile(self._note)
        return self._solve(*given, **named_too)

    def _note(self, frame: FrameType, event: str, _: Any) -> None:
        if event == "call":
            name = frame.f_code.co_filename
            if name.startswith((f"{ROOT}/app/", f"{ROOT}/core/")):
                self.files.add(name[len(str(ROOT)) + 1 :])


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


def files_of_a_reading(program: Any, clock: Clock) -> dict[str, Any]:
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
    clock.utc_s += EVERY_S
    with Passed() as passed:
        QTest.keyClicks(line, "7")
        QTest.keyClick(line, " ")
        settle()
    read = sum(leg.utc_s.size for leg in _legs(session))
    assert read == READINGS + 1, f"{read} readings"
    beside = sorted(one for one in passed.files if not one.startswith(PAINTING))
    return {
        "files a typed reading passes": sorted(passed.files),
        "the same without drawing": beside,
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
    """Milliseconds, median of the changes: the longest stretch, and all until it is over."""
    longest, whole = [], []
    for name in ("day", "night") * ROUNDS:
        settle(400)
        spent = [_spent_ms(lambda name=name: program.theme.choose(name))]
        spent += [_spent_ms(app.processEvents) for _ in range(SLICES)]
        longest.append(max(spent))
        whole.append(sum(spent))
    return {
        "change of look, longest stretch, ms": round(statistics.median(longest), 1),
        "change of look, all, ms": round(statistics.median(whole), 1),
    }


def _spent_ms(act: Callable[[], object]) -> float:
    began = time.perf_counter()
    act()
    return 1000.0 * (time.perf_counter() - began)


def start_times(folder: Path) -> dict[str, float]:
    """Seconds, median, of whole processes until they say that they are ready."""
    import subprocess

    spent = []
    for number in range(ROUNDS):
        began = time.perf_counter()
        command = [
            sys.executable,
            "-m",
            "app",
            "--check",
            "--log",
            str(folder / f"{number}.sqlite"),
        ]
        subprocess.run(command, cwd=ROOT, check=True, capture_output=True)
        spent.append(time.perf_counter() - began)
    return {"start until ready and closed, s": round(statistics.median(spent), 2)}


def main() -> None:
    sys.setswitchinterval(named("SWITCH_INTERVAL_S"))
    app = QApplication(sys.argv[:1])
    clock = Clock()
    with tempfile.TemporaryDirectory() as scratch:
        program = started(app, Path(scratch), clock)
        found: dict[str, Any] = files_of_a_reading(program, clock)
        found |= change_of_look(app, program)
        program.window.close()
        program.close()
        found |= start_times(Path(scratch))
    print(json.dumps(found), flush=True)


if __name__ == "__main__":
    main()
