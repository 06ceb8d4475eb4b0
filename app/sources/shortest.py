"""One drift told in a sentence: so many arcseconds north in so many minutes, ending at a time."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from core.alignment.driftlog.records import Leg
from core.language import say

SHORTEST_MIN, LONGEST_MIN = 0.5, 120.0


@dataclass(frozen=True)
class SingleDrift:
    """A star that moved `north_arcsec` (south negative) in the `minutes` before `ending_utc_s`.

    `sigma_arcsec`: how well either offset was read, one standard deviation. Raises ValueError, a
    sentence, for numbers that cannot be meant.
    """

    north_arcsec: float
    minutes: float
    ending_utc_s: float
    sigma_arcsec: float

    def __post_init__(self) -> None:
        if not (math.isfinite(self.north_arcsec) and math.isfinite(self.ending_utc_s)):
            raise ValueError(
                say("How far the star moved and when must be numbers: type them again.")
            )
        if not SHORTEST_MIN <= self.minutes <= LONGEST_MIN:
            raise ValueError(
                say(
                    "A drift can be judged over {shortest:g} to {longest:g} minutes, not "
                    "over {given:g}: give the minutes between the two looks.",
                    shortest=SHORTEST_MIN,
                    longest=LONGEST_MIN,
                    given=self.minutes,
                )
            )
        if not (math.isfinite(self.sigma_arcsec) and self.sigma_arcsec > 0.0):
            raise ValueError(
                say(
                    "Say how well you can read an offset, in arcseconds above zero: without "
                    "it nobody can tell how sure the result is."
                )
            )

    def leg(self, ra_deg: float, dec_deg: float) -> Leg:
        """The drift as a leg of two readings of the star at this ICRS place."""
        utc_s = np.array([self.ending_utc_s - 60.0 * self.minutes, self.ending_utc_s])
        north = np.array([0.0, self.north_arcsec])
        return Leg("", ra_deg, dec_deg, utc_s, north, None, np.full(2, self.sigma_arcsec))
