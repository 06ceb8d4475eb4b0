"""The person's equipment, kept at every change."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from typing import Any, TypeVar

from PySide6.QtCore import QObject, Signal

from app.session.adjusted import Adjusted, adjusted_from, adjusted_to
from app.session.places import Settings
from core.mount.equipment import EquipmentSet, ImpossibleValue, Inventory, Purpose, Record
from core.mount.equipmentfile import from_object, set_from_object, set_to_object, to_object

KEY = "equipment"
VERSION = 1
Thing = TypeVar("Thing", Record, EquipmentSet)


class Equipment(QObject):
    """What is owned or planned, the set in use, and the person's own figures for each purpose.

    Entries this version cannot read are left alone and kept.
    """

    changed = Signal()

    def __init__(self, settings: Settings, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._settings = settings
        self._foreign: dict[str, list[Any]] = {}
        self._inventory = Inventory()
        self._in_use = ""
        self._adjusted: dict[Purpose, Adjusted] = {}
        self._read(settings.get_setting(KEY))

    @property
    def inventory(self) -> Inventory:
        return self._inventory

    def set_in_use(self) -> EquipmentSet | None:
        """The one chosen last, else the first; None without any."""
        sets = self._inventory.sets
        return next((one for one in sets if one.key == self._in_use), sets[0] if sets else None)

    def use(self, key: str) -> None:
        """Choose the set in use."""
        self._in_use = key
        self._keep()

    def put(self, record: Record) -> None:
        """A new piece, or a changed one in its place."""
        self._inventory = self._inventory.with_record(record)
        self._keep()

    def put_set(self, given: EquipmentSet) -> None:
        """A new set, or a changed one in its place; the first one is in use at once."""
        self.take(Inventory((), (given,)))

    def remove(self, *keys: str) -> None:
        """Records go out of all sets too."""
        for key in keys:
            self._inventory = self._inventory.without(key)
        self._keep()

    def take(self, given: Inventory) -> None:
        """All of `given`; what has the same key is replaced."""
        taken = self._inventory
        for record in given.records:
            taken = taken.with_record(record)
        new = {one.key: one for one in given.sets}
        old = tuple(new.pop(one.key, one) for one in taken.sets)
        self._inventory = replace(taken, sets=(*old, *new.values()))
        self._keep()

    def adjusted(self, purpose: Purpose) -> Adjusted:
        """The person's own figures where there are any, else the usual ones."""
        return self._adjusted.get(purpose, Adjusted.usual(purpose))

    def adjust(self, purpose: Purpose, figures: Adjusted) -> None:
        """Keep the person's own figures."""
        self._adjusted[purpose] = figures
        self._keep()

    def _keep(self) -> None:
        self._settings.put_setting(KEY, self._kept())
        self.changed.emit()

    def _kept(self) -> Mapping[str, Any]:
        inventory = self._inventory
        return {
            "version": VERSION,
            "equipment": [
                *map(to_object, inventory.records),
                *self._foreign.get("equipment", ()),
            ],
            "sets": [*map(set_to_object, inventory.sets), *self._foreign.get("sets", ())],
            "in_use": self._in_use,
            "adjusted": {one.name: adjusted_to(own) for one, own in self._adjusted.items()},
            "set_aside": self._foreign.get("set_aside", []),
        }

    def _read(self, kept: Any) -> None:
        if kept is None:
            return
        if not isinstance(kept, dict) or kept.get("version") != VERSION:
            self._foreign["set_aside"] = [kept]
            return
        self._foreign["set_aside"] = _list(kept, "set_aside")
        keys: set[str] = set()
        records = self._entries(kept, "equipment", from_object, keys)
        sets = self._entries(kept, "sets", set_from_object, keys)
        self._inventory = Inventory(tuple(records), tuple(sets))
        self._in_use = str(kept.get("in_use", ""))
        figures = kept.get("adjusted")
        for purpose in Purpose:
            given = figures.get(purpose.name) if isinstance(figures, dict) else None
            if given is not None:
                self._adjusted[purpose] = adjusted_from(given, purpose)

    def _entries(
        self, kept: dict[str, Any], name: str, build: Callable[[Any], Thing], keys: set[str]
    ) -> list[Thing]:
        found = []
        for entry in _list(kept, name):
            try:
                one = build(entry)
            except ImpossibleValue:
                self._foreign.setdefault(name, []).append(entry)
                continue
            if one.key not in keys:
                keys.add(one.key)
                found.append(one)
        return found


def _list(kept: dict[str, Any], name: str) -> list[Any]:
    given = kept.get(name)
    return given if isinstance(given, list) else []
