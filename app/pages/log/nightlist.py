"""Reading which nights there are: the newest first, for they are seen at once, then all."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import (
    QAbstractListModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    Qt,
    QTimer,
    Signal,
)
from PySide6.QtGui import QFocusEvent
from PySide6.QtWidgets import QListView, QWidget

from app.night.archive import Listed
from app.pages.log.parts import LogParts
from app.pages.log.words import summary_words
from app.store.records import FoundNight, NightSummary
from app.ui.form import Field
from app.ui.text import Panel, Text
from app.workers.latest import LatestOnly
from core.sky.clocks import UTC_ZONE, Zone

SEEN_AT_ONCE = 20  # at least as many as a tall window has rows for
SEEN_FIRST_MS = 50
KEPT_WITHIN_S = 0.5


class Listing(QObject):
    """`newest`: the nights that are seen first are up to date; `whole`: all are. `failed`: a fault
    kept them from being read; `closed`: no file can be read now.
    """

    newest = Signal()
    whole = Signal()
    failed = Signal()
    closed = Signal()

    def __init__(self, parts: LogParts, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._files, self._log = parts.files, parts.log
        self.nights: Sequence[NightSummary] = ()
        self.is_whole = False  # else there may be earlier nights than these
        self._errand = LatestOnly(self)
        self._errand.done.connect(self._take)

    def refresh(self) -> None:
        """Reads anew, with what was measured until now."""
        files, log = self._files, self._log

        def read() -> object:
            log.flush(KEPT_WITHIN_S)  # a disk that takes nothing is not waited for
            return files.newest(SEEN_AT_ONCE)

        self._errand.send(read)

    def stop(self) -> None:
        """Waits for what is under way; harmless twice."""
        self._errand.close()

    def _take(self, answer: object) -> None:
        if isinstance(answer, Listed) and not answer.is_open:
            self.closed.emit()
            return
        if not isinstance(answer, Listed):
            self.failed.emit()
            return
        self.nights = answer.nights if answer.is_all else self._with_known(answer.nights)
        self.is_whole = self.is_whole or answer.is_all
        if not answer.is_rest:
            self.newest.emit()
        if answer.is_all:
            self.whole.emit()
        else:  # once these are drawn, or both threads would wait for each other
            QTimer.singleShot(SEEN_FIRST_MS, self, self._read_all)

    def _read_all(self) -> None:
        if not self._errand.is_wanted_again():
            self._errand.send(self._files.all)

    def _with_known(self, newest: Sequence[NightSummary]) -> Sequence[NightSummary]:
        """Before them those known from earlier, which may have changed since."""
        fresh = {one.night_id for one in newest}
        oldest_s = min((one.started_utc_s for one in newest), default=0.0)
        known = (one for one in self.nights if one.started_utc_s <= oldest_s)
        return (*newest, *(one for one in known if one.night_id not in fresh))


# The rows of the list of nights: words are made when a row is looked at, not before.

Index = QModelIndex | QPersistentModelIndex
MOST_OF_A_HIT = 60  # characters
_NOWHERE = QModelIndex()


@dataclass(frozen=True)
class NightLine:
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
        self._rows: list[NightLine] = []
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

    def tells_the_same_hits(self, rows: Sequence[NightLine]) -> bool:
        """Whether these are rows of the same search, or of none like those there are."""
        return all(old.hit == new.hit for old, new in zip(self._rows, rows, strict=False))

    def show_rows(self, rows: Sequence[NightLine], zone: Zone) -> None:
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

    def _put_in(self, at: int, rows: list[NightLine]) -> None:
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


def _words(row: NightLine, zone: Zone) -> str:
    words = summary_words(row.night, zone)
    return f"{words}\n“{row.hit[:MOST_OF_A_HIT]}”" if row.hit else words


# All nights in a list, the newest first, and the search through everything said in them.

LEAST_PX = 440
BETWEEN_PX = 3
LAID_OUT_AT_ONCE = 20  # more rows than are seen; the rest follows when the window is idle


class NightsView(QListView):
    """`wanted` carries the key of a night chosen by the person."""

    wanted = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._rows = NightRows(self)
        self._is_filling = False
        self.setModel(self._rows)
        self.setWordWrap(True)
        self.setResizeMode(QListView.ResizeMode.Adjust)
        self.setBatchSize(LAID_OUT_AT_ONCE)
        self.setSpacing(BETWEEN_PX)  # or the lines of one night run into those of the next
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setEditTriggers(QListView.EditTrigger.NoEditTriggers)
        self.setMinimumHeight(LEAST_PX)
        self.selectionModel().selectionChanged.connect(self._selected)

    def count(self) -> int:
        return self._rows.rowCount()

    def texts(self) -> list[str]:
        """What the rows say, from the first to the last."""
        return [self._rows.index(row).data() for row in range(self.count())]

    def choose(self, row: int) -> None:
        """As the person does, with a finger."""
        self.setCurrentIndex(self._rows.index(row))

    def show_rows(self, rows: Sequence[NightLine], zone: Zone, opened: int | None) -> None:
        """`opened`: the key of the night to be marked."""
        if not self._rows.tells_the_same_hits(rows):
            self.scrollToTop()
        self._is_filling = True
        self._rows.show_rows(rows, zone)
        row = self._rows.row_of(opened)
        if row is None:
            self.selectionModel().clear()  # or the next night would be marked in its stead
        elif row != self.currentIndex().row() or not self.selectedIndexes():
            self.choose(row)
        self._is_filling = False

    def focusInEvent(self, event: QFocusEvent) -> None:
        """No night is stood on that is not opened: an arrow key would pass it over."""
        super().focusInEvent(event)
        if not self.selectedIndexes():
            self.selectionModel().clearCurrentIndex()

    def doItemsLayout(self) -> None:
        """Bit by bit at the top; farther down at once, or the list would lose its place."""
        is_at_top = self.verticalScrollBar().value() == 0
        mode = QListView.LayoutMode
        self.setLayoutMode(mode.Batched if is_at_top else mode.SinglePass)
        super().doItemsLayout()

    def _selected(self) -> None:
        chosen = self.selectedIndexes()
        if chosen and not self._is_filling:
            self.wanted.emit(self._rows.key(chosen[0].row()))


class NightList(Panel):
    """`opened` carries a night's key; `searched` what was typed."""

    opened = Signal(object)
    searched = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("Nights"), parent)
        self._nights: Sequence[NightSummary] = ()
        self._zone = UTC_ZONE
        self._shown: object = None  # from what the list was made, when it shows all nights
        self._search = Field(self.tr("Search"), self.tr("place, star, equipment, words of a note"))
        self._search.edited.connect(self.searched)
        self._list = NightsView()
        self._list.setAccessibleName(self.tr("Nights, the newest first"))
        self._list.wanted.connect(self.opened)
        self._said = Text("", "small")
        for part in (self._search, self._said):
            self.column.addWidget(part)
        self.column.addWidget(self._list, 1)
        self.column.addStretch()  # where there is nothing to list
        self._said.hide()
        self.setFocusProxy(self._list)

    def search_field(self) -> Field:
        return self._search

    def list(self) -> NightsView:
        return self._list

    def said(self) -> str:
        return self._said.text()

    def show_nights(
        self, nights: Sequence[NightSummary], is_whole: bool, zone: Zone, opened: int | None
    ) -> None:
        """`is_whole`: these are all there are."""
        shown = (is_whole, zone, opened)
        if nights is self._nights and shown == self._shown:
            return
        self._shown = shown
        self._nights, self._zone = nights, zone
        self._list.show_rows([NightLine(night) for night in nights], zone, opened)
        count = len(nights)
        self._list.setVisible(count > 0)
        if not is_whole:
            self._said.say(self.tr("The newest nights; earlier ones are being read."))
        elif not count:
            self._said.say(
                self.tr(
                    "No night is in the log yet: the first leg on the Drift page, or a note, makes "
                    "one of tonight. What is done on the practice sky is not kept."
                )
            )
        else:
            self._said.say(
                self.tr("1 night.") if count == 1 else self.tr("{n} nights.").format(n=count)
            )

    def show_closed(self) -> None:
        """No file can be read; the nights that were listed before stay."""
        self._shown = None
        self._said.say(
            self.tr("The log of nights cannot be read now; open this page again once it can.")
        )

    def show_found(self, found: Sequence[FoundNight], opened: int | None) -> None:
        """Only nights in which all words were found, with the first text that holds one."""
        self._shown = None
        texts = {one.night_id: one.texts[0] if one.texts else "" for one in found}
        rows = [
            NightLine(night, texts[night.night_id])
            for night in self._nights
            if night.night_id in texts
        ]
        self._list.show_rows(rows, self._zone, opened)
        self._list.setVisible(bool(rows))
        one = len(found) == 1
        self._said.say(
            self.tr("Found in 1 night.")
            if one
            else self.tr("Found in {n} nights.").format(n=len(found))
        )
