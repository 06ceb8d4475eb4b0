"""What one leg shows by itself: its drift rate with an honest error, its fitted line and band."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.special import stdtrit

from core.alignment.axis.legrate import LegRate
from core.alignment.axis.linefit import fit_line, minutes_about_middle
from core.alignment.axis.nuisances import nuisance_columns
from core.alignment.axis.priors import Priors
from core.alignment.noise import NoiseGrid
from core.alignment.steps import Step

Floats = NDArray[np.float64]
Flags = NDArray[np.bool_]


@dataclass(frozen=True, eq=False)
class LegTrend:
    """One leg's drift. Angles of the star are for the middle of the leg, as observed.

    `bend_sigmas`: how surely the leg bends unlike the path of its star, in standard deviations.
    `interval_factor` times a sigma is the half-width of the 95 % interval; `slow_share` of its
    variance is no scatter of the readings but motion too slow to be told from drift. `rejected`
    (n,) flags readings set aside. The curve arrays (m,) are the fitted line in the leg's own
    offsets with its 95 % band, the group arrays (m,) the means it was fitted to.
    `reading_step_arcsec`: the division it was read to, 0 where there is none. `angle_deg`: how far
    the reticle's north is turned, from north through east, with its sigma, NaN where no east
    offsets tell.
    """

    label: str
    sample_count: int
    minutes: float
    drift_arcsec_per_min: float
    drift_sigma_arcsec_per_min: float
    interval_factor: float
    slow_share: float
    hour_angle_deg: float
    declination_deg: float
    altitude_deg: float
    azimuth_deg: float
    bend_sigmas: float
    noise_arcsec: float
    correlation_time_s: float
    reading_step_arcsec: float
    angle_deg: float
    angle_sigma_deg: float
    rejected: Flags
    steps: tuple[Step, ...]
    curve_utc_s: Floats
    curve_arcsec: Floats
    curve_low_arcsec: Floats
    curve_high_arcsec: Floats
    bin_utc_s: Floats
    bin_arcsec: Floats


def trend(
    fit: LegRate, axis_rad: Floats, weight: Floats, grid: NoiseGrid, priors: Priors
) -> LegTrend:
    """The leg's record, averaged over the noise candidates with `weight` (g,)."""
    leg, track, groups = fit.prepared.leg, fit.prepared.track, fit.prepared.groups
    hour_angle, altitude, azimuth = track.middle()
    rate, rate_variance = average(weight, fit.rate, fit.variance)
    factor = _factor(fit, weight)
    level, half_width = _band(fit, weight, factor)
    angle, angle_sigma = _angle_deg(fit, weight, priors)
    return LegTrend(
        label=leg.label,
        sample_count=int(leg.utc_s.size),
        minutes=float(leg.utc_s[-1] - leg.utc_s[0]) / 60.0,
        drift_arcsec_per_min=rate,
        drift_sigma_arcsec_per_min=float(np.sqrt(rate_variance)),
        interval_factor=factor,
        slow_share=float(weight @ fit.known_share),
        hour_angle_deg=float(np.rad2deg(hour_angle)),
        declination_deg=float(np.rad2deg(track.declination_rad)),
        altitude_deg=float(np.rad2deg(altitude)),
        azimuth_deg=float(np.rad2deg(azimuth)),
        bend_sigmas=_bend(fit, axis_rad, weight, grid, priors),
        noise_arcsec=_reading_noise(fit, weight),
        correlation_time_s=float(weight @ grid.correlation_time_s),
        reading_step_arcsec=fit.prepared.reading_step_arcsec,
        angle_deg=angle,
        angle_sigma_deg=angle_sigma,
        rejected=~fit.prepared.kept,
        steps=fit.prepared.steps,
        curve_utc_s=groups.utc_s,
        curve_arcsec=level,
        curve_low_arcsec=level - half_width,
        curve_high_arcsec=level + half_width,
        bin_utc_s=groups.utc_s,
        bin_arcsec=groups.north_arcsec,
    )


def average(weight: Floats, values: Floats, variances: Floats) -> tuple[float, float]:
    """Mean and variance of a mixture: the candidates' own variance and their disagreement."""
    mean = float(weight @ values)
    return mean, float(weight @ (variances + (values - mean) ** 2))


def _factor(fit: LegRate, weight: Floats) -> float:
    """Student's factor for 95 %, of the part of the variance that the readings themselves tell."""
    estimated = np.maximum(1.0 - fit.known_share, 1e-6)
    return float(stdtrit(max(float(weight @ (fit.freedom / estimated**2)), 1.0), 0.975))


def _bend(fit: LegRate, axis_rad: Floats, weight: Floats, grid: NoiseGrid, priors: Priors) -> float:
    """The curvature the exact model leaves over, against its error; 0 for too few readings."""
    groups, path = fit.prepared.groups, fit.prepared.path
    if fit.is_coarse or groups.utc_s.size < groups.parts + 5:
        return 0.0
    rest = groups.north_arcsec - path.north_arcsec(axis_rad)
    nuisances = nuisance_columns(groups, path, axis_rad, priors)
    curve = fit_line(groups, rest, nuisances, grid, bends=True)
    bend, variance = average(weight, curve.coefficients[:, curve.rate], curve.rate_variance)
    return abs(bend) / float(np.sqrt(variance))


def _band(fit: LegRate, weight: Floats, factor: float) -> tuple[Floats, Floats]:
    """Fitted line (k,) and half-width (k,) of its 95 % band."""
    groups, line = fit.prepared.groups, fit.line
    design = np.column_stack([groups.part_columns(), minutes_about_middle(groups)])
    fixed = slice(0, line.fixed)
    levels = line.coefficients[:, fixed] @ design.T
    variances = np.einsum("ki,gij,kj->gk", design, line.covariance[:, fixed, fixed], design)
    level = weight @ levels
    variance = weight @ (variances + (levels - level) ** 2)
    return fit.predicted_arcsec + level, factor * np.sqrt(variance)


def _angle_deg(fit: LegRate, weight: Floats, priors: Priors) -> tuple[float, float]:
    """The angle of the reticle as its leak of east into north shows it, and its sigma, degrees."""
    if fit.prepared.groups.east_arcsec is None or priors.angle_sigma_deg <= 0.0:
        return float("nan"), float("nan")
    at = fit.line.fixed
    angle, variance = average(weight, fit.line.coefficients[:, at], fit.line.covariance[:, at, at])
    return angle * priors.angle_sigma_deg, float(np.sqrt(variance)) * priors.angle_sigma_deg


def _reading_noise(fit: LegRate, weight: Floats) -> float:
    """Scatter of single readings about the line, as it was before any averaging."""
    if float(fit.prepared.groups.count.mean()) <= 1.0:
        return float(np.sqrt(weight @ fit.line.variance_arcsec2))
    kept = fit.prepared.kept
    difference = np.diff(fit.prepared.leg.north_arcsec[kept])
    between_groups = float(weight @ fit.line.variance_arcsec2)
    return float(np.sqrt(between_groups + 0.5 * np.median(difference**2) / 0.4549))
