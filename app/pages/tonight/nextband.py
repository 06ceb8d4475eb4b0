"""The answer of the Tonight page: the next step in large letters, and how to see to it."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from app.pages.tonight.words import due_words, time_words, tr
from app.widgets.key import Key
from app.widgets.keyrow import KeyRow
from app.widgets.text import Panel, Text
from core.night.checklist import Step
from core.night.progress import NightNow
from core.sky.clocks import Zone


class NextBand(Panel):
    """`done` carries the step; `page_wanted` the name a step has for a page."""

    done = Signal(object)
    page_wanted = Signal(str)

    def __init__(self, titles: Mapping[str, str], parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self.setAccessibleName(self.tr("The next step"))
        self._titles = titles
        self._step: Step | None = None
        self._when = Text("", "quiet")
        self._what = Text(self.tr("The night is being worked out …"), "turn")
        self._why = Text()
        self._care = Text()
        self._open = Key("", "primary")
        self._done = Key(self.tr("It is done"))
        self._open.clicked.connect(self._wants_page)
        self._done.clicked.connect(self._is_done)
        keys = KeyRow((self._open, self._done))
        for part in (self._when, self._what, self._why, self._care, keys):
            self.column.addWidget(part)
        self.column.addStretch()
        self._show_keys("")

    def show_now(self, now: NightNow, zone: Zone, notice: str) -> None:
        """`notice`: a sentence about the whole checklist, or empty."""
        planned = now.next
        self._step = None if planned is None else planned.step
        if planned is None:
            self._when.say(self.tr("Nothing is left on the checklist."))
            self._what.say(self.tr("All is done. Clear skies."))
            self._why.say("")
            self._care.say("")
            self._show_keys("")
            return
        when = self.tr("Next, {time}: {due}. {left} steps are left.")
        self._when.say(
            when.format(time=time_words(planned, zone), due=due_words(now), left=now.steps_left)
        )
        self._what.say(tr(planned.step.text))
        late = self.tr("The target can begin {minutes} min later than planned.")
        behind_min = round(now.behind_s / 60.0)
        said = [tr(planned.step.why), tr(notice)] if notice else [tr(planned.step.why)]
        if behind_min >= 1 and not notice:
            said.append(late.format(minutes=behind_min))
        self._why.say(" ".join(said))
        self._care.say("\n".join(f"⚠ {tr(one.text)}" for one in planned.step.cautions))
        self._show_keys(self._titles.get(planned.step.page, ""))

    def what(self) -> str:
        return self._what.text()

    def texts(self) -> str:
        parts = (self._when, self._what, self._why, self._care)
        return " ".join(part.text() for part in parts)

    def done_button(self) -> Key:
        return self._done

    def open_button(self) -> Key:
        return self._open

    def _show_keys(self, title: str) -> None:
        self._open.setText(self.tr("Open {page}").format(page=title))
        self._open.setVisible(bool(title))
        self._done.setVisible(self._step is not None)

    def _wants_page(self) -> None:
        if self._step is not None:
            self.page_wanted.emit(self._step.page)

    def _is_done(self) -> None:
        if self._step is not None:
            self.done.emit(self._step)
