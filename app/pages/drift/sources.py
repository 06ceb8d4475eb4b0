"""Where readings come from: typed, a drift log, the practice sky; one at a time."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QSize, Signal
from PySide6.QtWidgets import QPlainTextEdit, QProgressBar, QVBoxLayout, QWidget

from app.devices.files import LogFileSource
from app.devices.practice import PracticeSource
from app.pages.drift.offset import NorthSetting
from app.pages.drift.parts import DriftParts
from app.pages.drift.practice import PracticePanel
from app.pages.drift.starchoice import ChosenStar, StarChoice
from app.pages.drift.typed import ByHand
from app.ui.filepicker import log_dialog
from app.ui.form import Asking, Choice, Key
from app.ui.redraw import lay_out, polish
from app.ui.style import GROWS, Theme, tell_grown
from app.ui.text import Panel, Text
from core.language import say

if TYPE_CHECKING:
    from app.devices.source import Source
    from app.night.activenight import ActiveNight
    from app.night.joining import Joining
    from app.night.session import Session
    from app.night.snapshot import Snapshot
    from core.alignment.driftlog.records import DriftLog
    from core.sky.catalogues import StarNow
    from core.sky.site import Air, Site


# Whether a log that was read joins the legs that are here: nobody but the person knows.


class LogQuestion(Asking):
    """Hands a log to the session, and asks first where its legs would meet others.

    `taken` carries the log and a Joining; `left` the sentence when nothing was taken.
    """

    taken = Signal(object, object)
    left = Signal(str)

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._log: DriftLog | None = None
        self._met: object = None  # the legs here when the question was asked
        session.follow(self._keep)
        self.answered.connect(self._answered)
        self.declined.connect(self._declined)

    def give(self, log: DriftLog) -> None:
        """A log was read; the answer nearest at hand leaves everything as it is."""
        question = self._session.question_on(log)
        if not question:
            self.taken.emit(log, self._session.take_log(log))
            return
        self._log, self._met = log, self._here()
        self.ask(
            question,
            self.tr("Solve them together"),
            self.tr("Begin a new state with the log"),
            self.tr("Leave the log"),
        )
        if self.isVisible():
            self.neither().setFocus()

    def _answered(self, is_together: bool) -> None:
        log, self._log = self._log, None
        if log is None:
            return
        if self._met != self._here():
            self.left.emit(
                self.tr(
                    "The legs here have changed since the question was asked, and nothing was "
                    "taken: read the log again."
                )
            )
            return
        take = self._session.take_log if is_together else self._session.take_log_apart
        self.taken.emit(log, take(log))

    def _declined(self) -> None:
        self._log = None
        self.left.emit(self.tr("The log was left; nothing was taken from it."))

    def _keep(self, snapshot: Snapshot) -> None:
        self._tonight = snapshot

    def _here(self) -> object:
        """Which legs a log would meet."""
        return self._tonight.axis_state, [leg.label for leg in self._tonight.legs]


# Importing a drift log: progress while it is read, and an account of every line left out.

MakeSource = Callable[[Path, QObject], LogFileSource]
COLUMNS = "leg, utc, ra_deg, dec_deg, north_arcsec"
MOST_LINES = 2000  # of the account; a person reads the first, the count tells the rest


class Importing(QWidget):
    """What is read goes to `session`; `file_wanted` asks for the picker."""

    file_wanted = Signal()

    def __init__(
        self,
        make_source: MakeSource,
        session: Session,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._make_source = make_source
        self._source: LogFileSource | None = None
        self._is_taken = False
        self._question = LogQuestion(session)
        self._choose = Key(self.tr("Choose a file"), "primary")
        self._cancel = Key(self.tr("Stop reading"))
        self._progress = QProgressBar()
        self._progress.setAccessibleName(self.tr("Share of the file that is read"))
        self._said = Text()
        self._account = QPlainTextEdit()
        self._account.setReadOnly(True)
        self._account.setAccessibleName(self.tr("Lines that were not used, with the reasons"))
        self._north = NorthSetting(session)
        self._choose.clicked.connect(self.file_wanted)
        self._question.taken.connect(self._show_taken)
        self._question.left.connect(self._show_left)
        self._cancel.clicked.connect(self._stop)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        form = self.tr("A text file with the columns {columns}; times in UTC.")
        expected = Text(form.format(columns=COLUMNS), "small")
        reading = (self._choose, self._progress, self._cancel, self._said, self._question)
        for part in (expected, *reading, self._account, self._north):
            column.addWidget(part)
        self._show_reading(False)
        self._account.hide()
        self._said.hide()

    def read(self, path: Path) -> None:
        self.stop()
        source = self._make_source(path, self)
        source.log_read.connect(self._take)
        source.progressed.connect(lambda share: self._progress.setValue(round(100 * share)))
        source.ended.connect(self._ended)
        self._source = source
        self._is_taken = False
        self._question.clear()
        self._progress.setValue(0)
        self._account.hide()
        self._said.say(self.tr("Reading {file} …").format(file=path.name))
        self._show_reading(True)
        source.start()

    def stop(self) -> None:
        """Reads no further; a second call does nothing."""
        if self._source is not None:
            self._source.stop()
            self._source.deleteLater()
            self._source = None
        self._show_reading(False)

    def said(self) -> str:
        return self._said.text()

    def question(self) -> LogQuestion:
        return self._question

    def account(self) -> str:
        return self._account.toPlainText()

    def north(self) -> NorthSetting:
        return self._north

    def cancel_button(self) -> Key:
        return self._cancel

    def choose_button(self) -> Key:
        return self._choose

    def _stop(self) -> None:
        self.stop()
        self._said.say(self.tr("Stopped; nothing was taken from the file."))

    def _take(self, log: DriftLog) -> None:
        self._is_taken = True  # or asked about, or refused: the end of the file adds nothing
        self._said.say("")
        self._question.give(log)

    def _show_left(self, sentence: str) -> None:
        self._show_reading(False)
        self._said.say(sentence)

    def _show_taken(self, log: DriftLog, taken: Joining) -> None:
        self._show_reading(False)
        self._said.say(_summary(log, taken))
        lines = _account(log)
        self._account.setPlainText("\n".join(lines))
        self._account.setVisible(bool(lines))

    def _ended(self, sentence: str) -> None:
        if not self._is_taken:
            self._said.say(sentence)
        self.stop()

    def _show_reading(self, reading: bool) -> None:
        self._progress.setVisible(reading)
        self._cancel.setVisible(reading)
        self._choose.setVisible(not reading and not self._question.question())


def _summary(log: DriftLog, joined: Joining) -> str:
    if not joined.legs:
        return joined.sentence
    readings = sum(len(leg.utc_s) for leg in joined.legs)
    if len(joined.legs) == 1:
        taken = say("Taken: {readings:,} readings in 1 leg.", readings=readings)
    else:
        taken = say(
            "Taken: {readings:,} readings in {legs} legs.",
            readings=readings,
            legs=len(joined.legs),
        )
    if joined.sentence:
        taken = f"{taken} {joined.sentence}"
    if not log.rejected:
        return f"{taken} {say('Every line was used.')}"
    if len(log.rejected) == 1:
        return f"{taken} {say('1 line was not used:')}"
    return f"{taken} {say('{lines:,} lines were not used:', lines=len(log.rejected))}"


def _account(log: DriftLog) -> list[str]:
    lines = [_line(one.line_number, one.reason) for one in log.rejected[:MOST_LINES]]
    if len(log.rejected) > MOST_LINES:
        lines.append(say("… and {more:,} more.", more=len(log.rejected) - MOST_LINES))
    return lines + [_line(remark.line_number, remark.text) for remark in log.remarks]


def _line(number: int, text: str) -> str:
    return say("Line {number}: {text}", number=number, text=text)


# The panel where readings come from: one way at a time, the active one named.

PRACTICE, HAND, LOG = "practice", "hand", "log"


class ReadingsPanel(Panel):
    """Builds the controls of a way when it is first taken. `left` and `taken` carry its key."""

    left = Signal(str)
    taken = Signal(str)  # its controls are there and shown

    def __init__(
        self, builders: dict[str, Callable[[], QWidget]], parent: QWidget | None = None
    ) -> None:
        super().__init__(self.tr("Readings from"), parent)
        self.setProperty(GROWS, True)
        self._builders = builders
        self._way = ""
        self._controls: dict[str, QWidget] = {}
        self._ways = Choice(
            self.tr("Readings from"),
            [
                (PRACTICE, self.tr("Practice sky")),
                (HAND, self.tr("By hand")),
                (LOG, self.tr("Drift log")),
            ],
        )
        self._ways.chosen.connect(self.take)
        self.column.addWidget(self._ways)

    def way(self) -> str:
        return self._way

    def choice(self) -> Choice:
        """Its keys, to take a way with."""
        return self._ways

    def take(self, way: str) -> None:
        """Leaves the way in use and takes another; the same again changes nothing."""
        if way == self._way:
            return
        # Never without a way in between: whoever hears of the leaving would show an empty page.
        before, self._way = self._way, way
        self._leave(before)
        self._ways.show_choice(way)
        self.prepare(way)
        self._controls[way].show()
        self.taken.emit(way)

    def prepare(self, way: str) -> None:
        """Builds the controls of a way without showing them, unless they are there already."""
        self._make(way)
        tell_grown(self)

    def unbuilt(self, way: str) -> list[Callable[[], None]]:
        """Steps to be taken when there is time: then taking the way is quick."""
        return [
            partial(self._make, way),
            partial(tell_grown, self),
            partial(self._polish, way),
            partial(self._lay_out, way),
        ]

    def _make(self, way: str) -> None:
        if way not in self._controls:
            self._controls[way] = self._builders[way]()
            self._controls[way].hide()
            self.column.addWidget(self._controls[way])

    def _polish(self, way: str) -> None:
        polish(self._controls[way])

    def _lay_out(self, way: str) -> None:
        controls = self._controls[way]
        lay_out(controls, QSize(self.contentsRect().width(), controls.sizeHint().height()))

    def leave(self) -> None:
        """No way is in use any more."""
        before, self._way = self._way, ""
        self._leave(before)

    def _leave(self, way: str) -> None:
        if way:
            self._controls[way].hide()
            self._ways.show_none()
            self.left.emit(way)  # whoever listens may drop the controls

    def drop(self, way: str) -> None:
        """Forgets the controls of a way, so that they are built afresh."""
        controls = self._controls.pop(way, None)
        if controls is not None:
            self.column.removeWidget(controls)
            controls.setParent(None)
            controls.deleteLater()

    def controls(self, way: str) -> QWidget | None:
        return self._controls.get(way)


# Builds the controls of each way in and joins its readings to the session they belong to.


class SourceSwitch(QObject):
    """Owns the sources in use. A made-up mount never mixes with a real one: practice has a session
    of its own, which goes when the practice sky is left."""

    letter_pressed = Signal(str)  # while a number is typed; it may be a key of the guide

    def __init__(
        self, shown: ActiveNight, theme: Theme, parts: DriftParts, parent: QObject
    ) -> None:
        super().__init__(parent)
        self._shown = shown
        self._theme = theme
        self._parts = parts
        self._sources: dict[str, Source] = {}
        self._way_tonight = ""
        shown.tonight.follow(self._keep)
        builders = {PRACTICE: self._practice, HAND: self._by_hand, LOG: self._importing}
        self.panel = ReadingsPanel(builders)
        self.panel.left.connect(self._left)

    def back_to_tonight(self) -> None:
        """Practice ends; the way that was in use before it is taken again."""
        self.panel.leave()
        if self._way_tonight:
            self.panel.take(self._way_tonight)

    def stop(self) -> None:
        """No way delivers any more."""
        for source in self._sources.values():
            source.stop()
        importing = self.panel.controls(LOG)
        if isinstance(importing, Importing):
            importing.stop()

    def import_log(self, path: Path) -> None:
        """Reads a file as if it had been chosen."""
        importing = self.panel.controls(LOG)
        if isinstance(importing, Importing):
            importing.read(path)

    def is_watching_way(self) -> bool:
        """Whether stars are watched by the way in use, now or soon."""
        return self.panel.way() in (PRACTICE, HAND)

    def now(self) -> float:
        """Seconds since 1970-01-01 UTC, of the practice night while one is in view."""
        source = self._sources.get(PRACTICE)
        if self._shown.is_practice and isinstance(source, PracticeSource):
            return source.utc_s
        return self._parts.now()

    def watch(self, name: str, ra_deg: float, dec_deg: float) -> None:
        """A star (ICRS place tonight) comes into view, by the way in use."""
        controls = self.panel.controls(self.panel.way())
        if isinstance(controls, PracticePanel):
            controls.watch(name, ra_deg, dec_deg)
        elif isinstance(controls, ByHand):
            controls.watch(ChosenStar(name, ra_deg, dec_deg))

    def tick(self) -> None:
        """Words that change with the readings."""
        practice = self.panel.controls(PRACTICE)
        if isinstance(practice, PracticePanel):
            practice.tick()

    def site_changed(self) -> None:
        """Other stars are up, and a practice mount stands elsewhere."""
        by_hand = self.panel.controls(HAND)
        if isinstance(by_hand, ByHand):
            by_hand.stars().refresh()

    def _left(self, way: str) -> None:
        """What is measured by hand stays under way while one looks elsewhere."""
        if way != PRACTICE:
            self._way_tonight = way
            return
        self._drop_practice()
        self._shown.end_practice()

    def _join(self, way: str, source: Source, session: Session) -> None:
        source.reading.connect(session.add_reading)
        self._sources[way] = source

    def _practice(self) -> QWidget:
        site, air = self._site_or_meadow()
        session = self._shown.begin_practice(site, air)
        source = self._parts.practice(site, air, self)
        self._join(PRACTICE, source, session)
        controls = PracticePanel(session, source, site.latitude_deg)
        controls.again.connect(self._another_mount)
        return controls

    def _site_or_meadow(self) -> tuple[Site, Air]:
        """Whoever has given no site practises on an invented meadow."""
        site, air = self._tonight.site, self._tonight.air
        return self._parts.meadow if site is None or air is None else (site, air)

    def _stars_up(self) -> Sequence[StarNow]:
        return self._parts.stars_up(self._tonight.site, self._tonight.air)

    def _keep(self, snapshot: Snapshot) -> None:
        self._tonight = snapshot

    def _drop_practice(self) -> None:
        source = self._sources.pop(PRACTICE, None)
        if source is not None:
            source.stop()
            source.deleteLater()
        self.panel.drop(PRACTICE)

    def _another_mount(self) -> None:
        self.panel.leave()
        self.panel.take(PRACTICE)

    def _by_hand(self) -> QWidget:
        source = self._parts.manual(self)
        tonight = self._shown.tonight
        self._join(HAND, source, tonight)
        stars = StarChoice(self._stars_up, self._parts.place_tonight)
        by_hand = ByHand(tonight, source, stars, self._parts.now)
        by_hand.pad().letter_pressed.connect(self.letter_pressed)
        return by_hand

    def _importing(self) -> QWidget:
        controls = Importing(self._parts.log_file, self._shown.tonight)
        controls.file_wanted.connect(lambda: self._pick(controls))
        return controls

    def _pick(self, controls: Importing) -> None:
        def read(path: Path) -> None:
            controls.read(path)

        log_dialog(controls, self._theme, read).open()
