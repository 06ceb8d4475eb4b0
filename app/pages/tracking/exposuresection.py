"""How long one may expose: unguided, trained and guided."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from app.pages.tracking import pictures
from app.pages.tracking.amounts import BenchAmount
from app.pages.tracking.bench import Bench
from app.pages.tracking.figures import (
    ALLOWED,
    DECLINATION,
    DELAY,
    EXPOSURE,
    GUIDED_ALLOWED,
    INTERVAL,
    NOISE,
    SCALE,
    SHARE,
)
from app.pages.tracking.section import Section
from app.theme.theme import Theme
from app.widgets.facts import Fact, Facts
from app.widgets.spans import limit_words
from app.widgets.text import Panel, Text

if TYPE_CHECKING:
    from core.tracking.exposure import ChanceCurve


class ExposureSection(Section):
    """`scale`: where the image scale is typed, for those who lead here."""

    def __init__(self, theme: Theme, bench: Bench, parent: QWidget | None = None) -> None:
        super().__init__(theme, bench, parent=parent)
        self.facts = Facts(
            self.tr("Longest exposures of which nine in ten are sharp"),
            (self.tr("Unguided"), self.tr("Trained"), self.tr("Guided")),
        )
        self.sentence = Text("", "side")
        self.polar = Text("", "quiet")
        self.scale = BenchAmount(
            bench,
            "scale_arcsec_per_px",
            SCALE,
            self.tr("206.265 times the pixel in µm over the focal length in mm."),
        )
        self.arrange(
            (self.sentence, self.facts, self.plot, self.polar),
            (self._exposure_panel(), self._guide_panel()),
        )

    def _exposure_panel(self) -> Panel:
        bench, panel = self.bench, Panel(self.tr("The exposure"))
        for part in (
            self.scale,
            BenchAmount(bench, "allowed_px", ALLOWED),
            BenchAmount(bench, "exposure_s", EXPOSURE, self.tr("The one the verdict is about.")),
            BenchAmount(bench, "declination_deg", DECLINATION),
        ):
            panel.column.addWidget(part)
        return panel

    def _guide_panel(self) -> Panel:
        bench, panel = self.bench, Panel(self.tr("How it would be guided"))
        larger = self.tr("The air moves a guided star too; more than unguided is usual.")
        middle = self.tr("From the middle of a guide exposure to its correction.")
        air = self.tr("What the air does to one measurement.")
        for part in (
            BenchAmount(bench, "guided_allowed_px", GUIDED_ALLOWED, larger),
            BenchAmount(bench, "guide_interval_s", INTERVAL),
            BenchAmount(bench, "guide_delay_s", DELAY, middle),
            BenchAmount(bench, "guide_share_percent", SHARE),
            BenchAmount(bench, "guide_noise_arcsec", NOISE, air),
        ):
            panel.column.addWidget(part)
        return panel

    def show_bench(self) -> None:
        study = self.bench.study
        curves = None if study is None else study.drive.curves.value
        for part in (self.facts, self.plot):
            part.setVisible(curves is not None)
        self.polar.say("")
        if study is None or study.drive.periodic.value is None:
            self.sentence.say(self.tr("Needs an unguided run: bring one in under Periodic error."))
            return
        self.sentence.say(study.drive.curves.problem)
        polar = study.drive.polar
        self.polar.say(polar.words(lambda one: one.sentence))
        if curves is not None:
            self.facts.show_facts([self._fact(one) for one in curves], self._limits())
            self.plot.show_picture(pictures.chances(curves))

    def _limits(self) -> str:
        figures = self.bench.figures()
        words = self.tr(
            "Of exposures begun at any moment at declination {dec:.0f}°, nine in ten smear less "
            "than {free:g} px, guided less than {held:g} px."
        )
        free = figures.allowed_px or 0.5
        return words.format(
            dec=figures.declination_deg or 0.0, free=free, held=figures.guided_allowed_px or free
        )

    def _fact(self, curve: ChanceCurve) -> Fact:
        if curve.longest_s <= 0.0:
            return Fact("—", curve.sentence)
        known = curve.exposure_s[curve.chance == curve.chance]
        is_end = known.size > 0 and curve.longest_s >= float(known[-1])
        words = self.tr("as far as this run can tell") if is_end else ""
        return Fact(limit_words(curve.longest_s), words)
