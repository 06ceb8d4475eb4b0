"""What is known of the person's polar-axis sight, and the last reading taken in it."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import asdict, dataclass, replace
from typing import Any

from app.night.places import Settings
from core.alignment.polarscope.view import View
from core.sky.horizon import Horizon
from core.sky.site import Air, Site

KEY = "polar-axis sight"
VERSION = 1
SAME_NIGHT_S = 18 * 3600.0


@dataclass(frozen=True)
class PolarScopeReading:
    """The pole star seen at a clock angle (degrees from 12) and distance, once at one place."""

    utc_s: float
    clock_angle_deg: float
    distance_arcmin: float
    latitude_deg: float
    longitude_deg: float


@dataclass(frozen=True)
class PolarScope:
    """`field_deg`: diameter of the field of view. `finder`: how one looks at the star field."""

    view: View = View.INVERTED
    field_deg: float = 5.0
    sighting: PolarScopeReading | None = None
    finder: View = View.ERECT

    def at(self, site: Site, utc_s: float) -> PolarScope:
        """Without a reading from another night or place."""
        seen = self.sighting
        if seen is None:
            return self
        same = (seen.latitude_deg, seen.longitude_deg) == (site.latitude_deg, site.longitude_deg)
        return self if same and abs(utc_s - seen.utc_s) < SAME_NIGHT_S else self.without_reading()

    def without_reading(self) -> PolarScope:
        return replace(self, sighting=None)


def kept(settings: Settings) -> PolarScope:
    """As it was kept last; the usual sight when nothing usable was."""
    text = settings.get_setting(KEY)
    try:
        return _read(text) if text["version"] == VERSION else PolarScope()
    except (KeyError, TypeError, ValueError):
        return PolarScope()


def keep(settings: Settings, sight: PolarScope) -> None:
    sighting = None if sight.sighting is None else asdict(sight.sighting)
    views = {"view": sight.view.name, "finder": sight.finder.name}
    record = {**views, "field_deg": sight.field_deg, "sighting": sighting}
    settings.put_setting(KEY, {"version": VERSION, **record})


def _read(text: Any) -> PolarScope:
    sighting = text["sighting"]
    found = (
        None
        if sighting is None
        else PolarScopeReading(**{k: float(v) for k, v in sighting.items()})
    )
    field_deg = float(text["field_deg"])
    if not (math.isfinite(field_deg) and field_deg > 0.0):
        raise ValueError("not a field of view")
    return PolarScope(View[text["view"]], field_deg, found, View[text["finder"]])


# What the Pole page needs from outside, besides the session.


@dataclass(frozen=True)
class PoleParts:
    """`now`: seconds since 1970-01-01 UTC. `horizon_of`: what stands in the way at a site.

    `meadow`: the invented site for whoever has given none.
    """

    now: Callable[[], float]
    horizon_of: Callable[[Site], Horizon]
    settings: Settings
    meadow: tuple[Site, Air]
