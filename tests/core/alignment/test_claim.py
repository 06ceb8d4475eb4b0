"""What is claimed of a side, and how often chance would make it wrong."""

from types import SimpleNamespace

import numpy as np
import pytest
from scipy.stats import norm
from scipy.stats import t as student

from core.alignment.goal import NORMAL_95, Aim, SideConfidence, side_confidence, sure_half_widths
from core.alignment.words import advise


@pytest.mark.parametrize(
    ("error", "claimed"),
    [
        (0.9, SideConfidence.OPEN),
        (-1.2, SideConfidence.PROBABLE),
        (1.65, SideConfidence.PROBABLE),
        (-1.7, SideConfidence.SURE),
    ],
)
def test_a_side_is_claimed_only_far_beyond_the_half_width(error, claimed) -> None:
    assert side_confidence(error, 1.0) is claimed


def test_with_no_error_at_all_a_side_is_claimed_once_in_a_thousand() -> None:
    # Two-sided tail of the normal distribution, from scipy.stats.
    expected = 2.0 * norm.sf(1.96 * sure_half_widths(NORMAL_95))
    errors = np.random.default_rng(5).normal(size=200_000)
    share = np.mean([side_confidence(error, 1.96) is SideConfidence.SURE for error in errors])
    assert expected < 1e-3
    assert share == pytest.approx(expected, abs=3e-4)


@pytest.mark.parametrize("freedom", [3, 8, 30])
def test_with_few_readings_too_a_side_is_claimed_wrongly_no_more_often(freedom) -> None:
    rng = np.random.default_rng(freedom)
    sigma = np.sqrt(rng.chisquare(freedom, 200_000) / freedom)
    factor = student.ppf(0.975, freedom)
    errors = rng.normal(size=sigma.size)
    few = zip(errors[:20_000], factor * sigma[:20_000], strict=True)
    assert np.mean([side_confidence(*one, factor) is SideConfidence.SURE for one in few]) < 3e-3
    far = np.abs(errors) > sure_half_widths(factor) * factor * sigma
    assert np.mean(far) == pytest.approx(9.6e-4, abs=3e-4)


def _solution(azimuth: float, altitude: float) -> SimpleNamespace:
    sigma = 1.0 / 1.96
    return SimpleNamespace(
        latitude_deg=48.0,
        azimuth_error_arcmin=azimuth,
        azimuth_sigma_arcmin=sigma,
        azimuth_interval_factor=1.96,
        azimuth_determined=True,
        altitude_error_from=lambda _aim: altitude,
        altitude_sigma_arcmin=sigma,
        altitude_interval_factor=1.96,
        altitude_determined=True,
        notes=(),
        combination=None,
        is_contradictory=False,
    )


def test_the_advice_says_probably_where_it_is_not_sure() -> None:
    sure = advise(_solution(4.0, -4.0), Aim.TRUE_POLE)
    assert (sure.azimuth_side, sure.azimuth_turn) == ("east of the pole", "turn it west")
    perhaps = advise(_solution(1.3, -1.3), Aim.TRUE_POLE)
    assert perhaps.azimuth_turn == "probably turn it west"
    assert perhaps.altitude_side == "probably too low"
    open_ = advise(_solution(0.5, -0.5), Aim.TRUE_POLE)
    assert open_.azimuth_turn == "leave it"


@pytest.mark.parametrize(
    ("goal_arcmin", "azimuth_turn", "altitude_turn"),
    [(1.01, "leave it", "leave it"), (0.9, "leave it", "watch on"), (0.6, "watch on", "watch on")],
)
def test_a_bolt_is_left_alone_only_when_the_half_width_is_within_the_goal(
    goal_arcmin, azimuth_turn, altitude_turn
) -> None:
    """The half-width is 1′ for both; at 48° an azimuth error shows two thirds on the sky."""
    advice = advise(_solution(0.5, -0.5), Aim.TRUE_POLE, goal_arcmin)
    assert (advice.azimuth_turn, advice.altitude_turn) == (azimuth_turn, altitude_turn)
    assert ("leave it" in advice.altitude) is (altitude_turn == "leave it")
    assert ("not clear yet: watch on" in advice.azimuth) is (azimuth_turn == "watch on")
    assert "0.5′ ± 1.0′" in advice.azimuth
