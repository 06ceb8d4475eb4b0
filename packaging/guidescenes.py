"""Pictures of the guide: choosing a star, watching it, turning the bolts, good enough.

The night they show is invented: a practice mount, led through as the guide says.
"""

from __future__ import annotations

import time
from collections.abc import Callable

from PySide6.QtWidgets import QApplication

from app.compose import Program
from app.devices.practice import PracticeSource
from app.pages.drift.page import DriftPage
from app.pages.drift.practice import PracticePanel
from app.pages.drift.sources import PRACTICE
from app.pagetable import DRIFT
from core.alignment.guide.procedure import Stage
from tests.app.night.heard import heard

PATIENCE_S = 20.0
LONGEST = 900  # readings of one leg
HALF_WAY = 0.6  # of a turn, for the picture


def _page(program: Program) -> DriftPage:
    program.window.show_page(DRIFT)
    page = program.window.page(DRIFT)
    assert isinstance(page, DriftPage)
    return page


def _source(page: DriftPage) -> PracticeSource:
    controls = page.ways().panel.controls(PRACTICE)
    assert isinstance(controls, PracticePanel)
    controls.set_speed("0")
    return controls.source()


def _wait(until: Callable[[], bool]) -> None:
    end = time.monotonic() + PATIENCE_S
    while not until() and time.monotonic() < end:
        QApplication.processEvents()
        time.sleep(0.005)


def _read(page: DriftPage, source: PracticeSource, count: int) -> None:
    for _ in range(count):
        source.advance()
    _wait(lambda: _readings_solved(page) >= sum(len(x.utc_s) for x in heard(page.shown()).legs))


def _readings_solved(page: DriftPage) -> int:
    solution = heard(page.shown()).solution
    return 0 if solution is None else sum(leg.sample_count for leg in solution.legs)


def _choose(program: Program) -> None:
    page = _page(program)
    page.take_way(PRACTICE)
    _source(page)
    _wait(lambda: page.leading().choosing.star() is not None)


def _watch(program: Program) -> None:
    page = _page(program)
    source = _source(page)
    _wait(lambda: page.leading().choosing.star() is not None)
    page.leading().act("watch")
    _read(page, source, 60)


def _turn(program: Program) -> None:
    page = _page(program)
    source = _source(page)
    _until(page, source, Stage.TURN)
    wanted = heard(page.shown()).guide.wanted
    assert wanted is not None
    source.turn_azimuth(HALF_WAY * wanted.azimuth_arcmin)
    source.turn_altitude(wanted.altitude_arcmin)
    for _ in range(4):
        source.advance()


def _done(program: Program) -> None:
    page = _page(program)
    _until(page, _source(page), Stage.DONE)


def _until(page: DriftPage, source: PracticeSource, wanted: Stage) -> None:
    """Does what the guide says until it has come so far."""
    for _ in range(40):
        page.leading().refresh()
        stage = heard(page.shown()).guide.stage
        if stage is wanted:
            return
        if stage is Stage.WATCH:
            _watch_on(page, source)
        elif stage is Stage.TURN:
            _turn_both(page, source)
        else:
            _wait(lambda: _primary(page) != "")
        page.leading().act(_primary(page) or "enough")


def _watch_on(page: DriftPage, source: PracticeSource) -> None:
    for _ in range(LONGEST // 10):
        _read(page, source, 10)
        page.leading().refresh()
        if _primary(page):
            return


def _turn_both(page: DriftPage, source: PracticeSource) -> None:
    for _ in range(5):
        for _ in range(4):
            source.advance()
        guide = heard(page.shown()).guide
        if guide.wanted is None or guide.seen is None:
            return
        source.turn_azimuth(guide.wanted.azimuth_arcmin - guide.seen.azimuth_arcmin)
        source.turn_altitude(guide.wanted.altitude_arcmin - guide.seen.altitude_arcmin)


def _primary(page: DriftPage) -> str:
    page.leading().refresh()
    said = page.leading().band.guidance()
    return "" if said is None or said.primary is None else said.primary.name


GUIDE_SCENES: dict[str, Callable[[Program], None]] = {
    "guide-choose": _choose,
    "guide-watch": _watch,
    "guide-turn": _turn,
    "guide-done": _done,
}
