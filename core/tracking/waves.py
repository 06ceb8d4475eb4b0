"""The harmonics of a worm as columns of a least-squares fit, and what their coefficients say."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

STANDS_OUT = 3.0  # standard deviations from which a harmonic is believed


@dataclass(frozen=True)
class Harmonic:
    """amplitude · sin(2π order (t − epoch) / worm period + phase), arcsec of the drive's lead.

    Sigmas: half the 95 % interval over `turnscatter.INTERVAL_FACTOR`. `stands_out`: the amplitude
    exceeds three of them; the phase of a harmonic that does not is no more than noise.
    """

    order: int
    period_s: float
    amplitude_arcsec: float
    amplitude_sigma_arcsec: float
    phase_deg: float
    phase_sigma_deg: float
    stands_out: bool


def wave_columns(utc_s: Floats, period_s: float, orders: int, epoch_s: float) -> Floats:
    """Columns (n, 2·orders): sine and cosine of each harmonic in turn."""
    first = np.exp(2j * np.pi / period_s * (utc_s - epoch_s))
    columns = np.empty((utc_s.size, 2 * orders))
    wave = np.ones_like(first)
    for order in range(orders):
        wave = wave * first
        columns[:, 2 * order] = wave.imag
        columns[:, 2 * order + 1] = wave.real
    return columns


def frequency_slope(waves: Floats, coefficients: Floats, utc_s: Floats, epoch_s: float) -> Floats:
    """Derivative (n,) of the fitted curve by the worm's frequency, arcsec per hertz."""
    sine, cosine = waves[:, 0::2], waves[:, 1::2]
    orders = np.arange(1, sine.shape[1] + 1)
    inner = cosine @ (orders * coefficients[0::2]) - sine @ (orders * coefficients[1::2])
    return np.asarray(2.0 * np.pi * (utc_s - epoch_s) * inner)


def harmonics(coefficients: Floats, covariance: Floats, period_s: float) -> tuple[Harmonic, ...]:
    """The records behind coefficients (2·orders,) and their covariance."""
    found = []
    for order in range(1, coefficients.size // 2 + 1):
        pair = slice(2 * order - 2, 2 * order)
        sine, cosine = coefficients[pair]
        amplitude = max(float(np.hypot(sine, cosine)), 1e-12)
        along = np.array([sine, cosine]) / amplitude
        across = np.array([-cosine, sine]) / amplitude
        block = covariance[pair, pair]
        sigma = float(np.sqrt(along @ block @ along))
        turn_sigma = float(np.sqrt(across @ block @ across)) / amplitude
        size = float(np.sqrt(0.5 * np.trace(block)))
        found.append(
            Harmonic(
                order,
                period_s / order,
                amplitude,
                sigma,
                float(np.rad2deg(np.arctan2(cosine, sine))) % 360.0,
                float(np.rad2deg(turn_sigma)),
                amplitude > STANDS_OUT * size,
            )
        )
    return tuple(found)
