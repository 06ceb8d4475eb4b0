"""Rows out of the pages of a damaged SQLite file, each page read for itself.

After the database file format as SQLite documents it (sqlite.org/fileformat2.html, sections 1.3
header, 1.6 b-tree pages, 2.1 records, 4.1 write-ahead log). Pages the log holds newer versions of
are taken from there, up to its last whole transaction.
"""

from __future__ import annotations

import struct
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any, BinaryIO

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
