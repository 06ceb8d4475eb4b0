"""How far one turn of a bolt moves the axis, and its play, learned from the turns one has made."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

_PLAY_EXPECTED_ARCMIN, _PLAY_SIGMA_ARCMIN = 1.0, 1.5  # common practice, no source
_SCALE_SIGMA_ARCMIN = 300.0  # of a bolt nobody has turned yet: anything
_HAND_TURNS = 0.05  # a twentieth of a turn: how well a hand reads its own turns
_FEWEST = 2


@dataclass(frozen=True)
class BoltTurn:
    """One adjustment: turns of the bolt (signed) and how far the axis then moved, as measured."""

    turns: float
    moved_arcmin: float
    sigma_arcmin: float


@dataclass(frozen=True)
class BoltScale:
    """What the turns so far teach. Standard deviations beside the values."""

    arcmin_per_turn: float
    arcmin_per_turn_sigma: float
    play_arcmin: float
    play_sigma_arcmin: float
    number: int

    @property
    def is_known(self) -> bool:
        """Known to a fifth of its value, from at least two turns."""
        return self.number >= _FEWEST and self.arcmin_per_turn_sigma < 0.2 * abs(
            self.arcmin_per_turn
        )

    def turns_for(self, arcmin: float, last_turns: float) -> tuple[float, float]:
        """Turns, signed as `BoltTurn`, for so many arcmin, and their standard deviation.

        `last_turns`: the turn before, 0 if unknown; against it the play is taken up first.
        """
        way = np.sign(arcmin) * np.sign(self.arcmin_per_turn)
        against = last_turns != 0.0 and np.sign(last_turns) != way
        needed = abs(arcmin) + (self.play_arcmin if against else 0.0)
        per_turn = abs(self.arcmin_per_turn)
        turns = way * needed / per_turn
        variance = (turns * self.arcmin_per_turn_sigma / per_turn) ** 2
        if against:
            variance += (self.play_sigma_arcmin / per_turn) ** 2
        return float(turns), float(np.sqrt(variance))


def learn(made: Sequence[BoltTurn]) -> BoltScale:
    """Scale and play by least squares with what is expected of any bolt.

    moved = scale × turns − play × (direction of the turn), the last only after a reversal. The
    hand's own error, a twentieth of a turn, widens each measurement in a second pass.
    """
    scale = 0.0
    for _ in range(3):
        normal = np.diag([_SCALE_SIGMA_ARCMIN**-2, _PLAY_SIGMA_ARCMIN**-2])
        right = np.array([0.0, _PLAY_EXPECTED_ARCMIN * _PLAY_SIGMA_ARCMIN**-2])
        before = 0.0
        for turn in made:
            reverses = before != 0.0 and np.sign(before) != np.sign(turn.turns)
            row = np.array([turn.turns, -np.sign(turn.moved_arcmin) if reverses else 0.0])
            variance = turn.sigma_arcmin**2 + (_HAND_TURNS * scale) ** 2
            normal += np.outer(row, row) / variance
            right += row * turn.moved_arcmin / variance
            before = turn.turns
        covariance = np.linalg.inv(normal)
        scale, play = (covariance @ right).tolist()
    return BoltScale(
        scale,
        float(np.sqrt(covariance[0, 0])),
        max(play, 0.0),
        float(np.sqrt(covariance[1, 1])),
        len(made),
    )
