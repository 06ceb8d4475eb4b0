"""Evidence of the axis: turned to the sky, put together, solved with its covariance."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray
from scipy.special import stdtrit

from core.alignment.drift.linefit import plain_functional
from core.alignment.drift.prepared import PreparedLeg
from core.units import ARCMIN_PER_RAD

# What is known of the axis before the legs at hand: little, or an earlier state turned.
#
# Inside this module the axis is the pair (azimuth error × cos latitude, altitude error): two
# perpendicular displacements on the sky of like size.

Floats = NDArray[np.float64]


@dataclass(frozen=True, eq=False)
class PriorAxis:
    """Displacement (2,) on the sky, arcmin, and its covariance (2, 2), arcmin².

    `freedom`: degrees of freedom behind the covariance; few make long tails (Student's t).
    """

    sky_arcmin: Floats
    covariance_arcmin2: Floats
    freedom: float = 1e6

    @classmethod
    def about_the_pole(cls, sigma_deg: float) -> PriorAxis:
        """The axis is within a few of these of the true pole, and no more is known."""
        return cls(np.zeros(2), np.eye(2) * (60.0 * sigma_deg) ** 2)

    @property
    def information_arcmin2(self) -> Floats:
        """Inverse covariance (2, 2)."""
        return np.asarray(np.linalg.inv(self.covariance_arcmin2))

    @property
    def interval_factor(self) -> float:
        """Of a standard deviation, for the half-width of the 95 % interval."""
        from scipy.special import stdtrit  # here, so that the first window need not wait for scipy

        return float(stdtrit(self.freedom, 0.975))

    def disagreement(self, other: PriorAxis) -> float:
        """Squared distance between two independent statements, χ² with two degrees of freedom."""
        apart = self.sky_arcmin - other.sky_arcmin
        together = self.covariance_arcmin2 + other.covariance_arcmin2
        return float(apart @ np.linalg.solve(together, apart))


# Evidence on the axis of any kind in one form, and the one solver for it.
#
# A piece of evidence measures numbers that depend on named parameters: the two displacements of the
# axis on the sky, and nuisances that several pieces share. Pieces add up by the names; what is
# known of a parameter beforehand is a piece like any other. All numbers may differ from noise
# candidate to noise candidate (g,); the candidates are averaged over at the end.

AZIMUTH, ALTITUDE = "azimuth × cos latitude, arcmin", "altitude, arcmin"
AXIS = (AZIMUTH, ALTITUDE)
_MANY = 1e6  # degrees of freedom
ANGLE = "angle of the reticle, prior standard deviations"
FLEXURE = tuple(f"flexure {way}, arcsec per g" for way in ("east", "north", "along the sight"))


@dataclass(frozen=True, eq=False)
class Evidence:
    """`measured` (g, m) less what the point of linearisation predicts; `shows` (g, m, p): its
    change with the parameters `names`, counted from that point for the axis, from zero for others.

    `covariance` (g, m, m); `known_share` (g,): the part of it that is no estimate from `freedom`
    degrees of freedom (g,) but known beforehand. `g` may be 1: the same for all candidates.
    """

    kind: str
    label: str
    names: tuple[str, ...]
    measured: Floats
    shows: Floats
    covariance: Floats
    freedom: Floats
    known_share: Floats

    @classmethod
    def prior(cls, kind: str, names: Sequence[str], mean: Floats, covariance: Floats) -> Evidence:
        """What is known of parameters (p,) beforehand, about the point of linearisation."""
        size = len(names)
        return cls(
            kind, "", tuple(names), mean[np.newaxis], np.eye(size)[np.newaxis],
            covariance[np.newaxis], np.array([np.inf]), np.ones(1),
        )  # fmt: skip

    def of_one(self, name: str, others: Sequence[str]) -> Evidence:
        """With all `others` but `name` held at the point of linearisation."""
        kept = [one == name or one not in others for one in self.names]
        names = tuple(one for one, is_kept in zip(self.names, kept, strict=True) if is_kept)
        return replace(self, names=names, shows=self.shows[:, :, kept])

    def normal(self, names: Sequence[str]) -> tuple[Floats, Floats]:
        """Normal matrix (g, P, P) and right side (g, P) in the parameters `names`."""
        at = [names.index(name) for name in self.names]
        shows = np.zeros((*self.shows.shape[:2], len(names)))
        shows[:, :, at] = self.shows
        weighted = np.linalg.solve(self.covariance, shows)
        normal = np.swapaxes(shows, 1, 2) @ weighted
        right = np.einsum("gmp,gm->gp", weighted, self.measured)
        return np.asarray(normal), np.asarray(right)

    def square(self, names: Sequence[str], values: Floats) -> Floats:
        """χ² (g,) of this piece at parameters (g, P)."""
        at = [names.index(name) for name in self.names]
        apart = self.measured - np.einsum("gmp,gp->gm", self.shows, values[:, at])
        return np.asarray(
            np.einsum(
                "gm,gm->g", apart, np.linalg.solve(self.covariance, apart[..., np.newaxis])[..., 0]
            )
        )


@dataclass(frozen=True, eq=False)
class AxisEstimate:
    """Parameters (P,) with covariance (P, P) over all candidates, and the factors (P,) that make
    95 % half-widths of their standard deviations. `squares`: χ² of each piece, in their order.
    `freedom` (P,): effective degrees of freedom behind the standard deviations.
    """

    names: tuple[str, ...]
    values: Floats
    covariance: Floats
    interval_factor: Floats
    freedom: Floats
    squares: Floats

    def of(self, names: Sequence[str]) -> tuple[Floats, Floats, Floats]:
        """Values, covariance and factors of some of the parameters."""
        at = np.array([self.names.index(name) for name in names])
        return self.values[at], self.covariance[np.ix_(at, at)], self.interval_factor[at]


def estimate(pieces: Sequence[Evidence], weight: Floats) -> AxisEstimate:
    """Generalised least squares over all pieces, averaged over the candidates with `weight` (g,).

    Each parameter must be told by some piece, a prior at least.
    """
    names = tuple(dict.fromkeys(name for piece in pieces for name in piece.names))
    normals = [piece.normal(names) for piece in pieces]
    total = sum((normal for normal, _ in normals), np.zeros((weight.size, 1, 1)))
    right = sum((side for _, side in normals), np.zeros((weight.size, 1)))
    covariance = np.asarray(np.linalg.inv(total))
    solved = np.einsum("gij,gj->gi", covariance, right)
    mean = weight @ solved
    apart = solved - mean
    mixed = np.einsum("g,gij->ij", weight, covariance) + (weight[:, np.newaxis] * apart).T @ apart
    freedom = _freedom(pieces, [normal for normal, _ in normals], covariance, weight)
    return AxisEstimate(
        names,
        mean,
        mixed,
        np.asarray(stdtrit(freedom, 0.975)),
        freedom,
        np.array(
            [
                weight @ np.broadcast_to(piece.square(names, solved), weight.shape)
                for piece in pieces
            ]
        ),
    )


def _freedom(
    pieces: Sequence[Evidence], normals: Sequence[Floats], covariance: Floats, weight: Floats
) -> Floats:
    """Effective degrees of freedom (P,) after Satterthwaite, Biometrics Bulletin 2, 110 (1946)."""
    variance = np.einsum("gii->gi", covariance)
    spread = np.zeros(variance.shape[1])
    for piece, normal in zip(pieces, normals, strict=True):
        share = np.einsum("gij,gjk,gki->gi", covariance, normal, covariance)
        estimated = share * (1.0 - piece.known_share)[:, np.newaxis]
        spread = spread + weight @ np.broadcast_to(
            estimated**2 / piece.freedom[:, np.newaxis], variance.shape
        )
    square = (weight @ variance) ** 2
    return np.asarray(np.maximum(square / np.maximum(spread, square / _MANY), 1.0))


# The axis as two displacements on the sky: azimuth error × cos latitude, and altitude error.
#
# They are perpendicular and of like size, where the azimuth error itself grows towards the poles of
# the Earth. The rough solution that everything else is linearised about stands here too.

_ROUNDS = 8
_SETTLED_ARCMIN = 3e-6
_SMALLEST_COSINE = 0.02  # within a degree of a pole of the Earth azimuth loses its meaning
_PLAIN_RATE_VARIANCE = 0.05**2  # (arcsec/min)²: a scale, not an error


def to_sky(latitude_rad: float) -> Floats:
    """Factors (2,) from azimuth and altitude error to displacements on the sky."""
    return np.array([max(float(np.cos(latitude_rad)), _SMALLEST_COSINE), 1.0])


def azimuth_has_meaning(latitude_rad: float) -> bool:
    """Whether turning the mount about the plumb line moves its axis at all, to speak of."""
    return float(np.cos(latitude_rad)) >= _SMALLEST_COSINE


def main_direction(shows: Floats, information: Floats) -> Floats:
    """Unit direction (2,) on the sky that rates with sensitivities (n, 2) show best."""
    return np.asarray(np.linalg.eigh((shows.T * information) @ shows)[1][:, -1])


def rough_axis(
    legs: Sequence[PreparedLeg],
    scale: Floats,
    before: PriorAxis,
    alike: bool,
    breathe: Callable[[], None],
) -> Floats:
    """Axis errors (2,), radians, from the plain rates of the legs on the exact model.

    Gauss-Newton. Where the legs say nothing, `before` decides; where all show one direction
    (`alike`), the axis moves along that alone. `breathe` is called in each round.
    """
    information = np.linalg.inv(before.covariance_arcmin2)
    functionals = [plain_functional(leg.groups) for leg in legs]
    sky = before.sky_arcmin.astype(float)
    for _ in range(_ROUNDS):
        breathe()
        rates, shows = _plain_rates(legs, functionals, sky, scale)
        told = (shows.T / _PLAIN_RATE_VARIANCE) @ np.column_stack([shows, rates])
        normal = told[:, :2] + information
        right = told[:, 2] + information @ (before.sky_arcmin - sky)
        if alike:
            along = main_direction(shows, np.ones(rates.size))
            sky = before.sky_arcmin + along * float(along @ (sky - before.sky_arcmin))
            step = along * float(along @ right) / float(along @ normal @ along)
        else:
            step = np.linalg.solve(normal, right)
        sky = sky + step
        if np.abs(step).max() < _SETTLED_ARCMIN:
            break
    return np.asarray(sky / scale / ARCMIN_PER_RAD)


def _plain_rates(
    legs: Sequence[PreparedLeg], functionals: Sequence[Floats], sky: Floats, scale: Floats
) -> tuple[Floats, Floats]:
    """Rates (n,) beside what the axis predicts, arcsec/min, and their slopes (n, 2) by arcmin."""
    rates, shows = [], []
    for leg, functional in zip(legs, functionals, strict=True):
        predicted, slopes = leg.path.linearised(sky / scale / ARCMIN_PER_RAD)
        rates.append(float(functional @ (leg.groups.north_arcsec - predicted)))
        shows.append(functional @ slopes / scale / ARCMIN_PER_RAD)
    return np.array(rates), np.array(shows)
