"""The `# key: value` lines above the readings of a log, and which of them state a quantity."""

from __future__ import annotations

import re
from collections.abc import Collection, Mapping, Sequence
from difflib import get_close_matches

from core.alignment import priors
from core.alignment.driftlog.records import Header, Rejected
from core.alignment.driftlog.table import number, sexagesimal, shown
from core.finding import Code
from core.language import say

# Which lines above the readings state a quantity, and which only seem to.

_PAIR = re.compile(r"([^:=]*)([:=])(.*)", re.DOTALL)
_WITH_UNIT = re.compile(
    r"([a-z]\w*)_(?:m|km|ft|feet|metres|meters|hpa|pa|kpa|mbar|mb|bar|inhg|mmhg|atm|c|f|k|celsius"
    r"|fahrenheit|deg|degrees|rad|arcsec|arcsecs|arcseconds|arcmin|arcminutes|s|sec|seconds)"
    r"(?:_per_g)?"
)
_ALSO_SAID = ("altitude", "height")  # for what is known by another name
_SHORT = ("lat", "lon", "long", "lng", "elev", "alt", "press", "temp", "qnh", "qfe")
_LIKE = 0.8  # of `get_close_matches`: one or two wrong letters in a word of eight


def pair(line: str) -> tuple[str, str] | None:
    """Key and value as written in `key: value`, or in `word = value`; None in free text."""
    found = _PAIR.fullmatch(line)
    if found is None:
        return None
    key, mark, value = found.groups()
    if mark == "=" and len(key.split()) != 1:
        return None
    return key.strip(), value.strip()


def name_of(key: str) -> str:
    """The key in the spelling of the known ones: ``Latitude-deg`` is ``latitude_deg``."""
    return "_".join(key.lower().replace("-", " ").split())


def without_unit(name: str) -> str:
    """What a name in the spelling of the known ones measures: `elevation` of `elevation_m`."""
    found = _WITH_UNIT.fullmatch(name)
    return name if found is None else found[1]


def unknown_key_reason(key: str, value: str, known: Collection[str]) -> str | None:
    """Why a pair that seems to state a quantity is not used; None when it seems a comment."""
    if not _states_quantity(key, value, [*map(without_unit, known), *_ALSO_SAID]):
        return None
    return say(
        "The key “{key}” is not known, so its value is not used. Known are {names}: rename it and "
        "convert its value, or leave out the sign behind it if this is a remark.",
        key=key[:40],
        names=", ".join(known),
    )


def _states_quantity(key: str, value: str, quantities: Collection[str]) -> bool:
    name = name_of(key)
    if " " not in key.strip() and _WITH_UNIT.fullmatch(name):
        return True
    if not any(character.isdigit() for character in value):
        return False
    words = name.split("_")
    short = words[0] in _SHORT and len(words) <= 2
    return short or any(_begins_like(words, quantity.split("_")) for quantity in quantities)


def _begins_like(words: Sequence[str], quantity: Sequence[str]) -> bool:
    """Whether a key is a quantity and one word at most; more are a sentence with a colon in it."""
    if not len(quantity) <= len(words) <= len(quantity) + 1:
        return False
    pairs = zip(words, quantity, strict=False)
    return all(get_close_matches(word, [meant], cutoff=_LIKE) for word, meant in pairs)


# The `# key: value` lines above the readings of a log.


class HeaderUnit(Code):
    """What a place or the air is stated in."""

    DEGREES_NORTH = "degrees, north positive"
    DEGREES_EAST = "degrees, east positive"
    METRES = "metres"
    HECTOPASCALS = "hectopascals"
    CELSIUS = "degrees Celsius"


# Key → lowest and highest value that can be meant, and its unit.
RANGES: Mapping[str, tuple[float, float, Code]] = {
    "latitude_deg": (-90.0, 90.0, HeaderUnit.DEGREES_NORTH),
    "longitude_deg": (-180.0, 360.0, HeaderUnit.DEGREES_EAST),
    "elevation_m": (-500.0, 9000.0, HeaderUnit.METRES),
    "pressure_hpa": (0.0, 1100.0, HeaderUnit.HECTOPASCALS),
    "temperature_c": (-90.0, 60.0, HeaderUnit.CELSIUS),
    **priors.RANGES,
}
_QUANTITIES = {without_unit(key): key for key in reversed(list(RANGES))}  # of two units the first
MAX_REMARKS = 10_000  # lines kept for their own sake


class HeadLines:
    """Gathers header lines one by one; a line that says nothing usable is rejected aloud."""

    def __init__(self) -> None:
        self._values: dict[str, float] = {}
        self._lines: dict[str, int] = {}
        self._other: list[tuple[str, str]] = []
        self._notes: list[str] = []
        self._out_of_range: list[tuple[str, float, int]] = []
        self.rejected: list[Rejected] = []

    def add(self, text: str, line_number: int) -> None:
        """`text`: the line without its mark; spreadsheets append separators and add quotes."""
        bare = text.strip().rstrip(",;\t").strip().strip('"').lstrip("#").strip()
        if not bare:
            return
        stated = pair(bare)
        name = name_of(stated[0]) if stated else ""
        if stated and name in RANGES:
            self._take(name, stated[1], line_number)
        elif stated and (reason := _key_reason(name, *stated)):
            self.rejected.append(Rejected(line_number, reason))
        elif len(self._other) + len(self._notes) >= MAX_REMARKS:
            self.rejected.append(Rejected(line_number, say("There are too many remarks to keep.")))
        elif stated:
            self._other.append(stated)
        else:
            self._notes.append(bare)

    def finish(self) -> Header:
        """The header, once all lines are in; coordinates out of range are rejected here."""
        for name, value, line_number in self._out_of_range:
            self.rejected.append(Rejected(line_number, self._range_reason(name, value)))
        values = self._values.items()
        return Header(
            **{name: value for name, value in values if name not in priors.RANGES},
            stated_priors={name: value for name, value in values if name in priors.RANGES},
            other=tuple(self._other),
            notes=tuple(self._notes),
        )

    def _take(self, name: str, text: str, line_number: int) -> None:
        try:
            value = number(text, decimal_comma=True)
        except ValueError as error:
            self.rejected.append(Rejected(line_number, _number_reason(name, text, error)))
            return
        low, high, _ = RANGES[name]
        if not low <= value <= high:
            self._out_of_range.append((name, value, line_number))
        elif self._values.setdefault(name, value) != value:
            reason = say(
                "{name} was already {first:g} in line {line}; {value:g} is left out. "
                "Split the log if the place, the air or the equipment changed.",
                name=name,
                first=self._values[name],
                line=self._lines[name],
                value=value,
            )
            self.rejected.append(Rejected(line_number, reason))
        self._lines.setdefault(name, line_number)

    def _range_reason(self, name: str, value: float) -> str:
        low, high, unit = RANGES[name]
        longitude = self._values.get("longitude_deg")
        if name == "latitude_deg" and looks_swapped(value, longitude):
            return say(
                "latitude_deg {value:g} is beyond ±90; longitude_deg {longitude:g} "
                "would fit a latitude, so the two may be swapped: exchange or correct "
                "them.",
                value=value,
                longitude=longitude,
            )
        return say(
            "{name} {value:g} is outside {low:g} to {high:g} ({unit}); correct it.",
            name=name,
            value=value,
            low=low,
            high=high,
            unit=unit,
        )


def looks_swapped(latitude_deg: float, longitude_deg: float | None) -> bool:
    """Whether a latitude out of range and its longitude would make sense the other way round."""
    if longitude_deg is None:
        return False
    return 90.0 < abs(latitude_deg) <= 360.0 and abs(longitude_deg) <= 90.0


def _key_reason(name: str, key: str, value: str) -> str | None:
    """Why a pair whose key is not known is not used; None when it is a comment."""
    if name in _QUANTITIES:
        return say(
            "{name} has no unit; write “# {key}: …” if that is meant.",
            name=name,
            key=_QUANTITIES[name],
        )
    return unknown_key_reason(key, value, RANGES)


def _number_reason(name: str, text: str, error: ValueError) -> str:
    value = sexagesimal(text) if name.endswith("_deg") else None
    if value is not None:
        return say(
            "{name} {text} must be in decimal degrees: {value:.5f}.",
            name=name,
            text=shown(text),
            value=value,
        )
    return say("{name} {problem}", name=name, problem=error)
