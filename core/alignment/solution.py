"""The legs of one axis state solved for the azimuth and altitude error of the polar axis."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.alignment.axisfit import AxisFit, joint_fit, rough_axis, to_sky
from core.alignment.combination import Combination, combination
from core.alignment.driftlog import Leg
from core.alignment.geometry import ARCMIN_PER_RAD, sky_error_rad
from core.alignment.noise import NoiseGrid, weights
from core.alignment.prepared import PreparedLeg
from core.alignment.trend import LegTrend, fit_leg, trend
from core.alignment.usable import Note, UnusableLegs, usable
from core.alignment.weakness import weaknesses
from core.sky.refraction import Refraction
from core.sky.site import Air, Site

__all__ = ["Note", "Solution", "UnusableLegs", "solve"]

Floats = NDArray[np.float64]

_TOLD_ARCMIN = 15.0  # an axis error whose 95 % half-width on the sky is larger is not told
_NOTHING_GRANTED_RAD = np.deg2rad(30.0)  # keeps a single star's equations solvable, no more
_TAKEN_FOR_GRANTED_RAD = np.deg2rad(2.0)  # standard deviation of an axis set by scale and compass


@dataclass(frozen=True, eq=False)
class Solution:
    """Axis errors with their standard deviations; signs as in `core.alignment.geometry`.

    Azimuth is measured in the horizontal plane, as the azimuth bolts turn it; altitude from the
    true pole, and from the refracted pole beside it. A quantity the legs cannot tell is NaN and
    marked undetermined. `interval_factor` times sigma is the half-width of the 95 % interval.
    `information_arcmin2[i]` is what leg i alone knows of (azimuth × cos latitude, altitude).
    """

    azimuth_error_arcmin: float
    azimuth_sigma_arcmin: float
    azimuth_interval_factor: float
    azimuth_determined: bool
    altitude_error_arcmin: float
    altitude_sigma_arcmin: float
    altitude_interval_factor: float
    altitude_determined: bool
    altitude_error_refracted_arcmin: float
    correlation: float
    sky_error_arcmin: float
    sky_sigma_arcmin: float
    combination: Combination | None
    legs: tuple[LegTrend, ...]
    notes: tuple[Note, ...]
    latitude_deg: float
    information_arcmin2: tuple[Floats, ...]

    @property
    def determined(self) -> bool:
        """Both axis errors are known."""
        return self.azimuth_determined and self.altitude_determined


def solve(legs: Sequence[Leg], site: Site, air: Air) -> Solution:
    """Solve all legs of one axis state together by least squares on the exact drift model.

    Only the north offsets enter: right ascension carries the drive's periodic error. Raises
    `UnusableLegs` with a sentence when no leg can be used.
    """
    good, notes = usable(legs)
    latitude = float(np.deg2rad(site.latitude_deg))
    scale = to_sky(latitude)
    prepared = [PreparedLeg.of(leg, site, air) for leg in good]
    axis = rough_axis(prepared, scale)
    stepped = [leg.with_steps(axis) for leg in prepared]
    if any(leg.steps for leg in stepped):
        axis = rough_axis(stepped, scale)
    grid = NoiseGrid.for_durations([float(np.ptp(leg.groups.utc_s)) for leg in stepped])
    fits = [fit_leg(leg, axis, grid) for leg in stepped]
    weight = weights([fit.noise for fit in fits])
    trends = tuple(trend(fit, weight, grid) for fit in fits)
    axis_fit = joint_fit(fits, axis, scale, _NOTHING_GRANTED_RAD)
    known = _half_widths_arcmin(axis_fit).max() < _TOLD_ARCMIN
    if not known:
        axis_fit = joint_fit(fits, axis, scale, _TAKEN_FOR_GRANTED_RAD)
    return _solution(axis_fit, known, trends, notes, site, air)


def _half_widths_arcmin(fit: AxisFit) -> Floats:
    """95 % half-widths (2,) of the displacements on the sky."""
    return np.asarray(fit.interval_factor * np.sqrt(np.diag(fit.covariance)) * ARCMIN_PER_RAD)


def _solution(
    fit: AxisFit,
    known: bool,
    trends: tuple[LegTrend, ...],
    notes: tuple[Note, ...],
    site: Site,
    air: Air,
) -> Solution:
    latitude = float(np.deg2rad(site.latitude_deg))
    azimuth, altitude = fit.sky_rad / to_sky(latitude) * ARCMIN_PER_RAD
    sigma = np.sqrt(np.diag(fit.covariance))
    azimuth_sigma, altitude_sigma = sigma / to_sky(latitude) * ARCMIN_PER_RAD
    told = np.full(2, True) if known else _half_widths_arcmin(fit) < _TOLD_ARCMIN
    refracted = float(altitude) - pole_refraction_arcmin(site, air)
    correlation = float(fit.covariance[0, 1] / np.prod(sigma))
    both = bool(told.all())
    sky, sky_sigma = _sky_error(fit, latitude)
    nothing = float("nan")
    return Solution(
        azimuth_error_arcmin=float(azimuth) if told[0] else nothing,
        azimuth_sigma_arcmin=float(azimuth_sigma) if told[0] else nothing,
        azimuth_interval_factor=float(fit.interval_factor[0]),
        azimuth_determined=bool(told[0]),
        altitude_error_arcmin=float(altitude) if told[1] else nothing,
        altitude_sigma_arcmin=float(altitude_sigma) if told[1] else nothing,
        altitude_interval_factor=float(fit.interval_factor[1]),
        altitude_determined=bool(told[1]),
        altitude_error_refracted_arcmin=refracted if told[1] else nothing,
        correlation=correlation if both else nothing,
        sky_error_arcmin=sky if both else nothing,
        sky_sigma_arcmin=sky_sigma if both else nothing,
        combination=None
        if known
        else combination(fit.sky_rad, fit.covariance, float(fit.interval_factor.max()), latitude),
        legs=trends,
        notes=notes + weaknesses(trends, correlation if known else None, site, air),
        latitude_deg=site.latitude_deg,
        information_arcmin2=tuple(part / ARCMIN_PER_RAD**2 for part in fit.information),
    )


def _sky_error(fit: AxisFit, latitude_rad: float) -> tuple[float, float]:
    """Angle between axis and true pole, arcmin, and its standard deviation."""
    azimuth, altitude = fit.sky_rad / to_sky(latitude_rad)
    size = sky_error_rad(latitude_rad, float(azimuth), float(altitude))
    towards = fit.sky_rad / max(float(np.linalg.norm(fit.sky_rad)), 1e-12)
    sigma = float(np.sqrt(towards @ fit.covariance @ towards))
    return size * ARCMIN_PER_RAD, sigma * ARCMIN_PER_RAD


def pole_refraction_arcmin(site: Site, air: Air) -> float:
    """How far the air lifts the elevated pole."""
    pole = abs(np.deg2rad(site.latitude_deg))
    lifted = Refraction.of(air).observed_altitude_rad(pole)
    return float(lifted - pole) * ARCMIN_PER_RAD
