"""Legs that contradict one another: found, named, and left out where the rest settles which it is.

Each leg tells one rate, two displacements of the axis explain them all: what is left over is χ².
Where it is too large the legs cannot all be right, and no average of them means anything.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import combinations

import numpy as np
from numpy.typing import NDArray
from scipy.special import chdtrc, ndtri, stdtrit

from core.alignment.axis.evidence import AXIS, Evidence, estimate

Floats = NDArray[np.float64]

CHANCE = 0.001  # that legs which agree leave so much over; a night in a thousand is alarmed falsely
_ALIKE = float(np.sin(np.deg2rad(10.0)))
_ANYWHERE_ARCMIN, _WITH_CARE_ARCMIN = 1e4, 40.0
_MOST_FOR_PAIRS = 12  # legs: the pairs of more would take seconds
_MOST_ODD = 2  # legs that can be odd together among others that settle it
_ONE = np.ones(1)


@dataclass(frozen=True)
class Contradiction:
    """`named`: numbers of the legs that may be wrong; `left_out`: of them those that the rest shows
    to be wrong, none where nothing settles it; `exchanged`: those that agree with all others once
    their north and south are exchanged.
    """

    named: tuple[int, ...]
    left_out: tuple[int, ...]
    exchanged: tuple[int, ...]


def contradiction(
    legs: Sequence[Evidence],
    reversed_legs: Sequence[Evidence],
    priors: Sequence[Evidence],
    weight: Floats,
    about_arcmin: Floats,
) -> Contradiction | None:
    """None where all legs agree. `reversed_legs`: the same with north and south exchanged; `priors`
    on nuisances they share, none on the axis; `about_arcmin` (2,): where all are linearised.
    """
    compared = _Compared(tuple(priors), about_arcmin)
    plain = [_averaged(leg, weight) for leg in legs]
    turned = [_averaged(leg, weight) for leg in reversed_legs]
    everyone = tuple(range(len(plain)))
    if compared.agree(plain):
        return None
    odd = compared.smallest_odd_sets(plain)
    named = tuple(sorted(set().union(*odd))) if odd else everyone
    left_out: tuple[int, ...] = ()
    if len(odd) == 1 and _spare(_without(plain, odd[0])) > 0:
        left_out = odd[0]
    exchanged = tuple(
        one for one in named if compared.agree([*_without(plain, (one,)), turned[one]])
    )
    return Contradiction(named, left_out, exchanged)


@dataclass(frozen=True, eq=False)
class _Compared:
    """How legs are held against one another."""

    priors: tuple[Evidence, ...]
    about_arcmin: Floats

    def smallest_odd_sets(self, legs: Sequence[Evidence]) -> list[tuple[int, ...]]:
        """The smallest sets of legs without which the others, still the more, agree."""
        for size in range(1, _MOST_ODD + 1):
            if 2 * size >= len(legs) or (size > 1 and len(legs) > _MOST_FOR_PAIRS):
                break
            odd = [
                chosen
                for chosen in combinations(range(len(legs)), size)
                if self.agree(_without(legs, chosen))
            ]
            if odd:
                return odd
        return []

    def agree(self, legs: Sequence[Evidence]) -> bool:
        """Whether one axis explains them.

        Where all are alike, their small differences may show how far the axis is off the other
        way, as far as a mount that was set up with some care can be.
        """
        spare = _spare(legs)
        if spare <= 0:
            return True
        covariance = np.eye(2) * _ANYWHERE_ARCMIN**2
        if _are_alike(legs):
            main, other = np.linalg.svd(_directions(legs))[2]
            covariance = np.outer(main, main) * _ANYWHERE_ARCMIN**2
            covariance += np.outer(other, other) * _WITH_CARE_ARCMIN**2
        free = Evidence.prior("set up with care", AXIS, -self.about_arcmin, covariance)
        found = estimate([*legs, *self.priors, free], _ONE)
        return float(chdtrc(spare, found.squares.sum())) >= CHANCE


def _without(legs: Sequence[Evidence], chosen: Sequence[int]) -> list[Evidence]:
    return [leg for number, leg in enumerate(legs) if number not in chosen]


def _spare(legs: Sequence[Evidence]) -> int:
    """Legs more than the axis has directions that they show."""
    if not legs:
        return 0
    return len(legs) - (1 if _are_alike(legs) else 2)


def _directions(legs: Sequence[Evidence]) -> Floats:
    shows = np.array([leg.shows[0, 0, :2] for leg in legs])
    return np.asarray(shows / np.maximum(np.linalg.norm(shows, axis=1, keepdims=True), 1e-12))


def _are_alike(legs: Sequence[Evidence]) -> bool:
    """All directions within ten degrees of one another, or opposite."""
    ways = _directions(legs)
    return bool(np.abs(ways[:, 0] * ways[0, 1] - ways[:, 1] * ways[0, 0]).max() < _ALIKE)


def _averaged(leg: Evidence, weight: Floats) -> Evidence:
    """Over the noise candidates; few readings widen it as Student's tails need at this chance."""
    mean = weight @ leg.measured[:, 0]
    variance = weight @ (leg.covariance[:, 0, 0] + (leg.measured[:, 0] - mean) ** 2)
    freedom = max(float(weight @ leg.freedom), 1.0)
    known = float(weight @ leg.known_share)
    tail = float(stdtrit(freedom, 1.0 - 0.5 * CHANCE) / ndtri(1.0 - 0.5 * CHANCE))
    widened = variance * (known + (1.0 - known) * tail**2)
    return replace(
        leg,
        measured=np.array([[mean]]),
        shows=np.einsum("g,gmp->mp", weight, leg.shows)[np.newaxis],
        covariance=np.array([[[widened]]]),
        freedom=np.array([np.inf]),
        known_share=np.ones(1),
    )
