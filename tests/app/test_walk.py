"""The whole night by the keyboard alone, north and south, through the real program.

Only the sky is hurried: the practice source gives its readings as fast as they are computed.
"""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QFileDialog, QLabel, QLineEdit

from app.compose import Program
from app.night.archive import ExportForm
from app.pages.drift.page import DriftPage
from app.pages.drift.practice import PracticePanel
from app.pages.log.page import LogPage
from app.pages.mount.page import MountPage
from app.pages.plan.page import PlanPage
from app.pages.pole.page import PolePage
from app.pages.site.page import SitePage
from app.pages.tonight.page import TonightPage
from app.pages.tracking.page import TrackingPage
from app.ui.form import Key
from core.alignment.guide.procedure import Stage
from core.night.checklist import NightPart
from tests.app.freshprogram import fresh_program
from tests.app.night.heard import heard
from tests.app.person import PATIENCE_MS, Person

MOST_ACTIONS = 60
SPOTS = {  # invented places in the open Atlantic: latitude, longitude, a target that is up
    "north": ("47.0", "-20.0", "M 31"),
    "south": ("-33.0", "-20.0", "NGC 253"),
}


@pytest.fixture
def program(qapp: QApplication, tmp_path: Path, qtbot, monkeypatch) -> Iterator[Program]:
    """Fresh: even the guide for the first start has not been seen."""
    made = fresh_program(qapp, tmp_path, monkeypatch)
    made.window.resize(1280, 800)
    with qtbot.waitSignal(made.ready, timeout=PATIENCE_MS):
        made.start()
    with qtbot.waitActive(made.window):
        made.window.activateWindow()
    yield made
    made.window.close()
    made.close()


@pytest.mark.parametrize("hemisphere", SPOTS)
def test_a_whole_night_by_keyboard(program: Program, qtbot, tmp_path: Path, hemisphere) -> None:
    person = Person(program, qtbot)
    _read_the_guide(person)
    _give_the_site(person, hemisphere)
    _take_an_invented_set(person)
    _follow_the_checklist(person, hemisphere)
    _look_at_the_pole(person, hemisphere)
    _align_a_practice_mount(person)
    _measure_tracking(person)
    _plan_the_target(person, SPOTS[hemisphere][2])
    _write_the_report(person, tmp_path)


def _read_the_guide(person: Person) -> None:
    guide = person.program.guide()
    for _ in range(3):
        person.press(guide.next_button())
    person.press(guide.next_button())
    assert guide.isHidden()
    assert isinstance(person.window.page("site"), SitePage)


def _give_the_site(person: Person, hemisphere: str) -> None:
    latitude, longitude, _ = SPOTS[hemisphere]
    page = person.window.page("site")
    assert isinstance(page, SitePage)
    for name, text in (
        ("name", f"Rock {hemisphere}"),
        ("elevation", "20"),
        ("latitude", latitude),
        ("longitude", longitude),
    ):
        person.type(page.field(name), text)
    person.strike(Qt.Key.Key_Return)
    assert heard(person.program.session).site.latitude_deg == float(latitude)
    person.press(page.clock().right_button())


def _take_an_invented_set(person: Person) -> None:
    page = person.go(Qt.Key.Key_5, "mount")
    assert isinstance(page, MountPage)
    person.press(next(key for key in page.findChildren(Key) if key.text() == "Try an invented set"))
    person.wait(lambda: not any(key.text() == "Try an invented set" and key.isVisible()
                                for key in page.findChildren(Key)))  # fmt: skip


def _follow_the_checklist(person: Person, hemisphere: str) -> None:
    page = person.go(Qt.Key.Key_1, "tonight")
    assert isinstance(page, TonightPage)
    person.wait(page.is_up_to_date)
    person.choose(page.steps().parts(), page.steps().parts().button(NightPart.BEFORE_LEAVING.name))
    person.wait(page.steps().is_whole)
    assert page.steps().row("set").tick().isChecked()  # the program saw it done
    person.press(page.steps().row("forecast").tick())
    person.wait(page.is_up_to_date)
    person.press(page.steps().row("tell").skip_button())
    QTest.keyClicks(QApplication.focusWidget(), "she stands beside me")
    person.strike(Qt.Key.Key_Return)
    assert "she stands beside me" in page.steps().row("tell").said()
    person.choose(page.steps().parts(), page.steps().parts().button(NightPart.DAYLIGHT.name))
    assert page.steps().row("site").tick().isChecked()
    assert page.steps().row("clock").tick().isChecked()
    keys = {row.step().key for row in page.steps().rows()}
    assert keys & {"tripod-north", "tripod-south"} == {f"tripod-{hemisphere}"}


def _look_at_the_pole(person: Person, hemisphere: str) -> None:
    page = person.go(Qt.Key.Key_3, "pole")
    assert isinstance(page, PolePage)
    said = " ".join(label.text() for label in page.findChildren(QLabel) if label.isVisible())
    assert ("Polaris" in said) is (hemisphere == "north")
    assert page.band().texts()


def _align_a_practice_mount(person: Person) -> None:
    page = person.go(Qt.Key.Key_4, "drift")
    assert isinstance(page, DriftPage)
    person.press(page.ways_in().button("practice"))
    controls = page.ways().panel.controls("practice")
    assert isinstance(controls, PracticePanel)
    controls.set_speed("0")  # the test itself lets the time pass
    for _ in range(MOST_ACTIONS):
        stage = heard(page.shown()).guide.stage
        if stage is Stage.DONE:
            break
        if stage is Stage.WATCH:
            _let_it_drift(person, page, controls)
        elif stage is Stage.TURN:
            _turn_the_bolts(person, page, controls)
        person.wait(lambda: bool(_letter(page)))
        person.strike(getattr(Qt.Key, f"Key_{_letter(page)}"))
        QTest.qWait(0)
        person.wait(lambda before=stage: _has_moved_on(page, before))
    snapshot = heard(page.shown())
    assert snapshot.guide.stage is Stage.DONE
    azimuth, altitude = controls.source().reveal()
    sky = azimuth * np.cos(np.radians(snapshot.site.latitude_deg))
    assert np.hypot(sky, altitude) < 1.0


def _has_moved_on(page: DriftPage, before: Stage) -> bool:
    return heard(page.shown()).guide.stage is not before


def _letter(page: DriftPage) -> str:
    page.leading().refresh()
    said = page.leading().band.guidance()
    return "" if said is None or said.primary is None else said.primary.letter


def _let_it_drift(person: Person, page: DriftPage, controls: PracticePanel) -> None:
    """Until the guide says what to do next."""

    def is_solved() -> bool:
        snapshot = heard(page.shown())
        if snapshot.solution is None:
            return False
        solved = {leg.label: leg.sample_count for leg in snapshot.solution.legs}
        return all(solved.get(leg.label) == leg.utc_s.size for leg in snapshot.legs)

    for round_number in range(200):
        for _ in range(8 if round_number else 15):
            controls.source().advance()
        person.wait(is_solved)
        if _letter(page):
            return
    raise AssertionError("the guide never said that this star has told enough")


def _turn_the_bolts(person: Person, page: DriftPage, controls: PracticePanel) -> None:
    """By the keys of the bolts, as far as the guide wants, until the star shows that it is so."""
    bolts = controls.bolts()
    north = heard(page.shown()).site.latitude_deg > 0.0
    for _ in range(6):
        for _ in range(3):
            controls.source().advance()
        guide = heard(page.shown()).guide
        seen = guide.seen
        azimuth = guide.wanted.azimuth_arcmin - (0.0 if seen is None else seen.azimuth_arcmin)
        altitude = guide.wanted.altitude_arcmin - (0.0 if seen is None else seen.altitude_arcmin)
        east = (azimuth > 0.0) == north
        for arcmin, key in (
            (azimuth, "east" if east else "west"),
            (altitude, "raise" if altitude > 0.0 else "lower"),
        ):
            if abs(arcmin) > 0.3 or seen is None:
                person.tab_to(bolts.amount())
                line = QApplication.focusWidget()
                assert isinstance(line, QLineEdit)
                QTest.keySequence(line, "Ctrl+A")
                QTest.keyClicks(line, f"{abs(arcmin):.2f}")
                person.press(bolts.button(key))
        if seen is None:
            return


def _measure_tracking(person: Person) -> None:
    page = person.go(Qt.Key.Key_7, "tracking")
    assert isinstance(page, TrackingPage)
    person.press(page.head.practice_key)
    person.wait(lambda: "periodic error" in page.head.headline.text())


def _plan_the_target(person: Person, target: str) -> None:
    page = person.go(Qt.Key.Key_9, "plan")
    assert isinstance(page, PlanPage)
    QTest.keyClicks(QApplication.focusWidget(), target)
    person.strike(Qt.Key.Key_Return)
    person.wait(lambda: target in page.bar().name())
    tonight = person.go(Qt.Key.Key_1, "tonight")
    assert isinstance(tonight, TonightPage)
    person.wait(tonight.is_up_to_date)
    person.choose(tonight.steps().parts(), tonight.steps().parts().button("BEFORE_LEAVING"))
    person.wait(lambda: tonight.steps().row("target").tick().isChecked())


def _write_the_report(person: Person, folder: Path) -> None:
    page = person.go(Qt.Key.Key_0, "log")
    assert isinstance(page, LogPage)
    person.wait(lambda: page.list().list().count() == 1)
    person.strike(Qt.Key.Key_Down)
    person.wait(lambda: "Rock" in page.sheet().title())
    person.tab_to(page.sheet().notes.lines())
    QTest.keyClicks(QApplication.focusWidget(), "A calm night, all by keyboard.")
    person.press(page.sheet().notes.write_button())
    person.wait(lambda: "all by keyboard" in page.sheet().notes.said())
    person.press(page.sheet().export_button(ExportForm.HTML))
    dialog = page.findChild(QFileDialog)
    path = folder / "report.html"
    line = dialog.findChild(QLineEdit)
    QTest.keySequence(line, "Ctrl+A")
    QTest.keyClicks(line, str(path))
    QTest.keyClick(line, Qt.Key.Key_Return)
    person.wait(lambda: page.bar().said().startswith("Saved as"))
    report = path.read_text(encoding="utf-8")
    for words in ("Rock", "A calm night, all by keyboard.", "she stands beside me", "Checklist"):
        assert words in report
    assert "<h2>Equipment</h2>" in report
    assert "<h2>Plan</h2>" in report
