"""Reference stars for setting up a go-to mount: which, how to find them, and how it points."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from itertools import combinations

import erfa
import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.language import marked, say
from core.mount.equipment import MountKind
from core.night.flip import PierSide
from core.sky.almanac import Light, light_at
from core.sky.bodies import Body, BodyNow
from core.sky.catalogues import Catalogue, StarNow
from core.sky.places import separation_deg
from core.sky.site import Air, Site
from core.sky.words import direction_words

# How to find a star by eye: direction, height in fists, and its brighter neighbours.

_NEIGHBOURHOOD_DEG = 30.0
_MISTAKEN_DEG = 20.0
_FIST_DEG = 10.0  # a fist at arm's length; common practice, no source
_OVERHEAD_DEG = 75.0
_WAYS = (
    marked("right"),
    marked("upper right"),
    marked("above"),
    marked("upper left"),
    marked("left"),
    marked("lower left"),
    marked("below"),
    marked("lower right"),
)


def recognise(now: StarNow, sky: Sequence[StarNow], bodies: Sequence[BodyNow] = ()) -> str:
    """Two or three sentences; `sky`: the stars up now, brightest first, this one among them.

    `bodies`: planets among them are pointed out where they could be taken for the star.
    """
    star, where = now.star, _where(now)
    if star.constellation in star.name:
        placed = say("{star}: {where}.", star=star.name, where=where)
    else:
        placed = say(
            "{star}, in {constellation}: {where}.",
            star=star.name,
            constellation=star.constellation,
            where=where,
        )
    return " ".join([placed, _neighbours(now, sky), *_planets(now, bodies)])


def apart_deg(first: StarNow | BodyNow, second: StarNow | BodyNow) -> float:
    """Angle between two things seen."""
    places = first.azimuth_deg, first.altitude_deg, second.azimuth_deg, second.altitude_deg
    return float(separation_deg(*places))


def _where(now: StarNow) -> str:
    direction = direction_words(now.azimuth_deg)
    if now.altitude_deg > _OVERHEAD_DEG:
        return say(
            "almost overhead, {altitude:.0f}° high towards the {direction}",
            altitude=now.altitude_deg,
            direction=direction,
        )
    fists = round(now.altitude_deg / _FIST_DEG)
    if fists == 1:
        return say(
            "{altitude:.0f}° high in the {direction}, one fist at arm's length above the horizon",
            altitude=now.altitude_deg,
            direction=direction,
        )
    return say(
        "{altitude:.0f}° high in the {direction}, {fists} fists at arm's length above the horizon",
        altitude=now.altitude_deg,
        direction=direction,
        fists=fists,
    )


def _neighbours(now: StarNow, sky: Sequence[StarNow]) -> str:
    near = [one for one in sky if 0.0 < apart_deg(now, one) < _NEIGHBOURHOOD_DEG]
    brighter = [one for one in near if one.star.magnitude < now.star.magnitude]
    if not brighter:
        return say("No brighter star stands within three fists of it.")
    nearest = min(brighter, key=lambda one: apart_deg(now, one))
    if len(brighter) == 1:
        return say(
            "{star}, the only brighter star near it, stands {apart:.0f}° away ({way} as you face "
            "it).",
            star=nearest.star.name,
            apart=apart_deg(now, nearest),
            way=_way(now, nearest),
        )
    return say(
        "{star}, the nearest brighter star near it, stands {apart:.0f}° away ({way} as you face "
        "it).",
        star=nearest.star.name,
        apart=apart_deg(now, nearest),
        way=_way(now, nearest),
    )


def _planets(now: StarNow, bodies: Sequence[BodyNow]) -> Iterator[str]:
    for body in bodies:
        is_planet = body.body not in (Body.SUN, Body.MOON)
        if is_planet and body.altitude_deg > 0.0 and apart_deg(now, body) < _MISTAKEN_DEG:
            yield (
                say(
                    "Do not take the planet {body} for it, {apart:.0f}° away ({way}).",
                    body=str(body.body),
                    apart=apart_deg(now, body),
                    way=_way(now, body),
                )
            )


def _way(start: StarNow, other: StarNow | BodyNow) -> str:
    """The way from one star to another for somebody facing the first, upright."""
    turn, first, second = np.radians(
        [other.azimuth_deg - start.azimuth_deg, start.altitude_deg, other.altitude_deg]
    )
    right = np.cos(second) * np.sin(turn)
    up = np.cos(first) * np.sin(second) - np.sin(first) * np.cos(second) * np.cos(turn)
    return say(_WAYS[round(float(np.degrees(np.arctan2(up, right))) / 45.0) % len(_WAYS)])


# Stars that serve to set up a go-to mount, and those a hurried person would take.

Floats = NDArray[np.float64]
Clear = Callable[[Floats, Floats], NDArray[np.bool_]]

LOWEST_DEG, HIGHEST_DEG = 20.0, 70.0  # lower the air bends, nearer the zenith azimuth is uncertain
NEAREST_POLE_DEG = 20.0
NEAREST_MOON_DEG = 15.0
NEAREST_MERIDIAN_DEG = 10.0  # of hour angle: nearer, a German mount may take either side
_FAINTEST = (1.6, 2.2, 2.8, 3.5)  # tried in turn: bright stars cannot be mistaken
_ENOUGH, _MOST = 8, 24
_CARELESS_DEG = 40.0


class NoReferenceStars(ValueError):
    """The sky shows too few stars for it; the message is a sentence."""


def check_darkness(bodies: Sequence[BodyNow]) -> None:
    sun = next((body for body in bodies if body.body is Body.SUN), None)
    if sun is not None and light_at(sun.true_altitude_deg) is Light.DAY:
        raise NoReferenceStars(
            say(
                "The Sun is up: no star can be used, and no optic may come near the Sun. "
                "Choose a time after sunset."
            )
        )


def candidates(
    sky: Sequence[StarNow],
    kind: MountKind,
    bodies: Sequence[BodyNow],
    clear: Clear | None,
) -> list[StarNow]:
    """Fit stars, brightest first, no fainter than needed to have a choice."""
    moon = next((body for body in bodies if body.body is Body.MOON), None)
    fit = [now for now in sky if _fits(now, kind, moon)]
    if clear is not None and fit:
        where = np.array([(now.azimuth_deg, now.altitude_deg) for now in fit]).T
        fit = [now for now, free in zip(fit, clear(where[0], where[1]), strict=True) if free]
    bright: list[StarNow] = []
    for faintest in _FAINTEST:
        bright = [now for now in fit if now.star.magnitude < faintest]
        if len(bright) >= _ENOUGH:
            break
    return bright[:_MOST]


def _fits(now: StarNow, kind: MountKind, moon: BodyNow | None) -> bool:
    if now.star.name.startswith("HIP ") or not LOWEST_DEG <= now.altitude_deg <= HIGHEST_DEG:
        return False
    if abs(now.star.dec_deg) > 90.0 - NEAREST_POLE_DEG:
        return False
    if moon is not None and moon.altitude_deg > 0.0 and apart_deg(now, moon) < NEAREST_MOON_DEG:
        return False
    return kind is not MountKind.GERMAN_EQUATORIAL or _from_meridian(now) > NEAREST_MERIDIAN_DEG


def _from_meridian(now: StarNow) -> float:
    """Hour angle from the nearer half of the meridian, degrees."""
    size = abs(now.hour_angle_deg)
    return min(size, 180.0 - size)


def careless(sky: Sequence[StarNow], count: int) -> list[StarNow]:
    """The brightest star and the brightest beside it: what a hurried person takes."""
    named = [now for now in sky if not now.star.name.startswith("HIP ")]
    first = named[0]
    near = [now for now in named[1:] if apart_deg(first, now) < _CARELESS_DEG]
    return [first, *(near if len(near) >= count - 1 else named[1:])[: count - 1]]


# How well a mount finds things after a few reference stars: a small pointing model and its errors.
#
# Directions are given in the mount's own frame: for an alt-azimuth mount azimuth and altitude, for
# an equatorial one minus the hour angle and declination, so that both run the same way. Six terms
# move the pointing, all small angles:
#
# - the mount turned as a whole (three: two tilts of the first axis, and its zero),
# - the zero of the second axis,
# - the tube not square to the second axis (a cone),
# - the two axes not square to each other.
#
# On a German equatorial mount the last two change sign when the tube changes sides. What is known
# of the terms beforehand enters as their standard deviations; reference stars narrow them by least
# squares (Gauss–Markov with prior, e.g. Tarantola, Inverse Problem Theory, SIAM 2005, eq.
# 3.37–3.38).

TERMS = 6
_SKY_FROM_DEG, _SKY_TO_DEG = 20.0, 85.0


@dataclass(frozen=True)
class Uncertainty:
    """Standard deviations before the first star, and of placing one star; arcminutes.

    Typical of amateur mounts by common practice, no source: levelled with a bubble or roughly
    polar-aligned, circles not set, stars centred with a reticle.
    """

    tilt_arcmin: float = 20.0
    first_zero_arcmin: float = 600.0
    second_zero_arcmin: float = 60.0
    cone_arcmin: float = 10.0
    square_arcmin: float = 5.0
    star_arcmin: float = 1.5

    def prior(self) -> Floats:
        """Inverse of the covariance of the six terms, arcmin⁻², (6, 6)."""
        sigma = np.array(
            [
                *(self.tilt_arcmin, self.tilt_arcmin, self.first_zero_arcmin),
                *(self.second_zero_arcmin, self.cone_arcmin, self.square_arcmin),
            ]
        )
        return np.diag(sigma**-2.0)


def effects(longitude_rad: ArrayLike, latitude_rad: ArrayLike, side: ArrayLike = 1.0) -> Floats:
    """What each term does to the pointing: (…, 2, 6), along the first axis's circle and across it.

    The first row is on the sky (times the cosine). `side`: +1, or −1 where the tube is on the
    other side of the pier.
    """
    longitude, latitude, sign = np.broadcast_arrays(longitude_rad, latitude_rad, side)
    sin_lon, cos_lon = np.sin(longitude), np.cos(longitude)
    sin_lat, cos_lat = np.sin(latitude), np.cos(latitude)
    nothing = np.zeros_like(sin_lon)
    along = [-sin_lat * cos_lon, -sin_lat * sin_lon, cos_lat, nothing, sign, sign * sin_lat]
    across = [sin_lon, -cos_lon, nothing, nothing + 1.0, nothing, nothing]
    return np.stack([np.stack(along, axis=-1), np.stack(across, axis=-1)], axis=-2)


def covariance(stars: Floats, known: Uncertainty) -> Floats:
    """Of the terms after the stars, arcmin², (…, 6, 6). `stars` (…, k, 2, 6): their effects."""
    information = np.einsum("...kra,...krb->...ab", stars, stars) / known.star_arcmin**2
    return np.asarray(np.linalg.inv(information + known.prior()))


def error_arcmin(places: Floats, terms_covariance: Floats) -> Floats:
    """Root mean square pointing error on the sky, both directions together, (…).

    `places` (…, 2, 6): effects at the places asked for.
    """
    variance = np.einsum("...ra,ab,...rb->...", places, terms_covariance, places)
    return np.asarray(np.sqrt(variance))


def mean_error_arcmin(places: Floats, covariances: Floats) -> Floats:
    """Root mean square of `error_arcmin` over places (m, 2, 6), for many covariances (…, 6, 6)."""
    moment = np.einsum("mra,mrb->ab", places, places) / len(places)
    return np.asarray(np.sqrt(np.einsum("ab,...ab->...", moment, covariances)))


def sky_grid_deg() -> tuple[Floats, Floats]:
    """Azimuths and altitudes (m,) of places spread evenly over the sky that is used."""
    lowest, highest = np.sin(np.radians([_SKY_FROM_DEG, _SKY_TO_DEG]))
    altitude = np.degrees(np.arcsin(np.linspace(lowest, highest, 9)))
    azimuth, height = np.meshgrid(np.arange(0.0, 360.0, 15.0), altitude)
    return azimuth.ravel(), height.ravel()


# Reference stars for setting up a go-to mount on the sky, and how well it points afterwards.

LEVEL_FIRST = marked(
    "Level the base first, in two directions at right angles: what is left of its tilt is "
    "then small enough for a few stars to take out."
)
APART_DEG = 45.0  # in azimuth
HEIGHTS_APART_DEG = 10.0
_NEARLY = 1.15  # a choice this near the best error is as good, and brighter stars are surer
_CARELESS_LOWEST_DEG = 15.0
_EVERYTHING_UP = 1000


@dataclass(frozen=True)
class ReferenceStar:
    """A star, in the order to take them; `side` of the pier for a German mount, else None."""

    now: StarNow
    side: PierSide | None
    words: str


@dataclass(frozen=True, eq=False)
class SkySetup:
    """The stars and the pointing error to expect, root mean square over the sky; arcminutes.

    `careless_*`: the same for stars taken for their brightness alone in one part of the sky.
    `map_*` (m,): places of a grid over the sky, as seen, and the errors there.
    """

    stars: tuple[ReferenceStar, ...]
    error_arcmin: float
    worst_arcmin: float
    careless_names: tuple[str, ...]
    careless_arcmin: float
    careless_worst_arcmin: float
    careless_overhead: str  # the one of them near the zenith, if any
    map_azimuth_deg: Floats
    map_altitude_deg: Floats
    map_error_arcmin: Floats
    map_careless_arcmin: Floats
    notes: tuple[str, ...]

    @property
    def sentence(self) -> str:
        names = [one.now.star.name for one in self.stars]
        careless = say(" and ").join(self.careless_names)
        expected = say(
            "After {names} and {last} expect to point about {error:.1f}′ off, and "
            "{worst:.1f}′ in the worst part of the sky; after {careless}, taken for their "
            "brightness alone, {careless_error:.1f}′ and {careless_worst:.1f}′.",
            names=", ".join(names[:-1]),
            last=names[-1],
            error=self.error_arcmin,
            worst=self.worst_arcmin,
            careless=careless,
            careless_error=self.careless_arcmin,
            careless_worst=self.careless_worst_arcmin,
        )
        if self.careless_arcmin >= _NEARLY * self.error_arcmin:
            return expected
        if not self.careless_overhead:
            return f"{expected} {say('By chance those would do as well now.')}"
        warned = say(
            "By chance those would do as well now, if {star} were easy to centre: it stands near "
            "the zenith, where an axis has to turn far for little.",
            star=self.careless_overhead,
        )
        return f"{expected} {warned}"


def choose(
    catalogue: Catalogue,
    site: Site,
    air: Air,
    utc_s: float,
    kind: MountKind,
    count: int = 3,
    *,
    bodies: Sequence[BodyNow] = (),
    clear: Clear | None = None,
    known: Uncertainty | None = None,
) -> SkySetup:
    """The best two or three stars for this moment. Raises NoReferenceStars.

    `bodies` as `bodies_now` gives them: the Sun, which must be down; the Moon, to stay away from;
    planets, not to be mistaken for stars. `clear`: tells for azimuths and altitudes in degrees
    whether nothing stands in the way. `known`: what is known beforehand.
    """
    if count not in (2, 3):
        raise ValueError(say("Two or three reference stars can be chosen."))
    check_darkness(bodies)
    known = known or Uncertainty()
    sky = catalogue.up_now(site, air, utc_s, _CARELESS_LOWEST_DEG, _EVERYTHING_UP)
    fit = candidates(sky, kind, bodies, clear)
    if len(fit) < count:
        raise NoReferenceStars(
            say(
                "Only {count} fit stars are up: not enough clear sky between {lowest:.0f}° and "
                "{highest:.0f}°. Wait half an hour, or move to a place with a wider view.",
                count=len(fit),
                lowest=LOWEST_DEG,
                highest=HIGHEST_DEG,
            )
        )
    grid_azimuth, grid_altitude = sky_grid_deg()
    places = _effects(grid_azimuth, grid_altitude, site, kind)
    chosen, notes = _best(fit, count, places, site, kind, known)
    others_taken = careless(sky, count)
    errors, others = (
        error_arcmin(places, covariance(_of_stars(stars, site, kind), known))
        for stars in (chosen, others_taken)
    )
    return SkySetup(
        stars=tuple(
            ReferenceStar(now, _side(now, kind), recognise(now, sky, bodies)) for now in chosen
        ),
        error_arcmin=_rms(errors),
        worst_arcmin=float(np.max(errors)),
        careless_names=tuple(now.star.name for now in others_taken),
        careless_arcmin=_rms(others),
        careless_worst_arcmin=float(np.max(others)),
        careless_overhead=next(
            (now.star.name for now in others_taken if now.altitude_deg > HIGHEST_DEG), ""
        ),
        map_azimuth_deg=grid_azimuth,
        map_altitude_deg=grid_altitude,
        map_error_arcmin=errors,
        map_careless_arcmin=others,
        notes=notes,
    )


def _best(
    candidates: Sequence[StarNow],
    count: int,
    places: Floats,
    site: Site,
    kind: MountKind,
    known: Uncertainty,
) -> tuple[list[StarNow], tuple[str, ...]]:
    """Of the choices well apart (of all where none is) that point best, the brightest stars."""
    groups = list(combinations(range(len(candidates)), count))
    apart = [group for group in groups if _are_apart([candidates[i] for i in group], kind)]
    notes = [say(LEVEL_FIRST)] if not kind.is_equatorial else []
    if not apart:
        notes.append(
            say(
                "No stars stand as far apart as they should now; these are the best there are. "
                "Take a third or fourth once the sky has turned."
            )
        )
    table = np.array(apart or groups)
    stars = _of_stars(candidates, site, kind)
    errors = mean_error_arcmin(places, covariance(stars[table], known))
    nearly_best = table[errors <= _NEARLY * np.min(errors)]
    faintest = [max(candidates[i].star.magnitude for i in group) for group in nearly_best]
    chosen = [candidates[i] for i in nearly_best[int(np.argmin(faintest))]]
    if kind is MountKind.GERMAN_EQUATORIAL:
        chosen.sort(key=lambda now: (now.hour_angle_deg > 0.0, now.star.magnitude))
        if len({_side(now, kind) for now in chosen}) == 2:
            notes.append(
                say(
                    "One side of the meridian after the other, with one flip between: stars on "
                    "both sides tell a tube that is not square to its axis from an axis that "
                    "is off."
                )
            )
    else:
        chosen.sort(key=lambda now: now.star.magnitude)
    return chosen, tuple(notes)


def _are_apart(stars: Sequence[StarNow], kind: MountKind) -> bool:
    turns = [
        abs((one.azimuth_deg - other.azimuth_deg + 180.0) % 360.0 - 180.0)
        for one, other in combinations(stars, 2)
    ]
    heights = [now.altitude_deg for now in stars]
    both_sides = len({_side(now, kind) for now in stars}) == 2
    return (
        min(turns) >= APART_DEG
        and max(heights) - min(heights) >= HEIGHTS_APART_DEG
        and (both_sides or kind is not MountKind.GERMAN_EQUATORIAL)
    )


def _side(now: StarNow, kind: MountKind) -> PierSide | None:
    if kind is not MountKind.GERMAN_EQUATORIAL:
        return None
    return PierSide.EAST if now.hour_angle_deg > 0.0 else PierSide.WEST


def _of_stars(stars: Sequence[StarNow], site: Site, kind: MountKind) -> Floats:
    azimuth, altitude = np.array([(now.azimuth_deg, now.altitude_deg) for now in stars]).T
    return _effects(azimuth, altitude, site, kind)


def _effects(azimuth_deg: Floats, altitude_deg: Floats, site: Site, kind: MountKind) -> Floats:
    """Effects (m, 2, 6) in the mount's own frame; refraction is nothing here."""
    azimuth, altitude = np.radians(azimuth_deg), np.radians(altitude_deg)
    if not kind.is_equatorial:
        return effects(azimuth, altitude)
    hour_angle, declination = erfa.ae2hd(azimuth, altitude, np.radians(site.latitude_deg))
    german = kind is MountKind.GERMAN_EQUATORIAL
    side = np.where(hour_angle > 0.0, 1.0, -1.0) if german else 1.0
    return effects(-hour_angle, declination, side)


def _rms(errors: Floats) -> float:
    return float(np.sqrt(np.mean(errors**2)))
