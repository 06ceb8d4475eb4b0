"""Whether the files of an open log still stand where they were opened.

A file that is deleted, moved or replaced while it is open goes on taking data, on most systems, but
nobody finds that data again.
"""

from __future__ import annotations

import os
from dataclasses import dataclass
from pathlib import Path

Identity = tuple[int, int]


@dataclass(frozen=True)
class Place:
    """The log at `path` and its journal as they were when it was opened; None: there was none."""

    path: Path
    log: Identity | None
    journal: Identity | None

    @classmethod
    def of(cls, path: Path) -> Place:
        """As it is now."""
        return cls(path, _identity(path), _identity(journal_of(path)))

    def is_kept(self) -> bool:
        """False when another file stands there, or none; cheap enough for every commit."""
        try:
            return self.has_log() and (self.journal is None or self.has_journal())
        except OSError:  # a drive that does not answer: writing tells of that
            return True

    def has_log(self) -> bool:
        """Whether the file at the path is the one that is open."""
        return self.log is not None and _identity(self.path) == self.log

    def has_journal(self) -> bool:
        """Likewise the journal."""
        return self.journal is not None and _identity(journal_of(self.path)) == self.journal


def journal_of(path: Path) -> Path:
    """Where SQLite keeps what it has not yet put into the file itself."""
    return path.with_name(path.name + "-wal")


def shared_of(path: Path) -> Path:
    """Where SQLite keeps what those who have the file open must agree on."""
    return path.with_name(path.name + "-shm")


def _identity(path: Path) -> Identity | None:
    try:
        told = os.stat(path)
    except (FileNotFoundError, NotADirectoryError):
        return None
    return told.st_dev, told.st_ino
