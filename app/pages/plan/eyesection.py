"""Where the eyepiece of a Newtonian on an equatorial mount ends up."""

from __future__ import annotations

import numpy as np
from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from app.pages.plan import pictures
from app.pages.plan.eyestudy import EyeStudy
from app.pages.plan.mountchoice import MountChoice
from app.pages.plan.study import Study
from app.pages.planamounts import PlanAmounts
from app.session.planfigures import FIGURES
from app.session.plans import Plans
from app.theme.theme import Theme
from app.widgets.nightpicture import clock_words
from app.widgets.nightview import NightView
from app.widgets.reflow import Reflow
from app.widgets.text import Panel, Text
from app.widgets.tubedrawing import TubeDrawing, place_words
from core.mount.equipment import MountKind
from core.sky.clocks import Zone

FIELDS = (
    *("axes_height_m", "tube_offset_m", "forward_m", "out_m", "turned_deg"),
    *("eye_low_m", "eye_high_m"),
)


class EyeSection(QWidget):
    """`picked` carries a moment, Unix seconds."""

    picked = Signal(float)

    def __init__(self, plans: Plans, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._mounts = MountChoice(plans)
        self._amounts = PlanAmounts(
            plans,
            FIGURES,
            FIELDS,
            hints={"turned_deg": self.tr("0: away from the mount; clockwise from behind.")},
        )
        self._sentence = Text("", "side")
        self._advice = Text("")
        self._now = Text("", "quiet")
        self._drawing = TubeDrawing(theme)
        self._view = NightView(self.tr("Height and place of the eyepiece"), theme)
        self._view.picked.connect(self.picked)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(Reflow((self._settings(), self._result()), 940, (4, 5)))

    def _settings(self) -> Panel:
        panel = Panel(self.tr("Newtonian and mount"))
        panel.column.addWidget(self._mounts)
        panel.column.addWidget(self._amounts)
        panel.column.addStretch()
        return panel

    def _result(self) -> Panel:
        panel = Panel(self.tr("Where the eyepiece ends up"))
        panel.column.addWidget(self._sentence)
        row = QHBoxLayout()
        row.addWidget(self._drawing, 0, Qt.AlignmentFlag.AlignTop)
        words = QVBoxLayout()
        for part in (self._advice, self._now):
            words.addWidget(part)
        words.addStretch()
        row.addLayout(words, 1)
        panel.column.addLayout(row)
        panel.column.addWidget(self._view, 1)
        return panel

    def mounts(self) -> MountChoice:
        return self._mounts

    def amounts(self) -> PlanAmounts:
        return self._amounts

    def view(self) -> NightView:
        return self._view

    def said(self) -> str:
        parts = (self._sentence, self._advice, self._now)
        return " ".join(part.text() for part in parts if part.text())

    def show_study(self, study: Study, zone: Zone) -> None:
        self._mounts.show_plans()
        self._amounts.show_plans()
        seen = study.eye
        for part in (self._drawing, self._view):
            part.setVisible(seen is not None)
        if seen is None:
            self._sentence.say(self._why(study))
            self._advice.say("")
            self._now.say("")
            return
        self._sentence.say(seen.path.sentence)
        self._advice.say(self._advice_words(seen))
        self._show_moment(study, seen, zone)
        self._view.show_picture(pictures.eye(study, seen, zone))
        self._view.show_moment(study.moment_utc_s)

    def _why(self, study: Study) -> str:
        if not study.question.kind.is_equatorial:
            return self.tr(
                "On an alt-azimuth mount the eyepiece stays on the same side of the tube all "
                "night; only its height changes. This is about equatorial mounts."
            )
        if study.aim is None:
            return self.tr("Choose a target above to see where the eyepiece goes.")
        if study.question.kind is MountKind.GERMAN_EQUATORIAL and study.aim.problem:
            return study.aim.problem
        return self.tr("The target gives no session tonight.")

    def _advice_words(self, seen: EyeStudy) -> str:
        before = float(np.mean(seen.path.is_comfortable))
        after = float(np.mean(seen.best.is_comfortable))
        if after <= before + 0.005:
            return self.tr("No other turn in the rings does better.")
        return (
            self.tr(
                "Turned to {turn:.0f}° in its rings it is in reach for {after:.0f} % of the "
                "session instead of {before:.0f} %."
            )
            .format(turn=seen.best_deg, after=100.0 * after, before=100.0 * before)
            .replace("-", "−")
        )

    def _show_moment(self, study: Study, seen: EyeStudy, zone: Zone) -> None:
        at = int(np.argmin(np.abs(seen.utc_s - study.moment_utc_s)))
        angle = float(seen.path.round_tube_deg[at])
        self._drawing.show_eyepiece(angle)
        self._now.say(
            self.tr(
                "At {time} it is {place}, {height:.1f} m up; drawn as seen from behind."
            ).format(
                time=clock_words(zone, float(seen.utc_s[at])),
                place=place_words(angle),
                height=float(seen.path.height_m[at]),
            )
        )
