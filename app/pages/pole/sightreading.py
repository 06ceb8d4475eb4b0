"""Where the pole star is seen in the sight, as the person types it."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QWidget

from app.pages.pole.sight import Sight
from app.pages.pole.standing import Standing
from app.widgets.field import Field
from app.widgets.figure import Figure
from app.widgets.key import Key
from app.widgets.reflow import Reflow
from app.widgets.text import Panel, Text
from core.alignment.polarscope.view import UnusableSighting, clock_angle_of_text, clock_text
from core.language import marked
from core.mount.equipment import Quantity
from core.sky.site import Site

DISTANCE = Quantity(marked("The distance from the middle"), " ′", 0.0, 600.0)


@dataclass(frozen=True)
class Read:
    """A place typed by the person."""

    clock_angle_deg: float
    distance_arcmin: float


class SightReading(Panel):
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

    def show_standing(self, standing: Standing, sight: Sight) -> None:
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
