"""The Tonight page, where the program opens: where is the night, and what comes next?"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.headline import Headline
from app.pages.placeless import Placeless
from app.pages.tonight.circumstances import CircumstancesForm
from app.pages.tonight.nextband import NextBand
from app.pages.tonight.steplist import StepList
from app.pages.tonight.weatherform import WeatherForm
from app.pages.tonight.words import alignment, darkness
from app.session import occasion
from app.session.errand import Errand
from app.session.evening import Evening
from app.session.flipbook import FlipBook
from app.session.nightbook import NightBook
from app.session.planfigures import figure, limits, series
from app.session.standing import FlipAsked, Question, Standing, stand
from app.theme.theme import Theme
from app.widgets.facts import Fact as Shown
from app.widgets.facts import Facts
from app.widgets.key import Key
from app.widgets.reflow import Reflow
from app.widgets.scrolled import Scrolled
from app.widgets.text import Text
from app.widgets.ticking import Ticking
from core.language import say
from core.night.checklist import Fact, Step, done, load, newly_seen
from core.night.progress import AxisNow

if TYPE_CHECKING:
    from app.session.snapshot import Snapshot

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
        snapshot: Callable[[], Snapshot],
        known: Callable[[], frozenset[Fact]],
        titles: Mapping[str, str],
        parent: QWidget | None = None,
    ) -> None:
        """`known`: facts about the equipment. `titles`: of pages, by the names steps have."""
        super().__init__(parent)
        self._evening, self._theme = evening, theme
        self._book, self._flips = books.night, books.flips
        self._snapshot, self._known = snapshot, known
        self._asked_utc_s = 0.0
        self._had_site: bool | None = None
        self._asked: Question | None = None
        self._answered: Question | None = None
        self._errand = Errand(self)
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

    def _question(self) -> Question | None:
        around, plans = self._evening.around(), self._evening.plans
        if around is None:
            return None
        snapshot = self._snapshot()
        axis = axis_now(snapshot, occasion.mount_kind(plans).is_equatorial)
        noted = self._book.weather() or {}
        temperature = noted.get("temperature_c")
        if not isinstance(temperature, int | float):
            is_read = not around.air.pressure_is_assumed
            temperature = around.air.temperature_c if is_read else None
        facts = self._book.facts() | self._known() | {Fact.SITE_CONFIRMED}
        if plans.target() is not None:
            facts |= {Fact.TARGET_CHOSEN}
        if _is_within(axis):
            facts |= {Fact.ALIGNMENT_WITHIN_BUDGET}
        return Question(
            around=around,
            now_utc_s=self._evening.now(),
            purpose=occasion.purpose(plans),
            mount=occasion.mount_kind(plans),
            power=occasion.power(plans),
            is_guided=occasion.is_guided(plans),
            cool_down_min=occasion.cool_down_min(plans),
            temperature_c=temperature,
            target=plans.target(),
            begin_utc_s=occasion.begin_utc_s(plans),
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

    def _mark_done(self, step: Step) -> None:
        self._book.mark(done(step, self._evening.now()))

    def _take(self, answer: object) -> None:
        if not isinstance(answer, Standing):
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
