"""A line for one figure: its name and unit above, what is wrong with it below."""

from __future__ import annotations

import re

from PySide6.QtWidgets import QWidget

from app.widgets.field import Field
from core.language import marked, say
from core.mount.equipment import Quantity, said_unit

# Signs too small to be read by themselves.
UNITS = {
    "″": marked("arcseconds"),
    "′": marked("arcminutes"),
    "°": marked("degrees"),
    "°/s": marked("degrees a second"),
    "′/turn": marked("arcminutes a turn"),
    "″ per g": marked("arcseconds per g"),
}
_NUMBER = re.compile(r"[+-]?([0-9]{1,9}(\.[0-9]{0,9})?|\.[0-9]{1,9})")


class UnusableFigure(ValueError):
    """The text is a sentence for the person."""


def figure_of(text: str, quantity: Quantity, is_whole: bool = False) -> float | None:
    """The figure typed, unit allowed, comma or point; None when empty. Raises `UnusableFigure`."""
    plain = text.strip()
    for unit in (quantity.unit, said_unit(quantity)):
        plain = plain.removesuffix(unit.strip()).strip()
    plain = plain.replace("−", "-").replace(",", ".")
    if not plain:
        return None
    if not _NUMBER.fullmatch(plain):
        raise UnusableFigure(_not_a_number(text.strip(), said_unit(quantity)))
    value = float(plain)
    if is_whole and value != int(value):
        raise UnusableFigure(say("{typed} is not a whole number.", typed=plain))
    if quantity.low > 0.0 >= value:
        raise UnusableFigure(say("It must be above zero; {value:g} is not.", value=value))
    if not quantity.low <= value <= quantity.high:
        raise UnusableFigure(
            say(
                "It lies between {low:g} and {high:g}{unit}.",
                low=quantity.low,
                high=quantity.high,
                unit=said_unit(quantity),
            )
        )
    return value


def _not_a_number(text: str, unit: str) -> str:
    shown = f"{text[:20]}…" if len(text) > 20 else text
    if text.count(",") + text.count(".") > 1:
        return say("“{shown}” has two marks; write it without thousands.", shown=shown)
    if not unit.strip():
        return say("“{shown}” is not a number.", shown=shown)
    return say("“{shown}” is not a number of {unit}.", shown=shown, unit=unit.strip())


def heading(quantity: Quantity) -> str:
    """``Mass, in kg``: what stands above the line."""
    words = say(quantity.label)
    for article in say("The ").split("|"):
        words = words.removeprefix(article)
    words = words[:1].upper() + words[1:]
    unit = quantity.unit.strip()
    if not unit:
        return words
    unit_words = say(UNITS[unit]) if unit in UNITS else said_unit(quantity).strip()
    return say("{quantity}, in {unit}", quantity=words, unit=unit_words)


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
