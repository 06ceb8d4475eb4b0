"""Vibration: how long the mount shakes after a touch, before and after a change."""

from __future__ import annotations

from functools import partial
from pathlib import Path

import numpy as np
from PySide6.QtWidgets import QWidget

from app.pages.tracking import pictures
from app.pages.tracking.amounts import BenchAmount
from app.pages.tracking.bench import Bench
from app.pages.tracking.figures import CAPACITY, PAYLOAD, SCALE, SETTLED
from app.pages.tracking.job import Job, KeepGoing
from app.pages.tracking.question import Tap
from app.pages.tracking.section import Section
from app.theme.theme import Theme
from app.widgets.facts import Fact, Facts
from app.widgets.filepicker import file_dialog
from app.widgets.key import Key
from app.widgets.text import Panel, Text
from core.language import say
from core.mount import payload

COLUMNS = "time_s, offset_arcsec"


class VibrationSection(Section):
    def __init__(
        self,
        theme: Theme,
        bench: Bench,
        rng: np.random.Generator,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(theme, bench, parent=parent)
        self._rng = rng
        self.sentence, self.change = Text("", "side"), Text("", "side")
        self.facts = Facts(
            self.tr("After a touch"),
            (self.tr("Settled after"), self.tr("First swing"), self.tr("Swings a second")),
        )
        self.load, self.caution = Text(), Text("", "quiet")
        self.before_key = Key(self.tr("Import a tap (CSV) …"))
        self.after_key = Key(self.tr("Import a tap after a change …"))
        self.practice_key = Key(self.tr("Practice tap"))
        self._said = Text("", "quiet")
        self._said.hide()
        self.scale = BenchAmount(bench, "scale_arcsec_per_px", SCALE)
        self.scale.hide()
        self._is_after = False
        self._job = Job(self)
        self._job.done.connect(self._answered)
        self.before_key.clicked.connect(partial(self._choose, False))
        self.after_key.clicked.connect(partial(self._choose, True))
        self.practice_key.clicked.connect(self.practise)
        self.arrange(
            (self.sentence, self.change, self.facts, self.plot),
            (self._tap_panel(), self._load_panel()),
        )

    def _tap_panel(self) -> Panel:
        panel = Panel(self.tr("A tap"))
        how = self.tr(
            "Record a bright star ten times a second or more, tap the tube lightly with a finger "
            "or turn the focuser, and record until it is still."
        )
        for part in (
            Text(how),
            self.practice_key,
            self.before_key,
            self.after_key,
            Text(self.tr("Columns: {columns}").format(columns=COLUMNS), "small"),
            self._said,
            self.scale,
            BenchAmount(self.bench, "settled_arcsec", SETTLED),
        ):
            panel.column.addWidget(part)
        return panel

    def _load_panel(self) -> Panel:
        panel = Panel(self.tr("Load"))
        for part in (
            BenchAmount(self.bench, "payload_kg", PAYLOAD),
            BenchAmount(self.bench, "capacity_kg", CAPACITY),
            self.load,
            self.caution,
        ):
            panel.column.addWidget(part)
        return panel

    def show_bench(self) -> None:
        study = self.bench.study
        has_any = self.bench.before is not None or self.bench.after is not None
        latest = None if study is None else study.after.value or study.before.value
        self.plot.setVisible(has_any)
        self.facts.setVisible(latest is not None)
        self.after_key.setEnabled(self.bench.before is not None)
        if study is None or not has_any:
            self.sentence.say(self.tr("No tap yet. It shows how long to wait after a touch."))
            self.change.say("")
        else:
            part = study.before if study.after.value is None else study.after
            self.sentence.say(study.after.problem or part.words(lambda one: one.sentence))
            self.change.say(study.change.value or "")
        if has_any:
            self.plot.show_picture(pictures.taps(self.bench.before, self.bench.after))
        is_judged = study is not None and study.load.value is not None
        words = (self.tr("Taking weight off:"), *map(say, payload.TAKING_OFF), say(payload.FIRST))
        self.caution.say(" ".join(words) if is_judged else "")
        self.load.say("" if study is None else study.load.words(lambda words: words))
        if latest is not None:
            self.facts.show_facts(
                (
                    Fact(
                        say("{seconds:.1f} s", seconds=latest.settling_s),
                        self.tr("± {error:.1f} s").format(error=1.96 * latest.settling_sigma_s),
                    ),
                    Fact(f"{latest.first_swing_arcsec:.0f}″", self.tr("to one side")),
                    Fact(
                        f"{latest.frequency_hz:.1f}",
                        self.tr("one in {s:.2f} s").format(s=1.0 / latest.frequency_hz),
                    ),
                )
            )

    def read(self, path: Path, is_after: bool = False) -> None:
        self._is_after = is_after
        scale = self.bench.typed.scale_arcsec_per_px

        def work(_keep_going: KeepGoing) -> object:
            from app.pages.tracking.reading import read_one_tap

            return read_one_tap(path, scale)

        self._job.send(work)

    def practise(self) -> None:
        """The first invented tap, then one after an invented change."""
        self._is_after = self.bench.before is not None and self.bench.before.is_practice
        is_stiff = self._is_after

        def work(_keep_going: KeepGoing) -> object:
            from app.pages.tracking.practice import practice_tap

            return practice_tap(self._rng, is_stiff)

        self._job.send(work)

    def said(self) -> str:
        return self._said.text()

    def close_jobs(self) -> None:
        self._job.close()

    def _answered(self, answer: object) -> None:
        if isinstance(answer, Tap):
            self.scale.hide()
            self._said.say(answer.origin)
            self.bench.take_tap(answer, self._is_after)
            return
        broken = self.tr("The file could not be used because of a fault in the program.")
        self._said.say(getattr(answer, "sentence", "") or broken)
        self.scale.setVisible(bool(getattr(answer, "needs_scale", False)))

    def _choose(self, is_after: bool) -> None:
        filters = [self.tr("Taps (*.csv *.txt *.tsv)"), self.tr("All files (*)")]
        read = partial(self.read, is_after=is_after)
        file_dialog(self, self.theme, self.tr("Choose a record"), filters, read).open()
