"""What kind of mount the plan is for."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from app.session.occasion import mount_kind
from app.session.plans import Plans
from app.widgets.choice import Choice
from core.mount.equipment import MountKind


class MountChoice(Choice):
    def __init__(self, plans: Plans, parent: QWidget | None = None) -> None:
        super().__init__("", [], parent)
        words = {
            MountKind.GERMAN_EQUATORIAL: self.tr("German equatorial"),
            MountKind.FORK_ON_WEDGE: self.tr("Fork on a wedge"),
            MountKind.ALT_AZIMUTH: self.tr("Alt-azimuth"),
            MountKind.DOBSONIAN: self.tr("Dobsonian"),
        }
        self.setAccessibleName(self.tr("Mount"))
        for kind, word in words.items():
            self._add(self.tr("Mount"), kind.name, word)
        self._plans = plans
        self.chosen.connect(lambda name: plans.set_word("mount_kind", name))
        self.show_plans()

    def show_plans(self) -> None:
        self.show_choice(mount_kind(self._plans).name)
