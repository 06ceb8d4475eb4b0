"""One night of the log, opened: what it came to, its legs, notes, and ways to carry it out."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.log.again import SolveAgain
from app.pages.log.notes import Notes
from app.pages.log.opened import Opened
from app.pages.log.words import leg_row, reached, title
from app.session.nightfiles import Form
from app.theme.theme import Theme
from app.widgets.facts import Fact, Facts
from app.widgets.key import Key
from app.widgets.keyrow import KeyRow
from app.widgets.rows import Rows
from app.widgets.text import Panel, Text
from core.alignment.priors import Priors
from core.sky.clocks import Zone


class NightSheet(QWidget):
    """`export_wanted` carries a Form."""

    export_wanted = Signal(object)

    def __init__(
        self, theme: Theme, priors: Callable[[], Priors], parent: QWidget | None = None
    ) -> None:
        """`priors`: what is granted of reticle, tube and drive when legs are solved again."""
        super().__init__(parent)
        self._shown: int | None = None
        self._title = Text("", "title")
        self._facts = Facts(
            self.tr("The night"), (self.tr("Alignment"), self.tr("Time"), self.tr("Bolts"))
        )
        heads = (
            self.tr("Leg"),
            self.tr("Alignment"),
            self.tr("Begun"),
            self.tr("Minutes"),
            self.tr("Readings"),
            self.tr("Drift ″/min"),
        )
        self._legs = Rows(self.tr("Legs"), heads)
        self._no_legs = Text(self.tr("No star was watched in this night."), "quiet")
        self.again = SolveAgain(priors)
        self.notes = Notes(theme)
        self._keys = {form: Key(words) for form, words in self._forms().items()}
        for form, key in self._keys.items():
            key.clicked.connect(lambda _down, form=form: self.export_wanted.emit(form))
        self._arrange()

    def _forms(self) -> dict[Form, str]:
        return {
            Form.HTML: self.tr("Report, HTML"),
            Form.PDF: self.tr("Report, PDF"),
            Form.CSV: self.tr("Drift logs, CSV"),
            Form.JSON: self.tr("Everything, JSON"),
        }

    def _arrange(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(12)
        legs = Panel(self.tr("Legs"))
        legs.column.addWidget(self._legs)
        legs.column.addWidget(self._no_legs)
        carry = Panel(self.tr("Carry this night out"))
        carry.column.addWidget(KeyRow(list(self._keys.values())))
        self._parts_of = (self._title, self._facts, legs, self.notes, self.again, carry)
        for part in self._parts_of:
            column.addWidget(part)
        column.addStretch()

    def undressed(self) -> list[Callable[[], None]]:
        """A step for each part, to be done before one is shown: the first time takes its time."""
        return [partial(_polish, part) for part in self._parts_of]

    def shows(self, night: int) -> bool:
        """Whether it is this night that is open, by its key."""
        return night == self._shown

    def title(self) -> str:
        return self._title.text()

    def facts(self) -> Facts:
        return self._facts

    def leg_rows(self) -> list[tuple[str, ...]]:
        return self._legs.rows()

    def export_button(self, form: Form) -> Key:
        return self._keys[form]

    def stop(self) -> None:
        self.again.stop()

    def show_night(self, shown: Opened, zone: Zone) -> None:
        night = shown.night
        self._shown = night.key
        place = "" if night.site is None else night.site.name
        self._title.say(title(night.started_utc_s, place, zone))
        self._facts.show_facts([Fact(*one) for one in reached(night)])
        rows = [
            leg_row(leg, shown.drifts[leg.key], number, zone)
            for number, state in enumerate(night.axis_states, 1)
            for leg in state.legs
        ]
        self._legs.show_rows(rows)
        self._legs.setVisible(bool(rows))
        self._no_legs.setVisible(not rows)
        self.notes.show_night(night, shown.pictures, zone)
        self.again.show_night(night)


def _polish(part: QWidget) -> None:
    part.ensurePolished()
    for one in part.findChildren(QWidget):
        one.ensurePolished()
