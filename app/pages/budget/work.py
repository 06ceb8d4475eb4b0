"""The answers of the Budget page, from the large figures down to the map and the curve."""

from __future__ import annotations

from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.budget.aimpanel import AimPanel
from app.pages.budget.axischoice import AxisChoice
from app.pages.budget.band import BudgetBand
from app.pages.budget.question import Answer
from app.pages.budget.skypanel import SkyPanel
from app.pages.budget.standing import Standing
from app.theme.theme import Theme
from app.widgets.reflow import Reflow
from app.widgets.smearplot import SmearLines, SmearPlot
from app.widgets.text import Panel, Text
from core.alignment.aim import Aim


class BudgetWork(QWidget):
    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.band = BudgetBand()
        self.standing = Standing()
        self.aim = AimPanel()
        self.axis = AxisChoice()
        self.sky = SkyPanel(theme)
        self.plot = SmearPlot(theme)
        self._drawn_for = Text("", "quiet")
        pictures = Panel()
        pictures.column.addWidget(self.axis)
        pictures.column.addWidget(self._drawn_for)
        pictures.column.addWidget(Reflow((self.sky, self.plot), 660))
        self._below = QWidget()
        below = QVBoxLayout(self._below)
        below.setContentsMargins(0, 0, 0, 0)
        below.setSpacing(12)
        below.addWidget(Reflow((self.standing, self.aim), 560, (3, 2)))
        below.addWidget(pictures)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(12)
        column.addWidget(self.band)
        column.addWidget(self._below)
        column.addStretch()
        self._below.hide()

    def drawn_for(self) -> str:
        return self._drawn_for.text()

    def show_problem(self, sentence: str) -> None:
        """Instead of answers."""
        self._below.hide()
        self.band.show_problem(sentence)

    def show_answer(self, answer: Answer, goal_arcmin: float, aim: Aim) -> None:
        self._below.show()
        self.band.show_tolerance(answer.tolerance, goal_arcmin)
        self.standing.show_smear(answer.smear)
        self.aim.show_aim(answer.best, aim)
        words = self.tr("Map and curve {axis}. {longest}")
        self._drawn_for.say(words.format(axis=answer.axis_words, longest=answer.longest.sentence))
        self.sky.show_answer(answer)
        curve = answer.curve
        self.plot.show_lines(
            SmearLines(
                curve.exposure_s / 60.0,
                curve.centre_px,
                curve.corner_px,
                curve.limit_px,
                answer.task.exposure_s / 60.0,
            )
        )
