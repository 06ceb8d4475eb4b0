"""How much exposures started at every moment smear, and the chance that one stays within a limit.

The smear of an exposure is the length of an even, straight trail whose light spreads as far: √12
times the standard deviation of the star's place along the direction where it is largest. For a
steady drift it is the length of the trail itself.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.special import stdtrit

from core.tracking.motion import Motion

Floats = NDArray[np.float64]

_FEWEST_STARTS = 8


@dataclass(frozen=True)
class Chance:
    """Share of starting moments, and its 95 % interval from how much the worm's turns differ.

    NaN where the run is too short for such exposures.
    """

    share: float
    low: float
    high: float


@dataclass(frozen=True)
class SteadyDrift:
    """Drift of the polar axis error on the sky, arcsec a minute, and what turning of the field
    adds in one exposure at the corner, arcsec a minute of exposure."""

    east_arcsec_per_min: float = 0.0
    north_arcsec_per_min: float = 0.0
    corner_arcsec_per_min: float = 0.0


STILL = SteadyDrift()


@dataclass(frozen=True, eq=False)
class Sums:
    """Running sums (5, n + 1) of a motion's moments, once for all lengths of exposure: east, north,
    their squares and their product, integrated along the broken line between the steps.
    """

    motion: Motion
    drift: SteadyDrift
    total: Floats

    @classmethod
    def of(cls, motion: Motion, drift: SteadyDrift = STILL) -> Sums:
        """The steady drift is added to the motion."""
        elapsed_min = motion.step_s / 60.0 * np.arange(motion.east_arcsec.size)
        east = motion.east_arcsec + drift.east_arcsec_per_min * elapsed_min
        north = motion.north_arcsec + drift.north_arcsec_per_min * elapsed_min
        east, north = east - east.mean(), north - north.mean()
        total = np.zeros((5, east.size))
        for row, values in enumerate((east, north)):
            np.cumsum(0.5 * (values[1:] + values[:-1]), out=total[row, 1:])
        for row, (one, other) in enumerate(((east, east), (north, north), (east, north)), start=2):
            # The product of two lines between two steps integrates to the trapezoid less a sixth
            # of the product of their differences.
            trapezoid = 0.5 * (one[1:] * other[1:] + one[:-1] * other[:-1])
            np.cumsum(trapezoid - np.diff(one) * np.diff(other) / 6.0, out=total[row, 1:])
        return cls(motion, drift, total)

    def smears_arcsec(self, exposure_s: float) -> tuple[Floats, NDArray[np.intp]]:
        """Smears (s,) of exposures begun at every step, and the first step (s,) of each.

        The corner's part joins at right angles, as it points in every direction somewhere on the
        field.
        """
        steps = max(round(exposure_s / self.motion.step_s), 1)
        starts = _starts(self.motion, steps)
        if starts.size == 0:
            return np.empty(0), starts
        variance = _largest_variance(self._windows(starts, steps))
        corner = self.drift.corner_arcsec_per_min * exposure_s / 60.0
        return np.sqrt(12.0 * variance + corner**2), starts

    def chance_within(self, exposure_s: float, limit_arcsec: float) -> Chance:
        """Chance that an exposure begun at a random moment smears no more than the limit."""
        smears, starts = self.smears_arcsec(exposure_s)
        if smears.size < _FEWEST_STARTS or exposure_s > 0.5 * self.motion.duration_s:
            return Chance(float("nan"), float("nan"), float("nan"))
        good = smears <= limit_arcsec
        share = float(good.mean())
        half = _half_width(good, self.motion.turn[starts])
        return Chance(share, max(share - half, 0.0), min(share + half, 1.0))

    def _windows(self, starts: NDArray[np.intp], steps: int) -> tuple[Floats, Floats, Floats]:
        """Variances east and north and covariance (s,) within each exposure."""
        mean = (self.total[:, starts + steps] - self.total[:, starts]) / steps
        east, north = mean[0], mean[1]
        return mean[2] - east**2, mean[3] - north**2, mean[4] - east * north


def smears_arcsec(
    motion: Motion, exposure_s: float, drift: SteadyDrift = STILL
) -> tuple[Floats, NDArray[np.intp]]:
    """As `Sums.smears_arcsec`, for a single length."""
    return Sums.of(motion, drift).smears_arcsec(exposure_s)


def chance_within(
    motion: Motion, exposure_s: float, limit_arcsec: float, drift: SteadyDrift = STILL
) -> Chance:
    """As `Sums.chance_within`, for a single length."""
    return Sums.of(motion, drift).chance_within(exposure_s, limit_arcsec)


def _starts(motion: Motion, steps: int) -> NDArray[np.intp]:
    """Steps from which a whole exposure fits before the next break."""
    size = motion.east_arcsec.size
    ends = np.asarray((*motion.breaks, size))
    first = np.asarray((0, *motion.breaks))
    parts = [np.arange(low, high - steps) for low, high in zip(first, ends, strict=True)]
    return np.concatenate(parts).astype(np.intp)


def _largest_variance(moments: tuple[Floats, Floats, Floats]) -> Floats:
    east, north, both = moments
    half = 0.5 * (east + north)
    root = np.hypot(0.5 * (east - north), both)
    return np.asarray(np.maximum(half + root, 0.0))


def _half_width(good: NDArray[np.bool_], turn: NDArray[np.intp]) -> float:
    """95 % half-width of a share: the scatter of the turns' own shares; 1 below two turns."""
    number = turn - turn.min()
    count = np.bincount(number)
    share = np.bincount(number, good) / np.maximum(count, 1)
    weight = count / count.sum()
    full = count >= 0.5 * count.max()
    turns = int(full.sum())
    if turns < 2:
        return 1.0
    mean = float(weight @ share)
    spread = float(np.sum(weight[full] * (share[full] - mean) ** 2) / weight[full].sum())
    return float(stdtrit(turns - 1, 0.975) * np.sqrt(spread / (turns - 1)))
