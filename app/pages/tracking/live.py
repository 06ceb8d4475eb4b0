"""What is said of a run while it is recorded."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, NamedTuple

from PySide6.QtCore import QTimer
from PySide6.QtGui import QHideEvent, QShowEvent
from PySide6.QtWidgets import QWidget

from app.pages.tracking.figures import SCALE
from app.pages.tracking.model import SPEEDS, LiveRun, TrackingModel
from app.pages.tracking.section import ModelAmount
from app.ui.filepicker import file_dialog
from app.ui.form import Key, OptionKeys
from app.ui.style import Theme
from app.ui.text import Panel, Text
from core.language import say

if TYPE_CHECKING:
    from core.alignment.driftlog.records import Leg


USUAL_WORM_S = 600.0  # a slow one; common practice, no source
FEWEST_TURNS, GOOD_TURNS = 3, 6
SILENCE_S = 20.0


class Words(NamedTuple):
    """`trouble` is empty while readings come as they should."""

    progress: str
    trouble: str


def progress_words(live: LiveRun, worm_period_s: float | None) -> Words:
    leg = live.leg()
    if not live.is_on:
        return Words("", "")
    if leg is None or not leg.utc_s.size:
        waiting = say("Waiting for the first reading …")
        return Words(waiting, _silence(live) or live.trouble)
    return Words(f"{_so_far(leg)} {_enough(leg, worm_period_s)}", live.trouble or _silence(live))


def _so_far(leg: Leg) -> str:
    return say(
        "Recording “{label}”: {n} readings, {minutes:.1f} minutes.",
        label=leg.label,
        n=f"{leg.utc_s.size:,}",
        minutes=_minutes(leg),
    )


def _enough(leg: Leg, worm_period_s: float | None) -> str:
    """How much longer, from the worm's period where it is known."""
    minutes, turn_min = _minutes(leg), (worm_period_s or USUAL_WORM_S) / 60.0
    least, good = FEWEST_TURNS * turn_min, GOOD_TURNS * turn_min
    if minutes < least:
        return say(
            "Go on for another {minutes:.0f} minutes at least, better {more:.0f}.",
            minutes=max(least - minutes, 1.0),
            more=good - minutes,
        )
    if minutes < good:
        return say(
            "That can be judged; another {minutes:.0f} minutes make it surer.",
            minutes=max(good - minutes, 1.0),
        )
    return say("That is enough.")


def _silence(live: LiveRun) -> str:
    silent_s = live.silent_s()
    if silent_s < SILENCE_S:
        return ""
    return say(
        "No reading for {seconds:.0f} s: is the star still found, and the file still written?",
        seconds=silent_s,
    )


def _minutes(leg: Leg) -> float:
    return float(leg.utc_s[-1] - leg.utc_s[0]) / 60.0


# Recording a run on the page itself: begin, see that readings come, end.

WORDS_MS = 1000


class LiveBox(Panel):
    """What was read so far is told once a second while it is seen."""

    def __init__(
        self, theme: Theme, bench: TrackingModel, live: LiveRun, parent: QWidget | None = None
    ) -> None:
        super().__init__("", parent)
        self._theme, self._bench, self._live = theme, bench, live
        self.setAccessibleName(self.tr("Record a run now"))
        self.follow_key = Key(self.tr("Record from a growing file …"))
        self.practice_key = Key(self.tr("Record from the practice sky"))
        self.stop_key = Key(self.tr("Stop recording"))
        self.speed = OptionKeys(self.tr("Speed of the practice night"))
        self.scale = ModelAmount(bench, "scale_arcsec_per_px", SCALE)
        self.progress, self.trouble = Text("", "side"), Text("", "alarm")
        self._said = Text("", "quiet")
        self._explanation = Text(
            self.tr(
                "Track one star near the celestial equator, guiding corrections off, and record it "
                "here while another program measures it into a file (same columns as below). Every "
                "reading is in the log of nights at once; what was recorded survives a power cut."
            )
        )
        self._timer = QTimer(self)
        self._timer.setInterval(WORDS_MS)
        self._timer.timeout.connect(self.show_progress)
        self._arrange()
        self._join()
        self.show_live()

    def _arrange(self) -> None:
        self.column.addWidget(Text(self.tr("Record a run now"), "title"))
        for part in (
            self._explanation,
            self.progress,
            self.stop_key,
            self.speed,
            self.trouble,
            self.follow_key,
            self.practice_key,
            self._said,
            self.scale,
        ):
            self.column.addWidget(part)
        self.speed.offer([(f"{one:g}", f"{one:g} ×") for one in SPEEDS], f"{self._live.speed:g}")
        self.scale.hide()

    def _join(self) -> None:
        self.follow_key.clicked.connect(self.choose)
        self.practice_key.clicked.connect(self._live.practise)
        self.stop_key.clicked.connect(lambda: self._live.finish())
        self.speed.chosen.connect(lambda factor: self._live.set_speed(float(factor)))
        self._live.changed.connect(self.show_live)
        self._live.scale_needed.connect(self._ask_scale)

    def choose(self) -> None:
        filters = [self.tr("Runs (*.csv *.txt *.tsv)"), self.tr("All files (*)")]
        title = self.tr("Choose the file that is being written")
        file_dialog(self, self._theme, title, filters, self.follow).open()

    def follow(self, path: Path) -> None:
        self.scale.hide()
        self._live.follow(path)

    def show_live(self) -> None:
        is_on = self._live.is_on
        for part in (self.progress, self.stop_key, self.trouble):
            part.setVisible(is_on)
        self.speed.setVisible(is_on and self._live.is_practice)
        for part in (self._explanation, self.follow_key, self.practice_key):
            part.setVisible(not is_on)
        self._said.say(self._live.said)
        if is_on and self.isVisible():
            self._timer.start()
        elif not is_on:
            self._timer.stop()
        self.show_progress()

    def said(self) -> str:
        return self._said.text()

    def show_progress(self) -> None:
        words = progress_words(self._live, self._bench.figures().worm_period_s)
        self.progress.say(words.progress)
        self.trouble.say(words.trouble)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self.show_live()

    def hideEvent(self, event: QHideEvent) -> None:
        super().hideEvent(event)
        self._timer.stop()

    def _ask_scale(self) -> None:
        self.scale.show()
        self.scale.setFocus()
