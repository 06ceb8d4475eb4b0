"""The shortest form: one drift, told in a sentence."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.drift.offset import parse_size
from app.sources.shortest import SingleDrift
from app.widgets.choice import Choice
from app.widgets.field import Field
from app.widgets.key import Key
from app.widgets.text import Text
from core.sky.clocks import parse_utc

NORTH, SOUTH = "north", "south"
NOW, AT = "now", "at"


class SingleDriftForm(QWidget):
    """“It moved so many ″ north in so many minutes, ending now.” `given` carries a SingleDrift."""

    given = Signal(object)
    cancelled = Signal()

    def __init__(self, now: Callable[[], float], parent: QWidget | None = None) -> None:
        """`now`: seconds since 1970-01-01 UTC."""
        super().__init__(parent)
        self._now = now
        self._star = Text("", "title")
        self._moved = Field(self.tr("It moved, in ″"), "12")
        self._side = Choice(
            self.tr("To the"), [(NORTH, self.tr("North")), (SOUTH, self.tr("South"))]
        )
        self._minutes = Field(self.tr("In so many minutes"), "5")
        self._when = Choice(
            self.tr("Ending"), [(NOW, self.tr("Ending now")), (AT, self.tr("At a UTC time"))]
        )
        self._utc = Field(self.tr("Date and time, UTC"), "2026-09-21 21:14:00")
        self._error = Field(self.tr("Reading error, in ″ (one standard deviation)"))
        self._wrong = Text("", "alarm")
        self._add = Key(self.tr("Work it out"))
        self._back = Key(self.tr("Another star"))
        self._arrange()

    def _arrange(self) -> None:
        self._error.show_text("1")
        self._side.show_choice(NORTH)
        self._when.show_choice(NOW)
        self._add.setProperty("kind", "primary")
        self._add.clicked.connect(self.submit)
        self._back.clicked.connect(self.cancelled)
        self._when.chosen.connect(lambda when: self._utc.setVisible(when == AT))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        asked = (self._moved, self._side, self._minutes, self._when, self._utc, self._error)
        for part in (self._star, *asked, self._wrong, self._add, self._back):
            column.addWidget(part)
        for hidden in (self._utc, self._wrong):
            hidden.hide()
        for field in (self._moved, self._minutes, self._utc, self._error):
            field.submitted.connect(self.submit)

    def begin(self, star: str) -> None:
        self._star.setText(star)
        self._moved.setFocus()

    def submit(self) -> None:
        try:
            drift = self._drift()
        except ValueError as problem:
            self._wrong.say(str(problem))
            return
        self._wrong.say("")
        self.given.emit(drift)

    def _drift(self) -> SingleDrift:
        size = parse_size(self._moved.text(), self.tr("movement"))
        minutes = parse_size(self._minutes.text(), self.tr("number of minutes"))
        error = parse_size(self._error.text(), self.tr("reading error"))
        ending = self._now() if self._when.choice() == NOW else parse_utc(self._utc.text())
        return SingleDrift(size if self._side.choice() == NORTH else -size, minutes, ending, error)

    def fields(self) -> dict[str, Field]:
        return {
            "moved": self._moved,
            "minutes": self._minutes,
            "utc": self._utc,
            "error": self._error,
        }

    def star(self) -> str:
        return self._star.text()

    def side(self) -> Choice:
        return self._side

    def when(self) -> Choice:
        return self._when

    def wrong(self) -> str:
        return self._wrong.text()
