"""How long the window is busy with what a person does: looks, text sizes, pages, ways in.

In a process of its own; prints one JSON line an action: its name and the longest stretch in ms in
which the window could not answer, best of three.
"""

from __future__ import annotations

import json
import os
import sys
import tempfile
from collections.abc import Callable, Iterator
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
sys.path.insert(0, str(Path(__file__).parents[2]))

from PySide6.QtCore import QEventLoop, QSettings, QTimer
from PySide6.QtWidgets import QApplication

from app.__main__ import SWITCH_INTERVAL_S
from app.compose import Program
from app.pages.drift.page import DriftPage
from app.pages.shared import EveningPage
from app.pagetable import DRIFT, PLAN, ROTATION, SITE
from core.sky.site import Air, Site
from core.sky.targets import Target
from tests.bench.stretch import spent_ms

SETTLE_MS = 400
TURNS = 80  # of the event loop, each timed by itself
ROUNDS = 3
ANDROMEDA = Target("M 31, Andromeda Galaxy", "galaxy", 10.68479, 41.26906, 3.44, 177.8)
Action = tuple[str, Callable[[], object]]


def settle() -> None:
    loop = QEventLoop()
    QTimer.singleShot(SETTLE_MS, loop.quit)
    loop.exec()


def longest_ms(app: QApplication, act: Callable[[], object]) -> float:
    settle()
    return max(spent_ms(step) for step in (act, *[app.processEvents] * TURNS))


def first_times(program: Program, page: DriftPage) -> Iterator[Action]:
    """What is measured once, since it is slow only the first time."""
    yield "by hand, first", lambda: page.take_way("hand")
    yield "practice, first", lambda: page.take_way("practice")
    yield "site page, first", lambda: program.window.show_page(SITE)
    yield "drift page again", lambda: program.window.show_page(DRIFT)
    for name in (ROTATION, PLAN):
        yield f"{name} page, first", lambda name=name: program.window.show_page(name)
        evening = program.window.page(name)
        assert isinstance(evening, EveningPage)
        yield f"{name} target", lambda page=evening: page.bar().search().chosen.emit(ANDROMEDA)
        for part in evening.sections().names():
            show = evening.sections().show_section
            yield f"{name} {part}, first", lambda part=part, show=show: show(part)
    yield "drift page once more", lambda: program.window.show_page(DRIFT)


def each_time(program: Program, page: DriftPage) -> Iterator[Action]:
    for name in ("day", "night", "dark"):
        yield f"look {name}", lambda name=name: program.theme.choose(name)
    for scale in (1.25, 1.5, 2.0, 1.0):
        yield f"text {scale:g}", lambda scale=scale: program.theme.enlarge(scale)
    yield "by hand", lambda: page.take_way("hand")
    yield "practice", lambda: page.take_way("practice")


def main() -> None:
    sys.setswitchinterval(SWITCH_INTERVAL_S)
    app = QApplication(sys.argv[:1])
    with tempfile.TemporaryDirectory() as scratch:
        settings = QSettings(str(Path(scratch) / "s.ini"), QSettings.Format.IniFormat)
        program = Program(app, settings, Path(scratch) / "nights.sqlite", lambda: 1.79e9)
        program.window.resize(1280, 800)
        program.ready.connect(lambda: app.exit(0))
        program.start()
        app.exec()
        measure(app, program)
        program.window.close()
        program.close()


def measure(app: QApplication, program: Program) -> None:
    assert program.session is not None
    program.session.set_site(Site(48.1, 11.6, 520.0, "Hill"), Air(952.0))
    program.window.show_page(DRIFT)
    settle()
    page = program.window.page(DRIFT)
    assert isinstance(page, DriftPage)
    for name, act in first_times(program, page):
        print(json.dumps([name, longest_ms(app, act)]))
    rounds = [
        [(name, longest_ms(app, act)) for name, act in each_time(program, page)]
        for _ in range(ROUNDS)
    ]
    for same in zip(*rounds, strict=True):
        print(json.dumps([same[0][0], min(spent for _, spent in same)]))


if __name__ == "__main__":
    main()
