"""The table of pages: each made when it is first wanted, and joined to what pages share."""

from __future__ import annotations

import secrets
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimeZone
from PySide6.QtWidgets import QWidget

from app.startup import StartupLoad
from app.ui.style import Theme
from app.ui.window import PageEntry, Window
from app.workers.awake import Awake
from app.workers.sound import Sounds

if TYPE_CHECKING:
    from app.devices.files import LogFileSource
    from app.devices.practice import PracticeSource
    from app.night.budget import Budget
    from app.night.equipment import Equipment, FieldInView
    from app.night.notes import FlipBook, NightBook
    from app.night.places import Places, Settings
    from app.night.plan import Evening
    from app.night.session import Session
    from app.night.snapshot import Snapshot
    from app.pages.budget.page import BudgetPage
    from app.pages.drift.page import DriftPage
    from app.pages.drift.parts import DriftParts
    from app.pages.log.page import LogPage
    from app.pages.log.parts import LogParts
    from app.pages.mount.page import MountPage
    from app.pages.plan.page import PlanPage
    from app.pages.pole.page import PolePage
    from app.pages.rotation.page import RotationPage
    from app.pages.site.page import SitePage
    from app.pages.tonight.page import TonightPage
    from app.pages.tracking.page import TrackingPage
    from core.alignment.priors import Priors
    from core.mount.equipment import EquipmentSet
    from core.night.checklist import KnownFact
    from core.sky.catalogues import StarNow
    from core.sky.horizon import Horizon
    from core.sky.site import Air, Site


# The names by which the window knows its pages.

SITE, POLE, DRIFT, MOUNT, BUDGET = "site", "pole", "drift", "mount", "budget"
TRACKING, ROTATION, PLAN = "tracking", "rotation", "plan"
TONIGHT, LOG = "tonight", "log"


# What the Drift page gets from the sky and from the sources.

LOWEST_DEG = 12.0  # lower, nobody should measure
MOST_STARS = 400


def _nothing_in_the_way(_site: Site) -> Horizon:
    from core.sky.horizon import Horizon

    return Horizon.flat()


def drift_parts(
    now: Callable[[], float],
    sounds: Sounds,
    field: FieldInView,
    awake: Awake,
    horizon: Callable[[Site], Horizon] = _nothing_in_the_way,
) -> DriftParts:
    """`now`: seconds since 1970-01-01 UTC. `horizon`: what stands in the way at a site."""
    from app.devices.files import LogFileSource
    from app.devices.typed import ManualSource
    from app.pages.drift.parts import DriftParts
    from core.practice.simulation import MEADOW_AIR, NORTHERN_MEADOW
    from core.sky import catalogues

    def stars_up(site: Site | None, air: Air | None) -> Sequence[StarNow]:
        if site is None or air is None:
            return ()
        return catalogues.load_stars().up_now(site, air, now(), LOWEST_DEG, MOST_STARS)

    def place_tonight(star: StarNow) -> tuple[float, float]:
        return catalogues.load_stars().at_epoch(star.star, now())

    def log_file(path: Path, parent: QObject) -> LogFileSource:
        return LogFileSource(path, parent)

    def practice(site: Site, air: Air, parent: QObject) -> PracticeSource:
        return _practice(site, air, now(), parent)

    return DriftParts(
        now,
        stars_up,
        place_tonight,
        lambda parent: ManualSource(now, parent),
        log_file,
        practice,
        (NORTHERN_MEADOW, MEADOW_AIR),
        horizon,
        sounds,
        field,
        awake,
    )


def _practice(site: Site, air: Air, utc_s: float, parent: QObject) -> PracticeSource:
    """A mount nobody has seen before, under the coming night."""
    import numpy as np

    from app.devices.practice import PracticeSource
    from core.practice.simulation import PracticeMount, coming_midnight_utc_s

    seed = secrets.randbits(32)
    mount = PracticeMount.hidden(np.random.default_rng(seed))
    midnight_utc_s = coming_midnight_utc_s(utc_s, site.longitude_deg)
    return PracticeSource(mount, site, air, midnight_utc_s, seed, parent)


# The pages that plan the evening, and what they get.


def evening_of(
    session: Session,
    places: Places,
    settings: Settings,
    equipment: Equipment,
    now: Callable[[], float],
    own_zone: str,
    parent: QObject,
) -> Evening:
    """`now`: seconds since 1970-01-01 UTC. `own_zone`: the computer's time zone by name."""
    from app.night.equipment import known_of
    from app.night.plan import Evening, Plans

    plans = Plans(settings, lambda name: known_of(equipment, name), parent)
    equipment.changed.connect(plans.changed)
    return Evening(session, places, plans, now, own_zone, parent)


def evening_unbuilt(pages: Iterable[QWidget | None]) -> list[Callable[[], None]]:
    """A step for each part of these pages that is not shown at first."""
    from app.pages.plan.page import PlanPage
    from app.pages.rotation.page import RotationPage

    ours = [page for page in pages if isinstance(page, RotationPage | PlanPage)]
    return [step for page in ours for step in page.sections().unbuilt()]


# What the pages for the whole night get: the checklist's pages and what is known of equipment.

# Names that steps of the checklist have for pages -> the page, and the part of it if it has parts.
PAGES: Mapping[str, tuple[str, str]] = {
    "site": ("site", ""),
    "pole": ("pole", ""),
    "drift": ("drift", ""),
    "equipment": ("mount", ""),
    "tracking": ("tracking", ""),
    "rotation": ("rotation", ""),
    "plan": ("plan", ""),
    "flip": ("plan", "flip"),
    "setup": ("plan", "stars"),
    "log": ("log", ""),
}


def titles(of_page: Mapping[str, str]) -> dict[str, str]:
    """Titles by the names steps have, from titles by the names of pages."""
    return {step: of_page[page] for step, (page, _) in PAGES.items() if page in of_page}


def known_facts(equipment: Equipment) -> Callable[[], frozenset[KnownFact]]:
    """What can be told from the equipment."""
    from core.night.checklist import KnownFact

    def facts() -> frozenset[KnownFact]:
        chosen = equipment.set_in_use()
        if chosen is None:
            return frozenset()
        return frozenset({KnownFact.EQUIPMENT_CHOSEN}) | _load_facts(equipment, chosen)

    return facts


def _load_facts(equipment: Equipment, chosen: EquipmentSet) -> frozenset[KnownFact]:
    """The load counts as checked when every mass is known and the mount carries it well by the
    share of its capacity that the person keeps to.
    """
    from core.mount.payload import LoadStanding, judge_load
    from core.night.checklist import KnownFact

    inventory = equipment.inventory
    mount = inventory.mount_of(chosen)
    if mount is None:
        return frozenset()
    parts = inventory.parts_of(chosen, with_planned=False)
    practice = equipment.adjusted(chosen.purpose).practice(chosen.purpose)
    verdict = judge_load(mount, parts, chosen.purpose, practice)
    fits = bool(parts) and verdict.standing is LoadStanding.FITS
    return frozenset({KnownFact.LOAD_CHECKED}) if fits else frozenset()


def keep_surroundings(
    book: NightBook, session: Session, equipment: Equipment, evening: Evening
) -> None:
    """Equipment and plan go into the night as soon as anything is done in it, and follow then."""
    from app.night.surroundings import surroundings_of

    found = surroundings_of(equipment, evening.plans)

    is_measured = False

    def follow(snapshot: Snapshot) -> None:
        nonlocal is_measured
        is_measured = bool(snapshot.legs)

    def keep() -> None:
        if is_measured or book.has_begun():
            book.keep_around(found())

    session.follow(follow)
    for signal in (book.changed, session.changed, equipment.changed, evening.plans.changed):
        signal.connect(keep)


def log_parts(warm: StartupLoad, session: Session, evening: Evening, book: NightBook) -> LogParts:
    """What the Log page gets."""
    from app.night.archive import NightFiles
    from app.pages.log.parts import LogParts
    from core.night.words import when

    files = NightFiles(warm.log.archive, when)

    granted: dict[str, Priors] = {}
    session.follow(lambda snapshot: granted.update(now=snapshot.priors))
    night_id = warm.night.night_id
    return LogParts(files, warm.log, book, night_id, evening.zone, lambda: granted["now"])


def log_unbuilt(page: QWidget | None) -> list[Callable[[], None]]:
    """A step for each part of the Log page that is not shown at first, and of a night on it."""
    from app.pages.log.page import LogPage

    if not isinstance(page, LogPage):
        return []
    return [*page.sections().unbuilt(), *page.sheet().undressed(), page.refresh]


# The Tracking page, and what it gets.


def tracking_page(
    session: Session,
    theme: Theme,
    warm: StartupLoad,
    budget: Budget,
    equipment: Equipment,
    now: Callable[[], float],
) -> TrackingPage:
    """It goes on with the last run of the night that was not left out."""
    from app.night.recorder import Recorder, RunRecorder
    from app.pages.tracking.page import TrackingPage
    from app.pages.tracking.parts import LiveParts, TrackingParts
    from core.night.record import LegPurpose

    recorder = RunRecorder(Recorder(warm.log, session.report_storage))
    kept = [run for run in warm.night.tracking_runs if not run.discarded]
    runs = [run for run in kept if run.purpose != LegPurpose.GUIDING]
    guided = [run for run in kept if run.purpose == LegPurpose.GUIDING]
    open_run = runs.pop() if runs and not runs[-1].ended else None
    for run in runs:
        recorder.know(run.leg.label)
    parts = TrackingParts(
        now,
        warm.log,
        runs[-1] if runs else None,
        budget,
        equipment,
        LiveParts(recorder, open_run),
        guided[-1] if guided else None,
        warm.night.entries,
    )
    return TrackingPage(session, theme, parts)


def tracking_unbuilt(page: QWidget | None) -> list[Callable[[], None]]:
    """A step for each part of the page that is not shown at first."""
    from app.pages.tracking.page import TrackingPage

    return page.sections.unbuilt() if isinstance(page, TrackingPage) else []


# Makes the pages, each when it is first wanted, and joins them to what they share.


@dataclass(frozen=True, eq=False)
class Shared:
    """What several pages look at. `now`: seconds since 1970-01-01 UTC."""

    now: Callable[[], float]
    warm: StartupLoad
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
        from app.pages.plan.page import PlanPage

        where, part = PAGES[name]
        self._window.show_page(where)
        page = self._window.page(where)
        if part and isinstance(page, PlanPage):
            page.sections().show_section(part)

    def _to_site(self) -> None:
        self._window.show_page(SITE)

    def _tonight(self) -> TonightPage:
        from app.pages.tonight.page import Books, TonightPage

        shared = self._shared
        page = TonightPage(
            shared.evening,
            self._theme,
            Books(shared.book, shared.flips),
            shared.session,
            known_facts(shared.equipment),
            titles(self._window.titles()),
        )
        page.site_wanted.connect(self._to_site)
        page.page_wanted.connect(self.open_for_step)
        shared.session.changed.connect(page.refresh)
        shared.equipment.changed.connect(page.refresh)
        return page

    def _site(self) -> SitePage:
        from app.pages.site.page import SitePage, SiteParts

        shared = self._shared
        parts = SiteParts(shared.now, shared.places, own_zone(), shared.session)
        page = SitePage(self._theme, parts)
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
        from app.night.activenight import ActiveNight
        from app.pages.drift.page import DriftPage

        shared = self._shared
        session = shared.session
        parts = drift_parts(
            shared.now,
            shared.sounds,
            shared.field,
            shared.awake,
            shared.places.horizon_of,
        )
        page = DriftPage(ActiveNight(session, parent=self), self._theme, parts)
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
        shared = self._shared
        page = tracking_page(
            shared.session, self._theme, shared.warm, shared.budget, shared.equipment, shared.now
        )
        page.site_wanted.connect(self._to_site)
        return page

    def _rotation(self) -> RotationPage:
        from app.pages.rotation.page import RotationPage

        page = RotationPage(self._shared.evening, self._theme)
        page.site_wanted.connect(self._to_site)
        return page

    def _plan(self) -> PlanPage:
        from app.pages.plan.page import PlanPage

        shared = self._shared
        page = PlanPage(shared.evening, self._theme, shared.book.own, shared.flips)
        page.site_wanted.connect(self._to_site)
        return page

    def _log(self) -> LogPage:
        from app.pages.log.page import LogPage

        shared = self._shared
        return LogPage(
            self._theme, log_parts(shared.warm, shared.session, shared.evening, shared.book)
        )


def own_zone() -> str:
    """The computer's time zone by name."""
    return bytes(QTimeZone.systemTimeZoneId().data()).decode("ascii", "replace")
