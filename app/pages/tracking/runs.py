"""Where a run, stars pointed at and taps come from: a file, a leg of tonight, or practice."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import TypeVar

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QProgressBar, QWidget

from app.pages.tracking.figures import SCALE, Given, Tap, TrackingPlace
from app.pages.tracking.model import TrackingModel
from app.pages.tracking.section import ModelAmount
from app.ui.filepicker import file_dialog
from app.ui.form import Key, OptionKeys
from app.ui.style import Theme
from app.ui.text import Panel, Text
from app.workers.latest import Job, KeepGoing
from core.alignment.driftlog.files import size_if_ordinary
from core.alignment.driftlog.records import DriftLog, Leg, ReadingCancelled, UnusableLog
from core.language import say
from core.sky.site import Site
from core.tracking.pointinglog import PointingLog, read_sightings
from core.tracking.runlog import ScaleNeeded, read_run_file
from core.tracking.vibration import read_tap

# Files read beside the window's thread: runs, stars pointed at, taps.

T = TypeVar("T")

MOST_BYTES = 20_000_000  # of a list of stars or a tap
MOST_TOLD = 3
NIGHT_S = 18.0 * 3600.0


@dataclass(frozen=True)
class Refusal:
    """`needs_scale`: the offsets are in pixels, and the person knows how large one is."""

    sentence: str
    needs_scale: bool = False


def read_run(
    path: Path,
    scale_arcsec_per_px: float | None,
    here: TrackingPlace | None,
    now_utc_s: float,
    keep_going: KeepGoing,
) -> tuple[Given, ...] | Refusal | None:
    """The legs with east offsets, the longest first. None when stopped.

    A run of another night knows nothing of how the axis stands tonight.
    """
    try:
        log = read_run_file(path, scale_arcsec_per_px=scale_arcsec_per_px, keep_going=keep_going)
    except ScaleNeeded as reason:
        return Refusal(str(reason), needs_scale=True)
    except UnusableLog as reason:
        return Refusal(str(reason))
    except ReadingCancelled:
        return None
    legs = sorted((leg for leg in log.legs), key=_length_s, reverse=True)
    with_east = [leg for leg in legs if leg.east_arcsec is not None]
    return tuple(
        Given(
            leg,
            say("{file}, leg “{leg}”", file=path.name, leg=leg.label),
            _place(log, here if _is_tonight(leg, now_utc_s) else here and here.without_axis()),
            is_tonight=_is_tonight(leg, now_utc_s),
            account=left_out(log),
        )
        for leg in with_east or legs[:1]
    )


def left_out(log: PointingLog | DriftLog) -> str:
    """Which lines were not used, and why."""
    told = [
        say("Line {number}: {text}", number=line.line_number, text=line.reason)
        for line in log.rejected[:MOST_TOLD]
    ]
    more = len(log.rejected) - len(told)
    return "\n".join([*told, *([say("… and {more} more lines.", more=more)] if more > 0 else [])])


def read_stars(path: Path, site: Site) -> PointingLog | Refusal:
    return _small(path, lambda lines: read_sightings(lines, site))


def read_one_tap(path: Path, scale_arcsec_per_px: float | None) -> Tap | Refusal:
    def tap(lines: list[str]) -> Tap:
        return Tap(*read_tap(lines, scale_arcsec_per_px), path.name)

    return _small(path, tap)


def _small(path: Path, read: Callable[[list[str]], T]) -> T | Refusal:
    """A text file read as a whole; what is wrong with it in a sentence."""
    try:
        if size_if_ordinary(path) is None:
            return Refusal(
                say(
                    "“{file}” is a folder, a pipe or a device, not a file that can be read whole: "
                    "choose another file.",
                    file=path.name,
                )
            )
        with path.open("rb") as file:
            data = file.read(MOST_BYTES + 1)
        if len(data) > MOST_BYTES:
            return Refusal(
                say("“{file}” is too large for such a record; choose another file.", file=path.name)
            )
        return read(data.decode("utf-8-sig", errors="replace").splitlines())
    except ScaleNeeded as reason:
        return Refusal(str(reason), needs_scale=True)
    except OSError as error:
        return Refusal(
            say(
                "“{file}” cannot be read ({why}): choose another file.",
                file=path.name,
                why=error.strerror,
            )
        )
    except ValueError as reason:
        return Refusal(str(reason))


def _length_s(leg: Leg) -> float:
    return float(leg.utc_s[-1] - leg.utc_s[0]) if leg.utc_s.size else 0.0


def _is_tonight(leg: Leg, now_utc_s: float) -> bool:
    return leg.utc_s.size > 0 and abs(float(leg.utc_s[-1]) - now_utc_s) < NIGHT_S


def _place(log: DriftLog, here: TrackingPlace | None) -> TrackingPlace | None:
    """The one the log names, with tonight's axis when it is tonight's place; else tonight's."""
    site = log.header.site()
    if site is None:
        return here
    if here is not None and _is_near(site, here.site):
        return TrackingPlace(here.site, log.header.air(), here.alignment)
    return TrackingPlace(site, log.header.air())


def _is_near(one: Site, other: Site) -> bool:
    apart = (one.latitude_deg - other.latitude_deg, one.longitude_deg - other.longitude_deg)
    return max(abs(apart[0]), abs(apart[1])) < 0.01


# Where a run comes from: a file, a leg of tonight, or practice.

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
        bench: TrackingModel,
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
        self.scale = ModelAmount(bench, "scale_arcsec_per_px", SCALE)
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
            for leg in self._bench.legs()
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
