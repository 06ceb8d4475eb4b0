"""The form for a set: what it is for, the mount, and what goes on it."""

from __future__ import annotations

import secrets
from dataclasses import replace

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QGridLayout, QSizePolicy, QVBoxLayout, QWidget

from app.pages.mount.formhead import FormHead
from app.pages.mount.formwords import KINDS, said
from app.widgets.choice import Choice
from app.widgets.field import Field
from app.widgets.flow import Flow
from app.widgets.named import Named
from app.widgets.text import Panel, Text
from app.widgets.tick import Tick
from core.mount.equipment import EquipmentSet, Inventory, Mount, Purpose, Record

NO_MOUNT = ""


class SetForm(QWidget):
    """`kept` carries the set, `removed` its key; `closed` wants the form away."""

    kept = Signal(object)
    removed = Signal(str)
    closed = Signal()

    def __init__(
        self, inventory: Inventory, chosen: EquipmentSet | None, parent: QWidget | None = None
    ) -> None:
        """`chosen` None for a new set."""
        super().__init__(parent)
        self._set = chosen
        title = chosen.name if chosen is not None else self.tr("A set: things used together")
        self.head = FormHead(title, is_new=chosen is None)
        self._name = Field(self.tr("Name, as you call it"))
        self.purposes = Choice(self.tr("What it is for"), self._purpose_words())
        mounts = inventory.of_kind(Mount)
        options = [(one.key, one.name) for one in mounts]
        self.mounts = Choice(self.tr("Mount"), [*options, (NO_MOUNT, self.tr("None"))])
        self.parts: dict[str, Tick] = {}
        self._arrange(inventory)
        self._show()
        self._first = self._typed()
        self._connect()
        self.setFocusProxy(self._name)

    def is_changed(self) -> bool:
        return self._typed() != self._first

    def key(self) -> str:
        return "" if self._set is None else self._set.key

    def shown(self) -> EquipmentSet | None:
        """As it was last kept; None for a new one."""
        return self._set

    def name_field(self) -> Field:
        return self._name

    def keep(self) -> bool:
        """Hands the set on, unless it has no name."""
        name = self._name.text()
        if not name:
            self._name.complain(self.tr("Without a name it cannot be found again."))
            self.head.say(self.tr("Not kept yet: see the dashed fields."), is_alarm=True)
            self._name.setFocus()
            return False
        self._name.note("")
        given = self._made(name)
        self._set = given
        self._first = self._typed()
        self.head.show_kept(name)
        self.kept.emit(given)
        return True

    def _made(self, name: str) -> EquipmentSet:
        purpose = Purpose[self.purposes.choice()]
        mount = self.mounts.choice()
        if self._set is None:
            key = f"set-{secrets.token_hex(6)}"
            parts = tuple(part for part, tick in self.parts.items() if tick.isChecked())
            return EquipmentSet(key=key, name=name, purpose=purpose, mount=mount, parts=parts)
        # Things named by the set that are not there any more stay named.
        gone = tuple(part for part in self._set.parts if part not in self.parts)
        ticked = tuple(part for part, tick in self.parts.items() if tick.isChecked())
        return replace(self._set, name=name, purpose=purpose, mount=mount, parts=(*ticked, *gone))

    def _purpose_words(self) -> list[tuple[str, str]]:
        return [
            (Purpose.OBSERVING.name, self.tr("Observing")),
            (Purpose.PLANETARY.name, self.tr("Planets")),
            (Purpose.DEEP_SKY.name, self.tr("Deep-sky imaging")),
        ]

    def _arrange(self, inventory: Inventory) -> None:
        first = Panel()
        purpose = Named(self.purposes.accessibleName(), self.purposes)
        mount = Named(self.mounts.accessibleName(), self.mounts)
        for part in (self.head, self._name, purpose, mount):
            first.column.addWidget(part)
        parts = Panel(self.tr("What goes on it"))
        grid = QGridLayout()
        grid.setHorizontalSpacing(12)
        grid.setColumnStretch(1, 1)
        for row, words in enumerate(KINDS.values()):
            found = inventory.of_kind(words.kind)
            if found and words.kind is not Mount:
                title = Text(said(words.name), "quiet")
                title.setWordWrap(False)
                grid.addWidget(title, row, 0)
                grid.addWidget(self._ticks(found), row, 1)
        parts.column.addLayout(grid)
        if not self.parts:
            parts.column.addWidget(Text(self.tr("Nothing is entered yet."), "quiet"))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(12)
        column.addWidget(first)
        column.addWidget(parts)
        column.addStretch()

    def _ticks(self, records: tuple[Record, ...]) -> QWidget:
        holder = QWidget()
        flow = Flow(holder)
        for one in records:
            planned = self.tr("{name} (to be bought)").format(name=one.name)
            tick = Tick(planned if one.is_planned else one.name)
            self.parts[one.key] = tick
            flow.addWidget(tick)
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        holder.setSizePolicy(policy)
        return holder

    def _show(self) -> None:
        chosen = self._set
        if chosen is None:
            self.purposes.show_choice(Purpose.DEEP_SKY.name)
            self.mounts.show_choice(self.mounts.options()[0])
            return
        self._name.show_text(chosen.name)
        self.purposes.show_choice(chosen.purpose.name)
        known = chosen.mount if chosen.mount in self.mounts.options() else NO_MOUNT
        self.mounts.show_choice(known)
        for key, tick in self.parts.items():
            tick.show_tick(key in chosen.parts)

    def _typed(self) -> tuple[object, ...]:
        ticked = tuple(key for key, tick in self.parts.items() if tick.isChecked())
        return self._name.text(), self.purposes.choice(), self.mounts.choice(), ticked

    def _connect(self) -> None:
        self.head.keep_wanted.connect(self.keep)
        self.head.close_wanted.connect(self.closed)
        self.head.removal_wanted.connect(lambda: self.removed.emit(self.key()))
        self._name.submitted.connect(self.keep)
