"""Reference stars for setting up a go-to mount on the sky, and how well it points afterwards."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import combinations

import erfa
import numpy as np
from numpy.typing import NDArray

from core.language import marked, say
from core.mount.equipment import MountKind
from core.mount.meridian import Side
from core.mount.pointing import (
    Uncertainty,
    covariance,
    effects,
    error_arcmin,
    mean_error_arcmin,
    sky_grid_deg,
)
from core.mount.recognise import recognise
from core.mount.skycandidates import (
    HIGHEST_DEG,
    LOWEST_DEG,
    Clear,
    NoReferenceStars,
    candidates,
    careless,
    check_darkness,
)
from core.sky.bodies import BodyNow
from core.sky.catalogue import Catalogue, StarNow
from core.sky.site import Air, Site

Floats = NDArray[np.float64]

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
    side: Side | None
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


def _side(now: StarNow, kind: MountKind) -> Side | None:
    if kind is not MountKind.GERMAN_EQUATORIAL:
        return None
    return Side.EAST if now.hour_angle_deg > 0.0 else Side.WEST


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
