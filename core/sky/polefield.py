"""The stars around the elevated pole, to be recognised in a finder or a polar-axis sight."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from core.sky import catalogue
from core.sky.catalogue import Catalogue, Star
from core.sky.observed import ObservedSky
from core.sky.site import Air, Site

Floats = NDArray[np.float64]

POLE_STARS = Path(__file__).parents[2] / "resources" / "pole_stars.csv"
WIDEST_DEG = 3.0  # the table is whole so far from the pole of any date from 1990 to 2060


@dataclass(frozen=True, eq=False)
class PoleField:
    """Stars near the elevated pole at one moment, brightest first; arrays are (n,).

    `polar_distance_arcmin` is from the true pole of the night and `hour_angle_deg` in [−180, 180),
    west positive, is the angle at the pole; both without refraction. `azimuth_deg` and
    `altitude_deg` are observed, refraction included.
    """

    stars: tuple[Star, ...]
    magnitude: Floats
    polar_distance_arcmin: Floats
    hour_angle_deg: Floats
    azimuth_deg: Floats
    altitude_deg: Floats


@cache
def load() -> Catalogue:
    """The bundled table of both poles, read once. Raises RuntimeError, a sentence."""
    return catalogue.read(POLE_STARS)


def pole_field(site: Site, air: Air, utc_s: float, within_deg: float = WIDEST_DEG) -> PoleField:
    """Stars to about magnitude 8 within that distance of this site's pole.

    Costs well under a millisecond; call it again for every tick of the clock.
    """
    table = load()
    sky = ObservedSky.at(site, air, utc_s)
    hour_angle_deg, declination_deg = sky.equatorial_deg(table.astrometry)
    azimuth_deg, altitude_deg = sky.horizontal_deg(table.astrometry)
    pole_deg = 90.0 if site.latitude_deg >= 0.0 else -90.0
    distance_deg = np.abs(pole_deg - declination_deg)
    near = np.flatnonzero(distance_deg <= within_deg)
    return PoleField(
        stars=tuple(table.stars[index] for index in near),
        magnitude=np.array([table.stars[index].magnitude for index in near]),
        polar_distance_arcmin=60.0 * distance_deg[near],
        hour_angle_deg=hour_angle_deg[near],
        azimuth_deg=azimuth_deg[near],
        altitude_deg=altitude_deg[near],
    )
