"""The Log page: what remains of the nights?"""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.log.comparing import Comparing
from app.pages.log.filebar import FileBar
from app.pages.log.keeping import Keeping
from app.pages.log.nightlist import NightList
from app.pages.log.nightsheet import NightSheet, Opened, opened
from app.pages.log.parts import LogParts
from app.pages.log.words import date_words
from app.session.errand import Errand
from app.session.nightfiles import MEDIA_TYPES, Form, NightFiles, PictureFile, picture_from
from app.storage.records import Found, NightSummary
from app.theme.theme import Theme
from app.widgets.reflow import Reflow
from app.widgets.scrolled import Scrolled
from app.widgets.sections import Section, Sections
from app.widgets.text import Text
from core.night.reportnight import Kind

NIGHTS, COMPARE, KEEP = "nights", "compare", "keep"
BACKUP_NAME, LOG_END = "poleward-backup", ".sqlite"


class LogPage(QWidget):
    """Everything on disk is read and written beside the window's thread. Call `stop` at the end.

    `listed`: the list is up to date; `shown`: a night is opened; `done` carries a sentence when a
    file was written or read.
    """

    listed = Signal()
    shown = Signal()
    done = Signal(str)

    def __init__(self, theme: Theme, parts: LogParts, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme, self._parts = theme, parts
        self._nights: Sequence[NightSummary] = ()
        self._opened: int | None = None
        self._found = ""
        self._lists, self._searches, self._loads = Errand(self), Errand(self), Errand(self)
        self._list = NightList()
        self._sheet = NightSheet(theme)
        self._empty = Text(self._what_for(), "quiet")
        self._bar = FileBar(theme)
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
        self._lists.done.connect(self._take_list)
        self._searches.done.connect(self._take_found)
        self._loads.done.connect(self._take_night)
        self._bar.done.connect(self._take_done)
        self._list.opened.connect(self.open_night)
        self._list.searched.connect(self._search)
        self._sheet.noted.connect(self._note)
        self._sheet.picture_wanted.connect(self._choose_picture)
        self._sheet.export_wanted.connect(self._choose_export)
        self._parts.book.changed.connect(self._changed)
        self._sections.shown.connect(lambda _name: self._show_compared())

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
        keeping = Keeping()
        keeping.back_up_wanted.connect(self._choose_backup)
        keeping.take_in_wanted.connect(self._choose_to_take_in)
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
        for errand in (self._lists, self._searches, self._loads):
            errand.close()
        self._bar.stop()
        self._sheet.stop()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self.refresh()

    def refresh(self) -> None:
        """Reads the list anew; what is being measured changes it all the time."""
        files, log = self._parts.files, self._parts.log

        def read() -> object:
            log.flush()
            return files.overview()

        self._lists.send(read)

    def open_night(self, night_id: int) -> None:
        self._opened = night_id
        files = self._parts.files

        def load() -> object:
            night = files.record(night_id)
            return None if night is None else opened(night)

        self._loads.send(load)

    def takes(self, path: Path) -> bool:
        """Whether a file dropped here belongs here."""
        return path.suffix.casefold() in (*MEDIA_TYPES, Form.JSON.value, LOG_END)

    def take_file(self, path: Path) -> None:
        """A picture, a backup or an exported night dropped on the page."""
        if path.suffix.casefold() in (Form.JSON.value, LOG_END):
            self.ask_to_take_in(path)
        else:
            self._take_picture(path)

    def export(self, form: Form, path: Path) -> None:
        """Asks first where a file of that name is there."""
        night_id, files = self._opened, self._parts.files
        if night_id is not None:
            self._bar.run_when_free(path, lambda: files.export(night_id, form, path))

    def back_up(self, path: Path) -> None:
        """Asks first where a file of that name is there."""
        self._bar.run_when_free(path, lambda: self._parts.files.back_up(path))

    def ask_to_take_in(self, path: Path) -> None:
        question = self.tr("Add what “{file}” holds to the log? Nothing here is replaced.")
        self._bar.ask(
            question.format(file=path.name),
            self.tr("Yes, add it"),
            self.tr("No, leave it"),
            lambda: self._parts.files.take_in(path),
        )

    def _search(self, text: str) -> None:
        self._found = text.strip()
        if not self._found:
            self._list.show_nights(self._nights, self._parts.zone(), self._opened)
            return
        files, wanted = self._parts.files, self._found
        self._searches.send(lambda: (wanted, files.search(wanted)))

    def _take_found(self, answer: object) -> None:
        if isinstance(answer, tuple) and answer[0] == self._found:
            found: tuple[Found, ...] = answer[1]
            self._list.show_found(found, self._opened)

    def _take_list(self, answer: object) -> None:
        if not isinstance(answer, tuple):
            self._bar.say(self.tr("The nights cannot be read because of a fault in the program."))
            return
        self._nights = answer
        if self._found:
            self._search(self._found)
        else:
            self._list.show_nights(self._nights, self._parts.zone(), self._opened)
        self._show_compared()
        self.listed.emit()

    def _show_compared(self) -> None:
        section = self._sections.section(COMPARE)
        if isinstance(section, Comparing) and section.isVisible():
            section.show_nights(self._nights)

    def _take_night(self, answer: object) -> None:
        if not isinstance(answer, Opened):
            self._bar.say(self.tr("This night cannot be read from the log."))
            return
        if answer.night.key != self._opened:
            return
        self._empty.hide()
        self._sheet.show_night(answer, self._parts.zone())
        self._sheet.show()
        self.shown.emit()

    def _take_done(self, answer: object) -> None:
        if isinstance(answer, PictureFile):
            self._keep_picture(answer)
            return
        self.refresh()
        self.done.emit(answer if isinstance(answer, str) else self._bar.said())

    def _changed(self) -> None:
        if self.isVisible():
            self.refresh()

    def _note(self, text: str) -> None:
        """Tonight's notes are also on the Tonight page."""
        if self._opened == self._parts.tonight:
            self._parts.book.note(text)
        elif self._opened is not None:
            self._parts.log.put_entry(Kind.NOTE, {"text": text}, night_id=self._opened)
        self._reopen()

    def _take_picture(self, path: Path) -> None:
        if self._opened is None:
            self._bar.say(self.tr("Open a night first: the picture goes with it."))
            return
        self._bar.run(lambda: picture_from(path))

    def _keep_picture(self, picture: PictureFile) -> None:
        content = {"name": picture.name, "media_type": picture.media_type, "caption": picture.name}
        self._parts.log.put_entry(Kind.PICTURE, content, picture.data, night_id=self._opened)
        sentence = self.tr("{name} is kept with the night.").format(name=picture.name)
        self._bar.say(sentence)
        self._reopen()
        self.done.emit(sentence)

    def _reopen(self) -> None:
        if self._opened is not None:
            night_id, files, log = self._opened, self._parts.files, self._parts.log

            def load() -> object:
                log.flush()
                night = files.record(night_id)
                return None if night is None else opened(night)

            self._loads.send(load)
            self.refresh()

    def _choose_export(self, form: Form) -> None:
        night = next((one for one in self._nights if one.night_id == self._opened), None)
        when = "" if night is None else date_words(night.started_utc_s, self._parts.zone())
        name, pattern = f"night-{when}{form.value}", f"*{form.value}"
        title = self.tr("Save the night")
        self._bar.choose(title, pattern, lambda path: self.export(form, path), name)

    def _choose_backup(self) -> None:
        name = f"{BACKUP_NAME}{LOG_END}"
        title = self.tr("Save a backup of the log")
        self._bar.choose(title, f"*{LOG_END}", self.back_up, name)

    def _choose_to_take_in(self) -> None:
        title = self.tr("Choose a backup or an exported night")
        self._bar.choose(title, f"*{LOG_END}* *{Form.JSON.value}", self.ask_to_take_in)

    def _choose_picture(self) -> None:
        title = self.tr("Choose a picture")
        pattern = " ".join(f"*{end}" for end in MEDIA_TYPES)
        self._bar.choose(title, pattern, self._take_picture)
