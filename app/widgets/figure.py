"""A line for one figure: its name and unit above, what is wrong with it below."""

from __future__ import annotations

import re

from PySide6.QtWidgets import QWidget

from app.widgets.field import Field
from core.mount.quantities import Quantity

# Signs too small to be read by themselves.
UNITS = {
    "″": "arcseconds",
    "′": "arcminutes",
    "°": "degrees",
    "°/s": "degrees a second",
    "′/turn": "arcminutes a turn",
}
_NUMBER = re.compile(r"[+-]?([0-9]{1,9}(\.[0-9]{0,9})?|\.[0-9]{1,9})")


class UnusableFigure(ValueError):
    """The text is a sentence for the person."""


def figure_of(text: str, quantity: Quantity, is_whole: bool = False) -> float | None:
    """The figure typed, unit allowed, comma or point; None when empty. Raises `UnusableFigure`."""
    plain = text.strip().removesuffix(quantity.unit.strip()).strip()
    plain = plain.replace("−", "-").replace(",", ".")
    if not plain:
        return None
    if not _NUMBER.fullmatch(plain):
        raise UnusableFigure(_not_a_number(text.strip(), quantity.unit))
    value = float(plain)
    if is_whole and value != int(value):
        raise UnusableFigure(f"{plain} is not a whole number.")
    if quantity.low > 0.0 >= value:
        raise UnusableFigure(f"It is above zero; {value:g} cannot be.")
    if not quantity.low <= value <= quantity.high:
        raise UnusableFigure(
            f"It lies between {quantity.low:g} and {quantity.high:g}{quantity.unit}."
        )
    return value


def _not_a_number(text: str, unit: str) -> str:
    shown = f"{text[:20]}…" if len(text) > 20 else text
    if text.count(",") + text.count(".") > 1:
        return f"“{shown}” has two marks; write it without thousands."
    return f"“{shown}” is not a number{f' of {unit.strip()}' if unit.strip() else ''}."


def heading(quantity: Quantity) -> str:
    """``Mass, in kg``: what stands above the line."""
    words = quantity.label.removeprefix("The ")
    words = words[:1].upper() + words[1:]
    unit = quantity.unit.strip()
    return f"{words}, in {UNITS.get(unit, unit)}" if unit else words


class Figure(Field):
    """Empty means not known. `hint` says how to find the figure out."""

    def __init__(
        self,
        quantity: Quantity,
        hint: str = "",
        example: str = "",
        name: str = "",
        is_whole: bool = False,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(name or heading(quantity), example, parent=parent)
        self._quantity = quantity
        self._is_whole = is_whole
        self._hint = hint
        self.note(hint)
        self.edited.connect(lambda _text: self.note(self._hint))

    def read(self) -> float | None:
        """The figure; None when there is none, and then `is_wrong` tells whether it was refused."""
        try:
            value = figure_of(self.text(), self._quantity, self._is_whole)
        except UnusableFigure as reason:
            self.complain(str(reason))
            return None
        self.note(self._hint)
        return value

    def show_figure(self, value: float | None) -> None:
        self.show_text("" if value is None else f"{value:.10g}".replace("-", "−"))
        self.note(self._hint)

    def hint(self, sentence: str) -> None:
        """Says something else below, now and until the next hint."""
        self._hint = sentence
        if not self.is_wrong():
            self.note(sentence)
