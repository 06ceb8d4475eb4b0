"""The drive's own wander told from the air, against processes made here whose parts are known."""

import numpy as np
import pytest

from core.tracking.motion import between_readings, drives_own

from .drive import START_S, times, wandering

INTERVAL_S = 2.0
AIR_ARCSEC, AIR_S = 0.5, 2.0


def air(rng, number):
    return wandering(rng, number, INTERVAL_S, AIR_S, AIR_ARCSEC)


def moves_arcsec(values, steps):
    """Usual size of the way between readings so many steps apart."""
    return float(np.sqrt(np.mean((values[steps:] - values[:-steps]) ** 2)))


def one_piece(utc_s):
    return np.zeros(utc_s.size, dtype=np.intp)


@pytest.mark.parametrize(("size_arcsec", "memory_s"), [(1.0, 80.0), (0.5, 300.0), (0.5, 20.0)])
@pytest.mark.parametrize("after_s", [4.0, 16.0, 60.0])
def test_the_wander_is_as_lively_as_the_drive_alone(size_arcsec, memory_s, after_s):
    utc_s, found, true = times(100.0), [], []
    for seed in range(12):
        rng = np.random.default_rng(seed)
        own = wandering(rng, utc_s.size, INTERVAL_S, memory_s, size_arcsec)
        both = own + air(rng, utc_s.size)
        told = drives_own(utc_s, both, air(rng, utc_s.size), one_piece(utc_s), INTERVAL_S)
        found.append(moves_arcsec(told, round(after_s / INTERVAL_S)))
        true.append(moves_arcsec(own, round(after_s / INTERVAL_S)))
    # At 4 s the drive moves 0.08″ to 0.3″, the air 0.66″: what is left of chance weighs the more.
    assert np.mean(found) == pytest.approx(np.mean(true), rel=0.12, abs=0.04)


def test_of_a_drive_that_does_not_wander_little_is_left():
    utc_s, left = times(100.0), []
    for seed in range(20):
        rng = np.random.default_rng(seed)
        both, alone = air(rng, utc_s.size), air(rng, utc_s.size)
        left.append(np.std(drives_own(utc_s, both, alone, one_piece(utc_s), INTERVAL_S)))
    assert np.median(left) < 0.05
    assert max(left) < 0.5 * AIR_ARCSEC


def test_without_air_all_of_it_is_the_drives_also_at_uneven_times_and_over_breaks():
    rng = np.random.default_rng(3)
    utc_s = START_S + np.cumsum(rng.uniform(1.6, 2.4, 1200))
    utc_s[500:] += 900.0
    piece = (np.arange(utc_s.size) >= 500).astype(np.intp)
    own = np.sin(utc_s / 40.0) + 30.0 * piece
    told = drives_own(utc_s, own, 0.0 * own, piece, INTERVAL_S)
    np.testing.assert_allclose(told, own, atol=0.02)


def test_stretches_of_a_few_readings_follow_the_long_ones():
    utc_s = times(60.0)
    piece = np.minimum(np.arange(utc_s.size), 2).astype(np.intp)  # one, one and all the others
    own = np.sin(utc_s / 40.0)
    told = drives_own(utc_s, own, 0.0 * own, piece, INTERVAL_S)
    assert np.all(np.isfinite(told))
    np.testing.assert_allclose(told[2:], own[2:], atol=0.02)


def test_nothing_is_told_where_every_stretch_is_short():
    utc_s = times(4.0)
    piece = (np.arange(utc_s.size) // 20).astype(np.intp)
    own = np.sin(utc_s / 40.0)
    assert drives_own(utc_s, own, 0.0 * own, piece, INTERVAL_S) is None


def test_a_star_that_never_moved_leaves_nothing():
    utc_s = times(10.0)
    told = drives_own(utc_s, 0.0 * utc_s, 0.0 * utc_s, one_piece(utc_s), INTERVAL_S)
    np.testing.assert_array_equal(told, 0.0 * utc_s)


@pytest.mark.parametrize("every", [5, 15])
def test_between_readings_it_is_as_lively_as_the_drive(every):
    rng = np.random.default_rng(2)
    fine_s = times(200.0)
    own = wandering(rng, fine_s.size, INTERVAL_S, 300.0, 1.0)
    seen_s, seen = fine_s[::every], own[::every]
    straight = np.interp(fine_s, seen_s, seen)
    filled = between_readings(fine_s, seen_s, seen, one_piece(seen_s))
    np.testing.assert_allclose(filled[::every], 0.0, atol=1e-9)
    missing = own - straight
    within = fine_s <= seen_s[-1]
    assert np.std(filled[within]) == pytest.approx(np.std(missing[within]), rel=0.15)


def test_between_readings_of_a_smooth_drive_there_is_next_to_nothing():
    utc_s = times(60.0, 4.0)
    fine_s = np.arange(utc_s[0], utc_s[-1], 0.5)
    filled = between_readings(fine_s, utc_s, 5.0 * np.sin(utc_s / 100.0), one_piece(utc_s))
    assert np.abs(filled).max() < 0.02
