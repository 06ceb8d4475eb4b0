"""The tables of the log of nights, and the way from one version of them to the next.

Keys are random numbers of 53 bits, chosen by the program, so that rows can be named before the disk
has taken them, and files of two copies of the program can be put together. Within a leg, readings
count up in `position`; `ordinal` is the order of axis states in a night and of legs in a state.
`site` and `air` are JSON of the records of the same names. A leg's `purpose` is alignment or
tracking. `entries` holds everything else of a night: ticks of the checklist, notes, pictures,
results and whatever comes later, a `kind` with JSON, so that new kinds need no new tables.
"""

from __future__ import annotations

import sqlite3

from app.storage.failures import NotOurTables

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
