"""All nights in a list, the newest first, and the search through everything said in them."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QListWidget, QListWidgetItem, QWidget

from app.pages.log.words import summary_words
from app.storage.records import Found, NightSummary
from app.widgets.field import Field
from app.widgets.text import Panel, Text
from core.sky.zones import Zone

KEY_ROLE = Qt.ItemDataRole.UserRole
LEAST_PX = 440


class NightList(Panel):
    """`opened` carries a night's key; `searched` what was typed."""

    opened = Signal(object)
    searched = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("Nights"), parent)
        self._nights: Sequence[NightSummary] = ()
        self._search = Field(self.tr("Search"), self.tr("place, star, equipment, words of a note"))
        self._search.edited.connect(self.searched)
        self._list = QListWidget()
        self._list.setAccessibleName(self.tr("Nights, the newest first"))
        self._list.setWordWrap(True)
        self._list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._list.setMinimumHeight(LEAST_PX)
        self._list.itemSelectionChanged.connect(self._selected)
        self._said = Text("", "small")
        for part in (self._search, self._said):
            self.column.addWidget(part)
        self.column.addWidget(self._list, 1)
        self._said.hide()
        self.setFocusProxy(self._list)

    def search_field(self) -> Field:
        return self._search

    def list(self) -> QListWidget:
        return self._list

    def said(self) -> str:
        return self._said.text()

    def show_nights(self, nights: Sequence[NightSummary], zone: Zone, opened: int | None) -> None:
        self._nights, self._zone = nights, zone
        self._fill({night.night_id: "" for night in nights}, opened)
        count = len(nights)
        if not count:
            self._said.say(
                self.tr("No night is in the log yet: the first leg or note makes one of tonight.")
            )
        else:
            self._said.say(
                self.tr("1 night.") if count == 1 else self.tr("{n} nights.").format(n=count)
            )

    def show_found(self, found: Sequence[Found], opened: int | None) -> None:
        """Only nights in which all words were found, with the first text that holds one."""
        self._fill({one.night_id: one.texts[0] if one.texts else "" for one in found}, opened)
        self._said.say(self.tr("Found in {n} nights.").format(n=len(found)))

    def _fill(self, texts: dict[int, str], opened: int | None) -> None:
        self._list.blockSignals(True)
        self._list.clear()
        for night in self._nights:
            if night.night_id not in texts:
                continue
            words = summary_words(night, self._zone)
            hit = texts[night.night_id]
            item = QListWidgetItem(f"{words}\n“{hit[:60]}”" if hit else words)
            item.setData(KEY_ROLE, str(night.night_id))  # a key is larger than a C int
            self._list.addItem(item)
            if night.night_id == opened:
                self._list.setCurrentItem(item)
        self._list.blockSignals(False)

    def _selected(self) -> None:
        item = self._list.currentItem()
        if item is not None:
            self.opened.emit(int(item.data(KEY_ROLE)))
