"""Backups: saved, read back, restored; and files that are none."""

from __future__ import annotations

import sqlite3
import threading
from contextlib import closing
from pathlib import Path

import numpy as np
import pytest

from app.store.records import UnusableFile
from app.store.schema import VERSION
from tests.app.store.program import DAY_S, NOW_UTC_S, Run, everything, keep_a_night, keep_three


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "nights.sqlite3"


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
        (b"", "is empty .0 bytes."),
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


def test_the_log_in_use_is_looked_through_when_it_is_chosen(path: Path) -> None:
    with Run().log(path) as log:
        keep_a_night(log, NOW_UTC_S)
        assert log.flush()
        assert "in use; it was looked through and is not damaged" in log.archive.take_in(path)
        assert len(log.archive.overview()) == 1


def ruin_readings_on_disk(path: Path, log) -> None:
    """Some pages of the file in use, as a failing disk would, so that memory does not hide it."""

    def ruin(connection: sqlite3.Connection) -> None:
        connection.execute("PRAGMA wal_checkpoint(TRUNCATE)")
        connection.execute("PRAGMA cache_size = 0")
        with path.open("r+b") as file:
            file.seek(path.stat().st_size - 40 * 4096)
            file.write(b"\xa5" * 4096 * 3)
        connection.execute("PRAGMA shrink_memory")

    log._writer.read(ruin)


@pytest.mark.parametrize("by", ["choosing it", "saving a backup"])
def test_a_log_damaged_in_use_is_salvaged(path: Path, by: str) -> None:
    run = Run()
    saved = path.with_name("saved.sqlite3")
    with run.log(path) as log:
        keep_a_night(log, NOW_UTC_S, count=5000)
        assert log.flush()
        ruin_readings_on_disk(path, log)
        if by == "choosing it":
            assert "was damaged and is salvaged" in log.archive.take_in(path)
        else:
            assert "1 nights are saved" in log.archive.back_up(saved)
        (notice,) = run.notices
        assert "nights: 1, legs: 2, readings: 9," in notice
        assert path.with_name("nights-damaged-1.sqlite3").exists()
        log.put_entry("note", {"text": "after"})
        assert log.flush()
        night = log.archive.record(log.archive.overview()[0].night_id)
    assert {"text": "after"} in [one.content for one in night.entries]
    assert any(one.attachment for one in night.entries)  # tonight's picture is saved as well


def test_a_backup_that_cannot_be_written_is_said(path: Path) -> None:
    keep_three(path)
    with Run().log(path) as log:
        nowhere = path.with_name("no such folder") / "saved.sqlite3"
        with pytest.raises(UnusableFile, match="could not be written"):
            log.archive.back_up(nowhere)
