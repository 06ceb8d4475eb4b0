"""Where one stands tonight, whole: place, air, obstructions, and what the clocks show."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from app.night.places import Places
from core.language import say
from core.sky.clocks import UnusableZone, Zone, find
from core.sky.horizon import Horizon
from core.sky.site import Air, Site

if TYPE_CHECKING:
    from app.night.snapshot import Snapshot


@dataclass(frozen=True, eq=False)
class ObservingContext:
    """`zone_note`: a sentence where the zone is not one that was chosen, else empty."""

    site: Site
    air: Air
    horizon: Horizon
    zone: Zone
    zone_note: str = ""


def around(snapshot: Snapshot, places: Places, own_zone: str) -> ObservingContext | None:
    """None while no site is given. `own_zone`: the computer's, as the database spells it."""
    if snapshot.site is None or snapshot.air is None:
        return None
    place = places.of(snapshot.site)
    horizon = Horizon.flat() if place is None else place.horizon
    zone, note = _zone(None if place is None else place.zone or own_zone)
    return ObservingContext(snapshot.site, snapshot.air, horizon, zone, note)


def _zone(name: str | None) -> tuple[Zone, str]:
    if name is None:
        return find("UTC"), say("No time zone is kept for this place: times are in UTC.")
    try:
        return find(name), ""
    except UnusableZone:
        return find("UTC"), say("The time zone of this place is not known: times are in UTC.")
