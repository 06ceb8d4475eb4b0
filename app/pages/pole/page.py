"""The Pole page: where is the pole, and how does the axis get near it?"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.pole import sight as sights
from app.pages.pole.band import PoleBand
from app.pages.pole.empty import Empty
from app.pages.pole.fieldview import FieldView
from app.pages.pole.hiddenview import HiddenView
from app.pages.pole.parts import PoleParts
from app.pages.pole.sight import Sight, Sighting
from app.pages.pole.sightreading import Read
from app.pages.pole.sightview import SightView
from app.pages.pole.standing import Standing
from app.theme.theme import Theme
from app.widgets.choice import Choice
from app.widgets.scrolled import Scrolled
from app.widgets.text import Text
from app.widgets.ticking import Ticking
from core.alignment.polarscope.view import View
from core.sky.site import Air, Site

if TYPE_CHECKING:
    from app.session.session import Session
    from app.session.snapshot import Snapshot

SIGHT, FIELD, HIDDEN = "sight", "field", "hidden"


class PolePage(QWidget):
    """`site_wanted`: the person wants to say where they are. Call `stop` before letting go."""

    site_wanted = Signal()

    def __init__(
        self, session: Session, theme: Theme, parts: PoleParts, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._session = session
        self._parts = parts
        self._snapshot = session.snapshot()
        self._practises = False
        self._sight = sights.kept(parts.settings)
        self._empty = Empty(theme)
        self._invented = Text("", "quiet")
        self._band = PoleBand()
        self._ways = Choice(
            self.tr("How you look for the pole"),
            [
                (SIGHT, self.tr("Through a polar-axis sight")),
                (FIELD, self.tr("By the star field")),
                (HIDDEN, self.tr("The pole is hidden")),
            ],
        )
        self._sight_view, self._field_view = SightView(theme), FieldView(theme)
        self._hidden_view = HiddenView()
        self._ways.show_choice(SIGHT)
        self._connect()
        self._arrange()
        self._ticking = Ticking(self, parts.now, self._tick)
        self._show()
        self.setFocusProxy(self._ways.button(SIGHT))

    def _connect(self) -> None:
        self._session.changed.connect(self._session_changed)
        self._empty.site_wanted.connect(self.site_wanted)
        self._empty.practice_wanted.connect(self._practise)
        self._ways.chosen.connect(lambda _way: self._show())
        self._sight_view.sight_changed.connect(self._take_sight)
        self._sight_view.aim_chosen.connect(self._session.set_aim)
        self._sight_view.placed.connect(self._placed)
        self._sight_view.reading().read.connect(self._read)
        self._sight_view.reading().forgotten.connect(self._forget)
        self._field_view.view_chosen.connect(self._take_view)

    def _arrange(self) -> None:
        content = QWidget()
        column = QVBoxLayout(content)
        column.setContentsMargins(16, 12, 16, 12)
        column.setSpacing(12)
        column.addWidget(Text(self.tr("Where is the pole?"), "question"))
        for part in (self._empty, self._invented, self._band, self._ways):
            column.addWidget(part)
        for view in self._views().values():
            column.addWidget(view)
        column.addStretch()
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(Scrolled(content))

    def _views(self) -> dict[str, QWidget]:
        return {SIGHT: self._sight_view, FIELD: self._field_view, HIDDEN: self._hidden_view}

    def stop(self) -> None:
        """Nothing goes on any more."""
        self._hidden_view.stop()

    def ways(self) -> Choice:
        return self._ways

    def band(self) -> PoleBand:
        return self._band

    def empty(self) -> Empty:
        return self._empty

    def sight_view(self) -> SightView:
        return self._sight_view

    def field_view(self) -> FieldView:
        return self._field_view

    def hidden_view(self) -> HiddenView:
        return self._hidden_view

    def take_way(self, way: str) -> None:
        """One of "sight", "field" and "hidden"."""
        self._ways.show_choice(way)
        self._show()

    def _where(self) -> tuple[Site, Air] | None:
        site, air = self._snapshot.site, self._snapshot.air
        if site is not None and air is not None:
            return site, air
        return self._parts.meadow if self._practises else None

    def _session_changed(self, snapshot: Snapshot) -> None:
        before, self._snapshot = self._snapshot, snapshot
        same = (before.site, before.air, before.aim) == (snapshot.site, snapshot.air, snapshot.aim)
        if not same:
            self._show()

    def _practise(self) -> None:
        self._practises = True
        self._show()

    def _show(self) -> None:
        """After anything but the clock has changed."""
        where = self._where()
        self._empty.setVisible(where is None)
        for part in (self._band, self._ways):
            part.setVisible(where is not None)
        for way, view in self._views().items():
            view.setVisible(where is not None and way == self._ways.choice())
        invented = self._snapshot.site is None and where is not None
        self._invented.say(
            self.tr("At an invented site, {site}.").format(site=where[0].name)
            if invented and where is not None
            else ""
        )
        self._ticking.tick()

    def _tick(self, utc_s: float) -> None:
        where = self._where()
        if where is None:
            self._empty.show_example(Standing.at(*self._parts.meadow, self._snapshot.aim, utc_s))
            return
        standing = Standing.at(*where, self._snapshot.aim, utc_s)
        cautions = standing.cautions(self._parts.horizon_of(standing.site))
        self._band.show_standing(standing, self._sight.view, cautions)
        way = self._ways.choice()
        if way == SIGHT:
            self._sight_view.show_standing(standing, self._sight.at(standing.site, utc_s))
        elif way == FIELD:
            self._field_view.show_standing(standing, self._sight.finder)
        else:
            self._hidden_view.show_standing(standing)

    def _take_view(self, view: View) -> None:
        self._take_sight(replace(self._sight, finder=view))

    def _take_sight(self, sight: Sight) -> None:
        self._sight = sight
        sights.keep(self._parts.settings, sight)
        self._ticking.tick()

    def _placed(self, clock_angle_deg: float, distance_arcmin: float) -> None:
        self._sight_view.reading().show_place(clock_angle_deg, distance_arcmin)
        self._read(Read(clock_angle_deg, distance_arcmin))

    def _read(self, read: Read) -> None:
        where = self._where()
        if where is None:
            return
        place = read.clock_angle_deg, read.distance_arcmin
        seen = Sighting(self._parts.now(), *place, where[0].latitude_deg, where[0].longitude_deg)
        self._take_sight(replace(self._sight, sighting=seen))

    def _forget(self) -> None:
        self._sight_view.reading().clear()
        self._take_sight(self._sight.without_reading())
