"""The answer in large figures: how far off the axis may be, and what to do with that."""

from __future__ import annotations

import math

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.widgets.key import Key
from app.widgets.reflow import Reflow
from app.widgets.text import Panel, Text
from core.imaging.tolerance import Tolerance, rounded_down
from core.imaging.words import arc


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
