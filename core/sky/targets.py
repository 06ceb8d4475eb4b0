"""What one may look at tonight: stars, deep-sky objects, the Moon and planets, any coordinates."""

from __future__ import annotations

from dataclasses import dataclass, replace

import erfa
import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.language import say
from core.sky import clocks, places
from core.sky.bodies import Body, course
from core.sky.catalogues import Catalogue, DeepSky, DeepSkyObject, Star
from core.sky.coordinates import parse_declination, parse_right_ascension
from core.sky.refraction import Refraction
from core.sky.site import Air, Site

Floats = NDArray[np.float64]

_OFFERED = 20


@dataclass(frozen=True)
class Target:
    """A place on the sky with a name; `body` for what moves among the stars, else a fixed place.

    `ra_deg`, `dec_deg`: ICRS as seen from the Earth tonight; NaN for a body.
    """

    name: str
    kind: str
    ra_deg: float
    dec_deg: float
    magnitude: float | None = None
    size_arcmin: float | None = None
    body: Body | None = None

    def places_deg(self, site: Site, air: Air, utc_s: ArrayLike) -> tuple[Floats, Floats]:
        """Azimuth in [0, 360) and altitude as seen, each (n,)."""
        times = np.atleast_1d(np.asarray(utc_s, dtype=np.float64))
        if self.body is None:
            return places.horizontal_deg(self.ra_deg, self.dec_deg, site, air, times)
        seen = course(self.body, site, times)
        true_altitude = np.radians(seen.true_altitude_deg)
        altitude = Refraction.of(air).observed_altitude_rad(true_altitude)
        return seen.azimuth_deg, np.degrees(altitude)

    def held_still(self, site: Site, utc_s: float) -> Target:
        """A fixed target where this one is at that moment; itself where it is fixed already.

        For a planet good all night (it moves by some minutes of arc); the Moon runs half a degree
        an hour, two minutes of transit time for each hour away from that moment.
        """
        if self.body is None:
            return self
        seen = course(self.body, site, utc_s)
        rotation = clocks.earth_rotation_angle_rad(utc_s, clocks.bundled().ut1_minus_utc_s(utc_s))
        hour_angle_deg, dec_deg = seen.hour_angle_deg[0], seen.declination_deg[0]
        cirs_ra = float(rotation) + np.radians(site.longitude_deg - hour_angle_deg)
        astrom, _ = erfa.apci13(*clocks.julian_dates_tt(utc_s))
        ra_rad, dec_rad = erfa.aticq(cirs_ra, np.radians(dec_deg), astrom)
        place_deg = float(np.degrees(erfa.anp(ra_rad))), float(np.degrees(dec_rad))
        return replace(self, ra_deg=place_deg[0], dec_deg=place_deg[1], body=None)


def of_star(star: Star, catalogue: Catalogue, utc_s: float) -> Target:
    """A star at its place tonight."""
    return Target(star.name, say("star"), *catalogue.at_epoch(star, utc_s), star.magnitude)


def of_deep_sky(found: DeepSkyObject) -> Target:
    place_deg = found.ra_deg, found.dec_deg
    return Target(found.title, str(found.kind), *place_deg, found.magnitude, found.size_arcmin)


def of_body(body: Body) -> Target:
    name = str(body)
    kind = name if body in (Body.SUN, Body.MOON) else say("planet")
    return Target(name, kind, np.nan, np.nan, body=body)


def at_coordinates(right_ascension: str, declination: str, name: str = "") -> Target:
    """From what a person typed, ICRS. Raises UnusableCoordinates, a sentence."""
    ra_deg, dec_deg = parse_right_ascension(right_ascension), parse_declination(declination)
    shown = name.strip() or f"{right_ascension.strip()}, {declination.strip()}"
    return Target(shown, say("coordinates"), ra_deg, dec_deg)


def search(
    text: str, stars: Catalogue, deep_sky: DeepSky, utc_s: float, limit: int = _OFFERED
) -> list[Target]:
    """Targets to offer while someone types: bodies (never the Sun), named stars, the deep sky.

    What is exactly so named comes first.
    """
    typed = text.strip().casefold()
    if not typed:
        return []
    bodies = [of_body(b) for b in Body if b is not Body.SUN and _begins(b, typed)]
    exact_star = stars.find(text)
    named = [exact_star] if exact_star is not None else []
    named += [star for star in stars.beginning_with(text) if star is not exact_star]
    exact_object = deep_sky.find(text)
    others = [of_deep_sky(found) for found in deep_sky.beginning_with(text, limit)]
    found = [of_star(star, stars, utc_s) for star in named[:limit]]
    if exact_object is not None and exact_star is None:
        return [*others[:1], *bodies, *found, *others[1:]][:limit]
    return [*bodies, *found, *others][:limit]


def _begins(body: Body, typed: str) -> bool:
    """Under its name in the person's language, or its English one."""
    return any(name.casefold().startswith(typed) for name in (str(body), body.value))
