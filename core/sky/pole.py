"""The celestial pole over a site, the star that marks it, and the stars around it."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from pathlib import Path

import erfa
import numpy as np
from numpy.typing import NDArray

from core.sky import catalogues, clocks, places
from core.sky.catalogues import Catalogue, Star
from core.sky.places import ObservedSky
from core.sky.refraction import Refraction
from core.sky.site import Air, Site
from core.units import SIDEREAL_RATE_RAD_PER_S, TURN_RAD

# The celestial pole over a site and the star that marks it.

NORTH_HIP, SOUTH_HIP = 11767, 104382  # Polaris, σ Octantis
_ROUNDS = 3  # each brings a time a hundred times nearer: the star hardly moves against the pole


@dataclass(frozen=True)
class Pole:
    """The elevated pole: azimuth 0 in the north (the equator counts as north), 180 in the south."""

    azimuth_deg: float
    true_altitude_deg: float
    refracted_altitude_deg: float

    @property
    def refraction_arcsec(self) -> float:
        """How far the air lifts the pole."""
        return 3600.0 * (self.refracted_altitude_deg - self.true_altitude_deg)


@dataclass(frozen=True)
class PoleStar:
    """The pole star at one moment.

    `right_ascension_deg` (from the true equinox of date) and `declination_deg` are the geocentric
    apparent place; `hour_angle_deg` in [−180, 180) is west positive; `polar_distance_arcmin` is
    from the true pole. `azimuth_deg` and `altitude_deg` are observed: diurnal aberration and
    refraction included.
    """

    star: Star
    right_ascension_deg: float
    declination_deg: float
    hour_angle_deg: float
    polar_distance_arcmin: float
    azimuth_deg: float
    altitude_deg: float


@dataclass(frozen=True)
class PoleStarTurns:
    """When the pole star next stands straight above and below the pole and farthest to its sides.

    `widest_deg`: how far from the pole's azimuth it gets. The elongations and `widest_deg` are
    None so near a pole of the Earth that the star passes beyond the zenith and circles it.
    """

    upper_culmination_utc_s: float
    lower_culmination_utc_s: float
    eastern_elongation_utc_s: float | None
    western_elongation_utc_s: float | None
    widest_deg: float | None


def elevated_pole(site: Site, air: Air) -> Pole:
    """The pole above this site's horizon, without and with refraction."""
    true_altitude_deg = abs(site.latitude_deg)
    seen = Refraction.of(air).observed_altitude_rad(np.radians(true_altitude_deg))
    azimuth_deg = 0.0 if site.latitude_deg >= 0.0 else 180.0
    return Pole(azimuth_deg, true_altitude_deg, float(np.degrees(seen)))


def pole_star_of(site: Site) -> Star:
    """Polaris in the north (the equator counts as north), σ Octantis in the south."""
    return catalogues.load_stars().by_hip[NORTH_HIP if site.latitude_deg >= 0.0 else SOUTH_HIP]


def pole_star(site: Site, air: Air, utc_s: float) -> PoleStar:
    """Where the pole star of this hemisphere is."""
    star = pole_star_of(site)
    moved_deg = catalogues.load_stars().at_epoch(star, utc_s)
    ra_rad, dec_rad = places.apparent_place_rad(*moved_deg, utc_s)
    origins_rad = erfa.eo06a(*clocks.julian_dates_tt(utc_s))
    hour_angle_rad, _ = places.geometric_place_rad(*moved_deg, site, utc_s)
    numbers = star.ra_deg, star.dec_deg, star.pm_ra_mas_yr, star.pm_dec_mas_yr, star.parallax_mas
    seen = ObservedSky.at(site, air, utc_s).horizontal_deg(np.array([numbers]).T)
    return PoleStar(
        star=star,
        right_ascension_deg=float(np.degrees(erfa.anp(ra_rad - origins_rad))),
        declination_deg=float(np.degrees(dec_rad)),
        hour_angle_deg=float(np.degrees(hour_angle_rad)),
        polar_distance_arcmin=60.0 * (90.0 - abs(float(np.degrees(dec_rad)))),
        azimuth_deg=float(seen[0][0]),
        altitude_deg=float(seen[1][0]),
    )


def pole_star_turns(site: Site, utc_s: float) -> PoleStarTurns:
    """The next culminations and elongations after that time, each within a sidereal day.

    Refraction changes none of them: it lifts the star along its vertical circle.
    """
    moved_deg = catalogues.load_stars().at_epoch(pole_star_of(site), utc_s)
    _, dec_rad = places.apparent_place_rad(*moved_deg, utc_s)
    latitude_rad, dec_rad = abs(np.radians(site.latitude_deg)), abs(dec_rad)
    east = west = widest_deg = None
    if latitude_rad < dec_rad:
        # At an elongation the angle at the star is a right one (Napier's rule).
        side = float(np.arccos(np.tan(latitude_rad) / np.tan(dec_rad)))
        east = _next_at(-side, moved_deg, site, utc_s)
        west = _next_at(side, moved_deg, site, utc_s)
        widest_deg = float(np.degrees(np.arcsin(np.cos(dec_rad) / np.cos(latitude_rad))))
    return PoleStarTurns(
        upper_culmination_utc_s=_next_at(0.0, moved_deg, site, utc_s),
        lower_culmination_utc_s=_next_at(np.pi, moved_deg, site, utc_s),
        eastern_elongation_utc_s=east,
        western_elongation_utc_s=west,
        widest_deg=widest_deg,
    )


def _next_at(
    hour_angle_rad: float, moved_deg: tuple[float, float], site: Site, utc_s: float
) -> float:
    """When the star next has this hour angle."""
    now, _ = places.geometric_place_rad(*moved_deg, site, utc_s)
    when_s = utc_s + float((hour_angle_rad - now) % TURN_RAD) / SIDEREAL_RATE_RAD_PER_S
    for _ in range(_ROUNDS):
        then, _ = places.geometric_place_rad(*moved_deg, site, when_s)
        missing = float((hour_angle_rad - then + np.pi) % TURN_RAD) - np.pi
        when_s += missing / SIDEREAL_RATE_RAD_PER_S
    return when_s


# The stars around the elevated pole, to be recognised in a finder or a polar-axis sight.

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
    return catalogues.read_stars(POLE_STARS)


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
