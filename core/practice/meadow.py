"""Invented places to practise on, and the coming midnight there."""

from __future__ import annotations

import math

from core.language import marked
from core.sky.site import Air, Site

# Invented for practice; both points lie in the open Atlantic, so nobody's garden is meant.
NORTHERN_MEADOW = Site(47.0, -20.0, 300.0, marked("Practice meadow, north (invented)"))
SOUTHERN_MEADOW = Site(-33.0, -20.0, 300.0, marked("Practice meadow, south (invented)"))
MEADOW_AIR = Air(pressure_hpa=978.0, temperature_c=8.0)

DAY_S = 86400.0


def coming_midnight_utc_s(now_utc_s: float, longitude_deg: float) -> float:
    """The next local mean midnight after `now_utc_s` for a longitude (east positive), UTC seconds.

    Mean solar time is UTC plus longitude / 15 hours; the equation of time (a quarter of an hour)
    is neglected.
    """
    ahead_s = longitude_deg / 360.0 * DAY_S
    days = math.floor((now_utc_s + ahead_s) / DAY_S) + 1
    return days * DAY_S - ahead_s
