"""Importing a drift log: progress while it is read, and an account of every line left out."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QPlainTextEdit, QProgressBar, QVBoxLayout, QWidget

from app.pages.drift.logquestion import LogQuestion
from app.pages.drift.northset import NorthSetting
from app.sources.logfile import LogFileSource
from app.widgets.key import Key
from app.widgets.text import Text
from core.language import say

if TYPE_CHECKING:
    from app.session.joining import Joining
    from app.session.session import Session
    from core.alignment.driftlog.records import DriftLog

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
