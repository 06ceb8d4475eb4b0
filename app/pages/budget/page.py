"""The answers of the Budget page, from the large figures down to the map and the curve."""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.budget.form import BudgetForm
from app.pages.budget.question import BudgetAnswer, BudgetQuestion, work_out
from app.pages.budget.sections import AimPanel, AlignmentPanel, AxisChoice, BudgetBand, SkyPanel
from app.ui.form import Key
from app.ui.redraw import WORDS_MS, Redraw
from app.ui.smearplot import SmearLines, SmearPlot
from app.ui.style import Theme
from app.ui.text import Panel, Reflow, Scrolled, Text
from app.workers.latest import LatestOnly
from core.alignment.goal import Aim

if TYPE_CHECKING:
    from app.night.budget import Budget
    from app.night.session import Session
    from app.night.snapshot import Snapshot


class BudgetWork(QWidget):
    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.band = BudgetBand()
        self.standing = AlignmentPanel()
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

    def show_answer(self, answer: BudgetAnswer, goal_arcmin: float, aim: Aim) -> None:
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


# The Budget page: how good must the alignment be tonight?

BESIDE_PX = 900


class BudgetPage(QWidget):
    """`site_wanted`: the person wants to say where they are."""

    site_wanted = Signal()

    def __init__(
        self,
        session: Session,
        theme: Theme,
        budget: Budget,
        now: Callable[[], float],
        parent: QWidget | None = None,
    ) -> None:
        """`now`: seconds since 1970-01-01 UTC."""
        super().__init__(parent)
        self._session = session
        self._budget = budget
        self.form = BudgetForm(now)
        self.work = BudgetWork(theme)
        self.site_key = Key(self.tr("Enter your site"), "primary")
        self.example_key = Key(self.tr("Try an invented example"))
        self._errand = LatestOnly(self)
        self._soon = Redraw(self, self._ask)
        self._readings = Redraw(self, self._ask, WORDS_MS)
        self._step: object = None
        self._arrange()
        self._connect()
        self._show_form()
        self._soon.mark()
        self.setFocusProxy(self.form)

    def _arrange(self) -> None:
        content = QWidget()
        column = QVBoxLayout(content)
        column.setContentsMargins(16, 12, 16, 12)
        column.setSpacing(12)
        column.addWidget(Text(self.tr("How good must the alignment be tonight?"), "question"))
        column.addWidget(Text(self._explanation(), "quiet"))
        left = QWidget()
        answers = QVBoxLayout(left)
        answers.setContentsMargins(0, 0, 0, 0)
        for key in (self.site_key, self.example_key):
            self.work.band.column.addWidget(key, 0, Qt.AlignmentFlag.AlignLeft)
        answers.addWidget(self.work, 1)
        column.addWidget(Reflow((left, self.form), BESIDE_PX, (5, 2)))
        column.addStretch()
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(Scrolled(content))

    def _connect(self) -> None:
        self._session.follow(self._follow)
        self._budget.changed.connect(self._changed)
        self._errand.done.connect(self._show)
        self.form.changed.connect(self._budget.want)
        self.work.axis.changed.connect(self._soon.mark)
        self.work.band.goal_wanted.connect(self._align_to)
        self.work.aim.aim_chosen.connect(self._session.set_aim)
        self.site_key.clicked.connect(self.site_wanted)
        example = self.tr("Invented target")
        self.example_key.clicked.connect(lambda: self._budget.take_example(example))

    def _align_to(self, arcmin: float) -> None:
        """Whatever the person typed gives way; the budget is followed, where it is tonight's."""
        self._session.clear_target()
        if not math.isclose(self._tonight.target_arcmin, arcmin):
            self._session.set_target(arcmin)

    def _explanation(self) -> str:
        return self.tr(
            "As good as your picture needs, no better. Say what you photograph and with what: this "
            "page tells how far off the axis may be before stars smear."
        )

    def stop(self) -> None:
        """Waits for what is being worked out; harmless twice."""
        self._errand.close()

    def _changed(self) -> None:
        """By the person: answered at once."""
        self._show_form()
        self._soon.mark()

    def _follow(self, snapshot: Snapshot) -> None:
        """Settings are answered at once, new readings when words are due."""
        self._tonight = snapshot
        step = (snapshot.site, snapshot.air, snapshot.aim, snapshot.target_arcmin)
        if step != self._step:
            self._step = step
            self._changed()
        else:
            self._readings.mark()

    def _show_form(self) -> None:
        try:
            optics = self._budget.optics_of_set()
        except ValueError as reason:
            of_set = str(reason)
        else:
            form = self.tr(
                "{focal:g} mm, {width} × {height} pixels of {pixel:g} µm, {scale:.2f}″ each"
            )
            of_set = form.format(
                focal=optics.focal_length_mm,
                width=optics.width_px,
                height=optics.height_px,
                pixel=optics.pixel_um,
                scale=optics.scale_arcsec_per_px,
            )
        self.form.show_wanted(self._budget.wanted, of_set)

    def _ask(self) -> None:
        question = self._question()
        if isinstance(question, str):
            self.work.show_problem(question)
            return
        self._errand.send(lambda: work_out(question))

    def _question(self) -> BudgetQuestion | str:
        """What to work out, or a sentence on what is missing."""
        snapshot = self._tonight
        is_solved = snapshot.solution is not None and snapshot.solution.determined
        self.work.axis.show_solved(is_solved)
        self.site_key.setVisible(snapshot.site is None)
        self.example_key.hide()
        if snapshot.site is None or snapshot.air is None:
            return self.tr("The air and the sky over you count: enter your site first.")
        try:
            task = self._budget.task()
        except ValueError as reason:
            self.example_key.setVisible(self._budget.wanted.declination_deg is None)
            return str(reason)
        axis = self.work.axis
        return BudgetQuestion(
            task,
            snapshot.site,
            snapshot.air,
            snapshot.aim,
            snapshot.solution,
            axis.axis(),
            axis.typed_arcmin(),
        )

    def _show(self, answer: object) -> None:
        if isinstance(self._question(), str):  # overtaken by what the person did meanwhile
            return
        if isinstance(answer, BudgetAnswer):
            self.work.show_answer(answer, self._tonight.target_arcmin, self._tonight.aim)
            return
        broken = self.tr("This could not be worked out because of a fault in the program.")
        self.work.show_problem(answer if isinstance(answer, str) else broken)
