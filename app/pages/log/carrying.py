"""Nights carried out of the log and into it, as files: chosen, asked about, told of."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path

from PySide6.QtCore import QObject

from app.pages.log.filebar import FileBar
from app.pages.log.parts import LogParts
from app.pages.log.words import date_words
from app.session.nightfiles import Form
from app.storage.records import NightSummary

BACKUP_NAME, LOG_END = "poleward-backup", ".sqlite"
LOG_ENDS = (LOG_END, ".sqlite3", ".db")
TAKEN_IN = (*LOG_ENDS, Form.JSON.value)


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

    def export(self, form: Form, path: Path) -> None:
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

    def choose_export(self, form: Form) -> None:
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
