"""Where a target crosses the meridian, and when a German equatorial mount may change sides there.

Such a mount looks east with its tube west of the pier, and west with the tube east of it, in both
hemispheres. Where a target crosses the meridian the tube has to change sides, above the pole and,
for a target that never sets, also below it.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

import erfa
import numpy as np

from core.language import marked
from core.mount.rotation import SIDEREAL_DEG_PER_HOUR
from core.sky import place
from core.sky.refraction import Refraction
from core.sky.site import Air, Site


class Side(Enum):
    """Where the tube is, as seen from the pier."""

    WEST = marked("west of the pier, looking east")
    EAST = marked("east of the pier, looking west")

    @property
    def other(self) -> Side:
        return Side.EAST if self is Side.WEST else Side.WEST


@dataclass(frozen=True)
class Limits:
    """What a German equatorial mount allows, and how long its flip takes.

    `past_meridian_deg`: hour angle past the meridian at which it must stop; negative when it has
    to stop before. `flips_from_deg`: how far past the meridian it first agrees to change sides.
    """

    past_meridian_deg: float
    flips_from_deg: float = 0.0
    turning_s: float = 90.0
    recentring_s: float = 180.0


@dataclass(frozen=True)
class Crossing:
    """A passage over the meridian; `upper` between the pole and the far horizon, not below it.

    The flip fits between `earliest_utc_s` and `latest_utc_s`; where the second comes first, the
    mount has to stop at it and wait. `altitude_deg` as seen.
    """

    utc_s: float
    upper: bool
    altitude_deg: float
    earliest_utc_s: float
    latest_utc_s: float
    before: Side

    @property
    def after(self) -> Side:
        return self.before.other


def crossings(
    ra_deg: float,
    dec_deg: float,
    site: Site,
    air: Air,
    session_utc_s: tuple[float, float],
    limits: Limits,
) -> tuple[Crossing, ...]:
    """Passages over the meridian above the horizon, in order, whose flip can touch the session."""
    margin_s = _seconds(max(abs(limits.past_meridian_deg), limits.flips_from_deg))
    span = session_utc_s[0] - margin_s, session_utc_s[1] + margin_s
    hour_angle, declination = place.hour_angle_and_declination(ra_deg, dec_deg, site, span)
    halves = np.arange(np.ceil(hour_angle[0] / np.pi), np.floor(hour_angle[1] / np.pi) + 1.0)
    times = np.interp(halves * np.pi, hour_angle, span)
    _, altitude = erfa.hd2ae(halves * np.pi, declination, np.radians(site.latitude_deg))
    seen_deg = np.degrees(Refraction.of(air).observed_altitude_rad(altitude))
    rows = zip(times.tolist(), halves.tolist(), seen_deg.tolist(), strict=True)
    return tuple(
        _crossing(utc_s, half % 2.0 == 0.0, height, limits)
        for utc_s, half, height in rows
        if height > 0.0
    )


def _crossing(utc_s: float, upper: bool, altitude_deg: float, limits: Limits) -> Crossing:
    agreed_deg = max(limits.flips_from_deg, -limits.past_meridian_deg)
    return Crossing(
        utc_s=utc_s,
        upper=upper,
        altitude_deg=altitude_deg,
        earliest_utc_s=utc_s + _seconds(agreed_deg),
        latest_utc_s=utc_s + _seconds(limits.past_meridian_deg),
        before=Side.WEST if upper else Side.EAST,
    )


def _seconds(hour_angle_deg: float) -> float:
    return hour_angle_deg / SIDEREAL_DEG_PER_HOUR * 3600.0
