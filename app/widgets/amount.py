"""A line for a figure that is taken up as it is typed."""

from __future__ import annotations

import math

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from app.widgets.figure import Figure, UnusableFigure, figure_of
from core.mount.equipment import Quantity


class Amount(Figure):
    """`given` fires with each usable figure typed; NaN when the line is cleared and may be empty.

    Complaints wait until the line is left; until then the last figure holds.
    """

    given = Signal(float)

    def __init__(
        self,
        quantity: Quantity,
        hint: str = "",
        when_empty: str = "",
        parent: QWidget | None = None,
    ) -> None:
        """`when_empty`: what stands for an empty line; without it the line must not be empty."""
        super().__init__(quantity, hint, when_empty, parent=parent)
        self._bounds = quantity
        self._may_be_empty = bool(when_empty)
        self.edited.connect(self._edited)
        self.left.connect(self._left)

    def show_amount(self, value: float) -> None:
        """What is in use; a line that says the same already is left as it was typed."""
        shown = self._typed()
        same = shown == value or (shown is not None and math.isnan(shown) and math.isnan(value))
        if not same and not self.line().hasFocus():
            self.show_figure(None if math.isnan(value) else value)

    def _typed(self) -> float | None:
        """NaN for an empty line that may be so; None for what cannot be used."""
        try:
            value = figure_of(self.text(), self._bounds)
        except UnusableFigure:
            return None
        if value is None:
            return math.nan if self._may_be_empty else None
        return value

    def _edited(self) -> None:
        value = self._typed()
        if value is not None:
            self.given.emit(value)

    def _left(self) -> None:
        if self.read() is None and not self.text() and not self._may_be_empty:
            self.complain(self.tr("A figure is needed here; until then the last one holds."))
