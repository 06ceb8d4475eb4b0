"""Equipment as a JSON file of our own form, to keep, to carry and to exchange.

    {"format": "poleward equipment", "version": 1, "equipment": [...], "sets": [...]}

Entries of `equipment` say with `what` which kind they are; the fields are those of the records in
`core.mount.equipment`, null where not known. Fields this version does not know are kept with
their record and written out again, and reported. An entry that cannot be is left out and
reported; a file of a newer version is refused whole, since its meaning may have changed.
"""

from __future__ import annotations

import json
import math
import types
from collections.abc import Callable
from dataclasses import MISSING, dataclass, fields
from enum import Enum
from typing import Any, TypeVar, Union, get_args, get_origin, get_type_hints

from core.language import say
from core.mount.equipment import (
    Accessory,
    Camera,
    Counterweight,
    EquipmentSet,
    Eyepiece,
    Guider,
    ImpossibleValue,
    Inventory,
    Mount,
    Record,
    Telescope,
    quantities,
)

KINDS: dict[str, type[Record]] = {
    "mount": Mount,
    "telescope": Telescope,
    "camera": Camera,
    "guider": Guider,
    "eyepiece": Eyepiece,
    "accessory": Accessory,
    "counterweight": Counterweight,
}
_NAMES = {kind: name for name, kind in KINDS.items()}
_LONGEST_TEXT = 10_000
_LARGEST = 1e300

Thing = TypeVar("Thing", Record, EquipmentSet)


def to_object(record: Record) -> dict[str, Any]:
    """A JSON object, `what` telling the kind; unknown figures are null, foreign fields as read."""
    return {"what": _NAMES[type(record)], **_values(record)}


def set_to_object(chosen: EquipmentSet) -> dict[str, Any]:
    """As `to_object`, for a set."""
    return _values(chosen)


def from_object(given: Any) -> Record:
    """The record of a JSON object. Raises `ImpossibleValue`; unknown fields go to `other`."""
    if not isinstance(given, dict):
        raise ImpossibleValue(say("An entry is not a group of fields in braces."))
    kind = KINDS.get(given["what"]) if isinstance(given.get("what"), str) else None
    if kind is None:
        raise ImpossibleValue(
            say(
                "{thing} does not say what it is; “what” is one of {kinds}.",
                thing=_named(given),
                kinds=", ".join(KINDS),
            )
        )
    return _build(kind, {name: value for name, value in given.items() if name != "what"})


def set_from_object(given: Any) -> EquipmentSet:
    """As `from_object`, for a set."""
    if not isinstance(given, dict):
        raise ImpossibleValue(say("A set is not a group of fields in braces."))
    return _build(EquipmentSet, given)


def _values(thing: Record | EquipmentSet) -> dict[str, Any]:
    own = {one.name: _plain(getattr(thing, one.name)) for one in fields(thing)}
    foreign = own.pop("other")
    return {**own, **foreign}


def _plain(value: Any) -> Any:
    if isinstance(value, Enum):
        return value.value
    return list(value) if isinstance(value, tuple) else value


def _build(kind: type[Thing], given: dict[str, Any]) -> Thing:
    hints = get_type_hints(kind)
    known = {one.name for one in fields(kind)} - {"other"}
    arguments: dict[str, Any] = {"other": {n: v for n, v in given.items() if n not in known}}
    for name in known & given.keys():
        try:
            arguments[name] = _typed(given[name], hints[name])
        except ValueError as reason:
            label = _label(kind, name)
            raise ImpossibleValue(
                say("{label} of {thing} {reason}.", label=label, thing=_named(given), reason=reason)
            ) from None
    lacking = [name for name in _required(kind) if name not in arguments]
    if lacking:
        raise ImpossibleValue(
            say("{thing} has no “{field}”.", thing=_named(given), field=lacking[0])
        )
    return kind(**arguments)


def _required(kind: type[Thing]) -> list[str]:
    return [
        one.name
        for one in fields(kind)
        if one.default is MISSING and one.default_factory is MISSING
    ]


def _label(kind: type[Thing], name: str) -> str:
    figures = quantities(kind)
    return say(figures[name].label) if name in figures else f"“{name}”"


def _named(given: dict[str, Any]) -> str:
    name = given.get("name")
    return (
        f"“{name[:60]}”"
        if isinstance(name, str) and name.strip()
        else say("An entry without a name")
    )


def _typed(value: Any, hint: Any) -> Any:
    """The value as the hint wants it; ValueError with the rest of a sentence if it is not."""
    options = get_args(hint) if get_origin(hint) in (Union, types.UnionType) else (hint,)
    if value is None and type(None) in options:
        return None
    wanted = next(one for one in options if one is not type(None))
    if get_origin(wanted) is tuple:
        return _texts(value)
    if isinstance(wanted, type) and issubclass(wanted, Enum):
        return _choice(value, wanted)
    return _scalar(value, wanted)


def _scalar(value: Any, wanted: Any) -> Any:
    is_number = isinstance(value, int | float) and not isinstance(value, bool)
    is_number = is_number and abs(value) < _LARGEST
    if wanted is float and is_number:
        return float(value)
    if wanted is int and is_number and value == int(value):
        return int(value)
    if wanted is bool and isinstance(value, bool):
        return value
    if wanted is str and isinstance(value, str) and len(value) <= _LONGEST_TEXT:
        return value
    names = {
        float: say("a number"),
        int: say("a whole number"),
        bool: say("true or false"),
        str: say("a text"),
    }
    raise ValueError(say("should be {what}", what=names[wanted]))


def _choice(value: Any, wanted: type[Enum]) -> Enum:
    for one in wanted:
        if one.value == value:
            return one
    raise ValueError(
        say("should be one of {choices}", choices=", ".join(str(one.value) for one in wanted))
    )


def _texts(value: Any) -> tuple[str, ...]:
    if not isinstance(value, list) or not all(isinstance(one, str) for one in value):
        raise ValueError(say("should be a list of texts in brackets"))
    return tuple(value)


FORMAT, VERSION = "poleward equipment", 1
MAX_BYTES = 20_000_000


class UnusableEquipment(ValueError):
    """Nothing can be made of a file; the text is a sentence for the person."""


@dataclass(frozen=True)
class EquipmentRead:
    """What a file held. `rejected`: entries left out, `notes`: things kept but not understood."""

    inventory: Inventory
    rejected: tuple[str, ...]
    notes: tuple[str, ...]


def write(inventory: Inventory) -> str:
    """The file's text; reading it gives the same inventory."""
    whole = {
        "format": FORMAT,
        "version": VERSION,
        "equipment": [to_object(one) for one in inventory.records],
        "sets": [set_to_object(one) for one in inventory.sets],
        **inventory.other,
    }
    return json.dumps(whole, indent=2, ensure_ascii=False, allow_nan=False) + "\n"


def read(data: bytes) -> EquipmentRead:
    """Read a file's bytes. Raises `UnusableEquipment` with a sentence."""
    whole = _envelope(_parsed(data))
    rejected: list[str] = []
    keys: set[str] = set()
    records = _entries(whole, "equipment", from_object, keys, rejected)
    sets = _entries(whole, "sets", set_from_object, keys, rejected)
    known = ("format", "version", "equipment", "sets")
    other = {name: value for name, value in whole.items() if name not in known}
    inventory = Inventory(tuple(records), tuple(sets), other)
    return EquipmentRead(inventory, tuple(rejected), tuple(_notes(inventory)))


def _parsed(data: bytes) -> Any:
    if len(data) > MAX_BYTES:
        raise UnusableEquipment(
            say(
                "The file has {megabytes:.0f} MB; equipment files are far smaller. Choose the "
                "file that was exported here.",
                megabytes=len(data) / 1000000.0,
            )
        )
    try:
        whole = json.loads(
            data.decode("utf-8-sig"),
            object_pairs_hook=_no_doubles,
            parse_constant=_no_constant,
            parse_float=_finite,
        )
        json.dumps(whole, ensure_ascii=False).encode("utf-8")  # what is read can be written again
        return whole
    except UnicodeError:
        reason = say("it is not text, or holds broken characters")
    except json.JSONDecodeError as error:
        reason = say("line {line} is not JSON ({fault})", line=error.lineno, fault=error.msg)
    except RecursionError:
        reason = say("it is nested too deeply")
    except ImpossibleValue as error:
        reason = str(error)
    except ValueError:
        reason = say("it holds a number too long to read")
    raise UnusableEquipment(
        say("The equipment file cannot be read: {reason}. Nothing was changed.", reason=reason)
    )


def _no_doubles(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    found = dict(pairs)
    if len(found) < len(pairs):
        names = [name for name, _ in pairs]
        double = next(name for name in names if names.count(name) > 1)
        raise ImpossibleValue(say("“{name}” stands twice in one group", name=double[:60]))
    return found


def _finite(text: str) -> float:
    value = float(text)
    if not math.isfinite(value):
        raise ImpossibleValue(say("{number} is too large a number", number=text[:30]))
    return value


def _no_constant(name: str) -> Any:
    raise ImpossibleValue(say("{name} is not a number that can be used", name=name))


def _envelope(whole: Any) -> dict[str, Any]:
    if not isinstance(whole, dict) or whole.get("format") != FORMAT:
        raise UnusableEquipment(
            say(
                "The file does not begin as an equipment file (“format”: “{form}”). Choose one "
                "that was exported here. Nothing was changed.",
                form=FORMAT,
            )
        )
    version = whole.get("version")
    if not isinstance(version, int) or isinstance(version, bool) or version < 1:
        raise UnusableEquipment(
            say("The equipment file does not say its version. Nothing was changed.")
        )
    if version > VERSION:
        raise UnusableEquipment(
            say(
                "The equipment file is of version {version}; this program reads version "
                "{known_version}. Read it with the newer program, or export it there in the "
                "older form.",
                version=version,
                known_version=VERSION,
            )
        )
    return whole


def _entries(
    whole: dict[str, Any],
    name: str,
    build: Callable[[Any], Thing],
    keys: set[str],
    rejected: list[str],
) -> list[Thing]:
    given = whole.get(name, [])
    if not isinstance(given, list):
        raise UnusableEquipment(
            say("“{name}” in the equipment file is not a list; nothing was read.", name=name)
        )
    found = []
    for number, entry in enumerate(given, 1):
        try:
            one = build(entry)
            if one.key in keys:
                raise ImpossibleValue(
                    say("“{name}” has the key {key}, which is taken.", name=one.name, key=one.key)
                )
        except ImpossibleValue as reason:
            rejected.append(
                say(
                    "Entry {number} of “{name}” is left out: {reason}",
                    number=number,
                    name=name,
                    reason=reason,
                )
            )
            continue
        keys.add(one.key)
        found.append(one)
    return found


def _notes(inventory: Inventory) -> list[str]:
    notes = [
        say(
            "“{name}” has fields this program does not know, kept as they are: {fields}.",
            name=one.name,
            fields=", ".join(one.other),
        )
        for one in inventory.things()
        if one.other
    ]
    if inventory.other:
        notes.append(
            say(
                "The file has parts not known here, kept: {parts}.",
                parts=", ".join(inventory.other),
            )
        )
    for chosen in inventory.sets:
        missing = inventory.missing_from(chosen)
        if missing:
            notes.append(
                say(
                    "The set “{name}” names things not there: {missing}.",
                    name=chosen.name,
                    missing=", ".join(missing),
                )
            )
    return notes
