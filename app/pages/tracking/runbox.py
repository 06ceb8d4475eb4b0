"""Where a run comes from: a file, a leg of tonight, or practice."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QProgressBar, QWidget

from app.pages.tracking.amounts import BenchAmount
from app.pages.tracking.bench import Bench
from app.pages.tracking.figures import SCALE
from app.pages.tracking.job import Job, KeepGoing
from app.pages.tracking.question import Given
from app.theme.theme import Theme
from app.widgets.filepicker import file_dialog
from app.widgets.key import Key
from app.widgets.optionkeys import OptionKeys
from app.widgets.text import Panel, Text

if TYPE_CHECKING:
    from app.pages.tracking.reading import Refusal

FEWEST = 40  # readings with an east offset that make a leg worth offering
COLUMNS = "leg, utc, ra_deg, dec_deg, east_arcsec, north_arcsec"


class RunBox(Panel):
    """`taken` carries a `Given`; `dropped`: it is to be left out.

    `practise` makes an invented one, for a worker thread.
    """

    taken = Signal(object)
    dropped = Signal()

    def __init__(
        self,
        title: str,
        explanation: str,
        theme: Theme,
        bench: Bench,
        practise: Callable[[], Given],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(title, parent)
        self._theme = theme
        self._bench = bench
        self._practise = practise
        self._path: Path | None = None
        self._in_file: tuple[Given, ...] = ()
        self._tonight: dict[str, Given] = {}
        self.import_key = Key(self.tr("Import a run (CSV) …"))
        self.practice_key = Key(self.tr("Practice run"))
        self.stop_key = Key(self.tr("Stop reading"))
        self.drop_key = Key(self.tr("Leave this one out"))
        self.again_key = Key(self.tr("Read it again"))
        self.file_legs = OptionKeys(self.tr("Leg of the file"))
        self.tonight = OptionKeys(self.tr("Leg of tonight, up to now"))
        self.scale = BenchAmount(bench, "scale_arcsec_per_px", SCALE)
        self._progress = QProgressBar()
        self._progress.setAccessibleName(self.tr("Share of the file that is read"))
        self._said = Text("", "quiet")
        self._job = Job(self)
        self._lay_out(explanation)
        self._join()

    def _lay_out(self, explanation: str) -> None:
        expected = self.tr("A text file with the columns {columns}; east_px and north_px too.")
        for part in (
            Text(explanation),
            self.practice_key,
            self.import_key,
            Text(expected.format(columns=COLUMNS), "small"),
            self.tonight,
            self._progress,
            self.stop_key,
            self._said,
            self.scale,
            self.again_key,
            self.file_legs,
            self.drop_key,
        ):
            self.column.addWidget(part)
        for part in (self.tonight, self._progress, self.stop_key, self._said, self.file_legs):
            part.hide()
        self._ask_scale(False)

    def _join(self) -> None:
        self.import_key.clicked.connect(self.choose)
        self.practice_key.clicked.connect(self.practise)
        self.drop_key.clicked.connect(self._drop)
        self.stop_key.clicked.connect(self._stop)
        self.again_key.clicked.connect(self._read_again)
        self.file_legs.chosen.connect(lambda number: self._take(self._in_file[int(number)]))
        self.tonight.chosen.connect(lambda label: self._take(self._tonight[label]))
        self._job.progressed.connect(lambda share: self._progress.setValue(round(100 * share)))
        self._job.done.connect(self._answered)
        self._job.began.connect(lambda: self._show_reading(True))
        self._job.ended.connect(lambda: self._show_reading(False))

    def choose(self) -> None:
        filters = [self.tr("Runs (*.csv *.txt *.tsv)"), self.tr("All files (*)")]
        file_dialog(self, self._theme, self.tr("Choose a run"), filters, self.read).open()

    def practise(self) -> None:
        self._job.send(lambda _keep_going: (self._practise(),))

    def read(self, path: Path) -> None:
        """A file, from the beginning."""
        self._path = path
        scale, here = self._bench.typed.scale_arcsec_per_px, self._bench.here()
        now_utc_s = self._bench.parts.now()
        self._say(self.tr("Reading {file} …").format(file=path.name))

        def work(keep_going: KeepGoing) -> object:
            from app.pages.tracking.reading import read_run

            return read_run(path, scale, here, now_utc_s, keep_going)

        self._job.send(work)

    def _read_again(self) -> None:
        if self._path is not None:
            self.read(self._path)

    def show_given(self, given: Given | None) -> None:
        """What is looked at now; offers the legs of tonight that have east offsets too."""
        self.drop_key.setVisible(given is not None)
        if given is None:
            self.file_legs.hide()
        here = self._bench.here()
        origin = self.tr("Tonight, leg “{label}”")
        self._tonight = {
            leg.label: Given(
                leg, origin.format(label=leg.label), here, is_kept=True, is_tonight=True
            )
            for leg in self._bench.snapshot().legs
            if leg.east_arcsec is not None and leg.utc_s.size >= FEWEST
        }
        self.tonight.offer([(label, label) for label in self._tonight], "")
        self.tonight.setVisible(bool(self._tonight))

    def show_keys(self, shown: bool) -> None:
        """Where something else on the page offers practice and import, they are not needed here."""
        self.import_key.setVisible(shown)
        self.practice_key.setVisible(shown)

    def said(self) -> str:
        return self._said.text()

    def close_jobs(self) -> None:
        self._job.close()

    def _drop(self) -> None:
        self._say("")
        self.dropped.emit()

    def _stop(self) -> None:
        self._job.stop()
        self._say(self.tr("Stopped; nothing was taken from the file."))

    def _answered(self, answer: object) -> None:
        if isinstance(answer, tuple):
            self._ask_scale(False)
            self._in_file = answer
            options = [(str(n), given.leg.label) for n, given in enumerate(answer)]
            self.file_legs.offer(options if len(options) > 1 else [], "0")
            self.file_legs.setVisible(len(options) > 1)
            self._take(answer[0])
        elif answer is None:
            self._say(self.tr("The file could not be used because of a fault in the program."))
        else:
            self._refused(answer)  # type: ignore[arg-type]

    def _refused(self, refusal: Refusal) -> None:
        self._say(refusal.sentence)
        self._ask_scale(refusal.needs_scale)
        if refusal.needs_scale:
            self.scale.setFocus()

    def _take(self, given: Given) -> None:
        minutes = (given.leg.utc_s[-1] - given.leg.utc_s[0]) / 60.0
        said = self.tr("{origin}: {n} readings over {minutes:.0f} minutes.")
        count = f"{given.leg.utc_s.size:,}"
        told = said.format(origin=given.origin, n=count, minutes=minutes)
        self._say("\n".join(part for part in (told, given.account) if part))
        self.taken.emit(given)

    def _say(self, sentence: str) -> None:
        self._said.say(sentence)

    def _ask_scale(self, wanted: bool) -> None:
        self.scale.setVisible(wanted)
        self.again_key.setVisible(wanted)

    def _show_reading(self, reading: bool) -> None:
        self._progress.setValue(0)
        for part in (self._progress, self.stop_key):
            part.setVisible(reading)
        self.import_key.setEnabled(not reading)
        self.practice_key.setEnabled(not reading)


def sentences(parts: Sequence[str]) -> str:
    """Each on a line of its own, with a dash, those that say nothing left out."""
    return "\n".join(f"–  {part}" for part in parts if part)
