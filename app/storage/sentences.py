"""What the person reads when the log of nights is in trouble."""

from __future__ import annotations

import sqlite3
from pathlib import Path

KEPT = (
    "What you measure is kept in memory and writing is tried again every few seconds; "
    "export it as a drift log before you close the program."
)


def primary_code(error: Exception) -> int | None:
    """SQLite's result code without its extension, None for other errors."""
    code = getattr(error, "sqlite_errorcode", None)
    return None if code is None else int(code) & 0xFF


def is_damage(error: Exception) -> bool:
    """Whether the file itself is broken."""
    return primary_code(error) in (sqlite3.SQLITE_CORRUPT, sqlite3.SQLITE_NOTADB)


def is_nonsense(error: Exception) -> bool:
    """Whether a file that opens does not hold what the program once wrote."""
    return is_damage(error) or isinstance(error, (ValueError, TypeError))


def is_locked(error: Exception) -> bool:
    """Whether somebody else holds the file."""
    return primary_code(error) in (sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED)


def cannot_write(path: Path, error: Exception) -> str:
    """Why nothing goes to disk, and what to do."""
    return f"{_cause(path, error)} {KEPT}"


def _cause(path: Path, error: Exception) -> str:
    code = primary_code(error)
    if code == sqlite3.SQLITE_FULL:
        return f"The disk with {path.parent} is full: free some space on it."
    if is_locked(error):
        return f"The log of nights {path} is held by another program: close that program."
    if is_damage(error):
        return f"The log of nights {path} is damaged and cannot be set aside: move it elsewhere."
    if code == sqlite3.SQLITE_IOERR:
        return f"The drive with {path.parent} does not take data: check that it is still there."
    if code in (sqlite3.SQLITE_READONLY, sqlite3.SQLITE_CANTOPEN, sqlite3.SQLITE_PERM):
        return f"The log of nights {path} cannot be written: allow writing in {path.parent}."
    if isinstance(error, OSError):
        return f"The folder {path.parent} cannot be made or used ({error.strerror or error})."
    return f"The log of nights {path} cannot be written ({error})."


def held_by_another_copy(path: Path, instead: Path) -> str:
    """A second copy of the program is running."""
    return (
        f"Another copy of this program is running and writes the log of nights {path.name}. "
        f"What this copy measures goes into {instead} and is not shown by the other."
    )


def from_newer_version(path: Path, instead: Path) -> str:
    """The file is beyond this program."""
    return (
        f"The log of nights {path.name} was written by a newer version of this program and is left "
        f"untouched; tonight goes into {instead}. Update the program to see the earlier nights."
    )


def set_aside(path: Path, aside: Path) -> str:
    """A broken file was put away."""
    return (
        f"The log of nights {path.name} was damaged. It is kept as {aside} and a new one was "
        "begun; what was recorded before is only in the kept one."
    )
