"""Whether the worm kept its phase across a gap: after a meridian flip it usually has not."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.stats import chi2

from core.tracking.bins import Counts
from core.tracking.gls import estimate
from core.tracking.readings import Readings
from core.tracking.waves import wave_columns

Floats = NDArray[np.float64]

_CHANCE = 1e-5
_SHARE = 0.25  # of the curve's amplitude; a smaller change is left to the scatter between turns
_ORDERS = 2


@dataclass(frozen=True)
class PhaseBreak:
    """Reading at which the periodic curve changes, and whether it came back upside down."""

    reading: int
    is_reversed: bool


def phase_break(readings: Readings, period_s: float, gaps: Counts) -> PhaseBreak | None:
    """The first of the long gaps (indices of readings) across which the curve does not go on."""
    for gap in gaps.tolist():
        before_s = float(readings.utc_s[gap - 1] - readings.utc_s[0])
        after_s = float(readings.utc_s[-1] - readings.utc_s[gap])
        if min(before_s, after_s) < period_s:
            continue
        found = _change(readings, period_s, gap)
        if found is not None:
            return found
    return None


def _change(readings: Readings, period_s: float, gap: int) -> PhaseBreak | None:
    bins = readings.bins
    waves = bins.means(wave_columns(readings.utc_s, period_s, _ORDERS, readings.epoch_s))
    after = (bins.utc_s >= readings.utc_s[gap])[:, np.newaxis] * waves
    smooth = readings.smooth_columns()
    columns = np.column_stack([smooth, waves, after])
    found = estimate(bins.utc_s, bins.count, columns, readings.binned_lead())
    first = smooth.shape[1]
    base = found.coefficients[first : first + 2 * _ORDERS]
    change = found.coefficients[first + 2 * _ORDERS :]
    block = found.covariance[first + 2 * _ORDERS :, first + 2 * _ORDERS :]
    chance = float(chi2.sf(change @ np.linalg.solve(block, change), change.size))
    if chance > _CHANCE or np.linalg.norm(change) < _SHARE * np.linalg.norm(base):
        return None
    turned = float(np.linalg.norm(2.0 * base + change))
    return PhaseBreak(gap, turned < 0.3 * float(np.linalg.norm(base)))
