"""One mount in the comparison: where it stands, why, and what would change it."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QGridLayout, QSizePolicy, QVBoxLayout, QWidget

from app.night.equipment import Adjusted, Equipment
from app.ui.bars import ShareBar
from app.ui.form import Choice, Figure, Flow, Key, Named, Stepper, Tick
from app.ui.redraw import Redraw
from app.ui.style import Theme
from app.ui.text import Columns, Panel, Reflow, Scrolled, Text
from core.language import marked, say
from core.mount.balance import carried
from core.mount.choice import (
    Candidate,
    ChoiceMark,
    Criterion,
    Must,
    Outcome,
    RequirementCheck,
    choose,
)
from core.mount.equipment import ImpossibleValue, Inventory, Mount, Purpose, Quantity
from core.mount.examples import INVENTED_MOUNTS, said_example

SIGNS = {True: "✓", False: "✗", None: "?"}


class CandidateCard(Panel):
    def __init__(self, theme: Theme, candidate: Candidate, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self.candidate = candidate
        mount = candidate.mount
        self.setAccessibleName(mount.name)
        self.setAccessibleDescription(f"{self._standing()} {candidate.reason}")
        self.column.addWidget(Text(self._standing(), "turn"))
        self.column.addWidget(Text(mount.name, "title"))
        marks = [self.tr("invented, no product")] if mount.is_invented else []
        marks += [self.tr("to be bought")] if mount.is_planned else []
        if mount.price is not None:
            marks.append(self.tr("price {price:g}").format(price=mount.price))
        self.column.addWidget(Text(", ".join((say(mount.kind.value), *marks)), "small"))
        for finding in candidate.findings:
            self.column.addWidget(Text(_must_words(finding, candidate.outcome)))
        if candidate.outcome is not Outcome.OUT:
            self.column.addWidget(self._total(theme, candidate))
            self.column.addWidget(self._marks(theme, candidate))
        self.column.addWidget(Text(self.tr("Why"), "small"))
        self.column.addWidget(Text(candidate.reason))
        self.column.addWidget(Text(self.tr("What would change that"), "small"))
        self.column.addWidget(Text(candidate.change))

    def _standing(self) -> str:
        candidate = self.candidate
        if candidate.outcome is Outcome.OUT:
            return self.tr("Out")
        if candidate.outcome is Outcome.OPEN:
            return self.tr("Open")
        return self.tr("No. {rank}").format(rank=candidate.rank)

    def _total(self, theme: Theme, candidate: Candidate) -> QWidget:
        part = QWidget()
        grid = QGridLayout(part)
        grid.setContentsMargins(0, 4, 0, 4)
        words = self.tr("{total:.2f} of 1").format(total=candidate.total)
        if candidate.total_at_best > candidate.total + 0.005:
            words += self.tr(", up to {best:.2f}").format(best=candidate.total_at_best)
        grid.addWidget(Text(words, "side"), 0, 0)
        grid.addWidget(ShareBar(theme, candidate.total, candidate.total_at_best), 1, 0)
        return part

    def _marks(self, theme: Theme, candidate: Candidate) -> QWidget:
        part = QWidget()
        grid = QGridLayout(part)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(10)
        grid.setVerticalSpacing(2)
        grid.setColumnStretch(0, 3)
        grid.setColumnStretch(1, 2)
        for row, mark in enumerate(candidate.marks):
            grid.addWidget(Text(_criterion(mark)), 2 * row, 0)
            grid.addWidget(Text(mark.figure), 2 * row, 1)
            share = mark.mark or 0.0
            at_best = 1.0 if mark.mark is None else share
            grid.addWidget(ShareBar(theme, share, at_best), 2 * row + 1, 0, 1, 2)
        return part


def _criterion(mark: ChoiceMark) -> str:
    name = say(mark.criterion.value)
    return f"{name[:1].upper()}{name[1:]}\u00a0×{mark.weight:g}"


def _must_words(finding: RequirementCheck, outcome: Outcome) -> str:
    """With what is open; what knocks it out stands below, with its reason."""
    name = say(finding.must.value)
    reason = f": {finding.reason}" if finding.passes is None and outcome is Outcome.OPEN else ""
    return f"{SIGNS[finding.passes]}  {name[:1].upper()}{name[1:]}{reason}"


# What a mount is wanted for: the load, what it must have, and how much the rest counts.

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


# The choosing section: mounts side by side for a purpose.

CARD_PX = 236


class ChoosingSection(QWidget):
    """Follows the equipment. The purpose starts as that of the set in use."""

    def __init__(self, theme: Theme, equipment: Equipment, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._equipment = equipment
        chosen = equipment.set_in_use()
        self._purpose = Purpose.DEEP_SKY if chosen is None else chosen.purpose
        self.form = WishForm()
        self.cards = Columns([], CARD_PX, are_rows=True)
        self.problem = Text("", "side")
        self.examples_key = Key(self.tr("Compare three invented mounts"), "primary")
        self._redraw = Redraw(self, self._show)
        self._arrange()
        self.form.purpose_chosen.connect(self._choose_purpose)
        self.form.adjusted.connect(self._adjust)
        self.examples_key.clicked.connect(self._take_examples)
        equipment.changed.connect(self._redraw.mark)
        theme.changed.connect(self._redraw.mark)
        self._show()

    def _arrange(self) -> None:
        left = QWidget()
        column = QVBoxLayout(left)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(12)
        for part in (self.problem, self.examples_key, self.cards):
            column.addWidget(part)
        column.addStretch()
        content = QWidget()
        inner = QVBoxLayout(content)
        inner.setContentsMargins(16, 0, 16, 12)
        inner.addWidget(Reflow((left, self.form), 900, (7, 3)))
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(Scrolled(content))

    def candidate_cards(self) -> list[CandidateCard]:
        """Best first."""
        return [one for one in self.cards.parts() if isinstance(one, CandidateCard)]

    def _show(self) -> None:
        own = self._equipment.adjusted(self._purpose)
        set_kg = self._set_kg()
        self.form.show_figures(self._purpose, own, set_kg)
        mounts = self._equipment.inventory.of_kind(Mount)
        self.examples_key.setVisible(len(mounts) < 2)
        few = self.tr("Enter two mounts or more under Equipment, owned or planned, to compare.")
        self.problem.say(few if len(mounts) < 2 else "")
        try:
            found = choose(mounts, own.wishes(self._purpose, set_kg)) if mounts else ()
        except ImpossibleValue as reason:
            self.form.problem.say(str(reason))
            return
        self.form.problem.say("")
        self.cards.show_parts([CandidateCard(self._theme, one) for one in found])

    def _set_kg(self) -> float | None:
        """Load of the set in use with what is planned; None when a mass is missing."""
        chosen = self._equipment.set_in_use()
        parts = () if chosen is None else self._equipment.inventory.parts_of(chosen, True)
        masses = [part.mass_kg for part in carried(parts)]
        known = [mass for mass in masses if mass is not None]
        return sum(known) if known and len(known) == len(masses) else None

    def _choose_purpose(self, purpose: Purpose) -> None:
        self._purpose = purpose
        self._show()  # at once: what is typed next belongs to it

    def _adjust(self, own: Adjusted) -> None:
        """Impossible wishes are shown with their reason and not kept."""
        try:
            own.wishes(self._purpose, self._set_kg())
        except ImpossibleValue as reason:
            self.form.problem.say(str(reason))
            return
        self._equipment.adjust(self._purpose, own)

    def _take_examples(self) -> None:
        mine = {one.key for one in self._equipment.inventory.records}
        fresh = tuple(said_example(one) for one in INVENTED_MOUNTS if one.key not in mine)
        self._equipment.take(Inventory(fresh))
