"""A disk that takes nothing, and a log of a newer program, through the program itself."""

from __future__ import annotations

import sqlite3
from collections.abc import Callable, Iterator
from contextlib import closing
from pathlib import Path

import numpy as np
import pytest

from app.compose import Program
from app.devices.source import Reading
from app.pages.log.page import LogPage
from app.pagetable import LOG
from app.store.nights import NightLog
from app.store.schema import VERSION
from core.sky.site import Air, Site

NOW_S = 1_790_000_000.0
HILL = Site(48.1, 11.6, 520.0, "Hill")
READINGS = 300

Start = Callable[[Path], Program]


@pytest.fixture
def start(qapp, settings, qtbot) -> Iterator[Start]:
    made: list[Program] = []

    def start(path: Path) -> Program:
        program = Program(qapp, settings, path, lambda: NOW_S)
        made.append(program)
        with qtbot.waitSignal(program.ready, timeout=20_000):
            program.start()
        return program

    yield start
    for program in made:
        program.window.may_close = lambda: True
        program.window.close()
        program.close()


def measure(program: Program) -> None:
    session = program.session
    assert session is not None
    session.set_site(HILL, Air(952.0))
    session.begin_leg("Vega", 279.2, 38.8)
    for number in range(READINGS):
        session.add_reading(Reading(NOW_S - 600.0 + number, 0.01 * number, sigma_arcsec=1.0))


def log_page(program: Program) -> LogPage:
    program.window.show_page(LOG)
    page = program.window.page(LOG)
    assert isinstance(page, LogPage)
    return page


def readings_in(path: Path) -> int:
    with closing(sqlite3.connect(path)) as connection:
        (count,) = connection.execute("SELECT count(*) FROM samples").fetchone()
    return int(count)


def test_readings_wait_in_memory_until_the_folder_can_be_written(
    start: Start, tmp_path: Path, qtbot
) -> None:
    folder = tmp_path / "file"
    folder.write_text("not a folder")
    program = start(folder / "nights.sqlite")
    qtbot.waitUntil(lambda: "kept in memory" in program.standing())
    measure(program)
    page = log_page(program)
    qtbot.waitUntil(lambda: "cannot be read now" in page.list().said(), timeout=10_000)
    folder.unlink()
    qtbot.waitUntil(lambda: not program.standing(), timeout=10_000)
    page.refresh()
    qtbot.waitUntil(lambda: page.list().said() == "1 night.", timeout=10_000)
    program.window.close()
    program.close()
    assert readings_in(folder / "nights.sqlite") == READINGS


def test_a_note_that_is_not_on_disk_is_not_left_behind_unasked(
    start: Start, tmp_path: Path, qtbot
) -> None:
    program = start(tmp_path / "nights.sqlite")
    log = program._warm_up.made.log
    assert log.flush()
    assert program.window.may_close()
    log._writer.read(lambda one: one.execute("PRAGMA query_only = 1"))
    log_page(program).remembering._parts.book.note("Dew on everything.")
    qtbot.waitUntil(lambda: "kept in memory" in program.standing(), timeout=5000)
    assert not program.window.may_close()
    log._writer.read(lambda one: one.execute("PRAGMA query_only = 0"))
    qtbot.waitUntil(lambda: not program.standing(), timeout=10_000)
    assert program.window.may_close()


def test_a_log_of_a_newer_program_stays_as_it_is_and_the_night_goes_beside_it(
    start: Start, tmp_path: Path
) -> None:
    path = tmp_path / "nights.sqlite"
    log = NightLog.open(path, lambda: NOW_S, lambda _: None, lambda _: None)
    log.resume_or_begin_night(NOW_S)
    log.add_samples(log.add_leg("east", "Bellatrix", 81.28, 6.35), np.arange(5.0), np.ones(5))
    assert log.close()
    with closing(sqlite3.connect(path)) as connection:
        connection.execute(f"PRAGMA user_version = {VERSION + 1}")
    before = path.read_bytes()
    program = start(path)
    assert "newer version" in program.window.notice()
    measure(program)
    program.window.close()
    program.close()
    assert path.read_bytes() == before
    assert readings_in(tmp_path / "nights-2.sqlite") == READINGS
