"""Everything readable of another file of the log, damaged or whole, as rows to take in.

First each table is read through SQLite. Where that breaks off, or the file does not open at all,
its pages are gone through one by one. What is in the receiving file already stays as it is there.
"""

from __future__ import annotations

import sqlite3
from collections import Counter
from collections.abc import Generator, Iterable, Iterator, Sequence
from contextlib import closing
from dataclasses import dataclass, field
from functools import partial
from itertools import islice
from pathlib import Path

from app.storage.pages import FoundRow, rows_in
from app.storage.reading import open_to_read
from app.storage.rows import COLUMNS, take_in
from app.storage.soundness import Row, sound
from app.storage.writes import Write, write_all

_ROWS_AT_ONCE = 20_000
_SOUND_SAMPLES = (
    " WHERE typeof(utc_s) IN ('real', 'integer') AND typeof(north_arcsec) IN ('real', 'integer')"
)
_ABSENT = {"purpose": "'alignment'"}  # what stands for a column of a later version

# Axis states, nights and legs name each other by key: where the named row is lost, one is made, so
# that the readings under it can be reached. A leg cannot be made up; its star would be a guess.
_MAKE_UP = (
    "INSERT OR IGNORE INTO axis_states (id, night, ordinal, began_utc_s) "
    "SELECT axis_state, axis_state, 0, min(began_utc_s) FROM legs "
    "WHERE axis_state NOT IN (SELECT id FROM axis_states) GROUP BY axis_state",
    "INSERT OR IGNORE INTO nights (id, started_utc_s, active_utc_s) "
    "SELECT night, min(began_utc_s), max(began_utc_s) FROM axis_states "
    "WHERE night NOT IN (SELECT id FROM nights) GROUP BY night",
    "INSERT OR IGNORE INTO nights (id, started_utc_s, active_utc_s) "
    "SELECT night, min(utc_s), max(utc_s) FROM entries "
    "WHERE night NOT IN (SELECT id FROM nights) GROUP BY night",
)
_MADE_UP = ("axis_states", "nights", "nights")
_DROP_UNREACHABLE = "DELETE FROM samples WHERE leg NOT IN (SELECT id FROM legs)"  # slow


@dataclass
class Salvage:
    """One file being read. `connection`: an open one to it, else it is opened for reading only.

    `rows`: how many were read, by table; from a damaged file some more than once. `taken`: how many
    of them are new where they went. `is_whole`: everything could be read.
    """

    path: Path
    connection: sqlite3.Connection | None = None
    rows: Counter[str] = field(default_factory=Counter)
    taken: Counter[str] = field(default_factory=Counter)
    is_whole: bool = True

    def writes(self, newer: Sequence[Write] = ()) -> Generator[Write, None, None]:
        """The rows in pieces that fit in memory, and what joins them; in one order, once.

        `newer`: rows known better than the file has them, which replace those. To be closed by
        whoever may stop before the end, or the file stays open.
        """
        yield from self._queried()
        if not self.is_whole:
            yield from self._pieced_together()
        yield from newer
        if not self.is_whole:
            yield Write(_DROP_UNREACHABLE, [()], lambda dropped: self._take("samples", -dropped))
        for statement, table in zip(_MAKE_UP, _MADE_UP, strict=True):
            yield Write(statement, [()], partial(self._take, table))

    def into(self, receiving: sqlite3.Connection, newer: Sequence[Write] = ()) -> None:
        """Puts them all in another file, or none."""
        with closing(self.writes(newer)) as pieces:
            write_all(receiving, pieces)

    def _take(self, table: str, count: int) -> None:
        self.taken[table] += count

    def _queried(self) -> Iterator[Write]:
        for table in COLUMNS:
            try:
                yield from self._table(table)
            except (sqlite3.DatabaseError, OSError, UnicodeDecodeError):
                self.is_whole = False

    def _table(self, table: str) -> Iterator[Write]:
        if self.connection is not None:
            yield from self._read(self.connection, table)
            return
        with closing(open_to_read(self.path)) as connection:
            connection.text_factory = lambda data: data.decode("utf-8", "replace")
            yield from self._read(connection, table)

    def _read(self, connection: sqlite3.Connection, table: str) -> Iterator[Write]:
        there = {row[1] for row in connection.execute(f"PRAGMA table_info({table})")}
        if not there:
            return
        columns = (name if name in there else _ABSENT.get(name, "NULL") for name in COLUMNS[table])
        trusted = table == "samples"  # too many to look at one by one
        found = connection.execute(
            f"SELECT {', '.join(columns)} FROM {table}" + (_SOUND_SAMPLES if trusted else "")
        )
        while rows := found.fetchmany(_ROWS_AT_ONCE):
            yield self._counted(table, rows if trusted else self._sound(table, rows))

    def _sound(self, table: str, rows: Iterable[Row]) -> list[Row]:
        checked = [sound(table, row) for row in rows]
        good = [row for row in checked if row is not None]
        self.is_whole = self.is_whole and len(good) == len(checked)
        return good

    def _pieced_together(self) -> Iterator[Write]:
        """From the pages; rows of other kinds, and of no kind, lie among them."""
        found = _placed(rows_in(self.path))
        while piece := list(islice(found, _ROWS_AT_ONCE)):
            for table in COLUMNS:
                rows = [row for name, row in piece if name == table]
                if rows:
                    yield self._counted(table, rows)

    def _counted(self, table: str, rows: list[Row]) -> Write:
        self.rows[table] += len(rows)
        return Write(take_in(table), rows, partial(self._take, table))


def _placed(found: Iterator[FoundRow]) -> Iterator[tuple[str, Row]]:
    """Rows with the table they must have stood in, by their number of values."""
    for one in found:
        if one.rowid is None:
            table = {6: "samples", 2: "settings"}.get(len(one.values))
            row = one.values
        else:
            kinds = {7: "nights", 4: "axis_states", 10: "legs", 11: "legs", 6: "entries"}
            table = kinds.get(len(one.values))
            row = (one.rowid, *one.values[1:])
        good = None if table is None else sound(table, row)
        if table is not None and good is not None:
            yield table, good
