"""One star watched, as evidence on the axis: its drift rate, with all that can pass for drift.

A leg counts as one number. How it bends is not used: it would name the second error of the axis,
but a yielding tube bends a leg just as much.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from core.alignment.axis.coarse import is_coarse, rate_of_rounded
from core.alignment.axis.evidence import ANGLE, AXIS, FLEXURE, Evidence
from core.alignment.axis.linefit import LineFit, fit_line, plain_functional
from core.alignment.axis.nuisances import nuisance_columns
from core.alignment.axis.priors import Priors
from core.alignment.geometry import ARCMIN_PER_RAD
from core.alignment.noise import NoiseGrid
from core.alignment.prepared import PreparedLeg

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
