"""What the list of legs says of each."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from core.alignment.driftlog import Leg

if TYPE_CHECKING:
    from core.alignment.trend import LegTrend

DEGREES_PER_HOUR = 15.0
ON_THE_MERIDIAN_H = 0.05  # three minutes of time; the motion there is not worth a number


@dataclass(frozen=True)
class LegWords:
    """`rate`: the drift; `place`: where the star stood; `extent`: how long and how often."""

    label: str
    rate: str
    place: str
    extent: str


def leg_words(leg: Leg, trend: LegTrend | None) -> LegWords:
    if trend is None:
        return LegWords(leg.label, "no drift known yet", "", _extent(leg))
    return LegWords(leg.label, drift_rate(trend), place(trend), _extent(leg, trend))


def drift_rate(trend: LegTrend) -> str:
    """``0.19″ ± 0.03″ a minute, south``: the ± is the 95 % half-width."""
    half = trend.interval_factor * trend.drift_sigma_arcsec_per_min
    rate = trend.drift_arcsec_per_min
    digits = 2 if not 0 < half < 0.01 else 3
    side = "no drift within the ±" if abs(rate) <= half else "north" if rate > 0 else "south"
    return f"{abs(rate):.{digits}f}″ ± {half:.{digits}f}″ a minute, {side}"


def place(trend: LegTrend) -> str:
    """``2.1 h east of the meridian, 45° high``."""
    return f"{hour_angle(trend.hour_angle_deg)}, {trend.altitude_deg:.0f}° high"


def hour_angle(hour_angle_deg: float) -> str:
    hours = math.remainder(hour_angle_deg, 360.0) / DEGREES_PER_HOUR
    if abs(hours) < ON_THE_MERIDIAN_H:
        return "on the meridian"
    return f"{abs(hours):.1f} h {'west' if hours > 0 else 'east'} of the meridian"


def _extent(leg: Leg, trend: LegTrend | None = None) -> str:
    count = len(leg.utc_s)
    minutes = (leg.utc_s[-1] - leg.utc_s[0]) / 60.0 if count else 0.0
    readings = "1 reading" if count == 1 else f"{count:,} readings"
    aside = 0 if trend is None else int(trend.rejected.sum())
    left_out = f", {aside} set aside" if aside else ""
    return f"{readings} in {minutes:.1f} min{left_out}"
