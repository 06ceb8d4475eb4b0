"""The equipment section: the list on one side, the form of the opened piece on the other."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.mount.exchange import Exchange
from app.pages.mount.form import RecordForm, kind_of
from app.pages.mount.setform import SetForm
from app.pages.mount.thinglist import SET, ThingList
from app.session.equipment import Equipment
from app.theme.theme import Theme
from app.widgets.asking import Asking
from app.widgets.key import Key
from app.widgets.reflow import Reflow
from app.widgets.scrolled import Scrolled
from app.widgets.text import Panel, Text

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
