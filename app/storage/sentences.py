"""What the person reads when the log of nights is in trouble."""

from __future__ import annotations

import sqlite3
from collections import Counter
from pathlib import Path

KEPT = (
    "What you measure is kept in memory and writing is tried again every few seconds; "
    "export it as a drift log before you close the program."
)


def primary_code(error: BaseException) -> int | None:
    """SQLite's result code without its extension, None for other errors."""
    code = getattr(error, "sqlite_errorcode", None)
    return None if code is None else int(code) & 0xFF


class NotOurTables(sqlite3.DatabaseError):
    """The tables of a file are not those the program once made."""


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
    return code in (sqlite3.SQLITE_CORRUPT, sqlite3.SQLITE_NOTADB)


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
        f"What this copy measures goes into {instead} and joins the other nights when the program "
        "is next opened alone; earlier nights are shown by the other copy."
    )


def joined(path: Path, rows: Counter[str]) -> str:
    """What another copy measured is now with the rest."""
    return f"What another copy of the program recorded has joined {path.name}: {_counted(rows)}."


def from_newer_version(path: Path, instead: Path) -> str:
    """The file is beyond this program."""
    return (
        f"The log of nights {path.name} was written by a newer version of this program and is left "
        f"untouched; tonight goes into {instead}. Update the program to see the earlier nights."
    )


def was_hollow(path: Path) -> str:
    """A file with nothing in it stood where the log should be."""
    return (
        f"The log of nights {path} was empty (0 bytes) and was begun anew. If nights should be in "
        "it, restore a backup on the Log page."
    )


def set_aside(path: Path, aside: Path, rows: Counter[str] | None) -> str:
    """A broken file was put away, and these of its rows brought over; None: no room for them."""
    start = (
        f"The log of nights {path.name} was damaged. It is kept as {aside} and a new one was begun"
    )
    if rows is None:
        return (
            f"{start}, but there was no room to save what can be read of the old one: free some "
            "space on the disk, then salvage it on the Log page, part “Keep safe”."
        )
    if not rows.total():
        return f"{start}, and nothing in the old one could be read."
    return f"{start} with all that could be read of it: {_counted(rows)}."


def _counted(rows: Counter[str]) -> str:
    return f"nights: {rows['nights']}, legs: {rows['legs']}, readings: {rows['samples']:,}"


def no_log(path: Path) -> str:
    """A file to be taken in holds nothing of ours."""
    return (
        f"{path.name} is not a log of nights, or nothing in it can be read: choose a backup or a "
        "log made by this program. Nothing was changed."
    )


def hollow_file(path: Path) -> str:
    """A file to be taken in has no bytes."""
    return f"{path.name} is empty (0 bytes): there is nothing in it to take. Choose another file."


def is_whole(path: Path) -> str:
    """The log in use was looked through."""
    return f"{path.name} is the log of nights in use; it was looked through and is not damaged."


def salvaged_in_use(path: Path) -> str:
    """The log in use was found damaged."""
    return f"{path.name} was damaged and is salvaged; what was saved is said above."


def newer_file(path: Path) -> str:
    """A file to be taken in is beyond this program."""
    return (
        f"{path.name} was written by a newer version of this program: update the program, then "
        "take it in. Nothing was changed."
    )


def took_in(path: Path, taken: Counter[str], is_whole: bool) -> str:
    """What of a file is new in the log."""
    if taken.total():
        said = f"Saved into the log: {_counted(taken)}."
    else:
        said = "All that can be read of the file is in the log already; nothing was added."
    kept = f"The old file is kept untouched: {path}."
    return f"{said} {kept}" if is_whole else f"{said} Some of the file cannot be read. {kept}"


def backed_up(path: Path, nights: int) -> str:
    """A backup was written and read back."""
    return f"{nights} nights are saved in {path} and were read back without a fault."


def cannot_back_up(path: Path, error: Exception) -> str:
    """No backup was made."""
    reason = getattr(error, "strerror", None) or error
    return (
        f"The backup {path} could not be written ({reason}). Choose a place with enough room that "
        "may be written; the log of nights is not affected."
    )
