"""The Site page: where are you, what is the air like, and is the clock right?"""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.site.clockpanel import ClockPanel
from app.pages.site.form import SiteForm
from app.pages.site.horizonpanel import HorizonPanel
from app.pages.site.kept import KeptPlaces
from app.pages.site.moving import Moving
from app.pages.site.parts import SiteParts
from app.session.places import Place
from app.session.sitechange import Change, change_to
from app.theme.theme import Theme
from app.widgets.compass import CompassPanel
from app.widgets.field import Field
from app.widgets.key import Key
from app.widgets.reflow import Reflow
from app.widgets.scrolled import Scrolled
from app.widgets.text import Text
from core.sky.horizon import Horizon
from core.sky.site import Air, Site


class SitePage(QWidget):
    """`site_given` carries a Site and an Air, both checked. The place, its time zone and horizon
    are kept at once. `mount_moved` comes before it when the mount was carried to another place.
    """

    site_given = Signal(object, object)
    mount_moved = Signal()

    def __init__(self, theme: Theme, parts: SiteParts, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._parts = parts
        self._place: Place | None = None  # the one in use
        self._kept = KeptPlaces()
        self._form = SiteForm()
        self._moving = Moving()
        self._clock = ClockPanel(parts.now, parts.own_zone)
        self._compass = CompassPanel()
        self._horizon = HorizonPanel(theme)
        self._connect()
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        self._scrolled = Scrolled(self._arranged())
        outer.addWidget(self._scrolled)
        self.setFocusProxy(self._form.field("name"))
        self._show_place(None, None)

    def _connect(self) -> None:
        self._form.site_given.connect(self._given)
        self._form.edited.connect(self._moving.clear)
        self._moving.settled.connect(self._settled)
        self._moving.declined.connect(self._stay)
        self._kept.chosen.connect(self._go_to)
        self._kept.forget.connect(self._forget)
        self._clock.zone_chosen.connect(self._keep_zone)
        self._horizon.changed.connect(self._keep_horizon)

    def _arranged(self) -> QWidget:
        place = _stacked(self._form, self._moving)
        side = _stacked(self._clock, self._compass)
        content = QWidget()
        column = QVBoxLayout(content)
        column.setContentsMargins(16, 12, 16, 12)
        column.setSpacing(12)
        column.addWidget(Text(self.tr("Where are you?"), "question"))
        column.addWidget(Text(self._why(), "quiet"))
        column.addWidget(self._kept)
        column.addWidget(Reflow((place, side), 860))
        column.addWidget(self._horizon)
        column.addStretch()
        return content

    def _why(self) -> str:
        return self.tr(
            "The pole stands as high as your latitude, and the stars turn by your longitude. "
            "A hundredth of a degree is good enough."
        )

    def show_site(self, site: Site | None, air: Air | None) -> None:
        """The site in use."""
        if site is not None:
            self._form.show_site(site, air)
            self._show_place(self._parts.places.of(site) or Place(site), air)

    def form(self) -> SiteForm:
        return self._form

    def moving(self) -> Moving:
        """What is asked about a place far away."""
        return self._moving

    def kept(self) -> KeptPlaces:
        return self._kept

    def clock(self) -> ClockPanel:
        return self._clock

    def compass(self) -> CompassPanel:
        return self._compass

    def horizon(self) -> HorizonPanel:
        return self._horizon

    def field(self, name: str) -> Field:
        return self._form.field(name)

    def use_button(self) -> Key:
        return self._form.use_button()

    def answer(self) -> str:
        return self._form.answer()

    def _given(self, site: Site, air: Air) -> None:
        """A site was given; what it means for what was measured may have to be asked."""
        tonight = self._parts.snapshot()
        change = change_to(site, tonight)
        self._moving.clear()
        if change is Change.IN_DOUBT and tonight.site is not None:
            self._form.wait_for_answer()
            self._moving.ask_about(tonight.site, site, air)
            self._scrolled.bring_into_view(self._moving)
            return
        is_measured = change is not Change.NOTHING_MEASURED
        self._use(site, air, self._anew() if is_measured else self.tr("In use."))

    def _settled(self, site: Site, air: Air, is_moved: bool) -> None:
        """The person said what a place far away means."""
        if is_moved:
            self.mount_moved.emit()
        self._use(site, air, self._left_behind() if is_moved else self._anew())
        self._form.use_button().setFocus()

    def _stay(self) -> None:
        """The place in use stays in use."""
        tonight = self._parts.snapshot()
        if tonight.site is not None:
            self._form.show_site(tonight.site, tonight.air)
        self._form.use_button().setFocus()

    def _anew(self) -> str:
        return self.tr("In use. What was measured is computed anew for this place.")

    def _left_behind(self) -> str:
        return self.tr(
            "In use. The mount counts as moved: what was measured before says nothing about it "
            "any more."
        )

    def _use(self, site: Site, air: Air, said: str) -> None:
        """Taken: kept with what is known of it or was drawn before it was given."""
        places = self._parts.places
        drawn = self._horizon.panorama().horizon()
        places.keep_site(site)
        place = places.of(site) or Place(site)
        if self._place is None and drawn.azimuth_deg.size and not place.horizon.azimuth_deg.size:
            place = replace(place, horizon=drawn)
            places.keep(place)
        self._show_place(place, air)
        self._form.say_answer(said)
        self.site_given.emit(site, air)

    def _go_to(self, place: Place) -> None:
        self._form.show_site(place.site, None)
        self._form.submit()

    def _forget(self, label: str) -> None:
        """It stays in use tonight, but is offered no more."""
        self._parts.places.forget(label)
        self._kept.show_places(self._parts.places.all(), "")
        self._form.use_button().setFocus()

    def _keep_zone(self, zone: str) -> None:
        if self._place is not None:
            self._place = replace(self._place, zone=zone)
            self._parts.places.keep(self._place)

    def _keep_horizon(self, horizon: Horizon) -> None:
        if self._place is not None:
            self._place = replace(self._place, horizon=horizon)
            self._parts.places.keep(self._place)

    def _show_place(self, place: Place | None, air: Air | None) -> None:
        self._place = place
        site = None if place is None else place.site
        self._clock.show_site(site, air, "" if place is None else place.zone)
        self._compass.show_site(site, self._parts.now())
        self._horizon.show_pole(site)
        if place is not None:
            self._horizon.show_horizon(place.horizon)
        self._kept.show_places(self._parts.places.all(), "" if place is None else place.label)


def _stacked(*parts: QWidget) -> QWidget:
    """One above the other, as high as they need to be."""
    made = QWidget()
    column = QVBoxLayout(made)
    column.setContentsMargins(0, 0, 0, 0)
    column.setSpacing(12)
    for part in parts:
        column.addWidget(part)
    column.addStretch()
    return made
