"""From what was typed on the Site page to a place and its air, or a sentence per field."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass, field

from core.sky.coordinates import (
    UnusableCoordinates,
    format_latitude,
    format_longitude,
    parse_latitude,
    parse_longitude,
)
from core.sky.refraction import standard_pressure_hpa
from core.sky.site import STANDARD_TEMPERATURE_C, Air, Site

# Where people stand with a telescope; beyond these a slip of the pen is likelier.
ELEVATION_M = (-450.0, 6500.0)
TEMPERATURE_C = (-60.0, 55.0)
PRESSURE_HPA = (400.0, 1100.0)
# Weather moves the pressure by less than this; more points to a value reduced to sea level.
WEATHER_HPA = 60.0


@dataclass(frozen=True)
class Typed:
    """The texts of the form, as typed."""

    name: str = ""
    latitude: str = ""
    longitude: str = ""
    elevation: str = ""
    temperature: str = ""
    pressure: str = ""


@dataclass
class Reading:
    """`site` and `air` are there when no field is wrong. Sentences go by the field's name."""

    site: Site | None = None
    air: Air | None = None
    wrong: dict[str, str] = field(default_factory=dict)
    understood: dict[str, str] = field(default_factory=dict)


def read_site(typed: Typed) -> Reading:
    """Reads all fields; empty temperature and pressure are assumed, and that is said."""
    reading = Reading()
    latitude = _angle(reading, "latitude", typed.latitude, parse_latitude, format_latitude)
    longitude = _angle(reading, "longitude", typed.longitude, parse_longitude, format_longitude)
    elevation = _elevation(reading, typed.elevation)
    temperature = _temperature(reading, typed.temperature)
    pressure, is_assumed = _pressure(reading, typed.pressure, elevation)
    if latitude is None or longitude is None or elevation is None:
        return reading
    if temperature is None or pressure is None or reading.wrong:
        return reading
    reading.site = Site(latitude, longitude, elevation, typed.name.strip())
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


def _elevation(reading: Reading, text: str) -> float | None:
    if not text.strip():
        reading.wrong["elevation"] = (
            "The elevation is empty. A rough figure will do: 100 m matter less than 1″."
        )
        return None
    return _number(reading, "elevation", text, ELEVATION_M, "m")


def _temperature(reading: Reading, text: str) -> float | None:
    if not text.strip():
        reading.understood["temperature"] = f"Left empty: {STANDARD_TEMPERATURE_C:.0f} °C assumed."
        return STANDARD_TEMPERATURE_C
    return _number(reading, "temperature", text, TEMPERATURE_C, "°C")


def _pressure(reading: Reading, text: str, elevation: float | None) -> tuple[float | None, bool]:
    usual = None if elevation is None else standard_pressure_hpa(elevation)
    if not text.strip():
        if usual is not None:
            reading.understood["pressure"] = (
                f"Left empty: {usual:.0f} hPa assumed from {elevation:.0f} m of elevation."
            )
        return usual, True
    value = _number(reading, "pressure", text, PRESSURE_HPA, "hPa")
    if value is not None and usual is not None and abs(value - usual) > WEATHER_HPA:
        reading.understood["pressure"] = (
            f"About {usual:.0f} hPa are usual at {elevation:.0f} m. If {value:.0f} hPa is reduced "
            "to sea level, leave this empty."
        )
    return value, False


def _number(
    reading: Reading, name: str, text: str, limits: tuple[float, float], unit: str
) -> float | None:
    plain = text.strip().removesuffix(unit).strip().replace(",", ".").replace("−", "-")
    low, high = limits
    if not re.fullmatch(r"[+-]?\d+(\.\d*)?", plain):
        reading.wrong[name] = f"“{text.strip()}” is not a number of {unit}."
        return None
    value = float(plain)
    if not low <= value <= high:
        reading.wrong[name] = f"{value:g} {unit} is outside {low:g} to {high:g} {unit}."
        return None
    return value
