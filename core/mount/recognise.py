"""How to find a star by eye: direction, height in fists, and its brighter neighbours."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

import numpy as np

from core.language import marked, say
from core.sky.bodies import Body, BodyNow
from core.sky.catalogue import StarNow
from core.sky.compass import direction_words
from core.sky.separation import separation_deg

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
                    body=say(body.body.value),
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
