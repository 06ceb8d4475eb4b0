"""What training would leave, against drives turned part by part, at every length of run."""

import numpy as np
import pytest

from core.tracking.periodic import analyse
from core.tracking.run import run_without_place
from core.tracking.training import training
from core.tracking.wormfolding import by_turn, shared
from tests.truth.wormdrive import FINE_S, START_S, drawn, reading_times, wander_arcsec, watched

from .drive import star

PLACES = 60


def told(leg, period_s):
    run = run_without_place(leg)
    return training(analyse(run, period_s), run)


def test_a_drive_that_repeats_exactly_leaves_nothing_whatever_the_length():
    rng = np.random.default_rng(3)
    drive = drawn(rng, pitch_arcsec=0.0)
    for turns in np.arange(4.0, 9.0, 0.15):
        time_s = reading_times(rng, turns * drive.period_s)
        found = told(star(drive.lead_arcsec(time_s), START_S + time_s), drive.period_s)
        assert found.residual_rms_arcsec < 0.05
        assert found.repeating_rms_arcsec == pytest.approx(drive.rms_arcsec(), rel=0.005)


def test_a_few_readings_more_change_little():
    rng = np.random.default_rng(5)
    drive = drawn(rng, own=0.1)
    leg = watched(rng, drive, reading_times(rng, 9.0 * drive.period_s))
    left = []
    for turns in np.arange(4.0, 6.6, 0.1):
        kept = leg.utc_s < START_S + turns * drive.period_s
        part = star(leg.east_arcsec[kept], leg.utc_s[kept], north=leg.north_arcsec[kept])
        left.append(told(part, drive.period_s).residual_rms_arcsec)
    # A few readings in a hundred more; a turn charged with its own mean made steps of a half.
    assert np.abs(np.diff(left)).max() < 0.12 * np.mean(left)


def true_residual_arcsec(drive, rng, wander_rms, turns):
    """Of many more turns without air, each about its own mean, beside a mean of so many turns."""
    many = 60
    time_s = (np.arange(many * PLACES * 8) + 0.5) / (PLACES * 8) * drive.period_s
    wander = wander_arcsec(rng, float(time_s[-1]) + 1.0, wander_rms)
    lead = drive.lead_arcsec(time_s) + np.interp(time_s, FINE_S * np.arange(wander.size), wander)
    table = lead.reshape(many, PLACES, 8).mean(axis=2)
    table -= table.mean(axis=1, keepdims=True)
    changing = np.sqrt(np.mean(np.var(table, axis=0, ddof=1)))
    return changing * np.sqrt(1.0 + 1.0 / turns)


@pytest.mark.parametrize(
    "differing", [{}, {"own": 0.1}, {"scaled": 0.1}], ids=["alike", "in shape", "in size"]
)
def test_the_interval_of_what_is_left_holds_the_truth(differing):
    held, ratios = [], []
    for number in range(24):
        rng = np.random.default_rng([7, number])
        drive = drawn(rng, **differing)
        turns = rng.uniform(4.5, 9.0)
        leg = watched(rng, drive, reading_times(rng, turns * drive.period_s), wander_rms=0.3)
        found = told(leg, drive.period_s)
        truth = true_residual_arcsec(drive, rng, 0.3, turns)
        off = abs(found.residual_rms_arcsec - truth)
        held.append(off <= 1.96 * found.residual_sigma_arcsec)
        ratios.append(found.residual_rms_arcsec / truth)
    assert sum(held) >= 20
    # The root of a variance of few turns is a tenth too small on the average.
    assert np.mean(ratios) == pytest.approx(0.95, abs=0.15)


def test_a_turn_read_in_part_is_compared_where_it_was_read():
    # A level for each place and an origin for each turn, whatever of them is missing.
    rng = np.random.default_rng(1)
    level, origin = rng.normal(size=30), rng.normal(size=6)
    table = level + origin[:, np.newaxis]
    table[5, 8:] = np.nan
    table[0, :12] = np.nan
    table[2, 10:20] = np.nan
    found = shared(table)
    np.testing.assert_allclose(found.level - found.level.mean(), level - level.mean(), atol=1e-9)
    assert found.variance < 1e-20
    assert found.turns == pytest.approx(np.isfinite(table).sum() / 30.0)


def test_the_variance_between_turns_is_unbiased_with_holes():
    # 0.7² put in; 400 tables of 5 turns and 20 places with a third missing at random.
    rng = np.random.default_rng(2)
    seen = []
    for _ in range(400):
        table = 0.7 * rng.normal(size=(5, 20)) + rng.normal(size=(5, 1)) + rng.normal(size=20)
        table[rng.uniform(size=table.shape) < 0.3] = np.nan
        seen.append(shared(table).variance)
    assert np.mean(seen) == pytest.approx(0.49, abs=4.0 * np.std(seen) / 20.0)


def test_every_turn_stands_in_the_table_however_little_of_it_was_read():
    utc_s = START_S + np.arange(0.0, 1000.0, 1.0)
    table = by_turn(utc_s, np.ones_like(utc_s), 300.0, START_S)
    assert table.shape == (4, PLACES)
    assert np.isfinite(table[3]).sum() == 20
