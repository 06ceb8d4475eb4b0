"""The line of column names: which separator a log uses and where each column stands."""

from __future__ import annotations

import csv
from collections.abc import Sequence
from dataclasses import dataclass
from functools import reduce

from core.alignment.driftlog.forms import DRIFT, REQUIRED, Form
from core.alignment.driftlog.numerals import shown
from core.alignment.driftlog.records import BadRow, UnusableLog
from core.language import marked, say

SEPARATORS = ("\t", ";", ",")


def split(line: str, separator: str) -> list[str]:
    """The fields of a line; quotes may enclose separators. BadRow when a quote stays open."""
    if '"' not in line:
        return line.split(separator)
    try:
        return next(csv.reader([line], delimiter=separator, strict=True))
    except csv.Error:
        raise BadRow(say("Its quotation marks do not match.")) from None


def fitted(fields: list[str], width: int, decimal_comma: bool) -> list[str]:
    """As many fields as there are columns: empty ones added, or dropped behind the last column.

    BadRow when a field beyond the columns holds something: which of them is which is not known.
    """
    if any(field.strip() for field in fields[width:]):
        sentence = marked("It has {count} fields for {columns} column names.")
        if not decimal_comma:
            sentence = marked(
                "It has {count} fields for {columns} column names "
                "(with a decimal comma separate the columns by “;”)."
            )
        raise BadRow(say(sentence, count=len(fields), columns=width))
    return [*fields[:width], *[""] * (width - len(fields))]


def names_in(line: str, separator: str) -> list[str]:
    """The column names in a line, in lower case and without spaces; none when quotes stay open."""
    try:
        return [_normal(field) for field in split(line, separator)]
    except BadRow:
        return []


@dataclass(frozen=True)
class Columns:
    """Where the columns stand. `place`: index of each known column; `extra`: index by name.

    `in_pixels`: which of the known ones hold pixels, though their name says arcseconds.
    """

    separator: str
    names: tuple[str, ...]
    place: dict[str, int]
    extra: dict[str, int]
    in_pixels: frozenset[str] = frozenset()

    @property
    def decimal_comma(self) -> bool:
        """Whether a comma may be a decimal sign here."""
        return self.separator != ","

    def fields(self, line: str) -> list[str]:
        """The fields of a line, one for each column; BadRow when that cannot be."""
        fields = split(line, self.separator)
        if len(fields) == len(self.names):
            return fields
        return fitted(fields, len(self.names), self.decimal_comma)

    def check_remark(self, line: str) -> None:
        """BadRow when a line that begins like a remark has the fields of a reading."""
        filled = [field for field in line.split(self.separator) if field.strip()]
        if len(filled) >= len(REQUIRED):
            raise BadRow(
                say(
                    "It begins with # like a remark though it looks like a reading; put the "
                    "label of the leg in quotation marks if it is meant."
                )
            )

    def are_repeated(self, fields: Sequence[str]) -> bool:
        """Whether a line repeats the column names."""
        return (
            len(fields[self.place["utc"]].strip()) <= len("utc")  # most are told by that alone
            and tuple(map(_normal, fields)) == self.names
        )


def find(line: str, line_number: int, form: Form = DRIFT) -> Columns:
    """Reads the column names; UnusableLog when required ones are missing or any is doubled."""
    separator, names = max(
        ((mark, names_in(line, mark)) for mark in SEPARATORS),
        key=lambda found: len(form.places(found[1])),
    )
    place = form.places(names)
    missing = form.missing(place)
    if missing:
        raise UnusableLog(_missing_sentence(line, line_number, names, missing, form))
    doubled = doubled_sentence(names, [names[index] for index in place.values()], line_number)
    if doubled:
        raise UnusableLog(doubled)
    in_pixels = frozenset(name for name, index in place.items() if names[index] != name)
    return Columns(separator, tuple(names), place, _extra(names, place), in_pixels)


def doubled_sentence(names: Sequence[str], wanted: Sequence[str], line_number: int) -> str | None:
    """What to say when a wanted column stands twice, so that nobody knows which is meant."""
    for name in wanted:
        if names.count(name) > 1:
            return say(
                "Line {line} names the column {name} twice; rename or remove one of them.",
                line=line_number,
                name=name,
            )
    return None


def _normal(field: str) -> str:
    return "_".join(field.lower().split())


def _both(first: str, second: str) -> str:
    return say("{first} and {second}", first=first, second=second)


def _extra(names: Sequence[str], place: dict[str, int]) -> dict[str, int]:
    extra: dict[str, int] = {}
    for index, name in enumerate(names):
        if index not in place.values():
            fresh = name or f"column_{index + 1}"
            extra[fresh if fresh not in extra else f"{fresh}_{index + 1}"] = index
    return extra


def _missing_sentence(
    line: str, line_number: int, names: Sequence[str], missing: Sequence[str], form: Form
) -> str:
    if len(missing) == len(form.required):
        return say(
            "Line {line} should name the columns ({example}) but reads {text}; is this "
            "a drift log? Put the column names above the readings.",
            line=line_number,
            example=form.example,
            text=shown(line),
        )
    found = ", ".join(name for name in names if name)
    return say(
        "Line {line} lacks the column {missing}; it names {names}. The columns needed "
        "are {example}; rename yours if they mean the same, in the same units.",
        line=line_number,
        missing=reduce(_both, missing),
        names=shown(found),
        example=form.example,
    )
