"""One step of the checklist: its time, why, what to take care of, and the keys that go with it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QVBoxLayout, QWidget

from app.pages.tonight.skipping import Skipping
from app.pages.tonight.words import state_words, time_words, tr
from app.widgets.key import Key
from app.widgets.keyrow import KeyRow
from app.widgets.reflow import Reflow
from app.widgets.text import Text
from app.widgets.tick import Tick
from core.night.checklist import Mark, Planned, State, Step
from core.sky.clocks import Zone

BESIDE_PX = 560


@dataclass(frozen=True)
class StepShown:
    """A step as it stands. `page_title`: of the page that does it, empty without one."""

    planned: Planned
    state: State
    mark: Mark | None
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

    def step(self) -> Step:
        return self._step

    def _ask(self) -> None:
        if self._skipping is None:
            self._skipping = Skipping(tr(self._step.text))
            self._skipping.skip.connect(self.skipped)
            self._skipping.left.connect(self._tick.setFocus)
            self._column.addWidget(self._skipping)
        self._skipping.ask()
