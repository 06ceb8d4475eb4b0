"""Bright stars, clusters, nebulae and galaxies: their lists, and finding one by its name."""

from __future__ import annotations

import csv
import re
import unicodedata
from dataclasses import dataclass, field
from functools import cache
from pathlib import Path

import erfa
import numpy as np
from numpy.typing import NDArray

from core.finding import BrokenInstallation, Code, Refused
from core.sky import clocks, places
from core.sky.refraction import Refraction
from core.sky.site import Air, Site


class ObjectKind(Code):
    """What an object of the deep sky may be; the value is how the table has it."""

    GALAXY = "galaxy"
    OPEN_CLUSTER = "open cluster"
    STAR = "star"
    OBJECT_OF_UNKNOWN_KIND = "object of unknown kind"
    DOUBLE_STAR = "double star"
    PAIR_OF_GALAXIES = "pair of galaxies"
    GLOBULAR_CLUSTER = "globular cluster"
    PLANETARY_NEBULA = "planetary nebula"
    NEBULA = "nebula"
    EMISSION_NEBULA = "emission nebula"
    CLUSTER_WITH_NEBULA = "cluster with nebula"
    STAR_GROUP = "star group"
    REFLECTION_NEBULA = "reflection nebula"
    TRIPLET_OF_GALAXIES = "triplet of galaxies"
    GROUP_OF_GALAXIES = "group of galaxies"
    SUPERNOVA_REMNANT = "supernova remnant"
    NOVA = "nova"
    DARK_NEBULA = "dark nebula"


class TableFault(Code):
    """What is wrong with a bundled table."""

    OTHER_COLUMNS = "other columns"
    STARS_UNREADABLE = "stars unreadable"
    DEEP_SKY_UNREADABLE = "deep sky unreadable"
    NO_KIND = "no kind"


# Bright stars: finding one by its name, its place tonight, and which of them are up now.

Floats = NDArray[np.float64]

STARS = Path(__file__).parents[2] / "resources" / "stars.csv"
_MAS_RAD = np.radians(1.0 / 3_600_000.0)
_MOST_LIFT_DEG = 2.0  # by refraction; 1.14° at −60 °C and 1100 hPa, so nothing is missed
_STAR_HEADER = [
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
        key = _star_key(text)
        number = key.removeprefix("hip")
        if number.isdecimal() and len(number) < 7:
            return self.by_hip.get(int(number))
        return self.by_name.get(key)

    def beginning_with(self, text: str) -> list[Star]:
        """Stars with a name that begins so, brightest first; for offering while someone types."""
        key = _star_key(text)
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
        hour_angle, dec = places.geometric_place_rad(ra_deg, dec_deg, site, utc_s)
        azimuth, true_altitude = erfa.hd2ae(hour_angle, dec, np.radians(site.latitude_deg))
        near = np.flatnonzero(np.degrees(true_altitude) >= min_altitude_deg - _MOST_LIFT_DEG)
        altitude_deg = np.degrees(Refraction.of(air).observed_altitude_rad(true_altitude[near]))
        is_up = np.flatnonzero(altitude_deg >= min_altitude_deg)[:limit]
        up = near[is_up]
        rows = np.degrees(azimuth[up]), altitude_deg[is_up], np.degrees(hour_angle[up])
        seen = zip(up.tolist(), *(row.tolist() for row in rows), strict=True)
        return [StarNow(self.stars[index], *angles) for index, *angles in seen]


@cache
def load_stars() -> Catalogue:
    """The bundled table, read once. Raises BrokenInstallation if it cannot be read."""
    return read_stars(STARS)


def read_stars(path: Path) -> Catalogue:
    """The table that resources/build_stars.py writes. Raises BrokenInstallation."""
    try:
        with path.open(encoding="utf-8", newline="") as file:
            header, *rows = csv.reader(file)
        if header != _STAR_HEADER:
            raise Refused(TableFault.OTHER_COLUMNS)
        return _catalogue(rows)
    except (OSError, ValueError, csv.Error) as error:
        raise BrokenInstallation(TableFault.STARS_UNREADABLE, path=path, problem=error) from error


def _catalogue(rows: list[list[str]]) -> Catalogue:
    stars, names = [], {}
    for hip, name, other_names, constellation, *texts in rows:
        shown = name or f"HIP {hip} ({constellation})"
        ra, dec, pm_ra, pm_dec, parallax, magnitude = map(float, texts)
        star = Star(int(hip), shown, ra, dec, pm_ra, pm_dec, parallax, magnitude, constellation)
        stars.append(star)
        if name:
            names.update(dict.fromkeys(map(_star_key, (name, *other_names.split("|"))), star))
    names.pop("", None)
    astrometry = np.array([row[4:9] for row in rows], dtype=np.float64).T
    return Catalogue(tuple(stars), astrometry, {star.hip: star for star in stars}, names)


def _star_key(name: str) -> str:
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
    earth, _ = erfa.apci13(*clocks.julian_dates_tt(utc_s))
    direction = erfa.pmpx(
        *(np.radians(ra_deg), np.radians(dec_deg), *motion, parallax_mas / 1000.0),
        *(0.0, earth["pmt"], earth["eb"]),
    )
    ra_rad, dec_rad = erfa.c2s(direction)
    return np.degrees(erfa.anp(ra_rad)), np.degrees(dec_rad)


# Clusters, nebulae and galaxies: finding one by any of its names, and all of them as arrays.

TABLE = Path(__file__).parents[2] / "resources" / "deep_sky.csv"
_DEEP_SKY_HEADER = [
    *("name", "other_names", "kind", "constellation", "ra_deg", "dec_deg"),
    *("magnitude", "magnitude_band", "size_arcmin"),
]
_MESSIER = re.compile(r"M \d+$")
_MARKS = re.compile(r"[\W_]+")
_LONG_FORM = re.compile(r"^(?:messier|caldwell)(?=\d)")
_LEADING_ZEROS = re.compile(r"(?<!\d)0+(?=\d)")
_NUMBERED = re.compile(r"(M|C|NGC|IC) \d")


@dataclass(frozen=True)
class DeepSkyObject:
    """ICRS place; proper motion is nothing at this distance.

    `magnitude` is visual where `magnitude_band` is "V", blue where it is "B" (galaxies look up to
    a magnitude brighter than that), None where none is known. `size_arcmin`: its longer axis.
    """

    name: str
    other_names: tuple[str, ...]
    kind: ObjectKind
    constellation: str
    ra_deg: float
    dec_deg: float
    magnitude: float | None
    magnitude_band: str
    size_arcmin: float | None

    @property
    def messier(self) -> str | None:
        """Its number in Messier's list, as "M 31"."""
        names = (self.name, *self.other_names)
        return next((name for name in names if _MESSIER.match(name)), None)

    @property
    def common_names(self) -> tuple[str, ...]:
        """Names that are not a number in a catalogue."""
        return tuple(name for name in self.other_names if not _NUMBERED.match(name))

    @property
    def title(self) -> str:
        """What people call it: "M 31, Andromeda Galaxy", "NGC 7000, North America Nebula"."""
        return ", ".join([self.messier or self.name, *self.common_names[:1]])


@dataclass(frozen=True, eq=False)
class DeepSky:
    """All objects, brightest first; `ra_deg`, `dec_deg`, `magnitude`, `size_arcmin` (n,) beside.

    Unknown magnitudes and sizes are NaN in the arrays. `names`: every name of every object as
    `search_key` makes it, with the object's index; `endings`: the same from a later word on.
    """

    objects: tuple[DeepSkyObject, ...]
    ra_deg: Floats = field(repr=False)
    dec_deg: Floats = field(repr=False)
    magnitude: Floats = field(repr=False)
    size_arcmin: Floats = field(repr=False)
    names: tuple[tuple[str, int], ...] = field(repr=False)
    endings: tuple[tuple[str, int], ...] = field(repr=False)

    def find(self, text: str) -> DeepSkyObject | None:
        """The object of this name or number ("m31", "NGC 224", "andromeda galaxy"), else None.

        Capitals, spaces, hyphens, accents and leading zeros do not matter. Of two that share a
        name, one of Messier's comes first, then the brighter.
        """
        key = search_key(text)
        hits = [self.objects[index] for name, index in self.names if key and name == key]
        return min(hits, key=lambda hit: hit.messier is None, default=None)

    def beginning_with(self, text: str, limit: int = 20) -> list[DeepSkyObject]:
        """Objects with a name, or a word of one, that begins so; for offering while someone types.

        The exact name first, then Messier's, then the brighter.
        """
        key = search_key(text)
        hits: dict[int, bool] = {}
        for name, index in (*self.names, *self.endings):
            if key and name.startswith(key):
                hits[index] = hits.get(index, False) or name == key
        order = sorted(hits, key=lambda i: (not hits[i], self.objects[i].messier is None, i))
        return [self.objects[index] for index in order[:limit]]


@cache
def load_deep_sky() -> DeepSky:
    """The bundled table, read once. Raises BrokenInstallation if it cannot be read."""
    return read_deep_sky(TABLE)


def read_deep_sky(path: Path) -> DeepSky:
    """The table that resources/build_deep_sky.py writes. Raises BrokenInstallation."""
    try:
        with path.open(encoding="utf-8", newline="") as file:
            header, *rows = csv.reader(file)
        if header != _DEEP_SKY_HEADER:
            raise Refused(TableFault.OTHER_COLUMNS)
        return _gathered([_object(row) for row in rows])
    except (OSError, ValueError, csv.Error) as error:
        raise BrokenInstallation(
            TableFault.DEEP_SKY_UNREADABLE, path=path, problem=error
        ) from error


def search_key(name: str) -> str:
    """The name without capitals, accents, spaces, marks and leading zeros, for comparing."""
    plain = unicodedata.normalize("NFKD", name).casefold()
    joined = _MARKS.sub("", plain)
    return _LEADING_ZEROS.sub("", _LONG_FORM.sub(lambda found: found[0][0], joined))


def _kind(text: str) -> ObjectKind:
    try:
        return ObjectKind(text)
    except ValueError:
        raise Refused(TableFault.NO_KIND, kind=text) from None


def _object(row: list[str]) -> DeepSkyObject:
    name, others, kind, constellation, ra_deg, dec_deg, magnitude, band, size = row
    return DeepSkyObject(
        name,
        tuple(filter(None, others.split("|"))),
        _kind(kind),
        constellation,
        float(ra_deg),
        float(dec_deg),
        float(magnitude) if magnitude else None,
        band,
        float(size) if size else None,
    )


def _gathered(objects: list[DeepSkyObject]) -> DeepSky:
    columns = [
        (one.ra_deg, one.dec_deg, _number(one.magnitude), _number(one.size_arcmin))
        for one in objects
    ]
    names = [
        (search_key(name), index)
        for index, one in enumerate(objects)
        for name in (one.name, *one.other_names)
    ]
    endings = [
        (search_key(ending), index)
        for index, one in enumerate(objects)
        for name in one.common_names
        for ending in _endings(name)
    ]
    ra_deg, dec_deg, magnitude, size_arcmin = np.array(columns, dtype=np.float64).T
    return DeepSky(
        *(tuple(objects), ra_deg, dec_deg, magnitude, size_arcmin), tuple(names), tuple(endings)
    )


def _endings(name: str) -> list[str]:
    words = name.split()
    return [" ".join(words[begin:]) for begin in range(1, len(words))]


def _number(value: float | None) -> float:
    return np.nan if value is None else value
