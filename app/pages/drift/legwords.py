"""What the list of legs says of each."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from core.alignment.driftlog.records import Leg
from core.language import say

if TYPE_CHECKING:
    from core.alignment.axis.legrate import LegTrend

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
        return LegWords(leg.label, say("no drift known yet"), "", _extent(leg))
    return LegWords(leg.label, drift_rate(trend), place(trend), _extent(leg, trend))


def drift_rate(trend: LegTrend) -> str:
    """``0.19″ ± 0.03″ a minute, south``: the ± is the 95 % half-width."""
    half = trend.interval_factor * trend.drift_sigma_arcsec_per_min
    rate = trend.drift_arcsec_per_min
    digits = 2 if not 0 < half < 0.01 else 3
    if abs(rate) <= half:
        side = say("no drift within the ±")
    else:
        side = say("north") if rate > 0 else say("south")
    return say(
        "{rate}″ ± {width}″ a minute, {side}",
        rate=f"{abs(rate):.{digits}f}",
        width=f"{half:.{digits}f}",
        side=side,
    )


def place(trend: LegTrend) -> str:
    """``2.1 h east of the meridian, 45° high``."""
    return say(
        "{where}, {altitude:.0f}° high",
        where=hour_angle(trend.hour_angle_deg),
        altitude=trend.altitude_deg,
    )


def hour_angle(hour_angle_deg: float) -> str:
    hours = math.remainder(hour_angle_deg, 360.0) / DEGREES_PER_HOUR
    if abs(hours) < ON_THE_MERIDIAN_H:
        return say("on the meridian")
    if hours > 0:
        return say("{hours:.1f} h west of the meridian", hours=hours)
    return say("{hours:.1f} h east of the meridian", hours=-hours)


def gap_words(leg: Leg) -> str:
    """``, a gap of 12.0 min``: where readings stopped and went on; empty without any."""
    if not leg.pauses.size:
        return ""
    minutes = float((leg.utc_s[leg.pauses + 1] - leg.utc_s[leg.pauses]).max()) / 60.0
    if leg.pauses.size == 1:
        return say(", a gap of {minutes:.1f} min", minutes=minutes)
    number = int(leg.pauses.size)
    return say(", {number} gaps of up to {minutes:.1f} min", number=number, minutes=minutes)


def _extent(leg: Leg, trend: LegTrend | None = None) -> str:
    count = len(leg.utc_s)
    minutes = (leg.utc_s[-1] - leg.utc_s[0]) / 60.0 if count else 0.0
    if count == 1:
        said = say("1 reading in {minutes:.1f} min", minutes=minutes)
    else:
        said = say("{count:,} readings in {minutes:.1f} min", count=count, minutes=minutes)
    said += gap_words(leg)
    aside = 0 if trend is None else int(trend.rejected.sum())
    return say("{extent}, {aside} set aside", extent=said, aside=aside) if aside else said
