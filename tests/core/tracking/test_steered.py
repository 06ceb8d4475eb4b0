"""Guiding left on, told from a drive left alone: counts over simulated runs.

The loop here measures, waits and corrects in steps of a quarter of a second; it shares no formula
with the recogniser, which looks at a spectrum.
"""

import numpy as np
import pytest

from core.tracking.periodic import analyse
from core.tracking.plausibility import GuidingDetected, guiding_detected
from core.tracking.run import run_without_place

from .drive import START_S, noisy_run, star, wandering

FINE_S, RUNS = 0.25, 40
INTERVALS_S = (1.0, 2.0, 3.0, 4.0, 6.0, 8.0)


def simulated(seed, is_guided, minutes=60.0, reading_s=2.0):
    """Times, star's motion and worm's period; air 0.3–1.5″, periodic error 1–12″ each way, guide
    interval 1–8 s, 30–90 % corrected each time."""
    rng = np.random.default_rng(seed)
    period_s = rng.uniform(300.0, 600.0)
    time = np.arange(0.0, 60.0 * minutes, FINE_S)
    air = wandering(rng, time.size, FINE_S, rng.uniform(0.5, 3.0), 1.0) * rng.uniform(0.3, 1.5)
    size, turn = rng.uniform(1.0, 12.0), 2.0 * np.pi * time / period_s
    lead = size * (np.sin(turn + rng.uniform(0.0, 6.0)) + 0.3 * np.sin(2.0 * turn))
    lead += wandering(rng, time.size, FINE_S, 100.0, rng.uniform(0.05, 0.6))
    lead += rng.uniform(-0.02, 0.02) * time
    if is_guided:
        lead = lead - corrections(lead + air, rng.choice(INTERVALS_S), rng.uniform(0.3, 0.9))
    each = round(reading_s / FINE_S)
    readings = (lead + air)[: time.size // each * each].reshape(-1, each).mean(axis=1)
    return START_S + time[::each][: readings.size], readings, period_s


def corrections(seen, interval_s, share):
    each = round(interval_s / FINE_S)
    applied, level = np.zeros_like(seen), 0.0
    for start in range(0, seen.size, each):
        applied[start : start + each] = level
        level += share * (seen[start : start + each].mean() - level)
    return applied


def said(seed, is_guided, **how):
    utc_s, readings, period_s = simulated(seed, is_guided, **how)
    notes = analyse(run_without_place(star(readings, utc_s)), period_s).notes
    return {note.code.value for note in notes}


def test_guiding_left_on_is_recognised_in_38_of_40_and_never_called_absent():
    found = [said(seed, is_guided=True) for seed in range(RUNS)]
    assert sum("guiding left on" in codes for codes in found) >= 38
    silent = [not codes & {"guiding left on", "guiding perhaps left on"} for codes in found]
    assert sum(silent) == 0


def test_one_false_alarm_in_40_at_most_and_half_of_them_are_cleared():
    found = [said(seed, is_guided=False) for seed in range(RUNS)]
    assert sum("guiding left on" in codes for codes in found) <= 1
    assert sum("guiding perhaps left on" in codes for codes in found) <= RUNS // 2


def test_a_drive_almost_without_error_is_taken_for_guided_once_in_40_at_most():
    alarms = 0
    for seed in range(RUNS):
        leg = noisy_run(seed, minutes=60.0, waves=((0.3, 0.0),), slow=0.05)
        notes = analyse(run_without_place(leg), 479.0).notes
        alarms += "guiding left on" in {note.code.value for note in notes}
    assert alarms <= 1


@pytest.mark.parametrize(("minutes", "reading_s"), [(30.0, 2.0), (60.0, 5.0)])
def test_short_and_coarse_runs_raise_no_more_alarms(minutes, reading_s):
    how = {"minutes": minutes, "reading_s": reading_s}
    seeds = range(100, 130)
    assert sum("guiding left on" in said(seed, False, **how) for seed in seeds) <= 1
    assert sum("guiding left on" in said(seed, True, **how) for seed in seeds) >= 24


def test_too_few_readings_cannot_tell():
    rng = np.random.default_rng(1)
    utc_s = START_S + np.arange(0.0, 120.0, 2.0)
    assert guiding_detected(utc_s, rng.normal(size=utc_s.size), 480.0, 3) is GuidingDetected.UNCLEAR
