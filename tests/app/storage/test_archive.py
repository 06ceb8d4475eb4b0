"""Browsing, searching, saving and restoring nights; and what a night besides its legs holds."""

from __future__ import annotations

import sqlite3
import threading
from contextlib import closing
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from app.storage.records import UnusableFile
from app.storage.schema import MIGRATIONS, VERSION
from core.night import reportjson
from core.night.reporthtml import html
from core.night.reportnight import Kind, Purpose
from tests.app.storage.program import DAY_S, NOW_UTC_S, PICTURE, Run, keep_a_night
from tests.core.night.recorded import whole_night


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "nights.sqlite3"


def keep_three(path: Path) -> list[int]:
    keys = []
    for number, name in enumerate(("hill", "moor", "hill")):
        run = Run()
        run.now_utc_s += number * DAY_S
        with run.log(path) as log:
            keys.append(keep_a_night(log, run.now_utc_s, name=name))
    return keys


def everything(path: Path) -> list[str]:
    """Every night of a log as the text of its exported file."""
    with Run().log(path) as log:
        nights = [log.archive.record(one.night_id) for one in log.archive.overview()]
    return sorted(reportjson.write(night) for night in nights if night is not None)


def test_entries_come_back_and_can_be_changed(path: Path) -> None:
    with Run().log(path) as log:
        log.resume_or_begin_night(NOW_UTC_S)
        note = log.put_entry(Kind.NOTE, {"text": "clear"})
        picture = log.put_entry(Kind.PICTURE, {"name": "a.png"}, PICTURE, utc_s=NOW_UTC_S - 5.0)
        gone = log.put_entry(Kind.TICK, {"step": "level", "state": "done"})
        log.put_entry(Kind.NOTE, {"text": "cloud – 1"}, entry_id=note)
        log.put_entry(Kind.PICTURE, {"name": "a.png", "caption": "M 42"}, entry_id=picture)
        log.remove_entry(gone)
        with pytest.raises(ValueError):
            log.put_entry(Kind.NOTE, {"text": float("nan")})
    with Run().log(path) as log:
        night = log.resume_or_begin_night(NOW_UTC_S)
        assert log.archive.attachment(picture) == PICTURE
        assert log.archive.attachment(note) is None
        assert log.archive.attachment(gone) is None
    assert [(one.key, one.kind, dict(one.content)) for one in night.entries] == [
        (picture, "picture", {"name": "a.png", "caption": "M 42"}),
        (note, "note", {"text": "cloud – 1"}),
    ]
    assert night.entries[0].attachment is None  # not read until asked for


def test_entries_name_the_axis_state_they_belong_to(path: Path) -> None:
    with Run().log(path) as log:
        night = log.resume_or_begin_night(NOW_UTC_S)
        assert log.axis_state_id == night.axis_states[0].axis_state_id
        assert log.begin_axis_state() == log.axis_state_id != night.axis_states[0].axis_state_id


def test_a_note_can_be_added_to_a_night_that_is_over(path: Path) -> None:
    first, *_ = keep_three(path)
    run = Run()
    run.now_utc_s += 9 * DAY_S
    with run.log(path) as log:
        tonight = log.resume_or_begin_night(run.now_utc_s)
        log.put_entry(Kind.NOTE, {"text": "It was the clutch."}, night_id=first)
        assert log.flush()
        old = log.archive.night(first)
        assert old is not None
        assert old.entries[-1].content == {"text": "It was the clutch."}
        again = log.archive.night(tonight.night_id)
        assert again is not None
        assert again.entries == ()


def test_tracking_runs_stay_out_of_the_alignment(path: Path) -> None:
    with Run().log(path) as log:
        keep_a_night(log, NOW_UTC_S)
    with Run().log(path) as log:
        night = log.resume_or_begin_night(NOW_UTC_S)
    assert [len(state.legs) for state in night.axis_states] == [1, 0]
    (run,) = night.tracking_runs
    assert (run.purpose, run.leg.label, run.ended) == (Purpose.TRACKING, "run 1", True)
    assert run.leg.east_arcsec is not None


def test_the_list_of_nights(path: Path) -> None:
    keys = keep_three(path)
    with Run().log(path) as log:
        nights = log.archive.overview()
    assert [one.night_id for one in nights] == keys[::-1]
    newest = nights[0]
    assert (newest.legs, newest.tracking_runs, newest.entries) == (1, 1, 7)
    assert (newest.equipment, newest.target) == ("small refractor (invented)", "M 42")
    assert newest.site is not None
    assert newest.site.name == "hill"
    assert newest.figures.error_arcmin == 8.0
    assert newest.figures.periodic_error_arcsec == (20.0,)
    assert newest.figures.turns_of_the_bolts == 1
    assert not newest.is_empty


@pytest.mark.parametrize(
    ("text", "hits"),
    [
        ("föhn", [2, 1, 0]),
        ("FÖHN dew", [2, 1, 0]),
        ("moor", [1]),
        ("moor bellatrix", [1]),
        ("moor sirius", []),
        ("m 42 hill", [2, 0]),
        ("", []),
        ("100% _", []),
    ],
)
def test_searching(path: Path, text: str, hits: list[int]) -> None:
    keys = keep_three(path)
    with Run().log(path) as log:
        found = log.archive.search(text)
    assert [keys.index(one.night_id) for one in found] == hits
    assert all(one.texts for one in found)


def test_an_old_leg_can_be_solved_again(path: Path) -> None:
    first, *_ = keep_three(path)
    with Run().log(path) as log:
        night = log.archive.night(first)
        assert log.archive.night(1) is None
        assert log.archive.record(1) is None
    assert night is not None
    (leg,) = (stored.leg for stored in night.axis_states[0].legs)
    np.testing.assert_array_equal(leg.north_arcsec, np.sin(leg.utc_s))


def test_a_night_goes_out_as_json_and_into_another_log_unchanged(path: Path) -> None:
    first, *_ = keep_three(path)
    with Run().log(path) as log:
        record = log.archive.record(first)
    assert record is not None
    assert [entry.attachment for entry in record.of_kind(Kind.PICTURE)] == [PICTURE]
    assert "data:image/png" in html(record)
    text = reportjson.write(record)
    elsewhere = path.with_name("elsewhere.sqlite3")
    with Run().log(elsewhere) as log:
        log.archive.take_in_record(reportjson.read(text.encode()))
        log.archive.take_in_record(reportjson.read(text.encode()))  # twice does no harm
        assert [one.night_id for one in log.archive.overview()] == [first]
    assert everything(elsewhere) == [text]


def test_an_invented_night_with_everything_makes_the_round(path: Path) -> None:
    night = whole_night()
    with Run().log(path) as log:
        log.archive.take_in_record(night)
    entries = tuple(sorted(night.entries, key=lambda one: (one.utc_s, one.key)))
    assert everything(path) == [reportjson.write(replace(night, entries=entries))]


def test_what_is_here_of_a_night_is_not_replaced(path: Path) -> None:
    night = whole_night()
    with Run().log(path) as log:
        log.archive.take_in_record(night)
        log.archive.take_in_record(replace(night, target_arcmin=99.0, entries=()))
        kept = log.archive.record(night.key)
    assert kept is not None
    assert kept.target_arcmin == night.target_arcmin
    assert len(kept.entries) == len(night.entries)


def test_a_backup_restores_everything_into_an_empty_log(path: Path) -> None:
    keep_three(path)
    saved, fresh = path.with_name("saved copy.sqlite3"), path.with_name("fresh.sqlite3")
    run = Run()
    with run.log(path) as log:
        log.put_setting("look", "night")
        assert log.flush()
        assert "3 nights are saved" in log.archive.back_up(saved)
        assert "3 nights are saved" in log.archive.back_up(saved)  # in place of the first
        assert not list(path.parent.glob("*.unfinished"))
    with Run().log(fresh) as log:
        sentence = log.archive.take_in(saved)
        assert "nights: 3, legs: 6, readings: 300" in sentence
    assert everything(fresh) == everything(path)
    with Run().log(fresh) as log:
        assert log.get_setting("look") == "night"
    with Run().log(saved) as log:  # the backup itself is a log as any other
        assert len(log.archive.overview()) == 3


def test_a_backup_leaves_the_night_running(path: Path) -> None:
    with Run().log(path) as log:
        log.resume_or_begin_night(NOW_UTC_S)
        leg = log.add_leg("east 1", "Bellatrix", 81.28, 6.35)
        block = NOW_UTC_S + np.arange(200_000.0)
        log.add_samples(leg, block, np.zeros(block.size))
        assert log.flush(30.0)
        said: list[str] = []
        saved = path.with_name("saved.sqlite3")
        thread = threading.Thread(target=lambda: said.append(log.archive.back_up(saved)))
        thread.start()
        log.add_samples(leg, block[-1:] + 1.0, np.ones(1))
        assert log.flush(2.0)
        thread.join()
    assert "1 nights are saved" in said[0]
    with closing(sqlite3.connect(path)) as connection:
        assert connection.execute("SELECT count(*) FROM samples").fetchone() == (200_001,)


def test_restoring_brings_back_lost_nights_and_keeps_newer_ones(path: Path) -> None:
    keys = keep_three(path)
    saved = path.with_name("saved.sqlite3")
    with Run().log(path) as log:
        log.archive.back_up(saved)
    with closing(sqlite3.connect(path)) as connection:
        connection.execute("DELETE FROM nights WHERE id = ?", (keys[0],))
        connection.execute("DELETE FROM samples")
        connection.commit()
    run = Run()
    run.now_utc_s += 20 * DAY_S
    with run.log(path) as log:
        newer = keep_a_night(log, run.now_utc_s, name="newer")
        assert log.flush()
        log.archive.take_in(saved)
        nights = log.archive.overview()
        assert [one.night_id for one in nights] == [newer, *keys[::-1]]
        again = log.archive.night(keys[0])
    assert again is not None
    assert again.axis_states[0].legs[0].leg.utc_s.size == 50


@pytest.mark.parametrize(
    ("content", "words"),
    [
        (b"", "not a log of nights"),
        (b"leg,utc\n" * 500, "not a log of nights"),
        (b"SQLite format 3\0" + b"\0" * 44 + (VERSION + 1).to_bytes(4, "big"), "newer version"),
        (None, "not a log of nights"),
    ],
)
def test_a_file_that_holds_no_nights_is_refused(
    path: Path, content: bytes | None, words: str
) -> None:
    wrong = path.with_name("wrong")
    if content is not None:
        wrong.write_bytes(content)
    with Run().log(path) as log:
        with pytest.raises(UnusableFile, match=words):
            log.archive.take_in(wrong)
        assert log.archive.overview() == ()
    assert not wrong.exists() or wrong.read_bytes() == content


def test_the_log_in_use_is_not_taken_into_itself(path: Path) -> None:
    with Run().log(path) as log, pytest.raises(UnusableFile, match="in use"):
        log.archive.take_in(path)


def test_a_backup_that_cannot_be_written_is_said(path: Path) -> None:
    keep_three(path)
    with Run().log(path) as log:
        nowhere = path.with_name("no such folder") / "saved.sqlite3"
        with pytest.raises(UnusableFile, match="could not be written"):
            log.archive.back_up(nowhere)


def test_a_file_of_the_first_version_is_brought_up_to_this_one(path: Path) -> None:
    with closing(sqlite3.connect(path)) as connection:
        connection.executescript(MIGRATIONS[0])
        connection.executescript(
            f"""
            INSERT INTO nights VALUES (7, {NOW_UTC_S}, {NOW_UTC_S}, NULL, NULL, NULL, 2.0);
            INSERT INTO axis_states VALUES (8, 7, 0, {NOW_UTC_S});
            INSERT INTO legs VALUES (9, 8, 0, 'east', 'Vega', 279.2, 38.8, {NOW_UTC_S}, NULL, 0);
            INSERT INTO samples VALUES (9, 0, {NOW_UTC_S}, 0.5, NULL, NULL);
            INSERT INTO settings VALUES ('look', '"night"');
            PRAGMA user_version = 1;
            """
        )
    with Run().log(path) as log:
        night = log.resume_or_begin_night(NOW_UTC_S)
        assert night.resumed
        (stored,) = night.axis_states[0].legs
        assert (stored.purpose, stored.leg.north_arcsec.tolist()) == ("alignment", [0.5])
        assert night.entries == ()
        assert log.get_setting("look") == "night"
        log.put_entry(Kind.NOTE, {"text": "after"})
    with closing(sqlite3.connect(path)) as connection:
        assert connection.execute("PRAGMA user_version").fetchone() == (VERSION,)
        assert connection.execute("SELECT count(*) FROM entries").fetchone() == (1,)
