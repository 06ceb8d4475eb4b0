"""Coordinates as people write them: lenient about form, strict about meaning."""

from __future__ import annotations

import re
from dataclasses import dataclass

from core.language import marked, say

_NUMBER = re.compile(r"\d+(?:[.,]\d+)?")
_SIGN = {"+": 1, "-": -1, "−": -1, "–": -1}
_MARKS = r"[\s:°º˚'′’‘´\"″”“]|deg(?:rees?)?|min(?:utes?)?|sec(?:onds?)?|[dhms]"
# A final s behind minutes is seconds and not south.
_IN_SECONDS = re.compile(r"(?:min(?:utes?)?|m)\s*\d+(?:[.,]\d+)?\s*s$")
_DEGREES_PER_HOUR = 15.0
_SEPARATED = re.compile(rf"(?:{_MARKS})*", re.IGNORECASE)


class UnusableCoordinates(ValueError):
    """The message is a sentence for the person who typed."""


@dataclass(frozen=True)
class _Parts:
    sign: int | None
    letter: str  # "N", "S", "E", "W" or none
    numbers: tuple[float, ...]
    in_hours: bool
    in_degrees: bool


def parse_latitude(text: str) -> float:
    """Degrees, north positive."""
    parts = _read(text, marked("latitude"), "NSEW")
    if parts.letter in ("E", "W"):
        raise UnusableCoordinates(
            say(
                "“{text}” is a longitude, since it says {letter}; a latitude says N or S. "
                "Latitude and longitude may be swapped.",
                text=text.strip(),
                letter=parts.letter,
            )
        )
    if parts.in_hours:
        raise UnusableCoordinates(
            say(
                "“{text}” is in hours; a latitude is in degrees. Latitude and longitude may be "
                "swapped.",
                text=text.strip(),
            )
        )
    value = _signed(parts, text, "S")
    if abs(value) > 90:
        raise UnusableCoordinates(
            say(
                "A latitude lies between 90° S and 90° N; “{text}” does not. Latitude and "
                "longitude may be swapped.",
                text=text.strip(),
            )
        )
    return value


def parse_longitude(text: str) -> float:
    """Degrees, east positive, in −180 to 180. East longitudes up to 360 are understood, and hours
    (0h46m24s), of which each is 15°."""
    parts = _read(text, marked("longitude"), "NSEW")
    if parts.letter in ("N", "S"):
        raise UnusableCoordinates(
            say(
                "“{text}” is a latitude, since it says {letter}; a longitude says E or W. "
                "Latitude and longitude may be swapped.",
                text=text.strip(),
                letter=parts.letter,
            )
        )
    if parts.in_hours and parts.in_degrees:
        raise UnusableCoordinates(
            say(
                "“{text}” mixes hours with degrees. Write a longitude in one of them, like 11.6° "
                "or 0h46m24s.",
                text=text.strip(),
            )
        )
    value = _signed(parts, text, "W") * (_DEGREES_PER_HOUR if parts.in_hours else 1.0)
    if not -180 <= value <= 360:
        raise UnusableCoordinates(
            say("A longitude lies between 180° W and 180° E; “{text}” does not.", text=text.strip())
        )
    return value - 360 if value > 180 else value


def parse_pair(text: str) -> tuple[float, float]:
    """Latitude and longitude from one pasted text; letters may say which is which."""
    for first, second in _splits(text.strip()):
        if _letter(first) in ("E", "W") and _letter(second) in ("N", "S"):
            first, second = second, first
        return parse_latitude(first), parse_longitude(second)
    raise UnusableCoordinates(
        say(
            "“{text}” is not a latitude and a longitude. Write them like 48.1, 11.6.",
            text=text.strip(),
        )
    )


def parse_right_ascension(text: str) -> float:
    """Degrees 0 to 360 from hours (5 14 32, 5h14m32s) or marked degrees (78.6°)."""
    parts = _read(text, marked("right ascension"), "")
    if len(parts.numbers) == 1 and parts.in_hours == parts.in_degrees:
        raise UnusableCoordinates(
            say(
                "“{text}” may be hours or degrees. Write 5.24h or 78.6°, or 5 14 32 for "
                "hours, minutes, seconds.",
                text=text.strip(),
            )
        )
    value = _signed(parts, text, "")
    whole = 360.0 if parts.in_degrees else 24.0
    if not 0 <= value < whole:
        raise UnusableCoordinates(
            say(
                "A right ascension lies between 0 and 24 hours, or 0° and 360°; “{text}” does not.",
                text=text.strip(),
            )
        )
    return value * 360.0 / whole


def parse_declination(text: str) -> float:
    """Degrees, north positive."""
    parts = _read(text, marked("declination"), "NS")
    if parts.in_hours:
        raise UnusableCoordinates(
            say(
                "“{text}” is in hours; a declination is in degrees. Right ascension and "
                "declination may be swapped.",
                text=text.strip(),
            )
        )
    value = _signed(parts, text, "S")
    if abs(value) > 90:
        raise UnusableCoordinates(
            say(
                "A declination lies between −90° and +90°; “{text}” does not. Right "
                "ascension and declination may be swapped.",
                text=text.strip(),
            )
        )
    return value


def format_latitude(latitude_deg: float) -> str:
    return f"{abs(latitude_deg):.4f}° {'N' if latitude_deg >= 0 else 'S'}"


def format_longitude(longitude_deg: float) -> str:
    return f"{abs(longitude_deg):.4f}° {'E' if longitude_deg >= 0 else 'W'}"


def _read(text: str, what: str, letters: str) -> _Parts:
    rest = text.strip()
    if not rest:
        raise UnusableCoordinates(say("The {what} is empty.", what=say(what)))
    letter = _letter(rest, letters)
    if letter:
        rest = rest[1:] if rest[0].upper() == letter else rest[:-1]
        rest = rest.strip()
    sign = _SIGN.get(rest[:1])
    if sign is not None:
        rest = rest[1:]
    between = _NUMBER.split(rest)
    numbers = _NUMBER.findall(rest)
    if not 1 <= len(numbers) <= 3 or not all(_SEPARATED.fullmatch(piece) for piece in between):
        raise UnusableCoordinates(
            say(
                "“{text}” cannot be read as a {what}. Write it like 48.137 or 48 08 14.",
                text=text.strip(),
                what=say(what),
            )
        )
    marks = "".join(between).lower()
    return _Parts(
        sign,
        letter,
        tuple(float(number.replace(",", ".")) for number in numbers),
        "h" in marks,
        "d" in marks or any(mark in marks for mark in "°º˚"),
    )


def _letter(text: str, letters: str = "NSEW") -> str:
    """The hemisphere letter at either end; a final s may be seconds."""
    stripped = text.strip()
    if not stripped:
        return ""
    if stripped[0].upper() in letters:
        return stripped[0].upper()
    last = stripped[-1]
    seconds = last == "s" and _IN_SECONDS.search(stripped) is not None
    return "" if seconds or last.upper() not in letters else last.upper()


def _signed(parts: _Parts, text: str, negative_letter: str) -> float:
    if parts.sign is not None and parts.letter:
        raise UnusableCoordinates(
            say(
                "“{text}” has a sign and the letter {letter}. Leave one of them out.",
                text=text.strip(),
                letter=parts.letter,
            )
        )
    *whole, _last = parts.numbers
    if any(number != int(number) for number in whole):
        raise UnusableCoordinates(
            say("In “{text}” only the last number may have decimals.", text=text.strip())
        )
    if any(number >= 60 for number in parts.numbers[1:]):
        raise UnusableCoordinates(
            say("In “{text}” minutes and seconds stay below 60.", text=text.strip())
        )
    size = sum(number / 60.0**place for place, number in enumerate(parts.numbers))
    backwards = parts.sign == -1 or (parts.letter != "" and parts.letter == negative_letter)
    return -size if backwards else size


def _splits(text: str) -> list[tuple[str, str]]:
    """The first way of cutting the text in two that fits; none when there is none."""
    for pattern in (
        r"^(.+?)\s*[;\t\n]\s*(.+)$",
        r"^(.+?)\s*,\s+(.+)$",
        r"^(.*?[NSEWnsew])\s*,?\s*(\d.*[NSEWnsew])$",
        r"^([NSEWnsew].*\d\D*?)\s*,?\s*([NSEWnsew].*)$",
        r"^(\S*\.\S*),(\S*\.\S*)$",
        r"^(\S+)\s+(\S+)$",
    ):
        found = re.match(pattern, text, re.DOTALL)
        if found:
            return [(found[1], found[2])]
    return []
