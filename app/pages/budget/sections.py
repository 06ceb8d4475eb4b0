"""The answers of the Budget page: figures, which pole, the map, the alignment as it stands."""

from __future__ import annotations

import math

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QVBoxLayout, QWidget

from app.pages.budget.question import Axis, BudgetAnswer, Floats
from app.ui.form import AimChoice, Choice, Figure, Key
from app.ui.skymap import SkyDisc
from app.ui.style import Theme
from app.ui.text import Panel, Reflow, Text
from core.alignment.goal import Aim
from core.imaging.tolerance import BestAim, Tolerance, rounded_down
from core.imaging.verdict import Grade, Smear, SmearShare
from core.imaging.words import arc
from core.language import marked, say
from core.mount.equipment import Quantity
from core.sky.words import direction_words

# Which pole serves this target best, and which one is aimed at.


class AimPanel(Panel):
    """`aim_chosen` carries an Aim."""

    aim_chosen = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("Where to aim"), parent)
        self.sentence = Text()
        self.aims = AimChoice(self.tr("Aim"), self.tr("Best for this target"))
        self.column.addWidget(self.sentence)
        self.column.addWidget(Text(self.tr("Align on the"), "small"))
        self.column.addWidget(self.aims)
        self.column.addStretch()
        self.aims.aim_chosen.connect(self.aim_chosen)

    def show_aim(self, best: BestAim, aim: Aim) -> None:
        self.sentence.say(best.sentence)
        self.aims.offer(Aim.nearest(best.fraction))
        self.aims.show_aim(aim)


# For which error of the axis the map and the curve are drawn.

FIGURES = (
    Quantity(marked("The azimuth error"), " ′", -1800.0, 1800.0),
    Quantity(marked("The altitude error"), " ′", -1800.0, 1800.0),
)
START_ARCMIN = 5.0


class AxisChoice(QWidget):
    """`changed` fires when something else is to be drawn."""

    changed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.axes = Choice(
            self.tr("Drawn for"),
            [
                (Axis.SOLVED.name, self.tr("The axis as solved")),
                (Axis.EDGE.name, self.tr("The most that is allowed")),
                (Axis.TYPED.name, self.tr("An error I type")),
            ],
        )
        self.axes.show_choice(Axis.EDGE.name)
        hints = (
            self.tr("Positive towards greater azimuth: east of the pole in the north."),
            self.tr("From the true pole; positive when too high."),
        )
        pairs = zip(FIGURES, hints, strict=True)
        self.azimuth, self.altitude = (Figure(one, hint) for one, hint in pairs)
        self._typed = Reflow((self.azimuth, self.altitude), 420)
        self._has_chosen = False
        self._used = (START_ARCMIN, START_ARCMIN)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(Text(self.tr("Drawn for"), "small"))
        column.addWidget(self.axes)
        column.addWidget(self._typed)
        self._typed.hide()
        for figure in (self.azimuth, self.altitude):
            figure.show_figure(START_ARCMIN)
            figure.submitted.connect(self._figure_left)
            figure.left.connect(self._figure_left)
        self.axes.chosen.connect(self._chosen)

    def axis(self) -> Axis:
        return Axis[self.axes.choice()]

    def typed_arcmin(self) -> tuple[float, float]:
        return self._used

    def show_solved(self, is_solved: bool) -> None:
        """As soon as there is a solution it is drawn, unless the person has chosen otherwise."""
        self.axes.button(Axis.SOLVED.name).setEnabled(is_solved)
        if is_solved and not self._has_chosen:
            self.axes.show_choice(Axis.SOLVED.name)
        if not is_solved and self.axis() is Axis.SOLVED:
            self.axes.show_choice(Axis.EDGE.name)

    def _chosen(self) -> None:
        self._has_chosen = True
        self._typed.setVisible(self.axis() is Axis.TYPED)
        self.changed.emit()

    def _figure_left(self) -> None:
        values = self.azimuth.read(), self.altitude.read()
        if values[0] is None or values[1] is None or (values[0], values[1]) == self._used:
            return
        self._used = (values[0], values[1])
        self.changed.emit()


# The answer in large figures: how far off the axis may be, and what to do with that.


class _Part(QWidget):
    def __init__(self, name: str, side: str) -> None:
        super().__init__()
        self.setAccessibleName(name)
        self.figure = Text("", "figure")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        for part in (Text(name, "quiet"), self.figure, Text(side, "side")):
            column.addWidget(part)
        column.addStretch()

    def show_arcmin(self, value: float) -> None:
        words = arc(value) if math.isfinite(value) else "> 10°"
        self.figure.say(words)
        self.setAccessibleDescription(words)


class BudgetBand(Panel):
    """`goal_wanted` carries the arcminutes to align to."""

    goal_wanted = Signal(float)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self.setAccessibleName(self.tr("How far off the axis may be"))
        self.whole = _Part(self.tr("The axis may be off by"), self.tr("in whatever direction"))
        self.azimuth = _Part(self.tr("In azimuth alone"), self.tr("with the altitude right"))
        self.altitude = _Part(self.tr("In altitude alone"), self.tr("with the azimuth right"))
        self.sentence = Text()
        self.problem = Text("", "side")
        self.goal_key = Key(self.tr("Align to this on the Drift page"), "primary")
        self.said = Text("", "quiet")
        self._parts = Reflow((self.whole, self.azimuth, self.altitude), 620)
        self._goal_arcmin = 0.0
        self.column.addWidget(self.problem)
        self.column.addWidget(self._parts)
        self.column.addWidget(self.sentence)
        self.column.addWidget(self.goal_key, 0, Qt.AlignmentFlag.AlignLeft)
        self.column.addWidget(self.said)
        self.goal_key.clicked.connect(lambda: self.goal_wanted.emit(self._goal_arcmin))
        self.show_problem("")

    def show_tolerance(self, tolerance: Tolerance, goal_arcmin: float) -> None:
        """`goal_arcmin`: what the Drift page is aligning to now."""
        self.problem.say("")
        possible = tolerance.possible
        self._parts.setVisible(possible)
        self.whole.show_arcmin(tolerance.largest_error_arcmin)
        self.azimuth.show_arcmin(tolerance.azimuth_arcmin)
        self.altitude.show_arcmin(tolerance.altitude_arcmin)
        self.sentence.say(tolerance.sentence)
        self._goal_arcmin = rounded_down(tolerance.largest_error_arcmin)
        is_new = not math.isclose(self._goal_arcmin, goal_arcmin)
        usable = possible and math.isfinite(self._goal_arcmin) and self._goal_arcmin > 0.0
        self.goal_key.setVisible(usable and is_new)
        words = self.tr("The Drift page aligns to {goal:g}′ now.")
        self.said.say(words.format(goal=goal_arcmin))

    def show_problem(self, sentence: str) -> None:
        """Instead of an answer."""
        self.problem.say(sentence)
        for part in (self._parts, self.goal_key):
            part.hide()
        self.sentence.say("")
        self.said.say("")


# Smear over the whole sky, and the target's way through it.

CORNER, CENTRE = "corner", "centre"


class SkyPanel(QWidget):
    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._answer: BudgetAnswer | None = None
        self.places = Choice(
            self.tr("Place in the picture"),
            [(CORNER, self.tr("Corner")), (CENTRE, self.tr("Centre"))],
        )
        self.places.show_choice(CORNER)
        self.disc = SkyDisc(theme, self.tr("Smear over the sky"))
        self._readout = Text(self.tr("Point at the sky, or use the arrow keys."), "small")
        self._legend = Text("", "small")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(Text(self.tr("Smear over the sky"), "title"))
        column.addWidget(self.places)
        column.addWidget(self.disc, 1)
        column.addWidget(self._readout)
        column.addWidget(self._legend)
        self.places.chosen.connect(lambda _place: self._show())
        self.disc.pointed.connect(self._read)

    def readout(self) -> str:
        return self._readout.text()

    def show_answer(self, answer: BudgetAnswer) -> None:
        self._answer = answer
        self._show()

    def _show(self) -> None:
        answer = self._answer
        if answer is None:
            return
        limit = answer.task.limit_px
        self.disc.show_sky(
            self._values(answer), limit, answer.sky.lowest_altitude_deg, answer.track
        )
        form = self.tr(
            "North on top, east on the right; down to {low:g}°. Hatched: more than {limit:g} "
            "pixels. Each shade is {step:.2g} of a pixel more. The thick line: the target, from "
            "the dot on."
        )
        words = form.format(low=answer.sky.lowest_altitude_deg, limit=limit, step=limit / 3.0)
        self._legend.say(words)
        cursor = self.disc.cursor_place()
        if cursor is not None:
            self._read(*cursor)

    def _values(self, answer: BudgetAnswer) -> Floats:
        sky = answer.sky
        return sky.corner_px if self.places.choice() == CORNER else sky.centre_px

    def _read(self, azimuth_deg: float, altitude_deg: float) -> None:
        """Worked out for that very place: about the axis it changes within a pixel of the map."""
        answer = self._answer
        if answer is None or answer.sky.cell(azimuth_deg, altitude_deg) is None:
            return
        centre_px, corner_px = answer.sky.at(azimuth_deg, altitude_deg)
        form = self.tr("{direction}, {altitude:.0f}° high: {size:.2f} pixels")
        self._readout.setText(
            form.format(
                direction=direction_words(azimuth_deg),
                altitude=altitude_deg,
                size=corner_px if self.places.choice() == CORNER else centre_px,
            )
        )


# The alignment as solved now: whether it is good enough, and what does the smearing.


class AlignmentPanel(Panel):
    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("The axis as it stands"), parent)
        self.grade = Text("", "turn")
        self.sentence = Text()
        self._table = QWidget()
        self._cells: list[tuple[Text, Text]] = []
        self.column.addWidget(self.grade)
        self.column.addWidget(self.sentence)
        self._build_table()
        self.column.addWidget(self._table)
        self.column.addStretch()

    def _build_table(self) -> None:
        grid = QGridLayout(self._table)
        grid.setContentsMargins(0, 4, 0, 4)
        grid.setHorizontalSpacing(16)
        heads = (self.tr("Smear, in pixels"), self.tr("Centre"), self.tr("Corner"))
        for column, words in enumerate(heads):
            grid.addWidget(_aligned(Text(words, "quiet"), column), 0, column)
        names = (
            self.tr("All together"),
            self.tr("Between (95 %)"),
            self.tr("Azimuth error alone"),
            self.tr("Altitude error alone"),
            self.tr("The air alone"),
        )
        for row, name in enumerate(names, start=1):
            cells = Text(), Text()
            grid.addWidget(Text(name), row, 0)
            for column, cell in enumerate(cells, start=1):
                grid.addWidget(_aligned(cell, column), row, column)
            self._cells.append(cells)
        grid.setColumnStretch(0, 2)
        for column in (1, 2):
            grid.setColumnStretch(column, 1)

    def show_smear(self, smear: Smear) -> None:
        self.grade.say(self._grade_words(smear.grade))
        self.sentence.say(smear.sentence)
        known = smear.centre is not None and smear.corner is not None
        self._table.setVisible(known)
        for column, share in enumerate((smear.centre, smear.corner)):
            if share is not None:
                for row, words in enumerate(_words(share)):
                    self._cells[row][column].setText(words)

    def _grade_words(self, grade: Grade) -> str:
        return {
            Grade.GOOD_ENOUGH: self.tr("Good enough"),
            Grade.NOT_GOOD_ENOUGH: self.tr("Not good enough"),
            Grade.NOT_CLEAR_YET: self.tr("Not clear yet"),
            Grade.UNKNOWN: self.tr("Not known yet"),
        }[grade]

    def cells(self) -> list[tuple[str, str]]:
        """Centre and corner of each row, as shown."""
        return [(centre.text(), corner.text()) for centre, corner in self._cells]


def _aligned(text: Text, column: int) -> Text:
    if column:
        text.setAlignment(Qt.AlignmentFlag.AlignRight)
    return text


def _words(share: SmearShare) -> tuple[str, ...]:
    between = say("{low:.2f} to {high:.2f}", low=share.low_px, high=share.high_px)
    alone = (share.azimuth_px, share.altitude_px, share.air_px)
    return (f"{share.total_px:.2f}", between, *(f"{size:.2f}" for size in alone))
