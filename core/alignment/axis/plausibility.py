"""What in a log cannot be true, in sentences: stars set or too fast, times to come, the air."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from core.alignment.drift.path import too_fast
from core.alignment.drift.prepared import Note
from core.alignment.driftlog.records import Leg
from core.language import say
from core.sky.clocks import format_utc
from core.sky.places import horizontal_deg
from core.sky.pressure import pressure_offer
from core.sky.refraction import standard_pressure_hpa
from core.sky.site import Air, Site

Floats = NDArray[np.float64]

BELOW_HORIZON = "below horizon"
TOO_FAST = "too fast"
IMPOSSIBLE = (BELOW_HORIZON, TOO_FAST)  # nothing computed from such a log would mean anything
IN_THE_FUTURE = "in the future"
SEA_LEVEL_PRESSURE = "pressure at sea level"

_HORIZON_DEG = -0.5  # a hill may lower the horizon, and the lift of the air there is uncertain
_UP_DEG = 5.0
_CLOCK_TOLERANCE_S = 60.0
_WEATHER_HPA = 70.0  # the air at one place varies by less


def implausible_legs(
    legs: Sequence[Leg], site: Site, air: Air, now_utc_s: float | None = None
) -> tuple[Note, ...]:
    """Sentences on legs that cannot be right. `now_utc_s`: legs that end later are doubted too."""
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
    return Note(
        BELOW_HORIZON,
        say(
            "The star of leg “{label}” was {depth:.0f}° below the horizon at {time}. {cause}",
            label=leg.label,
            depth=-altitude_deg[lowest],
            time=format_utc(float(round(times[lowest]))),
            cause=_likely_cause(leg, site, air),
        ),
        leg=leg.label,
    )


def _likely_cause(leg: Leg, site: Site, air: Air) -> str:
    middle = leg.utc_s[[leg.utc_s.size // 2]]
    zone_h = round(((site.longitude_deg + 180.0) % 360.0 - 180.0) / 15.0)
    for hours in (zone_h, zone_h + 1):  # standard time and summer time
        altitude_deg = _altitude_deg(leg, site, air, middle - 3600.0 * hours)[0]
        if hours and altitude_deg > _UP_DEG:
            return say(
                "Perhaps local time was taken for UTC: by a clock at UTC{hours:+d} it "
                "stood {altitude:.0f}° high. If so, write the times with their offset, "
                "like 20:15:30{hours:+03d}:00.",
                hours=hours,
                altitude=altitude_deg,
            )
    return say(
        "Check that the times are UTC and not local time, the place (longitude counts "
        "east), and the star."
    )


def _altitude_deg(leg: Leg, site: Site, air: Air, utc_s: Floats) -> Floats:
    return horizontal_deg(leg.ra_deg, leg.dec_deg, site, air, utc_s)[1]


def _too_fast(leg: Leg) -> Note | None:
    reason = too_fast(leg)
    if reason is None:
        return None
    return Note(
        TOO_FAST,
        say("Leg “{label}” cannot be right: {reason}", label=leg.label, reason=reason),
        leg=leg.label,
    )


def _in_the_future(leg: Leg, now_utc_s: float) -> Note | None:
    ahead_s = float(leg.utc_s[-1]) - now_utc_s
    if ahead_s <= _CLOCK_TOLERANCE_S:
        return None
    ahead = (
        say("{hours:.1f} hours", hours=ahead_s / 3600.0)
        if ahead_s < 172_800.0
        else say("{days:.0f} days", days=ahead_s / 86400.0)
    )
    return Note(
        IN_THE_FUTURE,
        say(
            "Leg “{label}” ends {ahead} in the future. Either local time was taken for UTC, "
            "or the clock of this computer or of the one that wrote the log is wrong.",
            label=leg.label,
            ahead=ahead,
        ),
        leg=leg.label,
    )


def pressure_doubt(site: Site, air: Air) -> Note | None:
    """A pressure that is not the station's, or in another unit; None where it may be right."""
    standard_hpa = standard_pressure_hpa(site.elevation_m)
    if air.pressure_hpa <= 0.0 or abs(air.pressure_hpa - standard_hpa) < _WEATHER_HPA:
        return None
    offer = pressure_offer(air.pressure_hpa, site.elevation_m)
    if offer is not None:
        return Note(SEA_LEVEL_PRESSURE, str(offer.question))
    return Note(
        SEA_LEVEL_PRESSURE,
        say(
            "The pressure of {pressure:.0f} hPa does not fit {elevation:.0f} m, where about "
            "{usual:.0f} hPa is usual. It must be the pressure at the place, not that "
            "reduced to sea level which weather reports give.",
            pressure=air.pressure_hpa,
            elevation=site.elevation_m,
            usual=standard_hpa,
        ),
    )
