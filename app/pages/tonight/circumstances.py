"""What tonight's checklist is made for: purpose, mount, power, guiding, cooling, beginning."""

from __future__ import annotations

import math
import re
from collections.abc import Mapping

from PySide6.QtWidgets import QWidget

from app.session.evening import Evening
from app.session.occasion import (
    BEGIN_NAME,
    COOL_DOWN_NAME,
    GUIDED_NAME,
    begin_utc_s,
    cool_down_min,
    is_guided,
    mount_kind,
    power,
    purpose,
)
from app.widgets.amount import Amount
from app.widgets.choice import Choice
from app.widgets.columns import Columns
from app.widgets.field import Field
from app.widgets.keyrow import KeyRow
from app.widgets.named import Named
from app.widgets.nightpicture import clock_words
from app.widgets.text import Panel
from app.widgets.tick import Tick
from core.language import marked
from core.mount.equipment import MountKind, Purpose, Quantity
from core.night.checklist import Power

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
