"""Time scales, sidereal time and civil time from Unix time, without a network."""

from __future__ import annotations

import difflib
import re
import zoneinfo
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta, timezone, tzinfo
from functools import cache
from pathlib import Path

import erfa
import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.finding import BrokenInstallation, Code, Finding, Refused
from core.sky.site import Site
from core.units import SECONDS_PER_DAY, SIDEREAL_ARCSEC_PER_S


class RotationTable(Code):
    """How far the table of the Earth's rotation reaches."""

    ENDS = "ends"
    BEGINS = "begins"
    OUT_OF_ORDER = "out of order"
    UP_TO = "up to"
    MEASURED = "measured"
    MEASURED_LONG_AGO = "measured long ago"
    UNUSABLE = "unusable"


class TimeFault(Code):
    """What is wrong with a time."""

    OUTSIDE_ALL_YEARS = "outside all years"
    NO_TIME = "no time"


class UnusableMoment(Refused):
    """What was given is no time."""


class ZoneDoubt(Code):
    """What is wrong with a time zone."""

    FAR_FROM_THE_SUN = "far from the sun"
    UNREADABLE = "unreadable"
    NO_OFFSET = "no offset"
    EMPTY = "empty"
    SEVERAL = "several"
    UNKNOWN = "unknown"
    UNKNOWN_BUT_NEAR = "unknown but near"


# How far the Earth's rotation (UT1) is from UTC, read offline from the bundled IERS table.

Floats = NDArray[np.float64]

UNIX_EPOCH_MJD = 40587.0

# Columns of finals2000A.all, counted from 0 (IERS, readme.finals2000A: columns 8-15 and 59-68).
_MJD = slice(7, 15)
_UT1_MINUS_UTC = slice(58, 68)
_KIND = slice(57, 58)  # of UT1−UTC: "I" as measured, "P" as predicted


def tai_minus_utc_s(utc_s: ArrayLike) -> Floats:
    """Seconds TAI is ahead of UTC, by ERFA's table of leap seconds.

    Past the end of that table the last value holds. ERFA's own look-up warns about such years;
    this one need not, since one second unknown to TT moves no star by a thousandth of an arcsecond.
    """
    table = erfa.leap_seconds.get()
    months = (table["year"].astype(int) - 1970) * 12 + table["month"].astype(int) - 1
    starts_s = months.astype("datetime64[M]").astype("datetime64[s]").astype(np.float64)
    row = np.searchsorted(starts_s, np.asarray(utc_s, dtype=np.float64), side="right") - 1
    return np.asarray(table["tai_utc"][np.maximum(row, 0)], dtype=np.float64)


@dataclass(frozen=True, eq=False)
class EarthOrientation:
    """UT1 by days: `utc_s` (n,) Unix time, increasing; `ut1_minus_tai_s` (n,), seconds.

    UT1−TAI is kept because it has no leap seconds and may be interpolated. Up to `measured_to_s`
    the values are measured, later ones predicted; None when the table does not say.
    """

    utc_s: Floats
    ut1_minus_tai_s: Floats
    measured_to_s: float | None = None

    @staticmethod
    def read(path: Path) -> EarthOrientation:
        """The table in IERS finals2000A form. Raises BrokenInstallation if it is unusable.

        Read by its fixed columns: ten milliseconds, where a general reader takes half a second.
        """
        try:
            lines = path.read_text(encoding="ascii").splitlines()
            rows = [line for line in lines if line[_UT1_MINUS_UTC].strip()]
            mjd = np.array([float(line[_MJD]) for line in rows])
            ut1_minus_utc_s = np.array([float(line[_UT1_MINUS_UTC]) for line in rows])
            measured = sum(line[_KIND] == "I" for line in rows)
        except (OSError, ValueError) as error:
            raise _unusable(path, error) from error
        if mjd.size < 2 or np.any(np.diff(mjd) <= 0):
            raise _unusable(path, RotationTable.OUT_OF_ORDER)
        utc_s = (mjd - UNIX_EPOCH_MJD) * SECONDS_PER_DAY
        measured_to_s = float(utc_s[measured - 1]) if measured else None
        return EarthOrientation(utc_s, ut1_minus_utc_s - tai_minus_utc_s(utc_s), measured_to_s)

    def ut1_minus_utc_s(self, utc_s: ArrayLike) -> Floats:
        """UT1−UTC in seconds, shaped as `utc_s`; outside the table its nearest value is carried."""
        times = np.asarray(utc_s, dtype=np.float64)
        ut1_minus_tai_s = np.interp(times, self.utc_s, self.ut1_minus_tai_s)
        return np.asarray(ut1_minus_tai_s + tai_minus_utc_s(times), dtype=np.float64)

    def possible_error_s(self, utc_s: float) -> float:
        """How wrong the carried value may be: the largest change seen over a span as long.

        Zero inside the table. Spans over half the table's length take the rate of that half.
        """
        outside_s = max(utc_s - self.utc_s[-1], self.utc_s[0] - utc_s, 0.0)
        days = int(np.ceil(outside_s / SECONDS_PER_DAY))
        if days == 0:
            return 0.0
        seen = min(days, self.utc_s.size // 2)
        change = self.ut1_minus_tai_s[seen:] - self.ut1_minus_tai_s[:-seen]
        return float(np.max(np.abs(change))) * days / seen

    def loss(self, utc_s: float) -> Finding | None:
        """What is lost at a time outside the table; None inside it."""
        error_s = self.possible_error_s(utc_s)
        if error_s == 0.0:
            return None
        code, day = RotationTable.ENDS, self.utc_s[-1]
        if utc_s < self.utc_s[0]:
            code, day = RotationTable.BEGINS, self.utc_s[0]
        return Finding.of(
            code,
            day=_day(day),
            seconds=error_s,
            arcsec=error_s * SIDEREAL_ARCSEC_PER_S,
            percent=_share_percent(error_s),
        )

    def age(self, utc_s: float) -> Finding:
        """How old the table is at a time; outside it, what is lost."""
        lost = self.loss(utc_s)
        if lost is not None:
            return lost
        end = _day(self.utc_s[-1])
        if self.measured_to_s is None:
            return Finding.of(RotationTable.UP_TO, end=end)
        days = round((utc_s - self.measured_to_s) / SECONDS_PER_DAY)
        code = RotationTable.MEASURED
        if days > 1:
            code = RotationTable.MEASURED_LONG_AGO
        return Finding.of(code, day=_day(self.measured_to_s), days=days, end=end)


@cache
def bundled() -> EarthOrientation:
    """The table that comes with the package astropy-iers-data, read once; never downloaded."""
    import astropy_iers_data  # type: ignore[import-untyped]

    return EarthOrientation.read(Path(astropy_iers_data.IERS_A_FILE))


def _share_percent(error_s: float) -> str:
    """An hour angle wrong by x radians mixes the two axis errors by x: that share, rounded up."""
    share = 100.0 * np.radians(error_s * SIDEREAL_ARCSEC_PER_S / 3600.0)
    return f"{np.ceil(share * 100.0) / 100.0:.2f}"


def _day(utc_s: float) -> str:
    return str(np.datetime64(int(utc_s), "s").astype("datetime64[D]"))


def _unusable(path: Path, reason: Exception | Code) -> BrokenInstallation:
    return BrokenInstallation(RotationTable.UNUSABLE, path=path, reason=reason)


# Time scales and sidereal time from Unix time, without a network.

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

    Raises UnusableMoment.
    """
    written = text.strip().upper()
    try:
        moment = datetime.fromisoformat(written)
    except ValueError as error:
        raise _not_a_time(text) from error
    if ":" not in written and "T" not in written:
        raise _not_a_time(text)  # a date alone would quietly mean midnight
    if moment.tzinfo is None:
        moment = moment.replace(tzinfo=UTC)
    return moment.timestamp()


def format_utc(utc_s: float) -> str:
    """ISO 8601 in UTC to the microsecond, no more digits than needed: `2026-11-24T20:15:30.25Z`.

    Raises UnusableMoment for times outside the years 1 to 9999.
    """
    try:
        moment = datetime.fromtimestamp(utc_s, UTC)
    except (ValueError, OverflowError, OSError) as error:
        raise UnusableMoment(TimeFault.OUTSIDE_ALL_YEARS, seconds=utc_s) from error
    text = moment.replace(tzinfo=None).isoformat()
    return (text.rstrip("0").rstrip(".") if "." in text else text) + "Z"


def _julian_dates(utc_s: ArrayLike, ahead_s: Floats) -> tuple[Floats, Floats]:
    days = np.asarray(utc_s, dtype=np.float64) / SECONDS_PER_DAY
    whole = np.floor(days)
    return UNIX_EPOCH_JD + whole, (days - whole) + ahead_s / SECONDS_PER_DAY


def _not_a_time(text: str) -> UnusableMoment:
    return UnusableMoment(TimeFault.NO_TIME, text=text.strip()[:40])


# Time zones as people name them, and the civil time they give.
#
# Names and rules are those of the IANA time zone database, read by zoneinfo from the system or from
# the package tzdata.

_OFFSET = re.compile(r"(?:UTC|GMT)?\s*([+\-−])\s*(\d{1,2})(?::?([0-5]\d))?", re.IGNORECASE)
_WEST_MIN, _EAST_MIN = -12 * 60, 14 * 60  # no civil time is farther from UTC
FAR_H = 3.5  # civil time so far from the Sun's is rare: western China comes near it


class UnusableZone(Refused):
    """What was typed is no time zone known here."""


@dataclass(frozen=True)
class Zone:
    """`name` as the database spells it, or like "UTC+05:30"; it can be read back by `find`."""

    name: str
    rules: tzinfo

    def civil(self, utc_s: float) -> datetime:
        """Date and time of the clocks there."""
        return datetime.fromtimestamp(utc_s, self.rules)

    def offset_h(self, utc_s: float) -> float:
        """Hours ahead of UTC."""
        ahead = self.civil(utc_s).utcoffset()
        return 0.0 if ahead is None else ahead.total_seconds() / 3600.0

    def offset_words(self, utc_s: float) -> str:
        """Like "UTC+01:00"."""
        return _offset_name(round(self.offset_h(utc_s) * 60.0))

    def doubt(self, longitude_deg: float, utc_s: float) -> Finding | None:
        """Something to ask when this zone cannot well be at that longitude (east positive)."""
        by_sun_h = longitude_deg / 15.0
        apart_h = (self.offset_h(utc_s) - by_sun_h + 12.0) % 24.0 - 12.0
        if abs(apart_h) <= FAR_H:
            return None
        return Finding.of(ZoneDoubt.FAR_FROM_THE_SUN, zone=self.name, hours=abs(apart_h))


UTC_ZONE = Zone("UTC", UTC)


@cache
def names() -> tuple[str, ...]:
    """All names of the database, in order; takes some tens of milliseconds the first time."""
    return tuple(sorted(zoneinfo.available_timezones()))


def find(text: str) -> Zone:
    """The zone of a name ("Europe/Lisbon", "lisbon") or offset ("UTC+5:30", "-3").

    Raises UnusableZone.
    """
    plain = text.strip()
    if plain.upper() in ("UTC", "GMT", "Z"):
        return UTC_ZONE
    offset = _OFFSET.fullmatch(plain)
    if offset is not None:
        return _by_offset(plain, *offset.groups())
    found = _matching(plain)
    if len(found) != 1:
        raise _which(plain, found)
    try:
        return Zone(found[0], zoneinfo.ZoneInfo(found[0]))
    except (OSError, ValueError) as error:
        raise UnusableZone(ZoneDoubt.UNREADABLE, zone=found[0], problem=error) from error


def _by_offset(text: str, sign: str, hours: str, minutes: str | None) -> Zone:
    ahead_min = 60 * int(hours) + int(minutes or 0)
    ahead_min = ahead_min if sign == "+" else -ahead_min
    if not _WEST_MIN <= ahead_min <= _EAST_MIN:
        raise UnusableZone(ZoneDoubt.NO_OFFSET, text=text[:20])
    return Zone(_offset_name(ahead_min), timezone(timedelta(minutes=ahead_min)))


def _offset_name(ahead_min: int) -> str:
    sign = "+" if ahead_min >= 0 else "−"
    return f"UTC{sign}{abs(ahead_min) // 60:02d}:{abs(ahead_min) % 60:02d}"


def _matching(text: str) -> list[str]:
    """Names equal to the text, else those whose place is the text."""
    wanted = _key(text)
    whole = [name for name in names() if _key(name) == wanted]
    return whole or [name for name in names() if _key(name.rpartition("/")[2]) == wanted]


def _key(name: str) -> str:
    return name.casefold().replace("_", " ").strip()


def _which(text: str, names_found: list[str]) -> UnusableZone:
    if not text:
        return UnusableZone(ZoneDoubt.EMPTY)
    if names_found:
        return UnusableZone(ZoneDoubt.SEVERAL, text=text[:40], names=tuple(names_found[:3]))
    places = {_key(name.rpartition("/")[2]): name for name in names()}
    near = difflib.get_close_matches(_key(text.rpartition("/")[2]), places, n=1, cutoff=0.6)
    if near:
        return UnusableZone(ZoneDoubt.UNKNOWN_BUT_NEAR, text=text[:40], place=places[near[0]])
    return UnusableZone(ZoneDoubt.UNKNOWN, text=text[:40])
