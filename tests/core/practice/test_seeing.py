"""Seeing is an Ornstein–Uhlenbeck process however its readings are spaced."""

import numpy as np
import pytest

from core.practice.simulation import CORRELATION_TIME_S, RMS_ARCSEC, Seeing


def motion(utc_s: np.ndarray, seed: int = 1) -> np.ndarray:
    return Seeing(np.random.default_rng(seed)).at(utc_s)


@pytest.mark.parametrize("interval_s", [0.2, 2.0, 7.0])
def test_spread_and_memory_follow_the_closed_form(interval_s: float) -> None:
    # Stationary variance and autocorrelation exp(−Δ/τ) of the process: Uhlenbeck & Ornstein,
    # Phys. Rev. 36, 823 (1930); formulas from memory.
    north, east = motion(np.arange(60_000) * interval_s).T
    memory = np.exp(-interval_s / CORRELATION_TIME_S)
    effective = north.size * (1.0 - memory) / (1.0 + memory)
    assert north.std() == pytest.approx(RMS_ARCSEC, rel=4.0 / np.sqrt(effective))
    lagged = np.corrcoef(north[1:], north[:-1])[0, 1]
    assert lagged == pytest.approx(memory, abs=4.0 / np.sqrt(north.size))
    assert abs(np.corrcoef(north, east)[0, 1]) < 4.0 / np.sqrt(effective)


def test_uneven_readings_keep_the_same_spread() -> None:
    rng = np.random.default_rng(3)
    utc_s = np.cumsum(rng.choice([0.05, 1.0, 40.0], 30_000))
    assert motion(utc_s)[:, 0].std() == pytest.approx(RMS_ARCSEC, rel=0.03)


def test_asking_in_pieces_changes_nothing() -> None:
    utc_s = np.arange(500) * 2.0
    pieces = Seeing(np.random.default_rng(7))
    parts = [pieces.at(utc_s[:1]), pieces.at(utc_s[1:1]), pieces.at(utc_s[1:250])]
    parts.append(pieces.at(utc_s[250:]))
    np.testing.assert_array_equal(np.concatenate(parts), motion(utc_s, 7))


def test_a_time_long_after_the_epoch_is_as_good_as_zero() -> None:
    np.testing.assert_allclose(motion(np.arange(9) * 2.0 + 1.8e9), motion(np.arange(9) * 2.0))


def test_the_same_instant_shows_the_same_motion() -> None:
    first, again = motion(np.array([5.0, 5.0]))
    np.testing.assert_array_equal(first, again)


def test_time_cannot_run_backwards() -> None:
    with pytest.raises(ValueError, match="backwards"):
        motion(np.array([2.0, 1.0]))
