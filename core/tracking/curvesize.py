"""How large a worm's curve is: peak to peak and root mean square."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.tracking.waves import Harmonic, wave_columns
from core.tracking.wormerrors import WormErrors

Floats = NDArray[np.float64]

_FINE = 720  # places round the turn where the curve's extremes are looked for
_DRAWS = 1000
_SEED = 1


@dataclass(frozen=True)
class CurveSize:
    """Of the curve that the worm repeats: the mean of so many turns that whatever differs from one
    to the next, or swings at another pace, has gone out of it. Peak to peak: from its lowest to its
    highest place; a single turn, with air and all the rest, swings further.

    Sigmas: half the 95 % interval of what many more turns would show, over
    `turnscatter.INTERVAL_FACTOR`.
    """

    peak_to_peak_arcsec: float
    peak_to_peak_sigma_arcsec: float
    rms_arcsec: float
    rms_sigma_arcsec: float


def curve_size(waves: tuple[Harmonic, ...], covariance: Floats, errors: WormErrors) -> CurveSize:
    """Of the harmonics that stand out; what the others may hold all the same is in the sigmas.

    `covariance` (2·orders, 2·orders): of the harmonics, their turns allowed for.
    """
    fit = errors.fit
    believed = np.repeat([wave.stands_out for wave in waves], 2)
    if not believed.any():
        return CurveSize(0.0, 0.0, 0.0, 0.0)
    coefficients = np.where(believed, fit.coefficients, 0.0)
    columns = wave_columns(np.arange(_FINE) / _FINE, 1.0, fit.orders, 0.0)
    curve = columns @ coefficients
    size, rms = float(np.ptp(curve)), float(np.sqrt(0.5 * coefficients @ coefficients))
    contrast = np.where(believed, columns[np.argmax(curve)] - columns[np.argmin(curve)], 0.0)
    sigmas = errors.of_curve(np.column_stack([contrast, 0.5 * coefficients / rms]))
    share = np.where(believed, 1.0, _held(fit.coefficients, covariance))
    drawn = np.ptp(columns @ _draws(fit.coefficients, fit.covariance, share), axis=0)
    bent = float(np.mean((drawn - size) ** 2)) - float(contrast @ fit.covariance @ contrast)
    return CurveSize(size, float(np.sqrt(sigmas[0] ** 2 + bent)), rms, float(sigmas[1]))


def _held(coefficients: Floats, covariance: Floats) -> Floats:
    """Share (2·orders,) of each harmonic's power that is not the noise's."""
    power = (coefficients.reshape(-1, 2) ** 2).sum(axis=1)
    noise = np.diag(covariance).reshape(-1, 2).sum(axis=1)
    return np.repeat(np.maximum(1.0 - noise / np.maximum(power, 1e-300), 0.0), 2)


def _draws(coefficients: Floats, covariance: Floats, share: Floats) -> Floats:
    """Coefficients (2·orders, draws) as they might be: peak to peak bends with them."""
    rng = np.random.default_rng(_SEED)
    own = covariance * np.sqrt(np.outer(share, share))
    drawn = rng.multivariate_normal(share * coefficients, own, _DRAWS, method="eigh")
    return np.asarray(drawn.T)
