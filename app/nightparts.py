"""What the pages for the whole night get: the checklist's pages and what is known of equipment."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING

from core.night.checklist import Fact

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from app.pages.log.parts import LogParts
    from app.session.equipment import Equipment
    from app.session.evening import Evening
    from app.session.nightbook import NightBook
    from app.session.session import Session
    from app.warmup import Warm
    from core.alignment.priors import Priors
    from core.mount.equipment import EquipmentSet

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


def known_facts(equipment: Equipment) -> Callable[[], frozenset[Fact]]:
    """What can be told from the equipment."""

    def facts() -> frozenset[Fact]:
        chosen = equipment.set_in_use()
        if chosen is None:
            return frozenset()
        return frozenset({Fact.EQUIPMENT_CHOSEN}) | _load_facts(equipment, chosen)

    return facts


def _load_facts(equipment: Equipment, chosen: EquipmentSet) -> frozenset[Fact]:
    """The load counts as checked when every mass is known and the mount carries it well by the
    share of its capacity that the person keeps to.
    """
    from core.mount.payload import Standing, judge_load

    inventory = equipment.inventory
    mount = inventory.mount_of(chosen)
    if mount is None:
        return frozenset()
    parts = inventory.parts_of(chosen, with_planned=False)
    practice = equipment.adjusted(chosen.purpose).practice(chosen.purpose)
    verdict = judge_load(mount, parts, chosen.purpose, practice)
    fits = bool(parts) and verdict.standing is Standing.FITS
    return frozenset({Fact.LOAD_CHECKED}) if fits else frozenset()


def keep_surroundings(
    book: NightBook, session: Session, equipment: Equipment, evening: Evening
) -> None:
    """Equipment and plan go into the night as soon as anything is done in it, and follow then."""
    from app.session.surroundings import surroundings_of

    found = surroundings_of(equipment, evening.plans)

    def keep() -> None:
        if session.snapshot().legs or book.has_begun():
            book.keep_around(found())

    for signal in (book.changed, session.changed, equipment.changed, evening.plans.changed):
        signal.connect(keep)


def log_parts(warm: Warm, session: Session, evening: Evening, book: NightBook) -> LogParts:
    """What the Log page gets."""
    from app.pages.log.parts import LogParts
    from app.session.nightfiles import NightFiles
    from core.night.words import when

    files = NightFiles(warm.log.archive, when)

    def priors() -> Priors:
        return session.snapshot().priors

    return LogParts(files, warm.log, book, warm.night.night_id, evening.zone, priors)


def unbuilt_parts(page: QWidget | None) -> list[Callable[[], None]]:
    """A step for each part of the Log page that is not shown at first, and of a night on it."""
    from app.pages.log.page import LogPage

    if not isinstance(page, LogPage):
        return []
    return [*page.sections().unbuilt(), *page.sheet().undressed(), page.refresh]
