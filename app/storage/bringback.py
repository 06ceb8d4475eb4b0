"""A log whose file was deleted, moved or replaced while it was open, written at its path anew.

SQLite still has the old file open, so all of it can be read until then, whatever its name is now.
"""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path

from app.storage.holding import hold
from app.storage.opening import Opened, free_name_beside, set_aside
from app.storage.place import Place, journal_of, shared_of


def bring_back(lost: Opened) -> Path | None:
    """Where another file that had taken the place was put; None when there was none.

    `lost` is closed when all of it is at the path. Raises HeldElsewhere when another copy of the
    program has begun a log there, sqlite3.Error or OSError when nothing can be written; `lost` can
    still be read then, and this may be tried again.
    """
    path = lost.path
    path.parent.mkdir(parents=True, exist_ok=True)
    lost.held.close()  # it may be held by a file that is gone as well
    with closing(hold(path)):
        copy = _copied(lost)
        other = _make_way(lost.place)
        copy.replace(path)
        _forget_journal(path)
        lost.connection.close()
    return other


def _copied(lost: Opened) -> Path:
    """Under a name from which the next start takes it, should the program be killed here."""
    copy = free_name_beside(lost.path)
    try:
        with closing(sqlite3.connect(copy, isolation_level=None)) as receiving:
            lost.connection.backup(receiving)
            receiving.execute("PRAGMA journal_mode = DELETE")  # one file, which can be renamed
    except BaseException:
        copy.unlink(missing_ok=True)
        raise
    return copy


def _make_way(place: Place) -> Path | None:
    """What is not ours is kept, with what belongs to it and not to us."""
    if place.has_log() or not place.path.exists():
        return None
    if place.has_journal():  # SQLite would put our pages into the other file
        _forget_journal(place.path)
    return set_aside(place.path, "other")


def _forget_journal(path: Path) -> None:
    for beside in (journal_of(path), shared_of(path)):
        beside.unlink(missing_ok=True)
