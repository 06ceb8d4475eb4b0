"""The file of the log of nights: which it is, who holds it, what goes wrong with it."""

from __future__ import annotations

import os
import sqlite3
from dataclasses import dataclass
from pathlib import Path

# What an error of SQLite or of the disk means.


def primary_code(error: BaseException) -> int | None:
    """SQLite's result code without its extension, None for other errors."""
    code = getattr(error, "sqlite_errorcode", None)
    return None if code is None else int(code) & 0xFF


class NotOurTables(sqlite3.DatabaseError):
    """The tables of a file are not those the program once made."""


class GoneFromPlace(Exception):
    """The file was deleted, moved or replaced while it was open, and cannot be put back yet."""


def is_damage(error: Exception) -> bool:
    """Whether the file itself is broken.

    A broken text, in a row or in SQLite's own complaint about the tables, is told by Python alone
    and bears no code.
    """
    if isinstance(error, (NotOurTables, UnicodeDecodeError)):
        return True
    code = primary_code(error)
    if code is None:
        return isinstance(error, sqlite3.OperationalError) and "decode" in str(error)
    # Too big: of a length that only broken bytes can claim; nothing we write comes near it.
    return code in (sqlite3.SQLITE_CORRUPT, sqlite3.SQLITE_NOTADB, sqlite3.SQLITE_TOOBIG)


def is_nonsense(error: Exception) -> bool:
    """Whether a file that opens does not hold what the program once wrote."""
    return is_damage(error) or isinstance(error, (ValueError, TypeError))


def is_locked(error: Exception) -> bool:
    """Whether somebody else holds the file."""
    return primary_code(error) in (sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED)


# Whether the files of an open log still stand where they were opened.
#
# A file that is deleted, moved or replaced while it is open goes on taking data, on most systems,
# but nobody finds that data again.

Identity = tuple[int, int]


@dataclass(frozen=True)
class FileIdentity:
    """The log at `path` and its journal as they were when it was opened; None: there was none."""

    path: Path
    log: Identity | None
    journal: Identity | None

    @classmethod
    def of(cls, path: Path) -> FileIdentity:
        """As it is now."""
        return cls(path, _identity(path), _identity(journal_of(path)))

    def is_kept(self) -> bool:
        """False when another file stands there, or none; cheap enough for every commit."""
        try:
            return self.has_log() and (self.journal is None or self.has_journal())
        except OSError:  # a drive that does not answer: writing tells of that
            return True

    def has_log(self) -> bool:
        """Whether the file at the path is the one that is open."""
        return self.log is not None and _identity(self.path) == self.log

    def has_journal(self) -> bool:
        """Likewise the journal."""
        return self.journal is not None and _identity(journal_of(self.path)) == self.journal


def journal_of(path: Path) -> Path:
    """Where SQLite keeps what it has not yet put into the file itself."""
    return path.with_name(path.name + "-wal")


def shared_of(path: Path) -> Path:
    """Where SQLite keeps what those who have the file open must agree on."""
    return path.with_name(path.name + "-shm")


def _identity(path: Path) -> Identity | None:
    try:
        told = os.stat(path)
    except (FileNotFoundError, NotADirectoryError):
        return None
    return told.st_dev, told.st_ino


# Which copy of the program writes a log of nights: the one that holds the small file beside it.
#
# The log itself is never locked for others, so that every copy can read it. The hold is SQLite's
# own lock on an empty file: it dies with the process, so none is ever left behind.

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
