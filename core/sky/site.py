"""The place an observer stands on, and the air above it."""

from __future__ import annotations

from dataclasses import dataclass

STANDARD_TEMPERATURE_C = 10.0
STANDARD_HUMIDITY = 0.5
VISUAL_WAVELENGTH_UM = 0.55


@dataclass(frozen=True)
class Site:
    """A place on the ground. Latitude is positive north, longitude positive east."""

    latitude_deg: float
    longitude_deg: float
    elevation_m: float = 0.0
    name: str = ""


@dataclass(frozen=True)
class Air:
    """The air that refracts. Pressure is the station's, not reduced to sea level; 0 means none."""

    pressure_hpa: float
    temperature_c: float = STANDARD_TEMPERATURE_C
    relative_humidity: float = STANDARD_HUMIDITY
    wavelength_um: float = VISUAL_WAVELENGTH_UM
    pressure_is_assumed: bool = False
