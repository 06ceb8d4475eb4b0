"""The answer, the plot and the legs of the Drift page."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.drift.goal import Goal
from app.pages.drift.leading import CHOOSE, PLOT, TURN, Leading
from app.pages.drift.leglist import LegList
from app.pages.drift.legwords import leg_words
from app.pages.drift.notes import Notes
from app.pages.drift.shapes import Shapes
from app.pages.drift.verdictwords import verdict
from app.theme.theme import Theme
from app.widgets.driftplot import DriftPlot
from app.widgets.driftseries import DriftSeries, series
from app.widgets.key import Key
from app.widgets.pane import Pane
from app.widgets.redraw import WORDS_MS, Redraw
from app.widgets.reflow import Reflow
from app.widgets.text import Panel, Text
from app.widgets.verdict import VerdictBand
from core.alignment.guide.procedure import Stage

if TYPE_CHECKING:
    from app.session.snapshot import Snapshot
    from core.alignment.axis.legrate import LegTrend


class Work(QWidget):
    """Reads snapshots when something is to be drawn; passes on what the person does."""

    discard = Signal(str)
    exchange = Signal(str)
    bolts_turned = Signal()
    copy_wanted = Signal()

    def __init__(
        self,
        theme: Theme,
        snapshot: Callable[[], Snapshot],
        readings: QWidget,
        leading: Leading,
        parent: QWidget | None = None,
    ) -> None:
        """`readings`: the panel that says where readings come from."""
        super().__init__(parent)
        self._snapshot = snapshot
        self._leading = leading
        self._shapes = Shapes()
        self._step: object = None
        self._band = VerdictBand()
        self._goal = Goal()
        self._plot = DriftPlot(theme)
        self._legs = LegList(theme)
        self._notes = Notes()
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
        self._show_picture(PLOT)
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

    def goal(self) -> Goal:
        return self._goal

    def plot(self) -> DriftPlot:
        return self._plot

    def legs(self) -> LegList:
        return self._legs

    def notes(self) -> Notes:
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
            PLOT: self._plot,
            CHOOSE: self._leading.choosing,
            TURN: self._leading.turning,
        }
        for name, part in pictures.items():
            part.setVisible(name == picture)

    def mark_readings(self) -> None:
        """Readings have come; pictures follow soon, words a little later."""
        self._leading.mark()
        self._plot.mark_stale()
        self._words.mark()

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """A step or a setting of the person shows at once, an answer as readings do."""
        self._leading.show_snapshot(snapshot)
        self._band.setVisible(_has_verdict(snapshot))
        step = _step(snapshot)
        if step != self._step:
            self._step = step
            self._show_words()
            self._plot.mark_stale()
        else:
            self.mark_readings()

    def _show_words(self) -> None:
        snapshot = self._snapshot()
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
        snapshot = self._snapshot()
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
