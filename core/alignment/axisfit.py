"""All legs of one axis state solved together for the axis: first roughly, then with honest errors.

Inside this module the axis is the pair (azimuth error × cos latitude, altitude error), radians: two
perpendicular displacements on the sky of like size.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.special import stdtrit

from core.alignment.groups import Groups
from core.alignment.knowledge import AxisKnowledge
from core.alignment.noise import weights
from core.alignment.prepared import PreparedLeg
from core.alignment.trend import LegFit, minutes_about_middle

Floats = NDArray[np.float64]

_ROUNDS = 8
_SETTLED_RAD = 1e-9
_SMALLEST_COSINE = 0.02  # within a degree of a pole of the Earth azimuth loses its meaning


def to_sky(latitude_rad: float) -> Floats:
    """Factors (2,) from azimuth and altitude error to displacements on the sky."""
    return np.array([max(float(np.cos(latitude_rad)), _SMALLEST_COSINE), 1.0])


def azimuth_has_meaning(latitude_rad: float) -> bool:
    """Whether turning the mount about the plumb line moves its axis at all, to speak of."""
    return float(np.cos(latitude_rad)) >= _SMALLEST_COSINE


def rough_axis(
    legs: Sequence[PreparedLeg],
    scale: Floats,
    before: AxisKnowledge,
    breathe: Callable[[], None],
) -> Floats:
    """Axis errors (2,), radians, by least squares with plain weights; the starting point.

    Gauss-Newton on the exact model. Where the legs say nothing, `before` decides. `breathe` is
    called in each round.
    """
    variance = _plain_variance(legs)
    axis = before.sky_rad / scale
    for _ in range(_ROUNDS):
        breathe()
        normal = before.information
        right = normal @ (before.sky_rad - axis * scale)
        for leg in legs:
            predicted, slopes = leg.path.linearised(axis)
            residual = leg.groups.north_arcsec - predicted
            clear = _without_origins(leg.groups, np.column_stack([slopes / scale, residual]))
            normal = normal + clear[:, :2].T @ clear[:, :2] / variance
            right = right + clear[:, :2].T @ clear[:, 2] / variance
        step = np.linalg.solve(normal, right)
        axis = axis + step / scale
        if np.abs(step).max() < _SETTLED_RAD:
            break
    return axis


def _without_origins(groups: Groups, columns: Floats) -> Floats:
    """Columns less their mean within each piece."""
    origins = groups.part_columns()
    return np.asarray(
        columns - origins @ ((origins.T @ columns) / origins.sum(axis=0)[:, np.newaxis])
    )


def _plain_variance(legs: Sequence[PreparedLeg]) -> float:
    """Pooled variance of group means about free parabolas: a scale, not yet an error."""
    squares, freedom = 0.0, 0
    for leg in legs:
        minutes = minutes_about_middle(leg.groups)
        design = np.column_stack([leg.groups.part_columns(), minutes, minutes**2])
        _, rest, rank, _ = np.linalg.lstsq(design, leg.groups.north_arcsec, rcond=None)
        squares += float(rest.sum())
        freedom += minutes.size - int(rank)
    return max(squares / freedom, 1e-8) if freedom > 0 else 1.0


@dataclass(frozen=True, eq=False)
class AxisFit:
    """Displacements (2,) on the sky, radians, their covariance, and the 95 % factors.

    `information` holds each leg's normal matrix (2, 2), rad⁻²: what it alone knows of the axis.
    """

    sky_rad: Floats
    covariance: Floats
    interval_factor: Floats
    information: tuple[Floats, ...]


def joint_fit(
    fits: Sequence[LegFit],
    axis_rad: Floats,
    scale: Floats,
    before: AxisKnowledge,
    one_direction: bool = False,
) -> AxisFit:
    """Generalised least squares about `axis_rad`, averaged over the noise candidates.

    `before`: what is taken for granted of the axis besides the legs. `one_direction`: the legs show
    one direction only, and how they bend is not believed to show the other.
    """
    weight = weights([fit.noise for fit in fits])
    parts = [_leg_normal(fit, scale) for fit in fits]
    normals, rights = [normal for normal, _ in parts], [right for _, right in parts]
    if one_direction:
        normals, rights = _along_the_main_direction(normals, rights, weight)
    start = axis_rad * scale
    total = sum(normals) + before.information
    right = sum(rights) + before.information @ (before.sky_rad - start)
    covariance = np.asarray(np.linalg.inv(total))
    steps = np.einsum("gij,gj->gi", covariance, right)
    mean = weight @ steps
    apart = steps - mean
    mixed = np.einsum("g,gij->ij", weight, covariance) + (weight[:, np.newaxis] * apart).T @ apart
    return AxisFit(
        sky_rad=start + mean,
        covariance=mixed,
        interval_factor=_factors(fits, normals, covariance, weight),
        information=tuple(np.einsum("g,gij->ij", weight, normal) for normal in normals),
    )


def _along_the_main_direction(
    normals: Sequence[Floats], rights: Sequence[Floats], weight: Floats
) -> tuple[list[Floats], list[Floats]]:
    """The same equations with all but the best-known direction taken out."""
    total = np.einsum("g,gij->ij", weight, np.sum(normals, axis=0))
    main = np.linalg.eigh(total)[1][:, -1]
    onto = np.outer(main, main)
    return [onto @ normal @ onto for normal in normals], [right @ onto for right in rights]


def _leg_normal(fit: LegFit, scale: Floats) -> tuple[Floats, Floats]:
    """Normal matrices (g, 2, 2) and right sides (g, 2) of one leg, its origins projected out."""
    origin = np.asarray(fit.origins)
    wanted = fit.first_free + np.array([1, 2, 3])
    matrix = fit.gram.matrix
    cross = matrix[:, origin[:, np.newaxis], wanted]
    own = matrix[:, origin[:, np.newaxis], origin]
    reduced = matrix[:, wanted[:, np.newaxis], wanted] - np.swapaxes(cross, 1, 2) @ np.linalg.solve(
        own, cross
    )
    reduced = reduced / fit.noise.variance_arcsec2[:, np.newaxis, np.newaxis]
    return reduced[:, :2, :2] / np.outer(scale, scale), reduced[:, :2, 2] / scale


def _factors(
    fits: Sequence[LegFit], normals: Sequence[Floats], covariance: Floats, weight: Floats
) -> Floats:
    """Student factors (2,) for 95 %, degrees of freedom after Satterthwaite (1946)."""
    shares = []
    for normal in normals:
        share = np.einsum("gij,gjk,gki->gi", covariance, normal, covariance)
        shares.append(weight @ share)
    share_of = np.asarray(shares)
    freedom = np.array([fit.noise.degrees_of_freedom for fit in fits])
    spread = (share_of**2 / freedom[:, np.newaxis]).sum(axis=0)
    effective = share_of.sum(axis=0) ** 2 / np.maximum(spread, 1e-300)
    return np.asarray(stdtrit(np.maximum(effective, 1.0), 0.975))
