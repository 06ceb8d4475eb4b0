"""The person's equipment, and what the set in use says of tonight's figures."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from typing import Any, TypeVar

from PySide6.QtCore import QObject, Signal

from app.night.places import Settings
from core.imaging.sampling import (
    LEAST_ARCMIN,
    MOST_ARCMIN,
    FieldOfView,
    assumed_field,
    field_of,
    typed_field,
)
from core.mount.choice import Criterion, Must, Wishes
from core.mount.equipment import (
    Camera,
    EquipmentSet,
    ImpossibleValue,
    Inventory,
    Mount,
    Purpose,
    Record,
)
from core.mount.equipmentfile import from_object, set_from_object, set_to_object, to_object
from core.mount.payload import LoadPractice

# What a person changed of the usual figures for a purpose: capacity used, musts, weights.


@dataclass(frozen=True)
class Adjusted:
    """`share`: part of the listed capacity to use. `price_limit`: None without one. `load_kg`: the
    person's own figure instead of the load of the set in use.
    """

    share: float
    musts: tuple[Must, ...]
    weights: Mapping[Criterion, float]
    price_limit: float | None = None
    load_kg: float | None = None

    @classmethod
    def usual(cls, purpose: Purpose) -> Adjusted:
        """As `core.mount` suggests."""
        wishes = Wishes.usual(purpose, None)
        return cls(wishes.practice_share, wishes.musts, wishes.weights)

    def wishes(self, purpose: Purpose, set_kg: float | None) -> Wishes:
        """`set_kg`: load of the set in use. Raises `ImpossibleValue` on a contradiction."""
        load_kg = set_kg if self.load_kg is None else self.load_kg
        return Wishes(purpose, load_kg, self.share, self.musts, self.weights, self.price_limit)

    def practice(self, purpose: Purpose) -> LoadPractice:
        """The part of the capacity, for judging a load."""
        name = {
            Purpose.DEEP_SKY: "deep_sky",
            Purpose.PLANETARY: "planetary",
            Purpose.OBSERVING: "observing",
        }[purpose]
        return replace(LoadPractice(), **{name: self.share})


def adjusted_to(own: Adjusted) -> dict[str, Any]:
    """As plain JSON values."""
    return {
        "share": own.share,
        "musts": [must.name for must in own.musts],
        "weights": {criterion.name: weight for criterion, weight in own.weights.items()},
        "price_limit": own.price_limit,
        "load_kg": own.load_kg,
    }


def adjusted_from(given: Any, purpose: Purpose) -> Adjusted:
    """From what was kept; the usual figures where it cannot be used."""
    usual = Adjusted.usual(purpose)
    try:
        limit, load = given["price_limit"], given["load_kg"]
        own = Adjusted(
            float(given["share"]),
            tuple(Must[name] for name in given["musts"]),
            {Criterion[name]: float(weight) for name, weight in given["weights"].items()},
            None if limit is None else float(limit),
            None if load is None else float(load),
        )
        own.wishes(purpose, None)
    except (KeyError, TypeError, ValueError, AttributeError, ImpossibleValue):
        return usual
    return own


# The person's equipment, kept at every change.

EQUIPMENT_KEY = "equipment"
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
        self._read(settings.get_setting(EQUIPMENT_KEY))

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
        self._settings.put_setting(EQUIPMENT_KEY, self._kept())
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


# What the equipment in use says of the figures that a plan needs.

OF_MOUNT = {
    "drive_deg_per_s": "drive_limit_deg_per_s",
    "past_meridian_deg": "past_meridian_deg",
}
OF_CAMERA = {"frame_width_px": "width_px", "frame_height_px": "height_px"}


def known_of(equipment: Equipment, name: str) -> float | str | None:
    """A figure or word by the name the plan has for it; None where it is not known."""
    chosen = equipment.set_in_use()
    if chosen is None:
        return None
    mount = equipment.inventory.mount_of(chosen)
    if name == "purpose":
        return chosen.purpose.name
    if name == "mount_kind":
        return None if mount is None else mount.kind.name
    if name in OF_MOUNT:
        return _figure(mount, OF_MOUNT[name])
    if name in OF_CAMERA:
        parts = equipment.inventory.parts_of(chosen, with_planned=False)
        camera = next((part for part in parts if type(part) is Camera), None)
        return _figure(camera, OF_CAMERA[name])
    return None


def _figure(thing: Mount | Camera | None, name: str) -> float | None:
    value = getattr(thing, name, None)
    return None if value is None else float(value)


# How much sky the person sees while a star drifts: typed and kept, else from the equipment.

FIELD_KEY = "field in view"


class FieldInView(QObject):
    """`changed` follows what the person types and what the equipment says."""

    changed = Signal()

    def __init__(
        self, settings: Settings, equipment: Equipment | None = None, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._settings = settings
        self._equipment = equipment
        self._typed_arcmin = _read(settings.get_setting(FIELD_KEY))
        if equipment is not None:
            equipment.changed.connect(self.changed)

    @property
    def typed_arcmin(self) -> float | None:
        """None while the person has typed nothing."""
        return self._typed_arcmin

    def type(self, across_arcmin: float | None) -> None:
        """None: go by the equipment again."""
        self._typed_arcmin = across_arcmin
        self._settings.put_setting(FIELD_KEY, {"version": VERSION, "across_arcmin": across_arcmin})
        self.changed.emit()

    def now(self) -> FieldOfView:
        """What holds at present."""
        if self._typed_arcmin is not None:
            return typed_field(self._typed_arcmin)
        return self._of_equipment() or assumed_field()

    def _of_equipment(self) -> FieldOfView | None:
        chosen = None if self._equipment is None else self._equipment.set_in_use()
        if self._equipment is None or chosen is None:
            return None
        return field_of(self._equipment.inventory.parts_of(chosen, with_planned=False))


def _read(kept: Any) -> float | None:
    if not isinstance(kept, dict) or kept.get("version") != VERSION:
        return None
    across = kept.get("across_arcmin")
    if not isinstance(across, int | float) or isinstance(across, bool):
        return None
    return float(across) if LEAST_ARCMIN <= across <= MOST_ARCMIN else None
