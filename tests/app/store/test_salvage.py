"""What can be read of a broken file is saved; what two copies wrote comes together."""

from __future__ import annotations

import random
import shutil
import sqlite3
from collections import Counter
from contextlib import closing
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from app.store.salvage import FoundRow, rows_in, sound
from tests.app.store.program import NOW_UTC_S, PICTURE, Run, everything, keep_a_night


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "nights.sqlite3"


@pytest.fixture
def night(path: Path) -> int:
    with Run().log(path) as log:
        log.put_setting("look", "night")
        return keep_a_night(log, NOW_UTC_S, count=3000)


def by_shape(rows: list[FoundRow]) -> Counter[tuple[bool, int]]:
    return Counter((one.rowid is None, len(one.values)) for one in rows)


@pytest.mark.usefixtures("night")
def test_the_pages_hold_what_sqlite_reads(path: Path) -> None:
    """SQLite itself is the reference here: row by row, every value alike."""
    rows = list(rows_in(path))
    with closing(sqlite3.connect(path)) as connection:
        samples = connection.execute("SELECT * FROM samples").fetchall()
        entries = connection.execute("SELECT * FROM entries").fetchall()
        legs = connection.execute("SELECT * FROM legs").fetchall()
    found = sorted(
        row for one in rows
        if one.rowid is None and (row := sound("samples", one.values)) is not None
    )  # fmt: skip
    assert found == sorted(samples)
    tables = [one for one in rows if one.rowid is not None]
    assert sorted((one.rowid, *one.values[1:]) for one in tables if len(one.values) == 6) == sorted(
        entries
    )
    assert any(PICTURE in one.values for one in tables)  # a chain of overflow pages
    assert sorted(
        (one.rowid, *one.values[1:]) for one in tables if len(one.values) == 11
    ) == sorted(legs)


def test_pages_of_the_write_ahead_log_count_too(tmp_path: Path, path: Path) -> None:
    """A file taken while it was written: nearly all of it is still in the journal."""
    torn = tmp_path / "torn"
    torn.mkdir()
    with Run().log(path) as log:
        keep_a_night(log, NOW_UTC_S)
        assert log.flush()
        for name in (path.name, path.name + "-wal"):
            shutil.copy(path.with_name(name), torn / name)
    copy = torn / path.name
    assert (torn / (path.name + "-wal")).stat().st_size > copy.stat().st_size
    shapes = by_shape(list(rows_in(copy)))
    assert shapes[(True, 6)] == 100
    assert shapes[(False, 11)] == 2
    copy.write_bytes(b"\xa5" * copy.stat().st_size)
    with Run().log(tmp_path / "new.sqlite3") as log:
        log.archive.take_in(copy)
    assert everything(tmp_path / "new.sqlite3") == everything(path)


@pytest.mark.usefixtures("night")
@pytest.mark.parametrize("lost", range(2, 13))
def test_whichever_page_is_lost_the_rest_is_saved(path: Path, lost: int) -> None:
    with closing(sqlite3.connect(path)) as connection:
        (size,) = connection.execute("PRAGMA page_size").fetchone()
    content = bytearray(path.read_bytes())
    content[(lost - 1) * size : lost * size] = bytes(size)
    path.write_bytes(content)
    run = Run()
    with run.log(path) as log:
        log.resume_or_begin_night(NOW_UTC_S)
        nights = log.archive.overview()
        found = [log.archive.night(one.night_id) for one in nights]
    saved = sum(
        leg.leg.utc_s.size
        for one in found if one is not None
        for leg in (*(leg for state in one.axis_states for leg in state.legs), *one.tracking_runs)
    )  # fmt: skip
    legs_are_lost = bool(run.notices) and "legs: 0" in run.notices[0]
    assert saved > 5700 or legs_are_lost, (lost, saved, run.notices)
    kept = path.with_name("nights-damaged-1.sqlite3")
    assert kept.exists() == bool(run.notices)


@given(st.integers(0, 2**32), st.integers(1, 60))
@settings(
    max_examples=25, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture]
)
def test_any_damage_leaves_a_log_that_works(
    tmp_path: Path, path: Path, seed: int, count: int
) -> None:
    whole = tmp_path / "whole.sqlite3"
    if not whole.exists():
        with Run().log(whole) as log:
            keep_a_night(log, NOW_UTC_S, count=400)
    chance = random.Random(seed)
    content = bytearray(whole.read_bytes())
    for _ in range(count):
        start = chance.randrange(len(content))
        content[start : start + chance.choice([1, 8, 300])] = chance.randbytes(
            min(chance.choice([1, 8, 300]), len(content) - start)
        )
    for old in tmp_path.glob("nights*"):
        old.unlink()
    path.write_bytes(content)
    run = Run()
    with run.log(path) as log:
        log.resume_or_begin_night(NOW_UTC_S)
        log.archive.overview()
        keep_a_night(log, NOW_UTC_S + 1e6, name="after")
        assert log.flush(10.0)
        assert "after" in {one.site.name for one in log.archive.overview() if one.site is not None}


def test_what_lies_numbered_beside_the_log_joins_it(path: Path) -> None:
    """Files of copies that wrote each its own, as earlier versions did."""
    with Run().log(path.with_name("nights-2.sqlite3")) as other:
        added = keep_a_night(other, NOW_UTC_S, name="second")
    run = Run()
    with run.log(path) as log:
        begun = keep_a_night(log, NOW_UTC_S + 1e6, name="first")
        assert log.flush()
        assert {night.night_id for night in log.archive.overview()} == {begun, added}
        assert "has joined" in run.notices[0]
        assert "nights: 1, legs: 2, readings: 100" in run.notices[0]
    again = Run()
    with again.log(path) as log:
        assert len(log.archive.overview()) == 2
    assert again.notices == []


@pytest.mark.parametrize(
    ("table", "row"),
    [
        ("samples", (1, 0, None, 1.0, None, None)),
        ("samples", (1, 0, float("inf"), 1.0, None, None)),
        ("samples", (1, "x", 1.0, 1.0, None, None)),
        ("nights", (1, 2.0)),
        ("entries", (1, 2, "note", 3.0, "[]", None)),
        ("entries", (1, 2, "note", 3.0, "{", None)),
        ("settings", ("look", "night")),
        ("legs", (1, 2, 0, "a", "b", 1.0, "x", 3.0, None, 0, "alignment")),
    ],
)
def test_rows_nobody_wrote_are_left_out(table: str, row: tuple) -> None:
    assert sound(table, row) is None


def test_a_broken_site_costs_the_site_alone() -> None:
    row = (1, 2.0, 3, '{"latitude_deg": 1}', "[]", "TRUE_POLE", 1.5)
    assert sound("nights", row) == (1, 2.0, 3.0, None, None, "TRUE_POLE", 1.5)
