"""Solving the legs of a night again: other legs, the other pole, other air."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import partial

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.night.archive import Again, ExportForm, SolvedAgain, solve_again
from app.pages.log.notes import NightNotes, OpenedNight
from app.pages.log.words import leg_row, reached, title
from app.ui.form import Choice, Figure, Key, KeyRow, OptionKeys, Tick
from app.ui.style import Theme
from app.ui.text import AxisVerdict, Columns, Fact, Facts, Panel, Rows, Text, Verdict, VerdictBand
from app.workers.latest import LatestOnly
from core.alignment.goal import Aim
from core.alignment.priors import Priors
from core.alignment.words import constraint_words
from core.language import marked
from core.mount.equipment import Quantity
from core.night.record import LegPurpose, NightRecord, WatchedLeg
from core.sky.clocks import Zone
from core.sky.refraction import standard_pressure_hpa
from core.sky.site import Air

TEMPERATURE = Quantity(marked("The temperature"), marked(" °C"), -60.0, 55.0)
PRESSURE = Quantity(marked("The pressure at the station"), marked(" hPa"), 400.0, 1100.0)


class SolveAgain(Panel):
    """`solved`: an answer is shown. Nothing of the night changes. Call `stop` at the end."""

    solved = Signal()

    def __init__(self, priors: Callable[[], Priors], parent: QWidget | None = None) -> None:
        super().__init__(self.tr("Solve again with other choices"), parent)
        self._priors = priors
        self._night: NightRecord | None = None
        self._legs: list[tuple[WatchedLeg, Tick]] = []
        self._errand = LatestOnly(self)
        self._errand.done.connect(self._take)
        self._states = OptionKeys(self.tr("Between which turns of the bolts"))
        self._states.chosen.connect(self._state_chosen)
        self._holder = Columns([], 200)
        self._aims = Choice(
            self.tr("Aim"),
            [
                (Aim.TRUE_POLE.name, self.tr("True pole")),
                (Aim.REFRACTED_POLE.name, self.tr("Refracted pole")),
            ],
        )
        self._temperature, self._pressure = Figure(TEMPERATURE), Figure(PRESSURE)
        self._solve = Key(self.tr("Solve again"))
        self._solve.clicked.connect(self.solve)
        self._said = Text(self._what_counts(), "small")
        self._band = VerdictBand()
        for part in (
            self._states,
            self._holder,
            self._aims,
            Columns((self._temperature, self._pressure), 200, are_rows=True),
            KeyRow((self._solve,)),
            self._said,
            self._band,
        ):
            self.column.addWidget(part)
        self._band.hide()

    def _what_counts(self) -> str:
        return self.tr(
            "The night itself stays as it is; tube, drive and the setting of north count as they "
            "stand now."
        )

    def ticks(self) -> list[Tick]:
        return [tick for _, tick in self._legs]

    def aims(self) -> Choice:
        return self._aims

    def temperature(self) -> Figure:
        return self._temperature

    def solve_button(self) -> Key:
        return self._solve

    def band(self) -> VerdictBand:
        return self._band

    def said(self) -> str:
        return self._said.text()

    def stop(self) -> None:
        """Waits for what is under way; harmless twice."""
        self._errand.close()

    def show_night(self, night: NightRecord) -> None:
        self._night = night
        name = self.tr("Alignment {n}")
        with_legs = [
            (str(n), name.format(n=n))
            for n, state in enumerate(night.axis_states, 1)
            if _alignment(state.legs)
        ]
        self.setVisible(bool(with_legs) and night.site is not None)
        self._states.offer(with_legs, with_legs[-1][0] if with_legs else "")
        aim = Aim.__members__.get(night.aim_name or "", Aim.TRUE_POLE)
        self._aims.show_choice(aim.name)
        if night.air is not None:
            self._temperature.show_figure(night.air.temperature_c)
            is_known = not night.air.pressure_is_assumed
            self._pressure.show_figure(night.air.pressure_hpa if is_known else None)
        self._band.hide()
        self._said.say(self._what_counts())
        if with_legs:
            self._state_chosen(with_legs[-1][0])

    def solve(self) -> None:
        """With what is chosen now."""
        night, air = self._night, self._air()
        if night is None or night.site is None or air is None:
            return
        legs = tuple(one.leg for one, tick in self._legs if tick.isChecked())
        question = Again(legs, night.site, air, Aim[self._aims.choice()], self._priors())
        self._said.say(self.tr("It is being worked out …"))
        self._errand.send(lambda: solve_again(question))

    def _air(self) -> Air | None:
        """As typed; None when a figure is refused."""
        temperature, pressure = self._temperature.read(), self._pressure.read()
        if self._temperature.is_wrong() or self._pressure.is_wrong() or self._night is None:
            return None
        site = self._night.site
        if pressure is None:
            usual_hpa = standard_pressure_hpa(0.0 if site is None else site.elevation_m)
            air = Air(usual_hpa, pressure_is_assumed=True)
        else:
            air = Air(pressure)
        return air if temperature is None else replace(air, temperature_c=temperature)

    def _state_chosen(self, number: str) -> None:
        if self._night is None:
            return
        legs = _alignment(self._night.axis_states[int(number) - 1].legs)
        self._legs = [(leg, Tick(leg.leg.label, self._leg_name(leg))) for leg in legs]
        for leg, tick in self._legs:
            tick.show_tick(not leg.is_discarded)
        self._holder.show_parts([tick for _, tick in self._legs])

    def _leg_name(self, leg: WatchedLeg) -> str:
        return self.tr("Use the leg {leg}").format(leg=leg.leg.label)

    def _take(self, answer: object) -> None:
        if not isinstance(answer, SolvedAgain):
            self._said.say(self.tr("It could not be worked out because of a fault in the program."))
            return
        self._band.setVisible(answer.advice is not None)
        if answer.advice is None:
            self._said.say(answer.problem)
        else:
            advice, found = answer.advice, answer.combination
            azimuth = (advice.azimuth_figure, advice.azimuth_side, advice.azimuth_turn)
            altitude = (advice.altitude_figure, advice.altitude_side, advice.altitude_turn)
            self._band.show_verdict(
                Verdict(
                    AxisVerdict(*azimuth),
                    AxisVerdict(*altitude),
                    answer.notes,
                    "" if found is None else constraint_words(found),
                )
            )
            self._said.say(self.tr("Solved again; the night itself stays as it is."))
        self.solved.emit()


def _alignment(legs: tuple[WatchedLeg, ...]) -> list[WatchedLeg]:
    return [leg for leg in legs if leg.purpose == LegPurpose.ALIGNMENT]


# One night of the log, opened: what it came to, its legs, notes, and ways to carry it out.


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
        self.notes = NightNotes(theme)
        self._keys = {form: Key(words) for form, words in self._forms().items()}
        for form, key in self._keys.items():
            key.clicked.connect(lambda _down, form=form: self.export_wanted.emit(form))
        self._arrange()

    def _forms(self) -> dict[ExportForm, str]:
        return {
            ExportForm.HTML: self.tr("Report, HTML"),
            ExportForm.PDF: self.tr("Report, PDF"),
            ExportForm.CSV: self.tr("Drift logs, CSV"),
            ExportForm.JSON: self.tr("Everything, JSON"),
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

    def export_button(self, form: ExportForm) -> Key:
        return self._keys[form]

    def stop(self) -> None:
        self.again.stop()

    def show_night(self, shown: OpenedNight, zone: Zone) -> None:
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
