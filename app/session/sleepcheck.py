"""What to do about a leg when the computer slept in the middle of it."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from app.session.clockcheck import LONGEST_GAP_S, span_words
from core.alignment.driftlog.records import Leg
from core.language import say

Floats = NDArray[np.float64]

LEAST_SLEEP_S = 5.0  # less is no sleep but two clocks read one after the other
TIME_TO_READ_S = 5 * 60.0  # to find the star again, before the gap is too long for one leg
FEWEST_READINGS = 4  # to tell how fast a star drifts


@dataclass(frozen=True)
class Woken:
    """`begins_anew`: the leg ends here and another on the same star begins. `sentence` for the
    person."""

    begins_anew: bool
    sentence: str


def woken(leg: Leg, slept_s: float, utc_s: float, across_arcmin: float) -> Woken:
    """Judge the leg under way by its drift so far and by how long it has not been read.

    `utc_s`: the time now. `across_arcmin`: of the field in view.
    """
    if not leg.utc_s.size:
        return Woken(False, _unread(leg, slept_s))
    gap_s = max(slept_s, utc_s - float(leg.utc_s[-1]))  # the clock may have been set meanwhile
    if moved_after_arcmin(leg, gap_s) >= across_arcmin / 2.0:
        return Woken(True, _out_of_field(leg, slept_s))
    left_s = LONGEST_GAP_S - gap_s
    if left_s < TIME_TO_READ_S:
        return Woken(True, _too_long(leg, slept_s, gap_s))
    return Woken(False, _goes_on(leg, slept_s, left_s))


def _unread(leg: Leg, slept_s: float) -> str:
    return say(
        "The computer slept for {slept} before “{label}” was read for the first time. See that "
        "the star is in view, then read it.",
        slept=span_words(slept_s),
        label=leg.label,
    )


def _goes_on(leg: Leg, slept_s: float, left_s: float) -> str:
    return say(
        "The computer slept for {slept} while “{label}” was watched. See that the star is still "
        "where it was read: when it is read again within {left}, the leg goes on and the gap "
        "stays empty.",
        slept=span_words(slept_s),
        label=leg.label,
        left=span_words(left_s),
    )


def _too_long(leg: Leg, slept_s: float, gap_s: float) -> str:
    return say(
        "The computer slept for {slept}, and “{label}” was last read {gap} ago: too long for one "
        "leg. A new leg on the same star is begun; both count. See that the star is still in view.",
        slept=span_words(slept_s),
        label=leg.label,
        gap=span_words(gap_s),
    )


def _out_of_field(leg: Leg, slept_s: float) -> str:
    return say(
        "The computer slept for {slept} while “{label}” was watched. At its drift the star has "
        "left the field: bring it back. A new leg on it is begun; both count.",
        slept=span_words(slept_s),
        label=leg.label,
    )


def moved_after_arcmin(leg: Leg, gap_s: float) -> float:
    """How far from where it was centred the star is after so long without a reading."""
    moved = []
    for offsets in (leg.north_arcsec, leg.east_arcsec):
        if offsets is None or not np.isfinite(offsets).all():
            continue
        moved.append(_expected_arcsec(leg.utc_s, offsets, gap_s))
    return float(np.linalg.norm(moved)) / 60.0


def _expected_arcsec(utc_s: Floats, offsets: Floats, gap_s: float) -> float:
    if offsets.size == 0:
        return 0.0
    so_far = float(offsets[-1] - offsets[0])
    if offsets.size < FEWEST_READINGS or utc_s[-1] <= utc_s[0]:
        return so_far
    rate = np.polynomial.Polynomial.fit(utc_s - utc_s[0], offsets, 1).convert().coef[-1]
    return so_far + float(rate) * gap_s
