"""Equipment to and from a file, with an account of what could not be taken."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

from PySide6.QtWidgets import QHBoxLayout, QWidget

from app.session.equipment import Equipment
from app.session.errand import Errand
from app.theme.theme import Theme
from app.widgets.asking import Asking
from app.widgets.filepicker import file_dialog
from app.widgets.key import Key
from app.widgets.text import Panel, Text
from core.alignment.driftlog.files import size_if_ordinary
from core.language import say
from core.mount.equipment import Inventory
from core.mount.equipmentfile import MAX_BYTES, EquipmentRead, UnusableEquipment, read, write

MOST_LINES = 30


class Exchange(Panel):
    """Files are read and written beside the window's thread."""

    def __init__(self, theme: Theme, equipment: Equipment, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self._theme = theme
        self._equipment = equipment
        self._errand = Errand(self)
        self._errand.done.connect(self._answered)
        self._then: Callable[[bool], None] = lambda _yes: None
        self.export_key = Key(self.tr("Export …"))
        self.import_key = Key(self.tr("Import …"))
        self.asking = Asking()
        self._said = Text("", "quiet")
        self._said.hide()
        row = QHBoxLayout()
        for key in (self.export_key, self.import_key):
            row.addWidget(key)
        row.addStretch()
        self.column.addLayout(row)
        self.column.addWidget(self.asking)
        self.column.addWidget(self._said)
        self.asking.answered.connect(lambda yes: self._then(yes))
        self.export_key.clicked.connect(lambda: self._choose(is_saving=True))
        self.import_key.clicked.connect(lambda: self._choose(is_saving=False))

    def close_errands(self) -> None:
        """Waits for a file that is being read or written."""
        self._errand.close()

    def said(self) -> str:
        return self._said.text()

    def export_to(self, path: Path) -> None:
        """Asks before a file is replaced."""
        if not path.suffix:
            path = path.with_suffix(".json")
        if not path.exists():
            self._write(path)
            return
        self._then = lambda yes: self._write(path) if yes else None
        question = self.tr("“{file}” is there already. Replace it?").format(file=path.name)
        self.asking.ask(question, self.tr("Replace it"), self.tr("Leave it"))

    def import_from(self, path: Path) -> None:
        """Asks before any piece is replaced."""
        self._errand.send(lambda: _read_file(path))

    def _write(self, path: Path) -> None:
        text = write(self._equipment.inventory)
        self._errand.send(lambda: _write_file(path, text))

    def _choose(self, is_saving: bool) -> None:
        chosen = self.export_to if is_saving else self.import_from
        title = self.tr("Export equipment") if is_saving else self.tr("Import equipment")
        filters = [self.tr("Equipment (*.json)"), self.tr("All files (*)")]
        file_dialog(self, self._theme, title, filters, chosen, is_saving).open()

    def _answered(self, answer: object) -> None:
        if isinstance(answer, EquipmentRead):
            self._offer(answer)
        else:
            broken = self.tr("The file could not be used because of a fault in the program.")
            self._said.say(answer if isinstance(answer, str) else broken)

    def _offer(self, given: EquipmentRead) -> None:
        """Takes what is new; asks about what is there with other figures."""
        mine = {one.key: one for one in self._equipment.inventory.things()}
        changed = [one for one in given.inventory.things() if mine.get(one.key, one) != one]
        if not changed:
            self._take(given, given.inventory)
            return
        kept = {one.key for one in changed}
        fresh = replace(
            given.inventory,
            records=tuple(one for one in given.inventory.records if one.key not in kept),
            sets=tuple(one for one in given.inventory.sets if one.key not in kept),
        )
        self._then = lambda yes: self._take(given, given.inventory if yes else fresh)
        names = ", ".join(f"“{one.name}”" for one in changed[:5])
        more = "" if len(changed) <= 5 else self.tr(" and {n} more").format(n=len(changed) - 5)
        question = self.tr("The file has other figures than yours for {names}{more}.")
        self.asking.ask(
            question.format(names=names, more=more),
            self.tr("Take the file's"),
            self.tr("Keep mine"),
        )

    def _take(self, given: EquipmentRead, taken: Inventory) -> None:
        self._equipment.take(taken)
        count = self.tr("Pieces taken: {n}; sets taken: {m}.")
        lines = [count.format(n=len(taken.records), m=len(taken.sets))]
        account = [*given.rejected, *given.notes]
        lines += account[:MOST_LINES]
        if len(account) > MOST_LINES:
            lines.append(self.tr("… and {n} more.").format(n=len(account) - MOST_LINES))
        self._said.say("\n".join(lines))


def _read_file(path: Path) -> EquipmentRead | str:
    try:
        if size_if_ordinary(path) is None:
            return say(
                "“{file}” is a folder, a pipe or a device, not a file that can be read whole: "
                "choose another file.",
                file=path.name,
            )
        with path.open("rb") as file:
            return read(file.read(MAX_BYTES + 1))
    except UnusableEquipment as reason:
        return str(reason)
    except OSError as error:
        return say(
            "“{file}” cannot be read ({why}): choose another file.",
            file=path.name,
            why=error.strerror,
        )


def _write_file(path: Path, text: str) -> str:
    """A file that cannot be finished is not left behind in the place of an older one."""
    fresh = path.with_name(f"{path.name}.new")
    try:
        fresh.write_text(text, encoding="utf-8")
        fresh.replace(path)
    except OSError as error:
        return say(
            "“{path}” cannot be written ({why}): choose another place.",
            path=path,
            why=error.strerror,
        )
    return say("Written to “{path}”.", path=path)
