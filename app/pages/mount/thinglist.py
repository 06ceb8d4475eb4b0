"""All equipment and all sets in a list, and the keys to add to it."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QListWidget, QListWidgetItem, QSizePolicy, QWidget

from app.pages.mount.form import kind_of
from app.pages.mount.formwords import KINDS, said
from app.widgets.flow import Flow
from app.widgets.key import Key
from app.widgets.text import Panel, Text
from core.language import say
from core.mount.equipment import Counterweight, EquipmentSet, Inventory, Mount, Part, Record

ROLE = Qt.ItemDataRole.UserRole
SET = "set"
HEIGHT_PX = 400


class ThingList(Panel):
    """`opened` carries the key of a thing, `added` the kind of a new one ("set" for a set)."""

    opened = Signal(str)
    added = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self._list = QListWidget()
        self._list.setAccessibleName(self.tr("Equipment and sets"))
        self._list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._list.setWordWrap(True)
        self._list.setTextElideMode(Qt.TextElideMode.ElideNone)
        self._list.setResizeMode(QListWidget.ResizeMode.Adjust)
        self._list.setFixedHeight(HEIGHT_PX)
        self._list.itemClicked.connect(self._open)
        self._list.itemActivated.connect(self._open)
        self._keys: dict[str, Key] = {}
        self.column.addWidget(Text(self.tr("What you have"), "title"))
        self.column.addWidget(self._list)
        self.column.addWidget(Text(self.tr("Add"), "small"))
        self.column.addWidget(self._add_keys())

    def _add_keys(self) -> QWidget:
        holder = QWidget()
        flow = Flow(holder)
        names = [(name, said(words.name)) for name, words in KINDS.items()]
        for name, words in [*names, (SET, self.tr("Set"))]:
            key = Key(words)
            key.setAccessibleName(self.tr("Add: {what}").format(what=words))
            key.clicked.connect(lambda _down, name=name: self.added.emit(name))
            self._keys[name] = key
            flow.addWidget(key)
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        holder.setSizePolicy(policy)
        return holder

    def add_key(self, name: str) -> Key:
        return self._keys[name]

    def list(self) -> QListWidget:
        return self._list

    def show_inventory(self, inventory: Inventory) -> None:
        """Sets first, then each kind in the order of the keys below."""
        current = self._list.currentItem()
        chosen = None if current is None else current.data(ROLE)
        self._list.clear()
        for one in inventory.sets:
            self._add(one.key, one.name, self._set_words(one))
        for words in KINDS.values():
            for record in inventory.of_kind(words.kind):
                self._add(record.key, record.name, self._record_words(record))
        self.mark(chosen)

    def mark(self, key: str | None) -> None:
        """Shows which one is open."""
        for row in range(self._list.count()):
            if self._list.item(row).data(ROLE) == key:
                self._list.setCurrentRow(row)

    def _add(self, key: str, name: str, words: str) -> None:
        item = QListWidgetItem(f"{name}\n{words}")
        item.setData(ROLE, key)
        self._list.addItem(item)

    def _open(self, item: QListWidgetItem) -> None:
        self.opened.emit(item.data(ROLE))

    def _set_words(self, chosen: EquipmentSet) -> str:
        count = len(chosen.parts) + bool(chosen.mount)
        words = self.tr("set for {purpose}, {count} pieces")
        return words.format(purpose=say(chosen.purpose.value), count=count)

    def _record_words(self, record: Record) -> str:
        said_of_it = [said(KINDS[kind_of(record)].name).lower()]
        if isinstance(record, Mount):
            if record.capacity_kg is not None:
                carries = self.tr("carries {kg:g} kg").format(kg=record.capacity_kg)
                said_of_it.append(carries)
        elif isinstance(record, Part | Counterweight):
            known = record.mass_kg is not None
            said_of_it.append(
                self.tr("{kg:g} kg").format(kg=record.mass_kg)
                if known
                else self.tr("mass not known")
            )
        if record.is_planned:
            said_of_it.append(self.tr("to be bought"))
        if record.is_invented:
            said_of_it.append(self.tr("invented"))
        return ", ".join(said_of_it)
