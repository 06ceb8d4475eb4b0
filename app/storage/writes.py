"""Statements on their way to the file."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any


@dataclass(frozen=True)
class Write:
    """One statement for many rows. It may be repeated, so it must be harmless twice."""

    statement: str
    rows: Iterable[tuple[Any, ...]]


def write_all(connection: sqlite3.Connection, writes: Iterable[Write]) -> None:
    """All of them or none."""
    connection.execute("BEGIN IMMEDIATE")
    try:
        for write in writes:
            connection.executemany(write.statement, write.rows)
        connection.execute("COMMIT")
    except BaseException:
        if connection.in_transaction:
            connection.execute("ROLLBACK")
        raise
