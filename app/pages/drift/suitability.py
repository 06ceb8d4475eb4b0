"""Which bright stars are good for a leg now, and for which direction of the axis."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from core.language import marked, say

if TYPE_CHECKING:
    from core.sky.catalogues import StarNow

# A star crossing the meridian shows the azimuth of the axis, one six hours off it the altitude;
# these limits keep at least 90 % of either effect.
NEAR_MERIDIAN_DEG = 25.0
FAR_FROM_MERIDIAN_DEG = 65.0
LOWEST_DEG = 15.0  # below, the air is too restless
LOWEST_ON_MERIDIAN_DEG = 30.0
FARTHEST_FROM_EQUATOR_DEG = 70.0  # nearer the pole an east or west offset mixes in

ANY, MERIDIAN, EAST, WEST = "any", "meridian", "east", "west"
COMPASS = (
    marked("north"),
    marked("north-east"),
    marked("east"),
    marked("south-east"),
    marked("south"),
    marked("south-west"),
    marked("west"),
    marked("north-west"),
)


@dataclass(frozen=True)
class StarLine:
    """`use` is one of MERIDIAN, EAST, WEST, or ANY when it suits neither."""

    now: StarNow
    use: str
    title: str
    where: str


def star_line(now: StarNow) -> StarLine:
    """Two lines of text for the list of stars."""
    use = suits(now)
    bright = say("magnitude {magnitude:.1f}", magnitude=now.star.magnitude)
    title = f"{now.star.name}   {bright}"
    if now.star.constellation not in now.star.name:
        title += f", {now.star.constellation}"
    azimuth = f"{compass(now.azimuth_deg)} ({round(now.azimuth_deg) % 360}°)"
    where = say("{where}, {altitude:.0f}° high", where=azimuth, altitude=now.altitude_deg)
    said = {
        MERIDIAN: say("shows azimuth"),
        EAST: say("shows altitude"),
        WEST: say("shows altitude"),
    }
    return StarLine(now, use, title, f"{where}; {said[use]}" if use in said else where)


def suits(now: StarNow) -> str:
    hour_angle = math.remainder(now.hour_angle_deg, 360.0)
    if abs(now.star.dec_deg) > FARTHEST_FROM_EQUATOR_DEG or now.altitude_deg < LOWEST_DEG:
        return ANY
    if abs(hour_angle) <= NEAR_MERIDIAN_DEG:
        return MERIDIAN if now.altitude_deg >= LOWEST_ON_MERIDIAN_DEG else ANY
    if FAR_FROM_MERIDIAN_DEG <= abs(hour_angle) <= 180.0 - FAR_FROM_MERIDIAN_DEG:
        return WEST if hour_angle > 0 else EAST
    return ANY


def compass(azimuth_deg: float) -> str:
    """One of eight directions in words; azimuth from north through east."""
    return say(COMPASS[round(azimuth_deg / 45.0) % 8])
