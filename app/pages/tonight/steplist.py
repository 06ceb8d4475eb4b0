"""The checklist: one part of the night at a time, with what is left of each on its key."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from PySide6.QtCore import QTimer, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.tonight.steprow import StepRow, StepShown
from app.pages.tonight.words import part_words
from app.session.nightbook import NightBook
from app.session.standing import Standing
from app.widgets.choice import Choice
from app.widgets.field import Field
from app.widgets.key import Key
from app.widgets.reflow import Reflow
from app.widgets.text import Panel, Text
from app.widgets.tick import Tick
from core.night.checklist import Part, State, Step, UnusableStep, done, reopened, skipped, state_of
from core.sky.clocks import Zone, find

ROWS_AT_ONCE = 1


class StepList(Panel):
    """`page_wanted` carries the name a step has for a page."""

    page_wanted = Signal(str)

    def __init__(
        self,
        book: NightBook,
        titles: Mapping[str, str],
        now: Callable[[], float],
        parent: QWidget | None = None,
    ) -> None:
        """`titles`: of pages, by the names steps have for them."""
        super().__init__("", parent)
        self.setAccessibleName(self.tr("Checklist"))
        self._book = book
        self._titles = titles
        self._now = now
        self._standing: Standing | None = None
        self._zone = find("UTC")
        self._rows: dict[str, StepRow] = {}  # of the part in view, in order
        self._made: dict[str, StepRow] = {}  # of all parts that were looked at
        self._showing = QTimer(self)
        self._showing.setInterval(0)
        self._showing.timeout.connect(self._show_more)
        self._parts = Choice(
            self.tr("Part of the night"), [(part.name, part_words(part)) for part in Part]
        )
        self._is_chosen = False
        self._parts.chosen.connect(self._chosen)
        self._holder = QWidget()
        self._column = QVBoxLayout(self._holder)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(0)
        self._text = Field(self.tr("A step of your own, at the end of this part"))
        self._kept = Tick(self.tr("Every night"), self.tr("Keep it for other nights"))
        self._add = Key(self.tr("Add it"))
        self._text.submitted.connect(self._add_own)
        self._add.clicked.connect(self._add_own)
        for part in (
            Text(self.tr("Checklist for this night"), "title"),
            self._parts,
            self._holder,
            Reflow((self._text, self._kept, self._add), 620, (1, 0, 0)),
        ):
            self.column.addWidget(part)
        self._parts.show_choice(Part.BEFORE_LEAVING.name)

    def parts(self) -> Choice:
        return self._parts

    def row(self, key: str) -> StepRow:
        """Of a step in the part that is shown."""
        return self._rows[key]

    def rows(self) -> list[StepRow]:
        """In order."""
        return list(self._rows.values())

    def is_whole(self) -> bool:
        """Whether all rows of the part are in view."""
        return not self._showing.isActive()

    def stop(self) -> None:
        self._showing.stop()

    def own_field(self) -> Field:
        return self._text

    def kept_tick(self) -> Tick:
        return self._kept

    def add_button(self) -> Key:
        return self._add

    def show_part(self, part: Part) -> None:
        self._parts.show_choice(part.name)
        self._chosen(part.name)

    def show_marks(self) -> None:
        """What was just said of steps, before the times follow."""
        if self._standing is not None:
            self._show_rows()

    def show_standing(self, standing: Standing, zone: Zone) -> None:
        """The part with the next step comes into view by itself until the person chooses one."""
        self._standing, self._zone = standing, zone
        if not self._is_chosen and standing.now.next is not None:
            self._parts.show_choice(standing.now.next.step.part.name)
        self._show_rows()

    def _chosen(self, _name: str) -> None:
        self._is_chosen = True
        self._show_rows()

    def _part(self) -> Part:
        return Part[self._parts.choice()]

    def _shown(self) -> list[StepShown]:
        standing = self._standing
        if standing is None:
            return []
        marks, facts = self._book.marks(), standing.facts
        kept = {one.key for one in self._book.own() if one.is_kept}
        return [
            StepShown(
                one,
                state_of(one.step, marks, facts),
                marks.get(one.step.key),
                self._titles.get(one.step.page, ""),
                one.step.key in kept,
            )
            for one in standing.checklist.planned
        ]

    def _show_rows(self) -> None:
        shown = self._shown()
        for part in Part:
            states = [one.state for one in shown if one.planned.step.part is part]
            left = sum(state is State.OPEN for state in states)
            words = part_words(part)
            self._parts.button(part.name).setText(f"{words}  {left}" if left else f"{words}  ✓")
        here = {one.planned.step.key: one for one in shown if one.planned.step.part is self._part()}
        if list(here) != list(self._rows):
            self._renew(here)
        for key, one in here.items():
            self._rows[key].show_step(one, self._zone)

    def _renew(self, here: Mapping[str, StepShown]) -> None:
        """Rows are made once; they come into view a few at a time, for the window must not wait."""
        for key in [key for key in self._made if key not in self._steps()]:
            gone = self._made.pop(key)
            gone.hide()
            self._column.removeWidget(gone)
            gone.deleteLater()
        for key, row in self._made.items():
            if key not in here:
                row.hide()
        for key, one in here.items():
            if key not in self._made:
                self._made[key] = self._new_row(one)
        self._rows = {key: self._made[key] for key in here}
        for number, row in enumerate(self._rows.values()):
            self._column.insertWidget(number, row)
        self._order_tabs()
        self._showing.start()

    def _order_tabs(self) -> None:
        """Tab goes through the rows as they stand, not as they were made."""
        before: QWidget = self._parts.button(list(Part)[-1].name)
        for row in self._rows.values():
            for stop in row.stops():
                QWidget.setTabOrder(before, stop)
                before = stop

    def _steps(self) -> set[str]:
        standing = self._standing
        return set() if standing is None else {step.key for step in standing.checklist.steps}

    def _show_more(self) -> None:
        waiting = [row for row in self._rows.values() if row.isHidden()]
        for row in waiting[:ROWS_AT_ONCE]:
            row.show()
        if len(waiting) <= ROWS_AT_ONCE:
            self._showing.stop()

    def _new_row(self, shown: StepShown) -> StepRow:
        step = shown.planned.step
        row = StepRow(shown)
        row.hide()
        row.marked.connect(lambda is_done: self._mark(step, is_done))
        row.skipped.connect(lambda why: self._book.mark(skipped(step, why, self._now())))
        row.page_wanted.connect(lambda: self.page_wanted.emit(step.page))
        row.moved.connect(lambda way: self._move(step, way))
        row.kept.connect(lambda is_kept: self._book.keep_step(step.key, is_kept))
        row.removed.connect(lambda: self._book.remove_step(step.key))
        return row

    def _mark(self, step: Step, is_done: bool) -> None:
        self._book.mark((done if is_done else reopened)(step, self._now()))

    def _move(self, step: Step, way: int) -> None:
        """Behind the next step, or behind the one before the last."""
        if self._standing is None:
            return
        steps = self._standing.checklist.steps
        keys = [one.key for one in steps]
        at = keys.index(step.key)
        behind = at + 1 if way > 0 else at - 2
        if 0 <= behind < len(steps):
            self._book.move_step(step.key, steps[behind])

    def _add_own(self) -> None:
        """Behind the last step of the part in view."""
        standing = self._standing
        if standing is None:
            return
        steps = [step for step in standing.checklist.steps if step.part is self._part()]
        behind = steps[-1].key if steps else ""
        try:
            self._book.add_step(self._text.text(), self._part(), behind, self._kept.isChecked())
        except UnusableStep as reason:
            self._text.complain(str(reason))
            return
        self._text.show_text("")
        self._text.note("")
        self._text.setFocus()
