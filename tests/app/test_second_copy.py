"""A second copy of the program says on every page why it only reads, and takes over by itself."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtWidgets import QApplication

from app.compose import Program
from app.devices.source import Reading
from app.pagetable import LOG, SITE, TONIGHT
from app.store.nights import NightLog
from core.alignment.driftlog.reader import read as read_drift_log
from core.sky.site import Air, Site
from tests.app.night.heard import heard

NOW_S = 1_790_000_000.0


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "nights.sqlite"


@pytest.fixture
def first(path: Path) -> Iterator[NightLog]:
    log = NightLog.open(path, lambda: NOW_S, lambda _: None, lambda _: None)
    log.resume_or_begin_night(NOW_S)
    log.set_site(Site(48.1, 11.6, 520.0, "Hill"), Air(952.0))
    leg = log.add_leg("east", "Bellatrix", 81.28, 6.35)
    log.add_samples(leg, NOW_S - 60.0 + np.arange(5.0), np.ones(5))
    assert log.flush()
    yield log
    log.close()


@pytest.fixture
def program(qapp: QApplication, settings, path: Path, first: NightLog, qtbot) -> Iterator[Program]:
    assert first.unwritten == 0
    made = Program(qapp, settings, path, lambda: NOW_S)
    made.window.resize(1280, 800)
    with qtbot.waitSignal(made.ready, timeout=20_000):
        made.start()
    yield made
    made.window.may_close = lambda: True
    made.window.close()
    made.close()


def test_it_is_said_on_every_page_until_it_takes_over(
    program: Program, first: NightLog, qtbot
) -> None:
    for name in (TONIGHT, SITE, LOG):
        program.window.show_page(name)
        assert "this one only reads it" in program.standing()
        assert program._standing.isVisible()
    page = program.window.page(LOG)
    qtbot.waitUntil(lambda: page.list().list().count() == 1, timeout=10_000)
    with qtbot.waitSignal(page.shown, timeout=10_000):
        page.list().list().choose(0)
    page.remembering.note("dew")
    assert "waits in memory" in page.bar().said()
    assert first.close()
    qtbot.waitUntil(lambda: not program.standing(), timeout=10_000)
    assert not program._standing.isVisible()
    page.refresh()
    with qtbot.waitSignal(page.shown, timeout=10_000):
        page._reopen()
    assert "dew" in page.sheet().notes.said()


def test_what_it_measured_is_offered_when_it_is_closed_first(program: Program) -> None:
    session = program.session
    assert not heard(session).legs  # the other copy's leg is none of this one's
    session.begin_leg("Kelp", 10.0, 5.0)
    for second in range(4):
        session.add_reading(Reading(NOW_S + second, 0.5 * second))
    assert not program.window.may_close()
    asking = program.window.asking()
    assert "not on disk" in asking.question()
    asking.yes().click()
    log = read_drift_log(QApplication.clipboard().text().splitlines())
    assert log.legs[0].north_arcsec.tolist() == [0.0, 0.5, 1.0, 1.5]
