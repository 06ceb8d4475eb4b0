"""Stars worth watching first: one side of the sky shows one axis of the mount."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from core.language import marked
from core.sky.catalogue import Catalogue, StarNow
from core.sky.site import Air, Site

LOWEST_DEG = 18.0  # a star that sets must stay out of the thickest air for the whole leg
CANDIDATES = 2000
PER_PLACE = 3


@dataclass(frozen=True)
class Suggestion:
    """A star and where it stands; ICRS place tonight, azimuth and altitude as seen."""

    name: str
    ra_deg: float
    dec_deg: float
    azimuth_deg: float
    altitude_deg: float
    hour_angle_deg: float
    where: str


# Near the meridian a star shows the azimuth error, six hours away from it the altitude error.
PLACES: dict[str, Callable[[StarNow], bool]] = {
    marked("near the meridian"): lambda now: (
        abs(now.hour_angle_deg) < 12.0 and now.altitude_deg < 75.0 and abs(now.star.dec_deg) < 50.0
    ),
    marked("low in the east"): lambda now: _is_low(now) and -120.0 < now.hour_angle_deg < -55.0,
    marked("low in the west"): lambda now: _is_low(now) and 55.0 < now.hour_angle_deg < 120.0,
}


def suggestions(catalogue: Catalogue, site: Site, air: Air, utc_s: float) -> list[Suggestion]:
    """Up to three bright stars for each of the three places, in the order of `PLACES`."""
    up = catalogue.up_now(site, air, utc_s, LOWEST_DEG, CANDIDATES)
    found = []
    for where, fits in PLACES.items():
        fitting = [now for now in up if fits(now)][:PER_PLACE]
        found += [_suggestion(catalogue, now, utc_s, where) for now in fitting]
    return found


def _is_low(now: StarNow) -> bool:
    return now.altitude_deg < 45.0 and abs(now.star.dec_deg) < 60.0


def _suggestion(catalogue: Catalogue, now: StarNow, utc_s: float, where: str) -> Suggestion:
    ra_deg, dec_deg = catalogue.at_epoch(now.star, utc_s)
    return Suggestion(
        now.star.name,
        ra_deg,
        dec_deg,
        now.azimuth_deg,
        now.altitude_deg,
        now.hour_angle_deg,
        where,
    )
