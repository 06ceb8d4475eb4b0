"""A run recorded on the page: begun, drawn, on disk, ended, and gone on with after a kill."""

import shutil
import sqlite3
import tempfile
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtWidgets import QApplication

from app.devices.practice import PracticeSource
from app.night.recorder import Recorder, RunRecorder
from app.pages.tracking.page import PERIODIC, TrackingPage
from app.pages.tracking.parts import LiveParts, TrackingParts
from app.store.nights import NightLog
from tests.app.pages import reach

from .conftest import DONE_MS, NOW_S, invented_run


class Nights:
    """The log of nights on disk, opened again and again, each time with a page over it."""

    def __init__(self, path, qtbot, theme, session) -> None:
        self._path, self._qtbot, self._theme, self._session = path, qtbot, theme, session
        self._log: NightLog | None = None
        self.page: TrackingPage | None = None

    def open(self) -> TrackingPage:
        self.log = self._log = NightLog.open(self._path, lambda: NOW_S, self._fail, self._fail)
        night = self._log.resume_or_begin_night(NOW_S)
        runs = [run for run in night.tracking_runs if not run.discarded]
        unfinished = runs.pop() if runs and not runs[-1].ended else None
        live = LiveParts(RunRecorder(Recorder(self._log, self._fail)), unfinished)
        earlier = runs[-1] if runs else None
        parts = TrackingParts(lambda: NOW_S, self._log, earlier=earlier, live=live)
        page = TrackingPage(self._session, self._theme, parts, np.random.default_rng(3))
        page.resize(1150, 740)
        self._qtbot.addWidget(page)
        with self._qtbot.waitExposed(page):
            page.show()
        self.page = page
        return page

    def runs_on_disk(self):
        """As another start would find them; nothing is asked of the page."""
        self.close()
        self._log = NightLog.open(self._path, lambda: NOW_S, self._fail, self._fail)
        runs = self._log.resume_or_begin_night(NOW_S).tracking_runs
        self.close()
        return runs

    def close(self) -> None:
        if self.page is not None:
            self.page.stop()
            self.page = None
        if self._log is not None:
            assert self._log.close()
            self._log = None

    @staticmethod
    def _fail(sentence: str | None) -> None:
        assert sentence is None, sentence


@pytest.fixture
def nights(tmp_path, qtbot, theme, session) -> Iterator[Nights]:
    made = Nights(tmp_path / "nights.sqlite3", qtbot, theme, session)
    yield made
    made.close()


@pytest.fixture
def run_file(tmp_path):
    """50 minutes of an invented drive in a file; the lines, and where to write them."""
    head, *lines = invented_run().splitlines()
    path = tmp_path / "run.csv"
    path.write_text(head + "\n", encoding="utf-8")
    return path, lines


def add(path, lines) -> None:
    with path.open("a", encoding="utf-8") as file:
        file.write("".join(f"{line}\n" for line in lines))


def count(page: TrackingPage) -> int:
    leg = page.bench.live.leg()
    return 0 if leg is None else leg.utc_s.size


def test_a_growing_file_is_drawn_as_it_grows_and_judged_when_ended(nights, run_file, qtbot) -> None:
    path, lines = run_file
    page = nights.open()
    section = page.show_section(PERIODIC)
    section.live.follow(path)
    assert "Waiting" in section.live.progress.text()
    add(path, lines[:500])
    qtbot.waitUntil(lambda: count(page) == 500, timeout=DONE_MS)
    qtbot.waitUntil(lambda: section.plot.picture().curves[0].x.size == 500, timeout=DONE_MS)
    assert "being recorded" in page.head.headline.text()
    assert page.head.end_key.isVisible()
    assert not page.head.practice_key.isVisible()
    add(path, lines[500:])
    qtbot.waitUntil(lambda: count(page) == 1000, timeout=DONE_MS)
    with qtbot.waitSignal(page.bench.job.done, timeout=DONE_MS):
        page.head.end_key.click()
    assert not page.bench.live.is_on
    found = page.bench.study.drive.periodic.value
    assert found.size.peak_to_peak_arcsec == pytest.approx(12.0, abs=0.3)
    (run,) = nights.runs_on_disk()
    assert (run.leg.utc_s.size, run.ended, run.purpose) == (1000, True, "tracking")


def test_readings_are_on_disk_within_a_second_while_it_runs(nights, run_file, qtbot) -> None:
    path, lines = run_file
    page = nights.open()
    page.show_section(PERIODIC).live.follow(path)
    add(path, lines[:40])
    qtbot.waitUntil(lambda: count(page) == 40, timeout=DONE_MS)

    def on_disk() -> bool:
        """In a copy of the file as a kill at this moment would leave it."""
        folder = Path(tempfile.mkdtemp(dir=path.parent))
        for part in path.parent.glob("nights.sqlite3*"):
            shutil.copy(part, folder)
        with closing(sqlite3.connect(folder / "nights.sqlite3")) as connection:
            (found,) = connection.execute("SELECT count(*) FROM samples").fetchone()
        return found == 40

    qtbot.waitUntil(on_disk, timeout=1000)


def test_a_run_broken_off_goes_on_by_itself_and_no_reading_comes_twice(
    nights, run_file, qtbot
) -> None:
    path, lines = run_file
    page = nights.open()
    page.show_section(PERIODIC).live.follow(path)
    add(path, lines[:300])
    qtbot.waitUntil(lambda: count(page) == 300, timeout=DONE_MS)
    nights.close()
    add(path, lines[300:320])  # the other program wrote on
    page = nights.open()
    qtbot.waitUntil(lambda: count(page) == 320, timeout=DONE_MS)
    page.bench.live.finish()
    (run,) = nights.runs_on_disk()
    assert run.leg.utc_s.size == 320
    assert np.all(np.diff(run.leg.utc_s) == 3.0)


def test_the_practice_sky_is_recorded_and_gone_on_with_by_the_same_drive(nights, qtbot) -> None:
    page = nights.open()
    box = page.show_section(PERIODIC).live
    box.practice_key.click()
    for _ in range(700):
        page.bench.live._source.advance()
    amplitudes = page.bench.live._source._mount.worm.amplitudes_arcsec
    nights.close()
    page = nights.open()
    source = page.bench.live._source
    assert isinstance(source, PracticeSource)
    assert source._mount.worm.amplitudes_arcsec == amplitudes
    kept = count(page)
    assert kept >= 700
    for _ in range(200):
        source.advance()
    leg = page.bench.live.leg()
    assert np.ptp(np.diff(leg.utc_s)) == 0.0
    assert np.abs(np.diff(leg.east_arcsec))[kept - 5 : kept + 5].max() < 5.0  # no jump
    with qtbot.waitSignal(page.bench.job.done, timeout=DONE_MS):
        page.bench.live.finish()
    assert page.bench.study.drive.periodic.value is not None
    assert page.bench.run.is_practice
    (run,) = nights.runs_on_disk()
    assert run.purpose == "tracking practice"
    page = nights.open()
    assert page.bench.run.is_practice
    page.bench.leave_run_out()
    (run,) = nights.runs_on_disk()
    assert run.discarded


def test_too_few_readings_are_kept_and_said(nights, run_file, qtbot) -> None:
    path, lines = run_file
    page = nights.open()
    box = page.show_section(PERIODIC).live
    box.follow(path)
    add(path, lines[:12])
    qtbot.waitUntil(lambda: count(page) == 12, timeout=DONE_MS)
    box.stop_key.click()
    assert "12 readings, too few" in box.said()
    assert page.bench.run is None
    assert nights.runs_on_disk()[0].leg.utc_s.size == 12


def test_lines_left_out_are_counted_and_still_said_at_the_end(nights, run_file, qtbot) -> None:
    path, lines = run_file
    page = nights.open()
    box = page.show_section(PERIODIC).live
    add(path, ["run,soon,200.0,0.0,0.5,1", *lines[:10]])
    box.follow(path)
    qtbot.waitUntil(lambda: count(page) == 10, timeout=DONE_MS)
    assert box.said().startswith("Line 2 of the file was left out: utc “soon”")
    add(path, ["run,late,200.0,0.0,0.5,1", *lines[10:12]])
    qtbot.waitUntil(lambda: count(page) == 12, timeout=DONE_MS)
    assert box.said().startswith("2 lines of the file were left out, the last of them line 13:")
    box.stop_key.click()
    assert "12 readings, too few" in box.said()
    assert "2 lines of the file were left out" in box.said()


def test_pixels_without_a_scale_are_asked_for_and_a_silent_file_is_named(
    nights, run_file, qtbot
) -> None:
    path, lines = run_file
    page = nights.open()
    box = page.show_section(PERIODIC).live
    box.follow(path)
    page.bench.live._begun_utc_s = NOW_S - 75.0
    box.show_progress()
    assert "75 s" in box.trouble.text()
    text = path.read_text(encoding="utf-8").replace("arcsec", "px")
    other = path.with_name("px.csv")
    other.write_text(text, encoding="utf-8")
    add(other, lines[:70])
    box.follow(other)
    qtbot.waitUntil(box.scale.isVisible, timeout=DONE_MS)
    assert "pixels" in box.said()
    page.bench.want(scale_arcsec_per_px=2.0)
    box.follow(other)
    qtbot.waitUntil(lambda: count(page) == 70, timeout=DONE_MS)
    assert np.abs(page.bench.live.leg().east_arcsec).max() > 7.0


def test_the_keys_are_named_and_large(nights, qtbot) -> None:
    page = nights.open()
    box = page.show_section(PERIODIC).live
    for is_on in (False, True):
        if is_on:
            box.practice_key.click()
        qtbot.waitUntil(lambda on=is_on: box.stop_key.isVisible() == on)
        for _ in range(4):  # columns settle one inside the other
            QApplication.processEvents()
        assert reach.nameless(box) == []
        assert reach.small(box) == []
        assert reach.clipped(box) == []
