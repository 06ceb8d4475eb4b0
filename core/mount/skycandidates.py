"""Stars that serve to set up a go-to mount, and those a hurried person would take."""

from __future__ import annotations

from collections.abc import Callable, Sequence

import numpy as np
from numpy.typing import NDArray

from core.language import say
from core.mount.equipment import MountKind
from core.mount.recognise import apart_deg
from core.sky.almanac import Light, light_at
from core.sky.bodies import Body, BodyNow
from core.sky.catalogue import StarNow

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
