"""The stars to watch next, the best first, with where they are and what they cost."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.alignment.guide.nextstar import RankedStar, Watching, rank
from core.language import say
from core.sky import catalogues
from core.sky.almanac import Light, light_at
from core.sky.bodies import Body, BodyNow, body_now
from core.sky.catalogues import StarNow
from core.sky.horizon import Horizon
from core.sky.places import separation_deg
from core.sky.site import Air, Site

Floats = NDArray[np.float64]

LOWEST_DEG = 20.0
MOST_STARS = 600
# The faintest stars to propose in each light, by magnitude: found by eye or in a finder without a
# search (common practice, no source). By day none.
FAINTEST = {
    Light.DAY: -9.0,
    Light.CIVIL: 0.5,
    Light.NAUTICAL: 2.0,
    Light.ASTRONOMICAL: 3.0,
    Light.NIGHT: 3.0,
}
FROM_MOON_DEG = 8.0  # nearer, its glare fills the field
MOONLIT_DEG = 25.0


@dataclass(frozen=True)
class Proposal:
    """A star with its ICRS place tonight in degrees. The rest as in `Choice`.

    `caution`: a sentence, empty when there is nothing to mind.
    """

    choice: RankedStar
    ra_deg: float
    dec_deg: float
    caution: str = ""

    @property
    def name(self) -> str:
        return self.choice.now.star.name


@dataclass(frozen=True, eq=False)
class Proposals:
    """`stars`: the best first. `nothing`: why there are none, else empty. `moon` while it is up."""

    utc_s: float
    stars: tuple[Proposal, ...]
    horizon: Horizon
    moon: BodyNow | None
    nothing: str = ""


@dataclass(frozen=True, eq=False)
class StarWish:
    """What the choice depends on. `known` (2, 2): information so far, arcmin⁻²."""

    site: Site
    air: Air
    horizon: Horizon
    utc_s: float
    known: Floats
    watching: Watching
    target_arcmin: float


def propose(wish: StarWish) -> Proposals:
    """Slow (tens of milliseconds): ask away from the window."""
    sun = body_now(Body.SUN, wish.site, wish.air, wish.utc_s)
    moon = body_now(Body.MOON, wish.site, wish.air, wish.utc_s)
    faintest = FAINTEST[light_at(sun.true_altitude_deg)]
    up = catalogues.load_stars().up_now(wish.site, wish.air, wish.utc_s, LOWEST_DEG, MOST_STARS)
    fit = [now for now in up if now.star.magnitude <= faintest and _off_moon(now, moon)]
    ranked = rank(
        fit, wish.site, wish.known, wish.watching, wish.target_arcmin, wish.horizon.is_clear
    )
    stars = tuple(_proposal(choice, moon, wish.utc_s) for choice in ranked)
    seen_moon = moon if moon.altitude_deg > 0.0 else None
    nothing = "" if stars else _why(sun.true_altitude_deg)
    return Proposals(wish.utc_s, stars, wish.horizon, seen_moon, nothing)


def _proposal(choice: RankedStar, moon: BodyNow, utc_s: float) -> Proposal:
    ra_deg, dec_deg = catalogues.load_stars().at_epoch(choice.now.star, utc_s)
    apart = _from_moon_deg(choice.now, moon)
    is_lit = moon.altitude_deg > 0.0 and apart < MOONLIT_DEG
    caution = say("The Moon stands {apart:.0f}° from it.", apart=apart) if is_lit else ""
    return Proposal(choice, ra_deg, dec_deg, caution)


def _off_moon(now: StarNow, moon: BodyNow) -> bool:
    return moon.altitude_deg < 0.0 or _from_moon_deg(now, moon) > FROM_MOON_DEG


def _from_moon_deg(now: StarNow, moon: BodyNow) -> float:
    return float(
        separation_deg(now.azimuth_deg, now.altitude_deg, moon.azimuth_deg, moon.altitude_deg)
    )


def _why(sun_altitude_deg: float) -> str:
    if light_at(sun_altitude_deg) in (Light.DAY, Light.CIVIL):
        return say("It is too light for stars yet. The practice sky is there by day as well.")
    return say(
        "No bright star stands free of obstructions now: wait a little, or name one yourself."
    )
