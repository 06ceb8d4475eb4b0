"""Numbers with or without a unit, as typed on the Site page."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass, field

from core.language import say
from core.sky.coordinates import (
    UnusableCoordinates,
    format_latitude,
    format_longitude,
    parse_latitude,
    parse_longitude,
)
from core.sky.pressure import (
    HIGHEST_GROUND_M,
    METRES_PER_FOOT,
    WEATHER_HPA,
    Offer,
    elevation_offer,
    pressure_offer,
    station_pressure_hpa,
)
from core.sky.refraction import standard_pressure_hpa
from core.sky.site import STANDARD_TEMPERATURE_C, Air, Site

_NUMBER = re.compile(r"([+\-−]?\d+(?:[.,]\d*)?)\s*(.*)", re.DOTALL)
# One to three digits and then three: what stands between may part thousands or decimals.
_THOUSANDS = re.compile(r"\+?([1-9]\d{0,2})[.,](\d{3})\s*(.*)", re.DOTALL)
FEET = ("ft", "ft.", "feet", "foot", "'")
FAHRENHEIT = ("f", "°f", "fahrenheit")
# What may be written behind a pressure; which of them is meant, the size of the number tells.
OTHER_PRESSURES = ("inhg", "in", '"', "mmhg", "mm", "torr", "kpa")
_PLAIN = {
    "m": ("", "m", "m.", "metres", "meters"),
    "°C": ("", "c", "°c", "celsius"),
    "hPa": ("", "hpa", "mbar", "mb"),
}


@dataclass(frozen=True)
class TypedQuantity:
    """`unit` in small letters, empty when none was typed."""

    value: float
    unit: str

    def is_in(self, unit: str) -> bool:
        """Whether it is in that unit of the page, said or not."""
        return self.unit in _PLAIN[unit]


def quantity(text: str) -> TypedQuantity | None:
    """None when there is no number. A decimal comma is understood."""
    found = _NUMBER.fullmatch(text.strip())
    if found is None:
        return None
    number, unit = found.groups()
    return TypedQuantity(float(number.replace(",", ".").replace("−", "-")), unit.strip().casefold())


def in_thousands(text: str) -> TypedQuantity | None:
    """“1,520 m” read as 1520 m; None when that is no way of reading it."""
    found = _THOUSANDS.fullmatch(text.strip())
    if found is None:
        return None
    thousands, rest, unit = found.groups()
    return TypedQuantity(float(thousands + rest), unit.strip().casefold())


def thousands_offer(text: str, typed: TypedQuantity, in_thousands: TypedQuantity) -> Offer:
    """Metres that can be read in two ways."""
    question = say(
        "“{text}” can be read as {thousands:g} m or as {decimals:g} m. Use {thousands:g} m?",
        text=text.strip(),
        thousands=in_thousands.value,
        decimals=typed.value,
    )
    return Offer(typed.value, in_thousands.value, question)


def feet_offer(typed: TypedQuantity) -> Offer:
    """Feet said outright are asked about all the same."""
    metres = round(typed.value * METRES_PER_FOOT, 1)
    question = say(
        "{feet:g} feet are {metres:.0f} m. Use {metres:.0f} m?", feet=typed.value, metres=metres
    )
    return Offer(typed.value, metres, question)


def fahrenheit_offer(typed: TypedQuantity) -> Offer:
    """A temperature on the other scale."""
    celsius = round((typed.value - 32.0) / 1.8, 1)
    question = say(
        "Is that {fahrenheit:g} °F? It makes {celsius:.1f} °C.",
        fahrenheit=typed.value,
        celsius=celsius,
    )
    return Offer(typed.value, celsius, question)


# The air as typed on the Site page: temperature and pressure, each with what is said of it.

TEMPERATURE_C = (-60.0, 55.0)
HOTTEST_F = 130.0
STATION_HPA = (400.0, 1100.0)
SEA_LEVEL_HPA = (850.0, 1090.0)  # a little beyond what was ever measured


@dataclass(frozen=True)
class SettledFirst:
    """Nothing is wrong with the field, but another has to be settled first, as is said."""

    sentence: str


# A value; the sentence about it, empty when there is nothing to say. Without a value the sentence
# tells why, or there is something to ask or to wait for.
Found = tuple[float | None, str | Offer | SettledFirst]


def read_temperature(text: str, is_meant: bool) -> Found:
    """Degrees Celsius; empty is the standard one. `is_meant` as for the pressure."""
    if not text.strip():
        return STANDARD_TEMPERATURE_C, say(
            "Left empty: {temperature:.0f} °C assumed.", temperature=STANDARD_TEMPERATURE_C
        )
    typed = quantity(text)
    if typed is None:
        return None, _not_a_number(text, "°C")
    hot = typed.is_in("°C") and TEMPERATURE_C[1] < typed.value <= HOTTEST_F
    if typed.unit in FAHRENHEIT or (hot and not is_meant):
        return None, fahrenheit_offer(typed)
    return _within(typed, text, TEMPERATURE_C, "°C")


def read_pressure(
    text: str, elevation_m: float | None, at_sea_level: bool, is_meant: bool
) -> Found:
    """Station pressure, hPa; empty is the standard atmosphere's at this elevation.

    `at_sea_level`: the text is a pressure reduced to sea level. `is_meant`: when asked, the person
    said that it is right as it stands.
    """
    if not text.strip():
        return _assumed(elevation_m)
    typed = quantity(text)
    if typed is None or not (typed.is_in("hPa") or typed.unit in OTHER_PRESSURES):
        return None, _not_a_number(text, "hPa")
    if at_sea_level and SEA_LEVEL_HPA[0] <= typed.value <= SEA_LEVEL_HPA[1]:
        return _converted(typed.value, elevation_m)
    offer = None if is_meant else pressure_offer(typed.value, elevation_m or 0.0)
    if offer is not None:
        return None, offer
    if at_sea_level:
        return _within(typed, text, SEA_LEVEL_HPA, "hPa")
    return _as_station(typed, text, elevation_m)


def _assumed(elevation_m: float | None) -> Found:
    if elevation_m is None:
        return None, SettledFirst(
            say("Left empty: assumed from the elevation as soon as that is known.")
        )
    usual = standard_pressure_hpa(elevation_m)
    return usual, say(
        "Left empty: the default for {elevation:.0f} m is assumed, {pressure:.0f} hPa (standard "
        "atmosphere).",
        elevation=elevation_m,
        pressure=usual,
    )


def _converted(sea_level_hpa: float, elevation_m: float | None) -> Found:
    if elevation_m is None:
        return None, SettledFirst(say("To convert it, the elevation must be known."))
    station = station_pressure_hpa(sea_level_hpa, elevation_m)
    return station, say(
        "{sea_level:g} hPa at sea level make {station:.1f} hPa at {elevation:.0f} m.",
        sea_level=sea_level_hpa,
        station=station,
        elevation=elevation_m,
    )


def _as_station(typed: TypedQuantity, text: str, elevation_m: float | None) -> Found:
    value, said = _within(typed, text, STATION_HPA, "hPa")
    if value is None or elevation_m is None:
        return value, said
    usual = standard_pressure_hpa(elevation_m)
    if abs(value - usual) > WEATHER_HPA:
        return value, say(
            "Taken as you say, though about {usual:.0f} hPa are usual at {elevation:.0f} m.",
            usual=usual,
            elevation=elevation_m,
        )
    return value, said


def _within(typed: TypedQuantity, text: str, limits: tuple[float, float], unit: str) -> Found:
    if not typed.is_in(unit):
        return None, _not_a_number(text, unit)
    low, high = limits
    if not low <= typed.value <= high:
        return None, say(
            "{value:g} {unit} is outside {low:g} to {high:g} {unit}.",
            value=typed.value,
            low=low,
            high=high,
            unit=unit,
        )
    return typed.value, ""


def _not_a_number(text: str, unit: str) -> str:
    return say("“{shown}” is not a number of {unit}.", shown=text.strip()[:40], unit=unit)


# From what was typed on the Site page to a place and its air, or a sentence per field.

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
class SiteEntry:
    """`site` and `air` are there when no field is wrong and nothing is to be asked.

    Sentences and offers go by the field's name; a field is in one of the three at most.
    """

    site: Site | None = None
    air: Air | None = None
    wrong: dict[str, str] = field(default_factory=dict)
    understood: dict[str, str] = field(default_factory=dict)
    offers: dict[str, Offer] = field(default_factory=dict)


def read_site(typed: Typed) -> SiteEntry:
    """Reads all fields; empty temperature and pressure are assumed, and that is said."""
    reading = SiteEntry()
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
    reading: SiteEntry,
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


def _elevation(reading: SiteEntry, typed: Typed) -> float | None:
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


def _elevation_offer(found: TypedQuantity, typed: Typed) -> Offer | None:
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


def _in_metres(found: TypedQuantity | None, text: str) -> tuple[float | None, str]:
    if found is None or not found.is_in("m"):
        return None, say("“{shown}” is not a number of m.", shown=text[:40])
    low, high = ELEVATION_M
    if not low <= found.value <= high:
        return None, say(
            "{value:g} m is outside {low:g} to {high:g} m.", value=found.value, low=low, high=high
        )
    return found.value, ""


def _settle(reading: SiteEntry, name: str, found: Found) -> float | None:
    """Sorts a value with its sentence into the reading: without one it is wrong, asked or waits."""
    value, said = found
    if isinstance(said, Offer):
        reading.offers[name] = said
    elif isinstance(said, SettledFirst):
        reading.understood[name] = said.sentence
    elif value is None:
        reading.wrong[name] = said
    elif said:
        reading.understood[name] = said
    return value
