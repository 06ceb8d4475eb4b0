"""The turns of the bolts on disk, one book for each mount."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from app.session.places import Settings

KEY = "bolts"
VERSION = 2
MOST = 80  # entries of one book, the newest
WANTED = {"name": str, "bolt": str}
FIGURES = ("turns", "moved_arcmin", "sigma_arcmin")

Entries = list[dict[str, Any]]


class BoltShelf:
    """Books by the key of a mount, "" for no mount; without settings (None) nothing is kept.

    Version 1 knew one book only. Its turns count for whatever is in use, and go to the first mount
    that is. What this version cannot read is set aside and kept.
    """

    def __init__(self, settings: Settings | None) -> None:
        self._settings = settings
        self._books: dict[str, Entries] = {}
        self._earlier: Entries = []
        self._aside: list[Any] = []
        self._key = ""
        self._read(None if settings is None else settings.get_setting(KEY))

    @property
    def keeps(self) -> bool:
        return self._settings is not None

    @property
    def entries(self) -> Entries:
        """Of the open book, oldest first."""
        earlier = self._earlier if not self._key else []
        return [*earlier, *self._books.get(self._key, [])]

    def open(self, key: str) -> None:
        """The book of the mount with this key, begun when there is none."""
        self._key = key
        if key and self._earlier:
            self._books[key] = [*self._earlier, *self._books.get(key, [])][-MOST:]
            self._earlier = []
            self._write()

    def keep(self, entries: Sequence[dict[str, Any]]) -> None:
        """In place of what the open book held."""
        were = [] if self._key else [_name(entry) for entry in self._earlier]
        if not self._key:
            self._earlier = [entry for entry in entries if _name(entry) in were]
        self._books[self._key] = [one for one in entries if _name(one) not in were][-MOST:]
        self._write()

    def _write(self) -> None:
        if self._settings is not None:
            kept = {"version": VERSION, "books": self._books, "earlier": self._earlier}
            self._settings.put_setting(KEY, {**kept, "set_aside": self._aside})

    def _read(self, kept: Any) -> None:
        if kept is None:
            return
        version = kept.get("version") if isinstance(kept, dict) else None
        if version == 1:
            self._earlier = _usable(kept.get("turns"))
        elif version == VERSION and isinstance(kept.get("books"), dict):
            self._books = {str(key): _usable(book) for key, book in kept["books"].items()}
            self._earlier = _usable(kept.get("earlier"))
            aside = kept.get("set_aside")
            self._aside = aside if isinstance(aside, list) else []
        else:
            self._aside = [kept]


def _name(entry: dict[str, Any]) -> tuple[str, str]:
    return entry["name"], entry["bolt"]


def _usable(entries: Any) -> Entries:
    if not isinstance(entries, list):
        return []
    return [entry for entry in entries if isinstance(entry, dict) and _is_usable(entry)]


def _is_usable(entry: dict[str, Any]) -> bool:
    words = all(isinstance(entry.get(name), kind) for name, kind in WANTED.items())
    return words and all(
        isinstance(entry.get(name), int | float) and not isinstance(entry[name], bool)
        for name in FIGURES
    )
