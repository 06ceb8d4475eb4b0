"""The two bolts of the practice mount."""

from __future__ import annotations

import math

from PySide6.QtCore import Signal, SignalInstance
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from app.pages.drift.offset import UnusableNumber, parse_size
from app.widgets.choice import Choice
from app.widgets.field import Field
from app.widgets.flow import Flow
from app.widgets.key import Key
from app.widgets.text import Text
from core.alignment.drift.geometry import hemisphere_sign

STEPS = ("1", "5", "20")


class Bolts(QWidget):
    """`azimuth_turned`: arcmin toward greater azimuth. `altitude_turned`: arcmin upward."""

    azimuth_turned = Signal(float)
    altitude_turned = Signal(float)

    def __init__(self, latitude_deg: float, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        # The elevated end of the axis lies in the north or in the south: east is greater azimuth
        # in the one case and smaller in the other.
        east = hemisphere_sign(math.radians(latitude_deg))
        self._amount = Field(self.tr("Turn by, in ′"), has_name_above=False)
        self._amount.show_text(STEPS[1])
        self._steps = Choice(self.tr("Turn by"), [(step, f"{step}′") for step in STEPS])
        self._steps.show_choice(STEPS[1])
        self._steps.chosen.connect(self._amount.show_text)
        self._buttons = {
            "east": self._button(self.tr("Turn east"), self.azimuth_turned, east),
            "west": self._button(self.tr("Turn west"), self.azimuth_turned, -east),
            "raise": self._button(self.tr("Raise"), self.altitude_turned, 1.0),
            "lower": self._button(self.tr("Lower"), self.altitude_turned, -1.0),
        }
        self._arrange()

    def _arrange(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 8, 0, 8)
        column.addWidget(
            Text(self.tr("Turn the bolts by so many ′; say “turned” when both are done"), "small")
        )
        amount = QHBoxLayout()
        amount.addWidget(self._steps)
        amount.addWidget(self._amount, 1)
        column.addLayout(amount)
        turns = QWidget()
        keys = Flow(turns)
        for button in self._buttons.values():
            keys.addWidget(button)
        column.addWidget(turns)

    def _button(self, words: str, turned: SignalInstance, sign: float) -> Key:
        button = Key(words)
        button.clicked.connect(lambda: self._turn(turned, sign))
        return button

    def _turn(self, turned: SignalInstance, sign: float) -> None:
        try:
            arcmin = parse_size(self._amount.text(), self.tr("amount"))
        except UnusableNumber as problem:
            self._amount.complain(str(problem))
            return
        self._amount.note("")
        turned.emit(sign * arcmin)

    def amount(self) -> Field:
        return self._amount

    def button(self, key: str) -> Key:
        """One of east, west, raise, lower."""
        return self._buttons[key]
