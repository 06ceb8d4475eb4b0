"""What to do about a leg when the computer slept in the middle of it."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from app.session.clockcheck import span_words
from core.alignment.driftlog import Leg
from core.language import say

Floats = NDArray[np.float64]

LEAST_SLEEP_S = 5.0  # less is no sleep but two clocks read one after the other
FEWEST_READINGS = 4  # to tell how fast a star drifts


@dataclass(frozen=True)
class Woken:
    """`has_left`: the star is taken to be out of the field. `sentence` for the person."""

    has_left: bool
    sentence: str


def woken(leg: Leg, slept_s: float, across_arcmin: float) -> Woken:
    """Judge the leg under way by its drift so far. `across_arcmin`: of the field in view."""
    words = {"slept": span_words(slept_s), "label": leg.label}
    if moved_after_arcmin(leg, slept_s) < across_arcmin / 2.0:
        return Woken(
            False,
            say(
                "The computer slept for {slept} while “{label}” was watched. The leg goes on and "
                "the gap stays empty; see that the star is still where it was read.",
                **words,
            ),
        )
    return Woken(
        True,
        say(
            "The computer slept for {slept} while “{label}” was watched. At its drift the star has "
            "left the field: bring it back. A new leg on it is begun; both count.",
            **words,
        ),
    )


def moved_after_arcmin(leg: Leg, slept_s: float) -> float:
    """How far from where it was centred the star is after so long without a reading."""
    moved = []
    for offsets in (leg.north_arcsec, leg.east_arcsec):
        if offsets is None or not np.isfinite(offsets).all():
            continue
        moved.append(_expected_arcsec(leg.utc_s, offsets, slept_s))
    return float(np.linalg.norm(moved)) / 60.0


def _expected_arcsec(utc_s: Floats, offsets: Floats, slept_s: float) -> float:
    if offsets.size == 0:
        return 0.0
    so_far = float(offsets[-1] - offsets[0])
    if offsets.size < FEWEST_READINGS or utc_s[-1] <= utc_s[0]:
        return so_far
    rate = np.polynomial.Polynomial.fit(utc_s - utc_s[0], offsets, 1).convert().coef[-1]
    return so_far + float(rate) * slept_s
