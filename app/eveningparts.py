"""What the pages that plan the evening get."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from app.session.equipped import known_of
from app.session.evening import Evening
from app.session.plans import Plans

if TYPE_CHECKING:
    from app.session.equipment import Equipment
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
