"""A straight drift through a leg, with noise that remembers itself and nuisances with priors.

Offsets = origins + rate × minutes + nuisances + noise, on top of what an axis near the true one
predicts. The noise (`core.alignment.drift.noise`) is a grid of candidates weighed by restricted
likelihood; the nuisances (`core.alignment.drift.nuisances`) are random effects of known size
(Henderson's mixed model, Biometrics 31, 423, 1975), so that the variance of the noise has to be
searched for: with their sizes fixed it no longer scales out.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

import numpy as np
from numpy.typing import NDArray

from core.alignment.drift.noise import STATED_ERROR_WEIGHT, Groups, NoiseGrid

Floats = NDArray[np.float64]

_VARIANCES = 48  # tried between almost nothing and all that the readings scatter
_SMALLEST_SHARE = 1e-4
_FINEST_ARCSEC2 = 1e-4  # nobody reads better than 0.01″: readings without scatter are rounded


@dataclass(frozen=True, eq=False)
class LineFit:
    """For every noise candidate (g,): variance of a group's noise, and the posterior of the line.

    `coefficients` (g, d) and `covariance` (g, d, d) of origins, rate (arcsec/min) and nuisances;
    `functional` (g, d, k): what turns offsets (k,) into coefficients. `freedom` (g,): degrees of
    freedom behind the variance. `log_likelihood` (g,).
    """

    fixed: int
    variance_arcsec2: Floats
    freedom: Floats
    log_likelihood: Floats
    coefficients: Floats
    covariance: Floats
    functional: Floats

    @property
    def rate(self) -> int:
        """Index of the rate."""
        return self.fixed - 1

    @cached_property
    def rate_variance(self) -> Floats:
        """Variance (g,) of the rate, (arcsec/min)²."""
        return np.asarray(self.covariance[:, self.rate, self.rate])

    @cached_property
    def rate_variance_of_nuisances(self) -> Floats:
        """The part (g,) of it that more readings in the same time would leave."""
        row = self.covariance[:, self.rate, self.fixed :]
        return np.asarray(np.einsum("gm,gm->g", row, row))


def minutes_about_middle(groups: Groups) -> Floats:
    """Minutes (k,) from the mean time of the groups."""
    return np.asarray((groups.utc_s - groups.utc_s.mean()) / 60.0)


def plain_functional(groups: Groups) -> Floats:
    """What makes an unweighted rate, arcsec/min, of offsets (k,) at the groups."""
    origins = groups.part_columns()
    minutes = minutes_about_middle(groups)
    centred = minutes - origins @ ((origins.T @ minutes) / origins.sum(axis=0))
    return np.asarray(centred / max(float(centred @ centred), 1e-12))


def fit_line(
    groups: Groups,
    offsets_arcsec: Floats,
    nuisances: Floats,
    grid: NoiseGrid,
    finest_arcsec2: float = 0.0,
    bends: bool = False,
) -> LineFit:
    """`offsets_arcsec` (k,): of the groups, the predicted drift taken out; `nuisances` (k, m).

    `finest_arcsec2`: the least variance of a group's noise, as rounded readings have it. `bends`:
    a parabola instead of a line, its curvature (arcsec/min²) in the place of the rate.
    """
    minutes = minutes_about_middle(groups)
    fixed = (
        [groups.part_columns(), minutes]
        if not bends
        else [groups.part_columns(), minutes, minutes**2]
    )
    design = np.column_stack([*fixed, nuisances])
    number_fixed = design.shape[1] - nuisances.shape[1]
    columns = np.column_stack([design, offsets_arcsec])
    product, log_det = grid.inverse_times(groups, columns)
    gram = columns.T @ product
    search = _Search.of(gram, log_det, number_fixed, groups)
    variance, log_likelihood = search.likeliest(max(finest_arcsec2, _FINEST_ARCSEC2))
    width = design.shape[1]
    normal = gram[:, :width, :width] / variance[:, np.newaxis, np.newaxis]
    free = np.arange(number_fixed, width)
    normal[:, free, free] += 1.0
    covariance = np.asarray(np.linalg.inv(normal))
    functional = covariance @ np.swapaxes(product[:, :, :width], 1, 2)
    functional /= variance[:, np.newaxis, np.newaxis]
    return LineFit(
        fixed=number_fixed,
        variance_arcsec2=variance,
        freedom=search.freedom_at(variance),
        log_likelihood=log_likelihood,
        coefficients=functional @ offsets_arcsec,
        covariance=covariance,
        functional=functional,
    )


@dataclass(frozen=True, eq=False)
class _Search:
    """The restricted likelihood of the noise variance, fixed effects projected out, in the axes in
    which the nuisances are independent: strengths (g, m) and what the data say along them (g, m).
    """

    strength: Floats
    along: Floats
    squares: Floats  # (g,)
    constant: Floats  # (g,)
    freedom: float
    stated_squares: float
    stated_weight: float

    @classmethod
    def of(cls, gram: Floats, log_det: Floats, fixed: int, groups: Groups) -> _Search:
        own, cross = gram[:, :fixed, :fixed], gram[:, :fixed, fixed:]
        reduced = gram[:, fixed:, fixed:] - np.swapaxes(cross, 1, 2) @ np.linalg.solve(own, cross)
        strength, axes = np.linalg.eigh(reduced[:, :-1, :-1])
        along = np.einsum("gmj,gm->gj", axes, reduced[:, :-1, -1])
        stated, weight = 0.0, 0.0
        if groups.stated_sigma_arcsec is not None:
            stated, weight = float(np.mean(groups.stated_sigma_arcsec**2)), STATED_ERROR_WEIGHT
        return cls(
            np.maximum(strength, 0.0),
            along,
            np.maximum(reduced[:, -1, -1], 0.0),
            log_det + np.linalg.slogdet(own)[1],
            float(groups.utc_s.size - fixed),
            stated * weight,
            weight,
        )

    def likeliest(self, finest_arcsec2: float) -> tuple[Floats, Floats]:
        """Variance (g,) of greatest likelihood, and the likelihood over all variances (g,)."""
        total = (self.squares + self.stated_squares) / max(self.freedom + self.stated_weight, 1.0)
        highest = 1.5 * np.maximum(total, finest_arcsec2)
        lowest = np.maximum(_SMALLEST_SHARE * highest, finest_arcsec2)
        steps = np.linspace(0.0, 1.0, _VARIANCES)
        logs = np.log(lowest)[:, np.newaxis] + np.outer(np.log(highest / lowest), steps)
        value = self._log_likelihood(np.exp(logs))
        best = _peak(logs, value)
        width = (logs[:, -1] - logs[:, 0]) / _VARIANCES
        top = value.max(axis=1)
        area = np.exp(value - top[:, np.newaxis]).sum(axis=1)
        return np.exp(best), top + np.log(area * np.maximum(width, 1e-12))

    def _log_likelihood(self, variance: Floats) -> Floats:
        """At variances (g, s)."""
        both = variance[:, :, np.newaxis] + self.strength[:, np.newaxis]
        explained = (self.along[:, np.newaxis] ** 2 / both).sum(axis=2)
        squares = self.squares[:, np.newaxis] - explained + self.stated_squares
        slowly = np.log(both / variance[:, :, np.newaxis]).sum(axis=2)
        many = self.freedom + self.stated_weight
        return np.asarray(
            -0.5
            * (
                self.constant[:, np.newaxis]
                + slowly
                + many * np.log(variance)
                + np.maximum(squares, 0.0) / variance
            )
        )

    def freedom_at(self, variance: Floats) -> Floats:
        """Degrees of freedom (g,) left to the noise: the nuisances take part of them."""
        taken = (self.strength / (self.strength + variance[:, np.newaxis])).sum(axis=1)
        return np.asarray(np.maximum(self.freedom + self.stated_weight - taken, 1.0))


def _peak(places: Floats, values: Floats) -> Floats:
    """Place (g,) of the greatest of values (g, s) at even places, by the parabola about it."""
    row = np.arange(places.shape[0])
    at = np.clip(values.argmax(axis=1), 1, places.shape[1] - 2)
    before, here, after = values[row, at - 1], values[row, at], values[row, at + 1]
    bend = before - 2.0 * here + after
    shift = np.where(bend < 0.0, 0.5 * (before - after) / np.where(bend < 0.0, bend, 1.0), 0.0)
    is_edge = values.argmax(axis=1) != at
    shift = np.where(is_edge, 0.0, np.clip(shift, -1.0, 1.0))
    step = places[:, 1] - places[:, 0]
    edge = np.where(values.argmax(axis=1) == 0, places[:, 0], places[:, -1])
    return np.asarray(np.where(is_edge, edge, places[row, at] + shift * step))
