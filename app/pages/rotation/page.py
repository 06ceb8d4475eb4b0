"""The Field rotation page: how fast does the field turn, and how long may I expose?"""

from __future__ import annotations

import math

from PySide6.QtCore import Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.headline import Headline
from app.pages.placeless import Placeless
from app.pages.rotation.drivesection import DriveSection
from app.pages.rotation.exposuresection import ExposureSection
from app.pages.rotation.question import question
from app.pages.rotation.skysection import SkySection
from app.pages.rotation.study import Study, study
from app.pages.rotation.tiltedsection import TiltedSection
from app.pages.rotation.verdictwords import facts
from app.pages.targetbar import TargetBar
from app.session.errand import Errand
from app.session.evening import Evening
from app.theme.theme import Theme
from app.widgets.facts import Facts
from app.widgets.key import Key
from app.widgets.reflow import Reflow
from app.widgets.scrolled import Scrolled
from app.widgets.sections import Section, Sections

SKY, EXPOSURES, DRIVE, TILTED = "sky", "exposures", "drive", "tilted"
Part = SkySection | ExposureSection | DriveSection | TiltedSection


class RotationPage(QWidget):
    """Everything is worked out beside the window's thread; the newest question wins.

    `site_wanted`: the person wants to say where they are. `worked_out`: a Study is shown.
    """

    site_wanted = Signal()
    worked_out = Signal()

    def __init__(self, evening: Evening, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._evening = evening
        self._theme = theme
        self._moment_utc_s = math.nan
        self._study: Study | None = None
        self._errand = Errand(self)
        self._errand.done.connect(self._take)
        self._bar = TargetBar(evening)
        self._placeless = Placeless(
            self.tr(
                "A mount that stands upright, turning about the vertical, lets the stars in its "
                "field turn. This page shows how fast over the whole sky, how long one may expose, "
                "and what is left of the picture after stacking."
            ),
            self.tr("The sky turns by your latitude: say where you are."),
        )
        self._placeless.site_wanted.connect(self.site_wanted)
        self._facts = Facts(
            self.tr("Field rotation of the target"),
            (self.tr("The field turns"), self.tr("Longest exposure"), self.tr("The target stands")),
        )
        self._sections = Sections(self.tr("Part of the page"), self._made_sections())
        self._sections.shown.connect(lambda _name: self._show_section())
        self._answer = Reflow((self._bar, self._facts), 900, (2, 5))
        self._arrange()
        evening.changed.connect(self._changed)
        self._sections.show_section(SKY)
        self._changed()
        self.setFocusProxy(self._bar)

    def _made_sections(self) -> list[Section]:
        return [
            Section(SKY, self.tr("Sky"), lambda: self._made(SkySection(self._theme))),
            Section(
                EXPOSURES,
                self.tr("Exposures"),
                lambda: self._made(ExposureSection(self._evening.plans, self._theme)),
            ),
            Section(
                DRIVE,
                self.tr("Zenith and derotator"),
                lambda: self._made(DriveSection(self._evening.plans, self._theme)),
            ),
            Section(
                TILTED,
                self.tr("Wedge or platform"),
                lambda: self._made(TiltedSection(self._evening.plans, self._theme)),
            ),
        ]

    def _made(self, section: Part) -> QWidget:
        section.picked.connect(self.pick)
        return section

    def _arrange(self) -> None:
        content = QWidget()
        column = QVBoxLayout(content)
        column.setContentsMargins(16, 12, 16, 12)
        column.setSpacing(10)
        column.addWidget(Headline(self.tr("How fast does the field turn?"), self._evening))
        for part in (self._placeless, self._answer):
            column.addWidget(part)
        column.addWidget(self._sections, 1)
        column.addStretch()
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(Scrolled(content))

    def bar(self) -> TargetBar:
        return self._bar

    def facts(self) -> Facts:
        return self._facts

    def sections(self) -> Sections:
        return self._sections

    def site_button(self) -> Key:
        return self._placeless.site_button()

    def pick(self, utc_s: float) -> None:
        """The moment to look at."""
        self._moment_utc_s = utc_s
        self._ask()

    def stop(self) -> None:
        """Nothing more is worked out."""
        self._errand.close()
        self._bar.stop()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._evening.refresh()
        self._ask()  # time has gone on in any case

    def _changed(self) -> None:
        has_site = self._evening.around() is not None
        self._placeless.setVisible(not has_site)
        self._answer.setVisible(has_site)
        self._sections.setVisible(has_site)
        if self.isVisible():
            self._ask()

    def _ask(self) -> None:
        asked = question(self._evening, self._moment_utc_s)
        if asked is None:
            return
        if self._study is None:
            waiting = facts(None, self._evening.zone())
            self._facts.show_facts(waiting, self.tr("Being worked out …"))
        self._errand.send(lambda: study(asked))

    def _take(self, answer: object) -> None:
        if not isinstance(answer, Study):
            self._facts.show_facts(
                facts(None, self._evening.zone()),
                self.tr("This could not be worked out because of a fault in the program."),
            )
            return
        self._study = answer
        below = "" if answer.way is not None else self.tr("Choose a target to see its own figures.")
        self._facts.show_facts(facts(answer, self._evening.zone()), below)
        self._show_section()
        self.worked_out.emit()

    def _show_section(self) -> None:
        section = self._sections.section(self._sections.current())
        if self._study is not None and isinstance(section, Part):
            section.show_study(self._study, self._evening.zone())
