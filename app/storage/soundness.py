"""Whether a row from a damaged or foreign file is one the program could have written."""

from __future__ import annotations

import json
import math
from collections.abc import Callable, Mapping
from dataclasses import fields
from typing import Any

from core.night.record import Purpose
from core.sky.site import Air, Site

Row = tuple[Any, ...]


class _Unsound(ValueError):
    """The row is none of ours."""


def sound(table: str, row: Row) -> Row | None:
    """The row with a column for each of the table's, repaired where that loses little, or None.

    A site or air that cannot be read is taken as never said; the rest of the row stays.
    """
    checks = _CHECKS[table]
    if table == "legs" and len(row) == len(checks) - 1:
        row = (*row, Purpose.ALIGNMENT.value)  # written before legs had a purpose
    if len(row) != len(checks):
        return None
    try:
        return tuple(check(value) for check, value in zip(checks, row, strict=True))
    except _Unsound:
        return None


def _key(value: Any) -> int:
    if isinstance(value, bool) or not isinstance(value, int) or not 0 <= value < 2**63:
        raise _Unsound
    return value


def _number(value: Any) -> float:
    if isinstance(value, bool) or not isinstance(value, (int, float)) or not math.isfinite(value):
        raise _Unsound
    return float(value)


def _number_or_none(value: Any) -> float | None:
    return None if value is None else _number(value)


def _text(value: Any) -> str:
    if not isinstance(value, str):
        raise _Unsound
    return value


def _text_or_none(value: Any) -> str | None:
    return value if isinstance(value, str) else None


def _json(value: Any) -> str:
    try:
        json.loads(_text(value))
    except ValueError as error:
        raise _Unsound from error
    return _text(value)


def _object(value: Any) -> str:
    if not isinstance(json.loads(_json(value)), dict):
        raise _Unsound
    return _text(value)


def _bytes_or_none(value: Any) -> bytes | None:
    return value if isinstance(value, bytes) else None


def _record_or_none(kind: type[Site] | type[Air]) -> Callable[[Any], str | None]:
    known = {field.name for field in fields(kind)}

    def check(value: Any) -> str | None:
        try:
            given = json.loads(_text(value))
            kind(**{name: one for name, one in given.items() if name in known})
        except (ValueError, TypeError, AttributeError):
            return None
        return _text(value)

    return check


_CHECKS: Mapping[str, tuple[Callable[[Any], Any], ...]] = {
    "nights": (
        *(_key, _number, _number),
        *(_record_or_none(Site), _record_or_none(Air), _text_or_none, _number_or_none),
    ),
    "axis_states": (_key, _key, _key, _number),
    "legs": (
        *(_key, _key, _key, _text, _text, _number, _number),
        *(_number, _number_or_none, _key, _text),
    ),
    "samples": (_key, _key, _number, _number, _number_or_none, _number_or_none),
    "entries": (_key, _key, _text, _number, _object, _bytes_or_none),
    "settings": (_text, _json),
}
