"""Browsing, searching, saving and restoring nights; and what a night besides its legs holds."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from app.store.schema import MIGRATIONS, VERSION
from core.night import exports
from core.night.record import Kind, LegPurpose
from core.night.report import html
from tests.app.store.program import (
    DAY_S,
    NOW_UTC_S,
    PICTURE,
    Run,
    everything,
    keep_a_night,
    keep_three,
)
from tests.core.night.recorded import whole_night


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "nights.sqlite3"


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
    assert (run.purpose, run.leg.label, run.ended) == (LegPurpose.TRACKING, "run 1", True)
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
    text = exports.write_json(record)
    elsewhere = path.with_name("elsewhere.sqlite3")
    with Run().log(elsewhere) as log:
        log.archive.take_in_record(exports.read_json(text.encode()))
        log.archive.take_in_record(exports.read_json(text.encode()))  # twice does no harm
        assert [one.night_id for one in log.archive.overview()] == [first]
    assert everything(elsewhere) == [text]


def test_an_invented_night_with_everything_makes_the_round(path: Path) -> None:
    night = whole_night()
    with Run().log(path) as log:
        log.archive.take_in_record(night)
    entries = tuple(sorted(night.entries, key=lambda one: (one.utc_s, one.key)))
    assert everything(path) == [exports.write_json(replace(night, entries=entries))]


def test_what_is_here_of_a_night_is_not_replaced(path: Path) -> None:
    night = whole_night()
    with Run().log(path) as log:
        log.archive.take_in_record(night)
        log.archive.take_in_record(replace(night, target_arcmin=99.0, entries=()))
        kept = log.archive.record(night.key)
    assert kept is not None
    assert kept.target_arcmin == night.target_arcmin
    assert len(kept.entries) == len(night.entries)


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
