"""The guiding check: how well guiding holds the star, what is wrong, and what to change."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

import numpy as np
from PySide6.QtWidgets import QWidget

from app.pages.tracking import pictures
from app.pages.tracking.amounts import BenchAmount
from app.pages.tracking.bench import Bench
from app.pages.tracking.figures import DITHER, RATE, SEEING, SETTLED
from app.pages.tracking.pairs import UnusablePairs, pairs
from app.pages.tracking.question import Given, Reversal
from app.pages.tracking.runbox import RunBox, sentences
from app.pages.tracking.section import Section
from app.theme.theme import Theme
from app.widgets.curveplot import CurvePlot
from app.widgets.facts import Fact, Facts
from app.widgets.lines import Lines
from app.widgets.named import Named
from app.widgets.text import Panel, Text

if TYPE_CHECKING:
    from core.tracking.guiding import GuidingCheck


LANE_PX = 190  # high enough to see a swing, low enough for two


class GuidingSection(Section):
    def __init__(
        self,
        theme: Theme,
        bench: Bench,
        practise: Callable[[], Given],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(theme, bench, LANE_PX, parent)
        self.sentence = Text("", "side")
        self.facts = Facts(
            self.tr("What guiding leaves"),
            (self.tr("Right ascension"), self.tr("Declination"), self.tr("Ratio of the two")),
        )
        self.findings = Text()
        self.north = CurvePlot(theme, LANE_PX)
        self.north.hide()
        self.air, self.settling, self.play = Text("", "quiet"), Text(), Text()
        self.box = RunBox(
            self.tr("Some minutes of guiding"),
            self.tr(
                "The offsets of the guide star while it is guided, in both axes: five minutes or "
                "more, one line for each guide exposure."
            ),
            theme,
            bench,
            practise,
        )
        self.box.practice_key.setText(self.tr("Practice guiding"))
        self.box.import_key.setText(self.tr("Import guiding (CSV) …"))
        self.box.taken.connect(bench.take_guided)
        self.box.dropped.connect(bench.leave_guided_out)
        self.reversal = Lines(self.tr("Reversal in declination: asked and moved, in ″"))
        self.reversal.textChanged.connect(self._take_reversal)
        self.wrong = Text("", "alarm")
        self.arrange(
            (self.sentence, self.facts, self.findings, self.plot, self.north),
            (self.box, self._air_panel(), self._reversal_panel()),
        )

    def _air_panel(self) -> Panel:
        bench, panel = self.bench, Panel(self.tr("Air and dither"))
        width = self.tr("Width of a star at half its brightness.")
        for part in (
            BenchAmount(bench, "seeing_arcsec", SEEING, width),
            BenchAmount(bench, "dither_s", DITHER, self.tr("If the record holds a dither.")),
            BenchAmount(bench, "settled_arcsec", SETTLED),
            self.air,
            self.settling,
        ):
            panel.column.addWidget(part)
        return panel

    def _reversal_panel(self) -> Panel:
        panel = Panel(self.tr("Declination backlash"))
        how = self.tr(
            "Push the star north with short equal pulses until it moves evenly, then south. Write "
            "a line for each pulse since the reversal: arcseconds asked for in all, and "
            "arcseconds the star has moved."
        )
        self.reversal.setPlaceholderText("2  0.1\n4  0.2\n6  1.9\n8  4.0")
        self.reversal.setFixedHeight(170)
        for part in (
            Text(how),
            Named(self.tr("Asked and moved, in ″"), self.reversal),
            self.wrong,
            BenchAmount(self.bench, "guide_rate_arcsec_per_s", RATE),
            self.play,
        ):
            panel.column.addWidget(part)
        return panel

    def show_bench(self) -> None:
        self.box.show_given(self.bench.guided)
        study, given = self.bench.study, self.bench.guided
        found = None if study is None else study.guiding.value
        self.facts.setVisible(found is not None)
        for plot in (self.plot, self.north):
            plot.setVisible(given is not None)
        if given is None or study is None:
            self.sentence.say(self.tr("No guiding recorded yet; bring some minutes of it in."))
        else:
            self.sentence.say(study.guiding.words(lambda one: one.sentence))
        if given is not None:
            for plot, picture in zip(
                (self.plot, self.north), pictures.guided_offsets(given), strict=True
            ):
                plot.show_picture(picture)
        self.findings.say("" if found is None else self._found(found))
        self.air.say(self._air())
        self.settling.say("" if study is None else study.settling.words(lambda one: one.sentence))
        self.play.say("" if study is None else study.backlash.words(lambda one: one.sentence))
        if found is not None:
            rms = self.tr("rms, worst {peak:.1f}″")
            axes = [
                Fact(f"{axis.rms_arcsec:.2f}″", rms.format(peak=axis.peak_arcsec))
                for axis in (found.east, found.north)
            ]
            self.facts.show_facts((*axes, Fact(f"{found.ratio:.1f}", self.tr("1 is even"))))

    def _air(self) -> str:
        moved = self.bench.parts.air_motion_arcsec(self.bench.figures().seeing_arcsec)
        if moved is None:
            return ""
        words = self.tr(
            "Under such seeing the air alone moves a star {moved:.1f}″ rms in each axis of your "
            "telescope, in short exposures; no guiding is better than that."
        )
        return words.format(moved=moved)

    def _found(self, found: GuidingCheck) -> str:
        if not found.findings:
            return self.tr("Nothing in it asks for a change.")
        return sentences([note.text for note in found.findings])

    def _take_reversal(self) -> None:
        try:
            asked, moved = pairs(self.reversal.text())
        except UnusablePairs as reason:
            self.wrong.say(str(reason))
            return
        self.wrong.say("")
        given = Reversal(np.array(asked), np.array(moved)) if asked else None
        if given is not None or self.bench.reversal is not None:
            self.bench.take_reversal(given)
