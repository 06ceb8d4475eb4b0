"""Which copy of the program writes a log of nights: the one that holds the small file beside it.

The log itself is never locked for others, so that every copy can read it. The hold is SQLite's own
lock on an empty file: it dies with the process, so none is ever left behind.
"""

from __future__ import annotations

import sqlite3
from pathlib import Path

from app.storage.failures import is_damage, is_locked

LOCK_WAIT_S = 0.25  # a backup or virus scanner may hold a file for a moment
ENDING = "-held"


class HeldElsewhere(sqlite3.OperationalError):
    """Another copy of the program writes this log."""


def hold(path: Path) -> sqlite3.Connection:
    """Held until the connection closes. Raises HeldElsewhere, or what the disk has to say."""
    beside = path.with_name(path.name + ENDING)
    try:
        return _locked(beside)
    except sqlite3.DatabaseError as error:
        if not is_damage(error):
            raise
    beside.unlink()  # nothing is ever kept in it
    return _locked(beside)


def is_held(path: Path) -> bool:
    """Whether some copy of the program holds it; leaves nothing beside what is no log."""
    beside = path.with_name(path.name + ENDING)
    if not beside.exists():
        return False
    try:
        _locked(beside).close()
    except HeldElsewhere:
        return True
    except sqlite3.Error:  # no file of ours, or none that can be asked
        return False
    return False


def _locked(path: Path) -> sqlite3.Connection:
    connection = sqlite3.connect(
        path, timeout=LOCK_WAIT_S, isolation_level=None, check_same_thread=False
    )
    try:
        connection.execute("BEGIN EXCLUSIVE")
    except sqlite3.Error as error:
        connection.close()
        if is_locked(error):
            raise HeldElsewhere("another copy of the program writes the log") from error
        raise
    return connection
