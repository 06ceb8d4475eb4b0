"""Notes and pictures of a night: added, changed, removed, put back, carried out and in."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.night.archive import ExportForm, NightFiles
from app.pages.log.page import LogPage
from app.store.nights import NightLog
from app.ui.photo import Photo
from core.night import exports
from core.night.record import Entry, Kind
from core.night.report import html
from tests.app.pages.log.conftest import LATER_S, done
from tests.core.night.recorded import whole_night

NIGHT = whole_night()
CAPTION = "The field <before> the flip"


def kept(log: NightLog, kind: Kind) -> list[Entry]:
    assert log.flush()
    return list(log.archive.record(NIGHT.key).of_kind(kind))


def as_kept(entry: Entry) -> tuple:
    return entry.key, entry.kind, entry.utc_s, dict(entry.content), entry.attachment


def press(qtbot, page: LogPage, button) -> None:
    with qtbot.waitSignal(page.shown, timeout=10_000):
        QTest.keyClick(button, Qt.Key.Key_Space)


def note_row(page: LogPage):
    return next(row for row in page.sheet().notes.rows() if row.edit_button().isVisible())


def test_a_note_goes_to_the_night_that_is_open(opened: LogPage, log: NightLog, qtbot) -> None:
    opened.sheet().notes.lines().setPlainText("The wind dropped after midnight.")
    with qtbot.waitSignal(opened.shown, timeout=10_000):
        QTest.keyClick(opened.sheet().notes.write_button(), Qt.Key.Key_Space)
    assert "wind dropped" in opened.sheet().notes.said()
    kept = log.archive.record(NIGHT.key).of_kind(Kind.NOTE)
    assert kept[-1].content["text"] == "The wind dropped after midnight."


def test_a_picture_is_kept_and_shines_red_alone_at_night(
    opened: LogPage, theme, tmp_path: Path, qtbot, log: NightLog
) -> None:
    path = tmp_path / "field.png"
    image = QImage(60, 40, QImage.Format.Format_RGB32)
    image.fill(QColor(90, 200, 250))
    image.save(str(path))
    before = len(opened.sheet().notes.photos())
    with qtbot.waitSignal(opened.shown, timeout=10_000):
        done(qtbot, opened, lambda: opened.take_file(path))
    photos = opened.sheet().notes.photos()
    assert len(photos) == before + 1
    assert log.archive.record(NIGHT.key).of_kind(Kind.PICTURE)[-1].attachment == path.read_bytes()
    theme.choose("night")
    QApplication.processEvents()
    drawn = photos[-1].findChild(Photo).grab().toImage()
    colours = [drawn.pixelColor(x, y) for x in range(1, 50, 7) for y in range(1, 35, 7)]
    assert max(colour.green() + colour.blue() for colour in colours) == 0
    assert max(colour.red() for colour in colours) > 20


def test_what_is_no_picture_is_refused_in_words(opened: LogPage, tmp_path: Path, qtbot) -> None:
    path = tmp_path / "field.tiff"
    path.write_bytes(b"II*")
    assert "not a picture" in done(qtbot, opened, lambda: opened.take_file(path))


def test_a_note_is_changed_and_keeps_its_time(opened: LogPage, log: NightLog, qtbot) -> None:
    (before, *_) = kept(log, Kind.NOTE)
    notes = opened.sheet().notes
    QTest.keyClick(note_row(opened).edit_button(), Qt.Key.Key_Space)
    assert notes.lines().text() == before.content["text"]
    assert notes.leave_button().isVisible()
    notes.lines().setPlainText("Only the hill was misty.")
    press(qtbot, opened, notes.write_button())
    (after, *_) = kept(log, Kind.NOTE)
    assert (after.key, after.utc_s) == (before.key, before.utc_s)
    assert after.content["text"] == "Only the hill was misty."
    assert not notes.leave_button().isVisible()
    assert notes.lines().text() == ""


def test_a_change_can_be_left(opened: LogPage, log: NightLog) -> None:
    before = [as_kept(one) for one in kept(log, Kind.NOTE)]
    notes = opened.sheet().notes
    note_row(opened).edit_button().click()
    notes.lines().setPlainText("No.")
    notes.leave_button().click()
    assert notes.lines().text() == ""
    assert [as_kept(one) for one in kept(log, Kind.NOTE)] == before


@pytest.mark.parametrize("kind", [Kind.NOTE, Kind.PICTURE])
def test_what_is_removed_can_be_put_back_whole(
    opened: LogPage, log: NightLog, qtbot, kind: Kind
) -> None:
    notes = opened.sheet().notes
    before = [as_kept(one) for one in kept(log, kind)]
    one = note_row(opened) if kind is Kind.NOTE else notes.photos()[0]
    press(qtbot, opened, one.remove_button())
    assert len(kept(log, kind)) == len(before) - 1
    assert notes.undo_button().isVisible()
    press(qtbot, opened, notes.undo_button())
    assert [as_kept(one) for one in kept(log, kind)] == before
    assert not notes.undo_button().isVisible()


def close_disk(log: NightLog, is_closed: bool) -> None:
    log._writer.read(lambda one: one.execute(f"PRAGMA query_only = {int(is_closed)}"))


def test_a_note_the_disk_does_not_take_is_said_to_wait_until_it_does(
    opened: LogPage, log: NightLog, qtbot
) -> None:
    assert log.flush()
    close_disk(log, True)
    notes = opened.sheet().notes
    for text in ("Cold and wet.", "Colder."):
        opened.bar().say("")
        notes.lines().setPlainText(text)
        QTest.keyClick(notes.write_button(), Qt.Key.Key_Space)
        qtbot.waitUntil(lambda: "waits in memory" in opened.bar().said(), timeout=3000)
        assert "do not close the program" in opened.bar().said()
    close_disk(log, False)
    qtbot.waitUntil(lambda: "is written into the log now" in opened.bar().said(), timeout=5000)
    qtbot.waitUntil(lambda: "Cold and wet." in notes.said() and "Colder." in notes.said())


def test_a_caption_the_disk_does_not_take_is_said_to_wait(
    opened: LogPage, log: NightLog, qtbot
) -> None:
    assert log.flush()
    close_disk(log, True)
    (picture, *_) = log.archive.record(NIGHT.key).of_kind(Kind.PICTURE)
    opened.remembering.describe(picture, "The field")
    qtbot.waitUntil(lambda: "waits in memory" in opened.bar().said(), timeout=3000)
    close_disk(log, False)


def test_nothing_is_said_of_waiting_while_the_disk_takes_it(opened: LogPage, qtbot) -> None:
    said: list[str] = []
    opened.bar().say = said.append
    with qtbot.waitSignal(opened.remembering._looks.done, timeout=3000):
        opened.remembering.note("Calm.")
    qtbot.wait(50)
    assert said == []


def test_a_caption_goes_into_reports_and_into_another_log(
    opened: LogPage, log: NightLog, tmp_path: Path, qtbot
) -> None:
    field = opened.sheet().notes.photos()[0].caption()
    field.line().selectAll()
    QTest.keyClicks(field.line(), CAPTION)
    QTest.keyClick(field.line(), Qt.Key.Key_Return)
    assert "caption is kept" in opened.bar().said()
    (picture, *_) = kept(log, Kind.PICTURE)
    assert picture.content["caption"] == CAPTION
    assert picture.attachment
    assert "The field &lt;before&gt; the flip" in html(log.archive.record(NIGHT.key))
    path, backup = tmp_path / "night.json", tmp_path / "b.sqlite"
    done(qtbot, opened, lambda: opened.carrying.export(ExportForm.JSON, path))
    log.archive.back_up(backup)
    for number, source in enumerate((path, backup)):
        other = NightLog.open(
            tmp_path / f"{number}.sqlite", lambda: LATER_S, lambda _: None, lambda _: None
        )
        other.resume_or_begin_night(LATER_S)
        NightFiles(other.archive, str).take_in(source)
        taken = other.archive.record(NIGHT.key)
        other.close()
        assert exports.write_json(taken) == exports.write_json(log.archive.record(NIGHT.key))
