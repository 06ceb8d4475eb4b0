"""Makes the pages, each when it is first wanted, and joins them to what they share."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimeZone

from app.pagenames import (
    BUDGET,
    DRIFT,
    LOG,
    MOUNT,
    PLAN,
    POLE,
    ROTATION,
    SITE,
    TONIGHT,
    TRACKING,
)
from app.signals.awake import Awake
from app.signals.sounds import Sounds
from app.theme.theme import Theme
from app.warmup import Warm
from app.window import PageEntry, Window

if TYPE_CHECKING:
    from app.pages.budget.page import BudgetPage
    from app.pages.drift.page import DriftPage
    from app.pages.log.page import LogPage
    from app.pages.mount.page import MountPage
    from app.pages.plan.page import PlanPage
    from app.pages.pole.page import PolePage
    from app.pages.rotation.page import RotationPage
    from app.pages.site.page import SitePage
    from app.pages.tonight.page import TonightPage
    from app.pages.tracking.page import TrackingPage
    from app.session.budget import Budget
    from app.session.equipment import Equipment
    from app.session.evening import Evening
    from app.session.fieldinview import FieldInView
    from app.session.flipbook import FlipBook
    from app.session.nightbook import NightBook
    from app.session.places import Places
    from app.session.session import Session


@dataclass(frozen=True, eq=False)
class Shared:
    """What several pages look at. `now`: seconds since 1970-01-01 UTC."""

    now: Callable[[], float]
    warm: Warm
    session: Session
    places: Places
    equipment: Equipment
    budget: Budget
    evening: Evening
    book: NightBook
    flips: FlipBook
    sounds: Sounds
    field: FieldInView
    awake: Awake


class PageMaking(QObject):
    """The entries of the rail, in its order; `open_for_step` leads from the checklist to a page."""

    def __init__(self, window: Window, theme: Theme, shared: Shared, parent: QObject) -> None:
        super().__init__(parent)
        self._window = window
        self._theme = theme
        self._shared = shared

    def entries(self) -> list[PageEntry]:
        return [
            PageEntry(TONIGHT, self.tr("Tonight"), self._tonight),
            PageEntry(SITE, self.tr("Site"), self._site),
            PageEntry(POLE, self.tr("Pole"), self._pole),
            PageEntry(DRIFT, self.tr("Drift"), self._drift),
            PageEntry(MOUNT, self.tr("Mount"), self._mount),
            PageEntry(BUDGET, self.tr("Budget"), self._budget),
            PageEntry(TRACKING, self.tr("Tracking"), self._tracking),
            PageEntry(ROTATION, self.tr("Field rotation"), self._rotation),
            PageEntry(PLAN, self.tr("Night plan"), self._plan),
            PageEntry(LOG, self.tr("Log"), self._log),
        ]

    def open_for_step(self, name: str) -> None:
        """The page that does what a step of the checklist says, at the part that does it."""
        from app.nightparts import PAGES
        from app.pages.plan.page import PlanPage

        where, part = PAGES[name]
        self._window.show_page(where)
        page = self._window.page(where)
        if part and isinstance(page, PlanPage):
            page.sections().show_section(part)

    def _to_site(self) -> None:
        self._window.show_page(SITE)

    def _tonight(self) -> TonightPage:
        from app.nightparts import known_facts, titles
        from app.pages.tonight.page import Books, TonightPage

        shared = self._shared
        page = TonightPage(
            shared.evening,
            self._theme,
            Books(shared.book, shared.flips),
            shared.session.snapshot,
            known_facts(shared.equipment),
            titles(self._window.titles()),
        )
        page.site_wanted.connect(self._to_site)
        page.page_wanted.connect(self.open_for_step)
        shared.session.changed.connect(page.refresh)
        shared.equipment.changed.connect(page.refresh)
        return page

    def _site(self) -> SitePage:
        from app.pages.site.page import SitePage
        from app.pages.site.parts import SiteParts

        shared = self._shared
        tonight = shared.session.snapshot
        page = SitePage(self._theme, SiteParts(shared.now, shared.places, own_zone(), tonight))
        snapshot = tonight()
        page.show_site(snapshot.site, snapshot.air)
        page.mount_moved.connect(shared.session.tripod_moved)
        page.site_given.connect(shared.session.set_site)
        page.clock().checked.connect(shared.book.confirm_clock)
        return page

    def _pole(self) -> PolePage:
        from app.pages.pole.page import PolePage
        from app.pages.pole.parts import PoleParts
        from core.practice.simulation import MEADOW_AIR, NORTHERN_MEADOW

        shared = self._shared
        meadow = (NORTHERN_MEADOW, MEADOW_AIR)
        parts = PoleParts(shared.now, shared.places.horizon_of, shared.warm.log, meadow)
        page = PolePage(shared.session, self._theme, parts)
        page.site_wanted.connect(self._to_site)
        return page

    def _drift(self) -> DriftPage:
        from app.driftparts import drift_parts
        from app.pages.drift.page import DriftPage
        from app.session.shown import Shown

        shared = self._shared
        session = shared.session
        parts = drift_parts(
            session,
            shared.now,
            shared.sounds,
            shared.field,
            shared.awake,
            shared.places.horizon_of,
        )
        page = DriftPage(Shown(session, parent=self), self._theme, parts)
        page.site_wanted.connect(self._to_site)
        return page

    def _mount(self) -> MountPage:
        from app.pages.mount.page import MountPage

        shared = self._shared
        return MountPage(shared.session, self._theme, shared.equipment, shared.budget)

    def _budget(self) -> BudgetPage:
        from app.pages.budget.page import BudgetPage

        shared = self._shared
        page = BudgetPage(shared.session, self._theme, shared.budget, shared.now)
        page.site_wanted.connect(self._to_site)
        return page

    def _tracking(self) -> TrackingPage:
        from app.trackingparts import tracking_page

        shared = self._shared
        page = tracking_page(
            shared.session, self._theme, shared.warm, shared.budget, shared.equipment, shared.now
        )
        page.site_wanted.connect(self._to_site)
        return page

    def _rotation(self) -> RotationPage:
        from app.eveningparts import rotation_page

        return rotation_page(self._shared.evening, self._theme, self._to_site)

    def _plan(self) -> PlanPage:
        from app.eveningparts import plan_page

        shared = self._shared
        return plan_page(shared.evening, self._theme, shared.book, shared.flips, self._to_site)

    def _log(self) -> LogPage:
        from app.nightparts import log_parts
        from app.pages.log.page import LogPage

        shared = self._shared
        return LogPage(
            self._theme, log_parts(shared.warm, shared.session, shared.evening, shared.book)
        )


def own_zone() -> str:
    """The computer's time zone by name."""
    return bytes(QTimeZone.systemTimeZoneId().data()).decode("ascii", "replace")
