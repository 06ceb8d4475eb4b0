"""How much sky the person sees while a star drifts: typed and kept, else from the equipment."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QObject, Signal

from app.session.equipment import Equipment
from app.session.places import Settings
from core.imaging.sampling import (
    LEAST_ARCMIN,
    MOST_ARCMIN,
    SeenField,
    assumed_field,
    field_of,
    typed_field,
)

KEY = "field in view"
VERSION = 1


class FieldInView(QObject):
    """`changed` follows what the person types and what the equipment says."""

    changed = Signal()

    def __init__(
        self, settings: Settings, equipment: Equipment | None = None, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._settings = settings
        self._equipment = equipment
        self._typed_arcmin = _read(settings.get_setting(KEY))
        if equipment is not None:
            equipment.changed.connect(self.changed)

    @property
    def typed_arcmin(self) -> float | None:
        """None while the person has typed nothing."""
        return self._typed_arcmin

    def type(self, across_arcmin: float | None) -> None:
        """None: go by the equipment again."""
        self._typed_arcmin = across_arcmin
        self._settings.put_setting(KEY, {"version": VERSION, "across_arcmin": across_arcmin})
        self.changed.emit()

    def now(self) -> SeenField:
        """What holds at present."""
        if self._typed_arcmin is not None:
            return typed_field(self._typed_arcmin)
        return self._of_equipment() or assumed_field()

    def _of_equipment(self) -> SeenField | None:
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
