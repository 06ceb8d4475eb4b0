"""The Field rotation page: how fast does the field turn, and how long may I expose?"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence

from PySide6.QtWidgets import QWidget

from app.night.plan import Evening
from app.pages.rotation.sections import (
    DriveSection,
    RotationExposureSection,
    SkySection,
    TiltedSection,
)
from app.pages.rotation.study import RotationStudy, question, study
from app.pages.rotation.words import facts
from app.pages.shared import EveningPage, Placeless
from app.ui.form import Section
from app.ui.style import Theme
from app.ui.text import Fact, Facts
from core.sky.clocks import Zone

SKY, EXPOSURES, DRIVE, TILTED = "sky", "exposures", "drive", "tilted"


class RotationPage(EveningPage):
    """The moment picked is the page's own; all else it asks about is the evening's."""

    def __init__(self, evening: Evening, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(evening, parent)
        self._theme = theme
        self._moment_utc_s = math.nan
        placeless = Placeless(
            self.tr(
                "A mount that stands upright, turning about the vertical, lets the stars in its "
                "field turn. This page shows how fast over the whole sky, how long one may expose, "
                "and what is left of the picture after stacking."
            ),
            self.tr("The sky turns by your latitude: say where you are."),
        )
        turning, longest = self.tr("The field turns"), self.tr("Longest exposure")
        answer = Facts(
            self.tr("Field rotation of the target"),
            (turning, longest, self.tr("The target stands")),
        )
        headline = self.tr("How fast does the field turn?")
        self.arrange(headline, placeless, answer, self._made_sections())

    def _made_sections(self) -> list[Section]:
        plans, theme = self._evening.plans, self._theme
        return [
            Section(SKY, self.tr("Sky"), lambda: self.made(SkySection(theme))),
            Section(
                EXPOSURES,
                self.tr("Exposures"),
                lambda: self.made(RotationExposureSection(plans, theme)),
            ),
            Section(
                DRIVE,
                self.tr("Zenith and derotator"),
                lambda: self.made(DriveSection(plans, theme)),
            ),
            Section(
                TILTED,
                self.tr("Wedge or platform"),
                lambda: self.made(TiltedSection(plans, theme)),
            ),
        ]

    def question(self) -> Callable[[], RotationStudy] | None:
        asked = question(self._evening, self._moment_utc_s)
        return None if asked is None else lambda: study(asked)

    def told(self, answer: RotationStudy | None, zone: Zone) -> tuple[Sequence[Fact], str]:
        has_target = answer is None or answer.way is not None
        below = "" if has_target else self.tr("Choose a target to see its own figures.")
        return facts(answer, zone), below

    def pick(self, utc_s: float) -> None:
        self._moment_utc_s = utc_s
        self.ask()
