"""Full, read-only, shared, newer and broken: the night goes on and the person is told."""

from __future__ import annotations

import shutil
import sqlite3
import subprocess
from contextlib import closing
from pathlib import Path

import pytest

from app.store.opening import connect
from app.store.schema import VERSION
from tests.app.store.told import NOW_UTC_S, Told, measure, night_of, readings_in


@pytest.fixture
def told() -> Told:
    return Told()


def test_a_full_file_is_said_and_made_up_for(tmp_path: Path, told: Told) -> None:
    connections: list[sqlite3.Connection] = []

    def small(path: Path) -> sqlite3.Connection:
        connection = connect(path)
        connection.execute("PRAGMA max_page_count = 40")
        connections.append(connection)
        return connection

    log = told.open(tmp_path / "nights.sqlite3", small)
    log.resume_or_begin_night(NOW_UTC_S)
    measure(log, 10_000)
    told.wait(lambda sentence: sentence is not None and "is full: free some space" in sentence)
    assert log.unwritten > 0
    measure(log, 3)
    assert not log.flush(0.1)
    log._writer.read(lambda connection: connection.execute("PRAGMA max_page_count = 100000"))
    told.wait(lambda sentence: sentence is None)
    assert log.close()
    assert readings_in(tmp_path / "nights.sqlite3") == 10_003


def test_a_full_disk_is_said_and_made_up_for(tiny_disk: Path, told: Told) -> None:
    ballast = tiny_disk / "ballast"
    log = told.open(tiny_disk / "nights.sqlite3")
    log.resume_or_begin_night(NOW_UTC_S)
    assert log.flush()
    free = shutil.disk_usage(tiny_disk).free
    ballast.write_bytes(b"x" * (free - 8192))
    measure(log, 2_000)
    told.wait(lambda sentence: sentence is not None and str(tiny_disk) in sentence)
    assert "kept in memory" in str(told.troubles[-1])
    ballast.unlink()
    told.wait(lambda sentence: sentence is None)
    assert log.close()
    assert readings_in(tiny_disk / "nights.sqlite3") == 2_000


def test_a_read_only_disk_is_said_and_made_up_for(tiny_disk: Path, told: Told) -> None:
    subprocess.run(["mount", "-o", "remount,ro", str(tiny_disk)], check=True)
    log = told.open(tiny_disk / "nights.sqlite3")
    assert "cannot be written: allow writing" in str(told.troubles[0])
    night = log.resume_or_begin_night(NOW_UTC_S)
    assert not night.resumed
    measure(log, 5)
    subprocess.run(["mount", "-o", "remount,rw", str(tiny_disk)], check=True)
    told.wait(lambda sentence: sentence is None)
    assert log.close()
    assert readings_in(tiny_disk / "nights.sqlite3") == 5


def test_a_folder_that_cannot_be_made_is_said(tmp_path: Path, told: Told) -> None:
    (tmp_path / "file").write_text("in the way")
    log = told.open(tmp_path / "file" / "nights.sqlite3")
    log.resume_or_begin_night(NOW_UTC_S)
    measure(log, 5)
    assert "cannot be made or used" in str(told.troubles[0])
    (tmp_path / "file").unlink()
    told.wait(lambda sentence: sentence is None)
    assert log.close()
    assert readings_in(tmp_path / "file" / "nights.sqlite3") == 5


def test_closing_says_when_something_is_not_on_disk(tmp_path: Path, told: Told) -> None:
    (tmp_path / "file").write_text("in the way")
    log = told.open(tmp_path / "file" / "nights.sqlite3")
    log.resume_or_begin_night(NOW_UTC_S)
    assert not log.close()
    assert log.unwritten == 2


def test_a_file_of_a_newer_version_is_left_alone(tmp_path: Path, told: Told) -> None:
    path = tmp_path / "nights.sqlite3"
    night_of(path, 4)
    with closing(sqlite3.connect(path)) as connection:
        connection.execute(f"PRAGMA user_version = {VERSION + 1}")
    before = path.read_bytes()
    log = told.open(path)
    assert not log.resume_or_begin_night(NOW_UTC_S).resumed
    measure(log, 5)
    assert log.close()
    assert "newer version" in told.notices[0]
    assert path.read_bytes() == before
    assert readings_in(tmp_path / "nights-2.sqlite3") == 5
