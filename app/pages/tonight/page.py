"""The answer of the Tonight page: the next step in large letters, and how to see to it."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.night import plan
from app.night.notes import FlipBook, NightBook
from app.night.plan import Evening, figure, limits, series
from app.night.status import FlipAsked, NightStatus, StatusQuestion, stand
from app.pages.shared import Headline, Placeless
from app.pages.tonight.circumstances import CircumstancesForm, WeatherForm
from app.pages.tonight.steps import StepList
from app.pages.tonight.words import alignment, darkness, due_words, time_words, tr
from app.ui.form import Key, KeyRow
from app.ui.redraw import Ticking
from app.ui.style import Theme
from app.ui.text import Fact as Shown
from app.ui.text import Facts, Panel, Reflow, Scrolled, Text
from app.workers.latest import LatestOnly
from core.language import say
from core.night.checklist import ChecklistStep, KnownFact, done, load, newly_seen
from core.night.progress import AxisNow, NightNow
from core.sky.clocks import Zone

if TYPE_CHECKING:
    from app.night.session import Session
    from app.night.snapshot import Snapshot


class NextBand(Panel):
    """`done` carries the step; `page_wanted` the name a step has for a page."""

    done = Signal(object)
    page_wanted = Signal(str)

    def __init__(self, titles: Mapping[str, str], parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self.setAccessibleName(self.tr("The next step"))
        self._titles = titles
        self._step: ChecklistStep | None = None
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


# The Tonight page, where the program opens: where is the night, and what comes next?

ASK_EVERY_S = 30.0
SUN = "sun"  # the caution that stands on this page day and night


@dataclass(frozen=True)
class Books:
    """Where it is kept what the person says of tonight, and of its flips."""

    night: NightBook
    flips: FlipBook


class TonightPage(QWidget):
    """Everything is worked out beside the window's thread; the newest question wins.

    `page_wanted` carries the name a step has for a page; `worked_out`: a Standing is shown.
    """

    page_wanted = Signal(str)
    site_wanted = Signal()
    worked_out = Signal()

    def __init__(
        self,
        evening: Evening,
        theme: Theme,
        books: Books,
        session: Session,
        known: Callable[[], frozenset[KnownFact]],
        titles: Mapping[str, str],
        parent: QWidget | None = None,
    ) -> None:
        """`known`: facts about the equipment. `titles`: of pages, by the names steps have."""
        super().__init__(parent)
        self._evening, self._theme = evening, theme
        self._book, self._flips = books.night, books.flips
        self._known = known
        session.follow(self._keep)
        self._asked_utc_s = 0.0
        self._had_site: bool | None = None
        self._asked: StatusQuestion | None = None
        self._answered: StatusQuestion | None = None
        self._errand = LatestOnly(self)
        self._errand.done.connect(self._take)
        self._placeless = Placeless(
            self.tr(
                "The whole night from packing the car to coming home: what is next, when it has "
                "to begin, how long until it is dark, and how well the axis stands."
            ),
            self.tr("All times follow from the Sun over your place: say where you are."),
        )
        self._next = NextBand(titles)
        self._facts = Facts(self.tr("Now"), (self.tr("Darkness"), self.tr("Alignment")))
        self._list = StepList(self._book, titles, evening.now)
        self._form = CircumstancesForm(evening)
        self._weather = WeatherForm()
        self._care = Text(f"⚠ {_sun_caution()}")
        self._with_place = QWidget()
        self._arrange()
        self._connect()
        self._ticking = Ticking(self, evening.now, self._tick)
        self._changed()

    def _keep(self, snapshot: Snapshot) -> None:
        self._tonight = snapshot

    def _connect(self) -> None:
        self._placeless.site_wanted.connect(self.site_wanted)
        self._next.page_wanted.connect(self.page_wanted)
        self._next.done.connect(self._mark_done)
        self._list.page_wanted.connect(self.page_wanted)
        self._weather.noted.connect(self._book.note_weather)
        self._book.changed.connect(self._changed)
        self._flips.changed.connect(self.refresh)
        self._evening.changed.connect(self._changed)

    def _arrange(self) -> None:
        side = QWidget()
        right = QVBoxLayout(side)
        right.setContentsMargins(0, 0, 0, 0)
        right.setSpacing(12)
        for part in (self._form, self._weather):
            right.addWidget(part)
        right.addStretch()
        whole = QVBoxLayout(self._with_place)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.setSpacing(12)
        whole.addWidget(Reflow((self._next, self._facts), 860, (3, 2)))
        whole.addWidget(self._care)
        whole.addWidget(Reflow((self._list, side), 1000, (5, 3), at_top=True))
        content = QWidget()
        column = QVBoxLayout(content)
        column.setContentsMargins(16, 12, 16, 12)
        column.setSpacing(12)
        column.addWidget(Headline(self.tr("What comes next tonight?"), self._evening))
        column.addWidget(self._placeless)
        column.addWidget(self._with_place)
        column.addStretch()
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(Scrolled(content))

    def next_band(self) -> NextBand:
        return self._next

    def facts(self) -> Facts:
        return self._facts

    def steps(self) -> StepList:
        return self._list

    def form(self) -> CircumstancesForm:
        return self._form

    def weather(self) -> WeatherForm:
        return self._weather

    def care(self) -> Text:
        """The caution about the Sun."""
        return self._care

    def site_button(self) -> Key:
        return self._placeless.site_button()

    def is_up_to_date(self) -> bool:
        """Whether what is shown answers the newest question."""
        return self._asked is not None and self._asked is self._answered

    def stop(self) -> None:
        """Nothing more is worked out."""
        self._errand.close()
        self._list.stop()

    def refresh(self) -> None:
        """Something outside changed: the axis, the equipment."""
        if self.isVisible():
            self._ask()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._evening.refresh()
        self._ask()

    def _tick(self, utc_s: float) -> None:
        if abs(utc_s - self._asked_utc_s) >= ASK_EVERY_S:
            self._ask()

    def _changed(self) -> None:
        has_site = self._evening.around() is not None
        self._placeless.setVisible(not has_site)
        self._with_place.setVisible(has_site)
        if has_site != self._had_site:
            self._had_site = has_site
            self.setFocusProxy(self._next.done_button() if has_site else self.site_button())
        self._form.show_plans()
        self._weather.show_noted(self._book.weather())
        self._list.show_marks()
        self.refresh()

    def _ask(self) -> None:
        self._asked_utc_s = self._evening.now()
        question = self._asked = self._question()
        if question is not None:
            self._errand.send(lambda: stand(question))

    def _question(self) -> StatusQuestion | None:
        around, plans = self._evening.around(), self._evening.plans
        if around is None:
            return None
        axis = axis_now(self._tonight, plan.mount_kind(plans).is_equatorial)
        noted = self._book.weather() or {}
        temperature = noted.get("temperature_c")
        if not isinstance(temperature, int | float):
            is_read = not around.air.pressure_is_assumed
            temperature = around.air.temperature_c if is_read else None
        facts = self._book.facts() | self._known() | {KnownFact.SITE_CONFIRMED}
        if plans.target() is not None:
            facts |= {KnownFact.TARGET_CHOSEN}
        if _is_within(axis):
            facts |= {KnownFact.ALIGNMENT_WITHIN_BUDGET}
        return StatusQuestion(
            around=around,
            now_utc_s=self._evening.now(),
            purpose=plan.purpose(plans),
            mount=plan.mount_kind(plans),
            power=plan.power(plans),
            is_guided=plan.is_guided(plans),
            cool_down_min=plan.cool_down_min(plans),
            temperature_c=temperature,
            target=plans.target(),
            begin_utc_s=plan.begin_utc_s(plans),
            own=self._book.own(),
            marks=self._book.marks(),
            facts=facts,
            axis=axis,
            flip=self._flip_asked(),
        )

    def _flip_asked(self) -> FlipAsked:
        plans, target = self._evening.plans, self._evening.plans.target()
        name = "" if target is None else target.name
        return FlipAsked(
            limits(plans),
            series(plans),
            figure(plans, "lowest_deg"),
            self._flips.is_seen(name),
            sum(one.centred_utc_s is not None for one in self._flips.flips(name)),
        )

    def _mark_done(self, step: ChecklistStep) -> None:
        self._book.mark(done(step, self._evening.now()))

    def _take(self, answer: object) -> None:
        if not isinstance(answer, NightStatus):
            fault = self.tr("The night could not be worked out because of a fault in the program.")
            self._facts.show_facts((Shown("–"), Shown("–")), fault)
            return
        zone, now = self._evening.zone(), answer.now
        self._next.show_now(now, zone, answer.checklist.notice)
        self._facts.show_facts(
            (Shown(*darkness(now)), Shown(*alignment(now, answer.question.axis))),
            " ".join(answer.night.sentences),
        )
        self._list.show_standing(answer, zone)
        self._answered = answer.question
        seen = newly_seen(
            answer.checklist,
            *(self._book.marks(), answer.facts, self._evening.now(), answer.reasons),
        )
        self._book.mark(*seen)
        self.worked_out.emit()


def axis_now(snapshot: Snapshot, is_needed: bool) -> AxisNow:
    """The axis against the target of tonight; nothing is known while a new answer is worked out."""
    off, judged = snapshot.guide.off_arcmin, snapshot.guide.judgement
    if snapshot.solution_is_stale or off is None or judged is None:
        return AxisNow(budget_arcmin=snapshot.target_arcmin, is_needed=is_needed)
    return AxisNow(*off, snapshot.target_arcmin, is_needed, judged.chance_within_target)


def _is_within(axis: AxisNow) -> bool:
    from core.night.progress import AlignmentState, alignment_state

    return alignment_state(axis) is AlignmentState.WITHIN


def _sun_caution() -> str:
    """From the texts of the checklist, so that it is said in one way only."""
    cautions = {one.key: one.text for step in load() for one in step.cautions}
    return say(cautions[SUN])
