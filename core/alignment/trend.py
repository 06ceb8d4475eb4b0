"""What one leg shows by itself: its drift rate with an honest error, its fitted line and band."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.special import stdtrit

from core.alignment.groups import Groups
from core.alignment.noise import Gram, LegNoise, NoiseGrid, leg_noise
from core.alignment.prepared import PreparedLeg
from core.alignment.steps import Step

Floats = NDArray[np.float64]
Flags = NDArray[np.bool_]


@dataclass(frozen=True, eq=False)
class LegTrend:
    """One leg's drift. Angles of the star are for the middle of the leg, as observed.

    `bend_sigmas`: how surely the leg bends unlike the path of its star, in standard deviations.
    `interval_factor` times a sigma is the half-width of the 95 % interval. `rejected` (n,) flags
    readings set aside. The curve arrays (m,) are the fitted line in the leg's own offsets with its
    95 % band, the group arrays (m,) the means it was fitted to.
    """

    label: str
    sample_count: int
    minutes: float
    drift_arcsec_per_min: float
    drift_sigma_arcsec_per_min: float
    interval_factor: float
    hour_angle_deg: float
    declination_deg: float
    altitude_deg: float
    azimuth_deg: float
    bend_sigmas: float
    noise_arcsec: float
    correlation_time_s: float
    rejected: Flags
    steps: tuple[Step, ...]
    curve_utc_s: Floats
    curve_arcsec: Floats
    curve_low_arcsec: Floats
    curve_high_arcsec: Floats
    bin_utc_s: Floats
    bin_arcsec: Floats


@dataclass(frozen=True, eq=False)
class LegFit:
    """A leg's normal matrices for every noise candidate. Columns: origins, minutes, azimuth and
    altitude sensitivity (arcsec/rad), unexplained offset, offset as read (arcsec), minutes²."""

    prepared: PreparedLeg
    groups: Groups
    gram: Gram
    noise: LegNoise
    predicted_arcsec: Floats  # (k,) drift of the linearised axis at the groups

    @property
    def origins(self) -> list[int]:
        """Indices of the origin columns."""
        return list(range(self.groups.parts))

    @property
    def first_free(self) -> int:
        """Index of the minutes column; sensitivities and data follow."""
        return self.groups.parts


def fit_leg(prepared: PreparedLeg, axis_rad: Floats, grid: NoiseGrid) -> LegFit:
    """Weigh the noise candidates by what a free line leaves of the leg about `axis_rad`."""
    groups = prepared.groups
    predicted, slopes = prepared.path.linearised(axis_rad)
    columns = np.column_stack(
        [
            groups.part_columns(),
            minutes_about_middle(groups),
            slopes,
            groups.north_arcsec - predicted,
            groups.north_arcsec,
            minutes_about_middle(groups) ** 2,
        ]
    )
    gram = Gram.of(groups, columns, grid)
    line = gram.fit(range(groups.parts + 1), groups.parts + 3)
    return LegFit(prepared, groups, gram, leg_noise(gram, line, groups), predicted)


def minutes_about_middle(groups: Groups) -> Floats:
    """Minutes (k,) from the mean time of the groups."""
    return np.asarray((groups.utc_s - groups.utc_s.mean()) / 60.0)


def trend(fit: LegFit, weight: Floats, grid: NoiseGrid) -> LegTrend:
    """The leg's record, averaged over the noise candidates with `weight` (g,)."""
    leg, track = fit.prepared.leg, fit.prepared.track
    hour_angle, altitude, azimuth = track.middle()
    rate, rate_sigma = _drift(fit, weight)
    level, half_width, factor = _band(fit, weight)
    readings_per_group = float(fit.groups.count.mean())
    return LegTrend(
        label=leg.label,
        sample_count=int(leg.utc_s.size),
        minutes=float(leg.utc_s[-1] - leg.utc_s[0]) / 60.0,
        drift_arcsec_per_min=rate,
        drift_sigma_arcsec_per_min=rate_sigma,
        interval_factor=factor,
        hour_angle_deg=float(np.rad2deg(hour_angle)),
        declination_deg=float(np.rad2deg(track.declination_rad)),
        altitude_deg=float(np.rad2deg(altitude)),
        azimuth_deg=float(np.rad2deg(azimuth)),
        bend_sigmas=_bend(fit, weight),
        noise_arcsec=_reading_noise(fit, weight, readings_per_group),
        correlation_time_s=float(weight @ grid.correlation_time_s),
        rejected=~fit.prepared.kept,
        steps=fit.prepared.steps,
        curve_utc_s=fit.groups.utc_s,
        curve_arcsec=level,
        curve_low_arcsec=level - half_width,
        curve_high_arcsec=level + half_width,
        bin_utc_s=fit.groups.utc_s,
        bin_arcsec=fit.groups.north_arcsec,
    )


def average(weight: Floats, values: Floats, variances: Floats) -> tuple[float, float]:
    """Mean and variance of a mixture: the candidates' own variance and their disagreement."""
    mean = float(weight @ values)
    return mean, float(weight @ (variances + (values - mean) ** 2))


def _drift(fit: LegFit, weight: Floats) -> tuple[float, float]:
    line = fit.gram.fit([*fit.origins, fit.first_free], fit.first_free + 4)
    variances = fit.noise.variance_arcsec2 * line.covariance[:, -1, -1]
    rate, variance = average(weight, line.coefficients[:, -1], variances)
    return rate, float(np.sqrt(variance))


def _bend(fit: LegFit, weight: Floats) -> float:
    """The curvature the exact model leaves over, against its error; 0 for too few readings."""
    design = [*fit.origins, fit.first_free, fit.first_free + 5]
    if fit.groups.utc_s.size < len(design) + 3:
        return 0.0
    curve = fit.gram.fit(design, fit.first_free + 3)
    variances = fit.noise.variance_arcsec2 * curve.covariance[:, -1, -1]
    bend, variance = average(weight, curve.coefficients[:, -1], variances)
    return abs(bend) / float(np.sqrt(variance))


def _band(fit: LegFit, weight: Floats) -> tuple[Floats, Floats, float]:
    """Fitted line (k,), half-width (k,) of its 95 % band, and the factor used."""
    line = fit.gram.fit([*fit.origins, fit.first_free], fit.first_free + 3)
    design = np.column_stack([fit.groups.part_columns(), minutes_about_middle(fit.groups)])
    levels = line.coefficients @ design.T
    unit = np.einsum("ki,gij,kj->gk", design, line.covariance, design, optimize=True)
    variances = fit.noise.variance_arcsec2[:, np.newaxis] * unit
    level = weight @ levels
    variance = weight @ (variances + (levels - level) ** 2)
    factor = float(stdtrit(max(fit.noise.degrees_of_freedom, 1.0), 0.975))
    return fit.predicted_arcsec + level, factor * np.sqrt(variance), factor


def _reading_noise(fit: LegFit, weight: Floats, readings_per_group: float) -> float:
    """Scatter of single readings about the line, as it was before any averaging."""
    if readings_per_group <= 1.0:
        return float(np.sqrt(weight @ fit.noise.variance_arcsec2))
    kept = fit.prepared.kept
    difference = np.diff(fit.prepared.leg.north_arcsec[kept])
    between_groups = float(weight @ fit.noise.variance_arcsec2)
    return float(np.sqrt(between_groups + 0.5 * np.median(difference**2) / 0.4549))
