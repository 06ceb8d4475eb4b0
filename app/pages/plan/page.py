"""The Night plan page: what can I do tonight, and when?"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import replace

from PySide6.QtWidgets import QWidget

from app.night.notes import FlipBook
from app.night.plan import BEGIN_NAME, Evening
from app.pages.plan.flip import FlipSection
from app.pages.plan.sections import BestSection, EyeSection, StarsSection, TonightSection
from app.pages.plan.study import PlanStudy, PlanWish, question, study
from app.pages.plan.words import date_words, facts
from app.pages.shared import EveningPage, Placeless
from app.ui.form import Section
from app.ui.style import Theme
from app.ui.text import Fact, Facts
from core.night.checklist import OwnStep
from core.sky.clocks import Zone

TONIGHT, BEST, FLIP, STARS, EYE = "tonight", "best", "flip", "stars", "eye"


class PlanPage(EveningPage):
    """The moment picked and the session's end are the page's own; the rest is the evening's."""

    def __init__(
        self,
        evening: Evening,
        theme: Theme,
        own: Callable[[], tuple[OwnStep, ...]] = tuple,
        flips: FlipBook | None = None,
        parent: QWidget | None = None,
    ) -> None:
        """`own`: the person's own steps of the checklist. `flips`: what was done of tonight's."""
        super().__init__(evening, parent)
        self._flips = flips
        self._own = own
        self._theme = theme
        self._plans = evening.plans
        self._wish = PlanWish(math.nan, math.nan, math.nan)
        placeless = Placeless(
            self.tr(
                "When it is dark, what stands well, when the mount must flip, and which stars to "
                "set it up by: one line of time for the whole night."
            ),
            self.tr("All of it depends on where you are: say where that is."),
        )
        names = self.tr("Dark"), self.tr("Target, highest"), self.tr("Flip")
        answer = Facts(self.tr("Tonight"), names)
        headline = self.tr("What can I do tonight, and when?")
        self.arrange(headline, placeless, answer, self._made_sections())

    def _made_sections(self) -> list[Section]:
        plans, theme = self._plans, self._theme
        return [
            Section(TONIGHT, self.tr("Time line"), lambda: self.made(TonightSection(plans, theme))),
            Section(BEST, self.tr("Best placed"), lambda: self.made(BestSection(plans))),
            Section(FLIP, self.tr("Meridian flip"), self._made_flip),
            Section(
                STARS, self.tr("Reference stars"), lambda: self.made(StarsSection(plans, theme))
            ),
            Section(EYE, self.tr("Eyepiece"), lambda: self.made(EyeSection(plans, theme))),
        ]

    def _made_flip(self) -> QWidget:
        section = FlipSection(self._plans, self._theme, self._flips)
        section.session_given.connect(self._session_given)
        return self.made(section)

    def question(self) -> Callable[[], PlanStudy] | None:
        begin = self._plans.number(BEGIN_NAME, math.nan)
        asked = question(self._evening, replace(self._wish, begin_utc_s=begin), self._own())
        return None if asked is None else lambda: study(asked)

    def told(self, answer: PlanStudy | None, zone: Zone) -> tuple[Sequence[Fact], str]:
        return facts(answer, zone), "" if answer is None else date_words(answer, zone)

    def pick(self, utc_s: float) -> None:
        self._wish = replace(self._wish, moment_utc_s=utc_s)
        self.ask()

    def _session_given(self, begin_utc_s: float, end_utc_s: float) -> None:
        """The beginning belongs to the evening: the checklist is timed back from it."""
        self._wish = replace(self._wish, end_utc_s=end_utc_s)
        self._plans.set_number(BEGIN_NAME, begin_utc_s)
        self.ask()
