"""Builds the controls of each way in and joins its readings to the session they belong to."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QWidget

from app.pages.drift.byhand import ByHand
from app.pages.drift.importing import Importing
from app.pages.drift.parts import DriftParts
from app.pages.drift.practice import Practice
from app.pages.drift.readings import HAND, LOG, PRACTICE, ReadingsPanel
from app.pages.drift.starchoice import ChosenStar, StarChoice
from app.sources.practice import PracticeSource
from app.theme.theme import Theme
from app.widgets.filepicker import log_dialog

if TYPE_CHECKING:
    from app.session.session import Session
    from app.session.shown import Shown
    from app.sources.source import Source
    from core.sky.site import Air, Site


class Ways(QObject):
    """Owns the sources in use. A made-up mount never mixes with a real one: practice has a session
    of its own, which goes when the practice sky is left."""

    letter_pressed = Signal(str)  # while a number is typed; it may be a key of the guide

    def __init__(self, shown: Shown, theme: Theme, parts: DriftParts, parent: QObject) -> None:
        super().__init__(parent)
        self._shown = shown
        self._theme = theme
        self._parts = parts
        self._sources: dict[str, Source] = {}
        self._way_tonight = ""
        builders = {PRACTICE: self._practice, HAND: self._by_hand, LOG: self._importing}
        self.panel = ReadingsPanel(builders)
        self.panel.left.connect(self._left)

    def back_to_tonight(self) -> None:
        """Practice ends; the way that was in use before it is taken again."""
        self.panel.leave()
        if self._way_tonight:
            self.panel.take(self._way_tonight)

    def stop(self) -> None:
        """No way delivers any more."""
        for source in self._sources.values():
            source.stop()
        importing = self.panel.controls(LOG)
        if isinstance(importing, Importing):
            importing.stop()

    def import_log(self, path: Path) -> None:
        """Reads a file as if it had been chosen."""
        importing = self.panel.controls(LOG)
        if isinstance(importing, Importing):
            importing.read(path)

    def is_watching_way(self) -> bool:
        """Whether stars are watched by the way in use, now or soon."""
        return self.panel.way() in (PRACTICE, HAND)

    def now(self) -> float:
        """Seconds since 1970-01-01 UTC, of the practice night while one is in view."""
        source = self._sources.get(PRACTICE)
        if self._shown.is_practice and isinstance(source, PracticeSource):
            return source.utc_s
        return self._parts.now()

    def watch(self, name: str, ra_deg: float, dec_deg: float) -> None:
        """A star (ICRS place tonight) comes into view, by the way in use."""
        controls = self.panel.controls(self.panel.way())
        if isinstance(controls, Practice):
            controls.watch(name, ra_deg, dec_deg)
        elif isinstance(controls, ByHand):
            controls.watch(ChosenStar(name, ra_deg, dec_deg))

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

    def _left(self, way: str) -> None:
        """What is measured by hand stays under way while one looks elsewhere."""
        if way != PRACTICE:
            self._way_tonight = way
            return
        self._drop_practice()
        self._shown.end_practice()

    def _join(self, way: str, source: Source, session: Session) -> None:
        source.reading.connect(session.add_reading)
        self._sources[way] = source

    def _practice(self) -> QWidget:
        site, air = self._site_or_meadow()
        session = self._shown.begin_practice(site, air)
        source = self._parts.practice(site, air, self)
        self._join(PRACTICE, source, session)
        controls = Practice(session, source, site.latitude_deg)
        controls.again.connect(self._another_mount)
        return controls

    def _site_or_meadow(self) -> tuple[Site, Air]:
        """Whoever has given no site practises on an invented meadow."""
        snapshot = self._shown.tonight.snapshot()
        if snapshot.site is not None and snapshot.air is not None:
            return snapshot.site, snapshot.air
        return self._parts.meadow

    def _drop_practice(self) -> None:
        source = self._sources.pop(PRACTICE, None)
        if source is not None:
            source.stop()
            source.deleteLater()
        self.panel.drop(PRACTICE)

    def _another_mount(self) -> None:
        self.panel.leave()
        self.panel.take(PRACTICE)

    def _by_hand(self) -> QWidget:
        source = self._parts.manual(self)
        tonight = self._shown.tonight
        self._join(HAND, source, tonight)
        stars = StarChoice(self._parts.stars_up, self._parts.place_tonight)
        by_hand = ByHand(tonight, source, stars, self._parts.now)
        by_hand.pad().letter_pressed.connect(self.letter_pressed)
        return by_hand

    def _importing(self) -> QWidget:
        controls = Importing(self._parts.log_file, self._shown.tonight)
        controls.file_wanted.connect(lambda: self._pick(controls))
        return controls

    def _pick(self, controls: Importing) -> None:
        def read(path: Path) -> None:
            controls.read(path)

        log_dialog(controls, self._theme, read).open()
