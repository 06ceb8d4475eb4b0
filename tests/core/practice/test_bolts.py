"""A bolt with play: tables of turns and what the axis makes of them."""

import numpy as np
import pytest

from core.practice.simulation import LARGEST_SCALE_ERROR, Bolt


@pytest.mark.parametrize(
    ("slack_arcmin", "turns", "motions"),
    [
        (1.0, [5.0, 3.0], [5.0, 3.0]),  # bearing already: all of it counts
        (0.0, [5.0], [4.0]),  # the play is taken up first
        (1.0, [5.0, -3.0, -1.0], [5.0, -2.0, -1.0]),  # reversed: the play once, then all
        (1.0, [-0.4, -0.4, -0.4], [0.0, 0.0, -0.2]),  # small turns only cross the play
        (0.4, [0.0], [0.0]),
    ],
)
def test_backlash(slack_arcmin: float, turns: list[float], motions: list[float]) -> None:
    bolt = Bolt(scale=1.0, backlash_arcmin=1.0, slack_arcmin=slack_arcmin)
    assert [bolt.turn(turn) for turn in turns] == pytest.approx(motions)


def test_scale_multiplies_what_the_hand_means() -> None:
    assert Bolt(scale=1.1, backlash_arcmin=0.0).turn(10.0) == pytest.approx(11.0)


def test_drawn_bolts_stay_within_their_limits_and_repeat_by_seed() -> None:
    scales = [Bolt.drawn(np.random.default_rng(seed)).scale for seed in range(200)]
    assert max(abs(scale - 1.0) for scale in scales) <= LARGEST_SCALE_ERROR
    assert np.ptp(scales) > LARGEST_SCALE_ERROR
    assert Bolt.drawn(np.random.default_rng(5)).scale == scales[5]


def test_slack_outside_the_play_is_refused() -> None:
    with pytest.raises(ValueError, match="slack"):
        Bolt(scale=1.0, backlash_arcmin=1.0, slack_arcmin=1.5)
