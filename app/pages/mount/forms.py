"""The forms for one piece of equipment and for a set."""

from __future__ import annotations

import secrets
from dataclasses import replace
from enum import Enum
from typing import Any, Protocol

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QSizePolicy, QVBoxLayout, QWidget

from app.pages.mount.formwords import HINTS, KINDS, NAMES, WHOLE, YES_NO, Group, said
from app.ui.form import Asking, Choice, Field, Figure, Flow, Key, Named, Tick
from app.ui.text import Columns, Panel, Text
from core.language import say
from core.mount.equipment import (
    EquipmentSet,
    ImpossibleValue,
    Inventory,
    Mount,
    MountingPlace,
    MountKind,
    Purpose,
    Record,
    quantities,
)
from core.mount.equipmentfile import KINDS as RECORDS

# The parts of a form that are not figures: one of several, yes or no, a text.


class FieldEditor(Protocol):
    """Holds one field of a record while it is edited."""

    def widget(self) -> QWidget: ...

    def show_value(self, value: Any) -> None: ...

    def value(self) -> Any: ...

    def is_wrong(self) -> bool: ...


class FigureAnswer:
    """A figure, or None."""

    def __init__(self, figure: Figure) -> None:
        self.figure = figure

    def widget(self) -> QWidget:
        return self.figure

    def show_value(self, value: Any) -> None:
        self.figure.show_figure(value)

    def value(self) -> Any:
        return self.figure.read()

    def is_wrong(self) -> bool:
        return self.figure.is_wrong()


class TextAnswer:
    """Any text."""

    def __init__(self, field: Field) -> None:
        self.field = field

    def widget(self) -> QWidget:
        return self.field

    def show_value(self, value: Any) -> None:
        self.field.show_text(str(value))

    def value(self) -> Any:
        return self.field.text()

    def is_wrong(self) -> bool:
        return self.field.is_wrong()


class EnumAnswer:
    """One member of an enumeration, by keys."""

    def __init__(self, name: str, kind: type[Enum], words: dict[str, str]) -> None:
        self._kind = kind
        self.choice = Choice(name, [(one.name, words[one.name]) for one in kind])
        self._named = Named(name, self.choice)

    def widget(self) -> QWidget:
        return self._named

    def show_value(self, value: Any) -> None:
        self.choice.show_choice(value.name)

    def value(self) -> Any:
        return self._kind[self.choice.choice()]

    def is_wrong(self) -> bool:
        return False


YES_NO_ANSWERS = {"yes": True, "no": False, "unknown": None}


class YesNoAnswer:
    """True, False, or None when it is not known."""

    def __init__(self, name: str, words: tuple[str, str, str]) -> None:
        self.choice = Choice(name, list(zip(YES_NO_ANSWERS, words, strict=True)))
        self._named = Named(name, self.choice)

    def widget(self) -> QWidget:
        return self._named

    def show_value(self, value: Any) -> None:
        names = {given: name for name, given in YES_NO_ANSWERS.items()}
        self.choice.show_choice(names[value])

    def value(self) -> Any:
        return YES_NO_ANSWERS[self.choice.choice()]

    def is_wrong(self) -> bool:
        return False


# The top of a form: what it is about, and the keys to keep, remove and close it.


class FormHead(QWidget):
    """Removing asks once more in place."""

    keep_wanted = Signal()
    removal_wanted = Signal()
    close_wanted = Signal()

    def __init__(self, title: str, is_new: bool, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._title = Text(title, "title")
        self.keep_key = Key(self.tr("Keep"), "primary")
        self.remove_key = Key(self.tr("Remove"))
        self.close_key = Key(self.tr("Close"))
        self.remove_key.setVisible(not is_new)
        self.asking = Asking()
        self._said = Text()
        self._said.hide()
        keys = QWidget()
        row = Flow(keys)
        for key in (self.keep_key, self.remove_key, self.close_key):
            row.addWidget(key)
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        keys.setSizePolicy(policy)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        for part in (self._title, keys, self.asking, self._said):
            column.addWidget(part)
        self.keep_key.clicked.connect(self.keep_wanted)
        self.close_key.clicked.connect(self.close_wanted)
        self.remove_key.clicked.connect(self._ask)
        self.asking.answered.connect(self._answered)

    def say(self, sentence: str, is_alarm: bool = False) -> None:
        self._said.setProperty("voice", "alarm" if is_alarm else "quiet")
        self._said.style().polish(self._said)
        self._said.say(sentence)

    def said(self) -> str:
        return self._said.text()

    def show_kept(self, name: str) -> None:
        self._title.setText(name)
        self.remove_key.setVisible(True)
        self.say(self.tr("Kept."))

    def _ask(self) -> None:
        form = self.tr("Remove “{name}”, from all sets too?")
        question = form.format(name=self._title.text())
        self.asking.ask(question, self.tr("Remove it"), self.tr("Leave it"))
        self.asking.no().setFocus()

    def _answered(self, is_yes: bool) -> None:
        if is_yes:
            self.removal_wanted.emit()
        else:
            self.remove_key.setFocus()


# The form for one piece of equipment.

COLUMN_PX = 290


class RecordForm(QWidget):
    """`kept` carries the record, `removed` its key; `closed` wants the form away."""

    kept = Signal(object)
    removed = Signal(str)
    closed = Signal()

    def __init__(self, kind: str, record: Record | None, parent: QWidget | None = None) -> None:
        """`kind` as in `KINDS`; `record` None for a new one."""
        super().__init__(parent)
        self._kind = kind
        self._record = record
        self._words = KINDS[kind]
        self._figures = quantities(self._words.kind)
        title = record.name if record is not None else said(self._words.new)
        self.head = FormHead(title, is_new=record is None)
        self._name = Field(self.tr("Name, as you call it"))
        self._planned = Tick(self.tr("Still to be bought"))
        self._answers = self._made_answers()
        self._arrange()
        self._show()
        self._first = self._typed()
        self._connect()
        self.setFocusProxy(self._name)

    def is_changed(self) -> bool:
        """Something was typed that is not kept."""
        return self._typed() != self._first

    def key(self) -> str:
        """Of the record shown; empty for a new one."""
        return "" if self._record is None else self._record.key

    def shown(self) -> Record | None:
        """As it was last kept; None for a new one."""
        return self._record

    def answer(self, name: str) -> FieldEditor:
        return self._answers[name]

    def name_field(self) -> Field:
        return self._name

    def planned_tick(self) -> Tick:
        return self._planned

    def keep(self) -> bool:
        """Hands the record on, unless something is wrong with it, which is said."""
        values = {name: answer.value() for name, answer in self._answers.items()}
        name = self._name.text()
        if not name:
            self._name.complain(self.tr("Without a name it cannot be found again."))
        else:
            self._name.note("")
        wrong = [answer for answer in self._answers.values() if answer.is_wrong()]
        if wrong or not name:
            self.head.say(self.tr("Not kept yet: see the dashed fields."), is_alarm=True)
            (wrong[0].widget() if name else self._name).setFocus()
            return False
        return self._hand_on(name, values)

    def _hand_on(self, name: str, values: dict[str, Any]) -> bool:
        planned = self._planned.isChecked()
        try:
            if self._record is None:
                made = self._new(name, planned, values)
            else:
                made = replace(self._record, name=name, is_planned=planned, **values)
        except ImpossibleValue as reason:
            self.head.say(str(reason), is_alarm=True)
            return False
        self._record = made
        self._first = self._typed()
        self.head.show_kept(made.name)
        self.kept.emit(made)
        return True

    def _new(self, name: str, planned: bool, values: dict[str, Any]) -> Record:
        key = f"{self._kind}-{secrets.token_hex(6)}"
        return RECORDS[self._kind](key=key, name=name, is_planned=planned, **values)

    def _made_answers(self) -> dict[str, FieldEditor]:
        return {name: self._answer(name) for group in self._words.groups for name in group.names}

    def _answer(self, name: str) -> FieldEditor:
        if name in self._figures:
            hint = said(HINTS[name]) if name in HINTS else ""
            return FigureAnswer(Figure(self._figures[name], hint, is_whole=name in WHOLE))
        if name == "note":
            return TextAnswer(Field(self.tr("Note")))
        if name == "kind":
            words = {one.name: _capital(say(one.value)) for one in MountKind}
            return EnumAnswer(self.tr("How the axes stand"), MountKind, words)
        if name == "place":
            return EnumAnswer(self.tr("Where it rides"), MountingPlace, self._place_words())
        says = (self.tr("Yes"), self.tr("No"), self.tr("Not known"))
        return YesNoAnswer(said(YES_NO[name]), says)

    def _place_words(self) -> dict[str, str]:
        return {
            MountingPlace.TUBE.name: self.tr("On the tube"),
            MountingPlace.SADDLE.name: self.tr("Beside the tube"),
            MountingPlace.HEAD.name: self.tr("On the head"),
            MountingPlace.GROUND.name: self.tr("Tripod or ground"),
        }

    def _arrange(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(12)
        first = Panel()
        first.column.addWidget(self.head)
        first.column.addWidget(self._name)
        first.column.addWidget(self._planned, 0, Qt.AlignmentFlag.AlignLeft)
        column.addWidget(first)
        column.addWidget(Columns([self._panel(one) for one in self._words.groups], COLUMN_PX, 3))
        column.addStretch()

    def _panel(self, group: Group) -> Panel:
        panel = Panel(said(group.title))
        for name in group.names:
            panel.column.addWidget(self._answers[name].widget())
        return panel

    def _show(self) -> None:
        record = self._record
        if record is None:
            starts = {"kind": MountKind.GERMAN_EQUATORIAL, "place": MountingPlace.TUBE, "note": ""}
            for name, answer in self._answers.items():
                answer.show_value(starts.get(name))
            return
        self._name.show_text(record.name)
        self._planned.show_tick(record.is_planned)
        for name, answer in self._answers.items():
            answer.show_value(getattr(record, name))

    def _typed(self) -> tuple[object, ...]:
        """All that stands in the form, as it stands."""
        texts = [
            answer.figure.text() if isinstance(answer, FigureAnswer) else answer.value()
            for answer in self._answers.values()
        ]
        return self._name.text(), self._planned.isChecked(), *texts

    def _connect(self) -> None:
        self.head.keep_wanted.connect(self.keep)
        self.head.close_wanted.connect(self.closed)
        self.head.removal_wanted.connect(lambda: self.removed.emit(self.key()))
        lines = [one.figure for one in self._answers.values() if isinstance(one, FigureAnswer)]
        for field in (self._name, *lines):
            field.submitted.connect(self.keep)


def kind_of(record: Record) -> str:
    """As in `KINDS`."""
    return NAMES[type(record)]


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]


# The form for a set: what it is for, the mount, and what goes on it.

NO_MOUNT = ""


class SetForm(QWidget):
    """`kept` carries the set, `removed` its key; `closed` wants the form away."""

    kept = Signal(object)
    removed = Signal(str)
    closed = Signal()

    def __init__(
        self, inventory: Inventory, chosen: EquipmentSet | None, parent: QWidget | None = None
    ) -> None:
        """`chosen` None for a new set."""
        super().__init__(parent)
        self._set = chosen
        title = chosen.name if chosen is not None else self.tr("A set: things used together")
        self.head = FormHead(title, is_new=chosen is None)
        self._name = Field(self.tr("Name, as you call it"))
        self.purposes = Choice(self.tr("What it is for"), self._purpose_words())
        mounts = inventory.of_kind(Mount)
        options = [(one.key, one.name) for one in mounts]
        self.mounts = Choice(self.tr("Mount"), [*options, (NO_MOUNT, self.tr("None"))])
        self.parts: dict[str, Tick] = {}
        self._arrange(inventory)
        self._show()
        self._first = self._typed()
        self._connect()
        self.setFocusProxy(self._name)

    def is_changed(self) -> bool:
        return self._typed() != self._first

    def key(self) -> str:
        return "" if self._set is None else self._set.key

    def shown(self) -> EquipmentSet | None:
        """As it was last kept; None for a new one."""
        return self._set

    def name_field(self) -> Field:
        return self._name

    def keep(self) -> bool:
        """Hands the set on, unless it has no name."""
        name = self._name.text()
        if not name:
            self._name.complain(self.tr("Without a name it cannot be found again."))
            self.head.say(self.tr("Not kept yet: see the dashed fields."), is_alarm=True)
            self._name.setFocus()
            return False
        self._name.note("")
        given = self._made(name)
        self._set = given
        self._first = self._typed()
        self.head.show_kept(name)
        self.kept.emit(given)
        return True

    def _made(self, name: str) -> EquipmentSet:
        purpose = Purpose[self.purposes.choice()]
        mount = self.mounts.choice()
        if self._set is None:
            key = f"set-{secrets.token_hex(6)}"
            parts = tuple(part for part, tick in self.parts.items() if tick.isChecked())
            return EquipmentSet(key=key, name=name, purpose=purpose, mount=mount, parts=parts)
        # Things named by the set that are not there any more stay named.
        gone = tuple(part for part in self._set.parts if part not in self.parts)
        ticked = tuple(part for part, tick in self.parts.items() if tick.isChecked())
        return replace(self._set, name=name, purpose=purpose, mount=mount, parts=(*ticked, *gone))

    def _purpose_words(self) -> list[tuple[str, str]]:
        return [
            (Purpose.OBSERVING.name, self.tr("Observing")),
            (Purpose.PLANETARY.name, self.tr("Planets")),
            (Purpose.DEEP_SKY.name, self.tr("Deep-sky imaging")),
        ]

    def _arrange(self, inventory: Inventory) -> None:
        first = Panel()
        purpose = Named(self.purposes.accessibleName(), self.purposes)
        mount = Named(self.mounts.accessibleName(), self.mounts)
        for part in (self.head, self._name, purpose, mount):
            first.column.addWidget(part)
        parts = Panel(self.tr("What goes on it"))
        grid = QGridLayout()
        grid.setHorizontalSpacing(12)
        grid.setColumnStretch(1, 1)
        for row, words in enumerate(KINDS.values()):
            found = inventory.of_kind(words.kind)
            if found and words.kind is not Mount:
                title = Text(said(words.name), "quiet")
                title.setWordWrap(False)
                grid.addWidget(title, row, 0)
                grid.addWidget(self._ticks(found), row, 1)
        parts.column.addLayout(grid)
        if not self.parts:
            parts.column.addWidget(Text(self.tr("Nothing is entered yet."), "quiet"))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(12)
        column.addWidget(first)
        column.addWidget(parts)
        column.addStretch()

    def _ticks(self, records: tuple[Record, ...]) -> QWidget:
        holder = QWidget()
        flow = Flow(holder)
        for one in records:
            planned = self.tr("{name} (to be bought)").format(name=one.name)
            tick = Tick(planned if one.is_planned else one.name)
            self.parts[one.key] = tick
            flow.addWidget(tick)
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        holder.setSizePolicy(policy)
        return holder

    def _show(self) -> None:
        chosen = self._set
        if chosen is None:
            self.purposes.show_choice(Purpose.DEEP_SKY.name)
            self.mounts.show_choice(self.mounts.options()[0])
            return
        self._name.show_text(chosen.name)
        self.purposes.show_choice(chosen.purpose.name)
        known = chosen.mount if chosen.mount in self.mounts.options() else NO_MOUNT
        self.mounts.show_choice(known)
        for key, tick in self.parts.items():
            tick.show_tick(key in chosen.parts)

    def _typed(self) -> tuple[object, ...]:
        ticked = tuple(key for key, tick in self.parts.items() if tick.isChecked())
        return self._name.text(), self.purposes.choice(), self.mounts.choice(), ticked

    def _connect(self) -> None:
        self.head.keep_wanted.connect(self.keep)
        self.head.close_wanted.connect(self.closed)
        self.head.removal_wanted.connect(lambda: self.removed.emit(self.key()))
        self._name.submitted.connect(self.keep)
