"""The air as typed on the Site page: temperature and pressure, each with what is said of it."""

from __future__ import annotations

from dataclasses import dataclass

from app.pages.site.numbers import (
    FAHRENHEIT,
    OTHER_PRESSURES,
    Quantity,
    fahrenheit_offer,
    quantity,
)
from core.language import say
from core.sky.pressure import WEATHER_HPA, Offer, pressure_offer, station_pressure_hpa
from core.sky.refraction import standard_pressure_hpa
from core.sky.site import STANDARD_TEMPERATURE_C

TEMPERATURE_C = (-60.0, 55.0)
HOTTEST_F = 130.0
STATION_HPA = (400.0, 1100.0)
SEA_LEVEL_HPA = (850.0, 1090.0)  # a little beyond what was ever measured


@dataclass(frozen=True)
class Waiting:
    """Nothing is wrong with the field, but another has to be settled first, as is said."""

    sentence: str


# A value; the sentence about it, empty when there is nothing to say. Without a value the sentence
# tells why, or there is something to ask or to wait for.
Found = tuple[float | None, str | Offer | Waiting]


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
        return None, Waiting(
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
        return None, Waiting(say("To convert it, the elevation must be known."))
    station = station_pressure_hpa(sea_level_hpa, elevation_m)
    return station, say(
        "{sea_level:g} hPa at sea level make {station:.1f} hPa at {elevation:.0f} m.",
        sea_level=sea_level_hpa,
        station=station,
        elevation=elevation_m,
    )


def _as_station(typed: Quantity, text: str, elevation_m: float | None) -> Found:
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


def _within(typed: Quantity, text: str, limits: tuple[float, float], unit: str) -> Found:
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
