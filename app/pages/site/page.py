"""What the Site page needs from outside."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QSizePolicy, QVBoxLayout, QWidget

from app.night.joining import Change, apart_deg, change_to
from app.night.places import Place, Places
from app.night.session import Session
from app.night.snapshot import Snapshot
from app.pages.site.clock import ClockPanel
from app.pages.site.form import SiteForm
from app.pages.site.horizon import HorizonPanel
from app.ui.compass import CompassPanel
from app.ui.form import Asking, Field, Flow, Key
from app.ui.style import Theme
from app.ui.text import Reflow, Scrolled, Text
from core.sky.horizon import Horizon
from core.sky.site import Air, Site


@dataclass(frozen=True)
class SiteParts:
    """`now`: seconds since 1970-01-01 UTC. `own_zone`: the computer's time zone, by its name.

    `session`: of tonight.
    """

    now: Callable[[], float]
    places: Places
    own_zone: str
    session: Session


# The question whether a place far away puts the one in use right, or the mount was moved there.


class Moving(Asking):
    """`settled` carries the Site, the Air and whether the mount was moved there."""

    settled = Signal(object, object, bool)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._wanted: tuple[Site, Air] | None = None
        self.answered.connect(self._settle)

    def ask_about(self, old: Site, site: Site, air: Air) -> None:
        """`old`: the place in use, where stars were measured."""
        self._wanted = site, air
        question = self.tr(
            "The new place lies {apart:.1f}° from the one in use, where stars were measured "
            "tonight. Was the place wrong, or was the mount moved? A mount that was moved has to "
            "be measured anew."
        )
        self.ask(
            question.format(apart=apart_deg(old, site)),
            self.tr("The place was wrong"),
            self.tr("The mount was moved"),
            self.tr("Neither: keep the place in use"),
        )
        self.yes().setFocus()

    def _settle(self, was_wrong: bool) -> None:
        wanted, self._wanted = self._wanted, None
        if wanted is not None:
            self.settled.emit(*wanted, not was_wrong)


# The places kept in the log of nights: one press goes back to one of them.


class KeptPlaces(QWidget):
    """`chosen` carries a Place, `forget` its label, after a yes. Hidden while nothing is kept."""

    chosen = Signal(object)
    forget = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._keys: dict[str, Key] = {}
        self._in_use = ""
        self._holder = QWidget()
        self._flow = Flow(self._holder)
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        self._holder.setSizePolicy(policy)
        self._forget = Key(self.tr("Forget this place"))
        self._forget.clicked.connect(self._ask)
        self._asking = Asking()
        self._asking.answered.connect(self._answered)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(Text(self.tr("Places kept"), "small"))
        column.addWidget(self._holder)
        column.addWidget(self._asking)
        self._flow.addWidget(self._forget)
        self.hide()

    def show_places(self, places: Sequence[Place], in_use: str) -> None:
        """`in_use`: the label of the place in use, empty when there is none."""
        self._in_use = in_use
        for key in self._keys.values():
            self._flow.removeWidget(key)
            key.deleteLater()
        self._flow.removeWidget(self._forget)
        self._keys = {place.label: self._key(place) for place in places}
        self._flow.addWidget(self._forget)
        self._forget.setVisible(in_use in self._keys)
        self.setVisible(bool(places))

    def button(self, label: str) -> Key:
        return self._keys[label]

    def forget_button(self) -> Key:
        return self._forget

    def asking(self) -> Asking:
        return self._asking

    def _key(self, place: Place) -> Key:
        key = Key(place.label)
        key.setCheckable(True)
        key.setChecked(place.label == self._in_use)
        key.setAccessibleName(self.tr("Use {place}").format(place=place.label))
        key.clicked.connect(lambda: self._choose(place))
        self._flow.addWidget(key)
        return key

    def _choose(self, place: Place) -> None:
        self._keys[place.label].setChecked(place.label == self._in_use)
        self.chosen.emit(place)

    def _ask(self) -> None:
        question = self.tr("Forget “{place}”, with its time zone and horizon?")
        self._asking.ask(
            question.format(place=self._in_use), self.tr("Yes, forget it"), self.tr("No, keep it")
        )
        self._asking.no().setFocus()

    def _answered(self, is_yes: bool) -> None:
        if is_yes:
            self.forget.emit(self._in_use)
        else:
            self._forget.setFocus()


# The Site page: where are you, what is the air like, and is the clock right?


class SitePage(QWidget):
    """`site_given` carries a Site and an Air, both checked. The place, its time zone and horizon
    are kept at once. `mount_moved` comes before it when the mount was carried to another place.
    """

    site_given = Signal(object, object)
    mount_moved = Signal()

    def __init__(self, theme: Theme, parts: SiteParts, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._parts = parts
        parts.session.follow(self._keep, readings=True)
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
        self.show_site(self._tonight.site, self._tonight.air)

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

    def _keep(self, snapshot: Snapshot) -> None:
        self._tonight = snapshot

    def _given(self, site: Site, air: Air) -> None:
        """A site was given; what it means for what was measured may have to be asked."""
        tonight = self._tonight
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
        tonight = self._tonight
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
