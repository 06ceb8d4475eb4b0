"""Finding tonight's target by its name."""

from __future__ import annotations

import math
from dataclasses import dataclass

from core.sky import catalogues
from core.sky.places import apparent_place_rad


@dataclass(frozen=True)
class Found:
    """`declination_deg` of date."""

    name: str
    declination_deg: float


def find(text: str, utc_s: float) -> Found | None:
    """A cluster, nebula, galaxy or bright star of that name or number."""
    thing = catalogues.load_deep_sky().find(text)
    if thing is not None:
        _, declination = apparent_place_rad(thing.ra_deg, thing.dec_deg, utc_s)
        return Found(thing.title, math.degrees(declination))
    star = catalogues.load_stars().find(text)
    if star is None:
        return None
    _, declination = apparent_place_rad(*catalogues.load_stars().at_epoch(star, utc_s), utc_s)
    return Found(star.name, math.degrees(declination))
