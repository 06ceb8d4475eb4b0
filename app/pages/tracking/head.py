"""The answer of the Tracking page: how well the mount tracks, and what to do first."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QElapsedTimer, Signal
from PySide6.QtWidgets import QProgressBar, QVBoxLayout, QWidget

from app.pages.tracking.bench import Bench
from app.theme.theme import Theme
from app.widgets.causebars import Cause, CauseBars
from app.widgets.facts import Fact, Facts
from app.widgets.flow import Flow
from app.widgets.key import Key
from app.widgets.redraw import Redraw
from app.widgets.reflow import Reflow
from app.widgets.spans import limit_words
from app.widgets.text import Panel, Text

if TYPE_CHECKING:
    from app.pages.tracking.study import Study


PATIENCE_MS = 400
ROOM_PX = 860  # for bars beside the words


class Head(Panel):
    """`scale_wanted`: the person wants to type the image scale, which the verdict needs."""

    scale_wanted = Signal()
    practice_wanted = Signal()
    import_wanted = Signal()

    def __init__(self, theme: Theme, bench: Bench, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self._bench = bench
        self.setAccessibleName(self.tr("Verdict"))
        self.headline = Text("", "turn")
        self.paragraph = Text("", "side")
        self.practice_key = Key(self.tr("Practice run"), "primary")
        self.import_key = Key(self.tr("Import a run (CSV) …"))
        self.scale_key = Key(self.tr("Enter the image scale"), "primary")
        self.stop_key = Key(self.tr("Stop"))
        self._progress = QProgressBar()
        self._clock = QElapsedTimer()
        self._progress.setAccessibleName(self.tr("Share of the computation that is done"))
        self.facts = Facts(
            self.tr("In figures"),
            (
                self.tr("Periodic error"),
                self.tr("Left after training"),
                self.tr("Longest exposure, unguided"),
                self.tr("Guiding holds within"),
            ),
        )
        self.facts.setProperty("kind", "")  # it stands on a panel already
        self.facts.column.setContentsMargins(0, 6, 0, 0)
        self.origin = Text("", "small")
        self.bars = CauseBars(theme, self.tr("What each cause smears in one exposure"))
        self._ways = QWidget()
        self._arrange()
        self._redraw = Redraw(self, self._show)
        self._join()
        self._show()

    def _arrange(self) -> None:
        row = Flow(self._ways, 8)
        for key in (self.practice_key, self.import_key, self.scale_key):
            row.addWidget(key)
        said = QWidget()
        words = QVBoxLayout(said)
        words.setContentsMargins(0, 0, 0, 0)
        for part in (self.headline, self.paragraph, self._ways, self._progress, self.stop_key):
            words.addWidget(part)
        words.addStretch(1)
        for part in (Reflow((said, self.bars), ROOM_PX, (3, 2)), self.facts, self.origin):
            self.column.addWidget(part)
        for hidden in (self._progress, self.stop_key, self.facts):
            hidden.hide()

    def _join(self) -> None:
        self._bench.changed.connect(self._redraw.mark)
        job = self._bench.job
        job.began.connect(self._clock.start)
        job.progressed.connect(self._show_progress)
        job.ended.connect(self._hide_progress)
        self.stop_key.clicked.connect(self._bench.stop)
        self.scale_key.clicked.connect(self.scale_wanted)
        self.practice_key.clicked.connect(self.practice_wanted)
        self.import_key.clicked.connect(self.import_wanted)

    def _show_progress(self, share: float) -> None:
        self._progress.setValue(round(100 * share))
        if self._clock.elapsed() < PATIENCE_MS:  # what comes and goes at once only unsettles
            return
        self._progress.show()
        self.stop_key.show()

    def _hide_progress(self) -> None:
        self._progress.hide()
        self.stop_key.hide()

    def _show(self) -> None:
        study = self._bench.study
        headline, paragraph = self._words(study)
        self.headline.say(headline)
        self.paragraph.say(paragraph)
        is_empty = study is None or not _has_any(study)
        needs_scale = not is_empty and self._bench.figures().scale_arcsec_per_px is None
        self.practice_key.setVisible(is_empty)
        self.import_key.setVisible(is_empty)
        self.scale_key.setVisible(needs_scale)
        self._ways.setVisible(is_empty or needs_scale)
        self.facts.setVisible(not is_empty)
        self.origin.say(self._origins())
        if study is not None and not is_empty:
            self.facts.show_facts(self._facts(study))
        self._show_bars(study)

    def _facts(self, study: Study) -> list[Fact]:
        drive, guiding = study.drive, study.guiding.value
        found, trained, curves = drive.periodic.value, drive.training.value, drive.curves.value
        facts = [Fact("—", self.tr("not measured"))] * 4
        if found is not None:
            size = f"{found.size.peak_to_peak_arcsec:.1f}″"
            facts[0] = Fact(size, self.tr("peak to peak"))
            if study.question.figures.scale_arcsec_per_px is None:
                facts[2] = Fact("—", self.tr("needs the image scale"))
        if trained is not None:
            facts[1] = Fact(f"{trained.residual_rms_arcsec:.1f}″", self.tr("rms, predicted"))
        if curves is not None and curves[0].longest_s > 0.0:
            facts[2] = Fact(limit_words(curves[0].longest_s), self.tr("nine in ten are sharp"))
        elif curves is not None:
            facts[2] = Fact(self.tr("none"), self.tr("is surely sharp"))
        if guiding is not None:
            facts[3] = Fact(f"{guiding.total_rms_arcsec:.2f}″", self.tr("rms"))
        return facts

    def _show_bars(self, study: Study | None) -> None:
        verdict = None if study is None or self._bench.fault else study.verdict.value
        self.bars.setVisible(verdict is not None)
        if study is None or verdict is None:
            return
        figures = study.question.figures
        scale = figures.scale_arcsec_per_px or 1.0
        is_guided = study.guiding.value is not None
        allowed = (figures.guided_allowed_px if is_guided else None) or figures.allowed_px or 0.5
        causes = [
            Cause(
                self._cause_name(share.cause.name),
                share.smear_arcsec / scale,
                self.tr("{size:.1f} px").format(size=share.smear_arcsec / scale),
            )
            for share in verdict.shares
        ]
        limit = self.tr("{size:g} px").format(size=allowed)
        self.bars.show_causes(causes, Cause(self.tr("allowed"), allowed, limit))

    def _cause_name(self, cause: str) -> str:
        return {
            "WORM": self.tr("periodic error"),
            "UNEVEN": self.tr("uneven drive"),
            "ALIGNMENT": self.tr("polar alignment"),
            "AIR": self.tr("air"),
            "GUIDING": self.tr("guiding"),
        }[cause]

    def _origins(self) -> str:
        """What is judged, so that practice is never taken for the mount outside."""
        given = (self._bench.run, self._bench.guided)
        origins = "; ".join(one.origin for one in given if one is not None)
        return self.tr("From: {origins}.").format(origins=origins) if origins else ""

    def _words(self, study: Study | None) -> tuple[str, str]:
        if self._bench.fault:
            return self.tr("No answer"), self._bench.fault
        if study is None or not _has_any(study):
            return self.tr("Nothing is measured yet"), self.tr(
                "Let the mount track a star without guiding for half an hour, or bring some "
                "minutes of guiding in. This page then says how much the drive swings, what "
                "training or guiding would leave, how long you may expose, and the one thing to "
                "try first. A practice run shows all of it by daylight."
            )
        verdict = study.verdict.value
        if verdict is not None:
            return self._headline(verdict.cause.name), verdict.paragraph
        drive = study.drive
        said = drive.run.problem or drive.periodic.words(lambda one: one.sentence)
        found = drive.periodic.value is not None or study.guiding.value is not None
        headline = self.tr("Measured; the verdict needs one thing more")
        return headline if found else self.tr("This cannot be judged yet"), "\n".join(
            part for part in (said, self._missing(study)) if part
        )

    def _missing(self, study: Study) -> str:
        if self._bench.figures().scale_arcsec_per_px is None:
            return self.tr(
                "Whether that spoils a picture depends on how much sky one pixel sees: enter the "
                "image scale."
            )
        return study.verdict.problem or study.drive.training.problem or study.guiding.problem

    def _headline(self, cause: str) -> str:
        words = {
            "WORM": self.tr("Mostly the periodic error of the mount"),
            "UNEVEN": self.tr("Mostly what the drive does once and not again"),
            "ALIGNMENT": self.tr("Mostly the polar alignment"),
            "AIR": self.tr("Mostly the air"),
            "GUIDING": self.tr("Mostly the guiding"),
            "NONE": self.tr("It tracks well enough for such exposures"),
        }
        return words[cause]


def _has_any(study: Study) -> bool:
    return study.question.run is not None or study.question.guided is not None
