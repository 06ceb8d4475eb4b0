"""The Drift page: where does the axis point, and what do I turn?"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QApplication, QVBoxLayout, QWidget

from app.pages.drift.leading import Leading
from app.pages.drift.parts import DriftParts
from app.pages.drift.practiceband import PracticeBand
from app.pages.drift.readings import HAND, LOG
from app.pages.drift.ways import Ways
from app.pages.drift.waysin import WaysIn
from app.pages.drift.work import Work
from app.session.copying import as_drift_log
from app.theme.theme import Theme
from app.widgets.key import Key
from app.widgets.scrolled import Scrolled
from app.widgets.text import Text

if TYPE_CHECKING:
    from app.session.shown import Shown
    from app.session.snapshot import Snapshot


class DriftPage(QWidget):
    """Shows tonight's session or the practice one, and passes on what the person does.

    `site_wanted`: the person wants to say where they are.
    """

    site_wanted = Signal()

    def __init__(
        self, shown: Shown, theme: Theme, parts: DriftParts, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._shown = shown
        self._ways = Ways(shown, theme, parts, self)
        self._practice = PracticeBand()
        self._ways_in = WaysIn(theme)
        self._leading = Leading(shown, self._ways, theme, parts, self)
        self._work = Work(theme, shown.snapshot, self._ways.panel, self._leading)
        self._problem = Text("", "alarm")
        self._to_site = Key(self.tr("Enter your site"))
        self._site: object = None
        self._arrange()
        self._connect()
        self._show(shown.snapshot())
        if shown.snapshot().watching:  # the program was ended in the middle of a leg
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
        self._shown.changed.connect(self._show)
        self._shown.reading_added.connect(self._reading_added)
        self._shown.switched.connect(self._switched)
        self._ways.panel.taken.connect(lambda _way: self._show(self._shown.snapshot()))
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

    def shown(self) -> Shown:
        """Which session is in view."""
        return self._shown

    def leading(self) -> Leading:
        return self._leading

    def ways(self) -> Ways:
        return self._ways

    def ways_in(self) -> WaysIn:
        return self._ways_in

    def work(self) -> Work:
        return self._work

    def practice_band(self) -> PracticeBand:
        return self._practice

    def problem(self) -> str:
        return self._problem.text()

    def _show(self, snapshot: Snapshot) -> None:
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
        self._show(self._shown.snapshot())

    def _back(self) -> None:
        self._ways.back_to_tonight()
        self._show(self._shown.snapshot())

    def _reading_added(self) -> None:
        self._work.mark_readings()
        self._ways.tick()

    def _copy(self) -> None:
        QApplication.clipboard().setText(as_drift_log(self._shown.snapshot()))
