"""The rows of the list of nights: words are made when a row is looked at, not before."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QAbstractListModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from app.pages.log.words import summary_words
from app.storage.records import NightSummary
from core.sky.clocks import UTC_ZONE, Zone

Index = QModelIndex | QPersistentModelIndex
MOST_OF_A_HIT = 60  # characters
_NOWHERE = QModelIndex()


@dataclass(frozen=True)
class NightRow:
    """A night, and the text in it that holds a word searched for."""

    night: NightSummary
    hit: str = ""

    @property
    def key(self) -> int:
        return self.night.night_id


class NightRows(QAbstractListModel):
    """Changes only what differs, so that whoever looks at the list keeps place and choice."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._rows: list[NightRow] = []
        self._zone = UTC_ZONE

    def rowCount(self, parent: Index = _NOWHERE) -> int:
        return 0 if parent.isValid() else len(self._rows)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> str | None:
        if role != Qt.ItemDataRole.DisplayRole or not index.isValid():
            return None
        return _words(self._rows[index.row()], self._zone)

    def key(self, row: int) -> int:
        return self._rows[row].key

    def row_of(self, key: int | None) -> int | None:
        return next((row for row, one in enumerate(self._rows) if one.key == key), None)

    def tells_the_same_hits(self, rows: Sequence[NightRow]) -> bool:
        """Whether these are rows of the same search, or of none like those there are."""
        return all(old.hit == new.hit for old, new in zip(self._rows, rows, strict=False))

    def show_rows(self, rows: Sequence[NightRow], zone: Zone) -> None:
        """Times are told in `zone`."""
        before, kept = self._rows, list(rows)
        first, last = _alike_at_both_ends([one.key for one in before], [one.key for one in kept])
        self._take_out(first, len(before) - last)
        self._put_in(first, kept[first : len(kept) - last])
        is_same_zone, self._zone = zone == self._zone, zone
        pairs = enumerate(zip(self._rows, kept, strict=True))
        changed = [row for row, (old, new) in pairs if old != new or not is_same_zone]
        self._rows = kept
        if changed:
            self.dataChanged.emit(self.index(changed[0]), self.index(changed[-1]))

    def _take_out(self, begin: int, end: int) -> None:
        if begin < end:
            self.beginRemoveRows(_NOWHERE, begin, end - 1)
            del self._rows[begin:end]
            self.endRemoveRows()

    def _put_in(self, at: int, rows: list[NightRow]) -> None:
        if rows:
            self.beginInsertRows(_NOWHERE, at, at + len(rows) - 1)
            self._rows[at:at] = rows
            self.endInsertRows()


def _alike_at_both_ends(before: list[int], after: list[int]) -> tuple[int, int]:
    """How many keys are the same from the first on, and of the rest from the last back."""
    shorter = min(len(before), len(after))
    first = next((n for n in range(shorter) if before[n] != after[n]), shorter)
    rest = range(shorter - first)
    return first, next((n for n in rest if before[-1 - n] != after[-1 - n]), shorter - first)


def _words(row: NightRow, zone: Zone) -> str:
    words = summary_words(row.night, zone)
    return f"{words}\n“{row.hit[:MOST_OF_A_HIT]}”" if row.hit else words
