"""The Tracking page: how well does this mount track, and what first?"""

from __future__ import annotations

import secrets
from typing import TYPE_CHECKING

import numpy as np
from PySide6.QtCore import Signal
from PySide6.QtGui import QHideEvent, QShowEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.tracking.figures import Given
from app.pages.tracking.head import Head
from app.pages.tracking.model import TrackingModel
from app.pages.tracking.parts import TrackingParts
from app.pages.tracking.pointingsection import PointingSection
from app.pages.tracking.sections import (
    GuidingSection,
    LongestExposureSection,
    PeriodicSection,
    TrainingSection,
    VibrationSection,
)
from app.ui.form import Section, Sections
from app.ui.style import Theme
from app.ui.text import Scrolled, Text

if TYPE_CHECKING:
    from app.night.session import Session

PERIODIC, TRAINING, EXPOSURE = "periodic", "training", "exposure"
GUIDING, POINTING, VIBRATION = "guiding", "pointing", "vibration"


class TrackingPage(QWidget):
    """`site_wanted`: the place is needed, and is entered elsewhere."""

    site_wanted = Signal()

    def __init__(
        self,
        session: Session,
        theme: Theme,
        parts: TrackingParts,
        rng: np.random.Generator | None = None,
        parent: QWidget | None = None,
    ) -> None:
        """`rng`: of the practice; None for another one each time."""
        super().__init__(parent)
        self._theme = theme
        self._rng = rng or np.random.default_rng(secrets.randbits(64))
        self.bench = TrackingModel(session, parts, self)
        self.head = Head(theme, self.bench)
        self.sections = Sections(self.tr("Part"), self._offered())
        self._arrange()
        self.head.scale_wanted.connect(self._type_scale)
        self.head.practice_wanted.connect(self._practise)
        self.head.import_wanted.connect(self._import)
        self.sections.show_section(PERIODIC)
        self.setFocusProxy(self.sections.keys().button(PERIODIC))
        self.bench.begin()

    def _arrange(self) -> None:
        content = QWidget()
        inner = QVBoxLayout(content)
        inner.setContentsMargins(16, 12, 16, 12)
        inner.setSpacing(12)
        question = Text(self.tr("How well does this mount track, and what first?"), "question")
        for part in (question, self.head, self.sections):
            inner.addWidget(part)
        inner.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        self._scrolled = Scrolled(content)
        column.addWidget(self._scrolled)
        self.sections.shown.connect(self._bring_up)

    def show_top(self) -> None:
        """The verdict, wherever the page was scrolled to."""
        self._scrolled.verticalScrollBar().setValue(0)

    def _bring_up(self) -> None:
        """In a low window a section that was chosen would begin below its edge."""
        top = self.sections.y()
        if top > self._scrolled.viewport().height() // 2:
            self._scrolled.verticalScrollBar().setValue(top - 12)

    def _offered(self) -> list[Section]:
        theme, bench = self._theme, self.bench
        return [
            Section(
                PERIODIC,
                self.tr("Periodic error"),
                lambda: PeriodicSection(theme, bench, self._practice_run),
            ),
            Section(TRAINING, self.tr("Training"), lambda: TrainingSection(theme, bench)),
            Section(
                EXPOSURE, self.tr("Longest exposure"), lambda: LongestExposureSection(theme, bench)
            ),
            Section(
                GUIDING,
                self.tr("Guiding"),
                lambda: GuidingSection(theme, bench, self._practice_guiding),
            ),
            Section(POINTING, self.tr("Pointing"), self._pointing),
            Section(
                VIBRATION, self.tr("Vibration"), lambda: VibrationSection(theme, bench, self._rng)
            ),
        ]

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self.bench.watch(True)

    def hideEvent(self, event: QHideEvent) -> None:
        super().hideEvent(event)
        self.bench.watch(False)

    def stop(self) -> None:
        """Waits for what is under way beside the window; harmless twice."""
        self.bench.close()
        for name in (PERIODIC, TRAINING, GUIDING, POINTING, VIBRATION):
            section = self.sections.section(name)
            if isinstance(section, PeriodicSection | GuidingSection):
                section.box.close_jobs()
            elif isinstance(section, TrainingSection | PointingSection | VibrationSection):
                section.close_jobs()

    def show_section(self, name: str) -> QWidget:
        self.sections.show_section(name)
        section = self.sections.section(name)
        assert section is not None
        return section

    def _pointing(self) -> PointingSection:
        made = PointingSection(self._theme, self.bench, self._rng)
        made.site_wanted.connect(self.site_wanted)
        return made

    def _practise(self) -> None:
        self._periodic().box.practise()

    def _import(self) -> None:
        self._periodic().box.choose()

    def _periodic(self) -> PeriodicSection:
        """Into view, where a run says how it fares."""
        section = self.show_section(PERIODIC)
        assert isinstance(section, PeriodicSection)
        return section

    def _type_scale(self) -> None:
        section = self.show_section(EXPOSURE)
        assert isinstance(section, LongestExposureSection)
        section.scale.setFocus()

    def _practice_run(self) -> Given:
        from app.pages.tracking.practice import practice_run

        return practice_run(self.bench.parts.now(), self._rng)

    def _practice_guiding(self) -> Given:
        from app.pages.tracking.practice import practice_guiding

        return practice_guiding(self.bench.parts.now(), self._rng)
