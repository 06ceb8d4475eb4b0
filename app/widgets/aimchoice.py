"""Keys for the place the axis is brought to: either pole, or one between them."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from app.widgets.choice import Choice
from core.alignment.aim import Aim

_BETWEEN = "between"
_POLES = (Aim.TRUE_POLE, Aim.REFRACTED_POLE)


class AimChoice(Choice):
    """`aim_chosen` carries an Aim. The key between the poles shows only where there is such an aim:
    the one in force, or one that was offered."""

    aim_chosen = Signal(object)

    def __init__(self, name: str, between: str, parent: QWidget | None = None) -> None:
        """`name`: what is chosen; `between`: the words on the key between the poles."""
        super().__init__(
            name,
            [
                (Aim.TRUE_POLE.name, self.tr("True pole")),
                (Aim.REFRACTED_POLE.name, self.tr("Refracted pole")),
                (_BETWEEN, between),
            ],
            parent,
        )
        self._between: Aim | None = None
        self._show_between()
        self.chosen.connect(self._choose)

    def offer(self, aim: Aim) -> None:
        """Let an aim between the poles be chosen; one of the poles has its own key already."""
        self._between = None if aim in _POLES else aim
        self._show_between()

    def show_aim(self, aim: Aim) -> None:
        """The aim in force."""
        if aim in _POLES:
            self.show_choice(aim.name)
            return
        self.offer(aim)
        self.show_choice(_BETWEEN)

    def _show_between(self) -> None:
        self.button(_BETWEEN).setVisible(self._between is not None)

    def _choose(self, option: str) -> None:
        if option != _BETWEEN:
            self.aim_chosen.emit(Aim[option])
        elif self._between is not None:
            self.aim_chosen.emit(self._between)
