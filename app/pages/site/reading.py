"""From what was typed on the Site page to a place and its air, or a sentence per field."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field

from app.pages.site.air import Found, Waiting, read_pressure, read_temperature
from app.pages.site.numbers import (
    FEET,
    Quantity,
    feet_offer,
    in_thousands,
    quantity,
    thousands_offer,
)
from core.language import say
from core.sky.coordinates import (
    UnusableCoordinates,
    format_latitude,
    format_longitude,
    parse_latitude,
    parse_longitude,
)
from core.sky.pressure import HIGHEST_GROUND_M, METRES_PER_FOOT, Offer, elevation_offer
from core.sky.site import Air, Site

# Where people stand with a telescope; beyond these a slip of the pen is likelier.
ELEVATION_M = (-450.0, 6500.0)
PRESSURE_HPA = (400.0, 1100.0)
HIGHEST_GROUND_FT = HIGHEST_GROUND_M / METRES_PER_FOOT


@dataclass(frozen=True)
class Typed:
    """The texts of the form, as typed.

    `at_sea_level`: the pressure is one reduced to sea level. `meant`: (field, text) pairs that the
    person, when asked, said are meant as they stand.
    """

    name: str = ""
    latitude: str = ""
    longitude: str = ""
    elevation: str = ""
    temperature: str = ""
    pressure: str = ""
    at_sea_level: bool = False
    meant: frozenset[tuple[str, str]] = frozenset()


@dataclass
class Reading:
    """`site` and `air` are there when no field is wrong and nothing is to be asked.

    Sentences and offers go by the field's name; a field is in one of the three at most.
    """

    site: Site | None = None
    air: Air | None = None
    wrong: dict[str, str] = field(default_factory=dict)
    understood: dict[str, str] = field(default_factory=dict)
    offers: dict[str, Offer] = field(default_factory=dict)


def read_site(typed: Typed) -> Reading:
    """Reads all fields; empty temperature and pressure are assumed, and that is said."""
    reading = Reading()
    latitude = _angle(reading, "latitude", typed.latitude, parse_latitude, format_latitude)
    longitude = _angle(reading, "longitude", typed.longitude, parse_longitude, format_longitude)
    elevation = _elevation(reading, typed)
    is_meant = ("temperature", typed.temperature) in typed.meant
    found = read_temperature(typed.temperature, is_meant)
    temperature = _settle(reading, "temperature", found)
    is_meant = ("pressure", typed.pressure) in typed.meant
    found = read_pressure(typed.pressure, elevation, typed.at_sea_level, is_meant)
    pressure = _settle(reading, "pressure", found)
    if latitude is None or longitude is None or elevation is None:
        return reading
    if temperature is None or pressure is None or reading.wrong or reading.offers:
        return reading
    reading.site = Site(latitude, longitude, elevation, typed.name.strip())
    is_assumed = not typed.pressure.strip()
    reading.air = Air(pressure, temperature, pressure_is_assumed=is_assumed)
    return reading


def _angle(
    reading: Reading,
    name: str,
    text: str,
    parse: Callable[[str], float],
    show: Callable[[float], str],
) -> float | None:
    try:
        value = parse(text)
    except UnusableCoordinates as problem:
        reading.wrong[name] = str(problem)
        return None
    reading.understood[name] = show(value)
    return value


def _elevation(reading: Reading, typed: Typed) -> float | None:
    text = typed.elevation.strip()
    if not text:
        reading.wrong["elevation"] = say(
            "The elevation is empty. A rough figure will do: 100 m matter less than 1″."
        )
        return None
    found = quantity(text)
    if found is not None and ("elevation", typed.elevation) not in typed.meant:
        offer = _elevation_offer(found, typed)
        if offer is not None:
            reading.offers["elevation"] = offer
            return None
    return _settle(reading, "elevation", _in_metres(found, text))


def _elevation_offer(found: Quantity, typed: Typed) -> Offer | None:
    thousands = in_thousands(typed.elevation)
    if found.unit in FEET:
        return feet_offer(thousands or found)
    if thousands is not None and thousands.is_in("m") and thousands.value <= HIGHEST_GROUND_FT:
        return thousands_offer(typed.elevation, found, thousands)
    return elevation_offer(found.value, _station_hpa(typed)) if found.is_in("m") else None


def _station_hpa(typed: Typed) -> float | None:
    """A pressure that is surely the station's, to judge the elevation by."""
    found = quantity(typed.pressure)
    if found is None or typed.at_sea_level or not found.is_in("hPa"):
        return None
    return found.value if PRESSURE_HPA[0] <= found.value <= PRESSURE_HPA[1] else None


def _in_metres(found: Quantity | None, text: str) -> tuple[float | None, str]:
    if found is None or not found.is_in("m"):
        return None, say("“{shown}” is not a number of m.", shown=text[:40])
    low, high = ELEVATION_M
    if not low <= found.value <= high:
        return None, say(
            "{value:g} m is outside {low:g} to {high:g} m.", value=found.value, low=low, high=high
        )
    return found.value, ""


def _settle(reading: Reading, name: str, found: Found) -> float | None:
    """Sorts a value with its sentence into the reading: without one it is wrong, asked or waits."""
    value, said = found
    if isinstance(said, Offer):
        reading.offers[name] = said
    elif isinstance(said, Waiting):
        reading.understood[name] = said.sentence
    elif value is None:
        reading.wrong[name] = said
    elif said:
        reading.understood[name] = said
    return value
