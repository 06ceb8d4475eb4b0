"""The checklist on the page: one part of the night at a time, a row a step."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QVBoxLayout, QWidget

from app.night.notes import NightBook
from app.night.status import NightStatus
from app.pages.tonight.words import part_words, state_words, time_words, tr
from app.ui.form import Choice, Field, Key, KeyRow, Tick
from app.ui.text import Panel, Reflow, Text
from core.night.checklist import (
    ChecklistStep,
    NightPart,
    Planned,
    State,
    StepMark,
    UnusableStep,
    done,
    reopened,
    skipped,
    state_of,
)
from core.sky.clocks import Zone, find

# Skipping a step: the reason first, in its place below the step.


class Skipping(QFrame):
    """`skip` carries the reason; `left` follows when it is skipped or kept."""

    skip = Signal(str)
    left = Signal()

    def __init__(self, step: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("kind", "asking")
        self.setAccessibleName(self.tr("Skip “{step}”").format(step=step))
        self._reason = Field(self.tr("Why is it skipped tonight?"), self.tr("in a few words"))
        self._sure = Key(self.tr("Skip it"))
        self._keep = Key(self.tr("Leave it open"))
        self._reason.submitted.connect(self._submit)
        self._sure.clicked.connect(self._submit)
        self._keep.clicked.connect(self._leave)
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 8, 12, 8)
        column.addWidget(self._reason)
        column.addWidget(KeyRow((self._sure, self._keep)))
        self.setFocusProxy(self._reason)
        self.hide()

    def ask(self) -> None:
        self._reason.show_text("")
        self._reason.note(self.tr("It goes into the report. Cautions stay."))
        self.show()
        self._reason.setFocus()

    def reason(self) -> Field:
        return self._reason

    def sure_button(self) -> Key:
        return self._sure

    def keep_button(self) -> Key:
        return self._keep

    def _submit(self) -> None:
        if not self._reason.text():
            self._reason.complain(self.tr("Say in a few words why it is skipped."))
            self._reason.setFocus()
            return
        self.hide()
        self.skip.emit(self._reason.text())
        self.left.emit()

    def _leave(self) -> None:
        self.hide()
        self.left.emit()


# One step of the checklist: its time, why, what to take care of, and the keys that go with it.

BESIDE_PX = 560


@dataclass(frozen=True)
class StepShown:
    """A step as it stands. `page_title`: of the page that does it, empty without one."""

    planned: Planned
    state: State
    mark: StepMark | None
    page_title: str
    is_kept: bool = False


class StepRow(QFrame):
    """`marked` carries True for done, False for open again; `skipped` the reason. `moved` carries
    -1 or 1, `kept` whether an own step comes again.
    """

    marked = Signal(bool)
    skipped = Signal(str)
    page_wanted = Signal()
    moved = Signal(int)
    kept = Signal(bool)
    removed = Signal()

    def __init__(self, shown: StepShown, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        step = shown.planned.step
        self._step = step
        self.setAccessibleName(tr(step.text))
        self._time = Text("", "title")
        self._time.setWordWrap(False)
        self._time.setMinimumWidth(64)
        self._tick = Tick("", self.tr("Done: {step}").format(step=tr(step.text)))
        self._state = Text("", "side")
        self._skipping: Skipping | None = None
        self._keep: Tick | None = None
        self._skip = Key(self.tr("Skip"))
        self._skip.setAccessibleName(self.tr("Skip: {step}").format(step=tr(step.text)))
        self._skip.clicked.connect(self._ask)
        self._tick.ticked.connect(self.marked)
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 8, 0, 8)
        self._column.setSpacing(4)
        self._column.addWidget(Reflow((self._saying(), self._keys(shown)), BESIDE_PX, (1, 0), True))

    def _saying(self) -> QWidget:
        part, texts = QWidget(), QVBoxLayout()
        texts.setSpacing(2)
        texts.addWidget(Text(tr(self._step.text), "title"))
        texts.addWidget(self._state)
        if self._step.why:
            texts.addWidget(Text(tr(self._step.why), "quiet"))
        for caution in self._step.cautions:
            texts.addWidget(Text(f"⚠ {tr(caution.text)}"))
        row = QHBoxLayout(part)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(12)
        top = Qt.AlignmentFlag.AlignTop
        row.addWidget(self._tick, 0, top)
        row.addWidget(self._time, 0, top)
        row.addLayout(texts, 1)
        return part

    def _keys(self, shown: StepShown) -> QWidget:
        keys = KeyRow()
        if shown.page_title:
            name = self.tr("Open {page}").format(page=shown.page_title)
            self._add(keys, name, self.page_wanted.emit)
        if self._step.is_own:
            self._add(keys, "↑", lambda: self.moved.emit(-1), self.tr("Move up"))
            self._add(keys, "↓", lambda: self.moved.emit(1), self.tr("Move down"))
            self._keep = Tick(self.tr("Every night"), self.tr("Keep it for other nights"))
            self._keep.ticked.connect(self.kept)
            keys.add(self._keep)
            self._add(keys, self.tr("Remove"), self.removed.emit)
        keys.add(self._skip)
        return keys

    def _add(self, keys: KeyRow, words: str, do: Callable[[], object], name: str = "") -> None:
        key = Key(words)
        key.setAccessibleName(f"{name or words}: {tr(self._step.text)}")
        key.clicked.connect(lambda: do())
        keys.add(key)

    def show_step(self, shown: StepShown, zone: Zone) -> None:
        is_done = shown.state in (State.DONE, State.SEEN)
        self._time.setText(time_words(shown.planned, zone))
        self._tick.show_tick(is_done)
        self._tick.setEnabled(shown.state is not State.SEEN)
        self._skip.setVisible(shown.state is State.OPEN)
        self._state.say(state_words(shown.state, shown.mark, zone))
        if self._keep is not None:
            self._keep.show_tick(shown.is_kept)
        when = self._time.text()
        self.setAccessibleDescription(f"{when}. {self._state.text()}".strip())

    def stops(self) -> list[QWidget]:
        """Where Tab stops, in order."""
        return [self._tick, *(key for key in self.findChildren(Key) if key is not self._tick)]

    def tick(self) -> Tick:
        return self._tick

    def skip_button(self) -> Key:
        return self._skip

    def skipping(self) -> Skipping | None:
        """The question for the reason, once it was asked."""
        return self._skipping

    def said(self) -> str:
        return self._state.text()

    def step(self) -> ChecklistStep:
        return self._step

    def _ask(self) -> None:
        if self._skipping is None:
            self._skipping = Skipping(tr(self._step.text))
            self._skipping.skip.connect(self.skipped)
            self._skipping.left.connect(self._tick.setFocus)
            self._column.addWidget(self._skipping)
        self._skipping.ask()


# The checklist: one part of the night at a time, with what is left of each on its key.

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
        self._standing: NightStatus | None = None
        self._zone = find("UTC")
        self._rows: dict[str, StepRow] = {}  # of the part in view, in order
        self._made: dict[str, StepRow] = {}  # of all parts that were looked at
        self._showing = QTimer(self)
        self._showing.setInterval(0)
        self._showing.timeout.connect(self._show_more)
        self._parts = Choice(
            self.tr("Part of the night"), [(part.name, part_words(part)) for part in NightPart]
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
        self._parts.show_choice(NightPart.BEFORE_LEAVING.name)

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

    def show_part(self, part: NightPart) -> None:
        self._parts.show_choice(part.name)
        self._chosen(part.name)

    def show_marks(self) -> None:
        """What was just said of steps, before the times follow."""
        if self._standing is not None:
            self._show_rows()

    def show_standing(self, standing: NightStatus, zone: Zone) -> None:
        """The part with the next step comes into view by itself until the person chooses one."""
        self._standing, self._zone = standing, zone
        if not self._is_chosen and standing.now.next is not None:
            self._parts.show_choice(standing.now.next.step.part.name)
        self._show_rows()

    def _chosen(self, _name: str) -> None:
        self._is_chosen = True
        self._show_rows()

    def _part(self) -> NightPart:
        return NightPart[self._parts.choice()]

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
        for part in NightPart:
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
        before: QWidget = self._parts.button(list(NightPart)[-1].name)
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

    def _mark(self, step: ChecklistStep, is_done: bool) -> None:
        self._book.mark((done if is_done else reopened)(step, self._now()))

    def _move(self, step: ChecklistStep, way: int) -> None:
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
