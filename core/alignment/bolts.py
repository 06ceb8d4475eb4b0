"""How far one turn of a bolt moves the axis, and its play, learned from the turns one has made."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

_PLAY_EXPECTED_ARCMIN, _PLAY_SIGMA_ARCMIN = 1.0, 1.5  # common practice, no source
_SCALE_SIGMA_ARCMIN = 300.0  # of a bolt nobody has turned yet: anything
_HAND_TURNS = 0.05  # a twentieth of a turn: how well a hand reads its own turns
_FEWEST = 2
_PLAIN_SIGMAS = 3.0  # of a movement: less, and its direction is not to be trusted
_AGREEING = 0.75  # of the plain turns: fewer, and how the person counts is not settled
_SHEET_SHARE = 0.1  # of a data sheet's figure, as its error: common practice, no source
_SHEET_AGREES = 3.0  # standard deviations between sheet and turn that chance may bring


@dataclass(frozen=True)
class BoltTurn:
    """One adjustment: turns of the bolt (signed) and how far the axis then moved, as measured."""

    turns: float
    moved_arcmin: float
    sigma_arcmin: float


@dataclass(frozen=True)
class BoltScale:
    """What the turns so far teach. Standard deviations beside the values.

    `arcmin_per_turn` is negative where turns counted as positive move the axis towards smaller
    azimuth or downwards. `has_sense`: whether the turns agree on that; without it the sign says
    nothing. `number` is 0 for the figure of a data sheet, before any turn. `confirmed`: the data
    sheet says the same.
    """

    arcmin_per_turn: float
    arcmin_per_turn_sigma: float
    play_arcmin: float
    play_sigma_arcmin: float
    number: int
    has_sense: bool = True
    confirmed: bool = False

    @property
    def is_known(self) -> bool:
        """Known to a fifth of its value, from two turns, or from one that the data sheet bears out.

        And the turns agree on which way the axis goes.
        """
        enough = self.number >= _FEWEST or (self.number > 0 and self.confirmed)
        return enough and self.has_sense and self.is_measured

    @property
    def is_measured(self) -> bool:
        """The size is known to a fifth, whichever way the bolt has to go."""
        return self.arcmin_per_turn_sigma < 0.2 * abs(self.arcmin_per_turn)

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


def of_sheet(arcmin_per_turn: float) -> BoltScale:
    """Before any turn: what the data sheet says, which never tells the way."""
    return BoltScale(
        arcmin_per_turn,
        _SHEET_SHARE * arcmin_per_turn,
        _PLAY_EXPECTED_ARCMIN,
        _PLAY_SIGMA_ARCMIN,
        0,
        has_sense=False,
    )


def as_counted(made: Sequence[BoltTurn]) -> tuple[list[BoltTurn], bool]:
    """The turns with their signs made consistent, and whether the person's own counting was.

    One turn counted the other way among several is a slip, and is turned over. Where many disagree,
    the person counts without a sign: then all are counted by what the axis did.
    """
    plain = [one for one in made if abs(one.moved_arcmin) > _PLAIN_SIGMAS * one.sigma_arcmin]
    ways = [float(np.sign(one.turns * one.moved_arcmin)) for one in plain]
    share = max(ways.count(1.0), ways.count(-1.0)) / len(ways) if ways else 1.0
    has_sense = share >= _AGREEING
    sense = -1.0 if has_sense and ways.count(-1.0) > ways.count(1.0) else 1.0
    counted = [
        replace(one, turns=abs(one.turns) * sense * float(np.sign(one.moved_arcmin)))
        if one in plain
        else one
        for one in made
    ]
    return counted, has_sense


def learn(made: Sequence[BoltTurn], sheet_arcmin_per_turn: float | None = None) -> BoltScale:
    """Scale and play by least squares with what is expected of any bolt.

    moved = scale × turns − play × (direction of the turn), the last only after a reversal. The
    hand's own error, a twentieth of a turn, widens each measurement in a second pass. A data
    sheet's figure stands in until there are turns, and bears out a single one.
    """
    if not made and sheet_arcmin_per_turn is not None:
        return of_sheet(sheet_arcmin_per_turn)
    made, has_sense = as_counted(made)
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
    sigma = float(np.sqrt(covariance[0, 0]))
    return BoltScale(
        scale,
        sigma,
        max(play, 0.0),
        float(np.sqrt(covariance[1, 1])),
        len(made),
        has_sense,
        _bears_out(sheet_arcmin_per_turn, scale, sigma),
    )


def _bears_out(sheet_arcmin_per_turn: float | None, scale: float, sigma: float) -> bool:
    if sheet_arcmin_per_turn is None:
        return False
    apart = abs(abs(scale) - sheet_arcmin_per_turn)
    return apart < _SHEET_AGREES * float(np.hypot(sigma, _SHEET_SHARE * sheet_arcmin_per_turn))
