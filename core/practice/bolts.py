"""A bolt with play in its thread."""

from __future__ import annotations

import numpy as np

LARGEST_SCALE_ERROR = 0.10
LARGEST_BACKLASH_ARCMIN = 1.5


class Bolt:
    """Moves the axis by nearly what the hand means to turn.

    `scale`: true motion over intended motion. `backlash_arcmin`: how far the bolt turns without
    effect after its direction is reversed. `slack_arcmin`: where the thread stands in that play,
    from 0 (bearing on the lower flank) to `backlash_arcmin` (on the upper one).
    """

    def __init__(self, scale: float, backlash_arcmin: float, slack_arcmin: float = 0.0) -> None:
        if not 0.0 <= slack_arcmin <= backlash_arcmin:
            raise ValueError("the slack of a bolt lies between none and its whole backlash")
        self.scale = scale
        self.backlash_arcmin = backlash_arcmin
        self._slack_arcmin = slack_arcmin

    @classmethod
    def drawn(cls, rng: np.random.Generator) -> Bolt:
        """A bolt up to 10 % off in scale, its thread anywhere in its play."""
        scale = 1.0 + LARGEST_SCALE_ERROR * float(rng.uniform(-1.0, 1.0))
        backlash_arcmin = float(rng.uniform(0.3, LARGEST_BACKLASH_ARCMIN))
        return cls(scale, backlash_arcmin, float(rng.uniform(0.0, backlash_arcmin)))

    def turn(self, intended_arcmin: float) -> float:
        """True motion of the axis in arcmin when the hand turns by `intended_arcmin`."""
        wanted_arcmin = self._slack_arcmin + self.scale * intended_arcmin
        self._slack_arcmin = min(max(wanted_arcmin, 0.0), self.backlash_arcmin)
        return wanted_arcmin - self._slack_arcmin
