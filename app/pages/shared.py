"""What pages have in common: their question, the target, and one slow question at a time."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import Any, Protocol

from PySide6.QtCore import Qt, QTimer, Signal, SignalInstance
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from app.night.plan import Evening, Finder, Plans
from app.ui.form import Amount, Key, Section, Sections, Tick
from app.ui.targetsearch import TargetSearch
from app.ui.text import Columns, Fact, Facts, Panel, Reflow, Scrolled, Text
from app.ui.waiting import Waiting
from app.workers.latest import LatestOnly
from core.mount.equipment import Quantity
from core.night.darkness import Night
from core.sky.clocks import Zone
from core.sky.targets import Target

# The question of a page, and whether its times are the place's own or UTC.


class Headline(QWidget):
    def __init__(self, question: str, evening: Evening, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._evening = evening
        self._zone = Text("", "small")
        self._zone.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self._clock = Tick(self.tr("UTC"), self.tr("Show times in UTC"))
        self._clock.ticked.connect(evening.show_utc)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(10)
        row.addWidget(Text(question, "question"), 1)
        row.addWidget(self._zone, 1)
        row.addWidget(self._clock)
        evening.changed.connect(self._show)
        self._show()

    def clock_key(self) -> Tick:
        return self._clock

    def zone_words(self) -> str:
        return self._zone.text()

    def _show(self) -> None:
        around = self._evening.around()
        self._clock.setVisible(around is not None)
        self._clock.show_tick(self._evening.shows_utc())
        self._zone.say(self._words())

    def _words(self) -> str:
        around = self._evening.around()
        if around is None:
            return ""
        if self._evening.shows_utc():
            return self.tr("Times are in UTC.")
        if around.zone_note:
            return around.zone_note
        zone = around.zone
        return self.tr("Times of {zone}, {offset}.").format(
            zone=zone.name, offset=zone.offset_words(self._evening.now())
        )


# What a page is for, shown while nobody has said where they are.


class Placeless(Panel):
    """`site_wanted`: the person wants to say where they are."""

    site_wanted = Signal()

    def __init__(self, explanation: str, why: str, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self._to_site = Key(self.tr("Enter your site"), "primary")
        self._to_site.clicked.connect(self.site_wanted)
        self.column.addWidget(Text(explanation))
        self.column.addWidget(Text(why, "quiet"))
        self.column.addWidget(self._to_site, 0, Qt.AlignmentFlag.AlignLeft)

    def site_button(self) -> Key:
        return self._to_site


# Lines for figures that the plan of the evening keeps.

LEAST_PX = 190


class PlanAmounts(Columns):
    """`figures`: of each name its bounds and what is usual. `when_empty`: what an empty line means,
    for those that may be empty; `hints`: a sentence below.
    """

    def __init__(
        self,
        plans: Plans,
        figures: Mapping[str, tuple[Quantity, float]],
        names: Sequence[str],
        when_empty: Mapping[str, str] | None = None,
        hints: Mapping[str, str] | None = None,
        parent: QWidget | None = None,
    ) -> None:
        self._plans = plans
        self._figures = figures
        self._lines = {
            name: Amount(
                figures[name][0], (hints or {}).get(name, ""), (when_empty or {}).get(name, "")
            )
            for name in names
        }
        super().__init__(list(self._lines.values()), LEAST_PX, most=3, are_rows=True, parent=parent)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)
        for name, line in self._lines.items():
            line.given.connect(lambda value, name=name: plans.set_number(name, value))
        self.show_plans()

    def show_plans(self) -> None:
        """What the plan holds now."""
        for name, line in self._lines.items():
            line.show_amount(self._plans.number(name, self._figures[name][1]))

    def line(self, name: str) -> Amount:
        return self._lines[name]


# Tonight's target, and the search for another.


class TargetBar(Panel):
    """Whatever is chosen here is the target of the whole evening. Call `stop` at the end."""

    def __init__(self, evening: Evening, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self.setAccessibleName(self.tr("Target"))
        self._evening = evening
        self._name = Text("", "title")
        self._kind = Text("", "quiet")
        self._search = TargetSearch()
        self._finder = Finder(evening.now, self)
        self._search.typed.connect(self._finder.search)
        self._finder.found.connect(self._search.offer)
        self._search.chosen.connect(evening.plans.set_target)
        for part in (self._name, self._kind, self._search):
            self.column.addWidget(part)
        self.column.addStretch()
        evening.changed.connect(self._show)
        self._show()
        self.setFocusProxy(self._search)

    def search(self) -> TargetSearch:
        return self._search

    def name(self) -> str:
        return self._name.text()

    def stop(self) -> None:
        self._finder.close()

    def _show(self) -> None:
        target = self._evening.plans.target()
        self._name.say(self.tr("No target yet") if target is None else target.name)
        self._kind.say(self._kind_of(target))

    def _kind_of(self, target: Target | None) -> str:
        if target is None:
            return self.tr("Type its name, or the first letters.")
        said = [target.kind]
        if target.magnitude is not None:
            said.append(self.tr("magnitude {size:.1f}").format(size=target.magnitude))
        if target.size_arcmin is not None:
            said.append(self.tr("{size:.3g}′ across").format(size=target.size_arcmin))
        return ", ".join(said)


# What the pages that plan the evening have in common: target, answer, parts, one slow question.


class NightAnswer(Protocol):
    """What a page works out is always about a night."""

    @property
    def night(self) -> Night: ...


class NightSection(Protocol):
    """A section of such a page. `picked` carries a moment, Unix seconds."""

    picked: SignalInstance

    def show_study(self, study: Any, zone: Zone) -> None: ...


class EveningPage(QWidget):
    """Everything is worked out beside the window's thread; the newest question wins.

    A page says what it asks and how it tells the answer, in the three methods that follow.
    `site_wanted`: the person wants to say where they are. `worked_out`: an answer is shown.
    """

    site_wanted = Signal()
    worked_out = Signal()

    def question(self) -> Callable[[], NightAnswer] | None:
        """For a worker thread; None while no site is given."""
        raise NotImplementedError

    def told(self, answer: Any, zone: Zone) -> tuple[Sequence[Fact], str]:
        """The figures at the top and a sentence below them; of None, that there is nothing yet."""
        raise NotImplementedError

    def pick(self, utc_s: float) -> None:
        """The moment to look at."""
        raise NotImplementedError

    def __init__(self, evening: Evening, parent: QWidget | None = None) -> None:
        """Call `arrange` next."""
        super().__init__(parent)
        self._evening = evening
        self._study: NightAnswer | None = None
        self._errand = LatestOnly(self)
        self._errand.done.connect(self._take)
        self._bar = TargetBar(evening)
        self._special = Text("", "side")
        self._waiting = Waiting()
        self._waiting.stopped.connect(self._errand.drop)

    def arrange(
        self, headline: str, placeless: Placeless, facts: Facts, sections: Sequence[Section]
    ) -> None:
        """The first of the sections is shown first."""
        self._placeless, self._facts = placeless, facts
        self._placeless.site_wanted.connect(self.site_wanted)
        self._sections = Sections(self.tr("Part of the page"), sections)
        self._sections.showing.connect(lambda _name: self._show_section())
        self._answer = Reflow((self._bar, self._facts), 900, (2, 5))
        self._lay_out(headline)
        self._evening.changed.connect(self._changed)
        self._sections.show_section(sections[0].name)
        self._changed()
        self.setFocusProxy(self._bar)

    def made(self, part: NightSection) -> QWidget:
        """A section, joined to the page."""
        part.picked.connect(self.pick)
        assert isinstance(part, QWidget)
        return part

    def _lay_out(self, headline: str) -> None:
        content = QWidget()
        column = QVBoxLayout(content)
        column.setContentsMargins(16, 12, 16, 12)
        column.setSpacing(10)
        column.addWidget(Headline(headline, self._evening))
        for part in (self._placeless, self._special, self._waiting, self._answer):
            column.addWidget(part)
        column.addWidget(self._sections, 1)
        column.addStretch()
        self._special.hide()
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(Scrolled(content))

    def bar(self) -> TargetBar:
        return self._bar

    def facts(self) -> Facts:
        return self._facts

    def special(self) -> str:
        """What is out of the ordinary about this night."""
        return self._special.text()

    def waiting(self) -> Waiting:
        return self._waiting

    def sections(self) -> Sections:
        return self._sections

    def site_button(self) -> Key:
        return self._placeless.site_button()

    def stop(self) -> None:
        """Nothing more is worked out."""
        self._waiting.end()
        self._errand.close()
        self._bar.stop()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._evening.refresh()
        self.ask()  # time has gone on in any case

    def _changed(self) -> None:
        has_site = self._evening.around() is not None
        self._placeless.setVisible(not has_site)
        self._answer.setVisible(has_site)
        self._sections.setVisible(has_site)
        if self.isVisible():
            self.ask()

    def ask(self) -> None:
        """Has the page's question worked out."""
        asked = self.question()
        if asked is None:
            return
        if self._study is None:
            waiting, _ = self.told(None, self._evening.zone())
            self._facts.show_facts(waiting, self.tr("Being worked out …"))
        self._waiting.begin()
        self._errand.send(asked)

    def _take(self, answer: NightAnswer | None) -> None:
        if not self._errand.is_wanted_again():
            self._waiting.end()
        if answer is None:
            nothing, _ = self.told(None, self._evening.zone())
            fault = self.tr("This could not be worked out because of a fault in the program.")
            self._facts.show_facts(nothing, fault)
            return
        self._study = answer
        self._facts.show_facts(*self.told(answer, self._evening.zone()))
        self._special.say(" ".join(answer.night.sentences))
        QTimer.singleShot(0, self, self._finish)  # the window answers between the two

    def _finish(self) -> None:
        self._show_section()
        self.worked_out.emit()

    def _show_section(self) -> None:
        section: Any = self._sections.section(self._sections.current())
        if self._study is not None and section is not None:
            section.show_study(self._study, self._evening.zone())
