"""The line of column names: which separator a log uses and where each column stands."""

from __future__ import annotations

import csv
from collections.abc import Sequence
from dataclasses import dataclass
from functools import reduce

from core.alignment.driftlog.numerals import shown
from core.alignment.driftlog.records import UnusableLog
from core.language import say

REQUIRED = ("leg", "utc", "ra_deg", "dec_deg", "north_arcsec")
OPTIONAL = ("east_arcsec", "sigma_arcsec")
SEPARATORS = ("\t", ";", ",")
EXAMPLE = "leg,utc,ra_deg,dec_deg,north_arcsec"


def split(line: str, separator: str) -> list[str]:
    """The fields of a line; quotes may enclose separators. csv.Error when a quote stays open."""
    if '"' not in line:
        return line.split(separator)
    return next(csv.reader([line], delimiter=separator, strict=True))


@dataclass(frozen=True)
class Columns:
    """Where the columns stand. `place`: index of each known column; `extra`: index by name."""

    separator: str
    names: tuple[str, ...]
    place: dict[str, int]
    extra: dict[str, int]

    @property
    def decimal_comma(self) -> bool:
        """Whether a comma may be a decimal sign here."""
        return self.separator != ","


def find(line: str, line_number: int) -> Columns:
    """Reads the column names; UnusableLog when required ones are missing or any is doubled."""
    separator, names = max(
        ((mark, _names(line, mark)) for mark in SEPARATORS),
        key=lambda found: len(set(found[1]) & {*REQUIRED, *OPTIONAL}),
    )
    missing = [name for name in REQUIRED if name not in names]
    if missing:
        raise UnusableLog(_missing_sentence(line, line_number, names, missing))
    for name in (*REQUIRED, *OPTIONAL):
        if names.count(name) > 1:
            raise UnusableLog(
                say(
                    "Line {line} names the column {name} twice; rename or remove one of them.",
                    line=line_number,
                    name=name,
                )
            )
    place = {name: names.index(name) for name in (*REQUIRED, *OPTIONAL) if name in names}
    return Columns(separator, tuple(names), place, _extra(names))


def _names(line: str, separator: str) -> list[str]:
    try:
        fields = split(line, separator)
    except csv.Error:
        return []
    return ["_".join(field.lower().split()) for field in fields]


def _both(first: str, second: str) -> str:
    return say("{first} and {second}", first=first, second=second)


def _extra(names: Sequence[str]) -> dict[str, int]:
    extra: dict[str, int] = {}
    for index, name in enumerate(names):
        if name not in (*REQUIRED, *OPTIONAL):
            fresh = name or f"column_{index + 1}"
            extra[fresh if fresh not in extra else f"{fresh}_{index + 1}"] = index
    return extra


def _missing_sentence(
    line: str, line_number: int, names: Sequence[str], missing: Sequence[str]
) -> str:
    if len(missing) == len(REQUIRED):
        return say(
            "Line {line} should name the columns ({example}) but reads {text}; is this "
            "a drift log? Put the column names above the readings.",
            line=line_number,
            example=EXAMPLE,
            text=shown(line),
        )
    found = ", ".join(name for name in names if name)
    return say(
        "Line {line} lacks the column {missing}; it names {names}. The columns needed "
        "are {example}; rename yours if they mean the same, in the same units.",
        line=line_number,
        missing=reduce(_both, missing),
        names=shown(found),
        example=EXAMPLE,
    )
