"""What a night holds whatever the target: darkness, Moon, alignment stars, the best objects."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from app.pages.plan.question import MESSIER
from app.session.around import Around
from app.session.evening import night
from app.widgets.nightframe import shown_span
from core.night.darkness import Night
from core.night.plan import (
    AlignmentMoment,
    Placed,
    alignment_moments,
    best,
    best_moments,
    showpieces,
)
from core.sky import catalogues
from core.sky.bodies import Body, Course, course

Floats = NDArray[np.float64]

STEP_S = 120.0
ROUND_S = 600.0
MOST_BEST = 30


@dataclass(frozen=True, eq=False)
class NightSky:
    """`moon` at the times `utc_s` (n,)."""

    night: Night
    utc_s: Floats
    moon: Course
    alignment: tuple[AlignmentMoment, ...]


def night_sky(around: Around, now_utc_s: float) -> NightSky:
    """Remembered for some minutes; for worker threads."""
    return _night_sky(around, round(now_utc_s / ROUND_S))


@lru_cache(maxsize=4)
def _night_sky(around: Around, rounded: int) -> NightSky:
    tonight = night(around.site, rounded * ROUND_S)
    begin, end = shown_span(tonight)
    times = np.arange(begin, end + STEP_S, STEP_S)
    stars = catalogues.load_stars()
    clear = around.horizon.is_clear
    moments = best_moments(alignment_moments(tonight, stars, around.air, clear))
    return NightSky(tonight, times, course(Body.MOON, around.site, times), tuple(moments))


@lru_cache(maxsize=8)
def best_placed(
    around: Around, rounded: int, lowest_deg: float, list_of: str
) -> tuple[Placed, ...]:
    """The best of Messier's objects or of all bright ones."""
    targets = showpieces(catalogues.load_deep_sky())
    if list_of == MESSIER:
        targets = [target for target in targets if target.name.startswith("M ")]
    tonight = _night_sky(around, rounded).night
    found = best(targets, tonight, around.air, around.horizon, lowest_deg, MOST_BEST)
    return tuple(found)
