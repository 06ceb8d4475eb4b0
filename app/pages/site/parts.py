"""What the Site page needs from outside."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from app.session.places import Places
from app.session.snapshot import Snapshot


@dataclass(frozen=True)
class SiteParts:
    """`now`: seconds since 1970-01-01 UTC. `own_zone`: the computer's time zone, by its name.

    `snapshot`: of tonight.
    """

    now: Callable[[], float]
    places: Places
    own_zone: str
    snapshot: Callable[[], Snapshot]
