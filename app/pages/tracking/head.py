"""The answer of the Tracking page: how well the mount tracks, and what to do first."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QElapsedTimer, Signal
from PySide6.QtWidgets import QProgressBar, QVBoxLayout, QWidget

from app.pages.tracking import headwords
from app.pages.tracking.bench import Bench
from app.pages.tracking.headfigures import causes, facts
from app.theme.theme import Theme
from app.widgets.causebars import CauseBars
from app.widgets.facts import Facts
from app.widgets.flow import Flow
from app.widgets.key import Key
from app.widgets.redraw import Redraw
from app.widgets.reflow import Reflow
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
        self.end_key = Key(self.tr("Stop recording"), "primary")
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
        self.caution, self.doubts = Text("", "quiet"), Text("", "alarm")
        self.bars = CauseBars(theme, self.tr("What each cause smears in one exposure"))
        self._ways = QWidget()
        self._arrange()
        self._redraw = Redraw(self, self._show)
        self._join()
        self._show()

    def _arrange(self) -> None:
        row = Flow(self._ways, 8)
        for key in (self.practice_key, self.import_key, self.scale_key, self.end_key):
            row.addWidget(key)
        said = QWidget()
        words = QVBoxLayout(said)
        words.setContentsMargins(0, 0, 0, 0)
        for part in (
            self.headline,
            self.paragraph,
            self.doubts,
            self._ways,
            self._progress,
            self.stop_key,
        ):
            words.addWidget(part)
        words.addStretch(1)
        for part in (
            Reflow((said, self.bars), ROOM_PX, (3, 2)),
            self.facts,
            self.caution,
            self.origin,
        ):
            self.column.addWidget(part)
        for hidden in (self._progress, self.stop_key, self.facts):
            hidden.hide()

    def _join(self) -> None:
        self._bench.changed.connect(self._redraw.mark)
        if self._bench.live is not None:
            self._bench.live.changed.connect(self._redraw.mark)
            self.end_key.clicked.connect(lambda: self._end_recording())
        job = self._bench.job
        job.began.connect(self._clock.start)
        job.progressed.connect(self._show_progress)
        job.ended.connect(self._hide_progress)
        self.stop_key.clicked.connect(self._bench.stop)
        self.scale_key.clicked.connect(self.scale_wanted)
        self.practice_key.clicked.connect(self.practice_wanted)
        self.import_key.clicked.connect(self.import_wanted)

    def _end_recording(self) -> None:
        if self._bench.live is not None:
            self._bench.live.finish()

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
        study, fault = self._bench.study, self._bench.fault
        live = self._bench.live
        is_recording = live is not None and live.is_on
        headline, paragraph = headwords.recording() if is_recording else headwords.answer(study)
        self.headline.say(self.tr("No answer") if fault else headline)
        self.paragraph.say(fault or paragraph)
        is_empty = study is None or not headwords.has_any(study)
        has_scale = self._bench.figures().scale_arcsec_per_px is not None
        needs_scale = not (is_empty or is_recording or has_scale)
        self.practice_key.setVisible(is_empty and not is_recording)
        self.import_key.setVisible(is_empty and not is_recording)
        self.scale_key.setVisible(needs_scale)
        self.end_key.setVisible(is_recording)
        self._ways.setVisible(is_empty or needs_scale or is_recording)
        self.origin.say(self._origins())
        is_told = study is not None and not is_empty and not fault and not is_recording
        self.facts.setVisible(is_told)
        self.bars.setVisible(is_told)
        for part in (self.doubts, self.caution):
            part.say("")
        if study is not None and is_told:
            self._show_study(study)

    def _show_study(self, study: Study) -> None:
        self.doubts.say(headwords.doubts(study))
        self.caution.say(headwords.caution(study))
        self.facts.show_facts(facts(study))
        found, allowed = causes(study)
        self.bars.show_causes(found, allowed)
        self.bars.setVisible(bool(found))

    def _origins(self) -> str:
        """What is judged, so that practice is never taken for the mount outside."""
        live = self._bench.live
        if live is not None and live.is_on:
            return self.tr("From: {origins}.").format(origins=live.origin)
        given = (self._bench.run, self._bench.guided)
        origins = "; ".join(one.origin for one in given if one is not None)
        return self.tr("From: {origins}.").format(origins=origins) if origins else ""
