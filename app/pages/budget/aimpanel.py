"""Which pole serves this target best, and which one is aimed at."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from app.widgets.aimchoice import AimChoice
from app.widgets.text import Panel, Text
from core.alignment.aim import Aim
from core.imaging.tolerance import BestAim


class AimPanel(Panel):
    """`aim_chosen` carries an Aim."""

    aim_chosen = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("Where to aim"), parent)
        self.sentence = Text()
        self.aims = AimChoice(self.tr("Aim"), self.tr("Best for this target"))
        self.column.addWidget(self.sentence)
        self.column.addWidget(Text(self.tr("Align on the"), "small"))
        self.column.addWidget(self.aims)
        self.column.addStretch()
        self.aims.aim_chosen.connect(self.aim_chosen)

    def show_aim(self, best: BestAim, aim: Aim) -> None:
        self.sentence.say(best.sentence)
        self.aims.offer(Aim.nearest(best.fraction))
        self.aims.show_aim(aim)
