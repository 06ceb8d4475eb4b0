"""The pages that plan the evening, and what they get."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QWidget

from app.pages.plan.page import PlanPage
from app.pages.rotation.page import RotationPage
from app.session.equipped import known_of
from app.session.evening import Evening
from app.session.plans import Plans
from app.theme.theme import Theme

if TYPE_CHECKING:
    from app.session.equipment import Equipment
    from app.session.flipbook import FlipBook
    from app.session.nightbook import NightBook
    from app.session.places import Places, Settings
    from app.session.session import Session


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
    plans = Plans(settings, lambda name: known_of(equipment, name), parent)
    equipment.changed.connect(plans.changed)
    return Evening(session, places, plans, now, own_zone, parent)


def rotation_page(evening: Evening, theme: Theme, to_site: Callable[[], None]) -> RotationPage:
    page = RotationPage(evening, theme)
    page.site_wanted.connect(to_site)
    return page


def plan_page(
    evening: Evening,
    theme: Theme,
    book: NightBook,
    flips: FlipBook,
    to_site: Callable[[], None],
) -> PlanPage:
    page = PlanPage(evening, theme, book.own, flips)
    page.site_wanted.connect(to_site)
    return page


def unbuilt_parts(pages: Iterable[QWidget | None]) -> list[Callable[[], None]]:
    """A step for each part of these pages that is not shown at first."""
    ours = [page for page in pages if isinstance(page, RotationPage | PlanPage)]
    return [step for page in ours for step in page.sections().unbuilt()]
