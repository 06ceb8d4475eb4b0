"""Bright stars: finding one by its name, its place tonight, and which of them are up now."""

from __future__ import annotations

import csv
import unicodedata
from dataclasses import dataclass, field
from functools import cache
from pathlib import Path

import erfa
import numpy as np
from numpy.typing import NDArray

from core.language import say
from core.sky import clock, place
from core.sky.refraction import Refraction
from core.sky.site import Air, Site

Floats = NDArray[np.float64]

STARS = Path(__file__).parents[2] / "resources" / "stars.csv"
_MAS_RAD = np.radians(1.0 / 3_600_000.0)
_MOST_LIFT_DEG = 2.0  # by refraction; 1.14° at −60 °C and 1100 hPa, so nothing is missed
_HEADER = [
    *("hip", "name", "other_names", "constellation", "ra_deg", "dec_deg"),
    *("pm_ra_mas_yr", "pm_dec_mas_yr", "parallax_mas", "magnitude"),
]


@dataclass(frozen=True)
class Star:
    """A catalogue star: ICRS place at epoch J2000.0.

    `pm_ra_mas_yr` includes the factor cos δ. `magnitude` is Hipparcos Hp, within a few tenths of
    the visual one. `name` is its usual name, or like "HIP 12345 (Cygnus)" where it has none.
    """

    hip: int
    name: str
    ra_deg: float
    dec_deg: float
    pm_ra_mas_yr: float
    pm_dec_mas_yr: float
    parallax_mas: float
    magnitude: float
    constellation: str


@dataclass(frozen=True)
class StarNow:
    """A star as it is seen: azimuth from north through east, altitude refracted.

    `hour_angle_deg` is in [−180, 180), west of the meridian positive.
    """

    star: Star
    azimuth_deg: float
    altitude_deg: float
    hour_angle_deg: float


@dataclass(frozen=True, eq=False)
class Catalogue:
    """All stars, brightest first.

    `astrometry` (5, n): the numbers of `stars` from `ra_deg` to `parallax_mas`, for work on all at
    once. `by_name`: usual and other names, each as `_key` makes it.
    """

    stars: tuple[Star, ...]
    astrometry: Floats = field(repr=False)
    by_hip: dict[int, Star] = field(repr=False)
    by_name: dict[str, Star] = field(repr=False)

    def find(self, text: str) -> Star | None:
        """The star of this name or number ("vega", "HIP 91262", "91262"); None if there is none.

        Capitals, spaces, hyphens and accents do not matter.
        """
        key = _key(text)
        number = key.removeprefix("hip")
        if number.isdecimal() and len(number) < 7:
            return self.by_hip.get(int(number))
        return self.by_name.get(key)

    def beginning_with(self, text: str) -> list[Star]:
        """Stars with a name that begins so, brightest first; for offering while someone types."""
        key = _key(text)
        hits = {star.hip: star for name, star in self.by_name.items() if name.startswith(key)}
        return sorted(hits.values(), key=lambda star: (star.magnitude, star.hip)) if key else []

    def at_epoch(self, star: Star, utc_s: float) -> tuple[float, float]:
        """ICRS place as seen from the Earth at that time, degrees: proper motion and parallax."""
        numbers = star.ra_deg, star.dec_deg, star.pm_ra_mas_yr, star.pm_dec_mas_yr
        ra_deg, dec_deg = _moved_deg(np.array([*numbers, star.parallax_mas]), utc_s)
        return float(ra_deg), float(dec_deg)

    def up_now(
        self, site: Site, air: Air, utc_s: float, min_altitude_deg: float, limit: int
    ) -> list[StarNow]:
        """Up to `limit` stars no lower than `min_altitude_deg` as seen, brightest first."""
        ra_deg, dec_deg = _moved_deg(self.astrometry, utc_s)
        hour_angle, dec = place.geometric_place_rad(ra_deg, dec_deg, site, utc_s)
        azimuth, true_altitude = erfa.hd2ae(hour_angle, dec, np.radians(site.latitude_deg))
        near = np.flatnonzero(np.degrees(true_altitude) >= min_altitude_deg - _MOST_LIFT_DEG)
        altitude_deg = np.degrees(Refraction.of(air).observed_altitude_rad(true_altitude[near]))
        is_up = np.flatnonzero(altitude_deg >= min_altitude_deg)[:limit]
        up = near[is_up]
        rows = np.degrees(azimuth[up]), altitude_deg[is_up], np.degrees(hour_angle[up])
        seen = zip(up.tolist(), *(row.tolist() for row in rows), strict=True)
        return [StarNow(self.stars[index], *angles) for index, *angles in seen]


@cache
def load() -> Catalogue:
    """The bundled table, read once. Raises RuntimeError, a sentence, if it cannot be read."""
    return read(STARS)


def read(path: Path) -> Catalogue:
    """The table that resources/build_stars.py writes. Raises RuntimeError, a sentence."""
    try:
        with path.open(encoding="utf-8", newline="") as file:
            header, *rows = csv.reader(file)
        if header != _HEADER:
            raise ValueError(say("its columns are not the ones expected"))
        return _catalogue(rows)
    except (OSError, ValueError, csv.Error) as error:
        raise RuntimeError(
            say(
                "The table of stars {path} cannot be read ({problem}). Install Poleward "
                "again; until then stars can be entered by their coordinates.",
                path=path,
                problem=error,
            )
        ) from error


def _catalogue(rows: list[list[str]]) -> Catalogue:
    stars, names = [], {}
    for hip, name, other_names, constellation, *texts in rows:
        shown = name or f"HIP {hip} ({constellation})"
        ra, dec, pm_ra, pm_dec, parallax, magnitude = map(float, texts)
        star = Star(int(hip), shown, ra, dec, pm_ra, pm_dec, parallax, magnitude, constellation)
        stars.append(star)
        if name:
            names.update(dict.fromkeys(map(_key, (name, *other_names.split("|"))), star))
    names.pop("", None)
    astrometry = np.array([row[4:9] for row in rows], dtype=np.float64).T
    return Catalogue(tuple(stars), astrometry, {star.hip: star for star in stars}, names)


def _key(name: str) -> str:
    """The name without capitals, accents, spaces and marks, for comparing."""
    plain = unicodedata.normalize("NFKD", name).casefold()
    return "".join(character for character in plain if character.isalnum())


def _moved_deg(astrometry: Floats, utc_s: float) -> tuple[Floats, Floats]:
    """Direction from the Earth at that time (eraPmpx), radial velocity taken as zero.

    `astrometry` (5,) or (5, n): ra_deg, dec_deg, pm_ra_mas_yr, pm_dec_mas_yr, parallax_mas.
    """
    ra_deg, dec_deg, pm_ra_mas_yr, pm_dec_mas_yr, parallax_mas = astrometry
    cos_dec = np.cos(np.radians(dec_deg))
    motion = pm_ra_mas_yr * _MAS_RAD / cos_dec, pm_dec_mas_yr * _MAS_RAD
    earth, _ = erfa.apci13(*clock.julian_dates_tt(utc_s))
    direction = erfa.pmpx(
        *(np.radians(ra_deg), np.radians(dec_deg), *motion, parallax_mas / 1000.0),
        *(0.0, earth["pmt"], earth["eb"]),
    )
    ra_rad, dec_rad = erfa.c2s(direction)
    return np.degrees(erfa.anp(ra_rad)), np.degrees(dec_rad)
