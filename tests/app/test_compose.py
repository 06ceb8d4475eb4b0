"""The program as a whole: starts, keeps, resumes, ends without leaving anything behind."""

import subprocess
import sys
import threading
from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QApplication

from app.compose import Program
from app.devices.source import Reading
from app.pagetable import DRIFT, MOUNT, POLE, SITE, TONIGHT
from app.workers.faults import Faults
from core.mount.equipment import EquipmentSet, Mount, MountKind, Purpose
from core.sky.site import Air, Site
from tests.app.night.heard import heard

ROOT = Path(__file__).parents[2]
NOW_S = 1_790_000_000.0
HILL = Site(48.1, 11.6, 520.0, "Hill")
Start = Callable[[], Program]


@pytest.fixture
def start(qapp: QApplication, settings: QSettings, tmp_path: Path, qtbot) -> Start:
    running: list[Program] = []

    def begin() -> Program:
        program = Program(qapp, settings, tmp_path / "nights.sqlite", lambda: NOW_S)
        running.append(program)
        with qtbot.waitSignal(program.ready, timeout=20_000):
            program.start()
        return program

    yield begin
    for program in running:
        program.window.close()
        program.close()


def test_it_opens_on_the_page_for_tonight(start: Start) -> None:
    program = start()
    assert program.window.page(TONIGHT).isVisible()
    assert not program.window.rail_button(SITE).isChecked()


def test_the_other_pages_are_built_when_there_is_time(start: Start, qtbot) -> None:
    program = start()
    qtbot.waitUntil(lambda: program.window.page(SITE) is not None)
    assert program.window.page(TONIGHT).isVisible()


def test_what_turns_teach_is_kept_with_the_mount_in_use(start: Start) -> None:
    program = start()
    assert "No mount is chosen" in heard(program.session).guide.bolt_book
    program.window.show_page(MOUNT)
    equipment = program.window.page(MOUNT).equipment()
    equipment.put(Mount(key="m", name="Post", kind=MountKind.GERMAN_EQUATORIAL))
    equipment.put_set(EquipmentSet(key="s", name="Set", purpose=Purpose.DEEP_SKY, mount="m"))
    assert "“Post”" in heard(program.session).guide.bolt_book


def test_a_site_given_on_its_page_reaches_the_session_and_the_strip(start: Start) -> None:
    program = start()
    program.window.page(DRIFT).site_wanted.emit()
    page = program.window.page(SITE)
    for name, text in (("name", "Hill"), ("latitude", "48.1, 11.6"), ("elevation", "520")):
        page.field(name).show_text(text)
    page.use_button().click()
    assert heard(program.session).site == HILL


def test_places_and_their_horizon_survive_a_restart_and_reach_the_pole(start: Start) -> None:
    first = start()
    first.window.show_page(SITE)
    page = first.window.page(SITE)
    for name, text in (("name", "Hill"), ("latitude", "48.1, 11.6"), ("elevation", "520")):
        page.field(name).show_text(text)
    page.use_button().click()
    page.horizon().pairs().setPlainText("340 70 | 20 70")
    page.horizon().pairs().left.emit()
    first.window.close()
    first.close()
    second = start()
    second.window.show_page(POLE)
    assert "Polaris is hidden now" in second.window.page(POLE).band().texts()
    second.window.show_page(SITE)
    assert second.window.page(SITE).kept().button("Hill").isChecked()


def test_a_clock_that_jumps_is_said_in_the_window(qapp, settings, tmp_path, qtbot) -> None:
    wall_s = [NOW_S]
    program = Program(
        qapp, settings, tmp_path / "nights.sqlite", lambda: wall_s[0], steady=lambda: 0.0
    )
    with qtbot.waitSignal(program.ready, timeout=20_000):
        program.start()
    wall_s[0] += 3600.0
    qtbot.waitUntil(lambda: "jumped forward by 60 min" in program.window.notice())
    program.window.close()
    program.close()


def test_the_night_opens_where_it_was(start: Start) -> None:
    first = start()
    first.session.set_site(HILL, Air(952.0))
    first.session.begin_leg("Vega", 279.2, 38.8)
    first.session.add_reading(Reading(NOW_S, 1.5, sigma_arcsec=1.0))
    first.window.close()
    first.close()
    snapshot = heard(start().session)
    assert snapshot.site == HILL
    assert [leg.north_arcsec.tolist() for leg in snapshot.legs] == [[1.5]]


def test_a_mount_carried_to_another_place_begins_anew(start: Start) -> None:
    program = start()
    program.session.set_site(HILL, Air(952.0))
    program.session.begin_leg("Vega", 279.2, 38.8)
    program.session.add_reading(Reading(NOW_S, 1.5, sigma_arcsec=1.0))
    program.window.show_page(SITE)
    page = program.window.page(SITE)
    page.form().show_site(Site(-33.0, 20.0, 300.0, "Rock"), None)
    page.use_button().click()
    page.moving().no().click()
    snapshot = heard(program.session)
    assert (snapshot.site.name, snapshot.axis_state, snapshot.legs) == ("Rock", 2, ())


def test_a_leg_under_way_is_on_the_screen_again(start: Start) -> None:
    first = start()
    first.session.set_site(HILL, Air(952.0))
    first.session.begin_leg("Vega", 279.2, 38.8)
    for i in range(12):
        first.session.add_reading(Reading(NOW_S - 60.0 + 5.0 * i, 0.1 * i, sigma_arcsec=1.0))
    first.window.close()
    first.close()
    page = start().window.page(DRIFT)
    row = page.work().legs().row("1 Vega")
    assert row.isVisible()
    assert row.accessibleName().startswith("1 Vega")
    pad = page.ways().panel.controls("hand").pad()
    assert pad.isVisible()
    assert "was being watched" in pad.said()
    page.work().plot().draw()
    pad.offset().show_text("1.5")
    pad.press()
    (leg,) = heard(page.shown()).legs
    assert leg.utc_s.size == 13


def test_a_log_dropped_on_the_window_is_read(start: Start, tmp_path: Path, qtbot) -> None:
    program = start()
    program.window.show_page(SITE)
    path = tmp_path / "night.csv"
    lines = [f"a,2026-09-21T20:00:{s:02d}Z,279.2,38.8,{0.1 * s}" for s in range(0, 60, 5)]
    path.write_text("\n".join(["leg,utc,ra_deg,dec_deg,north_arcsec", *lines]))
    program.window.file_dropped.emit(path)
    assert program.window.page(DRIFT).isVisible()
    qtbot.waitUntil(lambda: len(heard(program.session).legs) == 1)


def test_closing_before_it_is_ready_leaves_nothing(qapp, settings, tmp_path, qtbot) -> None:
    program = Program(qapp, settings, tmp_path / "nights.sqlite", lambda: NOW_S)
    program.start()
    program.window.close()
    program.close()
    with qtbot.assertNotEmitted(program.ready, wait=0):
        qapp.processEvents()
    assert program.session is None


def test_a_place_that_cannot_be_written_is_said_and_the_night_goes_on(
    qapp, settings, tmp_path, qtbot
) -> None:
    blocked = tmp_path / "file"
    blocked.write_text("not a folder")
    program = Program(qapp, settings, blocked / "nights.sqlite", lambda: NOW_S)
    with qtbot.waitSignal(program.ready, timeout=20_000):
        program.start()
    qtbot.waitUntil(lambda: bool(program.standing()))
    assert str(blocked) in program.standing()
    program.session.set_site(HILL, Air(952.0))
    program.session.begin_leg("Vega", 279.2, 38.8)
    program.session.add_reading(Reading(NOW_S, 1.5))
    assert len(heard(program.session).legs) == 1
    assert not program.window.close()
    asking = program.window.asking()
    assert "not on disk" in asking.question()
    asking.yes().click()
    assert "1 Vega" in qapp.clipboard().text()
    assert not program.window.close()
    asking.no().click()
    assert not program.window.isVisible()
    program.close()


def test_started_as_a_program_it_says_ready_and_ends(tmp_path: Path) -> None:
    log = tmp_path / "folder" / "nights.sqlite"
    done = subprocess.run(
        [sys.executable, "-m", "app", "--check", "--log", str(log)],
        cwd=ROOT,
        capture_output=True,
        text=True,
        timeout=60,
        check=False,
    )
    assert (done.returncode, done.stdout.strip()) == (0, "ready"), done.stderr
    assert log.exists()


def test_a_fault_is_a_sentence_for_the_person_and_details_for_the_file(
    tmp_path: Path, qtbot, caplog
) -> None:
    faults = Faults(tmp_path)
    faults.install()
    try:
        with qtbot.waitSignal(faults.said) as said:
            faults.caught(ZeroDivisionError, ZeroDivisionError("deep inside"), None)
    finally:
        faults.remove()
    assert "ZeroDivisionError" in said.args[0]
    assert "deep inside" not in said.args[0]
    assert "deep inside" in (tmp_path / "faults.txt").read_text(encoding="utf-8")
    assert caplog.records


def test_a_fault_in_another_thread_is_said_too(tmp_path, qtbot, caplog) -> None:
    faults = Faults(tmp_path)
    faults.install()
    try:
        with qtbot.waitSignal(faults.said):
            thread = threading.Thread(target=lambda: 1 / 0)
            thread.start()
        thread.join()
    finally:
        faults.remove()
    assert caplog.records
