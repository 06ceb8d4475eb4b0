"""What in a log cannot be true: stars set or too fast, times to come, the air."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from core.alignment.drift.path import too_fast
from core.alignment.drift.prepared import Note, note
from core.alignment.driftlog.records import Leg
from core.finding import Code, Finding
from core.sky.clocks import format_utc
from core.sky.places import horizontal_deg
from core.sky.pressure import pressure_offer
from core.sky.refraction import standard_pressure_hpa
from core.sky.site import Air, Site


class LegDoubt(Code):
    """What in a log cannot be true, or need not be."""

    BELOW_HORIZON = "below horizon"
    LOCAL_TIME = "local time"
    TIME_PLACE_OR_STAR = "time, place or star"
    TOO_FAST = "too fast"
    IN_THE_FUTURE = "in the future"
    PRESSURE = "pressure"
    OTHER_PRESSURE = "pressure at sea level or in another unit"


Floats = NDArray[np.float64]

# Nothing computed from such a log would mean anything.
IMPOSSIBLE = (LegDoubt.BELOW_HORIZON, LegDoubt.TOO_FAST)

_HORIZON_DEG = -0.5  # a hill may lower the horizon, and the lift of the air there is uncertain
_UP_DEG = 5.0
_CLOCK_TOLERANCE_S = 60.0
_WEATHER_HPA = 70.0  # the air at one place varies by less


def implausible_legs(
    legs: Sequence[Leg], site: Site, air: Air, now_utc_s: float | None = None
) -> tuple[Note, ...]:
    """Notes on legs that cannot be right. `now_utc_s`: legs that end later are doubted too."""
    found = [_below_horizon(leg, site, air) for leg in legs]
    found += [_too_fast(leg) for leg in legs]
    if now_utc_s is not None:
        found += [_in_the_future(leg, now_utc_s) for leg in legs]
    return tuple(note for note in [*found, pressure_doubt(site, air)] if note is not None)


def _below_horizon(leg: Leg, site: Site, air: Air) -> Note | None:
    times = leg.utc_s[[0, leg.utc_s.size // 2, -1]]
    altitude_deg = _altitude_deg(leg, site, air, times)
    if altitude_deg.min() > _HORIZON_DEG:
        return None
    lowest = int(np.argmin(altitude_deg))
    return note(
        LegDoubt.BELOW_HORIZON,
        leg.label,
        depth=-altitude_deg[lowest],
        time=format_utc(float(round(times[lowest]))),
        cause=_likely_cause(leg, site, air),
    )


def _likely_cause(leg: Leg, site: Site, air: Air) -> Finding:
    middle = leg.utc_s[[leg.utc_s.size // 2]]
    zone_h = round(((site.longitude_deg + 180.0) % 360.0 - 180.0) / 15.0)
    for hours in (zone_h, zone_h + 1):  # standard time and summer time
        altitude_deg = _altitude_deg(leg, site, air, middle - 3600.0 * hours)[0]
        if hours and altitude_deg > _UP_DEG:
            return Finding.of(LegDoubt.LOCAL_TIME, hours=hours, altitude=altitude_deg)
    return Finding.of(LegDoubt.TIME_PLACE_OR_STAR)


def _altitude_deg(leg: Leg, site: Site, air: Air, utc_s: Floats) -> Floats:
    return horizontal_deg(leg.ra_deg, leg.dec_deg, site, air, utc_s)[1]


def _too_fast(leg: Leg) -> Note | None:
    reason = too_fast(leg)
    if reason is None:
        return None
    return note(LegDoubt.TOO_FAST, leg.label, reason=reason)


def _in_the_future(leg: Leg, now_utc_s: float) -> Note | None:
    ahead_s = float(leg.utc_s[-1]) - now_utc_s
    if ahead_s <= _CLOCK_TOLERANCE_S:
        return None
    return note(LegDoubt.IN_THE_FUTURE, leg.label, ahead_s=ahead_s)


def pressure_doubt(site: Site, air: Air) -> Note | None:
    """A pressure that is not the station's, or in another unit; None where it may be right."""
    standard_hpa = standard_pressure_hpa(site.elevation_m)
    if air.pressure_hpa <= 0.0 or abs(air.pressure_hpa - standard_hpa) < _WEATHER_HPA:
        return None
    offer = pressure_offer(air.pressure_hpa, site.elevation_m)
    if offer is not None:
        return note(LegDoubt.OTHER_PRESSURE, question=offer.question)
    return note(
        LegDoubt.PRESSURE,
        pressure=air.pressure_hpa,
        elevation=site.elevation_m,
        usual=standard_hpa,
    )
