"""A balance: the sentence that says what to do, a drawing to scale, and the masses in it."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from app.theme.theme import Theme
from app.widgets.beam import Beam
from app.widgets.beamdrawing import BeamDrawing
from app.widgets.text import Panel, Text


class BeamPanel(Panel):
    def __init__(self, theme: Theme, title: str, parent: QWidget | None = None) -> None:
        super().__init__(title, parent)
        self.sentence = Text("", "side")
        self.more = Text("", "quiet")
        self.drawing = BeamDrawing(theme, title)
        self.lines = Text()
        for part in (self.sentence, self.more, self.drawing, self.lines):
            self.column.addWidget(part)

    def show_balance(self, sentence: str, more: str, beam: Beam, lines: list[str]) -> None:
        """Without masses there is nothing to draw."""
        self.sentence.say(sentence)
        self.more.say(more)
        self.drawing.setVisible(bool(beam.blocks))
        self.drawing.show_beam(beam)
        self.lines.say("\n".join(lines))
