"""The printed errors of harmonics and period are earned over simulated mounts.

Image motion of 0.7″ rms with memories of 1 to 5 s: common practice for 2.5″ seeing, no source. The
drive wanders besides by 0.2″ to 0.6″ with memories of 40 to 150 s, invented.
"""

from functools import cache

import numpy as np
import pytest

from core.tracking.periodic import analyse
from core.tracking.run import run_without_place
from core.tracking.wormfolding import INTERVAL_FACTOR
from tests.core.tracking.drive import START_S, star, times, wandering, worm

MOUNTS = 160


def drawn(rng):
    """Period, waves, and a leg of four to nine turns with readings every 2 s."""
    period_s = rng.uniform(240.0, 500.0)
    waves = [(size * rng.uniform(0.7, 1.4), rng.uniform(0.0, 360.0)) for size in (7.0, 2.0, 1.2)]
    utc_s = times(period_s * rng.uniform(4.0, 9.0) / 60.0)
    lead = worm(utc_s, period_s, waves) + 0.003 * (utc_s - START_S)
    lead = lead + wandering(rng, utc_s.size, 2.0, rng.uniform(1.0, 5.0), 0.7)
    lead = lead + wandering(rng, utc_s.size, 2.0, rng.uniform(40, 150), rng.uniform(0.2, 0.6))
    return period_s, waves, star(lead, utc_s)


@cache
def outcomes():
    """Errors over their stated sigmas: amplitudes, phases, period, peak to peak."""
    rng = np.random.default_rng(20261124)
    ratios = {"amplitude": [], "phase": [], "period": [], "peak to peak": []}
    for number in range(MOUNTS):
        period_s, waves, leg = drawn(rng)
        found = analyse(run_without_place(leg), None if number % 4 else period_s)
        turned = 360.0 * (found.epoch_utc_s - START_S) / period_s
        for order, (size, phase) in enumerate(waves, start=1):
            wave = found.harmonics[order - 1]
            ratios["amplitude"].append((wave.amplitude_arcsec - size) / wave.amplitude_sigma_arcsec)
            apart = (wave.phase_deg - phase - order * turned + 180.0) % 360.0 - 180.0
            ratios["phase"].append(apart / wave.phase_sigma_deg)
        if not found.period_is_given:
            ratios["period"].append((found.period_s - period_s) / found.period_sigma_s)
        fine = worm(START_S + np.linspace(0.0, period_s, 2000), period_s, waves)
        ratios["peak to peak"].append(
            (found.size.peak_to_peak_arcsec - np.ptp(fine)) / found.size.peak_to_peak_sigma_arcsec
        )
    return {name: np.array(values) for name, values in ratios.items()}


@pytest.mark.parametrize(
    ("what", "slack"),
    [("amplitude", 0.025), ("phase", 0.025), ("period", 0.05), ("peak to peak", 0.04)],
)
def test_95_percent_intervals_hold_the_truth(what, slack):
    # Slack: two and a half standard deviations of a share counted over so many outcomes.
    held = np.abs(outcomes()[what]) <= INTERVAL_FACTOR
    assert 0.95 - slack <= held.mean() <= min(0.95 + slack, 1.0)


@pytest.mark.parametrize("what", ["amplitude", "phase", "period"])
def test_errors_are_unbiased_and_not_overstated(what):
    ratios = outcomes()[what]
    assert abs(ratios.mean()) < 4.0 / np.sqrt(ratios.size)
    assert 0.85 < np.std(ratios) < 1.15
