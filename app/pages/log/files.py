"""Nights carried out of the log and into it, backups, the way back: files asked about first."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.night.archive import ExportForm
from app.pages.log.parts import LogParts
from app.pages.log.words import date_words
from app.store.records import NightSummary, UnusableFile
from app.ui.filepicker import file_dialog
from app.ui.form import Asking, Key, KeyRow
from app.ui.style import Theme
from app.ui.text import Panel, Text
from app.workers.latest import LatestOnly

# Files written and read beside the window's thread: asked about first, and told what became.

Work = Callable[[], object]


class FileBar(QWidget):
    """`done` carries what the work gave back, a sentence when it failed. Call `stop` at the end."""

    done = Signal(object)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._waiting: Work | None = None  # for a yes
        self._errand = LatestOnly(self)
        self._errand.done.connect(self._take)
        self._asking = Asking()
        self._asking.answered.connect(self._answered)
        self._said = Text()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        for part in (self._asking, self._said):
            column.addWidget(part)
        self._said.hide()

    def asking(self) -> Asking:
        return self._asking

    def said(self) -> str:
        return self._said.text()

    def say(self, sentence: str) -> None:
        self._said.say(sentence)

    def stop(self) -> None:
        self._errand.close()

    def run(self, work: Work) -> None:
        """Without asking."""
        self.say(self.tr("Working on the file …"))
        self._errand.send(lambda: _told(work))

    def run_when_free(self, path: Path, write: Work) -> None:
        """Asks first where a file of that name is there."""
        if not path.exists():
            self.run(write)
            return
        question = self.tr("“{file}” is there already. Replace it?").format(file=path.name)
        self.ask(question, self.tr("Yes, replace it"), self.tr("No, keep it"), write)

    def ask(self, question: str, yes: str, no: str, work: Work) -> None:
        """Does the work after a yes."""
        self._waiting = work
        self._asking.ask(question, yes, no)
        self._asking.no().setFocus()

    def choose(
        self,
        title: str,
        patterns: Sequence[str],
        chosen: Callable[[Path], None],
        name: str = "",
    ) -> None:
        """A dialog for one file; with a `name`, for one to write."""
        filters = [self.tr("These files ({pattern})").format(pattern=" ".join(patterns))]
        if not name:
            filters.append(self.tr("All files (*)"))
        dialog = file_dialog(self, self._theme, title, filters, chosen, bool(name))
        if name:
            dialog.selectFile(name)
        dialog.open()

    def _answered(self, is_yes: bool) -> None:
        waiting, self._waiting = self._waiting, None
        if is_yes and waiting is not None:
            self.run(waiting)
        else:
            self.say(self.tr("Nothing was changed."))

    def _take(self, answer: object) -> None:
        if isinstance(answer, str):
            self.say(answer)
        elif answer is None:
            self.say(self.tr("This could not be done because of a fault in the program."))
        self.done.emit(answer)


def _told(work: Work) -> object:
    """What came of it, in a sentence where it failed."""
    try:
        return work()
    except UnusableFile as reason:
        return str(reason)


# Nights carried out of the log and into it, as files: chosen, asked about, told of.

BACKUP_NAME, LOG_END = "poleward-backup", ".sqlite"
LOG_ENDS = (LOG_END, ".sqlite3", ".db")
TAKEN_IN = (*LOG_ENDS, ExportForm.JSON.value)


class Carrying(QObject):
    """`opened`: the night that is open on the page, None for none."""

    def __init__(
        self,
        bar: FileBar,
        parts: LogParts,
        opened: Callable[[], NightSummary | None],
        parent: QObject,
    ) -> None:
        super().__init__(parent)
        self._bar, self._parts, self._opened = bar, parts, opened

    def export(self, form: ExportForm, path: Path) -> None:
        """Asks first where a file of that name is there."""
        night, files, log = self._opened(), self._parts.files, self._parts.log
        if night is None:
            return

        def write() -> object:
            log.flush()
            return files.export(night.night_id, form, path)

        self._bar.run_when_free(path, write)

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

    def salvage(self, path: Path) -> None:
        """Everything readable of a file, whatever its name; the file itself is not changed."""
        self._bar.run(lambda: self._parts.files.archive.take_in(path))

    def choose_export(self, form: ExportForm) -> None:
        night = self._opened()
        when = "" if night is None else date_words(night.started_utc_s, self._parts.zone())
        name = f"night-{when}{form.value}"
        self._bar.choose(
            self.tr("Save the night"),
            [f"*{form.value}"],
            lambda path: self.export(form, path),
            name,
        )

    def choose_backup(self) -> None:
        name = f"{BACKUP_NAME}{LOG_END}"
        self._bar.choose(self.tr("Save a backup of the log"), [f"*{LOG_END}"], self.back_up, name)

    def choose_to_take_in(self) -> None:
        title = self.tr("Choose a backup or an exported night")
        self._bar.choose(title, _patterns(TAKEN_IN), self.ask_to_take_in)

    def choose_to_salvage(self) -> None:
        title = self.tr("Choose a damaged log of nights")
        self._bar.choose(title, _patterns(LOG_ENDS), self.salvage)


def _patterns(ends: Sequence[str]) -> list[str]:
    return [f"*{end}" for end in ends]


# Keeping the log safe: a backup, the way back from one, and nights from elsewhere.


class BackupBar(QWidget):
    """Each signal asks for the file picker."""

    back_up_wanted = Signal()
    take_in_wanted = Signal()
    salvage_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._back_up = Key(self.tr("Save a backup"), "primary")
        self._take_in = Key(self.tr("Restore or import"))
        self._salvage = Key(self.tr("Salvage a damaged log file…"))
        self._salvage.clicked.connect(self.salvage_wanted)
        self._back_up.clicked.connect(self.back_up_wanted)
        self._take_in.clicked.connect(self.take_in_wanted)
        out, back = Panel(self.tr("Backup")), Panel(self.tr("Restore and import"))
        out.column.addWidget(Text(self._out_words(), "quiet"))
        out.column.addWidget(KeyRow((self._back_up,)))
        back.column.addWidget(Text(self._back_words(), "quiet"))
        back.column.addWidget(KeyRow((self._take_in,)))
        damaged = Panel(self.tr("If the log is damaged"))
        damaged.column.addWidget(Text(self._damage_words(), "quiet"))
        damaged.column.addWidget(KeyRow((self._salvage,)))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(12)
        for part in (out, back, damaged):
            column.addWidget(part)
        column.addStretch()
        self.setFocusProxy(self._back_up)

    def back_up_button(self) -> Key:
        return self._back_up

    def take_in_button(self) -> Key:
        return self._take_in

    def salvage_button(self) -> Key:
        return self._salvage

    def _out_words(self) -> str:
        return self.tr(
            "All nights, all readings and all settings in one file. It is read back before you are "
            "told that it is good. Put it on another disk than this one."
        )

    def _back_words(self) -> str:
        return self.tr(
            "A backup or a night exported as JSON: what it holds is added to this log. Nothing "
            "that is here is replaced or lost."
        )

    def _damage_words(self) -> str:
        return self.tr(
            "A damaged log is salvaged by itself: the old file is kept untouched beside a new one, "
            "all that can be read is saved into the new one, and you are told how much that is. "
            "Any other damaged log, whatever its name, can be salvaged into this log here. Choose "
            "the log in use to have it looked through."
        )
