"""What an error of SQLite or of the disk means."""

from __future__ import annotations

import sqlite3


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
