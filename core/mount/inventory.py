"""All equipment of one person, and the sets it is used in."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field, replace
from typing import Any, TypeVar

from core.language import say
from core.mount.equipment import Counterweight, Mount, Part, Purpose, Record
from core.mount.quantities import ImpossibleValue

Kind = TypeVar("Kind", bound=Record)


@dataclass(frozen=True, kw_only=True)
class EquipmentSet:
    """Things used together, by key: a mount and what goes on it, counterweights included.

    A set may name things still to be bought; they count only when asked for.
    """

    key: str
    name: str
    purpose: Purpose
    mount: str = ""
    parts: tuple[str, ...] = ()
    other: Mapping[str, Any] = field(default_factory=dict, hash=False)

    def __post_init__(self) -> None:
        if not self.key.strip() or not self.name.strip():
            raise ImpossibleValue(say("A set of equipment has no name; give it one."))
        twice = {part for part in self.parts if self.parts.count(part) > 1}
        if twice:
            raise ImpossibleValue(
                say(
                    "The set “{name}” names “{part}” twice; enter a second piece of the same "
                    "kind as a piece of its own.",
                    name=self.name,
                    part=min(twice),
                )
            )


@dataclass(frozen=True)
class Inventory:
    """Records in the person's order. Raises `ImpossibleValue` for keys used twice."""

    records: tuple[Record, ...] = ()
    sets: tuple[EquipmentSet, ...] = ()
    other: Mapping[str, Any] = field(default_factory=dict, hash=False)

    def __post_init__(self) -> None:
        seen: dict[str, str] = {}
        for one in self.things():
            if one.key in seen:
                raise ImpossibleValue(
                    say(
                        "“{name}” and “{other}” have the same key, {key}; each needs its own.",
                        name=one.name,
                        other=seen[one.key],
                        key=one.key,
                    )
                )
            seen[one.key] = one.name

    def things(self) -> tuple[Record | EquipmentSet, ...]:
        """Records, then sets."""
        return (*self.records, *self.sets)

    def of_kind(self, kind: type[Kind]) -> tuple[Kind, ...]:
        """All records of exactly this kind."""
        return tuple(one for one in self.records if type(one) is kind)

    def planned(self) -> tuple[Record, ...]:
        """What is still to be bought."""
        return tuple(one for one in self.records if one.is_planned)

    def with_record(self, record: Record) -> Inventory:
        """The record put in the place of the one with its key, or at the end."""
        if self.find(record.key) is None:
            return replace(self, records=(*self.records, record))
        changed = (record if one.key == record.key else one for one in self.records)
        return replace(self, records=tuple(changed))

    def without(self, key: str) -> Inventory:
        """The record or set taken out, and the record out of all sets."""
        return replace(
            self,
            records=tuple(one for one in self.records if one.key != key),
            sets=tuple(_set_without(one, key) for one in self.sets if one.key != key),
        )

    def find(self, key: str) -> Record | None:
        """None when there is no such thing."""
        return next((one for one in self.records if one.key == key), None)

    def mount_of(self, chosen: EquipmentSet) -> Mount | None:
        """None when the set has none, or none that is known."""
        found = self.find(chosen.mount)
        return found if isinstance(found, Mount) else None

    def parts_of(self, chosen: EquipmentSet, with_planned: bool) -> tuple[Part, ...]:
        """What the mount carries; planned purchases only on demand."""
        return tuple(_wanted(self._named(chosen), Part, with_planned))

    def counterweights_of(
        self, chosen: EquipmentSet, with_planned: bool
    ) -> tuple[Counterweight, ...]:
        """What balances it."""
        return tuple(_wanted(self._named(chosen), Counterweight, with_planned))

    def missing_from(self, chosen: EquipmentSet) -> tuple[str, ...]:
        """Keys the set names and nothing answers to."""
        named = (chosen.mount, *chosen.parts) if chosen.mount else chosen.parts
        return tuple(key for key in named if self.find(key) is None)

    def _named(self, chosen: EquipmentSet) -> Iterable[Record]:
        return (found for key in chosen.parts if (found := self.find(key)) is not None)


def _set_without(chosen: EquipmentSet, key: str) -> EquipmentSet:
    mount = "" if chosen.mount == key else chosen.mount
    return replace(chosen, mount=mount, parts=tuple(one for one in chosen.parts if one != key))


def _wanted(records: Iterable[Record], kind: type[Kind], with_planned: bool) -> Iterable[Kind]:
    for one in records:
        if isinstance(one, kind) and (with_planned or not one.is_planned):
            yield one
