"""Statements on their way to the file."""

from __future__ import annotations

import sqlite3
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import Any


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
