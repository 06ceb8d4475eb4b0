"""How fast a leg's star drifts, against the fastest that a displaced axis can make it."""

from __future__ import annotations

import numpy as np

from core.alignment.driftlog import Leg
from core.alignment.geometry import ARCSEC_PER_RAD, SIDEREAL_RATE_RAD_PER_S
from core.language import say

# A star passing across the field of a mount that points a quarter of a turn beside the pole.
FASTEST_ARCSEC_PER_MIN = SIDEREAL_RATE_RAD_PER_S * ARCSEC_PER_RAD * 60.0  # 902.5


def north_arcsec_per_min(leg: Leg) -> float:
    """The usual northward speed of a leg of two readings or more, blind to single bumps.

    The median over pairs of readings a quarter of the leg apart, so that a step falls into a third
    of them at most; 0 where no two times differ.
    """
    apart = max(1, leg.utc_s.size // 4)
    minutes = (leg.utc_s[apart:] - leg.utc_s[:-apart]) / 60.0
    moved = (leg.north_arcsec[apart:] - leg.north_arcsec[:-apart])[minutes > 0.0]
    return float(np.median(moved / minutes[minutes > 0.0])) if moved.size else 0.0


def too_fast(leg: Leg) -> str | None:
    """Why no axis can cause the offsets, as the rest of a sentence; None where one can."""
    rate = abs(north_arcsec_per_min(leg))
    if rate <= FASTEST_ARCSEC_PER_MIN:
        return None
    return say(
        "its star drifts {rate:,.0f}″ a minute, though no polar axis can cause more than "
        "{fastest:.0f}″. The offsets cannot be seconds of arc: are they milliarcseconds or "
        "pixels? Convert them first.",
        rate=rate,
        fastest=FASTEST_ARCSEC_PER_MIN,
    )
