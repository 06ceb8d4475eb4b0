"""What the Pole page needs from outside, besides the session."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from app.session.places import Settings
from core.sky.horizon import Horizon
from core.sky.site import Air, Site


@dataclass(frozen=True)
class PoleParts:
    """`now`: seconds since 1970-01-01 UTC. `horizon_of`: what stands in the way at a site.

    `meadow`: the invented site for whoever has given none.
    """

    now: Callable[[], float]
    horizon_of: Callable[[Site], Horizon]
    settings: Settings
    meadow: tuple[Site, Air]
