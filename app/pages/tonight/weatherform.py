"""What the person reads off a thermometer or the sky, noted with the night."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from app.widgets.columns import Columns
from app.widgets.field import Field
from app.widgets.figure import Figure
from app.widgets.key import Key
from app.widgets.text import Panel, Text
from core.language import marked
from core.mount.equipment import Quantity, said_unit

FIGURES = {
    "temperature_c": Quantity(marked("The temperature"), marked(" °C"), -60.0, 55.0),
    "humidity_percent": Quantity(marked("The humidity"), " %", 0.0, 100.0),
    "wind_m_per_s": Quantity(marked("The wind"), marked(" m/s"), 0.0, 60.0),
    "seeing_arcsec": Quantity(marked("The seeing"), " ″", 0.1, 30.0),
}


class WeatherForm(Panel):
    """`noted` carries what was read, by names that end in their units."""

    noted = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("Weather, as you find it"), parent)
        self._figures = {name: Figure(quantity) for name, quantity in FIGURES.items()}
        self._words = Field(self.tr("In words"), self.tr("thin cloud in the west, dew"))
        self._note = Key(self.tr("Note it"))
        self._answer = Text("", "small")
        self._note.clicked.connect(self.submit)
        for line in (*self._figures.values(), self._words):
            line.submitted.connect(self.submit)
        parts = [*self._figures.values()]
        for part in (Columns(parts, 150, are_rows=True), self._words, self._note, self._answer):
            self.column.addWidget(part)
        self._answer.hide()

    def line(self, name: str) -> Figure:
        return self._figures[name]

    def words(self) -> Field:
        return self._words

    def note_button(self) -> Key:
        return self._note

    def answer(self) -> str:
        return self._answer.text()

    def submit(self) -> None:
        read: dict[str, Any] = {name: line.read() for name, line in self._figures.items()}
        wrong = [line for line in self._figures.values() if line.is_wrong()]
        if wrong:
            self._answer.say(self.tr("Not yet: see the dashed fields."))
            wrong[0].setFocus()
            return
        said = {name: value for name, value in read.items() if value is not None}
        if self._words.text():
            said["text"] = self._words.text()
        if not said:
            self._answer.say(self.tr("Nothing is filled in yet."))
            return
        self.noted.emit(said)

    def show_noted(self, said: Mapping[str, Any] | None) -> None:
        """The newest note."""
        if said is None:
            self._answer.say(self.tr("Nothing is noted yet tonight."))
            return
        told = [
            f"{said[name]:g}{said_unit(quantity)}"
            for name, quantity in FIGURES.items()
            if isinstance(said.get(name), int | float)
        ]
        words = said.get("text")
        told += [words] if isinstance(words, str) and words else []
        self._answer.say(self.tr("Noted last: {what}.").format(what=", ".join(told)))
