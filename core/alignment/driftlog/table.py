"""Tables of readings as text: lines, numerals, separators and column names."""

from __future__ import annotations

import csv
import math
import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from functools import reduce

from core.alignment.driftlog.records import BadRow, UnusableLog
from core.language import marked, say

# Numbers as people and spreadsheets write them, and what to say when they are not numbers.

_SEXAGESIMAL = re.compile(
    r"""\s*([+\-−]?)\s*(\d{1,3})\s*[:h°d\s]\s*(\d{1,2})\s*
        (?:[:m'′\s]\s*(\d{1,2}(?:[.,]\d*)?)?\s*(?:s|"|″|'')?)?\s*""",
    re.VERBOSE | re.IGNORECASE,
)
_SHOWN = 30


def shown(text: str) -> str:
    """The text as quoted in a sentence: shortened, unprintable characters replaced."""
    clean = "".join(c if c.isprintable() else "·" for c in text.strip())
    return say("“{text}”", text=f"{clean[:_SHOWN]}…" if len(clean) > _SHOWN else clean)


def number(text: str, decimal_comma: bool) -> float:
    """The finite number written in `text`; ValueError with the rest of a sentence if none is.

    `decimal_comma`: a comma may stand for the decimal point.
    """
    written = text.strip().replace("−", "-")
    if decimal_comma and "," in written:
        if "." in written or written.count(",") > 1:
            raise ValueError(
                say("{text} mixes commas and points; write it without thousands.", text=shown(text))
            )
        written = written.replace(",", ".")
    try:
        value = float("none" if "_" in written else written)
    except ValueError:
        raise ValueError(_why_not(text)) from None
    if not math.isfinite(value):
        raise ValueError(
            say("{text} is not a finite number; leave such readings out.", text=shown(text))
        )
    return value


def _why_not(text: str) -> str:
    if not text.strip():
        return say("is empty.")
    if "," in text:
        return say(
            "{text} is not a number; with a decimal comma separate the columns by “;”.",
            text=shown(text),
        )
    return say("{text} is not a number.", text=shown(text))


def sexagesimal(text: str) -> float | None:
    """The value of `05:35:17`, `5h35m17s` or `5 35 17` in units of its first part, else None."""
    match = _SEXAGESIMAL.fullmatch(text)
    if match is None:
        return None
    sign, whole, minutes, seconds = match.groups()
    rest_s = float((seconds or "0").replace(",", "."))
    value = int(whole) + int(minutes) / 60.0 + rest_s / 3600.0
    return -value if sign and sign != "+" else value


# A line of a log as text: whether it can be trusted, and whether it is a remark.

MAX_LINE_CHARACTERS = 10_000


def check_readable(text: str) -> None:
    """BadRow when a line cannot be trusted as text."""
    if len(text) >= MAX_LINE_CHARACTERS:
        raise BadRow(say("It is longer than {most} characters.", most=MAX_LINE_CHARACTERS))
    if "\0" in text:
        raise BadRow(say("It holds NUL bytes, as a power cut leaves them."))
    if text.isascii():
        return
    if "\ufffd" in text or any("\ud800" <= character <= "\udfff" for character in text):
        raise BadRow(say("It is not UTF-8 text; save the file as UTF-8."))


def is_remark(text: str) -> bool:
    """Whether a line begins with #, as one above the readings does."""
    bare = text.lstrip()
    if bare.startswith('"#'):  # a spreadsheet quotes a line whose text holds its separator
        return bare.rstrip(",;\t ").count('"') == 2 and bare.rstrip(",;\t ").endswith('"')
    return bare.startswith("#")


def announces_separator(text: str) -> bool:
    """Whether a line is that of a spreadsheet, above the column names."""
    return text.lower().startswith("sep=")


# Which columns a log must name: those of a drift, or those of a run of the drive.

REQUIRED = ("leg", "utc", "ra_deg", "dec_deg", "north_arcsec")
OPTIONAL = ("east_arcsec", "sigma_arcsec")


@dataclass(frozen=True)
class ColumnNames:
    """Names of columns, in the order in which they are usually written.

    `instead`: what will do where a required column is missing. `pixels`: the name under which an
    offset may stand in pixels.
    """

    required: tuple[str, ...]
    optional: tuple[str, ...]
    instead: Mapping[str, str] = field(default_factory=dict)
    pixels: Mapping[str, str] = field(default_factory=dict)

    @property
    def known(self) -> tuple[str, ...]:
        """All that have a meaning, pixels aside."""
        return (*self.required, *self.optional)

    @property
    def example(self) -> str:
        """A line of column names that is enough."""
        return ",".join(self.required)

    def places(self, names: Sequence[str]) -> dict[str, int]:
        """Where each known column stands; one in pixels only where none is in arcseconds."""
        found = {name: names.index(name) for name in self.known if name in names}
        for name, in_pixels in self.pixels.items():
            if name not in found and in_pixels in names:
                found[name] = names.index(in_pixels)
        return found

    def missing(self, place: Mapping[str, int]) -> list[str]:
        """Required columns that stand nowhere, and nothing in their stead."""
        return [
            name
            for name in self.required
            if name not in place and self.instead.get(name) not in place
        ]


DRIFT = ColumnNames(REQUIRED, OPTIONAL)
RUN = ColumnNames(
    ("leg", "utc", "ra_deg", "dec_deg", "east_arcsec"),
    ("north_arcsec", "sigma_arcsec"),
    # A leg without east offsets is refused later, with words on what the drive is seen in.
    {"east_arcsec": "north_arcsec"},
    {"east_arcsec": "east_px", "north_arcsec": "north_px", "sigma_arcsec": "sigma_px"},
)


# The line of column names: which separator a log uses and where each column stands.

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
class ColumnPlaces:
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


def find(line: str, line_number: int, form: ColumnNames = DRIFT) -> ColumnPlaces:
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
    return ColumnPlaces(separator, tuple(names), place, _extra(names, place), in_pixels)


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
    line: str, line_number: int, names: Sequence[str], missing: Sequence[str], form: ColumnNames
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
