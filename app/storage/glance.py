"""A log that another copy of the program writes, open here to be read."""

from __future__ import annotations

import sqlite3
from pathlib import Path

from app.storage.place import Place
from app.storage.reading import open_to_read


class Glance:
    """Opened at the first question, and anew when the other copy had to write the file anew."""

    def __init__(self, path: Path) -> None:
        self._path = path
        self._place: Place | None = None
        self._open: sqlite3.Connection | None = None

    def connection(self) -> sqlite3.Connection:
        """Raises sqlite3.Error when the file cannot be read."""
        if self._place is not None and not self._place.is_kept() and self._path.exists():
            self.close()
        if self._open is None:
            self._place = Place.of(self._path)
            self._open = open_to_read(self._path)
        return self._open

    def close(self) -> None:
        """Harmless twice."""
        if self._open is not None:
            self._open.close()
            self._open = None
