"""Air pressure and elevation as people type them: the station's pressure, and likely mix-ups.

The offers are data for a question; nothing is changed without a yes.
"""

from __future__ import annotations

from dataclasses import dataclass

from core.finding import Code, Finding
from core.sky.refraction import standard_pressure_hpa


class PressureUnit(Code):
    """What a pressure may have been typed in."""

    INCHES_OF_MERCURY = "inches of mercury"
    MILLIMETRES_OF_MERCURY = "millimetres of mercury"
    KILOPASCALS = "kilopascals"
    AT_SEA_LEVEL = "at sea level"


class Doubt(Code):
    """What to ask of a pressure or an elevation."""

    SEA_LEVEL_PRESSURE = "sea level pressure"
    ABOVE_ALL_GROUND = "above all ground"
    FEET = "feet"
    OTHER_UNIT = "other unit"


# ISO 2533:1975: temperature lapse, temperature at sea level, gravity, gas constant of dry air.
_LAPSE_K_PER_M, _SEA_LEVEL_K, _SEA_LEVEL_HPA = 0.0065, 288.15, 1013.25
_POWER = 287.05287 * _LAPSE_K_PER_M / 9.80665  # 0.190263

METRES_PER_FOOT = 0.3048
# Weather moves the pressure at a place by less than this either way.
WEATHER_HPA = 60.0
HIGHEST_GROUND_M = 8849.0
# How many hPa one of these is (ISO 80000-4 for the conventional columns of mercury).
_HPA_PER: dict[Code, float] = {
    PressureUnit.INCHES_OF_MERCURY: 33.86389,
    PressureUnit.MILLIMETRES_OF_MERCURY: 1.333224,
    PressureUnit.KILOPASCALS: 10.0,
}


@dataclass(frozen=True)
class Offer:
    """What was typed, what may have been meant, and what to ask."""

    typed: float
    guess: float
    question: Finding | str  # a text where whoever asks has worded it


def station_pressure_hpa(sea_level_hpa: float, elevation_m: float) -> float:
    """Pressure at the station from the one reduced to sea level (QNH), by the standard atmosphere.

    The altimeter-setting relation of ICAO's Manual of the Standard Atmosphere (Doc 7488, from
    memory). Weather services that reduce with the day's own temperature differ by up to a few
    hPa at high stations: 0.3″ in the refraction at 45°.
    """
    fallen = _SEA_LEVEL_HPA**_POWER * _LAPSE_K_PER_M / _SEA_LEVEL_K * elevation_m
    return float(max(sea_level_hpa**_POWER - fallen, 0.0) ** (1.0 / _POWER))


def pressure_offer(typed_hpa: float, elevation_m: float) -> Offer | None:
    """A likelier station pressure for a number typed as hPa; None when it fits the elevation."""
    expected_hpa = standard_pressure_hpa(elevation_m)
    if typed_hpa <= 0.0 or abs(typed_hpa - expected_hpa) <= WEATHER_HPA:
        return None  # zero is how one asks for no refraction
    for unit, hpa in _HPA_PER.items():
        if abs(typed_hpa * hpa - expected_hpa) <= WEATHER_HPA:
            return _in_unit(typed_hpa, Finding.of(unit), round(typed_hpa * hpa, 1))
        station_hpa = station_pressure_hpa(typed_hpa * hpa, elevation_m)
        if abs(station_hpa - expected_hpa) <= WEATHER_HPA:
            return _in_unit(
                typed_hpa, Finding.of(PressureUnit.AT_SEA_LEVEL, unit=unit), round(station_hpa, 1)
            )
    station_hpa = round(station_pressure_hpa(typed_hpa, elevation_m), 1)
    if abs(station_hpa - expected_hpa) <= WEATHER_HPA:
        return Offer(
            typed_hpa,
            station_hpa,
            Finding.of(
                Doubt.SEA_LEVEL_PRESSURE,
                typed=typed_hpa,
                elevation=elevation_m,
                station=station_hpa,
            ),
        )
    return None


def elevation_offer(typed_m: float, station_hpa: float | None) -> Offer | None:
    """The elevation in metres when the number typed looks like feet; None when it need not.

    `station_hpa` is a pressure known to be the station's, None if there is none; without it only
    elevations above all ground can be told.
    """
    metres = round(typed_m * METRES_PER_FOOT, 1)
    if typed_m > HIGHEST_GROUND_M:
        doubt = Doubt.ABOVE_ALL_GROUND
    elif station_hpa is None or not _fits(station_hpa, metres) or _fits(station_hpa, typed_m):
        return None
    else:
        doubt = Doubt.FEET
    question = Finding.of(doubt, typed=typed_m, station=station_hpa, metres=metres)
    return Offer(typed_m, metres, question)


def _fits(station_hpa: float, elevation_m: float) -> bool:
    return abs(station_hpa - standard_pressure_hpa(elevation_m)) <= WEATHER_HPA


def _in_unit(typed_hpa: float, unit: Finding, guess_hpa: float) -> Offer:
    return Offer(
        typed_hpa,
        guess_hpa,
        Finding.of(Doubt.OTHER_UNIT, typed=typed_hpa, unit=unit, guess=guess_hpa),
    )
