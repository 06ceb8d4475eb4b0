"""The equipment section: the list, the form of the opened piece, and exchange by file."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtWidgets import (
    QHBoxLayout,
    QListWidget,
    QListWidgetItem,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from app.night.equipment import Equipment
from app.pages.mount.forms import RecordForm, SetForm, kind_of
from app.pages.mount.formwords import KINDS, said
from app.ui.filepicker import file_dialog
from app.ui.form import Asking, Flow, Key
from app.ui.style import Theme
from app.ui.text import Panel, Reflow, Scrolled, Text
from app.workers.latest import LatestOnly
from core.alignment.driftlog.files import size_if_ordinary
from core.language import say
from core.mount.equipment import Counterweight, EquipmentSet, Inventory, Mount, Part, Record
from core.mount.equipmentfile import MAX_BYTES, EquipmentRead, UnusableEquipment, read, write

# Equipment to and from a file, with an account of what could not be taken.

MOST_LINES = 30


class Exchange(Panel):
    """Files are read and written beside the window's thread."""

    def __init__(self, theme: Theme, equipment: Equipment, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self._theme = theme
        self._equipment = equipment
        self._errand = LatestOnly(self)
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


# All equipment and all sets in a list, and the keys to add to it.

ROLE = Qt.ItemDataRole.UserRole
SET = "set"
HEIGHT_PX = 400


class ThingList(Panel):
    """`opened` carries the key of a thing, `added` the kind of a new one ("set" for a set)."""

    opened = Signal(str)
    added = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self._list = QListWidget()
        self._list.setAccessibleName(self.tr("Equipment and sets"))
        self._list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._list.setWordWrap(True)
        self._list.setTextElideMode(Qt.TextElideMode.ElideNone)
        self._list.setResizeMode(QListWidget.ResizeMode.Adjust)
        self._list.setFixedHeight(HEIGHT_PX)
        self._list.itemClicked.connect(self._open)
        self._list.itemActivated.connect(self._open)
        self._keys: dict[str, Key] = {}
        self.column.addWidget(Text(self.tr("What you have"), "title"))
        self.column.addWidget(self._list)
        self.column.addWidget(Text(self.tr("Add"), "small"))
        self.column.addWidget(self._add_keys())

    def _add_keys(self) -> QWidget:
        holder = QWidget()
        flow = Flow(holder)
        names = [(name, said(words.name)) for name, words in KINDS.items()]
        for name, words in [*names, (SET, self.tr("Set"))]:
            key = Key(words)
            key.setAccessibleName(self.tr("Add: {what}").format(what=words))
            key.clicked.connect(lambda _down, name=name: self.added.emit(name))
            self._keys[name] = key
            flow.addWidget(key)
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        holder.setSizePolicy(policy)
        return holder

    def add_key(self, name: str) -> Key:
        return self._keys[name]

    def list(self) -> QListWidget:
        return self._list

    def show_inventory(self, inventory: Inventory) -> None:
        """Sets first, then each kind in the order of the keys below."""
        current = self._list.currentItem()
        chosen = None if current is None else current.data(ROLE)
        self._list.clear()
        for one in inventory.sets:
            self._add(one.key, one.name, self._set_words(one))
        for words in KINDS.values():
            for record in inventory.of_kind(words.kind):
                self._add(record.key, record.name, self._record_words(record))
        self.mark(chosen)

    def mark(self, key: str | None) -> None:
        """Shows which one is open."""
        for row in range(self._list.count()):
            if self._list.item(row).data(ROLE) == key:
                self._list.setCurrentRow(row)

    def _add(self, key: str, name: str, words: str) -> None:
        item = QListWidgetItem(f"{name}\n{words}")
        item.setData(ROLE, key)
        self._list.addItem(item)

    def _open(self, item: QListWidgetItem) -> None:
        self.opened.emit(item.data(ROLE))

    def _set_words(self, chosen: EquipmentSet) -> str:
        count = len(chosen.parts) + bool(chosen.mount)
        words = self.tr("set for {purpose}, {count} pieces")
        return words.format(purpose=say(chosen.purpose.value), count=count)

    def _record_words(self, record: Record) -> str:
        said_of_it = [said(KINDS[kind_of(record)].name).lower()]
        if isinstance(record, Mount):
            if record.capacity_kg is not None:
                carries = self.tr("carries {kg:g} kg").format(kg=record.capacity_kg)
                said_of_it.append(carries)
        elif isinstance(record, Part | Counterweight):
            known = record.mass_kg is not None
            said_of_it.append(
                self.tr("{kg:g} kg").format(kg=record.mass_kg)
                if known
                else self.tr("mass not known")
            )
        if record.is_planned:
            said_of_it.append(self.tr("to be bought"))
        if record.is_invented:
            said_of_it.append(self.tr("invented"))
        return ", ".join(said_of_it)


# The equipment section: the list on one side, the form of the opened piece on the other.

BESIDE_PX = 900


class Things(QWidget):
    """Asks before typed changes are let go."""

    def __init__(self, theme: Theme, equipment: Equipment, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._equipment = equipment
        self.list = ThingList()
        self.exchange = Exchange(theme, equipment)
        self.asking = Asking()
        self.examples_key = Key(self.tr("Remove the invented examples"))
        self.examples_asking = Asking()
        self._form: RecordForm | SetForm | None = None
        self._then: Callable[[], None] = lambda: None
        self._nothing = self._nothing_open()
        self._place = QVBoxLayout()
        self._arrange()
        self.list.opened.connect(self.open)
        self.list.added.connect(self.add)
        self.asking.answered.connect(self._answered)
        self.examples_key.clicked.connect(self._ask_about_examples)
        self.examples_asking.answered.connect(lambda yes: self._remove_examples() if yes else None)
        equipment.changed.connect(self._show)
        self._show()

    def _arrange(self) -> None:
        left = QWidget()
        column = QVBoxLayout(left)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(12)
        column.addWidget(self.list)
        column.addWidget(self.exchange)
        column.addWidget(self.examples_key)
        column.addWidget(self.examples_asking)
        column.addStretch()
        right = QWidget()
        self._place = QVBoxLayout(right)
        self._place.setContentsMargins(0, 0, 0, 0)
        self._place.setSpacing(12)
        self._place.addWidget(self.asking)
        self._place.addWidget(self._nothing)
        self._place.addStretch()
        content = QWidget()
        inner = QVBoxLayout(content)
        inner.setContentsMargins(16, 0, 16, 12)
        inner.addWidget(Reflow((left, right), BESIDE_PX, (2, 5)))
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        self._scrolled = Scrolled(content)
        outer.addWidget(self._scrolled)

    def _nothing_open(self) -> Panel:
        panel = Panel(self.tr("Choose a piece, or add one"))
        panel.column.addWidget(
            Text(
                self.tr(
                    "Type what the data sheet says; leave empty what it does not say. A set names "
                    "a mount and what goes on it together. What you only mean to buy is kept apart "
                    "and counted when you ask for it."
                ),
                "quiet",
            )
        )
        return panel

    def form(self) -> RecordForm | SetForm | None:
        return self._form

    def open(self, key: str) -> None:
        """Shows a piece or a set, once what was typed is kept or let go."""
        if self._form is not None and self._form.key() == key:
            self._form.setFocus()
            return
        self._leave_form_and(lambda: self._open(key))

    def add(self, kind: str) -> None:
        """An empty form, once what was typed is kept or let go."""
        self._leave_form_and(lambda: self._show_form(self._empty(kind)))

    def _empty(self, kind: str) -> RecordForm | SetForm:
        if kind == SET:
            return SetForm(self._equipment.inventory, None)
        return RecordForm(kind, None)

    def _open(self, key: str) -> None:
        inventory = self._equipment.inventory
        record = inventory.find(key)
        if record is not None:
            self._show_form(RecordForm(kind_of(record), record))
        for one in inventory.sets:
            if one.key == key:
                self._show_form(SetForm(inventory, one))

    def _leave_form_and(self, then: Callable[[], None]) -> None:
        if self._form is None or not self._form.is_changed():
            self.asking.clear()
            then()
            return
        self._then = then
        self.list.mark(self._form.key())
        self.asking.ask(
            self.tr("What you typed is not kept yet."),
            self.tr("Keep it"),
            self.tr("Let it go"),
        )
        self.asking.yes().setFocus()

    def _answered(self, keep: bool) -> None:
        if self._form is not None and keep and not self._form.keep():
            return
        self._then()

    def _show_form(self, form: RecordForm | SetForm | None) -> None:
        if self._form is not None:
            self._form.hide()
            self._form.deleteLater()
        self._form = form
        self._nothing.setVisible(form is None)
        if form is None:
            self.list.list().setFocus()
            return
        is_set = isinstance(form, SetForm)
        form.kept.connect(self._equipment.put_set if is_set else self._equipment.put)
        form.kept.connect(self._kept)
        self.list.mark(form.key())
        form.removed.connect(self._remove)
        form.closed.connect(lambda: self._leave_form_and(lambda: self._show_form(None)))
        self._place.insertWidget(1, form)
        form.show()
        form.setFocus()
        # Once it has its place: where the form stands below the list, it would open unseen.
        QTimer.singleShot(0, form, lambda: self._scrolled.ensureWidgetVisible(form.head))

    def _kept(self, _thing: object) -> None:
        self.list.mark(None if self._form is None else self._form.key())

    def _remove(self, key: str) -> None:
        self._show_form(None)
        self._equipment.remove(key)

    def _ask_about_examples(self) -> None:
        self.examples_asking.ask(
            self.tr("Remove all that is marked as invented, with what you changed in it?"),
            self.tr("Remove it"),
            self.tr("Leave it"),
        )
        self.examples_asking.no().setFocus()

    def _remove_examples(self) -> None:
        invented = [one.key for one in self._equipment.inventory.records if one.is_invented]
        names = set(invented)
        sets = [
            one.key
            for one in self._equipment.inventory.sets
            if one.parts and names.issuperset((*one.parts, one.mount))
        ]
        self._show_form(None)
        self._equipment.remove(*invented, *sets)

    def _show(self) -> None:
        inventory = self._equipment.inventory
        self.list.show_inventory(inventory)
        self.examples_key.setVisible(any(one.is_invented for one in inventory.records))
        self._follow()

    def _follow(self) -> None:
        """A piece that was changed or taken away elsewhere, by an import, is shown as it is now."""
        form = self._form
        if form is None or form.shown() is None or form.is_changed():
            return
        things = self._equipment.inventory.things()
        now = next((one for one in things if one.key == form.key()), None)
        if now is None:
            self._show_form(None)
        elif now != form.shown():
            self._open(form.key())
