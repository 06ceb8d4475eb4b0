"""A log of five hundred nights with five million readings, made within a minute."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path

from app.store.schema import MIGRATIONS, VERSION

NIGHTS, LEGS, READINGS = 500, 4, 2500
BEGUN_UTC_S = 1_700_000_000.0
NOW_UTC_S = BEGUN_UTC_S + (NIGHTS + 10) * 86400.0
BIG_LEG_READINGS = 200_000  # of one leg, where a night is to be large

_FILL = f"""
    WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < {NIGHTS})
    INSERT INTO nights SELECT i, {BEGUN_UTC_S} + i * 86400, {BEGUN_UTC_S} + i * 86400 + 20000,
        '{{"latitude_deg": 48.1, "longitude_deg": 11.6, "name": "hill (invented)"}}',
        NULL, 'TRUE_POLE', 1.0 FROM n;
    INSERT INTO axis_states SELECT id * 10 + k, id, k, started_utc_s + k * 3600
        FROM nights, (SELECT 0 AS k UNION SELECT 1);
    INSERT INTO legs SELECT s.id * 10 + k, s.id, k, 'leg ' || k, 'Bellatrix', 81.28, 6.35,
        s.began_utc_s + k * 900, s.began_utc_s + k * 900 + 800, 0, 'alignment'
        FROM axis_states s, (SELECT 0 AS k UNION SELECT 1);
    WITH RECURSIVE p(i) AS (SELECT 0 UNION ALL SELECT i + 1 FROM p WHERE i < {READINGS} - 1)
    INSERT INTO samples SELECT l.id, i, l.began_utc_s + i * 0.3, i * 0.001 + 0.1234, NULL, NULL
        FROM legs l, p;
    WITH RECURSIVE e(i) AS (SELECT 0 UNION ALL SELECT i + 1 FROM e WHERE i < 39)
    INSERT INTO entries SELECT n.id * 100 + i, n.id,
        CASE WHEN i < 4 THEN 'result' WHEN i < 6 THEN 'note' ELSE 'tick' END,
        n.started_utc_s + i,
        '{{"axis_state": ' || (n.id * 10) || ', "error_arcmin": 1.5, "text": "dew and wind"}}',
        CASE WHEN i = 5 THEN randomblob(20000) END
        FROM nights n, e;
"""
_BIG_NIGHT = f"""
    INSERT INTO legs SELECT 7, id, 9, 'big leg', 'Diphda', 10.9, -17.99, began_utc_s, NULL, 0,
        'alignment' FROM axis_states WHERE night = {NIGHTS} AND ordinal = 1;
    WITH RECURSIVE p(i) AS (SELECT 0 UNION ALL SELECT i + 1 FROM p WHERE i < {BIG_LEG_READINGS} - 1)
    INSERT INTO samples SELECT l.id, i, l.began_utc_s + i * 0.1, i * 0.0001, i % 7, NULL
        FROM legs l, p WHERE l.id = 7;
"""


def fill(path: Path, has_big_night: bool = False) -> int:
    """How many readings there are. `has_big_night`: the newest has one leg of two hundred thousand
    readings more.
    """
    with closing(sqlite3.connect(path)) as connection:
        connection.execute("PRAGMA synchronous = OFF")
        connection.execute("PRAGMA journal_mode = WAL")
        for migration in MIGRATIONS:
            connection.executescript(migration)
        more = _BIG_NIGHT if has_big_night else ""
        connection.executescript(f"BEGIN; {_FILL} {more} COMMIT; PRAGMA user_version = {VERSION};")
        (count,) = connection.execute("SELECT count(*) FROM samples").fetchone()
    return int(count)
