"""Nights compared: one figure of each over the dates, as a plot."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from datetime import UTC, datetime
from pathlib import Path

import numpy as np
from PySide6.QtCore import Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.night.archive import MEDIA_TYPES, NightFiles, PictureFile
from app.pages.log.files import TAKEN_IN, BackupBar, Carrying, FileBar
from app.pages.log.nightlist import Listing, NightList
from app.pages.log.nightsheet import NightSheet
from app.pages.log.notes import NightNotes, OpenedNight, Remembering, opened
from app.pages.log.parts import LogParts
from app.store.records import FoundNight, NightSummary
from app.ui.curveplot import Curve, CurvePicture, CurvePlot, Floats, Ink
from app.ui.form import Choice, Section, Sections
from app.ui.style import Theme
from app.ui.text import Panel, Reflow, Scrolled, Text
from app.workers.latest import LatestOnly
from core.language import say
from core.night.record import NightFigures

DAY_S = 86400.0
MOST_TICKS = 5
Values = Callable[[NightFigures], Iterable[float]]


def _one(value: float | None) -> tuple[float, ...]:
    return () if value is None else (value,)


class Comparing(Panel):
    """A night without the figure leaves no mark."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("Nights compared"), parent)
        self._nights: Sequence[NightSummary] = ()
        self._kinds = Choice(self.tr("What is compared"), list(self._names().items()))
        self._kinds.chosen.connect(lambda _kind: self._show())
        self._plot = CurvePlot(theme)
        self._none = Text("", "quiet")
        holder = QWidget()
        column = QVBoxLayout(holder)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._plot)
        for part in (self._kinds, self._none, holder):
            self.column.addWidget(part)
        self._kinds.show_choice("error")
        self._show()

    def _names(self) -> dict[str, str]:
        return {
            "error": self.tr("Error reached"),
            "minutes": self.tr("Minutes spent"),
            "bolts": self.tr("Bolt scale"),
            "periodic": self.tr("Periodic error"),
        }

    def kinds(self) -> Choice:
        return self._kinds

    def plot(self) -> CurvePlot:
        return self._plot

    def said(self) -> str:
        return self._none.text()

    def show_nights(self, nights: Sequence[NightSummary]) -> None:
        self._nights = sorted(nights, key=lambda one: one.started_utc_s)
        self._show()

    def _show(self) -> None:
        kind = self._kinds.choice()
        names = self._names()[kind], self._axis(kind)
        picture = _picture(kind, *names, self._series(kind), self._nights)
        count = sum(curve.x.size for curve in picture.curves)
        self._plot.setVisible(count > 0)
        few = self.tr("No night in the log has this figure yet.")
        self._none.say("" if count else few)
        if count:
            self._plot.show_picture(picture)

    def _axis(self, kind: str) -> str:
        return {
            "error": self.tr("axis error reached, arcminutes"),
            "minutes": self.tr("minutes, first leg to result"),
            "bolts": self.tr("moved over meant"),
            "periodic": self.tr("peak to peak, arcseconds"),
        }[kind]

    def _series(self, kind: str) -> Mapping[str, Values]:
        return {
            "error": {self.tr("error reached"): lambda found: _one(found.error_arcmin)},
            "minutes": {self.tr("minutes spent"): lambda found: _one(found.minutes)},
            "bolts": {
                self.tr("azimuth bolt"): lambda found: found.azimuth_bolt_scales,
                self.tr("altitude bolt"): lambda found: found.altitude_bolt_scales,
            },
            "periodic": {self.tr("periodic error"): lambda found: found.periodic_error_arcsec},
        }[kind]


def _picture(
    kind: str, title: str, axis: str, series: Mapping[str, Values], nights: Sequence[NightSummary]
) -> CurvePicture:
    curves = []
    for number, (name, values) in enumerate(series.items()):
        points = [(one.started_utc_s / DAY_S, y) for one in nights for y in values(one.figures)]
        x = np.array([x for x, _ in points])
        y = np.array([y for _, y in points])
        curves += [Curve(name, x, y, Ink.DOTS), Curve(name, x, y, _ink(number))]
    seen = [curve.x for curve in curves if curve.x.size]
    ticks = _ticks(np.concatenate(seen)) if seen else ()
    low_high = _range(curves)
    levels = ((1.0, say("as it was meant")),) if kind == "bolts" else ()
    drawn = tuple(curves)
    return CurvePicture(
        title, say("night"), axis, drawn, _date, x_ticks=ticks, levels=levels, y_range=low_high
    )


def _ink(number: int) -> Ink:
    return (Ink.THIN, Ink.DASHED)[number]


def _range(curves: Sequence[Curve]) -> tuple[float, float]:
    """From zero, so that a small change looks small."""
    values = [float(curve.y.max()) for curve in curves if curve.y.size]
    return 0.0, 1.1 * max([*values, 0.1])


def _ticks(days: Floats) -> tuple[tuple[float, str], ...]:
    """Some of the nights, evenly among them; dates at the very ends would find no room."""
    unlike = np.unique(days)
    places = (np.arange(MOST_TICKS) + 0.5) / MOST_TICKS * (unlike.size - 1)
    chosen = np.unique(places.round().astype(int))
    return tuple((float(unlike[one]), _date(float(unlike[one]))) for one in chosen)


def _date(day: float) -> str:
    return f"{datetime.fromtimestamp(day * DAY_S, UTC):%Y-%m-%d}"


# The Log page: what remains of the nights?

NIGHTS, COMPARE, KEEP = "nights", "compare", "keep"


class LogPage(QWidget):
    """Everything on disk is read and written beside the window's thread. Call `stop` at the end.

    `newest`: the nights at the top of the list are up to date; `listed`: all are; `found`: it shows
    what was searched for; `shown`: a night is opened; `done` carries a sentence when a file was
    written or read.
    """

    newest = Signal()
    listed = Signal()
    found = Signal()
    shown = Signal()
    done = Signal(str)

    def __init__(self, theme: Theme, parts: LogParts, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme, self._parts = theme, parts
        self._listing = Listing(parts, self)
        self._opened: int | None = None
        self._found = ""
        self._searches, self._loads = LatestOnly(self), LatestOnly(self)
        self._list = NightList()
        self._sheet = NightSheet(theme, parts.priors)
        self._empty = Text(self._what_for(), "quiet")
        self._bar = FileBar(theme)
        self.carrying = Carrying(self._bar, parts, self._summary, self)
        self.remembering = Remembering(self._bar, parts, lambda: self._opened, self)
        self._sections = Sections(
            self.tr("Part of the page"),
            [
                Section(NIGHTS, self.tr("Nights"), self._nights_section),
                Section(COMPARE, self.tr("Compare"), self._compare_section),
                Section(KEEP, self.tr("Keep safe"), self._keep_section),
            ],
        )
        self._connect()
        self._arrange()
        self._sections.show_section(NIGHTS)
        self._sheet.hide()
        self.setFocusProxy(self._list)

    def _connect(self) -> None:
        self._listing.newest.connect(self._show_newest)
        self._listing.whole.connect(self._show_all)
        self._listing.failed.connect(self._cannot_list)
        self._listing.closed.connect(self._list.show_closed)
        self._searches.done.connect(self._take_found)
        self._loads.done.connect(self._take_night)
        self._bar.done.connect(self._take_done)
        self._list.opened.connect(self.open_night)
        self._list.searched.connect(self._search)
        self._sheet.export_wanted.connect(self.carrying.choose_export)
        self._connect_notes(self._sheet.notes)
        self._parts.book.changed.connect(self._changed)
        self._sections.shown.connect(lambda _name: self._show_compared())

    def _connect_notes(self, notes: NightNotes) -> None:
        notes.noted.connect(self.remembering.note)
        notes.changed.connect(self.remembering.change_note)
        notes.described.connect(self.remembering.describe)
        notes.removed.connect(self.remembering.remove)
        notes.put_back.connect(self.remembering.put_back)
        notes.picture_wanted.connect(self.remembering.choose_picture)
        self.remembering.changed.connect(self._reopen)

    def _arrange(self) -> None:
        content = QWidget()
        column = QVBoxLayout(content)
        column.setContentsMargins(16, 12, 16, 12)
        column.setSpacing(12)
        column.addWidget(Text(self.tr("What remains of the nights?"), "question"))
        for part in (self._bar, self._sections):
            column.addWidget(part)
        column.addStretch()
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(Scrolled(content))

    def _nights_section(self) -> QWidget:
        right = QWidget()
        column = QVBoxLayout(right)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._empty)
        column.addWidget(self._sheet)
        column.addStretch()
        return Reflow((self._list, right), 900, (2, 3), at_top=True)

    def _compare_section(self) -> QWidget:
        return Comparing(self._theme)

    def _keep_section(self) -> QWidget:
        keeping = BackupBar()
        keeping.back_up_wanted.connect(self.carrying.choose_backup)
        keeping.take_in_wanted.connect(self.carrying.choose_to_take_in)
        keeping.salvage_wanted.connect(self.carrying.choose_to_salvage)
        return keeping

    def _what_for(self) -> str:
        return self.tr(
            "Every night is kept here as it happened: legs with all readings, turns of the bolts, "
            "results, checklist, weather, notes and pictures. Choose a night to open it."
        )

    def sections(self) -> Sections:
        return self._sections

    def list(self) -> NightList:
        return self._list

    def sheet(self) -> NightSheet:
        return self._sheet

    def files(self) -> NightFiles:
        return self._parts.files

    def bar(self) -> FileBar:
        """What is asked about files, and what became of them."""
        return self._bar

    def stop(self) -> None:
        """Waits for what is under way; harmless twice."""
        self._listing.stop()
        for errand in (self._searches, self._loads):
            errand.close()
        self._bar.stop()
        self.remembering.stop()
        self._sheet.stop()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self.refresh()

    def refresh(self) -> None:
        """Reads the list anew; what is being measured changes it all the time."""
        self._listing.refresh()

    def open_night(self, night_id: int) -> None:
        self._opened = night_id
        self._load(night_id)

    def takes(self, path: Path) -> bool:
        """Whether a file dropped here belongs here."""
        return path.suffix.casefold() in (*MEDIA_TYPES, *TAKEN_IN)

    def take_file(self, path: Path) -> None:
        """A picture, a backup or an exported night dropped on the page."""
        if path.suffix.casefold() in TAKEN_IN:
            self.carrying.ask_to_take_in(path)
        else:
            self.remembering.take_picture(path)

    def _search(self, text: str) -> None:
        self._found = text.strip()
        if not self._found:
            self._show_nights()
            return
        files, wanted = self._parts.files, self._found
        self._searches.send(lambda: (wanted, files.search(wanted)))

    def _take_found(self, answer: object) -> None:
        if isinstance(answer, tuple) and answer[0] == self._found:
            found: tuple[FoundNight, ...] = answer[1]
            self._list.show_found(found, self._opened)
            self.found.emit()

    def _cannot_list(self) -> None:
        self._bar.say(self.tr("The nights cannot be read because of a fault in the program."))

    def _show_newest(self) -> None:
        if not self._found:
            self._show_nights()
        self.newest.emit()

    def _show_all(self) -> None:
        if self._found:
            self._search(self._found)
        else:
            self._show_nights()
        self._show_compared()
        self.listed.emit()

    def _show_nights(self) -> None:
        listing = self._listing
        self._list.show_nights(listing.nights, listing.is_whole, self._parts.zone(), self._opened)

    def _show_compared(self) -> None:
        section = self._sections.section(COMPARE)
        if isinstance(section, Comparing) and section.isVisible():
            section.show_nights(self._listing.nights)

    def _take_night(self, answer: object) -> None:
        if not isinstance(answer, OpenedNight):
            self._bar.say(self.tr("This night cannot be read from the log."))
            return
        if answer.night.key != self._opened:
            return
        self._empty.hide()
        if not self._sheet.shows(answer.night.key):
            self._sheet.hide()  # filled out of sight, it is laid out once
        self._sheet.show_night(answer, self._parts.zone())
        self._sheet.show()
        self.shown.emit()

    def _take_done(self, answer: object) -> None:
        if isinstance(answer, PictureFile):
            self.done.emit(self.remembering.keep_picture(answer))
            return
        self.refresh()
        self.done.emit(answer if isinstance(answer, str) else self._bar.said())

    def _changed(self) -> None:
        if self.isVisible():
            self.refresh()

    def _reopen(self) -> None:
        """After something of the night was changed."""
        if self._opened is not None:
            self._load(self._opened, after=self._parts.log.flush)
            self.refresh()

    def _load(self, night_id: int, after: Callable[[], object] = lambda: None) -> None:
        files = self._parts.files

        def load() -> object:
            after()
            night = files.record(night_id)
            return None if night is None else opened(night)

        self._loads.send(load)

    def _summary(self) -> NightSummary | None:
        return next((one for one in self._listing.nights if one.night_id == self._opened), None)
