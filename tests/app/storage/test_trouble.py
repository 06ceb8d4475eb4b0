"""Full, read-only, shared, newer and broken: the night goes on and the person is told."""

from __future__ import annotations

import os
import shutil
import sqlite3
import subprocess
import threading
from collections.abc import Callable, Iterator
from contextlib import closing
from pathlib import Path

import numpy as np
import pytest

from app.storage.nights import NightLog
from app.storage.opening import connect
from app.storage.schema import VERSION

NOW_UTC_S = 1_795_550_400.0


class Told:
    """What the log says, with a way to wait for it."""

    def __init__(self) -> None:
        self.troubles: list[str | None] = []
        self.notices: list[str] = []
        self._changed = threading.Condition()

    def trouble(self, sentence: str | None) -> None:
        with self._changed:
            self.troubles.append(sentence)
            self._changed.notify_all()

    def wait(self, condition: Callable[[str | None], bool]) -> None:
        with self._changed:
            assert self._changed.wait_for(
                lambda: bool(self.troubles) and condition(self.troubles[-1]), 10.0
            ), self.troubles

    def open(self, path: Path, connect=connect) -> NightLog:
        return NightLog.open(
            path, lambda: NOW_UTC_S, self.trouble, self.notices.append, connect, retry_s=0.02
        )


@pytest.fixture
def told() -> Told:
    return Told()


def measure(log: NightLog, count: int) -> None:
    leg = log.add_leg("east", "Bellatrix", 81.28, 6.35)
    log.add_samples(leg, NOW_UTC_S + np.arange(float(count)), np.ones(count))


def readings_in(path: Path) -> int:
    with closing(sqlite3.connect(path)) as connection:
        (count,) = connection.execute("SELECT count(*) FROM samples").fetchone()
    return int(count)


def night_of(path: Path, count: int) -> None:
    log = Told().open(path)
    log.resume_or_begin_night(NOW_UTC_S)
    measure(log, count)
    assert log.close()


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


@pytest.fixture
def tiny_disk(tmp_path: Path) -> Iterator[Path]:
    """A disk of 400 kB, where the system lets us make one."""
    folder = tmp_path / "tiny"
    folder.mkdir()
    mount = shutil.which("mount")
    if mount is None or not hasattr(os, "geteuid") or os.geteuid() != 0:
        pytest.skip("making a small disk needs the rights of the administrator")
    made = subprocess.run(
        [mount, "-t", "tmpfs", "-o", "size=400k", "tmpfs", str(folder)], capture_output=True
    )
    if made.returncode:
        pytest.skip("this system makes no small disk")
    yield folder
    subprocess.run(["umount", str(folder)], check=True)


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


def test_a_second_copy_writes_a_file_of_its_own(tmp_path: Path, told: Told) -> None:
    path = tmp_path / "nights.sqlite3"
    first, second_told, third_told = told.open(path), Told(), Told()
    first.resume_or_begin_night(NOW_UTC_S)
    second = second_told.open(path)
    third = third_told.open(path)
    for log, count in ((second, 2), (third, 3), (first, 1)):
        log.resume_or_begin_night(NOW_UTC_S)
        measure(log, count)
    assert "Another copy" in second_told.notices[0]
    assert "nights-2.sqlite3" in second_told.notices[0]
    assert "nights-3.sqlite3" in third_told.notices[0]
    assert all(log.close() for log in (first, second, third))
    assert told.notices == []
    assert [readings_in(tmp_path / f"nights{n}.sqlite3") for n in ("", "-2", "-3")] == [1, 2, 3]
    assert told.troubles + second_told.troubles + third_told.troubles == []


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


@pytest.mark.parametrize(
    ("damage", "fewest_saved", "most_saved"),
    [
        ("no database", 0, 0),
        ("first page", 20_000, 20_000),
        ("last pages", 1, 2_000),
        ("one page", 19_000, 19_999),
        ("nonsense inside", 20_000, 20_000),
        ("torn text inside", 20_000, 20_000),
        ("torn text in the tables' names", 20_000, 20_000),
        ("a version that never was", 20_000, 20_000),
        ("a format that never was", 20_000, 20_000),
    ],
)
def test_a_damaged_file_is_set_aside_and_what_is_readable_brought_over(
    tmp_path: Path, told: Told, damage: str, fewest_saved: int, most_saved: int
) -> None:
    path = tmp_path / "nights.sqlite3"
    night_of(path, 20_000)
    content = bytearray(path.read_bytes())
    if damage == "no database":
        content = bytearray(b"leg,utc\n" * 1000)
    elif damage == "first page":
        content[100:4096] = b"\xa5" * 3996
    elif damage == "last pages":
        content[20_480:] = b"\xa5" * (len(content) - 20_480)
    elif damage == "one page":
        content[40_960:45_056] = b"\xa5" * 4096
    elif damage == "torn text in the tables' names":
        content = content.replace(b"TABLE axis_states", b"TABLE axis_\xd6tates")
    elif damage == "a version that never was":
        content[60:64] = b"\xff\xff\xff\xfe"
    elif damage == "a format that never was":
        content[44:48] = b"\0\0\0\x09"
    path.write_bytes(content)
    if damage.endswith("inside"):
        site = "'not JSON'" if damage == "nonsense inside" else "CAST(x'7bd67d' AS TEXT)"
        with closing(sqlite3.connect(path)) as connection:
            connection.execute(f"UPDATE nights SET site = {site}")
            connection.commit()
    log = told.open(path)
    night = log.resume_or_begin_night(NOW_UTC_S)
    assert night.resumed == (most_saved > 0)
    measure(log, 5)
    assert log.close()
    assert told.troubles == []
    assert "was damaged. It is kept as" in told.notices[0]
    saved = readings_in(path) - 5
    assert fewest_saved <= saved <= most_saved
    assert (f"readings: {saved:,}" if saved else "nothing in the old one") in told.notices[0]
    kept = tmp_path / "nights-damaged-1.sqlite3"
    if not damage.endswith("inside"):
        assert kept.read_bytes() == bytes(content)
    assert kept.exists()


def test_damage_during_the_night_costs_the_file_but_not_the_night(
    tmp_path: Path, told: Told
) -> None:
    path = tmp_path / "nights.sqlite3"
    log = told.open(path)
    log.resume_or_begin_night(NOW_UTC_S)
    leg = log.add_leg("east", "Bellatrix", 81.28, 6.35)
    log.add_samples(leg, NOW_UTC_S + np.arange(2000.0), np.ones(2000))
    assert log.flush()

    def ruin(connection: sqlite3.Connection) -> None:
        connection.execute("PRAGMA wal_checkpoint(TRUNCATE)")
        connection.execute("PRAGMA cache_size = 0")
        with path.open("r+b") as file:
            file.seek(4096)
            file.write(b"\xa5" * (path.stat().st_size - 4096))
        connection.execute("PRAGMA shrink_memory")

    log._writer.read(ruin)
    log.add_samples(leg, NOW_UTC_S + 2000.0 + np.arange(30.0), np.ones(30))
    log.end_leg(leg)
    assert log.close()
    assert "was damaged" in told.notices[0]
    again = Told().open(path)
    night = again.resume_or_begin_night(NOW_UTC_S)
    assert again.close()
    stored = night.axis_states[0].legs[0]
    assert stored.ended
    np.testing.assert_array_equal(stored.leg.utc_s, NOW_UTC_S + 2000.0 + np.arange(30.0))


def test_a_night_cut_off_at_its_first_row_opens(tmp_path: Path, told: Told) -> None:
    path = tmp_path / "nights.sqlite3"
    night_of(path, 1)
    with closing(sqlite3.connect(path)) as connection:
        connection.executescript("DELETE FROM samples; DELETE FROM legs; DELETE FROM axis_states")
    log = told.open(path)
    night = log.resume_or_begin_night(NOW_UTC_S)
    assert night.resumed
    assert len(night.axis_states) == 1
    measure(log, 2)
    assert log.close()
    assert readings_in(path) == 2
