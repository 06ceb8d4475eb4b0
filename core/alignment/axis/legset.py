"""The legs of one axis state together: the axis they tell, and legs that contradict one another."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from itertools import combinations

import numpy as np
from numpy.typing import NDArray
from scipy.special import chdtrc, ndtri, stdtrit

from core.alignment.axis.evidence import (
    ALTITUDE,
    ANGLE,
    AXIS,
    AZIMUTH,
    FLEXURE,
    Evidence,
    PriorAxis,
    estimate,
)
from core.alignment.axis.legrate import LegRate
from core.alignment.axis.singlestar import IfRight
from core.alignment.drift.noise import weights
from core.alignment.priors import Priors
from core.units import ARCMIN_PER_RAD

# Legs that contradict one another: found, named, and left out where the rest settles which it is.
#
# Each leg tells one rate, two displacements of the axis explain them all: what is left over is χ².
# Where it is too large the legs cannot all be right, and no average of them means anything.

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


# The legs of one axis state together: the axis they tell, and whether they agree.

_ROUNDS = 6
_SETTLED_ARCMIN = 1e-3
_ANYWHERE_ALONG_ARCMIN = 1800.0


@dataclass(frozen=True, eq=False)
class AxisFit:
    """The axis: azimuth × cos latitude and altitude error (2,), arcmin, as `AxisKnowledge` has it,
    and the factors (2,) that make 95 % half-widths of their standard deviations.
    """

    axis_rad: Floats
    sky_arcmin: Floats
    covariance_arcmin2: Floats
    interval_factor: Floats
    freedom: Floats

    @cached_property
    def sigma_arcmin(self) -> Floats:
        """Standard deviations (2,) on the sky."""
        return np.asarray(np.sqrt(np.diag(self.covariance_arcmin2)))

    @property
    def half_widths_arcmin(self) -> Floats:
        """95 % half-widths (2,) on the sky."""
        return np.asarray(self.interval_factor * self.sigma_arcmin)

    @property
    def knowledge(self) -> PriorAxis:
        """The fit as a statement on the axis."""
        return PriorAxis(self.sky_arcmin, self.covariance_arcmin2, float(self.freedom.min()))


@dataclass(frozen=True, eq=False)
class LegSet:
    """`scale` (2,): from azimuth and altitude error to the sky. `weight` (g,) of the noise
    candidates. `numbers`: which of the legs of the night these are.
    """

    rates: tuple[LegRate, ...]
    scale: Floats
    priors: Priors
    weight: Floats
    numbers: tuple[int, ...]

    @classmethod
    def of(cls, rates: Sequence[LegRate], scale: Floats, priors: Priors) -> LegSet:
        """All legs; each weighs the noise candidates."""
        weight = weights([rate.log_likelihood for rate in rates])
        return cls(tuple(rates), scale, priors, weight, tuple(range(len(rates))))

    def without(self, numbers: Iterable[int]) -> LegSet:
        """The others."""
        gone = set(numbers)
        kept = tuple(one for one in self.numbers if one not in gone)
        rates = tuple(
            rate for rate, one in zip(self.rates, self.numbers, strict=True) if one in kept
        )
        return replace(self, rates=rates, numbers=kept) if gone else self

    def settled(self, axis_rad: Floats, granted: PriorAxis) -> AxisFit:
        """Least squares on the exact model from `axis_rad` on; `granted`: beside the legs."""
        sky = axis_rad * self.scale * ARCMIN_PER_RAD
        for _ in range(_ROUNDS):
            known = Evidence.prior(
                "before", AXIS, granted.sky_arcmin - sky, granted.covariance_arcmin2
            )
            axis_rad = self._axis_rad(sky)
            legs = [
                rate.shared_evidence(axis_rad, self.scale, bool(self._flexure))
                for rate in self.rates
            ]
            found = estimate([*legs, *self._reticle, *self._flexure, known], self.weight)
            step, covariance, factor = found.of(AXIS)
            sky = sky + step
            if np.abs(step).max() < _SETTLED_ARCMIN:
                break
        at = [found.names.index(name) for name in AXIS]
        return AxisFit(self._axis_rad(sky), sky, covariance, factor, found.freedom[at])

    def main_direction(self, axis_rad: Floats) -> Floats:
        """The direction (2,) on the sky that the legs show best."""
        total = np.sum(self.information_arcmin2(axis_rad), axis=0)
        return np.asarray(np.linalg.eigh(total)[1][:, -1])

    def contradiction(self, axis_rad: Floats) -> Contradiction | None:
        """Which legs cannot be right together; None where all agree."""
        turned = [
            rate.evidence(axis_rad, self.scale, bool(self._flexure), exchanged=True)
            for rate in self.rates
        ]
        about = axis_rad * self.scale * ARCMIN_PER_RAD
        return contradiction(self._legs(axis_rad), turned, self._flexure, self.weight, about)

    def information_arcmin2(self, axis_rad: Floats) -> tuple[Floats, ...]:
        """What each leg (2, 2) alone knows of the axis, were the tube rigid."""
        return tuple(
            np.einsum(
                "g,gi,gj->ij",
                self.weight / leg.covariance[:, 0, 0],
                leg.shows[:, 0, :2],
                leg.shows[:, 0, :2],
            )
            for leg in self._legs(axis_rad)
        )

    def azimuth_if_altitude_is_right(self) -> IfRight:
        """The azimuth error, arcmin, of an axis whose altitude error is zero."""
        azimuth, half_width = self._along(AZIMUTH)
        return IfRight(azimuth / self.scale[0], half_width / self.scale[0])

    def altitude_if_azimuth_is_right(self) -> IfRight:
        """The altitude error, arcmin, of an axis whose azimuth error is zero."""
        return IfRight(*self._along(ALTITUDE))

    def _along(self, name: str) -> tuple[float, float]:
        """One displacement with its 95 % half-width, arcmin, the other being exactly zero."""
        way = np.array([float(name == one) for one in AXIS])
        size = 0.0
        for _ in range(_ROUNDS):
            axis_rad = self._axis_rad(size * way)
            legs = [
                rate.evidence(axis_rad, self.scale, bool(self._flexure)).of_one(name, AXIS)
                for rate in self.rates
            ]
            anywhere = Evidence.prior(
                "anywhere", (name,), np.array([-size]), np.eye(1) * _ANYWHERE_ALONG_ARCMIN**2
            )
            found = estimate([*legs, *self._flexure, anywhere], self.weight)
            step, covariance, factor = found.of((name,))
            size += float(step[0])
            if abs(float(step[0])) < _SETTLED_ARCMIN:
                break
        return size, float(factor[0] * np.sqrt(covariance[0, 0]))

    def _axis_rad(self, sky_arcmin: Floats) -> Floats:
        return np.asarray(sky_arcmin / self.scale / ARCMIN_PER_RAD)

    def _legs(self, axis_rad: Floats) -> list[Evidence]:
        """Each by itself, what its reticle may leak in its own error."""
        return [rate.evidence(axis_rad, self.scale, bool(self._flexure)) for rate in self.rates]

    @cached_property
    def _reticle(self) -> list[Evidence]:
        """What is known of its angle beforehand, in its own standard deviations."""
        if self.priors.angle_sigma_deg <= 0.0:
            return []
        return [Evidence.prior("reticle", (ANGLE,), np.zeros(1), np.eye(1))]

    @cached_property
    def _flexure(self) -> list[Evidence]:
        """What is known of the tube beforehand; nothing of a rigid one."""
        yields = self.priors.flexure_arcsec_per_g
        if yields <= 0.0:
            return []
        return [Evidence.prior("tube", FLEXURE, np.zeros(3), np.eye(3) * yields**2)]
