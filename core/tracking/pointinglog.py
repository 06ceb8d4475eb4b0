"""What the hand control shows, as a remark in a list of stars says it: ICRS, or of date."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass

from core.alignment.driftlog.records import Rejected
from core.alignment.driftlog.table import (
    SEPARATORS,
    doubled_sentence,
    fitted,
    is_remark,
    names_in,
    number,
    shown,
    split,
)
from core.finding import Code, Finding
from core.sky.clocks import parse_utc
from core.sky.site import Site
from core.tracking.pointing import (
    EAST_OF_PIER,
    WEST_OF_PIER,
    PointedStar,
    UnusablePointing,
    sighting_of,
)


class PointingList(Code):
    """What is wrong with a list of stars."""

    COORDINATES = "coordinates"
    LONG = "long"
    DOUBLED = "doubled"
    NOTHING = "nothing"
    NOTHING_BUT = "nothing but"
    NO_NAMES = "no names"
    NUMBER = "number"
    BEYOND = "beyond"
    SIDE = "side"


_REMARK = re.compile(r"mount[ _-]?coordinates?(?!\w)[\s:=]*(.*)", re.IGNORECASE | re.DOTALL)
_OF_DATE = ("ofdate", "date", "jnow", "epochofdate", "equinoxofdate")
_ICRS = ("icrs", "j2000", "j2000.0", "2000", "2000.0")


def is_of_date(remark: str, line_number: int) -> bool | None:
    """Whether the mount's coordinates are of date from here on; None when a remark is another.

    Raises UnusablePointing for a word that is neither: the two differ by a third of a degree now,
    so that a guess would be taken for an error of the mount.
    """
    said = _REMARK.match(remark.strip(' \t,;"').lstrip("# \t"))
    if said is None:
        return None
    word = re.sub(r"[\s_-]", "", said[1].lower())
    if word in _OF_DATE:
        return True
    if word in _ICRS:
        return False
    raise UnusablePointing(PointingList.COORDINATES, line=line_number, text=shown(said[1]))


# Reads sightings for pointing from CSV text.
#
# Columns `utc,mount_ra_deg,mount_dec_deg,star_ra_deg,star_dec_deg[,side][,star]` in any order; a
# line `# mount_coordinates: of date` (else ICRS) says what the hand control shows; `side` is east
# or west. Where `;` or a tab separates the fields, a comma may be the decimal sign.

REQUIRED = ("utc", "mount_ra_deg", "mount_dec_deg", "star_ra_deg", "star_dec_deg")
MOST_LINES = 10_000


@dataclass(frozen=True)
class PointingLog:
    """What was read; every line that was not used has a reason."""

    sightings: tuple[PointedStar, ...]
    rejected: tuple[Rejected, ...]


def read_sightings(lines: Iterable[str], site: Site) -> PointingLog:
    """Raises UnusablePointing when no line can be used."""
    of_date, names, separator = False, list[str](), ","
    found, rejected = [], []
    for line_number, line in enumerate(lines, start=1):
        text = line.strip("\r\n").removeprefix("\ufeff")
        if line_number > MOST_LINES:
            raise UnusablePointing(PointingList.LONG)
        if not text or text.isspace():
            continue
        if is_remark(text):
            told = is_of_date(text, line_number)
            of_date = of_date if told is None else told
        elif not names:
            separator, names = _names(text, line_number)
        else:
            try:
                found.append(_sighting(text, separator, names, site, of_date))
            except ValueError as reason:
                rejected.append(Rejected(line_number, str(reason)))
    if not found:
        if not rejected:
            raise UnusablePointing(PointingList.NOTHING)
        first = rejected[0]
        raise UnusablePointing(
            PointingList.NOTHING_BUT, line=first.line_number, reason=first.reason
        )
    return PointingLog(tuple(found), tuple(rejected))


def _names(text: str, line_number: int) -> tuple[str, list[str]]:
    for separator in SEPARATORS:
        names = names_in(text, separator)
        if set(REQUIRED) <= set(names):
            doubled = doubled_sentence(names, (*REQUIRED, "side", "star"), line_number)
            if doubled:
                raise UnusablePointing(PointingList.DOUBLED, doubled=doubled)
            return separator, names
    raise UnusablePointing(PointingList.NO_NAMES, columns=",".join(REQUIRED), text=shown(text))


def _sighting(
    text: str, separator: str, names: list[str], site: Site, of_date: bool
) -> PointedStar:
    texts = fitted(split(text, separator), len(names), separator != ",")
    fields = dict(zip(names, [field.strip() for field in texts], strict=True))
    values = []
    for name in REQUIRED[1:]:
        try:
            value = number(fields.get(name, ""), separator != ",")
        except ValueError as reason:
            raise ValueError(Finding.of(PointingList.NUMBER, name=name, problem=reason)) from None
        limit = 90.0 if "dec" in name else 360.0
        if abs(value) > limit:
            raise ValueError(Finding.of(PointingList.BEYOND, name=name, value=value, limit=limit))
        values.append(value)
    side = fields.get("side", "").lower()
    if side not in ("", "east", "west"):
        raise ValueError(Finding.of(PointingList.SIDE, side=shown(side)))
    return sighting_of(
        (values[2], values[3]),
        (values[0], values[1]),
        parse_utc(fields.get("utc", "")),
        site,
        mount_is_of_date=of_date,
        side=WEST_OF_PIER if side == "west" else EAST_OF_PIER,
        label=fields.get("star", ""),
    )
