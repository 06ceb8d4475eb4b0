"""Motions of a leg's star that are no drift of the axis.

Each column is a motion north in arcsec for one standard deviation of its cause: the field's slow
wander, what a turned reticle leaks from east into north. Fitted together with the drift, they widen
its error by what the readings cannot tell from it.
"""

from __future__ import annotations

from functools import lru_cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.alignment.drift.noise import Groups
from core.alignment.drift.path import Path
from core.alignment.priors import Priors

Floats = NDArray[np.float64]

_DEGREE = 10  # of polynomials for the slow motions: the rest turns too quickly to pass for a drift
_WORM_PERIODS_S = np.array([240.0, 300.0, 360.0, 420.0, 480.0, 600.0, 720.0])  # common practice


def leak_column(groups: Groups, path: Path, axis_rad: Floats, priors: Priors) -> Floats:
    """What a reticle turned by its standard deviation leaks into north (k,), arcsec.

    Where every reading has its east offset that is what leaks; else the east drift that the axis
    itself causes (a periodic error that nobody saw is in `slow_columns`).
    """
    east = path.east_arcsec(axis_rad) if groups.east_arcsec is None else groups.east_arcsec
    return np.asarray(np.deg2rad(priors.angle_sigma_deg) * (east - np.mean(east)))


def slow_columns(groups: Groups, priors: Priors) -> Floats:
    """Slow motions (k, m), each with a prior of one: the wander, and a periodic error unseen."""
    slow = slow_covariance(groups.utc_s, priors, groups.east_arcsec is not None)
    return _modes(groups.utc_s, slow)


def nuisance_columns(groups: Groups, path: Path, axis_rad: Floats, priors: Priors) -> Floats:
    """All of them (k, m) for one leg by itself, the leak of the reticle first if there is any."""
    leak = leak_column(groups, path, axis_rad, priors)
    own = [leak] if priors.angle_sigma_deg > 0.0 else []
    return np.column_stack([*own, slow_columns(groups, priors)])


def slow_covariance(utc_s: Floats, priors: Priors, east_is_seen: bool) -> Floats:
    """Covariance (k, k), arcsec², of the slow motions north at these times (k,)."""
    lag_s = np.subtract.outer(utc_s, utc_s)
    slow = _drive_noise(lag_s, priors)
    if east_is_seen:
        return slow
    return slow + float(np.deg2rad(priors.angle_sigma_deg)) ** 2 * _periodic_error(lag_s, priors)


def slow_rate_variance(minutes: ArrayLike, priors: Priors, east_is_seen: bool) -> Floats:
    """Variance (…), (arcsec/min)², that slow motions leave of a rate watched so many minutes."""
    lengths, variances = _rate_table(priors, east_is_seen)
    length = np.clip(np.asarray(minutes, dtype=float), lengths[0], lengths[-1])
    return np.asarray(np.exp(np.interp(np.log(length), np.log(lengths), np.log(variances))))


@lru_cache(maxsize=32)
def _rate_table(priors: Priors, east_is_seen: bool) -> tuple[Floats, Floats]:
    """Minutes (n,) and the variances (n,) at them, of a plain line through even readings."""
    lengths = np.geomspace(0.2, 240.0, 40)
    even = np.linspace(-0.5, 0.5, 32)
    unit = even / float(even @ even)
    covariances = [slow_covariance(60.0 * one * even, priors, east_is_seen) for one in lengths]
    variances = [
        unit @ covariance @ unit / one**2
        for covariance, one in zip(covariances, lengths, strict=True)
    ]
    return lengths, np.maximum(variances, 1e-12)


def _drive_noise(lag_s: Floats, priors: Priors) -> Floats:
    return np.asarray(priors.slow_wander_arcsec**2 * np.exp(-np.abs(lag_s) / priors.slow_wander_s))


def _periodic_error(lag_s: Floats, priors: Priors) -> Floats:
    """Of sines with any phase, their periods as those of worms."""
    waves = np.mean([np.cos(2.0 * np.pi * lag_s / period) for period in _WORM_PERIODS_S], axis=0)
    return np.asarray(0.5 * priors.periodic_error_arcsec**2 * waves)


def _modes(utc_s: Floats, covariance: Floats) -> Floats:
    """The slow motions (k, m) as what polynomials in time can hold of them, each with prior one."""
    degree = min(_DEGREE, utc_s.size - 1)
    span = max(float(np.ptp(utc_s)), 1e-3)
    even = np.polynomial.legendre.legvander(2.0 * (utc_s - utc_s.min()) / span - 1.0, degree)
    basis, _ = np.linalg.qr(even)
    variance, axes = np.linalg.eigh(basis.T @ covariance @ basis)
    kept = variance > 1e-9 * max(float(variance[-1]), 1e-12)
    return np.asarray(basis @ (axes[:, kept] * np.sqrt(variance[kept])))
