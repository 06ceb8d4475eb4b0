"""Says that what is seen is practice, and leads back to the real night."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QApplication, QVBoxLayout, QWidget

from app.night.snapshot import as_drift_log
from app.pages.drift.answer import Work
from app.pages.drift.guide import GuideController
from app.pages.drift.parts import DriftParts
from app.pages.drift.sources import HAND, LOG, SourceSwitch
from app.ui.drawings import Sketch
from app.ui.form import Key
from app.ui.style import Theme
from app.ui.text import Panel, Reflow, Scrolled, Text
from core.language import say
from core.sky.site import Site

if TYPE_CHECKING:
    from app.night.activenight import ActiveNight
    from app.night.snapshot import Snapshot


class PracticeBand(Panel):
    """`back` asks for tonight."""

    back = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self.setAccessibleName(self.tr("Practice"))
        self._said = Text("", "quiet")
        self._back = Key(self.tr("Back to tonight"))
        self._back.clicked.connect(self.back)
        self.column.setContentsMargins(16, 4, 8, 4)
        self.column.addWidget(Reflow((self._said, self._back), 520, (1, 0)))
        self.hide()

    def show_practice(self, site: Site | None) -> None:
        """`site` of the practice under way, None when what is seen is real."""
        self.setVisible(site is not None)
        if site is not None:
            where = say(site.name) if site.name else self.tr("your site")
            self._said.say(
                self.tr(
                    "Practice at {where}: nothing here is kept; your own night is untouched."
                ).format(where=where)
            )

    def said(self) -> str:
        return self._said.text()

    def back_button(self) -> Key:
        return self._back


# The ways to get readings, when there are none yet.


class StartPanel(QWidget):
    """Says what the page is for. `chosen` carries "log", "hand" or "practice"."""

    chosen = Signal(str)
    site_wanted = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._buttons: dict[str, Key] = {}
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(12)
        column.addWidget(
            Text(self.tr("Where does the axis point, and what do I turn?"), "question")
        )
        column.addWidget(Text(self._explanation()))
        self._where = self._where_panel()
        column.addWidget(self._where)
        column.addWidget(Reflow([self._way(*way) for way in self._ways()], 760))
        column.addWidget(Sketch(theme), 1)

    def _explanation(self) -> str:
        return self.tr(
            "A star that is tracked by a mount with a crooked axis creeps slowly north or south. "
            "Watch how far one creeps near the meridian, then another low in the east or west: "
            "from the two, this page works out where the axis points and which bolt to turn."
        )

    def _ways(self) -> tuple[tuple[str, str, str], ...]:
        return (
            (
                "practice",
                self.tr("Practice sky"),
                self.tr("No telescope needed: a made-up mount to align in five minutes."),
            ),
            (
                "hand",
                self.tr("Type readings by hand"),
                self.tr("At a reticle eyepiece or a live view: type the offset, press one key."),
            ),
            (
                "log",
                self.tr("Import a drift log"),
                self.tr("A CSV file with times and offsets of one or more stars."),
            ),
        )

    def _way(self, key: str, title: str, sentence: str) -> Panel:
        panel = Panel()
        button = Key(title)
        button.setProperty("kind", "primary" if key == "practice" else "")
        button.setAccessibleDescription(sentence)
        button.clicked.connect(lambda: self.chosen.emit(key))
        self._buttons[key] = button
        panel.column.addWidget(button)
        panel.column.addWidget(Text(sentence, "quiet"))
        return panel

    def _where_panel(self) -> Panel:
        panel = Panel(self.tr("Where are you?"))
        panel.column.addWidget(
            Text(self.tr("Your latitude and longitude are needed to read the sky."))
        )
        self._to_site = Key(self.tr("Enter your site"))
        self._to_site.clicked.connect(self.site_wanted)
        panel.column.addWidget(self._to_site, 0, Qt.AlignmentFlag.AlignLeft)
        return panel

    def show_site_known(self, known: bool) -> None:
        """Without a site, the first step is to give one."""
        self._where.setVisible(not known)

    def site_button(self) -> Key:
        return self._to_site

    def button(self, key: str) -> Key:
        return self._buttons[key]


# The Drift page: where does the axis point, and what do I turn?


class DriftPage(QWidget):
    """Shows tonight's session or the practice one, and passes on what the person does.

    `site_wanted`: the person wants to say where they are.
    """

    site_wanted = Signal()

    def __init__(
        self, shown: ActiveNight, theme: Theme, parts: DriftParts, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._shown = shown
        self._ways = SourceSwitch(shown, theme, parts, self)
        self._practice = PracticeBand()
        self._ways_in = StartPanel(theme)
        self._leading = GuideController(shown, self._ways, theme, parts, self)
        self._work = Work(theme, self._ways.panel, self._leading)
        self._problem = Text("", "alarm")
        self._to_site = Key(self.tr("Enter your site"))
        self._site: object = None
        self._arrange()
        self._connect()
        if self._snapshot.watching:  # the program was ended in the middle of a leg
            self.take_way(HAND)
        self.setFocusProxy(self._ways_in.button("practice"))

    def _arrange(self) -> None:
        content = QWidget()
        column = QVBoxLayout(content)
        column.setContentsMargins(16, 12, 16, 12)
        column.setSpacing(12)
        for part in (self._practice, self._problem, self._to_site, self._ways_in):
            column.addWidget(part, 1 if part is self._ways_in else 0)
        column.addWidget(self._work, 1)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(Scrolled(content))

    def _connect(self) -> None:
        self._shown.follow(self._show)
        self._shown.reading_added.connect(self._reading_added)
        self._shown.switched.connect(self._switched)
        self._ways.panel.taken.connect(lambda _way: self._show(self._snapshot))
        self._practice.back.connect(self._back)
        self._ways_in.chosen.connect(self.take_way)
        self._ways_in.site_wanted.connect(self.site_wanted)
        self._to_site.clicked.connect(self.site_wanted)
        self._work.discard.connect(lambda label: self._shown.session.discard_leg(label))
        self._work.exchange.connect(lambda label: self._shown.session.exchange_leg(label))
        self._work.bolts_turned.connect(lambda: self._shown.session.bolts_turned())
        self._work.copy_wanted.connect(self._copy)
        goal = self._work.goal()
        goal.aim_chosen.connect(lambda aim: self._shown.session.set_aim(aim))
        goal.target_cleared.connect(lambda: self._shown.session.clear_target())
        goal.target_chosen.connect(lambda arcmin: self._shown.session.set_target(arcmin))

    def take_way(self, way: str) -> None:
        """One of "practice", "hand" and "log"."""
        self._ways.panel.take(way)

    def import_log(self, path: Path) -> None:
        """Reads a drift log into tonight's session."""
        self.take_way(LOG)
        self._ways.import_log(path)

    def unbuilt(self) -> list[Callable[[], None]]:
        """Steps that build ahead, out of sight, what is likely to be asked for next."""
        return self._ways.panel.unbuilt(HAND)

    def stop(self) -> None:
        """No more readings come from this page, and a practice night ends."""
        self._ways.stop()
        self._leading.close()
        self._shown.close()

    def shown(self) -> ActiveNight:
        """Which session is in view."""
        return self._shown

    def leading(self) -> GuideController:
        return self._leading

    def ways(self) -> SourceSwitch:
        return self._ways

    def ways_in(self) -> StartPanel:
        return self._ways_in

    def work(self) -> Work:
        return self._work

    def practice_band(self) -> PracticeBand:
        return self._practice

    def problem(self) -> str:
        return self._problem.text()

    def _show(self, snapshot: Snapshot) -> None:
        self._snapshot = snapshot
        is_empty = not snapshot.legs and not self._ways.panel.way()
        self._practice.show_practice(snapshot.site if self._shown.is_practice else None)
        self._ways_in.setVisible(is_empty)
        needs_site = snapshot.site is None
        self._ways_in.show_site_known(not needs_site)
        self._work.setVisible(not is_empty)
        self._problem.say(snapshot.problem or "")
        self._to_site.setVisible(not is_empty and needs_site)
        if snapshot.site != self._site:
            self._site = snapshot.site
            self._ways.site_changed()
        if not is_empty:
            self._work.show_snapshot(snapshot)

    def _switched(self) -> None:
        self._leading.begin_anew()
        self._work.begin_anew()

    def _back(self) -> None:
        self._ways.back_to_tonight()
        self._show(self._snapshot)

    def _reading_added(self, snapshot: Snapshot) -> None:
        self._snapshot = snapshot
        self._work.mark_readings(snapshot)
        self._ways.tick()

    def _copy(self) -> None:
        QApplication.clipboard().setText(as_drift_log(self._snapshot))
