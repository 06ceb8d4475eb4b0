"""All nights in a list, the newest first, and the search through everything said in them."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QFocusEvent
from PySide6.QtWidgets import QListView, QWidget

from app.pages.log.nightrows import NightRow, NightRows
from app.storage.records import Found, NightSummary
from app.widgets.field import Field
from app.widgets.text import Panel, Text
from core.sky.clocks import UTC_ZONE, Zone

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

    def show_rows(self, rows: Sequence[NightRow], zone: Zone, opened: int | None) -> None:
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
        self._list.show_rows([NightRow(night) for night in nights], zone, opened)
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

    def show_found(self, found: Sequence[Found], opened: int | None) -> None:
        """Only nights in which all words were found, with the first text that holds one."""
        self._shown = None
        texts = {one.night_id: one.texts[0] if one.texts else "" for one in found}
        rows = [
            NightRow(night, texts[night.night_id])
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
