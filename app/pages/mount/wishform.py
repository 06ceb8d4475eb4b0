"""What a mount is wanted for: the load, what it must have, and how much the rest counts."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.session.adjusted import Adjusted
from app.widgets.choice import Choice
from app.widgets.figure import Figure
from app.widgets.flow import Flow
from app.widgets.key import Key
from app.widgets.named import Named
from app.widgets.stepper import Stepper
from app.widgets.text import Panel, Text
from app.widgets.tick import Tick
from core.language import marked, say
from core.mount.choice import Criterion, Must
from core.mount.equipment import Purpose, Quantity

MOST_WEIGHT = 9.0
LOAD = Quantity(marked("The load it is to carry"), marked(" kg"), 0.0, 5000.0)
PRICE = Quantity(marked("The highest price"), "", 0.01, 1e9)


class WishForm(Panel):
    """`purpose_chosen` carries a Purpose, `adjusted` the figures as changed."""

    purpose_chosen = Signal(object)
    adjusted = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("What you want it for"), parent)
        self._own = Adjusted.usual(Purpose.DEEP_SKY)
        self.purposes = Choice(self.tr("Purpose"), self._purpose_words())
        self.load = Figure(LOAD)
        self.price = Figure(PRICE, self.tr("In your own currency; counts when ticked above."))
        self.musts = {must: Tick(_capital(say(must.value))) for must in Must}
        self.weights = {one: Stepper(_capital(say(one.value)), MOST_WEIGHT) for one in Criterion}
        self.usual_key = Key(self.tr("Back to the usual figures"))
        self.problem = Text("", "alarm")
        self.problem.hide()
        self._arrange()
        self._connect()

    def _arrange(self) -> None:
        ticks = QWidget()
        flow = Flow(ticks)
        for tick in self.musts.values():
            flow.addWidget(tick)
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        ticks.setSizePolicy(policy)
        below = self.tr("A mount that lacks one of these is out.")
        for part in (
            Named(self.tr("Purpose"), self.purposes),
            self.load,
            Named(self.tr("What it must have"), ticks, below),
            self.price,
            Text(self.tr("How much the rest counts, from 0 to 9")),
        ):
            self.column.addWidget(part)
        for stepper in self.weights.values():
            self.column.addWidget(stepper)
        source = self.tr("The usual order is common practice, no source; the numbers are ours.")
        for last in (self.problem, Text(source, "small"), self.usual_key):
            self.column.addWidget(last)
        self.column.addStretch()

    def _purpose_words(self) -> list[tuple[str, str]]:
        return [
            (Purpose.OBSERVING.name, self.tr("Observing")),
            (Purpose.PLANETARY.name, self.tr("Planets")),
            (Purpose.DEEP_SKY.name, self.tr("Deep-sky imaging")),
        ]

    def _connect(self) -> None:
        self.purposes.chosen.connect(lambda name: self.purpose_chosen.emit(Purpose[name]))
        for tick in self.musts.values():
            tick.ticked.connect(lambda _down: self._take())
        for stepper in self.weights.values():
            stepper.stepped.connect(lambda _value: self._take())
        for figure in (self.load, self.price):
            figure.submitted.connect(self._take)
            figure.left.connect(self._take)
        self.usual_key.clicked.connect(self._usual)

    def show_figures(self, purpose: Purpose, own: Adjusted, set_kg: float | None) -> None:
        """`set_kg`: load of the set in use, planned gear included."""
        self._own = own
        self.purposes.show_choice(purpose.name)
        for must, tick in self.musts.items():
            tick.show_tick(must in own.musts)
        for criterion, stepper in self.weights.items():
            stepper.show_value(own.weights.get(criterion, 0.0))
        for figure, value in ((self.load, own.load_kg), (self.price, own.price_limit)):
            if figure.is_free():
                figure.show_figure(value)
        if set_kg is None:
            self.load.hint(self.tr("Empty: not known."))
        else:
            form = self.tr("Empty: {kg:.3g} kg, of the set in use with what is planned.")
            self.load.hint(form.format(kg=set_kg))

    def _take(self) -> None:
        load, price = self.load.read(), self.price.read()
        taken = replace(
            self._own,
            musts=tuple(must for must, tick in self.musts.items() if tick.isChecked()),
            weights={one: step.value() for one, step in self.weights.items() if step.value()},
            load_kg=self._own.load_kg if self.load.is_wrong() else load,
            price_limit=self._own.price_limit if self.price.is_wrong() else price,
        )
        if taken != self._own:
            self._own = taken
            self.adjusted.emit(taken)

    def _usual(self) -> None:
        usual = Adjusted.usual(Purpose[self.purposes.choice()])
        self.adjusted.emit(replace(usual, share=self._own.share))


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]
