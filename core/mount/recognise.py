"""How to find a star by eye: direction, height in fists, and its brighter neighbours."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

import numpy as np

from core.sky.bodies import Body, BodyNow
from core.sky.catalogue import StarNow
from core.sky.compass import direction_words
from core.sky.separation import separation_deg

_NEIGHBOURHOOD_DEG = 30.0
_MISTAKEN_DEG = 20.0
_FIST_DEG = 10.0  # a fist at arm's length; common practice, no source
_OVERHEAD_DEG = 75.0
_WAYS = (
    "right",
    "upper right",
    "above",
    "upper left",
    "left",
    "lower left",
    "below",
    "lower right",
)


def recognise(now: StarNow, sky: Sequence[StarNow], bodies: Sequence[BodyNow] = ()) -> str:
    """Two or three sentences; `sky`: the stars up now, brightest first, this one among them.

    `bodies`: planets among them are pointed out where they could be taken for the star.
    """
    star = now.star
    within = "" if star.constellation in star.name else f", in {star.constellation}"
    said = [f"{star.name}{within}: {_where(now)}.", _neighbours(now, sky), *_planets(now, bodies)]
    return " ".join(said)


def apart_deg(first: StarNow | BodyNow, second: StarNow | BodyNow) -> float:
    """Angle between two things seen."""
    places = first.azimuth_deg, first.altitude_deg, second.azimuth_deg, second.altitude_deg
    return float(separation_deg(*places))


def _where(now: StarNow) -> str:
    direction = direction_words(now.azimuth_deg)
    if now.altitude_deg > _OVERHEAD_DEG:
        return f"almost overhead, {now.altitude_deg:.0f}° high towards the {direction}"
    fists = round(now.altitude_deg / _FIST_DEG)
    measure = "one fist" if fists == 1 else f"{fists} fists"
    return (
        f"{now.altitude_deg:.0f}° high in the {direction}, {measure} at arm's length above the "
        "horizon"
    )


def _neighbours(now: StarNow, sky: Sequence[StarNow]) -> str:
    near = [one for one in sky if 0.0 < apart_deg(now, one) < _NEIGHBOURHOOD_DEG]
    brighter = [one for one in near if one.star.magnitude < now.star.magnitude]
    if not brighter:
        return "No brighter star stands within three fists of it."
    nearest = min(brighter, key=lambda one: apart_deg(now, one))
    count = "the only brighter star" if len(brighter) == 1 else "the nearest brighter star"
    return (
        f"{nearest.star.name}, {count} near it, stands {apart_deg(now, nearest):.0f}° away "
        f"({_way(now, nearest)} as you face it)."
    )


def _planets(now: StarNow, bodies: Sequence[BodyNow]) -> Iterator[str]:
    for body in bodies:
        is_planet = body.body not in (Body.SUN, Body.MOON)
        if is_planet and body.altitude_deg > 0.0 and apart_deg(now, body) < _MISTAKEN_DEG:
            yield (
                f"Do not take the planet {body.body.value} for it, "
                f"{apart_deg(now, body):.0f}° away ({_way(now, body)})."
            )


def _way(start: StarNow, other: StarNow | BodyNow) -> str:
    """The way from one star to another for somebody facing the first, upright."""
    turn, first, second = np.radians(
        [other.azimuth_deg - start.azimuth_deg, start.altitude_deg, other.altitude_deg]
    )
    right = np.cos(second) * np.sin(turn)
    up = np.cos(first) * np.sin(second) - np.sin(first) * np.cos(second) * np.cos(turn)
    return _WAYS[round(float(np.degrees(np.arctan2(up, right))) / 45.0) % len(_WAYS)]
