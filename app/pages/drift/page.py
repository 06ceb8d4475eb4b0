"""The Drift page: where does the axis point, and what do I turn?"""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QApplication, QVBoxLayout, QWidget

from app.pages.drift.parts import DriftParts
from app.pages.drift.readings import PRACTICE
from app.pages.drift.ways import Ways
from app.pages.drift.waysin import WaysIn
from app.pages.drift.work import Work
from app.theme.theme import Theme
from app.widgets.key import Key
from app.widgets.scrolled import Scrolled
from app.widgets.text import Text
from core.alignment.driftlog import Header, write

if TYPE_CHECKING:
    from app.session.session import Session
    from app.session.snapshot import Snapshot


class DriftPage(QWidget):
    """Shows the session and passes on what the person does.

    `site_wanted`: the person wants to say where they are.
    """

    site_wanted = Signal()

    def __init__(
        self, session: Session, theme: Theme, parts: DriftParts, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._session = session
        self._ways = Ways(session, theme, parts, self)
        self._meadow = parts.meadow[0]
        self._ways_in = WaysIn(theme)
        self._work = Work(theme, session.snapshot, self._ways.panel)
        self._problem = Text("", "alarm")
        self._to_site = Key(self.tr("Enter your site"))
        self._site: object = None
        self._arrange()
        self._connect()
        self._show(session.snapshot())
        self.setFocusProxy(self._ways_in.button("practice"))

    def _arrange(self) -> None:
        content = QWidget()
        column = QVBoxLayout(content)
        column.setContentsMargins(16, 12, 16, 12)
        column.setSpacing(12)
        for part in (self._problem, self._to_site, self._ways_in):
            column.addWidget(part, 1 if part is self._ways_in else 0)
        column.addWidget(self._work, 1)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(Scrolled(content))

    def _connect(self) -> None:
        self._session.changed.connect(self._show)
        self._session.reading_added.connect(self._reading_added)
        self._ways_in.chosen.connect(self.take_way)
        self._ways_in.site_wanted.connect(self.site_wanted)
        self._to_site.clicked.connect(self.site_wanted)
        self._work.discard.connect(self._session.discard_leg)
        self._work.bolts_turned.connect(self._session.bolts_turned)
        self._work.copy_wanted.connect(self._copy)
        self._work.goal().aim_chosen.connect(self._session.set_aim)
        self._work.goal().target_chosen.connect(self._session.set_target)

    def take_way(self, way: str) -> None:
        """One of "practice", "hand" and "log"."""
        self._ways.panel.take(way)
        self._show(self._session.snapshot())

    def stop(self) -> None:
        """No more readings come from this page."""
        self._ways.stop()

    def ways(self) -> Ways:
        return self._ways

    def ways_in(self) -> WaysIn:
        return self._ways_in

    def work(self) -> Work:
        return self._work

    def problem(self) -> str:
        return self._problem.text()

    def _show(self, snapshot: Snapshot) -> None:
        is_empty = not snapshot.legs and not self._ways.panel.way()
        self._ways_in.setVisible(is_empty)
        needs_site = snapshot.site is None or self._is_on_meadow(snapshot)
        self._ways_in.show_site_known(not needs_site)
        self._work.setVisible(not is_empty)
        self._problem.say(self._problem_of(snapshot))
        self._to_site.setVisible(not is_empty and needs_site)
        if snapshot.site != self._site:
            self._site = snapshot.site
            self._ways.site_changed()
        if not is_empty:
            self._work.show_snapshot(snapshot)

    def _is_on_meadow(self, snapshot: Snapshot) -> bool:
        """The invented site is good for practice alone."""
        return snapshot.site == self._meadow and self._ways.panel.way() != PRACTICE

    def _problem_of(self, snapshot: Snapshot) -> str:
        said = [snapshot.problem or ""]
        if self._is_on_meadow(snapshot):
            said.append(self.tr("The site is still the invented practice meadow: enter your own."))
        return " ".join(said).strip()

    def _reading_added(self) -> None:
        self._work.mark_readings()
        self._ways.tick()

    def _copy(self) -> None:
        snapshot = self._session.snapshot()
        QApplication.clipboard().setText(write(_header(snapshot), snapshot.legs))


def _header(snapshot: Snapshot) -> Header:
    if snapshot.site is None or snapshot.air is None:
        return Header()
    return Header(
        latitude_deg=snapshot.site.latitude_deg,
        longitude_deg=snapshot.site.longitude_deg,
        elevation_m=snapshot.site.elevation_m,
        pressure_hpa=None if snapshot.air.pressure_is_assumed else snapshot.air.pressure_hpa,
        temperature_c=snapshot.air.temperature_c,
    )
