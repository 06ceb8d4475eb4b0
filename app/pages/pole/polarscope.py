"""Where the pole star is seen in the sight, as the person types it."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from datetime import UTC, datetime

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from app.pages.pole import words
from app.pages.pole.field import ViewChoice, sight_chart
from app.pages.pole.parts import PolarScope, PolarScopeReading
from app.pages.pole.standing import AimedPole
from app.ui.fieldchart import RoundChart
from app.ui.form import AimChoice, Choice, Field, Figure, Key, Named
from app.ui.style import Theme
from app.ui.text import AxisVerdict, Panel, Reflow, Text, Verdict, VerdictBand
from core.alignment.polarscope.reading import ScopeReading, error_from_sighting
from core.alignment.polarscope.view import (
    ScopeView,
    UnusableSighting,
    clock_angle_of_text,
    clock_text,
)
from core.alignment.words import altitude_side, azimuth_side
from core.language import marked, say
from core.mount.equipment import Quantity
from core.sky.site import Site

DISTANCE = Quantity(marked("The distance from the middle"), " ′", 0.0, 600.0)


@dataclass(frozen=True)
class Read:
    """A place typed by the person."""

    clock_angle_deg: float
    distance_arcmin: float


class ScopeReadingPanel(Panel):
    """`read` carries a Read, `forgotten` fires when the reading is taken back."""

    read = Signal(object)
    forgotten = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("Where do you see the star?"), parent)
        self._how = Text("", "small")
        self._clock = Field(self.tr("On the clock"), "10:20")
        self._distance = Figure(DISTANCE, "", "38", self.tr("From the middle, in ′"))
        self._take = Key(self.tr("That is where I see it"), "primary")
        self._forget = Key(self.tr("Take it back"))
        self._field_deg = 0.0
        self._site: Site | None = None  # where what stands in the fields was typed
        self._take.clicked.connect(self.submit)
        self._forget.clicked.connect(self.forgotten)
        for field in (self._clock, self._distance):
            field.submitted.connect(self.submit)
        row = QHBoxLayout()
        for key in (self._take, self._forget):
            row.addWidget(key)
        row.addStretch()
        self.column.addWidget(self._how)
        self.column.addWidget(Reflow((self._clock, self._distance), 300))
        self.column.addLayout(row)

    def show_standing(self, standing: AimedPole, sight: PolarScope) -> None:
        self._field_deg = sight.field_deg
        if standing.site != self._site:
            self._site = standing.site
            self._empty_fields()
        self._how.say(
            self.tr(
                "Set the sight's own 12 o'clock upright first. Then drag the mark on the dial to "
                "where {star} is, move it with the arrow keys, or type its place."
            ).format(star=standing.star.star.name)
        )
        self._forget.setVisible(sight.sighting is not None)

    def show_place(self, clock_angle_deg: float, distance_arcmin: float) -> None:
        """A place that was pointed out on the dial."""
        self._clock.show_text(clock_text(clock_angle_deg))
        self._clock.note("")
        self._distance.show_figure(round(distance_arcmin, 1))

    def clear(self) -> None:
        """Ready for another reading."""
        self._empty_fields()
        self._clock.setFocus()

    def _empty_fields(self) -> None:
        for field in (self._clock, self._distance):
            field.show_text("")
            field.note("")

    def fields(self) -> tuple[Field, Field]:
        """On the clock, from the middle."""
        return self._clock, self._distance

    def take_button(self) -> Key:
        return self._take

    def forget_button(self) -> Key:
        return self._forget

    def submit(self) -> None:
        """Takes what is typed, or says what is wrong with it."""
        angle = self._angle()
        distance = self._distance.read()
        if distance is None and not self._distance.is_wrong():
            self._distance.complain(self.tr("The distance is empty; in the very middle it is 0."))
        if distance is not None and distance > 30.0 * self._field_deg:
            self._distance.complain(self._outside())
            distance = None
        if angle is not None and distance is not None:
            self.read.emit(Read(angle, distance))

    def _angle(self) -> float | None:
        try:
            angle = clock_angle_of_text(self._clock.text())
        except UnusableSighting as problem:
            self._clock.complain(str(problem))
            return None
        self._clock.note("")
        return angle

    def _outside(self) -> str:
        return self.tr(
            "That lies outside a field {field:g}° across, whose edge is {edge:g}′ from the middle."
        ).format(field=self._field_deg, edge=30.0 * self._field_deg)


# What the pole star's place in the sight says of the axis, as a verdict to show.


def verdict(standing: AimedPole, sight: PolarScope, sighting: PolarScopeReading) -> Verdict:
    """What was read stays true for its moment, so it is judged by that."""
    place = ScopeView(sighting.clock_angle_deg, sighting.distance_arcmin)  # type: ignore[arg-type]
    try:
        error = error_from_sighting(place, sight.view, standing.site, standing.air, sighting.utc_s)
    except UnusableSighting as problem:
        nothing = AxisVerdict("", "–", "")
        return Verdict(nothing, nothing, finding=str(problem))
    return Verdict(_azimuth(error, standing), _altitude(error, standing), _quiet(error, sighting))


def _azimuth(error: ScopeReading, standing: AimedPole) -> AxisVerdict:
    latitude_rad = math.radians(standing.site.latitude_deg)
    side = azimuth_side(error.azimuth_error_arcmin, latitude_rad)
    return AxisVerdict(words.size(error.azimuth_error_arcmin), side.where, side.turn)


def _altitude(error: ScopeReading, standing: AimedPole) -> AxisVerdict:
    lift = error.altitude_error_arcmin - error.altitude_error_refracted_arcmin
    arcmin = error.altitude_error_arcmin - standing.aim.share * lift
    side = altitude_side(arcmin)
    return AxisVerdict(words.size(arcmin), side.where, side.turn)


def _quiet(error: ScopeReading, sighting: PolarScopeReading) -> tuple[str, ...]:
    return (
        say(
            "On the sky the axis is {size} from the true pole, as read at {time:%H:%M:%S} UTC.",
            size=words.size(error.sky_error_arcmin),
            time=datetime.fromtimestamp(sighting.utc_s, UTC),
        ),
        say("A sight is good to a few minutes of arc at best: then watch a star drift."),
    )


# The polar-axis sight: a dial of where the star belongs, and what is read in it.

FIELD = Quantity(marked("The field of view"), "°", 0.2, 20.0)


class ScopePanel(QWidget):
    """`sight_changed` carries a Sight, `aim_chosen` an Aim. `placed` carries clock angle and
    distance while the mark moves.
    """

    sight_changed = Signal(object)
    aim_chosen = Signal(object)
    placed = Signal(float, float)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._sight = PolarScope()
        self._chart = RoundChart(theme, self.tr("Dial of the polar-axis sight"), can_place=True)
        self._pointed = Text("", "small")
        self._views = ViewChoice(self.tr("It shows the sky"))
        self._field = Figure(FIELD, "", "5", self.tr("Field of view across, in °"))
        self._aims = AimChoice(self.tr("Align on the"), self.tr("Between them"))
        self._reading = ScopeReadingPanel()
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

    def show_standing(self, standing: AimedPole, sight: PolarScope) -> None:
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

    def reading(self) -> ScopeReadingPanel:
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
