"""Opening a log of nights only to read it."""

from __future__ import annotations

import sqlite3
from pathlib import Path


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
