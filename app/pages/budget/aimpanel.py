"""Which pole serves this target best, and which one is aimed at."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from app.widgets.choice import Choice
from app.widgets.text import Panel, Text
from core.alignment.aim import Aim
from core.alignment.budget import BestAim


class AimPanel(Panel):
    """`aim_chosen` carries an Aim."""

    aim_chosen = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("Where to aim"), parent)
        self.sentence = Text()
        self.aims = Choice(
            self.tr("Aim"),
            [
                (Aim.TRUE_POLE.name, self.tr("True pole")),
                (Aim.REFRACTED_POLE.name, self.tr("Refracted pole")),
            ],
        )
        self.column.addWidget(self.sentence)
        self.column.addWidget(Text(self.tr("Align on the"), "small"))
        self.column.addWidget(self.aims)
        self.column.addStretch()
        self.aims.chosen.connect(lambda name: self.aim_chosen.emit(Aim[name]))

    def show_aim(self, best: BestAim, aim: Aim) -> None:
        self.sentence.say(best.sentence)
        self.aims.show_choice(aim.name)
