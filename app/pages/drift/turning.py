"""The field in view while the bolts turn: where the star is, and where it has to go."""

from __future__ import annotations

import math

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.night.snapshot import GuideView
from app.pages.drift.offset import UnusableNumber, parse_size
from app.pages.drift.words import ALTITUDE, AZIMUTH, BoltWords, bolt_words, star_moves
from app.ui.fieldchart import Chart, RoundChart, Shape, Spot, rings
from app.ui.form import Field
from app.ui.style import Theme
from app.ui.text import Panel, Reflow, Text
from core.alignment.guide.bolts import Base, BoltScale
from core.language import say


def steer_chart(guide: GuideView, across_arcmin: float) -> Chart | None:
    """North at the top and east on the left, as the sky is seen without a mirror.

    The star stood in the middle when the turn began. None while nobody knows where it goes.
    """
    if guide.star_moves_arcsec is None:
        return None
    radius = across_arcmin / 2.0
    angle, distance = _place(*guide.star_moves_arcsec)
    told = say("Bring the star here.")
    if distance > radius:
        told = say("The star’s place lies outside the field, this way.")
    target = Spot(angle, min(distance, radius), Shape.HOLLOW, 11.0, "", told, is_main=True)
    at_angle, at_distance = _place(*(guide.star_at_arcsec or (0.0, 0.0)))
    star = Spot(at_angle, min(at_distance, radius), Shape.STAR, 5.0, "", say("The star now."))
    rim = ((0.0, say("north")), (270.0, say("east")))
    path = ((at_angle, min(at_distance, radius)), (angle, min(distance, radius)))
    return Chart(radius, rings(radius), (target, star), path, rim)


def _place(north_arcsec: float, east_arcsec: float) -> tuple[float, float]:
    """Clock angle and distance in arcminutes."""
    angle = math.degrees(math.atan2(-east_arcsec, north_arcsec)) % 360.0
    return angle, math.hypot(north_arcsec, east_arcsec) / 60.0


# Turning the bolts: which way and how far, large enough to be read from beside the mount.

STEEPEST_DEG = 20.0


class _Bolt(QWidget):
    def __init__(self, name: str, turns_name: str) -> None:
        super().__init__()
        self.setAccessibleName(name)
        self._way = Text("", "turn")
        self._figure = Text("", "figure")
        self._so_far = Text("", "side")
        self._turns = Text("", "quiet")
        self.counted = Field(turns_name, "")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(2)
        parts = (Text(name, "quiet"), self._way, self._figure, self._so_far, self._turns)
        for part in (*parts, self.counted):
            column.addWidget(part)
        column.addStretch()

    def show_words(self, words: BoltWords) -> None:
        self._way.say(words.way)
        self._figure.say(words.figure)
        self._so_far.say(words.so_far)
        self._turns.say(words.turns)
        told = (words.way, words.figure, words.so_far, words.turns)
        self.setAccessibleDescription(" ".join(part for part in told if part))


class TurningPanel(QWidget):
    """`base_given` carries a Base."""

    base_given = Signal(object)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        count = self.tr("Turns you made, if you count them (the other way: −)")
        self._bolts = {
            AZIMUTH: _Bolt(self.tr("Azimuth bolts"), count),
            ALTITUDE: _Bolt(self.tr("Altitude bolt"), count),
        }
        self._star = Text("", "quiet")
        self._book = Text("", "small")
        self._chart = RoundChart(theme, self.tr("The field in view, with the star and its place"))
        self._chart.hide()
        self._tilt = Field(self.tr("The base leans by so many degrees"), "0")
        self._towards = Field(self.tr("down towards azimuth, in degrees"), "0")
        for field in (self._tilt, self._towards):
            field.submitted.connect(self._give_base)
            field.left.connect(self._give_base)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(12)
        column.addWidget(Reflow(tuple(self._bolts.values()), 420))
        column.addWidget(self._star)
        column.addWidget(self._chart)
        column.addWidget(self._book)
        column.addWidget(self._base_panel())
        column.addStretch()

    def chart(self) -> RoundChart:
        return self._chart

    def book(self) -> str:
        """Whose bolts these are, as shown."""
        return self._book.text()

    def _base_panel(self) -> Panel:
        panel = Panel(self.tr("Is the base level?"))
        panel.column.addWidget(
            Text(
                self.tr(
                    "If not, the azimuth bolts move the altitude as well. Read a spirit level, or "
                    "leave it empty; a degree hardly matters for small turns."
                ),
                "small",
            )
        )
        panel.column.addWidget(Reflow((self._tilt, self._towards), 420))
        return panel

    def show_guide(self, guide: GuideView, latitude_deg: float, across_arcmin: float) -> None:
        """`across_arcmin`: of the field in view."""
        for name, bolt in self._bolts.items():
            bolt.show_words(bolt_words(name, guide, latitude_deg))
        self._star.say(star_moves(guide, across_arcmin))
        chart = steer_chart(guide, across_arcmin)
        self._chart.setVisible(chart is not None)
        if chart is not None:
            self._chart.show_chart(chart)
        self._book.say(guide.bolt_book)

    def begin(self) -> None:
        """A new turn: nothing counted yet."""
        for bolt in self._bolts.values():
            bolt.counted.show_text("")
            bolt.counted.note("")

    def bolt(self, name: str) -> QWidget:
        return self._bolts[name]

    def counted(self) -> tuple[float | None, float | None] | None:
        """Turns of the azimuth and the altitude bolt; None after a complaint."""
        try:
            return self._number(AZIMUTH), self._number(ALTITUDE)
        except UnusableNumber:
            return None

    def counted_field(self, name: str) -> Field:
        return self._bolts[name].counted

    def base_fields(self) -> tuple[Field, Field]:
        return self._tilt, self._towards

    def _number(self, name: str) -> float | None:
        field = self._bolts[name].counted
        return _read(field, self.tr("number of turns"))

    def _give_base(self) -> None:
        try:
            tilt = _read(self._tilt, self.tr("lean of the base")) or 0.0
            towards = _read(self._towards, self.tr("azimuth")) or 0.0
        except UnusableNumber:
            return
        if not 0.0 <= tilt <= STEEPEST_DEG:
            self._tilt.complain(
                self.tr("A base leans by 0 to {most:g} degrees.").format(most=STEEPEST_DEG)
            )
            return
        self.base_given.emit(Base(tilt, towards % 360.0))


def _read(field: Field, what: str) -> float | None:
    """Raises UnusableNumber after saying so at the field."""
    if not field.text():
        field.note("")
        return None
    try:
        value = parse_size(field.text(), what)
    except UnusableNumber as problem:
        field.complain(str(problem))
        raise
    field.note("")
    return value


def counted_arcmin(
    counted: tuple[float | None, float | None],
    scales: tuple[BoltScale | None, BoltScale | None],
    wanted: tuple[float, float],
) -> tuple[float, float] | None:
    """How far the axis went by counted turns; None while a scale that is needed is not known.

    A bolt that was not counted was turned as `wanted`.
    """
    moved = [
        _moved(turns, scale, meant)
        for turns, scale, meant in zip(counted, scales, wanted, strict=True)
    ]
    if moved[0] is None or moved[1] is None:
        return None
    return moved[0], moved[1]


def _moved(turns: float | None, scale: BoltScale | None, meant: float) -> float | None:
    """Until the way is known the axis is taken to have gone the way that was meant."""
    if turns is None:
        return meant
    if scale is None or not scale.is_measured:
        return None
    if scale.is_known:
        return turns * scale.arcmin_per_turn
    is_size_only = scale.number == 0 or not scale.has_sense
    return math.copysign(turns * scale.arcmin_per_turn, meant) if is_size_only else None
