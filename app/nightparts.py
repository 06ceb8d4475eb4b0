"""What the pages for the whole night get: the checklist's pages and what is known of equipment."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING

from core.night.checkliststeps import Fact

if TYPE_CHECKING:
    from app.session.equipment import Equipment

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
        return frozenset() if chosen is None else frozenset({Fact.EQUIPMENT_CHOSEN})

    return facts
