"""Builds the controls of each way in and joins its readings to the session."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QWidget

from app.pages.drift.byhand import ByHand
from app.pages.drift.importing import Importing
from app.pages.drift.parts import DriftParts
from app.pages.drift.practice import Practice
from app.pages.drift.readings import HAND, LOG, PRACTICE, ReadingsPanel
from app.pages.drift.starchoice import StarChoice
from app.theme.theme import Theme
from app.widgets.filepicker import log_dialog

if TYPE_CHECKING:
    from app.session.session import Session
    from app.sources.source import Source
    from core.sky.site import Air, Site


class Ways(QObject):
    """Owns the sources in use. A made-up mount never mixes with a real one: going in or out of
    practice begins a new axis state."""

    def __init__(self, session: Session, theme: Theme, parts: DriftParts, parent: QObject) -> None:
        super().__init__(parent)
        self._session = session
        self._theme = theme
        self._parts = parts
        self._sources: dict[str, Source] = {}
        builders = {PRACTICE: self._practice, HAND: self._by_hand, LOG: self._importing}
        self.panel = ReadingsPanel(builders)
        self.panel.left.connect(self._left)
        self.panel.taken.connect(self._taken)

    def stop(self) -> None:
        """No way delivers any more."""
        for source in self._sources.values():
            source.stop()
        importing = self.panel.controls(LOG)
        if isinstance(importing, Importing):
            importing.stop()

    def tick(self) -> None:
        """Words that change with the readings."""
        practice = self.panel.controls(PRACTICE)
        if isinstance(practice, Practice):
            practice.tick()

    def site_changed(self) -> None:
        """Other stars are up, and a practice mount stands elsewhere."""
        by_hand = self.panel.controls(HAND)
        if isinstance(by_hand, ByHand):
            by_hand.stars().refresh()

    def _taken(self, way: str) -> None:
        if way == PRACTICE:
            self._forget_legs()

    def _left(self, way: str) -> None:
        if way in self._sources:
            self._sources[way].stop()
        self._session.end_leg()
        if way == PRACTICE:
            self._forget_legs()
            self._drop_practice()

    def _forget_legs(self) -> None:
        if self._session.snapshot().legs:
            self._session.bolts_turned()

    def _join(self, way: str, source: Source) -> None:
        source.reading.connect(self._session.add_reading)
        self._sources[way] = source

    def _practice(self) -> QWidget:
        site, air = self._site_or_meadow()
        source = self._parts.practice(site, air, self)
        self._join(PRACTICE, source)
        controls = Practice(self._session, source, site.latitude_deg)
        controls.again.connect(self._another_mount)
        return controls

    def _site_or_meadow(self) -> tuple[Site, Air]:
        """Whoever has given no site practises on an invented meadow, which the strip then names."""
        snapshot = self._session.snapshot()
        if snapshot.site is not None and snapshot.air is not None:
            return snapshot.site, snapshot.air
        self._session.set_site(*self._parts.meadow)
        return self._parts.meadow

    def _drop_practice(self) -> None:
        source = self._sources.pop(PRACTICE, None)
        if source is not None:
            source.stop()
            source.deleteLater()
        self.panel.drop(PRACTICE)

    def _another_mount(self) -> None:
        self._session.end_leg()
        self._forget_legs()
        self._drop_practice()
        self.panel.take(PRACTICE)

    def _by_hand(self) -> QWidget:
        source = self._parts.manual(self)
        self._join(HAND, source)
        stars = StarChoice(self._parts.stars_up, self._parts.place_tonight)
        return ByHand(self._session, source, stars, self._parts.now)

    def _importing(self) -> QWidget:
        controls = Importing(self._parts.log_file)
        controls.log_read.connect(self._session.take_log)
        controls.file_wanted.connect(lambda: self._pick(controls))
        return controls

    def _pick(self, controls: Importing) -> None:
        def read(path: Path) -> None:
            controls.read(path)

        log_dialog(controls.window(), self._theme, read).open()
