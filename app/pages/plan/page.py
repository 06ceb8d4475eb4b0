"""The Night plan page: what can I do tonight, and when?"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace

from PySide6.QtCore import Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.headline import Headline
from app.pages.placeless import Placeless
from app.pages.plan.bestsection import BestSection
from app.pages.plan.eyesection import EyeSection
from app.pages.plan.factwords import date_words, facts
from app.pages.plan.flipsection import FlipSection
from app.pages.plan.question import Wish, question
from app.pages.plan.starssection import StarsSection
from app.pages.plan.study import Study, study
from app.pages.plan.tonightsection import TonightSection
from app.pages.targetbar import TargetBar
from app.session.errand import Errand
from app.session.evening import Evening
from app.session.flipbook import FlipBook
from app.session.occasion import BEGIN_NAME
from app.theme.theme import Theme
from app.widgets.facts import Facts
from app.widgets.key import Key
from app.widgets.reflow import Reflow
from app.widgets.scrolled import Scrolled
from app.widgets.sections import Section, Sections
from app.widgets.text import Text
from core.night.checklistown import OwnStep

TONIGHT, BEST, FLIP, STARS, EYE = "tonight", "best", "flip", "stars", "eye"
Part = TonightSection | BestSection | FlipSection | StarsSection | EyeSection


class PlanPage(QWidget):
    """Everything is worked out beside the window's thread; the newest question wins.

    `site_wanted`: the person wants to say where they are. `worked_out`: a Study is shown.
    """

    site_wanted = Signal()
    worked_out = Signal()

    def __init__(
        self,
        evening: Evening,
        theme: Theme,
        own: Callable[[], tuple[OwnStep, ...]] = tuple,
        flips: FlipBook | None = None,
        parent: QWidget | None = None,
    ) -> None:
        """`own`: the person's own steps of the checklist. `flips`: what was done of tonight's."""
        super().__init__(parent)
        self._flips = flips
        self._own = own
        self._evening = evening
        self._theme = theme
        self._wish = Wish(math.nan, math.nan, math.nan)
        self._study: Study | None = None
        self._errand = Errand(self)
        self._errand.done.connect(self._take)
        self._bar = TargetBar(evening)
        self._placeless = Placeless(
            self.tr(
                "When it is dark, what stands well, when the mount must flip, and which stars to "
                "set it up by: one line of time for the whole night."
            ),
            self.tr("All of it depends on where you are: say where that is."),
        )
        self._placeless.site_wanted.connect(self.site_wanted)
        self._special = Text("", "side")
        self._facts = Facts(
            self.tr("Tonight"), (self.tr("Dark"), self.tr("Target, highest"), self.tr("Flip"))
        )
        self._sections = Sections(self.tr("Part of the page"), self._made_sections())
        self._sections.shown.connect(lambda _name: self._show_section())
        self._answer = Reflow((self._bar, self._facts), 900, (2, 5))
        self._arrange()
        evening.changed.connect(self._changed)
        self._sections.show_section(TONIGHT)
        self._changed()
        self.setFocusProxy(self._bar)

    def _made_sections(self) -> list[Section]:
        plans, theme = self._evening.plans, self._theme
        return [
            Section(
                TONIGHT, self.tr("Time line"), lambda: self._made(TonightSection(plans, theme))
            ),
            Section(BEST, self.tr("Best placed"), lambda: self._made(BestSection(plans))),
            Section(FLIP, self.tr("Meridian flip"), lambda: self._made_flip()),
            Section(
                STARS, self.tr("Reference stars"), lambda: self._made(StarsSection(plans, theme))
            ),
            Section(EYE, self.tr("Eyepiece"), lambda: self._made(EyeSection(plans, theme))),
        ]

    def _made(self, section: Part) -> QWidget:
        section.picked.connect(self.pick)
        return section

    def _made_flip(self) -> QWidget:
        section = FlipSection(self._evening.plans, self._theme, self._flips)
        section.session_given.connect(self._session_given)
        return self._made(section)

    def _arrange(self) -> None:
        content = QWidget()
        column = QVBoxLayout(content)
        column.setContentsMargins(16, 12, 16, 12)
        column.setSpacing(10)
        column.addWidget(Headline(self.tr("What can I do tonight, and when?"), self._evening))
        for part in (self._placeless, self._special, self._answer):
            column.addWidget(part)
        column.addWidget(self._sections, 1)
        column.addStretch()
        self._special.hide()
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(Scrolled(content))

    def bar(self) -> TargetBar:
        return self._bar

    def facts(self) -> Facts:
        return self._facts

    def special(self) -> str:
        """What is out of the ordinary about this night."""
        return self._special.text()

    def sections(self) -> Sections:
        return self._sections

    def site_button(self) -> Key:
        return self._placeless.site_button()

    def pick(self, utc_s: float) -> None:
        """The moment to look at."""
        self._wish = replace(self._wish, moment_utc_s=utc_s)
        self._ask()

    def stop(self) -> None:
        """Nothing more is worked out."""
        self._errand.close()
        self._bar.stop()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._evening.refresh()
        self._ask()  # time has gone on in any case

    def _session_given(self, begin_utc_s: float, end_utc_s: float) -> None:
        """The beginning belongs to the evening: the checklist is timed back from it."""
        self._wish = replace(self._wish, end_utc_s=end_utc_s)
        self._evening.plans.set_number(BEGIN_NAME, begin_utc_s)
        self._ask()

    def _wished(self) -> Wish:
        return replace(self._wish, begin_utc_s=self._evening.plans.number(BEGIN_NAME, math.nan))

    def _changed(self) -> None:
        has_site = self._evening.around() is not None
        self._placeless.setVisible(not has_site)
        self._answer.setVisible(has_site)
        self._sections.setVisible(has_site)
        if self.isVisible():
            self._ask()

    def _ask(self) -> None:
        asked = question(self._evening, self._wished(), self._own())
        if asked is None:
            return
        if self._study is None:
            waiting = facts(None, self._evening.zone())
            self._facts.show_facts(waiting, self.tr("Being worked out …"))
        self._errand.send(lambda: study(asked))

    def _take(self, answer: object) -> None:
        zone = self._evening.zone()
        if not isinstance(answer, Study):
            fault = self.tr("This could not be worked out because of a fault in the program.")
            self._facts.show_facts(facts(None, zone), fault)
            return
        self._study = answer
        self._facts.show_facts(facts(answer, zone), date_words(answer, zone))
        self._special.say(" ".join(answer.line.sentences))
        self._show_section()
        self.worked_out.emit()

    def _show_section(self) -> None:
        section = self._sections.section(self._sections.current())
        if self._study is not None and isinstance(section, Part):
            section.show_study(self._study, self._evening.zone())
