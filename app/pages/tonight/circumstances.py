"""What the person reads off a thermometer or the sky, noted with the night."""

from __future__ import annotations

import math
import re
from collections.abc import Mapping
from typing import Any

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from app.night.plan import (
    BEGIN_NAME,
    COOL_DOWN_NAME,
    GUIDED_NAME,
    Evening,
    begin_utc_s,
    cool_down_min,
    is_guided,
    mount_kind,
    power,
    purpose,
)
from app.ui.form import Amount, Choice, Field, Figure, Key, KeyRow, Named, Tick
from app.ui.text import Columns, Panel, Text
from app.ui.timeline import clock_words
from core.language import marked
from core.mount.equipment import MountKind, Purpose, Quantity, said_unit
from core.night.checklist import Power

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


# What tonight's checklist is made for: purpose, mount, power, guiding, cooling, beginning.

COOL_DOWN = Quantity(marked("Cooling the telescope takes"), marked(" min"), 0.0, 600.0)
DAY_S = 86400.0
_CLOCK = re.compile(r"([01]?\d|2[0-3])[:.h ]?([0-5]\d)")


class CircumstancesForm(Panel):
    """Every choice is kept with the plans of the evening at once."""

    def __init__(self, evening: Evening, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("The checklist is made for"), parent)
        self._evening = evening
        self._choices = {
            "purpose": self._choice(self.tr("Purpose"), self._purposes(), "purpose"),
            "mount_kind": self._choice(self.tr("Mount"), self._mounts(), "mount_kind"),
            "power": self._choice(self.tr("Power"), self._powers(), "power"),
        }
        self._guided = Tick(self.tr("Guided"), self.tr("A guide star is followed"))
        self._cooling = Amount(COOL_DOWN)
        self._begin = Field(self.tr("Target begins at"), self.tr("empty: as soon as it can"))
        self._guided.ticked.connect(self._guided_chosen)
        self._cooling.given.connect(lambda value: evening.plans.set_number(COOL_DOWN_NAME, value))
        self._begin.submitted.connect(self._take_begin)
        self._begin.left.connect(self._take_begin)
        names = (self.tr("Purpose"), self.tr("Mount"), self.tr("Power"))
        for name, choice in zip(names, self._choices.values(), strict=True):
            self.column.addWidget(Named(name, choice))
        self.column.addWidget(KeyRow((self._guided,)))
        self.column.addWidget(Columns((self._cooling, self._begin), 190, are_rows=True))
        self.show_plans()

    def choice(self, name: str) -> Choice:
        return self._choices[name]

    def begin_field(self) -> Field:
        return self._begin

    def show_plans(self) -> None:
        plans = self._evening.plans
        self._choices["purpose"].show_choice(purpose(plans).name)
        self._choices["mount_kind"].show_choice(mount_kind(plans).name)
        self._choices["power"].show_choice(power(plans).name)
        self._guided.show_tick(is_guided(plans))
        self._cooling.show_amount(cool_down_min(plans))
        if not self._begin.line().hasFocus():
            wanted = begin_utc_s(plans)
            past = wanted is None or wanted < self._evening.now() - DAY_S
            shown = "" if past or wanted is None else clock_words(self._evening.zone(), wanted)
            self._begin.show_text(shown)

    def _purposes(self) -> dict[str, str]:
        return {
            Purpose.OBSERVING.name: self.tr("Observing"),
            Purpose.PLANETARY.name: self.tr("Planets"),
            Purpose.DEEP_SKY.name: self.tr("Deep sky, camera"),
        }

    def _mounts(self) -> dict[str, str]:
        return {
            MountKind.GERMAN_EQUATORIAL.name: self.tr("German equatorial"),
            MountKind.FORK_ON_WEDGE.name: self.tr("Fork on a wedge"),
            MountKind.ALT_AZIMUTH.name: self.tr("Alt-azimuth"),
            MountKind.DOBSONIAN.name: self.tr("Dobsonian"),
        }

    def _powers(self) -> dict[str, str]:
        return {Power.BATTERY.name: self.tr("Battery"), Power.MAINS.name: self.tr("Mains")}

    def _choice(self, name: str, options: Mapping[str, str], key: str) -> Choice:
        choice = Choice(name, list(options.items()))
        choice.chosen.connect(lambda option: self._evening.plans.set_word(key, option))
        return choice

    def _guided_chosen(self, is_guided: bool) -> None:
        self._evening.plans.set_word(GUIDED_NAME, "yes" if is_guided else "no")

    def _take_begin(self) -> None:
        """The next such time on the clock of the place, from the last noon or so on."""
        text = self._begin.text()
        if not text:
            self._begin.note("")
            self._evening.plans.set_number(BEGIN_NAME, math.nan)
            return
        typed = _CLOCK.fullmatch(text)
        if typed is None:
            self._begin.complain(self.tr("Write it like 22:30."))
            return
        zone, now = self._evening.zone(), self._evening.now()
        here = zone.civil(now).replace(
            hour=int(typed[1]), minute=int(typed[2]), second=0, microsecond=0
        )
        utc_s = here.timestamp()
        if utc_s < now - DAY_S / 2.0:
            utc_s += DAY_S
        self._begin.note("")
        self._evening.plans.set_number(BEGIN_NAME, utc_s)
