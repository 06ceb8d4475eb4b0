"""Opening the file of the log of nights, whatever state it is in."""

from __future__ import annotations

import sqlite3
from collections import Counter
from collections.abc import Callable, Iterator, Sequence
from contextlib import closing
from dataclasses import dataclass, replace
from pathlib import Path

from app.store import file, words
from app.store.file import LOCK_WAIT_S, FileIdentity, NotOurTables, hold, journal_of, shared_of
from app.store.salvage import Salvage
from app.store.schema import (
    COLUMNS,
    FORGET_EMPTY_NIGHTS,
    NewerVersionError,
    Write,
    migrate,
    write_all,
)
from core.language import say

MOST_FILES = 9  # numbered beside one another, where newer versions keep theirs

Connect = Callable[[Path], sqlite3.Connection]


@dataclass(frozen=True)
class OpenedLog:
    """An open file and the hold on it. `notices`: sentences on why it is not simply the one asked
    for.
    """

    connection: sqlite3.Connection
    held: sqlite3.Connection
    place: FileIdentity
    notices: tuple[str, ...]

    @property
    def path(self) -> Path:
        """Where it was opened."""
        return self.place.path

    def close(self) -> None:
        """The file first, so that the next copy finds it whole."""
        self.connection.close()
        self.held.close()


def connect(path: Path) -> sqlite3.Connection:
    """A plain connection; threads take turns by the writer's lock."""
    return sqlite3.connect(path, timeout=LOCK_WAIT_S, isolation_level=None, check_same_thread=False)


def open_log(path: Path, connect: Connect = connect) -> OpenedLog:
    """Opens `path`, or a file numbered beside it when that one is beyond this version.

    A damaged file is set aside under another name and what is readable of it brought over. What was
    written into files numbered beside `path`, and nobody holds any more, joins it. The file is held
    until it is closed or the process dies. Raises HeldElsewhere while another copy of the program
    writes it, sqlite3.Error or OSError when nothing can be written.
    """
    path.parent.mkdir(parents=True, exist_ok=True)
    candidates = [path, *(_numbered(path, number) for number in range(2, MOST_FILES + 1))]
    newer: list[Path] = []
    for candidate in candidates:
        held = hold(candidate)
        try:
            connection, notices = _open_or_replace(candidate, connect)
        except NewerVersionError:
            held.close()
            newer.append(candidate)
            continue
        except BaseException:
            held.close()
            raise
        opened = OpenedLog(connection, held, FileIdentity.of(candidate), notices)
        try:
            joined = _join_what_lies_beside(path, connection) if candidate == path else ()
            why = (words.from_newer_version(path, candidate),) if newer else ()
            return replace(opened, notices=(*why, *notices, *joined))
        except BaseException:
            opened.close()
            raise
    raise sqlite3.OperationalError(
        say("all of {count} files are of a newer version", count=len(candidates))
    )


def rescue(
    aside: Path, receiving: sqlite3.Connection, newer: Sequence[Write] = ()
) -> Counter[str] | None:
    """Brings what is readable of a file set aside into another; how many rows, by table.

    The kept file is not changed. `newer`: rows known better than that file has them. None when the
    receiving file could not take it all; then it has only `newer`.
    """
    salvage = Salvage(aside)
    try:
        salvage.into(receiving, newer)
    except (sqlite3.Error, OSError):  # a full disk: the kept file can be taken in later
        write_all(receiving, newer)
        return None
    return salvage.taken


def is_sound(connection: sqlite3.Connection) -> bool:
    """Whether SQLite finds no fault with a whole file; takes seconds for a large one."""
    try:
        (verdict,) = connection.execute("PRAGMA quick_check(1)").fetchone()
    except sqlite3.DatabaseError as error:
        if not file.is_damage(error):
            raise
        return False
    return bool(verdict == "ok")


def set_aside(path: Path, why: str = "damaged") -> Path:
    """Renames a file with its journal, `why` in its name; the new name."""
    number = 1
    while (aside := path.with_name(f"{path.stem}-{why}-{number}{path.suffix}")).exists():
        number += 1
    for beside in (journal_of, shared_of):
        if beside(path).exists():
            beside(path).rename(beside(aside))
    path.rename(aside)
    return aside


def free_name_beside(path: Path) -> Path:
    """A file of that name joins the log at the next start."""
    names = (_numbered(path, number) for number in range(2, MOST_FILES + 1))
    return next((name for name in names if not name.exists()), _numbered(path, MOST_FILES + 1))


def _open_or_replace(path: Path, connect: Connect) -> tuple[sqlite3.Connection, tuple[str, ...]]:
    is_hollow = path.exists() and not path.stat().st_size and not journal_of(path).exists()
    try:
        said = (words.was_hollow(path),) if is_hollow else ()
        return _open(path, connect), said
    except (sqlite3.DatabaseError, UnicodeDecodeError) as error:
        if not file.is_damage(error):
            raise
    aside = set_aside(path)
    connection = _open(path, connect)
    try:
        return connection, (words.set_aside(path, aside, rescue(aside, connection)),)
    except BaseException:
        connection.close()
        raise


def _join_what_lies_beside(path: Path, receiving: sqlite3.Connection) -> Iterator[str]:
    """Files numbered beside `path` that nobody holds any more are emptied into it."""
    for beside in (_numbered(path, number) for number in range(2, MOST_FILES + 1)):
        if beside.exists():
            try:
                joined = _joined(beside, receiving)
            except (sqlite3.Error, NewerVersionError):  # in use, newer, damaged: left alone
                continue
            if joined:
                yield words.joined(path, joined)


def _joined(beside: Path, receiving: sqlite3.Connection) -> Counter[str]:
    """Rows by table. The file stays, empty: another copy may be about to open it."""
    with closing(hold(beside)), closing(_open(beside, connect)) as connection:
        connection.executescript(FORGET_EMPTY_NIGHTS)
        salvage = Salvage(beside, connection)
        salvage.into(receiving)
        if salvage.is_whole:
            write_all(connection, [Write(f"DELETE FROM {table}", [()]) for table in COLUMNS])
        return salvage.taken if salvage.taken["nights"] else Counter()


def _open(path: Path, connect: Connect) -> sqlite3.Connection:
    connection = connect(path)
    try:
        _prepare(connection)
    except BaseException as error:
        connection.close()
        if file.primary_code(error) == sqlite3.SQLITE_ERROR:  # no such table, no such format
            raise NotOurTables(str(error)) from error
        raise
    return connection


def _prepare(connection: sqlite3.Connection) -> None:
    """Brings the tables of a file up to date and sees that each can be asked for."""
    connection.execute("PRAGMA journal_mode = WAL")
    connection.execute("PRAGMA synchronous = FULL")  # also a cut battery loses nothing
    connection.execute("BEGIN IMMEDIATE")
    connection.execute("COMMIT")
    migrate(connection)
    for table, columns in COLUMNS.items():
        connection.execute(f"SELECT {', '.join(columns)} FROM {table} LIMIT 0")


def _numbered(path: Path, number: int) -> Path:
    return path.with_name(f"{path.stem}-{number}{path.suffix}")
