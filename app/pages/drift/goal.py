"""What the person is after: which pole, and how small the ± should become."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from app.widgets.aimchoice import AimChoice
from app.widgets.choice import Choice
from app.widgets.key import Key
from app.widgets.text import Panel, Text
from core.alignment.advice import aim_sentence
from core.alignment.guide.goal import Origin

if TYPE_CHECKING:
    from app.session.snapshot import Snapshot

TARGETS = ("0.5", "1", "2", "5")


class Goal(Panel):
    """`aim_chosen` carries an Aim, `target_chosen` minutes of arc; `target_cleared`: the budget's
    figure, or the usual one, is to hold again.
    """

    aim_chosen = Signal(object)
    target_chosen = Signal(float)
    target_cleared = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("Goal"), parent)
        self._aims = AimChoice(self.tr("Aim"), self.tr("Between them"))
        self._why = Text("", "small")
        self._targets = Choice(self.tr("Your own goal"), [(step, f"{step}′") for step in TARGETS])
        self._aims.aim_chosen.connect(self.aim_chosen)
        self._from = Text("", "small")
        self._clear = Key(self.tr("Follow tonight’s budget"))
        self._clear.clicked.connect(self.target_cleared)
        self._targets.chosen.connect(lambda step: self.target_chosen.emit(float(step)))
        self.column.addWidget(Text(self.tr("Align on the"), "small"))
        self.column.addWidget(self._aims)
        self.column.addWidget(self._why)
        self.column.addWidget(Text(self.tr("How near the axis is to come"), "small"))
        self.column.addWidget(self._targets)
        self.column.addWidget(self._from)
        self.column.addWidget(self._clear)

    def show_snapshot(self, snapshot: Snapshot) -> None:
        self._aims.show_aim(snapshot.aim)
        if snapshot.site is not None and snapshot.air is not None:
            self._why.say(aim_sentence(snapshot.aim, snapshot.site, snapshot.air))
        else:
            self._why.say("")
        goal = snapshot.goal
        is_typed = goal.origin is Origin.TYPED
        self._from.say(self.tr("Goal: {goal}").format(goal=goal.sentence))
        self._clear.setVisible(is_typed)
        step = f"{goal.arcmin:g}"
        if is_typed and step in TARGETS:
            self._targets.show_choice(step)
        else:
            self._targets.show_none()

    def aims(self) -> Choice:
        return self._aims

    def origin(self) -> str:
        """Where the figure is from, as shown."""
        return self._from.text()

    def clear_key(self) -> Key:
        return self._clear

    def targets(self) -> Choice:
        return self._targets
