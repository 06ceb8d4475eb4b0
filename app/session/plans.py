"""What the person plans for tonight: the target, the kind of mount, the figures for both."""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import Any

from PySide6.QtCore import QObject, Signal

from app.session.places import Settings
from core.sky.bodies import Body
from core.sky.targets import Target

KEY = "plans"
VERSION = 1


class Plans(QObject):
    """Kept among the settings at every change. `changed` follows each."""

    changed = Signal()

    def __init__(
        self,
        settings: Settings,
        known: Callable[[str], float | str | None] | None = None,
        parent: QObject | None = None,
    ) -> None:
        """`known`: what is known of a figure from elsewhere while the person has not given it."""
        super().__init__(parent)
        self._settings = settings
        self._known = known
        kept = settings.get_setting(KEY)
        usable = isinstance(kept, dict) and kept.get("version") == VERSION
        self._kept: dict[str, Any] = dict(kept) if usable else {"version": VERSION}
        self._target = _target(self._kept.get("target"))

    def target(self) -> Target | None:
        return self._target

    def set_target(self, target: Target) -> None:
        if target == self._target:
            return
        self._target = target
        self._keep("target", _entry(target))

    def number(self, name: str, usual: float) -> float:
        """`usual` until the person has given one; NaN where it was left open."""
        value = self._value(name, usual)
        if value is None:
            return math.nan
        return float(value) if isinstance(value, int | float) else usual

    def set_number(self, name: str, value: float) -> None:
        self._keep(name, None if math.isnan(value) else value)

    def word(self, name: str, usual: str) -> str:
        value = self._value(name, usual)
        return value if isinstance(value, str) else usual

    def set_word(self, name: str, value: str) -> None:
        self._keep(name, value)

    def _value(self, name: str, usual: Any) -> Any:
        if name in self._kept:
            return self._kept[name]
        known = None if self._known is None else self._known(name)
        return usual if known is None else known

    def _keep(self, name: str, value: Any) -> None:
        if name in self._kept and self._kept[name] == value:
            return
        self._kept[name] = value
        self._settings.put_setting(KEY, dict(self._kept))
        self.changed.emit()


def _entry(target: Target) -> dict[str, Any]:
    fixed = target.body is None
    return {
        "name": target.name,
        "kind": target.kind,
        "ra_deg": target.ra_deg if fixed else None,
        "dec_deg": target.dec_deg if fixed else None,
        "magnitude": target.magnitude,
        "size_arcmin": target.size_arcmin,
        "body": None if target.body is None else target.body.value,
    }


def _target(entry: Any) -> Target | None:
    """None for what this version cannot read."""
    try:
        if entry["body"] is not None:
            body = Body(entry["body"])
            return Target(str(entry["name"]), str(entry["kind"]), math.nan, math.nan, body=body)
        place = float(entry["ra_deg"]), float(entry["dec_deg"])
        sizes = (_size(entry["magnitude"]), _size(entry["size_arcmin"]))
        return Target(str(entry["name"]), str(entry["kind"]), *place, *sizes)
    except (KeyError, TypeError, ValueError):
        return None


def _size(value: Any) -> float | None:
    return None if value is None else float(value)
