"""When tonight the stars for a drift alignment are best placed."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.alignment.suggestions import PLACES
from core.alignment.weakness import hour_angle_words
from core.language import say
from core.night.plannight import Night
from core.sky.almanac import Light
from core.sky.catalogue import Catalogue, StarNow
from core.sky.site import Air

Floats = NDArray[np.float64]
Clear = Callable[[Floats, Floats], NDArray[np.bool_]]

_STEP_S = 1800.0
_LOWEST_DEG = 20.0
_FAINTEST = 4.0
_MERIDIAN, *_SIDES = PLACES


@dataclass(frozen=True)
class AlignmentMoment:
    """A pair of stars: one near the meridian shows the azimuth error, the other the altitude error.

    `faintest`: the magnitude of the fainter of the two; less is easier to find.
    """

    utc_s: float
    meridian: StarNow
    aside: StarNow

    @property
    def faintest(self) -> float:
        return max(self.meridian.star.magnitude, self.aside.star.magnitude)

    @property
    def words(self) -> str:
        aside = self.aside
        return say(
            "Align on {meridian_star} near the meridian and {low_star} low ({hour_angle}, "
            "{altitude:.0f}° high)",
            meridian_star=self.meridian.star.name,
            low_star=aside.star.name,
            hour_angle=hour_angle_words(aside.hour_angle_deg),
            altitude=aside.altitude_deg,
        )


def alignment_moments(
    night: Night, catalogue: Catalogue, air: Air, clear: Clear | None = None
) -> list[AlignmentMoment]:
    """Every half hour from nautical twilight on, where a pair is up; in order of time."""
    found = []
    for begin, end in night.spans_of(Light.NAUTICAL):
        for utc_s in np.arange(begin, end, _STEP_S).tolist():
            moment = _moment(night, catalogue, air, utc_s, clear)
            if moment is not None:
                found.append(moment)
    return found


def best_moments(moments: list[AlignmentMoment], count: int = 2) -> list[AlignmentMoment]:
    """Those with the brightest pairs, no pair twice, in order of time."""
    brightest = sorted(moments, key=lambda moment: (moment.faintest, moment.utc_s))
    pairs: dict[tuple[str, str], AlignmentMoment] = {}
    for moment in brightest:
        pairs.setdefault((moment.meridian.star.name, moment.aside.star.name), moment)
    chosen = list(pairs.values())[:count]
    return sorted(chosen, key=lambda moment: moment.utc_s)


def _moment(
    night: Night, catalogue: Catalogue, air: Air, utc_s: float, clear: Clear | None
) -> AlignmentMoment | None:
    up = catalogue.up_now(night.site, air, utc_s, _LOWEST_DEG, limit=1000)
    up = [now for now in up if now.star.magnitude < _FAINTEST]
    if clear is not None and up:
        azimuth, altitude = np.array([(now.azimuth_deg, now.altitude_deg) for now in up]).T
        up = [now for now, free in zip(up, clear(azimuth, altitude), strict=True) if free]
    meridian = next((now for now in up if PLACES[_MERIDIAN](now)), None)
    aside = next((now for now in up if any(PLACES[side](now) for side in _SIDES)), None)
    if meridian is None or aside is None:
        return None
    return AlignmentMoment(utc_s, meridian, aside)
