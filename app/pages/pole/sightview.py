"""The polar-axis sight: a dial of where the star belongs, and what is read in it."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.pole.charts import sight_chart
from app.pages.pole.sight import Sight
from app.pages.pole.sightreading import SightReading
from app.pages.pole.sightverdict import verdict
from app.pages.pole.standing import Standing
from app.pages.pole.viewchoice import ViewChoice
from app.theme.theme import Theme
from app.widgets.aimchoice import AimChoice
from app.widgets.choice import Choice
from app.widgets.figure import Figure
from app.widgets.named import Named
from app.widgets.reflow import Reflow
from app.widgets.roundchart import RoundChart
from app.widgets.text import Panel, Text
from app.widgets.verdict import VerdictBand
from core.language import marked
from core.mount.equipment import Quantity

FIELD = Quantity(marked("The field of view"), "°", 0.2, 20.0)


class SightView(QWidget):
    """`sight_changed` carries a Sight, `aim_chosen` an Aim. `placed` carries clock angle and
    distance while the mark moves.
    """

    sight_changed = Signal(object)
    aim_chosen = Signal(object)
    placed = Signal(float, float)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._sight = Sight()
        self._chart = RoundChart(theme, self.tr("Dial of the polar-axis sight"), can_place=True)
        self._pointed = Text("", "small")
        self._views = ViewChoice(self.tr("It shows the sky"))
        self._field = Figure(FIELD, "", "5", self.tr("Field of view across, in °"))
        self._aims = AimChoice(self.tr("Align on the"), self.tr("Between them"))
        self._reading = SightReading()
        self._verdict = VerdictBand()
        self._connect()
        self._arrange()

    def _connect(self) -> None:
        self._views.view_chosen.connect(lambda view: self._change(view=view))
        self._field.edited.connect(lambda _text: self._field_edited())
        self._aims.aim_chosen.connect(self.aim_chosen)
        self._chart.placed.connect(self.placed)
        self._chart.pointed.connect(self._pointed.setText)

    def _arrange(self) -> None:
        drawing, side = QWidget(), QWidget()
        left, right = QVBoxLayout(drawing), QVBoxLayout(side)
        for column in (left, right):
            column.setContentsMargins(0, 0, 0, 0)
            column.setSpacing(12)
        left.addWidget(self._chart, 1)
        left.addWidget(self._pointed)
        left.addStretch()
        panel = Panel(self.tr("Your sight"))
        panel.column.addWidget(self._views)
        panel.column.addWidget(self._field)
        panel.column.addWidget(Named(self.tr("Align on the"), self._aims))
        for part in (self._reading, self._verdict, panel):
            right.addWidget(part)
        right.addStretch()
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(Reflow((drawing, side), 900, (1, 1)))

    def show_standing(self, standing: Standing, sight: Sight) -> None:
        if sight.field_deg != self._sight.field_deg or not self._field.text():
            self._field.show_figure(sight.field_deg)
        self._sight = sight
        self._views.show_view(sight.view)
        self._aims.show_aim(standing.aim)
        self._chart.show_chart(sight_chart(standing, sight))
        self._reading.show_standing(standing, sight)
        self._verdict.setVisible(sight.sighting is not None)
        if sight.sighting is not None:
            self._verdict.show_verdict(verdict(standing, sight, sight.sighting))

    def chart(self) -> RoundChart:
        return self._chart

    def views(self) -> Choice:
        return self._views.choice()

    def aims(self) -> Choice:
        return self._aims

    def field(self) -> Figure:
        return self._field

    def verdict(self) -> VerdictBand:
        return self._verdict

    def reading(self) -> SightReading:
        return self._reading

    def _field_edited(self) -> None:
        """Each field of view that can be is shown at once; the last good one holds otherwise."""
        value = self._field.read()
        if value is None and not self._field.is_wrong():
            self._field.complain(
                self.tr("Empty: {field:g}° holds until there is another.").format(
                    field=self._sight.field_deg
                )
            )
        if value is not None and value != self._sight.field_deg:
            self._change(field_deg=value)

    def _change(self, **changes: object) -> None:
        self._sight = replace(self._sight, **changes)  # type: ignore[arg-type]
        self.sight_changed.emit(self._sight)
