"""The Log page: browsing, searching, notes, pictures, solving again, carrying out and in."""

from __future__ import annotations

import json
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.night.archive import ExportForm, NightFiles
from app.pages.log.page import COMPARE, KEEP, Comparing, LogPage, _ticks
from app.store.nights import NightLog
from app.ui.style import SCALES
from core.alignment.driftlog.reader import read as read_drift_log
from core.night import exports
from core.night.record import Kind
from tests.app.pages import reach
from tests.app.pages.log.conftest import LATER_S, done
from tests.core.night.recorded import whole_night

NIGHT = whole_night()


def items(page: LogPage) -> list[str]:
    return page.list().list().texts()


def in_order(text: str) -> dict:
    """An exported night with its entries by their keys: a log gives them back by their times."""
    night = json.loads(text)["night"]
    night["entries"].sort(key=lambda entry: entry["key"])
    return night


def test_nights_stand_with_what_they_came_to(page: LogPage) -> None:
    (night,) = items(page)  # tonight, in which nothing was done, is left out
    assert "Meadow <north> & hill (invented)" in night
    assert "′ ± 0.4′" in night


def test_a_night_is_opened_by_key(page: LogPage, qtbot) -> None:
    with qtbot.waitSignal(page.shown, timeout=10_000):
        QTest.keyClick(page.list().list(), Qt.Key.Key_Down)
    assert "Meadow" in page.sheet().title()
    legs = page.sheet().leg_rows()
    assert sorted(row[0] for row in legs) == ["bumped (left out)", "east 1", "east 2", "run 1"]
    assert (
        page.sheet()
        .facts()
        .told()[0]
        .startswith(f"{NIGHT.of_kind(Kind.RESULT)[-1].content['error_arcmin']:g}′")
    )


def test_searching_finds_words_of_notes_and_nothing_else(page: LogPage, qtbot) -> None:
    line = page.list().search_field().line()
    QTest.keyClicks(line, "bellatrix")
    qtbot.waitUntil(lambda: "Found in 1" in page.list().said())
    assert "“Bellatrix”" in items(page)[0]
    QTest.keyClicks(line, " zeppelin")
    qtbot.waitUntil(lambda: "Found in 0" in page.list().said())
    assert items(page) == []
    line.selectAll()
    QTest.keyClick(line, Qt.Key.Key_Delete)
    qtbot.waitUntil(lambda: len(items(page)) == 1)


def test_a_leg_is_solved_again_without_touching_the_night(
    opened: LogPage, log: NightLog, qtbot
) -> None:
    before = exports.write_json(log.archive.record(NIGHT.key))
    again = opened.sheet().again
    ticks = again.ticks()
    assert ticks
    with qtbot.waitSignal(again.solved, timeout=30_000):
        QTest.keyClick(again.solve_button(), Qt.Key.Key_Space)
    first = [half.accessibleDescription() for half in again.band().halves()]
    assert again.band().isVisible() == bool(first[0])
    for tick in ticks:
        tick.show_tick(False)
    with qtbot.waitSignal(again.solved, timeout=30_000):
        again.solve()
    assert "No leg is chosen" in again.said()
    assert not again.band().isVisible()
    assert first
    assert exports.write_json(log.archive.record(NIGHT.key)) == before


@pytest.mark.parametrize("form", ExportForm)
def test_a_night_is_carried_out(opened: LogPage, tmp_path: Path, qtbot, form: ExportForm) -> None:
    path = tmp_path / f"night{form.value}"
    sentence = done(qtbot, opened, lambda: opened.carrying.export(form, path))
    assert sentence.startswith(f"Saved as night{form.value}")
    data = path.read_bytes()
    if form is ExportForm.PDF:
        assert data.startswith(b"%PDF-")
        assert len(data) > 20_000
    elif form is ExportForm.HTML:
        text = data.decode()
        assert text.startswith("<!DOCTYPE html>")
        assert "Meadow &lt;north&gt; &amp; hill" in text
        assert "<svg" in text
        assert "http" not in text.replace("http://www.w3.org/2000/svg", "")
    elif form is ExportForm.CSV:
        drift_log = read_drift_log(data.decode().splitlines())
        assert len(drift_log.legs) == len(list(NIGHT.legs))
    else:
        assert in_order(data.decode()) == in_order(exports.write_json(NIGHT))
    assert not list(tmp_path.glob("*.unfinished"))


def test_a_file_that_is_there_is_replaced_only_after_a_yes(
    opened: LogPage, tmp_path: Path, qtbot
) -> None:
    path = tmp_path / "night.json"
    path.write_text("mine")
    opened.carrying.export(ExportForm.JSON, path)
    asking = opened.bar().asking()
    assert "there already" in asking.question()
    assert asking.no().hasFocus() or not opened.isActiveWindow()
    asking.no().click()
    assert path.read_text() == "mine"
    opened.carrying.export(ExportForm.JSON, path)
    done(qtbot, opened, asking.yes().click)
    assert json.loads(path.read_text())["night"]


def test_nothing_goes_over_the_log_itself_even_after_a_yes(
    opened: LogPage, log: NightLog, tmp_path: Path, qtbot
) -> None:
    path = tmp_path / "nights.sqlite"
    before = path.stat().st_ino
    for do in (
        opened.carrying.back_up,
        lambda where: opened.carrying.export(ExportForm.JSON, where),
    ):
        do(path)
        sentence = done(qtbot, opened, opened.bar().asking().yes().click)
        assert "belongs to the log of nights that is in use" in sentence
    assert path.stat().st_ino == before
    assert log.archive.record(NIGHT.key) is not None


def test_a_folder_that_is_not_there_is_said(opened: LogPage, tmp_path: Path, qtbot) -> None:
    sentence = done(
        qtbot, opened, lambda: opened.carrying.export(ExportForm.HTML, tmp_path / "no" / "n.html")
    )
    assert "could not be written" in sentence


def test_a_backup_is_restored_into_another_log(page: LogPage, tmp_path: Path, qtbot) -> None:
    page.sections().show_section(KEEP)
    path = tmp_path / "backup.sqlite"
    sentence = done(qtbot, page, lambda: page.carrying.back_up(path))
    assert str(path.name) in sentence
    other = NightLog.open(tmp_path / "o.sqlite", lambda: LATER_S, lambda _: None, lambda _: None)
    other.resume_or_begin_night(LATER_S)
    assert other.archive.record(NIGHT.key) is None
    NightFiles(other.archive, str).take_in(path)
    restored = other.archive.record(NIGHT.key)
    other.close()
    assert exports.write_json(restored) == exports.write_json(page.files().record(NIGHT.key))


def test_a_damaged_log_of_any_name_is_salvaged(page: LogPage, tmp_path: Path, qtbot) -> None:
    page.sections().show_section(KEEP)
    path = tmp_path / "from the old computer.dat"
    old = NightLog.open(path, lambda: LATER_S, lambda _: None, lambda _: None)
    old.resume_or_begin_night(LATER_S)
    leg = old.add_leg("east", "Bellatrix", 81.28, 6.35)
    old.add_samples(leg, LATER_S + np.arange(300.0), np.ones(300))
    assert old.close()
    content = bytearray(path.read_bytes())
    content[:100] = bytes(100)
    path.write_bytes(content)
    sentence = done(qtbot, page, lambda: page.carrying.salvage(path))
    assert "nights: 1, legs: 1, readings: 300" in sentence
    assert f"kept untouched: {path}" in sentence
    qtbot.waitUntil(lambda: len(items(page)) == 2)
    text = tmp_path / "letter.txt"
    text.write_text("no log")
    assert "not a log" in done(qtbot, page, lambda: page.carrying.salvage(text))
    assert page.sections().section(KEEP).salvage_button().isVisible()


def test_taking_in_is_asked_about_first(page: LogPage, tmp_path: Path, qtbot) -> None:
    path = tmp_path / "night.json"
    path.write_text(exports.write_json(NIGHT), encoding="utf-8")
    page.take_file(path)
    assert "Nothing here is replaced" in page.bar().asking().question()
    sentence = done(qtbot, page, page.bar().asking().yes().click)
    assert "is in the log" in sentence
    damaged = tmp_path / "bad.json"
    damaged.write_text("{")
    page.take_file(damaged)
    assert "cannot be read as a night" in done(qtbot, page, page.bar().asking().yes().click)


def test_nights_are_compared_as_plots(page: LogPage) -> None:
    page.sections().show_section(COMPARE)
    comparing = page.sections().section(COMPARE)
    assert isinstance(comparing, Comparing)
    error = comparing.plot().picture()
    assert error.curves[0].y.tolist() == [NIGHT.of_kind(Kind.RESULT)[-1].content["error_arcmin"]]
    comparing.kinds().button("periodic").click()
    assert "arcseconds" in comparing.plot().picture().y_name
    assert comparing.plot().isVisible()


def test_dates_below_a_comparison_have_room() -> None:
    days = np.arange(15.0) * 26.0 + 20_000.0
    ticks = [day for day, _ in _ticks(days)]
    assert len(ticks) == 5
    assert days[0] < ticks[0]
    assert ticks[-1] < days[-1]
    assert [day for day, _ in _ticks(days[:1])] == [days[0]]


@pytest.mark.parametrize("scale", SCALES)
@pytest.mark.parametrize("part", ["night", COMPARE, KEEP])
def test_everything_is_named_large_enough_and_whole(opened: LogPage, theme, scale, part) -> None:
    theme.enlarge(scale)
    if part != "night":
        opened.sections().show_section(part)
    for _ in range(8):
        QApplication.processEvents()
    assert reach.nameless(opened) == []
    assert reach.small(opened) == []
    assert reach.clipped(opened) == []
