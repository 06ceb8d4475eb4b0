"""Which leg has which shape: in the order they come, and kept when one is discarded."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QGridLayout, QHBoxLayout, QVBoxLayout, QWidget

from app.pages.drift.guide import CHOOSE_VIEW, PLOT_VIEW, TURN_VIEW, GuideController
from app.pages.drift.words import LegWords, leg_words, verdict
from app.ui.driftplot import DriftPlot
from app.ui.driftseries import DriftSeries, LegShape, series, shape_name
from app.ui.form import AimChoice, Choice, Key
from app.ui.redraw import WORDS_MS, Redraw
from app.ui.style import Theme
from app.ui.text import Pane, Panel, Reflow, Text, VerdictBand
from core.alignment.goal import Origin
from core.alignment.guide.procedure import Stage
from core.alignment.words import aim_sentence

if TYPE_CHECKING:
    from app.night.snapshot import Snapshot
    from core.alignment.axis.legrate import LegTrend


class Shapes:
    def __init__(self) -> None:
        self._axis_state = 0
        self._indices: dict[str, int] = {}

    def begin(self, axis_state: int) -> None:
        """Another axis state starts with the first shape again."""
        if axis_state != self._axis_state:
            self._axis_state = axis_state
            self._indices = {}

    def index(self, label: str) -> int:
        return self._indices.setdefault(label, len(self._indices))


# What the person should know about the answer, in sentences.


class DriftNotes(Panel):
    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("Worth knowing"), parent)
        self._notes = Text()
        self._contains = Text("", "small")
        self.column.addWidget(self._notes)
        self.column.addWidget(self._contains)
        self.column.addWidget(
            Text(
                self.tr(
                    "Only the motion to the north or south tells of the axis: the motion to the "
                    "east or west carries the periodic error of the drive, and tells how far the "
                    "reticle is turned."
                ),
                "small",
            )
        )

    def show_snapshot(self, snapshot: Snapshot) -> None:
        notes = () if snapshot.solution is None else snapshot.solution.notes
        self._notes.say("\n".join(map(str, notes)))
        priors = snapshot.priors
        form = self.tr(
            "The ± contains the air, the step of the readings, a reticle turned by some "
            "{angle:g}°, slow wander of the field and a tube that yields {flexure:g}″ per g. "
            "It cannot know of a wrong star, a wrong place or time, a base that moves, or a tube "
            "that yields more."
        )
        self._contains.say(
            form.format(angle=priors.angle_sigma_deg, flexure=priors.flexure_arcsec_per_g)
        )

    def contains(self) -> str:
        """What the ± is made of, and what it cannot know."""
        return self._contains.text()

    def text(self) -> str:
        return self._notes.text()


# What the person is after: which pole, and how small the ± should become.

TARGETS = ("0.5", "1", "2", "5")


class GoalPanel(Panel):
    """`aim_chosen` carries an Aim, `target_chosen` minutes of arc; `target_cleared`: the budget's
    figure, or the usual one, is to hold again.
    """

    aim_chosen = Signal(object)
    target_chosen = Signal(float)
    target_cleared = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("Goal"), parent)
        self._aims = AimChoice(self.tr("Aim"), self.tr("Between them"))
        self._why = Text("", "small")
        self._targets = Choice(self.tr("Your own goal"), [(step, f"{step}′") for step in TARGETS])
        self._aims.aim_chosen.connect(self.aim_chosen)
        self._from = Text("", "small")
        self._clear = Key(self.tr("Follow tonight’s budget"))
        self._clear.clicked.connect(self.target_cleared)
        self._targets.chosen.connect(lambda step: self.target_chosen.emit(float(step)))
        self.column.addWidget(Text(self.tr("Align on the"), "small"))
        self.column.addWidget(self._aims)
        self.column.addWidget(self._why)
        self.column.addWidget(Text(self.tr("How near the axis is to come"), "small"))
        self.column.addWidget(self._targets)
        self.column.addWidget(self._from)
        self.column.addWidget(self._clear)

    def show_snapshot(self, snapshot: Snapshot) -> None:
        self._aims.show_aim(snapshot.aim)
        if snapshot.site is not None and snapshot.air is not None:
            self._why.say(aim_sentence(snapshot.aim, snapshot.site, snapshot.air))
        else:
            self._why.say("")
        goal = snapshot.goal
        is_typed = goal.origin is Origin.TYPED
        self._from.say(self.tr("Goal: {goal}").format(goal=goal.reason))
        self._clear.setVisible(is_typed)
        step = f"{goal.arcmin:g}"
        if is_typed and step in TARGETS:
            self._targets.show_choice(step)
        else:
            self._targets.show_none()

    def aims(self) -> Choice:
        return self._aims

    def origin(self) -> str:
        """Where the figure is from, as shown."""
        return self._from.text()

    def clear_key(self) -> Key:
        return self._clear

    def targets(self) -> Choice:
        return self._targets


# The legs of the present axis state: shape, figures, a way to discard each or to turn it over.


class LegLine(QFrame):
    """Discarding asks once more in place, so that no cold finger throws a leg away."""

    discard = Signal()
    exchange = Signal()

    def __init__(self, theme: Theme, index: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._index = index
        self._name = Text()
        self._rate = Text()
        self._facts = Text("", "small")
        self._ask = Key(self.tr("Discard"))
        self._sure = Key(self.tr("Discard it"))
        self._keep = Key(self.tr("Keep it"))
        self._contradicts = Text(self.tr("Contradicts the others."), "caution")
        self._exchange = Key(self.tr("Exchange north and south"))
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 6, 0, 6)
        grid.setHorizontalSpacing(10)
        grid.setVerticalSpacing(0)
        grid.setColumnStretch(1, 1)
        grid.addWidget(LegShape(theme, index), 0, 0, Qt.AlignmentFlag.AlignVCenter)
        grid.addWidget(self._name, 0, 1)
        grid.addWidget(self._ask, 0, 2, 2, 1, Qt.AlignmentFlag.AlignTop)
        grid.addWidget(self._rate, 1, 1)
        grid.addWidget(self._facts, 2, 1, 1, 2)
        sure = QHBoxLayout()
        sure.addWidget(self._sure)
        sure.addWidget(self._keep)
        sure.addStretch()
        grid.addLayout(sure, 3, 1, 1, 2)
        grid.addWidget(self._contradicts, 4, 1, 1, 2)
        grid.addWidget(self._exchange, 5, 1, 1, 2, Qt.AlignmentFlag.AlignLeft)
        self._ask.clicked.connect(lambda: self._asking(True))
        self._keep.clicked.connect(lambda: self._asking(False))
        self._sure.clicked.connect(self.discard)
        self._exchange.clicked.connect(self.exchange)
        self._asking(False)

    def show_words(
        self,
        words: LegWords,
        is_watched: bool,
        contradicts: bool = False,
        is_exchanged: bool = False,
    ) -> None:
        """`contradicts`: it may be the leg that is wrong among those that disagree; `is_exchanged`:
        its north and south are read exchanged.
        """
        self._name.setText(
            self.tr("{star}, watched now").format(star=words.label) if is_watched else words.label
        )
        self._rate.say(words.rate)
        self._facts.say("\n".join(line for line in (words.place, words.extent) if line))
        self._ask.setAccessibleName(self.tr("Discard the leg {leg}").format(leg=words.label))
        self._exchange.setAccessibleName(
            self.tr("Exchange north and south of the leg {leg}").format(leg=words.label)
        )
        self._exchange.setText(
            self.tr("Exchange back") if is_exchanged else self.tr("Exchange north and south")
        )
        self._contradicts.setVisible(contradicts)
        self._exchange.setVisible(contradicts or is_exchanged)
        self.setAccessibleName(f"{words.label}, {shape_name(self._index)}, {words.rate}")

    def _asking(self, asking: bool) -> None:
        self._ask.setVisible(not asking)
        self._sure.setVisible(asking)
        self._keep.setVisible(asking)
        if asking:
            self._keep.setFocus()

    def exchange_key(self) -> Key:
        """Shown while the leg contradicts others."""
        return self._exchange

    def buttons(self) -> tuple[Key, Key, Key]:
        """Ask, sure, keep."""
        return self._ask, self._sure, self._keep


class LegList(QWidget):
    """`discard` carries the label of the leg to leave out, `exchange` of that to turn over."""

    discard = Signal(str)
    exchange = Signal(str)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._rows: dict[str, LegLine] = {}
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(0)

    def show_legs(
        self,
        legs: Sequence[tuple[int, LegWords]],
        watching: str | None,
        contradicting: Collection[str] = (),
        exchanged: Collection[str] = (),
    ) -> None:
        """`legs`: index of the shape, and the words, of each; the others: labels of some."""
        present = {words.label for _index, words in legs}
        for gone in [label for label in self._rows if label not in present]:
            row = self._rows.pop(gone)
            self._column.removeWidget(row)
            row.deleteLater()
        for index, words in legs:
            if words.label not in self._rows:
                self._rows[words.label] = self._new_row(index, words.label)
            self._rows[words.label].show_words(
                words,
                words.label == watching,
                words.label in contradicting,
                words.label in exchanged,
            )

    def _new_row(self, index: int, label: str) -> LegLine:
        row = LegLine(self._theme, index)
        row.discard.connect(lambda: self.discard.emit(label))
        row.exchange.connect(lambda: self.exchange.emit(label))
        self._column.addWidget(row)
        return row

    def row(self, label: str) -> LegLine:
        return self._rows[label]


# The answer, the plot and the legs of the Drift page.


class Work(QWidget):
    """Draws the newest snapshot when it is time to; passes on what the person does."""

    discard = Signal(str)
    exchange = Signal(str)
    bolts_turned = Signal()
    copy_wanted = Signal()

    def __init__(
        self,
        theme: Theme,
        readings: QWidget,
        leading: GuideController,
        parent: QWidget | None = None,
    ) -> None:
        """`readings`: the panel that says where readings come from."""
        super().__init__(parent)
        self._snapshot: Snapshot | None = None
        self._leading = leading
        self._shapes = Shapes()
        self._step: object = None
        self._band = VerdictBand()
        self._goal = GoalPanel()
        self._plot = DriftPlot(theme)
        self._legs = LegList(theme)
        self._notes = DriftNotes()
        self._no_legs = Text(self.tr("None yet: choose a star and watch it."), "quiet")
        self._after = Text(
            self.tr("After a turn the legs so far say nothing about the axis."), "small"
        )
        self._turned = Key(self.tr("I have turned the bolts"))
        self._words = Redraw(self, self._show_words, WORDS_MS)
        self._arrange(readings)
        self._legs.discard.connect(self.discard)
        self._legs.exchange.connect(self.exchange)
        self._turned.clicked.connect(self.bolts_turned)
        self._plot.copy_wanted.connect(self.copy_wanted)
        self._plot.feed_from(self._series)
        leading.picture_wanted.connect(self._show_picture)

    def _arrange(self, readings: QWidget) -> None:
        picture = Panel()
        shown: tuple[QWidget, ...] = (
            self._plot,
            self._leading.choosing,
            self._leading.turning,
        )
        for part in shown:
            picture.column.addWidget(part, 1)
        self._show_picture(PLOT_VIEW)
        side = QWidget()
        column = QVBoxLayout(side)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(12)
        panels = (readings, self._legs_panel(), self._notes, self._goal)
        for panel in (*panels, self._leading.field_panel, self._leading.sound_panel):
            column.addWidget(panel)
        column.addStretch()
        pane = Pane(side)
        both = Reflow((picture, pane), 940, (3, 2))
        both.reflowed.connect(lambda beside: pane.show_whole(not beside))
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.setSpacing(12)
        outer.addWidget(self._leading.band)
        outer.addWidget(self._band)
        outer.addWidget(both, 1)

    def _legs_panel(self) -> Panel:
        panel = Panel(self.tr("Legs since the bolts were last turned"))
        panel.column.addWidget(self._no_legs)
        panel.column.addWidget(self._legs)
        panel.column.addWidget(self._turned)
        panel.column.addWidget(self._after)
        return panel

    def goal(self) -> GoalPanel:
        return self._goal

    def plot(self) -> DriftPlot:
        return self._plot

    def legs(self) -> LegList:
        return self._legs

    def notes(self) -> DriftNotes:
        return self._notes

    def turned_button(self) -> Key:
        return self._turned

    def begin_anew(self) -> None:
        """Another night is in view: nothing of the one before stays."""
        self._shapes = Shapes()
        self._step = None
        self._legs.show_legs([], None)
        self._plot.begin_anew()

    def _show_picture(self, picture: str) -> None:
        pictures: dict[str, QWidget] = {
            PLOT_VIEW: self._plot,
            CHOOSE_VIEW: self._leading.choosing,
            TURN_VIEW: self._leading.turning,
        }
        for name, part in pictures.items():
            part.setVisible(name == picture)

    def mark_readings(self, snapshot: Snapshot) -> None:
        """Readings have come; pictures follow soon, words a little later."""
        self._snapshot = snapshot
        self._leading.mark(snapshot)
        self._plot.mark_stale()
        self._words.mark()

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """A step or a setting of the person shows at once, an answer as readings do."""
        self._snapshot = snapshot
        self._leading.show_snapshot(snapshot)
        self._band.setVisible(_has_verdict(snapshot))
        step = _step(snapshot)
        if step != self._step:
            self._step = step
            self._show_words()
            self._plot.mark_stale()
        else:
            self.mark_readings(snapshot)

    def _show_words(self) -> None:
        snapshot = self._snapshot
        if snapshot is None:
            return
        trends = _trends(snapshot)
        self._band.show_verdict(verdict(snapshot, self._leading.leads()))
        self._goal.show_snapshot(snapshot)
        self._notes.show_snapshot(snapshot)
        self._shapes.begin(snapshot.axis_state)
        legs = [
            (self._shapes.index(leg.label), leg_words(leg, trends.get(leg.label)))
            for leg in snapshot.legs
        ]
        found = snapshot.solution
        contradicting = () if found is None else found.contradicting_labels
        self._legs.show_legs(legs, snapshot.watching, contradicting, snapshot.exchanged)
        self._no_legs.setVisible(not snapshot.legs)
        for part in (self._turned, self._after):
            part.setVisible(bool(snapshot.legs) and not self._leading.leads())

    def _series(self, most: int) -> tuple[Sequence[DriftSeries], int]:
        snapshot = self._snapshot
        if snapshot is None:
            return [], 0
        trends = _trends(snapshot)
        self._shapes.begin(snapshot.axis_state)
        indices = [self._shapes.index(leg.label) for leg in snapshot.legs]
        newest = [*zip(snapshot.legs, indices, strict=True)][-most:]
        drawn = [series(leg, trends.get(leg.label), index) for leg, index in newest]
        return drawn, len(indices) - len(drawn)


def _has_verdict(snapshot: Snapshot) -> bool:
    """While the bolts are turned their own figures are larger; without a star there are none."""
    stage = snapshot.guide.stage
    without = (Stage.CHOOSE, Stage.DONE)
    return stage is not Stage.TURN and (bool(snapshot.legs) or stage not in without)


def _step(snapshot: Snapshot) -> object:
    """What only the person changes, but for the first answer, which is not kept waiting."""
    labels = tuple(leg.label for leg in snapshot.legs)
    settings = (snapshot.site, snapshot.air, snapshot.aim, snapshot.goal, snapshot.priors)
    return labels, snapshot.axis_state, snapshot.watching, settings, snapshot.solution is None


def _trends(snapshot: Snapshot) -> dict[str, LegTrend]:
    legs = () if snapshot.solution is None else snapshot.solution.legs
    return {trend.label: trend for trend in legs}
