"""The worm's period, found in the run itself, and the refusal when the run is too short for it."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from scipy.stats import chi2

from core.language import say
from core.tracking.readings import Readings
from core.tracking.run import UnusableRun
from core.tracking.spectrum import FEWEST_TURNS, SHORTEST_WORM_S, likeliest_period_s
from core.tracking.wormfit import WormFit, fit_worm

Floats = NDArray[np.float64]

_LONGEST_WORM_S = 3600.0
SUSPICIOUS_S = 180.0  # nobody stops a run so soon on purpose
_ORDERS = 6
_DIVISORS = (6, 5, 4, 3, 2)
_CHANCE = 1e-3
_BINS_PER_WAVE = 6.0


def check_length(duration_s: float, period_s: float) -> None:
    """Raises UnusableRun when the run holds fewer than three turns of a worm of this period."""
    turns = duration_s / period_s
    if turns < FEWEST_TURNS:
        raise UnusableRun(
            say(
                "The run lasts {minutes:.0f} minutes, {turns:.1f} turns of a worm of "
                "{period:.0f} s: too short to tell what repeats from what happened once. Track "
                "one star unguided for at least {least:.0f} minutes.",
                minutes=duration_s / 60.0,
                turns=turns,
                period=period_s,
                least=np.ceil(FEWEST_TURNS * period_s / 60.0),
            )
        )


def find_period_s(readings: Readings) -> float:
    """The shortest period whose harmonics hold all that repeats. Raises UnusableRun."""
    longest_s = min(readings.duration_s / FEWEST_TURNS, _LONGEST_WORM_S)
    shortest_s = max(
        SHORTEST_WORM_S, _BINS_PER_WAVE * readings.duration_s / readings.bins.count.size
    )
    if readings.duration_s < SUSPICIOUS_S:
        raise UnusableRun(
            say(
                "The run lasts {seconds:.0f} s: are its times in seconds, not in minutes or hours? "
                "A worm usually turns once in four to ten minutes and three turns are needed. "
                "Track one star unguided for half an hour or more.",
                seconds=readings.duration_s,
            )
        )
    if longest_s < 1.5 * shortest_s:
        raise UnusableRun(
            say(
                "The run lasts {minutes:.0f} minutes; a worm usually turns once in four to ten "
                "minutes and three turns are needed. Track one star unguided for half an hour "
                "or more.",
                minutes=readings.duration_s / 60.0,
            )
        )
    lead = readings.without_trend()
    found_s = likeliest_period_s(readings.bins.utc_s, lead, longest_s, shortest_s)
    fit = fit_worm(readings, found_s, _ORDERS, period_is_known=False)
    _check_significance(readings, fit, longest_s, shortest_s)
    _check_edge(readings, fit.period_s, longest_s)
    return _shortest_sufficient(readings, fit, shortest_s)


def _shortest_sufficient(readings: Readings, fit: WormFit, shortest_s: float) -> float:
    """The period itself, or a part of it whose harmonics leave nothing significant out."""
    for divisor in _DIVISORS:
        if fit.period_s / divisor < shortest_s:
            continue
        order = np.arange(1, fit.orders + 1)
        left_out = np.repeat(order % divisor != 0, 2)
        if _chance(fit, left_out) > _CHANCE:
            shorter = fit_worm(readings, fit.period_s / divisor, _ORDERS // 2, False)
            return shorter.period_s
    return fit.period_s


def _chance(fit: WormFit, chosen: NDArray[np.bool_]) -> float:
    """Probability that noise alone gives coefficients as large as the chosen ones."""
    part = fit.coefficients[chosen]
    block = fit.covariance[np.ix_(chosen, chosen)]
    return float(chi2.sf(part @ np.linalg.solve(block, part), part.size))


def _check_significance(
    readings: Readings, fit: WormFit, longest_s: float, shortest_s: float
) -> None:
    tried = readings.duration_s * (1.0 / shortest_s - 1.0 / longest_s)
    if _chance(fit, np.ones(fit.coefficients.size, dtype=bool)) * tried > 0.01:
        size = float(np.hypot(*np.sqrt(np.diag(fit.covariance))[:2]))
        raise UnusableRun(
            say(
                "No period up to {longest:.0f} s stands out of the noise in {minutes:.0f} "
                "minutes: any periodic error as fast is below about {size:.1f}″, or guiding "
                "was left on. A slower worm shows from three of its turns on: track longer, or "
                "enter its period to have it measured anyway.",
                longest=longest_s,
                minutes=readings.duration_s / 60.0,
                size=3.0 * size,
            )
        )


def _check_edge(readings: Readings, period_s: float, longest_s: float) -> None:
    """A best period at the very end of what the run can show is the slope of something slower."""
    if period_s > 0.98 * longest_s and longest_s < _LONGEST_WORM_S:
        raise UnusableRun(
            say(
                "What repeats in this run is slower than a third of its {minutes:.0f} minutes: "
                "the worm turns more slowly, or the star drifts unevenly. Track longer, or "
                "enter the worm's period.",
                minutes=readings.duration_s / 60.0,
            )
        )
