"""A change of the place when something is measured: put right, or was the mount carried away?"""

from __future__ import annotations

from enum import Enum

from app.session.snapshot import Snapshot
from core.sky.places import separation_deg
from core.sky.site import Site

# Nearer, it is the same field seen by another receiver or read off another map.
FAR_DEG = 0.1


class Change(Enum):
    """What the change means for what was measured in this axis state."""

    NOTHING_MEASURED = "there is nothing it could change, or the place is the same"
    PUT_RIGHT = "what was measured is computed anew"
    IN_DOUBT = "a correction or a move: only the person knows"


def change_to(site: Site, snapshot: Snapshot) -> Change:
    """What it means when `site` comes into use."""
    old = snapshot.site
    if old is None or not _has_measured(snapshot) or _where(old) == _where(site):
        return Change.NOTHING_MEASURED
    return Change.IN_DOUBT if apart_deg(old, site) > FAR_DEG else Change.PUT_RIGHT


def apart_deg(one: Site, other: Site) -> float:
    """How far apart two places lie, as an angle at the centre of the Earth."""
    places = one.longitude_deg, one.latitude_deg, other.longitude_deg, other.latitude_deg
    return float(separation_deg(*places))


def _has_measured(snapshot: Snapshot) -> bool:
    """By legs that were read, or by what the last turn of the bolts left known."""
    is_known = snapshot.guide.last_turn is not None
    return is_known or any(leg.utc_s.size for leg in snapshot.legs)


def _where(site: Site) -> tuple[float, float, float]:
    return site.latitude_deg, site.longitude_deg, site.elevation_m
