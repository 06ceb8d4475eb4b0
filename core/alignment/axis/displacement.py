"""The axis as two displacements on the sky: azimuth error × cos latitude, and altitude error.

They are perpendicular and of like size, where the azimuth error itself grows towards the poles of
the Earth. The rough solution that everything else is linearised about stands here too.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

import numpy as np
from numpy.typing import NDArray

from core.alignment.axis.linefit import plain_functional
from core.alignment.geometry import ARCMIN_PER_RAD
from core.alignment.knowledge import AxisKnowledge
from core.alignment.prepared import PreparedLeg

Floats = NDArray[np.float64]

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
    before: AxisKnowledge,
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
