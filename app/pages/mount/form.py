"""The form for one piece of equipment."""

from __future__ import annotations

import secrets
from dataclasses import replace
from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.mount.answers import Answer, EnumAnswer, FigureAnswer, TextAnswer, YesNoAnswer
from app.pages.mount.formhead import FormHead
from app.pages.mount.formwords import HINTS, KINDS, NAMES, WHOLE, YES_NO, Group, said
from app.widgets.columns import Columns
from app.widgets.field import Field
from app.widgets.figure import Figure
from app.widgets.text import Panel
from app.widgets.tick import Tick
from core.language import say
from core.mount.equipment import ImpossibleValue, MountKind, Place, Record, quantities
from core.mount.equipmentfile import KINDS as RECORDS

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

    def answer(self, name: str) -> Answer:
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

    def _made_answers(self) -> dict[str, Answer]:
        return {name: self._answer(name) for group in self._words.groups for name in group.names}

    def _answer(self, name: str) -> Answer:
        if name in self._figures:
            hint = said(HINTS[name]) if name in HINTS else ""
            return FigureAnswer(Figure(self._figures[name], hint, is_whole=name in WHOLE))
        if name == "note":
            return TextAnswer(Field(self.tr("Note")))
        if name == "kind":
            words = {one.name: _capital(say(one.value)) for one in MountKind}
            return EnumAnswer(self.tr("How the axes stand"), MountKind, words)
        if name == "place":
            return EnumAnswer(self.tr("Where it rides"), Place, self._place_words())
        says = (self.tr("Yes"), self.tr("No"), self.tr("Not known"))
        return YesNoAnswer(said(YES_NO[name]), says)

    def _place_words(self) -> dict[str, str]:
        return {
            Place.TUBE.name: self.tr("On the tube"),
            Place.SADDLE.name: self.tr("Beside the tube"),
            Place.HEAD.name: self.tr("On the head"),
            Place.GROUND.name: self.tr("Tripod or ground"),
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
            starts = {"kind": MountKind.GERMAN_EQUATORIAL, "place": Place.TUBE, "note": ""}
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
