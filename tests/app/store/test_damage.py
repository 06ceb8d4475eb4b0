"""A damaged log is set aside, what is readable brought over, and the night goes on."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path

import numpy as np
import pytest

from app.store import opening
from app.store.file import hold
from tests.app.store.told import NOW_UTC_S, Told, measure, night_of, readings_in


@pytest.fixture
def told() -> Told:
    return Told()


@pytest.mark.parametrize(
    ("damage", "fewest_saved", "most_saved"),
    [
        ("no database", 0, 0),
        ("first page", 20_000, 20_000),
        ("last pages", 1, 2_000),
        ("one page", 19_000, 19_999),
        ("cut off", 5_000, 15_000),
        ("the header alone left", 0, 0),
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
    elif damage == "cut off":
        del content[len(content) // 2 :]
    elif damage == "the header alone left":
        del content[100:]
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


def test_an_empty_file_is_said_and_begun_anew(tmp_path: Path, told: Told) -> None:
    path = tmp_path / "nights.sqlite3"
    path.touch()
    log = told.open(path)
    log.resume_or_begin_night(NOW_UTC_S)
    measure(log, 3)
    assert log.close()
    assert "was empty (0 bytes)" in told.notices[0]
    assert readings_in(path) == 3
    assert not list(tmp_path.glob("*damaged*"))


def test_a_rescue_that_finds_no_room_is_made_up_for_by_hand(tmp_path: Path, told: Told) -> None:
    path = tmp_path / "nights.sqlite3"
    night_of(path, 20_000)
    path.write_bytes(path.read_bytes()[: 100 * 4096])

    def small(where: Path) -> sqlite3.Connection:
        connection = sqlite3.connect(where, isolation_level=None, check_same_thread=False)
        try:
            connection.execute("PRAGMA max_page_count = 20")
        except sqlite3.DatabaseError:  # of the damaged file
            connection.close()
            raise
        return connection

    log = told.open(path, small)
    assert "there was no room to save" in told.notices[0]
    log._writer.read(lambda connection: connection.execute("PRAGMA max_page_count = 100000"))
    log.resume_or_begin_night(NOW_UTC_S + 1e6)
    aside = tmp_path / "nights-damaged-1.sqlite3"
    before = aside.read_bytes()
    sentence = log.archive.take_in(aside)
    assert log.close()
    assert f"readings: {readings_in(path):,}" in sentence
    assert readings_in(path) > 5_000
    assert f"kept untouched: {aside}" in sentence
    assert aside.read_bytes() == before
    assert log.unwritten == 0


def test_a_rescue_that_breaks_off_lets_go_of_the_file(tmp_path: Path, monkeypatch) -> None:
    path = tmp_path / "nights.sqlite3"
    night_of(path, 20_000)
    path.write_bytes(path.read_bytes()[: 100 * 4096])
    made: list[sqlite3.Connection] = []

    def noted(where: Path) -> sqlite3.Connection:
        made.append(opening.connect(where))
        return made[-1]

    def break_off(*_: object) -> None:
        raise OSError("no more")

    monkeypatch.setattr(opening, "rescue", break_off)
    with pytest.raises(OSError, match="no more"):
        opening.open_log(path, noted)
    with pytest.raises(sqlite3.ProgrammingError, match="closed"):
        made[-1].execute("SELECT 1")
    hold(path).close()  # nobody else holds it


def test_salvaging_twice_says_that_nothing_is_new(tmp_path: Path, told: Told) -> None:
    other = tmp_path / "old disk.dat"
    night_of(other, 30_000)
    content = bytearray(other.read_bytes())
    content[300_000:310_000] = b"\xa5" * 10_000
    other.write_bytes(content)
    path = tmp_path / "nights.sqlite3"
    log = told.open(path)
    log.resume_or_begin_night(NOW_UTC_S + 1e6)
    first, second = log.archive.take_in(other), log.archive.take_in(other)
    assert log.close()
    assert f"nights: 1, legs: 1, readings: {readings_in(path):,}" in first
    assert "nothing was added" in second
    assert bytes(content) == other.read_bytes()
