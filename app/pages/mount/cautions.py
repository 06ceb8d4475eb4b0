"""Cautions where loads are handled: the shortest form never leaves the screen."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from app.widgets.text import Panel, Text
from core.language import say
from core.mount import payload


class ShortCaution(Panel):
    """The few words that must not be missed."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self.setAccessibleName(self.tr("Caution"))
        self.words = Text(
            self.tr(
                "Caution: axes locked. Counterweight on first and off last, toe stop in. "
                "Fingers clear. Lift with two people."
            ),
            "alarm",
        )
        self.column.addWidget(self.words)


class Cautions(Panel):
    """All of them, in the order in which things are done."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("Handling the load"), parent)
        self.column.addWidget(Text(say(payload.FIRST)))
        for title, lines in (
            (self.tr("Putting on"), payload.PUTTING_ON),
            (self.tr("Balancing"), payload.BALANCING),
            (self.tr("Taking off"), payload.TAKING_OFF),
            (self.tr("Lifting"), payload.LIFTING),
        ):
            self.column.addWidget(Text(title, "title"))
            numbered = (f"{n}.  {say(one)}" for n, one in enumerate(lines, 1))
            self.column.addWidget(Text("\n".join(numbered)))
        self.column.addWidget(Text(self.tr("Common practice, no source."), "small"))
        self.column.addStretch()
