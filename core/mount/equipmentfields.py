"""One record as plain JSON values and back, strict about meaning; nothing is dropped silently."""

from __future__ import annotations

import types
from dataclasses import MISSING, fields
from enum import Enum
from typing import Any, TypeVar, Union, get_args, get_origin, get_type_hints

from core.language import say
from core.mount.equipment import (
    Accessory,
    Camera,
    Counterweight,
    Eyepiece,
    Guider,
    Mount,
    Record,
    Telescope,
)
from core.mount.inventory import EquipmentSet
from core.mount.quantities import ImpossibleValue, quantities

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
