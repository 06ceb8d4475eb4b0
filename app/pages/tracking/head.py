"""What the head of the Tracking page says of a study, in words."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, QElapsedTimer, Signal
from PySide6.QtWidgets import QProgressBar, QVBoxLayout, QWidget

from app.pages.tracking.model import TrackingModel
from app.ui.bars import CauseBar, CauseBars
from app.ui.form import Flow, Key
from app.ui.redraw import Redraw
from app.ui.style import Theme
from app.ui.text import Fact, Facts, Panel, Reflow, Text, limit_words
from core.language import say
from core.mount import payload
from core.tracking.guiding import GuidingFault
from core.tracking.iterativefit import Stretch
from core.tracking.plausibility import RunDoubt
from core.tracking.run import RunFault

if TYPE_CHECKING:
    from app.pages.tracking.study import TrackingStudy


# Codes of notes that do not spoil a verdict; they stand below the run.
HARMLESS = (
    *(RunFault.AXIS_UNKNOWN, RunFault.FAR_FROM_THE_EQUATOR, RunFault.WITHOUT_EAST),
    *(Stretch.FLIP_WITH_CAMERA, Stretch.FLIP, Stretch.GUSTS, Stretch.BUMPS, Stretch.BUMP),
    *(Stretch.GAP, Stretch.GAPS, RunDoubt.GUIDING_UNCLEAR),
)


def tr(text: str) -> str:
    return QCoreApplication.translate("TrackingHead", text)


def recording() -> tuple[str, str]:
    """While a run is recorded."""
    return tr("A run is being recorded"), tr(
        "Every reading is kept as it comes. Half an hour to an hour is wanted; the verdict follows "
        "when the recording is stopped."
    )


def answer(study: TrackingStudy | None) -> tuple[str, str]:
    """What stands large, and the paragraph below it."""
    if study is None or not has_any(study):
        return tr("Nothing is measured yet"), tr(
            "Let the mount track a star without guiding for half an hour, or bring some "
            "minutes of guiding in. This page then says how much the drive swings, what "
            "training or guiding would leave, how long you may expose, and the one thing to "
            "try first. A practice run shows all of it by daylight."
        )
    verdict = study.verdict.value
    if verdict is not None:
        return _headline(verdict.cause.name), str(verdict.paragraph)
    drive = study.drive
    said = drive.run.problem or drive.periodic.words(lambda one: str(one.sentence))
    found = drive.periodic.value is not None or study.guiding.value is not None
    headline = tr("Measured; the verdict needs one thing more")
    return headline if found else tr("This cannot be judged yet"), "\n".join(
        part for part in (said, _missing(study)) if part
    )


def _missing(study: TrackingStudy) -> str:
    if study.question.figures.scale_arcsec_per_px is None:
        return tr(
            "Whether that spoils a picture depends on how much sky one pixel sees: enter the "
            "image scale."
        )
    return study.verdict.problem or study.drive.training.problem or study.guiding.problem


def _headline(cause: str) -> str:
    words = {
        "WORM": tr("Mostly the periodic error of the mount"),
        "UNEVEN": tr("Mostly what the drive does once and not again"),
        "ALIGNMENT": tr("Mostly the polar alignment"),
        "AIR": tr("Mostly the air"),
        "GUIDING": tr("Mostly the guiding"),
        "NONE": tr("It tracks well enough for such exposures"),
    }
    return words[cause]


def doubts(study: TrackingStudy) -> str:
    """What in the run makes the verdict doubtful."""
    found = study.drive.periodic.value
    notes = () if found is None else found.notes
    return " ".join(str(note) for note in notes if note.code not in HARMLESS)


def caution(study: TrackingStudy) -> str:
    """Beside advice to balance anew, how not to get hurt by it."""
    verdict = study.verdict.value
    if verdict is None:
        return ""
    guiding = study.guiding.value
    codes = [] if guiding is None else [note.code for note in guiding.findings]
    if verdict.cause.name == "UNEVEN" or GuidingFault.EAST_WORSE in codes:
        return " ".join([tr("Balancing:"), *map(say, payload.BALANCING), say(payload.FIRST)])
    return ""


def has_any(study: TrackingStudy) -> bool:
    """Whether there are readings a verdict could be about."""
    return study.question.run is not None or study.question.guided is not None


# What the head of the Tracking page shows of a study in figures and bars.


def facts(study: TrackingStudy) -> list[Fact]:
    """In the order of the names in the head."""
    drive, guiding = study.drive, study.guiding.value
    found, trained, curves = drive.periodic.value, drive.training.value, drive.curves.value
    facts = [Fact("—", tr("not measured"))] * 4
    if found is not None:
        size = f"{found.size.peak_to_peak_arcsec:.1f}″"
        facts[0] = Fact(size, tr("peak to peak"))
        if study.question.figures.scale_arcsec_per_px is None:
            facts[2] = Fact("—", tr("needs the image scale"))
    if trained is not None:
        facts[1] = Fact(f"{trained.residual_rms_arcsec:.1f}″", tr("rms, predicted"))
    if curves is not None and curves[0].longest_s > 0.0:
        facts[2] = Fact(limit_words(curves[0].longest_s), tr("nine in ten are sharp"))
    elif curves is not None:
        facts[2] = Fact(tr("none"), tr("is surely sharp"))
    if guiding is not None:
        facts[3] = Fact(f"{guiding.total_rms_arcsec:.2f}″", tr("rms"))
    return facts


def causes(study: TrackingStudy) -> tuple[list[CauseBar], CauseBar]:
    """What each cause smears, in pixels, and what is allowed; no causes without a verdict."""
    figures, verdict = study.question.figures, study.verdict.value
    scale = figures.scale_arcsec_per_px or 1.0
    is_guided = study.guiding.value is not None
    allowed = (figures.guided_allowed_px if is_guided else None) or figures.allowed_px or 0.5
    found = [
        CauseBar(
            _cause_name(share.cause.name),
            share.smear_arcsec / scale,
            tr("{size:.1f} px").format(size=share.smear_arcsec / scale),
        )
        for share in ([] if verdict is None else verdict.shares)
    ]
    return found, CauseBar(tr("allowed"), allowed, tr("{size:g} px").format(size=allowed))


def _cause_name(cause: str) -> str:
    return {
        "WORM": tr("periodic error"),
        "UNEVEN": tr("uneven drive"),
        "ALIGNMENT": tr("polar alignment"),
        "AIR": tr("air"),
        "GUIDING": tr("guiding"),
    }[cause]


# The answer of the Tracking page: how well the mount tracks, and what to do first.

PATIENCE_MS = 400
ROOM_PX = 860  # for bars beside the words


class Head(Panel):
    """`scale_wanted`: the person wants to type the image scale, which the verdict needs."""

    scale_wanted = Signal()
    practice_wanted = Signal()
    import_wanted = Signal()

    def __init__(self, theme: Theme, bench: TrackingModel, parent: QWidget | None = None) -> None:
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
        headline, paragraph = recording() if is_recording else answer(study)
        self.headline.say(self.tr("No answer") if fault else headline)
        self.paragraph.say(fault or paragraph)
        is_empty = study is None or not has_any(study)
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

    def _show_study(self, study: TrackingStudy) -> None:
        self.doubts.say(doubts(study))
        self.caution.say(caution(study))
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
