"""Every text of the whole program is said in the person's language: none is written past it.

A language of brackets is put in place of German: what stands outside them on the screen was never
looked up. Only the sky is hurried, as in the night walked by keyboard.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QCoreApplication, QTranslator
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget
from shiboken6 import isValid

from app.compose import Program
from app.pages.tracking import pointingsection, runs, sections
from app.pagetable import (
    BUDGET,
    DRIFT,
    LOG,
    MOUNT,
    PLAN,
    POLE,
    ROTATION,
    SITE,
    TONIGHT,
    TRACKING,
    own_zone,
)
from app.ui.form import Choice, Sections
from app.workers.latest import LatestOnly
from core import language
from core.alignment.guide.procedure import Stage
from core.mount.examples import INVENTED_SET, invented_inventory
from core.sky import catalogues, targets
from core.sky.site import Air, Site
from tests.app.freshprogram import DUSK_S, fresh_program
from tests.app.night.heard import heard
from tests.app.spokentexts import Allowed, Painted, bracketed, texts_of, unsaid

PATIENCE_MS = 30_000
PLACE = "Invented rock"
PAGES = (TONIGHT, SITE, POLE, MOUNT, BUDGET, TRACKING, ROTATION, PLAN, DRIFT, LOG)


class Brackets(QTranslator):
    """Knows every sentence of every part, the toolkit's own included."""

    def translate(self, _context: str, source: str, *_more: object) -> str:
        return bracketed(source)

    def isEmpty(self) -> bool:
        return False


class Looker:
    """Opens parts of the program and keeps what is said there past the language."""

    def __init__(self, program: Program, qtbot, painted: Painted) -> None:
        self.program, self.window, self._qtbot, self._painted = (
            program,
            program.window,
            qtbot,
            painted,
        )
        columns = runs.COLUMNS, pointingsection.COLUMNS, sections.COLUMNS
        self._allowed = Allowed((PLACE, own_zone(), *columns))
        self.found: dict[tuple[str, str], str] = {}
        self.seen = 0

    def wait(self, until: Callable[[], bool]) -> None:
        self._qtbot.waitUntil(until, timeout=PATIENCE_MS)

    def is_quiet(self) -> bool:
        """Whether nothing is being worked out."""
        errands = (*self.program.findChildren(LatestOnly), *self.window.findChildren(LatestOnly))
        return not any(one.isRunning() or one.is_wanted_again() for one in errands)

    def look(self, where: str) -> None:
        QApplication.processEvents()
        self.wait(self.is_quiet)
        QApplication.processEvents()
        self._painted.texts.clear()
        self.window.grab()
        painted = [("painted", text) for text in self._painted.texts]
        for kind, text in (*texts_of(self.window), *painted):
            self.seen += 1
            if self._allowed.left(text):
                self.found.setdefault((kind, text), where)

    def page(self, name: str) -> QWidget:
        self.window.show_page(name)
        page = self.window.page(name)
        assert page is not None
        return page


@pytest.fixture
def looker(qapp: QApplication, tmp_path: Path, qtbot, monkeypatch) -> Iterator[Looker]:
    brackets = Brackets(qapp)
    QCoreApplication.installTranslator(brackets)
    language.use(language.ENGLISH, bracketed)
    made = fresh_program(qapp, tmp_path, monkeypatch)
    made.window.resize(1280, 800)
    painted = Painted(monkeypatch)
    with qtbot.waitSignal(made.ready, timeout=PATIENCE_MS):
        made.start()
    yield Looker(made, qtbot, painted)
    made.window.close()
    made.close()
    QCoreApplication.removeTranslator(brackets)
    language.use_english()


def test_a_text_within_brackets_was_said_and_one_outside_was_not() -> None:
    assert not unsaid("⟦a ⟦b⟧ c⟧").strip()
    assert unsaid("⟦a⟧ then ⟦b⟧").split() == ["then"]
    assert not unsaid("⟦the first words").strip()
    assert not unsaid("the last words⟧").strip()
    assert unsaid("never said") == "never said"


def test_nothing_is_written_past_the_language(looker: Looker) -> None:
    _look_at_the_empty_program(looker)
    _fill(looker)
    _practise(looker)
    for name in PAGES:
        page = looker.page(name)
        looker.look(name)
        _open_all_parts(looker, name, page)
    _look_at_help(looker)
    assert looker.seen > 3000
    told = [f"{where}: {kind}: {text!r}" for (kind, text), where in looker.found.items()]
    assert not told, "\n".join(told)


def _look_at_the_empty_program(looker: Looker) -> None:
    guide = looker.program.guide()
    while not guide.isHidden():
        looker.look("guide")
        guide.next_button().click()
    for name in PAGES:
        looker.page(name)
        looker.look(f"empty {name}")


def _fill(looker: Looker) -> None:
    """A place, invented equipment in use, and a target."""
    program = looker.program
    program.session.set_site(Site(47.0, -20.0, 20.0, PLACE), Air(1000.0))
    equipment = looker.page(MOUNT).equipment()
    equipment.take(invented_inventory())
    equipment.use(INVENTED_SET.key)
    plan = looker.page(PLAN)
    found = targets.search("M 31", catalogues.load_stars(), catalogues.load_deep_sky(), DUSK_S)
    plan.bar().search().chosen.emit(found[0])
    looker.look("filled plan")


def _practise(looker: Looker) -> None:
    """Aligns the practice mount as far as the turn of the bolts, and looks at each stage."""
    page = looker.page(DRIFT)
    looker.look("drift, the ways in")
    page.ways_in().button("practice").click()
    controls = page.ways().panel.controls("practice")
    controls.set_speed("0")  # the test itself lets the time pass
    seen: set[Stage] = set()
    for _ in range(12):
        stage = heard(page.shown()).guide.stage
        looker.look(f"drift, {stage.name}")
        seen.add(stage)
        if stage is Stage.TURN:
            break
        if stage is Stage.WATCH:
            _let_it_drift(looker, page, controls)
        looker.wait(lambda: bool(_primary(page)))
        page.leading().act(_primary(page))
        QTest.qWait(0)
        looker.wait(lambda before=stage: heard(page.shown()).guide.stage is not before)
    assert {Stage.CHOOSE, Stage.WATCH, Stage.TURN} <= seen
    _open_all_parts(looker, "drift in practice", page)


def _let_it_drift(looker: Looker, page: QWidget, controls: QWidget) -> None:
    """Until the guide says what to do next."""
    for round_number in range(200):
        for _ in range(8 if round_number else 15):
            controls.source().advance()
        looker.wait(lambda: _is_solved(page))
        if round_number == 3:
            looker.look("drift, watched")
        if _primary(page):
            return
    raise AssertionError("the guide never said that this star has told enough")


def _primary(page: QWidget) -> str:
    page.leading().refresh()
    said = page.leading().band.guidance()
    return "" if said is None or said.primary is None else said.primary.name


def _is_solved(page: QWidget) -> bool:
    snapshot = heard(page.shown())
    if snapshot.solution is None:
        return False
    solved = {leg.label: leg.sample_count for leg in snapshot.solution.legs}
    return all(solved.get(leg.label) == leg.utc_s.size for leg in snapshot.legs)


def _open_all_parts(looker: Looker, name: str, page: QWidget) -> None:
    """Its sections, and every choice in them, each option once."""
    sections = page.findChildren(Sections)
    keys = [one.keys() for one in sections]
    if name == MOUNT:
        keys = [page.sections]
    if name == TRACKING:
        page.head.practice_key.click()
    if name == LOG:
        looker.wait(lambda: page.list().list().count() > 0)
        page.list().list().choose(0)
    for holder in keys or [None]:
        for option in [None] if holder is None else holder.options():
            if holder is not None:
                holder.button(option).click()
            looker.look(f"{name} {option}")
            for choice in page.findChildren(Choice):
                if not isValid(choice) or choice in keys or not choice.isVisible():
                    continue
                before = choice.choice()
                for other in choice.options():
                    if choice.button(other).isVisible() and choice.button(other).isEnabled():
                        choice.button(other).click()
                        looker.look(f"{name} {option} {other}")
                if choice.isVisible() and before in choice.options():
                    choice.button(before).click()


def _look_at_help(looker: Looker) -> None:
    window = looker.window
    window.help_button().click()
    for name in PAGES:
        window.show_page(name)
        looker.look(f"help of {name}")
    sections = window.help().sections()
    for section in sections.names():
        sections.show_section(section)
        looker.look(f"help, {section}")
