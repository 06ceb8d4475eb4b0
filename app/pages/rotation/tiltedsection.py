"""A fork on a wedge, or a Dobsonian on a platform, that is set for another latitude."""

from __future__ import annotations

import numpy as np
from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.planamounts import PlanAmounts
from app.pages.rotation import pictures
from app.pages.rotation.figures import FIGURES
from app.pages.rotation.question import PLATFORM, WEDGE
from app.pages.rotation.study import Study, Way
from app.pages.rotation.verdictwords import never_seen
from app.session.plans import Plans
from app.theme.theme import Theme
from app.widgets.choice import Choice
from app.widgets.nightview import NightView
from app.widgets.reflow import Reflow
from app.widgets.spans import limit_words
from app.widgets.text import Panel, Text
from core.imaging.rotationexposure import LONGEST_S
from core.sky.clocks import Zone

FIELDS = ("set_latitude_deg", "set_azimuth_deg")


class TiltedSection(QWidget):
    """`picked` carries a moment, Unix seconds."""

    picked = Signal(float)

    def __init__(self, plans: Plans, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._plans = plans
        self._kinds = Choice(
            self.tr("On what the mount stands"),
            [
                (WEDGE, self.tr("Fork on a wedge")),
                (PLATFORM, self.tr("Dobsonian on a platform")),
            ],
        )
        self._kinds.chosen.connect(lambda kind: plans.set_word("tilted", kind))
        self._amounts = PlanAmounts(
            plans,
            FIGURES,
            FIELDS,
            {"set_latitude_deg": self.tr("empty: the latitude of the site")},
        )
        self._left = Text("", "side")
        self._beside = Text("")
        self._assumed = Text("", "small")
        self._night = NightView(self.tr("Rotation that is left through the night"), theme)
        self._night.picked.connect(self.picked)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(Reflow((self._settings(), self._result()), 900, (5, 6)))

    def _settings(self) -> Panel:
        panel = Panel(self.tr("Wedge or platform"))
        panel.column.addWidget(self._kinds)
        panel.column.addWidget(self._amounts)
        for part in (self._left, self._beside, self._assumed):
            panel.column.addWidget(part)
        panel.column.addStretch()
        return panel

    def _result(self) -> Panel:
        panel = Panel(self.tr("What is left of the rotation"))
        panel.column.addWidget(self._night, 1)
        return panel

    def kinds(self) -> Choice:
        return self._kinds

    def amounts(self) -> PlanAmounts:
        return self._amounts

    def night(self) -> NightView:
        return self._night

    def said(self) -> str:
        return f"{self._left.text()} {self._beside.text()}".strip()

    def show_study(self, study: Study, zone: Zone) -> None:
        self._amounts.show_plans()
        self._kinds.show_choice(study.question.tilted.kind)
        unseen = "" if study.way is None else never_seen(study, study.way)
        self._night.setVisible(study.way is not None and not unseen)
        self._assumed.say(self._assumed_words(study))
        if study.way is None or unseen:
            self._left.say(unseen or self.tr("Choose a target above to see what is left on it."))
            self._beside.say("")
            return
        self._left.say(self._left_words(study, study.way))
        self._beside.say(self._beside_words(study, study.way))
        self._night.show_picture(pictures.residual(study, zone))
        self._night.show_moment(study.moment_utc_s)

    def _left_words(self, study: Study, way: Way) -> str:
        left = way.at(way.residual_deg_per_hour, study.moment_utc_s)
        if abs(left) < 1e-4:
            return self.tr("Set for this latitude and this pole, nothing is left.")
        longest = min(study.allowed_deg / abs(left) * 3600.0, LONGEST_S)
        return self.tr(
            "At the moment picked {left:.2g}° an hour are left: the corner smears by {smear:g} px "
            "after {time}."
        ).format(left=abs(left), smear=study.question.smear_px, time=limit_words(longest))

    def _beside_words(self, study: Study, way: Way) -> str:
        plain = abs(way.at(way.track.rate_deg_per_hour, study.moment_utc_s))
        left = abs(way.at(way.residual_deg_per_hour, study.moment_utc_s))
        if left < 1e-4 or plain < 1e-4:
            return ""
        return self.tr(
            "On its own, the mount would let the field turn {plain:.2g}° an hour."
        ).format(plain=plain)

    def _assumed_words(self, study: Study) -> str:
        tilted = study.question.tilted
        latitude = study.question.around.site.latitude_deg
        set_for = latitude if np.isnan(tilted.latitude_deg) else tilted.latitude_deg
        said = self.tr("Set for {set:.1f}°, used at {here:.1f}°.").format(
            set=set_for, here=latitude
        )
        if tilted.kind == PLATFORM:
            said += " " + self.tr("The platform is taken to stand level at the moment picked.")
        return said
