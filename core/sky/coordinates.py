"""Coordinates as people write them: lenient about form, strict about meaning."""

from __future__ import annotations

import re
from dataclasses import dataclass

from core.finding import Code, Refused


class Angle(Code):
    """What was to be typed."""

    LATITUDE = "latitude"
    LONGITUDE = "longitude"
    RIGHT_ASCENSION = "right ascension"
    DECLINATION = "declination"


class Coordinates(Code):
    """Why what was typed cannot be taken."""

    SAYS_EAST_OR_WEST = "says east or west"
    LATITUDE_IN_HOURS = "latitude in hours"
    NO_LATITUDE = "no latitude"
    SAYS_NORTH_OR_SOUTH = "says north or south"
    HOURS_AND_DEGREES = "hours and degrees"
    NO_LONGITUDE = "no longitude"
    NO_PAIR = "no pair"
    HOURS_OR_DEGREES = "hours or degrees"
    NO_RIGHT_ASCENSION = "no right ascension"
    DECLINATION_IN_HOURS = "declination in hours"
    NO_DECLINATION = "no declination"
    EMPTY = "empty"
    UNREADABLE = "unreadable"
    SIGN_AND_LETTER = "sign and letter"
    EARLY_DECIMALS = "early decimals"
    SIXTY_OR_MORE = "sixty or more"


_NUMBER = re.compile(r"\d+(?:[.,]\d+)?")
_SIGN = {"+": 1, "-": -1, "−": -1, "–": -1}
_MARKS = r"[\s:°º˚'′’‘´\"″”“]|deg(?:rees?)?|min(?:utes?)?|sec(?:onds?)?|[dhms]"
# A final s behind minutes is seconds and not south.
_IN_SECONDS = re.compile(r"(?:min(?:utes?)?|m)\s*\d+(?:[.,]\d+)?\s*s$")
_DEGREES_PER_HOUR = 15.0
_SEPARATED = re.compile(rf"(?:{_MARKS})*", re.IGNORECASE)


class UnusableCoordinates(Refused):
    """What was typed cannot be taken."""


@dataclass(frozen=True)
class _Parts:
    sign: int | None
    letter: str  # "N", "S", "E", "W" or none
    numbers: tuple[float, ...]
    in_hours: bool
    in_degrees: bool


def parse_latitude(text: str) -> float:
    """Degrees, north positive."""
    parts = _read(text, Angle.LATITUDE, "NSEW")
    if parts.letter in ("E", "W"):
        raise UnusableCoordinates(
            Coordinates.SAYS_EAST_OR_WEST, text=text.strip(), letter=parts.letter
        )
    if parts.in_hours:
        raise UnusableCoordinates(Coordinates.LATITUDE_IN_HOURS, text=text.strip())
    value = _signed(parts, text, "S")
    if abs(value) > 90:
        raise UnusableCoordinates(Coordinates.NO_LATITUDE, text=text.strip())
    return value


def parse_longitude(text: str) -> float:
    """Degrees, east positive, in −180 to 180. East longitudes up to 360 are understood, and hours
    (0h46m24s), of which each is 15°."""
    parts = _read(text, Angle.LONGITUDE, "NSEW")
    if parts.letter in ("N", "S"):
        raise UnusableCoordinates(
            Coordinates.SAYS_NORTH_OR_SOUTH, text=text.strip(), letter=parts.letter
        )
    if parts.in_hours and parts.in_degrees:
        raise UnusableCoordinates(Coordinates.HOURS_AND_DEGREES, text=text.strip())
    value = _signed(parts, text, "W") * (_DEGREES_PER_HOUR if parts.in_hours else 1.0)
    if not -180 <= value <= 360:
        raise UnusableCoordinates(Coordinates.NO_LONGITUDE, text=text.strip())
    return value - 360 if value > 180 else value


def parse_pair(text: str) -> tuple[float, float]:
    """Latitude and longitude from one pasted text; letters may say which is which."""
    for first, second in _splits(text.strip()):
        if _letter(first) in ("E", "W") and _letter(second) in ("N", "S"):
            first, second = second, first
        return parse_latitude(first), parse_longitude(second)
    raise UnusableCoordinates(Coordinates.NO_PAIR, text=text.strip())


def parse_right_ascension(text: str) -> float:
    """Degrees 0 to 360 from hours (5 14 32, 5h14m32s) or marked degrees (78.6°)."""
    parts = _read(text, Angle.RIGHT_ASCENSION, "")
    if len(parts.numbers) == 1 and parts.in_hours == parts.in_degrees:
        raise UnusableCoordinates(Coordinates.HOURS_OR_DEGREES, text=text.strip())
    value = _signed(parts, text, "")
    whole = 360.0 if parts.in_degrees else 24.0
    if not 0 <= value < whole:
        raise UnusableCoordinates(Coordinates.NO_RIGHT_ASCENSION, text=text.strip())
    return value * 360.0 / whole


def parse_declination(text: str) -> float:
    """Degrees, north positive."""
    parts = _read(text, Angle.DECLINATION, "NS")
    if parts.in_hours:
        raise UnusableCoordinates(Coordinates.DECLINATION_IN_HOURS, text=text.strip())
    value = _signed(parts, text, "S")
    if abs(value) > 90:
        raise UnusableCoordinates(Coordinates.NO_DECLINATION, text=text.strip())
    return value


def format_latitude(latitude_deg: float) -> str:
    return f"{abs(latitude_deg):.4f}° {'N' if latitude_deg >= 0 else 'S'}"


def format_longitude(longitude_deg: float) -> str:
    return f"{abs(longitude_deg):.4f}° {'E' if longitude_deg >= 0 else 'W'}"


def _read(text: str, what: Angle, letters: str) -> _Parts:
    rest = text.strip()
    if not rest:
        raise UnusableCoordinates(Coordinates.EMPTY, what=what)
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
        raise UnusableCoordinates(Coordinates.UNREADABLE, text=text.strip(), what=what)
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
            Coordinates.SIGN_AND_LETTER, text=text.strip(), letter=parts.letter
        )
    *whole, _last = parts.numbers
    if any(number != int(number) for number in whole):
        raise UnusableCoordinates(Coordinates.EARLY_DECIMALS, text=text.strip())
    if any(number >= 60 for number in parts.numbers[1:]):
        raise UnusableCoordinates(Coordinates.SIXTY_OR_MORE, text=text.strip())
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
