"""Time zones as people name them, and the civil time they give.

Names and rules are those of the IANA time zone database, read by zoneinfo from the system or from
the package tzdata.
"""

from __future__ import annotations

import difflib
import re
import zoneinfo
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta, timezone, tzinfo
from functools import cache, reduce

from core.language import marked, say

_OFFSET = re.compile(r"(?:UTC|GMT)?\s*([+\-−])\s*(\d{1,2})(?::?([0-5]\d))?", re.IGNORECASE)
_WEST_MIN, _EAST_MIN = -12 * 60, 14 * 60  # no civil time is farther from UTC
FAR_H = 3.5  # civil time so far from the Sun's is rare: western China comes near it


class UnusableZone(ValueError):
    """The message is a sentence for the person who typed."""


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

    def doubt(self, longitude_deg: float, utc_s: float) -> str | None:
        """A sentence when this zone cannot well be at that longitude (east positive)."""
        by_sun_h = longitude_deg / 15.0
        apart_h = (self.offset_h(utc_s) - by_sun_h + 12.0) % 24.0 - 12.0
        if abs(apart_h) <= FAR_H:
            return None
        return say(
            "{zone} is {hours:.0f} hours away from the Sun's time at this longitude: "
            "the time zone is that of another place, or the longitude has the wrong "
            "side (E or W).",
            zone=self.name,
            hours=abs(apart_h),
        )


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
        raise UnusableZone(_which(plain, found))
    try:
        return Zone(found[0], zoneinfo.ZoneInfo(found[0]))
    except (OSError, ValueError) as error:
        raise UnusableZone(
            say(
                "The rules of {zone} cannot be read on this computer ({problem}); give the "
                "offset instead, like UTC+2.",
                zone=found[0],
                problem=error,
            )
        ) from error


def _by_offset(text: str, sign: str, hours: str, minutes: str | None) -> Zone:
    ahead_min = 60 * int(hours) + int(minutes or 0)
    ahead_min = ahead_min if sign == "+" else -ahead_min
    if not _WEST_MIN <= ahead_min <= _EAST_MIN:
        raise UnusableZone(
            say("“{text}” is no offset from UTC: they go from −12 to +14 hours.", text=text[:20])
        )
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


def _which(text: str, found: list[str]) -> str:
    if not text:
        return say(
            "The time zone is empty; write a name like Europe/Lisbon or an offset like UTC+2."
        )
    if found:
        return say(
            "“{text}” may be {names}: write which.",
            text=text[:40],
            names=reduce(_either, found[:3]),
        )
    places = {_key(name.rpartition("/")[2]): name for name in names()}
    near = difflib.get_close_matches(_key(text.rpartition("/")[2]), places, n=1, cutoff=0.6)
    sentence = marked("“{text}” is no time zone known here. An offset like UTC+2 will do as well.")
    if near:
        sentence = marked(
            "“{text}” is no time zone known here. Is {place} meant? "
            "An offset like UTC+2 will do as well."
        )
    return say(sentence, text=text[:40], place=places[near[0]] if near else "")


def _either(first: str, second: str) -> str:
    return say("{first} or {second}", first=first, second=second)
