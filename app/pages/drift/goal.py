"""What the person is after: which pole, and how small the ± should become."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from app.widgets.aimchoice import AimChoice
from app.widgets.choice import Choice
from app.widgets.text import Panel, Text
from core.alignment.advice import aim_sentence

if TYPE_CHECKING:
    from app.session.snapshot import Snapshot

TARGETS = ("0.5", "1", "2", "5")


class Goal(Panel):
    """`aim_chosen` carries an Aim, `target_chosen` minutes of arc."""

    aim_chosen = Signal(object)
    target_chosen = Signal(float)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("Goal"), parent)
        self._aims = AimChoice(self.tr("Aim"), self.tr("Between them"))
        self._why = Text("", "small")
        self._targets = Choice(self.tr("Until ± is"), [(step, f"{step}′") for step in TARGETS])
        self._aims.aim_chosen.connect(self.aim_chosen)
        self._targets.chosen.connect(lambda step: self.target_chosen.emit(float(step)))
        self.column.addWidget(Text(self.tr("Align on the"), "small"))
        self.column.addWidget(self._aims)
        self.column.addWidget(self._why)
        self.column.addWidget(Text(self.tr("Watch until the ± is"), "small"))
        self.column.addWidget(self._targets)

    def show_snapshot(self, snapshot: Snapshot) -> None:
        self._aims.show_aim(snapshot.aim)
        if snapshot.site is not None and snapshot.air is not None:
            self._why.say(aim_sentence(snapshot.aim, snapshot.site, snapshot.air))
        else:
            self._why.say("")
        step = f"{snapshot.target_arcmin:g}"
        if step in TARGETS:
            self._targets.show_choice(step)

    def aims(self) -> Choice:
        return self._aims

    def targets(self) -> Choice:
        return self._targets
