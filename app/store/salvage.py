"""Everything readable of a damaged or foreign file of the log, each row checked."""

from __future__ import annotations

import json
import math
import sqlite3
import struct
from collections import Counter
from collections.abc import Callable, Generator, Iterable, Iterator, Mapping, Sequence
from contextlib import closing
from dataclasses import dataclass, field, fields
from functools import partial
from itertools import islice
from pathlib import Path
from typing import Any, BinaryIO

from app.store.schema import COLUMNS, Write, take_in, write_all
from core.night.record import LegPurpose
from core.sky.site import Air, Site

# Opening a log of nights only to read it.


def open_to_read(path: Path) -> sqlite3.Connection:
    """Changes nothing in the file, nor beside it when its folder may not be written."""
    address = path.resolve().as_uri()
    connection = sqlite3.connect(
        f"{address}?mode=ro", uri=True, isolation_level=None, check_same_thread=False
    )
    try:
        connection.execute("PRAGMA schema_version")
    except sqlite3.OperationalError:
        connection.close()
        return sqlite3.connect(
            f"{address}?immutable=1", uri=True, isolation_level=None, check_same_thread=False
        )
    except BaseException:
        connection.close()
        raise
    return connection


# Rows out of the pages of a damaged SQLite file, each page read for itself.
#
# After the database file format as SQLite documents it (sqlite.org/fileformat2.html, sections 1.3
# header, 1.6 b-tree pages, 2.1 records, 4.1 write-ahead log). Pages the log holds newer versions of
# are taken from there, up to its last whole transaction.

TABLE_LEAF, INDEX_LEAF, INDEX_INTERIOR = 0x0D, 0x0A, 0x02
_HEADER_BYTES = {TABLE_LEAF: 8, INDEX_LEAF: 8, INDEX_INTERIOR: 12}
_MAGIC = b"SQLite format 3\0"
_USUAL_PAGE_BYTES = 4096
_WAL_HEADER, _FRAME_HEADER = 32, 24
_MOST_COLUMNS = 64
_LONGEST_RECORD = 200_000_000
_INTEGERS = {1: 1, 2: 2, 3: 3, 4: 4, 5: 6, 6: 8}


@dataclass(frozen=True)
class FoundRow:
    """A row in some page. `rowid`: its key in a table with one, None for rows of an index."""

    rowid: int | None
    values: tuple[Any, ...]


@dataclass(frozen=True)
class _Unreadable(Exception):
    """These bytes are no row."""


def rows_in(path: Path) -> Iterator[FoundRow]:
    """Every row found in the file at `path` and its write-ahead log; OSError when unreadable."""
    with path.open("rb") as file:
        pages = _Pages.of(file, path.stat().st_size, path.with_name(path.name + "-wal"))
        for number in range(1, pages.count + 1):
            yield from _rows_of(pages, number)


@dataclass
class _Pages:
    """Pages by number from 1, the newest version of each."""

    file: BinaryIO
    page_bytes: int
    usable_bytes: int
    count: int
    newer: dict[int, bytes] = field(default_factory=dict)

    @classmethod
    def of(cls, file: BinaryIO, size: int, wal: Path) -> _Pages:
        head = file.read(100)
        page_bytes, reserved = _USUAL_PAGE_BYTES, 0
        if head[:16] == _MAGIC:
            told = int.from_bytes(head[16:18], "big")
            told = 65536 if told == 1 else told
            if 512 <= told <= 65536 and told & (told - 1) == 0:
                page_bytes, reserved = told, head[20]
        newer = _frames(wal.read_bytes(), page_bytes) if wal.exists() else {}
        count = max([size // page_bytes, *newer])
        return cls(file, page_bytes, page_bytes - reserved, count, newer)

    def page(self, number: int) -> bytes:
        if number in self.newer:
            return self.newer[number]
        self.file.seek((number - 1) * self.page_bytes)
        return self.file.read(self.page_bytes)


def _frames(wal: bytes, page_bytes: int) -> dict[int, bytes]:
    """The newest committed version of each page in a write-ahead log."""
    salts, committed, open_ones = wal[16:24], dict[int, bytes](), dict[int, bytes]()
    if int.from_bytes(wal[8:12], "big") != page_bytes:
        return {}
    step = _FRAME_HEADER + page_bytes
    for start in range(_WAL_HEADER, len(wal) - step + 1, step):
        number, commit_size = struct.unpack(">II", wal[start : start + 8])
        if wal[start + 8 : start + 16] != salts or not number:
            break
        open_ones[number] = wal[start + _FRAME_HEADER : start + step]
        if commit_size:
            committed |= open_ones
            open_ones = {}
    return committed


def _rows_of(pages: _Pages, number: int) -> Iterator[FoundRow]:
    page = pages.page(number)
    start = 100 if number == 1 else 0
    if len(page) < pages.page_bytes or page[start] not in _HEADER_BYTES:
        return
    kind = page[start]
    cells = int.from_bytes(page[start + 3 : start + 5], "big")
    first = start + _HEADER_BYTES[kind]
    for place in range(first, min(first + 2 * cells, len(page) - 1), 2):
        offset = int.from_bytes(page[place : place + 2], "big")
        try:
            yield _row(pages, page, offset, kind)
        except (_Unreadable, IndexError, struct.error):
            continue


def _row(pages: _Pages, page: bytes, offset: int, kind: int) -> FoundRow:
    rowid = None
    if kind == INDEX_INTERIOR:
        offset += 4  # the page to the left
    size, offset = _varint(page, offset)
    if kind == TABLE_LEAF:
        rowid, offset = _varint(page, offset)
    if not 0 < size <= _LONGEST_RECORD:
        raise _Unreadable
    return FoundRow(rowid, _record(_payload(pages, page, offset, size, kind == TABLE_LEAF)))


def _payload(pages: _Pages, page: bytes, offset: int, size: int, is_table: bool) -> bytes:
    """The record's bytes, from the page and the chain of overflow pages."""
    usable = pages.usable_bytes
    most = usable - 35 if is_table else (usable - 12) * 64 // 255 - 23
    if size <= most:
        return _whole(page[offset : offset + size], size)
    least = (usable - 12) * 32 // 255 - 23
    here = least + (size - least) % (usable - 4)
    here = here if here <= most else least
    parts, left = [_whole(page[offset : offset + here], here)], size - here
    following = int.from_bytes(page[offset + here : offset + here + 4], "big")
    while left > 0:
        if not 1 <= following <= pages.count:
            raise _Unreadable
        overflow = pages.page(following)
        part = overflow[4 : 4 + min(left, usable - 4)]
        parts.append(_whole(part, min(left, usable - 4)))
        left -= len(part)
        following = int.from_bytes(overflow[:4], "big")
    return b"".join(parts)


def _record(data: bytes) -> tuple[Any, ...]:
    header_end, at = _varint(data, 0)
    serials: list[int] = []
    while at < header_end:
        serial, at = _varint(data, at)
        serials.append(serial)
    if at != header_end or not 0 < len(serials) <= _MOST_COLUMNS:
        raise _Unreadable
    values = []
    for serial in serials:
        value, at = _value(data, at, serial)
        values.append(value)
    return tuple(values)


def _value(data: bytes, at: int, serial: int) -> tuple[Any, int]:
    if serial == 0:
        return None, at
    if serial in (8, 9):
        return serial - 8, at
    if serial in _INTEGERS:
        end = at + _INTEGERS[serial]
        return int.from_bytes(_whole(data[at:end], end - at), "big", signed=True), end
    if serial == 7:
        return struct.unpack(">d", data[at : at + 8])[0], at + 8
    if serial < 12:
        raise _Unreadable
    end = at + (serial - 12) // 2
    part = _whole(data[at:end], end - at)
    return (part if serial % 2 == 0 else part.decode("utf-8", "replace")), end


def _whole(part: bytes, size: int) -> bytes:
    if len(part) != size:
        raise _Unreadable
    return part


def _varint(data: bytes, at: int) -> tuple[int, int]:
    """A number of one to nine bytes, the first seven bits of each, and where it ends."""
    value = 0
    for count in range(8):
        byte = data[at + count]
        value = value << 7 | byte & 0x7F
        if byte < 0x80:
            return value, at + count + 1
    return value << 8 | data[at + 8], at + 9


# Whether a row from a damaged or foreign file is one the program could have written.

Row = tuple[Any, ...]


class _Unsound(ValueError):
    """The row is none of ours."""


def sound(table: str, row: Row) -> Row | None:
    """The row with a column for each of the table's, repaired where that loses little, or None.

    A site or air that cannot be read is taken as never said; the rest of the row stays.
    """
    checks = _CHECKS[table]
    if table == "legs" and len(row) == len(checks) - 1:
        row = (*row, LegPurpose.ALIGNMENT.value)  # written before legs had a purpose
    if len(row) != len(checks):
        return None
    try:
        return tuple(check(value) for check, value in zip(checks, row, strict=True))
    except _Unsound:
        return None


def _key(value: Any) -> int:
    if isinstance(value, bool) or not isinstance(value, int) or not 0 <= value < 2**63:
        raise _Unsound
    return value


def _number(value: Any) -> float:
    if isinstance(value, bool) or not isinstance(value, (int, float)) or not math.isfinite(value):
        raise _Unsound
    return float(value)


def _number_or_none(value: Any) -> float | None:
    return None if value is None else _number(value)


def _text(value: Any) -> str:
    if not isinstance(value, str):
        raise _Unsound
    return value


def _text_or_none(value: Any) -> str | None:
    return value if isinstance(value, str) else None


def _json(value: Any) -> str:
    try:
        json.loads(_text(value))
    except ValueError as error:
        raise _Unsound from error
    return _text(value)


def _object(value: Any) -> str:
    if not isinstance(json.loads(_json(value)), dict):
        raise _Unsound
    return _text(value)


def _bytes_or_none(value: Any) -> bytes | None:
    return value if isinstance(value, bytes) else None


def _record_or_none(kind: type[Site] | type[Air]) -> Callable[[Any], str | None]:
    known = {field.name for field in fields(kind)}

    def check(value: Any) -> str | None:
        try:
            given = json.loads(_text(value))
            kind(**{name: one for name, one in given.items() if name in known})
        except (ValueError, TypeError, AttributeError):
            return None
        return _text(value)

    return check


_CHECKS: Mapping[str, tuple[Callable[[Any], Any], ...]] = {
    "nights": (
        *(_key, _number, _number),
        *(_record_or_none(Site), _record_or_none(Air), _text_or_none, _number_or_none),
    ),
    "axis_states": (_key, _key, _key, _number),
    "legs": (
        *(_key, _key, _key, _text, _text, _number, _number),
        *(_number, _number_or_none, _key, _text),
    ),
    "samples": (_key, _key, _number, _number, _number_or_none, _number_or_none),
    "entries": (_key, _key, _text, _number, _object, _bytes_or_none),
    "settings": (_text, _json),
}


# Everything readable of another file of the log, damaged or whole, as rows to take in.
#
# First each table is read through SQLite. Where that breaks off, or the file does not open at all,
# its pages are gone through one by one. What is in the receiving file already stays as it is there.

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
