"""Random stars, dates and sites for comparisons with independent libraries; the seed is fixed."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from core.sky import catalogues, clocks
from core.sky.catalogues import Star
from core.sky.site import Site

DIURNAL_ABERRATION_RAD = np.radians(0.3192 / 3600.0)  # at the equator


@dataclass(frozen=True)
class Case:
    star: Star
    site: Site
    utc_s: float


def cases(count: int, last_year: int, seed: int = 20261124) -> list[Case]:
    """Stars of the table from bright to faint, dates from 1990 on, sites from pole to pole."""
    random = np.random.default_rng(seed)
    stars = catalogues.load_stars().stars
    first_s, last_s = clocks.parse_utc("1990-01-01T00Z"), clocks.parse_utc(f"{last_year}-12-31T00Z")
    chosen = random.choice(len(stars), count, replace=False)
    latitudes = np.degrees(np.arcsin(random.uniform(-0.999, 0.999, count)))
    longitudes = random.uniform(-180.0, 180.0, count)
    elevations = random.uniform(0.0, 3000.0, count)
    times = np.floor(random.uniform(first_s, last_s, count))
    return [
        Case(stars[index], Site(float(lat), float(lon), float(height)), float(utc_s))
        for index, lat, lon, height, utc_s in zip(
            chosen, latitudes, longitudes, elevations, times, strict=True
        )
    ]


def direction(azimuth_rad: float, altitude_rad: float) -> np.ndarray:
    """Unit vector (north, east, up)."""
    flat = np.cos(altitude_rad)
    return np.array([flat * np.cos(azimuth_rad), flat * np.sin(azimuth_rad), np.sin(altitude_rad)])


def carried_by_the_ground(seen: np.ndarray, site: Site) -> np.ndarray:
    """`seen` with diurnal aberration: a shift towards the east point by the observer's speed."""
    speed = DIURNAL_ABERRATION_RAD * np.cos(np.radians(site.latitude_deg))
    moved = seen + speed * np.array([0.0, 1.0, 0.0])
    return moved / np.linalg.norm(moved)


def apart_arcsec(first: np.ndarray, second: np.ndarray) -> float:
    return float(np.degrees(np.linalg.norm(first - second)) * 3600.0)
