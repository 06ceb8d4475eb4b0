"""One star watched, as evidence on the axis: its drift rate, with all that can pass for drift.

A leg counts as one number. How it bends is not used: it would name the second error of the axis,
but a yielding tube bends a leg just as much.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray
from scipy.special import stdtrit

from core.alignment.axis.evidence import ANGLE, AXIS, FLEXURE, Evidence
from core.alignment.drift.linefit import LineFit, fit_line, minutes_about_middle, plain_functional
from core.alignment.drift.noise import NoiseGrid
from core.alignment.drift.nuisances import nuisance_columns
from core.alignment.drift.prepared import PreparedLeg
from core.alignment.drift.readingstep import is_coarse, rate_of_rounded
from core.alignment.drift.steps import DriftStep
from core.alignment.priors import Priors
from core.units import ARCMIN_PER_RAD

Floats = NDArray[np.float64]

KIND = "leg"
_KEPT_OF_PRIOR = 1e-3  # of the angle, in each leg: enough to keep its equations solvable


@dataclass(frozen=True, eq=False)
class LegRate:
    """`rate` (g,): drift as read, arcsec/min; `functional` (g, k): what makes a rate of offsets at
    the groups. `variance` (g,) of it, `known_share` (g,) of that beside the readings' own noise.
    `leak` (k,): what a turned reticle leaks, None where its angle is granted to be right.
    """

    prepared: PreparedLeg
    line: LineFit
    predicted_arcsec: Floats  # (k,) what the line was fitted beside
    is_coarse: bool
    rate: Floats
    functional: Floats
    variance: Floats
    known_share: Floats
    freedom: Floats
    leak: Floats | None

    @property
    def log_likelihood(self) -> Floats:
        """How well each noise candidate (g,) explains the leg; rounded readings do not tell."""
        return (
            np.zeros_like(self.line.log_likelihood) if self.is_coarse else self.line.log_likelihood
        )

    def evidence(
        self, axis_rad: Floats, scale: Floats, with_flexure: bool, exchanged: bool = False
    ) -> Evidence:
        """Linear about `axis_rad` (2,); the axis in arcmin on the sky, flexure in arcsec per g.

        `exchanged`: as if north had been read for south.
        """
        predicted, slopes = self.prepared.path.linearised(axis_rad)
        shows = self.functional @ (slopes / scale / ARCMIN_PER_RAD)
        if with_flexure:
            yields = self.functional @ self.prepared.path.upward()
            shows = np.concatenate([shows, yields], axis=1)
        rate = -self.rate if exchanged else self.rate
        return Evidence(
            KIND,
            self.prepared.leg.label,
            AXIS + FLEXURE if with_flexure else AXIS,
            (rate - self.functional @ predicted)[:, np.newaxis],
            shows[:, np.newaxis],
            self.variance[:, np.newaxis, np.newaxis],
            self.freedom,
            self.known_share,
        )

    def shared_evidence(self, axis_rad: Floats, scale: Floats, with_flexure: bool) -> Evidence:
        """As `evidence`, the angle of the reticle being one and the same for all legs.

        The leg tells rate and angle together; what was taken for granted of the angle to fit the
        leg by itself is taken out again, for it is granted once for all.
        """
        alone = self.evidence(axis_rad, scale, with_flexure)
        if self.leak is None:
            return alone
        names = (*alone.names, ANGLE)
        if self.is_coarse:
            leaks = (self.functional @ self.leak)[:, np.newaxis, np.newaxis]
            return replace(
                alone,
                names=names,
                shows=np.concatenate([alone.shows, leaks], axis=2),
                covariance=np.maximum(alone.covariance - leaks**2, 0.01 * alone.covariance),
            )
        both = [self.line.rate, self.line.fixed]
        posterior = np.linalg.inv(self.line.covariance[:, both][:, :, both])
        told = posterior.copy()
        told[:, 1, 1] -= 1.0 - _KEPT_OF_PRIOR
        covariance = np.asarray(np.linalg.inv(told))
        functional = covariance @ posterior @ self.line.functional[:, both]
        predicted, slopes = self.prepared.path.linearised(axis_rad)
        columns = [slopes / scale / ARCMIN_PER_RAD]
        if with_flexure:
            columns.append(self.prepared.path.upward())
        angle = np.broadcast_to(np.array([[0.0], [1.0]]), (covariance.shape[0], 2, 1))
        return replace(
            alone,
            names=names,
            measured=functional @ (self.prepared.groups.north_arcsec - predicted),
            shows=np.concatenate([functional @ np.column_stack(columns), angle], axis=2),
            covariance=covariance,
        )


def leg_rate(prepared: PreparedLeg, axis_rad: Floats, grid: NoiseGrid, priors: Priors) -> LegRate:
    """The rate of one leg, its noise weighed about the path that `axis_rad` predicts."""
    groups = prepared.groups
    predicted = prepared.path.north_arcsec(axis_rad)
    nuisances = nuisance_columns(groups, prepared.path, axis_rad, priors)
    step = prepared.reading_step_arcsec
    rounding = step**2 / 12.0 / float(groups.count.mean())
    line = fit_line(groups, groups.north_arcsec - predicted, nuisances, grid, rounding)
    readings = _Readings.of(prepared, predicted)
    if is_coarse(readings.minutes, readings.offsets - readings.predicted, readings.part, step):
        leak = nuisances[:, 0] if priors.angle_sigma_deg > 0.0 else None
        return _coarse(prepared, predicted, readings, line, nuisances, leak)
    functional = line.functional[:, line.rate]
    return LegRate(
        prepared,
        line,
        predicted,
        False,
        functional @ groups.north_arcsec,
        functional,
        line.rate_variance,
        line.rate_variance_of_nuisances / line.rate_variance,
        line.freedom,
        nuisances[:, 0] if priors.angle_sigma_deg > 0.0 else None,
    )


@dataclass(frozen=True, eq=False)
class _Readings:
    """The readings kept, (n,) each: what the groups are means of."""

    minutes: Floats
    offsets: Floats
    predicted: Floats
    part: NDArray[np.intp]

    @classmethod
    def of(cls, prepared: PreparedLeg, predicted: Floats) -> _Readings:
        leg, kept, groups = prepared.leg, prepared.kept, prepared.groups
        utc_s = leg.utc_s[kept]
        return cls(
            (utc_s - leg.utc_s[0]) / 60.0,
            leg.north_arcsec[kept],
            np.interp(utc_s, groups.utc_s, predicted),
            np.searchsorted(np.array([step.utc_s for step in prepared.steps]), utc_s, "right"),
        )


def _coarse(
    prepared: PreparedLeg,
    predicted: Floats,
    readings: _Readings,
    line: LineFit,
    nuisances: Floats,
    leak: Floats | None,
) -> LegRate:
    """By the likelihood of rounded readings; the nuisances' rates are added to its variance."""
    rate, variance = rate_of_rounded(
        readings.minutes,
        readings.offsets,
        readings.predicted,
        readings.part,
        prepared.reading_step_arcsec,
    )
    plain = plain_functional(prepared.groups)
    variance += float(np.sum((plain @ nuisances) ** 2))
    candidates = line.variance_arcsec2.size
    return LegRate(
        prepared,
        line,
        predicted,
        True,
        np.full(candidates, rate + float(plain @ predicted)),
        np.repeat(plain[np.newaxis], candidates, axis=0),
        np.full(candidates, variance),
        np.ones(candidates),
        np.full(candidates, 1e6),
        leak,
    )


# What one leg shows by itself: its drift rate with an honest error, its fitted line and band.

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
    steps: tuple[DriftStep, ...]
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
