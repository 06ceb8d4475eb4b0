"""Nothing is written over a log in use, however its path is spelled."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from app.night.archive import ExportForm, NightFiles
from app.store.nights import NightLog
from app.store.records import UnusableFile
from tests.app.store.program import NOW_UTC_S, Run, everything, keep_a_night
from tests.app.store.told import Told

ENDINGS = ("", "-wal", "-shm", "-held")
REFUSED = "belongs to the log of nights that is in use"


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "nights.sqlite3"


def refuses(log: NightLog, path: Path) -> None:
    """A backup and a night; what is at the path stays, and nothing is left beside it."""
    before = path.stat().st_ino if path.exists() else None
    files = NightFiles(log.archive, str)
    (night, *_) = log.archive.overview()
    with pytest.raises(UnusableFile, match=REFUSED):
        files.back_up(path)
    for form in ExportForm:
        with pytest.raises(UnusableFile, match=REFUSED):
            files.export(night.night_id, form, path)
    assert (path.stat().st_ino if path.exists() else None) == before
    assert not list(path.parent.glob("*.unfinished"))


@pytest.mark.parametrize("ending", ENDINGS)
def test_the_files_of_the_log_are_not_written_over(path: Path, ending: str) -> None:
    with Run().log(path) as log:
        keep_a_night(log, NOW_UTC_S)
        assert log.flush()
        refuses(log, path.with_name(path.name + ending))
        keep_a_night(log, NOW_UTC_S + 1e6)
    assert len(everything(path)) == 2


@pytest.mark.parametrize("spelling", ["dots", "symbolic link", "hard link", "folder link"])
def test_another_spelling_is_the_same_file(path: Path, spelling: str) -> None:
    (folder := path.parent / "elsewhere").mkdir()
    with Run().log(path) as log:
        keep_a_night(log, NOW_UTC_S)
        assert log.flush()
        other = folder / "harmless.sqlite3"
        if spelling == "dots":
            other = folder / ".." / path.name
        elif spelling == "hard link":
            os.link(path, other)
        elif spelling == "symbolic link":
            other.symlink_to(path)
        else:
            (folder / "linked").symlink_to(path.parent, target_is_directory=True)
            other = folder / "linked" / path.name
        refuses(log, other)


@pytest.mark.parametrize("ending", ENDINGS)
def test_the_copy_that_only_reads_refuses_as_well(path: Path, ending: str) -> None:
    first, second = Told().open(path), Told().open(path)
    keep_a_night(first, NOW_UTC_S)
    assert first.flush()
    assert second.is_read_only
    refuses(second, path.with_name(path.name + ending))
    assert first.close()
    assert second.close()


@pytest.mark.parametrize("ending", ENDINGS)
def test_the_log_another_copy_holds_is_not_written_over(path: Path, ending: str) -> None:
    theirs = path.with_name("theirs.sqlite3")
    other = Told().open(theirs)
    with Run().log(path) as log:
        keep_a_night(log, NOW_UTC_S)
        assert log.flush()
        refuses(log, theirs.with_name(theirs.name + ending))
        assert other.close()
        assert "1 nights are saved" in log.archive.back_up(theirs)  # nobody holds it any more
        assert not path.with_name("theirs.sqlite3-held-held").exists()


def test_a_link_in_a_circle_is_no_log(path: Path) -> None:
    with Run().log(path) as log:
        keep_a_night(log, NOW_UTC_S)
        assert log.flush()
        circle = path.with_name("circle")
        circle.symlink_to(circle)
        assert "1 nights are saved" in log.archive.back_up(circle)
