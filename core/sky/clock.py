"""Time scales and sidereal time from Unix time, without a network."""

from __future__ import annotations

from datetime import UTC, datetime

import erfa
import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.language import say
from core.sky.earthrotation import SECONDS_PER_DAY, EarthOrientation, bundled, tai_minus_utc_s
from core.sky.site import Site

__all__ = [
    "EarthOrientation",
    "bundled",
    "earth_rotation_angle_rad",
    "format_utc",
    "julian_dates_tt",
    "julian_dates_ut1",
    "local_sidereal_time_hours",
    "parse_utc",
]

Floats = NDArray[np.float64]

UNIX_EPOCH_JD = 2440587.5
TT_MINUS_TAI_S = 32.184


def julian_dates_tt(utc_s: ArrayLike) -> tuple[Floats, Floats]:
    """Julian date of terrestrial time in two parts, whole days first, shaped as `utc_s`."""
    return _julian_dates(utc_s, tai_minus_utc_s(utc_s) + TT_MINUS_TAI_S)


def julian_dates_ut1(utc_s: ArrayLike, ut1_minus_utc_s: ArrayLike) -> tuple[Floats, Floats]:
    """Julian date of UT1 in two parts, whole days first, shaped as `utc_s`."""
    return _julian_dates(utc_s, np.asarray(ut1_minus_utc_s, dtype=np.float64))


def earth_rotation_angle_rad(utc_s: ArrayLike, ut1_minus_utc_s: ArrayLike) -> Floats:
    """Earth rotation angle in [0, 2π), shaped as `utc_s` (IERS Conventions 2010, eq. 5.15)."""
    return np.asarray(erfa.era00(*julian_dates_ut1(utc_s, ut1_minus_utc_s)), dtype=np.float64)


def local_sidereal_time_hours(utc_s: ArrayLike, site: Site) -> Floats:
    """Local apparent sidereal time in hours [0, 24), shaped as `utc_s` (IAU 2006/2000A)."""
    ut1 = julian_dates_ut1(utc_s, bundled().ut1_minus_utc_s(utc_s))
    greenwich_rad = erfa.gst06a(*ut1, *julian_dates_tt(utc_s))
    hours = np.degrees(greenwich_rad) / 15.0 + site.longitude_deg / 15.0
    return np.asarray(np.mod(hours, 24.0), dtype=np.float64)


def parse_utc(text: str) -> float:
    """Unix time of an ISO 8601 date and time; an offset is honoured, without one it is UTC.

    Raises ValueError whose text is a sentence.
    """
    written = text.strip().upper()
    try:
        moment = datetime.fromisoformat(written)
    except ValueError as error:
        raise ValueError(_not_a_time(text)) from error
    if ":" not in written and "T" not in written:
        raise ValueError(_not_a_time(text))  # a date alone would quietly mean midnight
    if moment.tzinfo is None:
        moment = moment.replace(tzinfo=UTC)
    return moment.timestamp()


def format_utc(utc_s: float) -> str:
    """ISO 8601 in UTC to the microsecond, no more digits than needed: `2026-11-24T20:15:30.25Z`.

    Raises ValueError, a sentence, for times outside the years 1 to 9999.
    """
    try:
        moment = datetime.fromtimestamp(utc_s, UTC)
    except (ValueError, OverflowError, OSError) as error:
        raise ValueError(
            say("{seconds} seconds is no time in the years 1 to 9999.", seconds=utc_s)
        ) from error
    text = moment.replace(tzinfo=None).isoformat()
    return (text.rstrip("0").rstrip(".") if "." in text else text) + "Z"


def _julian_dates(utc_s: ArrayLike, ahead_s: Floats) -> tuple[Floats, Floats]:
    days = np.asarray(utc_s, dtype=np.float64) / SECONDS_PER_DAY
    whole = np.floor(days)
    return UNIX_EPOCH_JD + whole, (days - whole) + ahead_s / SECONDS_PER_DAY


def _not_a_time(text: str) -> str:
    return say(
        "“{text}” is not a date and time; write it like 2026-11-24T20:15:30Z.",
        text=text.strip()[:40],
    )
