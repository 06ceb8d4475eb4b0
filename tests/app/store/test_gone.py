"""The log is deleted, moved or replaced while the program runs: all of it comes back, in words."""

from __future__ import annotations

import os
import shutil
import sqlite3
import subprocess
import sys
import time
from collections.abc import Callable
from contextlib import closing
from pathlib import Path

import numpy as np
import pytest

from app.store import writer
from app.store.nights import NightLog
from core.night.record import Kind
from tests.app.store.program import DAY_S, Run, everything, keep_a_night
from tests.app.store.told import NOW_UTC_S, Told, measure, night_of, readings_in

ROOT = Path(__file__).parents[3]
pytestmark = pytest.mark.skipif(os.name == "nt", reason="an open file cannot be deleted there")


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "nights.sqlite3"


@pytest.fixture
def told() -> Told:
    return Told()


def delete_all(path: Path) -> None:
    for one in path.parent.glob(path.name + "*"):
        one.unlink()


def delete_log(path: Path) -> None:
    path.unlink()


def delete_journal(path: Path) -> None:
    path.with_name(path.name + "-wal").unlink()


def move(path: Path) -> None:
    path.rename(path.with_name("moved.dat"))


def move_folder(path: Path) -> None:
    path.parent.rename(path.parent.with_name("moved folder"))


def replace_by_text(path: Path) -> None:
    (fresh := path.with_name("fresh")).write_bytes(b"leg,utc\n" * 1000)
    fresh.replace(path)


def replace_by_log(path: Path) -> None:
    night_of(fresh := path.with_name("fresh"), 7)
    fresh.replace(path)


WAYS = (delete_all, delete_log, delete_journal, move, move_folder, replace_by_text, replace_by_log)


@pytest.mark.parametrize("lose", WAYS)
def test_every_night_is_at_its_place_again(
    path: Path, told: Told, lose: Callable[[Path], None]
) -> None:
    (path := path.parent / "kept here" / path.name).parent.mkdir()
    earlier = Run()
    earlier.now_utc_s -= 9.0 * DAY_S
    with earlier.log(path) as log:
        keep_a_night(log, earlier.now_utc_s)
    log = told.open(path)
    log.put_setting("look", "night")
    keep_a_night(log, NOW_UTC_S)
    leg = log.add_leg("west", "Vega", 279.2, 38.8)
    log.add_samples(leg, NOW_UTC_S + np.arange(30.0), np.ones(30))
    assert log.flush()
    lose(path)
    log.add_samples(leg, NOW_UTC_S + 30.0 + np.arange(5.0), np.ones(5))
    assert log.flush()
    assert readings_in(path) == 2 * 100 + 35  # while it runs: a kill would lose nothing
    log.end_leg(leg)
    assert log.close()
    assert told.troubles == []
    (notice,) = told.notices
    assert str(path) in notice
    assert ("Another file was put in the place" in notice) == ("replace" in lose.__name__)
    assert len(everything(path)) == 2
    again = Told().open(path)
    (watched,) = again.resume_or_begin_night(NOW_UTC_S).axis_states[1].legs
    assert watched.leg.utc_s.size == 35
    assert watched.ended
    assert again.get_setting("look") == "night"
    assert again.close()
    assert not list(path.parent.glob("nights-[0-9]*"))


@pytest.mark.parametrize(("lose", "readings"), [(replace_by_text, None), (replace_by_log, 7)])
def test_what_took_the_place_is_kept_as_it_is(
    path: Path, told: Told, lose: Callable[[Path], None], readings: int | None
) -> None:
    log = told.open(path)
    log.resume_or_begin_night(NOW_UTC_S)
    measure(log, 3)
    assert log.flush()
    lose(path)
    before = path.read_bytes()
    assert log.close()
    other = path.with_name("nights-other-1.sqlite3")
    assert other.read_bytes() == before
    assert str(other) in told.notices[0]
    if readings is not None:
        assert readings_in(other) == readings


def test_it_is_seen_while_nothing_is_measured(path: Path, told: Told) -> None:
    log = told.open(path)
    log.resume_or_begin_night(NOW_UTC_S)
    measure(log, 3)
    assert log.flush()
    delete_all(path)
    end = time.monotonic() + 5.0 * writer.LOOK_S
    while not told.notices and time.monotonic() < end:
        time.sleep(0.02)
    assert "was deleted or moved" in told.notices[0]
    assert readings_in(path) == 3
    assert log.close()


def test_closing_at_once_brings_it_back(path: Path, told: Told) -> None:
    log = told.open(path)
    log.resume_or_begin_night(NOW_UTC_S)
    measure(log, 3)
    assert log.flush()
    delete_all(path)
    assert log.close()
    assert readings_in(path) == 3


def test_while_it_cannot_be_put_back_nothing_counts_as_kept(path: Path, told: Told) -> None:
    folder = path.parent / "stick"
    log = told.open(folder / path.name)
    log.resume_or_begin_night(NOW_UTC_S)
    measure(log, 3)
    assert log.flush()
    for one in folder.iterdir():
        one.unlink()
    folder.rmdir()
    folder.write_text("in the way")
    assert not log.flush(0.3)
    told.wait(lambda sentence: sentence is not None and "Do not close it" in sentence)
    assert "cannot be made or used" in str(told.troubles[-1])
    assert log.archive.overview()  # what was kept can still be looked at
    measure(log, 4)
    assert not log.flush(0.1)
    folder.unlink()
    told.wait(lambda sentence: sentence is None)
    assert log.close()
    assert readings_in(folder / path.name) == 7


@pytest.mark.parametrize("lose", [delete_all, replace_by_log])
def test_a_log_behind_a_link_comes_back_where_the_link_points(
    path: Path, told: Told, lose: Callable[[Path], None]
) -> None:
    (link := path.parent / "elsewhere" / "log.sqlite3").parent.mkdir()
    link.symlink_to(path)
    log, second = told.open(link), Told().open(path)
    assert second.is_read_only
    assert second.close()
    log.resume_or_begin_night(NOW_UTC_S)
    measure(log, 3)
    assert log.flush()
    lose(path)
    measure(log, 4)
    assert log.close()
    assert link.is_symlink()
    assert readings_in(path) == 7
    if lose is replace_by_log:
        assert readings_in(path.with_name("nights-other-1.sqlite3")) == 7


def test_a_full_disk_is_waited_for(tiny_disk: Path, told: Told) -> None:
    path, ballast = tiny_disk / "nights.sqlite3", tiny_disk / "ballast"
    log = told.open(path)
    log.resume_or_begin_night(NOW_UTC_S)
    measure(log, 300)
    assert log.flush()
    ballast.write_bytes(b"x" * (shutil.disk_usage(tiny_disk).free - 16_384))
    delete_all(path)
    told.wait(lambda sentence: sentence is not None and "is full: free some space" in sentence)
    assert "was deleted, moved or replaced" in str(told.troubles[-1])
    assert not log.flush(0.1)
    ballast.unlink()
    told.wait(lambda sentence: sentence is None)
    assert log.close()
    assert readings_in(path) == 300
    assert not list(tiny_disk.glob("nights-*"))


def test_closing_says_that_it_is_gone(path: Path, told: Told) -> None:
    folder = path.parent / "stick"
    log = told.open(folder / path.name)
    log.resume_or_begin_night(NOW_UTC_S)
    assert log.flush()
    folder.rename(path.parent / "elsewhere")
    folder.write_text("in the way")
    assert not log.close()
    assert log.unwritten == 0


KILLED = """
import os, sys
from pathlib import Path
from app.store import writer
from tests.app.store.told import NOW_UTC_S, Told, measure
path = Path(sys.argv[1])
log = Told().open(path)
log.resume_or_begin_night(NOW_UTC_S)
measure(log, 40)
log.flush(10.0)
setattr(writer, sys.argv[2], lambda *_: os._exit(9))
for one in path.parent.glob(path.name + "*"):
    one.unlink()
log.flush(10.0)
"""


@pytest.mark.parametrize("step", ["_make_way", "_forget_journal"])
def test_a_kill_on_the_way_loses_nothing(path: Path, step: str) -> None:
    assert hasattr(writer, step)
    run = [sys.executable, "-c", KILLED, str(path), step]
    done = subprocess.run(run, cwd=ROOT, env=os.environ | {"PYTHONPATH": str(ROOT)}, timeout=60)
    assert done.returncode == 9
    log = Told().open(path)
    (watched,) = log.resume_or_begin_night(NOW_UTC_S).axis_states[0].legs
    assert watched.leg.utc_s.size == 40
    assert log.close()


def test_a_copy_that_began_a_log_there_is_waited_for(path: Path, told: Told) -> None:
    log = told.open(path)
    log.resume_or_begin_night(NOW_UTC_S)
    measure(log, 3)
    assert log.flush()
    with log._writer._database_lock:  # or the first would be back before the other begins
        delete_all(path)
        other = Told().open(path)
    other.resume_or_begin_night(NOW_UTC_S)
    measure(other, 11)
    assert other.flush()
    measure(log, 4)
    told.wait(lambda sentence: sentence is not None and "Another copy" in sentence)
    assert not log.flush(0.1)
    assert other.close()
    told.wait(lambda sentence: sentence is None)
    assert log.close()
    assert readings_in(path) == 7
    assert readings_in(path.with_name("nights-other-1.sqlite3")) == 11


def test_the_copy_that_reads_follows(path: Path, told: Told) -> None:
    first, second = told.open(path), Told().open(path)
    first.resume_or_begin_night(NOW_UTC_S)
    assert first.flush()
    (seen,) = second.archive.overview()
    assert not seen.entries
    delete_log(path)
    first.put_entry(Kind.NOTE, {"text": "dew"})
    assert first.flush()
    (seen,) = second.archive.overview()
    assert seen.entries == 1
    for one in (first, second):
        assert one.close()


def test_a_log_that_stays_costs_a_look_and_no_more(path: Path, told: Told) -> None:
    log: NightLog = told.open(path)
    log.resume_or_begin_night(NOW_UTC_S)
    before = path.stat().st_ino
    for _ in range(20):
        measure(log, 2)
        assert log.flush()
    with closing(sqlite3.connect(path)) as another:  # a stranger who looks in and goes
        assert another.execute("SELECT count(*) FROM samples").fetchone() == (40,)
    measure(log, 2)
    assert log.close()
    assert told.notices == []
    assert path.stat().st_ino == before
