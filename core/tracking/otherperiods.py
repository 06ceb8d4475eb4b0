"""Periods beside the worm's: gears, belts and bearings that turn at a pace of their own."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.tracking.beside import Sine
from core.tracking.wormerrors import WormErrors

Floats = NDArray[np.float64]

_SURE = 4.0  # standard deviations
_WORTH_NAMING = 0.05  # of the largest amplitude; less does not matter to anyone


@dataclass(frozen=True)
class OtherPeriod:
    """A sine found in what the worm leaves over; the worm's turn does not contain it evenly.

    Its sigma: half the 95 % interval over `turnscatter.INTERVAL_FACTOR`.
    """

    period_s: float
    amplitude_arcsec: float
    amplitude_sigma_arcsec: float


def other_periods(fast: Sequence[Sine], errors: WormErrors) -> tuple[OtherPeriod, ...]:
    """Those that are sure and worth naming, the largest first. `fast`: taken out before the fit."""
    found = [_of_fit(errors, number) for number in range(len(errors.fit.tones_s))]
    found += [
        OtherPeriod(sine.period_s, float(np.hypot(*sine.coefficients)), sine.sigma_arcsec)
        for sine in fast
    ]
    worm = errors.fit.coefficients.reshape(-1, 2)
    largest = max([one.amplitude_arcsec for one in found] + [float(np.hypot(*worm.T).max())])
    named = [
        one
        for one in found
        if one.amplitude_arcsec > max(_SURE * one.amplitude_sigma_arcsec, _WORTH_NAMING * largest)
    ]
    return tuple(sorted(named, key=lambda one: -one.amplitude_arcsec))


def _of_fit(errors: WormErrors, number: int) -> OtherPeriod:
    """One of the fit's tones, its frequency corrected to first order."""
    fit = errors.fit
    place = fit.tone(number)
    pair, step_hz = fit.estimate.coefficients[place], fit.estimate.coefficients[place.stop]
    amplitude = float(np.hypot(*pair))
    wanted = np.zeros((fit.design.shape[1], 1))
    wanted[place, 0] = pair / max(amplitude, 1e-12)
    period_s = 1.0 / (1.0 / fit.tones_s[number] + float(step_hz))
    return OtherPeriod(period_s, amplitude, float(errors.sigma(wanted)[0]))
