"""The tables of the log of nights, the way from one version to the next, and its statements."""

from __future__ import annotations

import json
import secrets
import sqlite3
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import astuple, dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from app.store.file import NotOurTables

# Statements on their way to the file.


@dataclass(frozen=True)
class Write:
    """One statement for many rows. It may be repeated, so it must be harmless twice.

    `took` is told, once it is on disk, how many rows that changed.
    """

    statement: str
    rows: Iterable[tuple[Any, ...]]
    took: Callable[[int], None] | None = None


def write_all(connection: sqlite3.Connection, writes: Iterable[Write]) -> None:
    """All of them or none."""
    told: list[tuple[Callable[[int], None], int]] = []
    connection.execute("BEGIN IMMEDIATE")
    try:
        for write in writes:
            changed = connection.executemany(write.statement, write.rows).rowcount
            if write.took is not None:
                told.append((write.took, changed))
        connection.execute("COMMIT")
    except BaseException:
        if connection.in_transaction:
            connection.execute("ROLLBACK")
        raise
    for took, changed in told:
        took(changed)


# The tables of the log of nights, and the way from one version of them to the next.
#
# Keys are random numbers of 53 bits, chosen by the program, so that rows can be named before the
# disk has taken them, and files of two copies of the program can be put together. Within a leg,
# readings count up in `position`; `ordinal` is the order of axis states in a night and of legs in a
# state. `site` and `air` are JSON of the records of the same names. A leg's `purpose` is alignment
# or tracking. `entries` holds everything else of a night: ticks of the checklist, notes, pictures,
# results and whatever comes later, a `kind` with JSON, so that new kinds need no new tables.

MIGRATIONS = (
    """
    CREATE TABLE nights (
        id INTEGER PRIMARY KEY,
        started_utc_s REAL NOT NULL,
        active_utc_s REAL NOT NULL,
        site TEXT,
        air TEXT,
        aim TEXT,
        target_arcmin REAL
    );
    CREATE TABLE axis_states (
        id INTEGER PRIMARY KEY,
        night INTEGER NOT NULL REFERENCES nights (id),
        ordinal INTEGER NOT NULL,
        began_utc_s REAL NOT NULL
    );
    CREATE TABLE legs (
        id INTEGER PRIMARY KEY,
        axis_state INTEGER NOT NULL REFERENCES axis_states (id),
        ordinal INTEGER NOT NULL,
        label TEXT NOT NULL,
        star_name TEXT NOT NULL,
        ra_deg REAL NOT NULL,
        dec_deg REAL NOT NULL,
        began_utc_s REAL NOT NULL,
        ended_utc_s REAL,
        discarded INTEGER NOT NULL DEFAULT 0
    );
    CREATE TABLE samples (
        leg INTEGER NOT NULL REFERENCES legs (id),
        position INTEGER NOT NULL,
        utc_s REAL NOT NULL,
        north_arcsec REAL NOT NULL,
        east_arcsec REAL,
        sigma_arcsec REAL,
        PRIMARY KEY (leg, position)
    ) WITHOUT ROWID;
    CREATE TABLE settings (key TEXT PRIMARY KEY, value TEXT NOT NULL) WITHOUT ROWID;
    CREATE INDEX axis_states_of_night ON axis_states (night, ordinal);
    CREATE INDEX legs_of_axis_state ON legs (axis_state, ordinal);
    """,
    """
    ALTER TABLE legs ADD COLUMN purpose TEXT NOT NULL DEFAULT 'alignment';
    CREATE TABLE entries (
        id INTEGER PRIMARY KEY,
        night INTEGER NOT NULL REFERENCES nights (id),
        kind TEXT NOT NULL,
        utc_s REAL NOT NULL,
        content TEXT NOT NULL,
        attachment BLOB
    );
    CREATE INDEX entries_of_night ON entries (night, utc_s);
    """,
)
VERSION = len(MIGRATIONS)
NO_VERSION = 1000  # from here on a number is damage, not a version

FORGET_EMPTY_NIGHTS = """
    BEGIN IMMEDIATE;
    DELETE FROM nights WHERE id NOT IN (SELECT night FROM entries) AND id NOT IN
        (SELECT night FROM axis_states JOIN legs ON axis_state = axis_states.id);
    DELETE FROM axis_states WHERE night NOT IN (SELECT id FROM nights);
    COMMIT;
"""


class NewerVersionError(Exception):
    """The file was written by a later version of the program."""


def migrate(connection: sqlite3.Connection) -> None:
    """Brings the tables to `VERSION`, each step whole or not at all; leaves newer files alone.

    Raises NewerVersionError, or NotOurTables for what no version ever was.
    """
    (version,) = connection.execute("PRAGMA user_version").fetchone()
    if not 0 <= version < NO_VERSION:
        raise NotOurTables(f"version {version}")
    if version > VERSION:
        raise NewerVersionError
    for step in range(version, VERSION):
        connection.executescript(
            f"BEGIN IMMEDIATE; {MIGRATIONS[step]} PRAGMA user_version = {step + 1}; COMMIT;"
        )


# The rows of the tables, and the statements that put them there.
#
# Every statement puts the whole row, so writing it again changes nothing. Putting replaces what is
# there; taking in, for rows from elsewhere, leaves it.

Floats = NDArray[np.float64]

COLUMNS: Mapping[str, tuple[str, ...]] = {
    "nights": ("id", "started_utc_s", "active_utc_s", "site", "air", "aim", "target_arcmin"),
    "axis_states": ("id", "night", "ordinal", "began_utc_s"),
    "legs": (
        *("id", "axis_state", "ordinal", "label", "star_name", "ra_deg", "dec_deg"),
        *("began_utc_s", "ended_utc_s", "discarded", "purpose"),
    ),
    "samples": ("leg", "position", "utc_s", "north_arcsec", "east_arcsec", "sigma_arcsec"),
    "entries": ("id", "night", "kind", "utc_s", "content", "attachment"),
    "settings": ("key", "value"),
}
_MANY = 16  # from here on arrays take less room than tuples
_KEY_BITS = 53  # so that any reader of JSON can hold a key


def new_key() -> int:
    """A key no other row has, in this file or any other."""
    return secrets.randbits(_KEY_BITS)


def put(table: str) -> str:
    """Puts a row of all columns in its table, in place of the one with its key."""
    return f"INSERT OR REPLACE INTO {_into(table)}"


def take_in(table: str) -> str:
    """Puts a row of all columns in its table unless there is one with its key.

    A picture that was lost from an entry is all that is added to one.
    """
    if table != "entries":
        return f"INSERT OR IGNORE INTO {_into(table)}"
    return (
        f"INSERT INTO {_into(table)} ON CONFLICT (id) DO UPDATE SET attachment = "
        "excluded.attachment WHERE attachment IS NULL AND excluded.attachment IS NOT NULL"
    )


def _into(table: str) -> str:
    columns = COLUMNS[table]
    return f"{table} ({', '.join(columns)}) VALUES ({', '.join('?' * len(columns))})"


@dataclass(frozen=True)
class NightRow:
    """A row of `nights`; `site` and `air` are JSON."""

    night_id: int
    started_utc_s: float
    active_utc_s: float
    site: str | None = None
    air: str | None = None
    aim: str | None = None
    target_arcmin: float | None = None

    def write(self) -> Write:
        """Puts the row in its table."""
        return Write(put("nights"), [astuple(self)])


@dataclass(frozen=True)
class AxisStateRow:
    """A row of `axis_states`."""

    axis_state_id: int
    night_id: int
    ordinal: int
    began_utc_s: float

    def write(self) -> Write:
        """Puts the row in its table."""
        return Write(put("axis_states"), [astuple(self)])


@dataclass(frozen=True)
class LegRow:
    """A row of `legs`."""

    leg_id: int
    axis_state_id: int
    ordinal: int
    label: str
    star_name: str
    ra_deg: float
    dec_deg: float
    began_utc_s: float
    ended_utc_s: float | None = None
    discarded: bool = False
    purpose: str = "alignment"

    def write(self) -> Write:
        """Puts the row in its table."""
        return Write(put("legs"), [astuple(self)])


@dataclass(frozen=True)
class EntryRow:
    """A row of `entries`; `content` is a JSON object."""

    entry_id: int
    night_id: int
    kind: str
    utc_s: float
    content: str
    attachment: bytes | None = None

    def write(self, keeps_time: bool = False) -> Write:
        """Puts the row in its table; without an attachment the one that is there stays.

        `keeps_time`: so does the time.
        """
        changed = ["night", "kind", "content", *([] if keeps_time else ["utc_s"])]
        set_ = ", ".join(f"{name} = excluded.{name}" for name in changed)
        kept = "attachment = ifnull(excluded.attachment, attachment)"
        statement = f"INSERT INTO {_into('entries')} ON CONFLICT (id) DO UPDATE SET {set_}, {kept}"
        return Write(statement, [astuple(self)])


def content_json(content: Mapping[str, Any]) -> str:
    """The text of an entry's content; ValueError or TypeError for what JSON cannot hold."""
    return json.dumps(dict(content), ensure_ascii=False, allow_nan=False)


@dataclass(frozen=True, eq=False)
class _SampleColumns:
    """Rows of `samples` as arrays (n,), turned into tuples only in the writing thread."""

    leg_id: int
    first_position: int
    columns: tuple[Floats, ...]

    def __iter__(self) -> Iterator[tuple[Any, ...]]:
        listed = (column.tolist() for column in self.columns)
        for position, values in enumerate(zip(*listed, strict=True), start=self.first_position):
            yield (self.leg_id, position, *values)


def write_samples(
    leg_id: int,
    first_position: int,
    utc_s: Floats,
    north_arcsec: Floats,
    east_arcsec: Floats | None,
    sigma_arcsec: Floats | None,
    statement: str = put("samples"),
) -> Write:
    """Puts readings (n,) in `samples`; NaN becomes NULL there."""
    absent = np.full(utc_s.size, np.nan)
    given = (utc_s, north_arcsec, east_arcsec, sigma_arcsec)
    columns = tuple(absent if column is None else column.copy() for column in given)
    rows = _SampleColumns(leg_id, first_position, columns)
    return Write(statement, list(rows) if utc_s.size < _MANY else rows)


def delete_sample(leg_id: int, position: int) -> Write:
    """Takes one reading out of `samples`."""
    return Write("DELETE FROM samples WHERE leg = ? AND position = ?", [(leg_id, position)])


def delete_entry(entry_id: int) -> Write:
    """Takes one entry out of `entries`."""
    return Write("DELETE FROM entries WHERE id = ?", [(entry_id,)])


def write_setting(key: str, value: Any) -> Write:
    """Puts a setting, anything JSON can hold, in `settings`."""
    return Write(put("settings"), [(key, json.dumps(value, allow_nan=False))])


def write_setting_over(key: str, value: Any, before: Any) -> Write:
    """Likewise, unless it is no longer what it was `before`; None: unless there is one."""
    known = None if before is None else json.dumps(before, allow_nan=False)
    statement = (
        f"INSERT INTO {_into('settings')} "
        "ON CONFLICT (key) DO UPDATE SET value = excluded.value WHERE value = ?"
    )
    return Write(statement, [(key, json.dumps(value, allow_nan=False), known)])
