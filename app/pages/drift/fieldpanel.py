"""How much sky is in view, for the warning that the star leaves it."""

from __future__ import annotations

import math

from PySide6.QtWidgets import QWidget

from app.session.fieldinview import FieldInView
from app.widgets.amount import Amount
from app.widgets.text import Panel, Text
from core.imaging.sampling import LEAST_ARCMIN, MOST_ARCMIN
from core.mount.equipment import Quantity


class FieldPanel(Panel):
    def __init__(self, field: FieldInView, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("Field in view"), parent)
        self._field = field
        bounds = Quantity(self.tr("The shorter way across"), "′", LEAST_ARCMIN, MOST_ARCMIN)
        self._across = Amount(bounds, when_empty=self.tr("from the equipment"))
        self._said = Text("", "small")
        self._across.given.connect(self._give)
        field.changed.connect(self._show)
        self.column.addWidget(self._across)
        self.column.addWidget(self._said)
        self._show()

    def across(self) -> Amount:
        return self._across

    def said(self) -> str:
        return self._said.text()

    def _give(self, across_arcmin: float) -> None:
        self._field.type(None if math.isnan(across_arcmin) else across_arcmin)

    def _show(self) -> None:
        typed = self._field.typed_arcmin
        self._across.show_amount(math.nan if typed is None else typed)
        self._said.say(self._field.now().sentence)
