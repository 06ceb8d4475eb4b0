"""What the pages that plan the evening have in common: target, answer, parts, one slow question."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any, Protocol

from PySide6.QtCore import QTimer, Signal, SignalInstance
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.headline import Headline
from app.pages.placeless import Placeless
from app.pages.targetbar import TargetBar
from app.session.errand import Errand
from app.session.evening import Evening
from app.widgets.facts import Fact, Facts
from app.widgets.key import Key
from app.widgets.reflow import Reflow
from app.widgets.scrolled import Scrolled
from app.widgets.sections import Section, Sections
from app.widgets.text import Text
from app.widgets.waiting import Waiting
from core.night.darkness import Night
from core.sky.clocks import Zone


class Answer(Protocol):
    """What a page works out is always about a night."""

    @property
    def night(self) -> Night: ...


class Part(Protocol):
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

    def question(self) -> Callable[[], Answer] | None:
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
        self._study: Answer | None = None
        self._errand = Errand(self)
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

    def made(self, part: Part) -> QWidget:
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

    def _take(self, answer: Answer | None) -> None:
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
