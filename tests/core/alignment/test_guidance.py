"""Star choice, judgement, procedure, bolts and field north: the guidance through a night."""

import itertools
from pathlib import Path

import numpy as np
import pytest

from core.alignment.axis.evidence import PriorAxis
from core.alignment.axis.solution import solve
from core.alignment.guide.bolts import Base, BoltTurn, CountedTurn, TurnAccuracy, learn
from core.alignment.guide.fieldnorth import FieldNorth, find_north, reversed_leg
from core.alignment.guide.judgement import Next, chance_within, judge
from core.alignment.guide.nextstar import (
    ARCSEC_PER_MIN_PER_ARCMIN,
    Watching,
    half_width_arcmin,
    leg_information,
    rank,
)
from core.alignment.guide.procedure import (
    TABLE,
    NotNow,
    ProcedureEvent,
    Stage,
    after,
    diagram,
    possible,
)
from core.sky.catalogues import load_stars
from core.sky.site import Air, Site

SITE, AIR = Site(48.0, 11.0, 500.0), Air(950.0)
NOW_S = 1.795e9
NOTHING = np.zeros((2, 2))
POLE = np.zeros(2)
# The usual tube yields 10″ per g, which feigns 10″ × cos latitude of either error of the axis.
FLEXURE = 10.0 / 60.0 * np.cos(np.deg2rad(48.0))


@pytest.fixture(scope="module")
def stars():
    return load_stars().up_now(SITE, AIR, NOW_S, 15.0, 400)


def test_the_expected_rate_constant_is_the_sidereal_one():
    # ω·1′ = 0.26252″ per minute (derived, elementary).
    assert pytest.approx(0.26252, abs=1e-5) == ARCSEC_PER_MIN_PER_ARCMIN


def test_the_expected_information_comes_true(make_leg):
    for hour_angle_deg in (1.0, -75.0):
        leg = make_leg(SITE, hour_angle_deg, 5.0, 5.0, minutes=8.0, dec_deg=30.0)
        solution = solve([leg], SITE, AIR)
        trend = solution.legs[0]
        planned = Watching(noise_arcsec=0.7 * np.sqrt(np.sin(np.deg2rad(trend.altitude_deg))))
        expected = np.sqrt(planned.rate_variance(8.0, trend.altitude_deg))
        assert trend.drift_sigma_arcsec_per_min == pytest.approx(expected, rel=0.4)


def test_the_best_pair_of_stars_stands_across(stars):
    first = rank(stars, SITE, NOTHING, Watching(), 1.0)[0].now
    known = leg_information(first.hour_angle_deg, first.altitude_deg, 48.0, 5.0, Watching())
    second = rank(stars, SITE, known, Watching(), 1.0)[0].now
    apart = (second.hour_angle_deg - first.hour_angle_deg) % 180.0
    assert 60.0 < apart < 120.0


def test_the_ranking_is_the_brute_force_order(stars):
    known = leg_information(-80.0, 30.0, 48.0, 5.0, Watching())
    choices = rank(stars, SITE, known, Watching(), 1.0)
    widths = []
    for choice in choices:
        unit = leg_information(
            choice.now.hour_angle_deg, choice.now.altitude_deg, 48.0, 5.0, Watching()
        )
        widths.append(2.0 * np.sqrt(np.diag(np.linalg.inv(known + unit)).max() + FLEXURE**2))
    assert [choice.half_width_arcmin for choice in choices] == pytest.approx(widths, rel=1e-6)
    assert all(b > 0.9 * a for a, b in itertools.pairwise(widths))  # sorted to a tenth


def test_the_price_in_minutes_reaches_the_target(stars):
    known = leg_information(-80.0, 30.0, 48.0, 6.0, Watching())
    for choice in rank(stars, SITE, known, Watching(), 0.8)[:20]:
        grown = known + leg_information(
            choice.now.hour_angle_deg, choice.now.altitude_deg, 48.0, choice.minutes, Watching()
        )
        assert half_width_arcmin(grown, FLEXURE) == pytest.approx(0.8, rel=0.02)


def test_stars_behind_an_obstruction_are_not_offered(stars):
    def east_is_blocked(azimuth_deg, altitude_deg):
        return (azimuth_deg > 180.0) | (altitude_deg > 60.0)

    choices = rank(stars, SITE, NOTHING, Watching(), 1.0, clear=east_is_blocked)
    assert choices
    assert all(c.now.azimuth_deg > 180.0 or c.now.altitude_deg > 60.0 for c in choices)
    assert rank(stars, SITE, NOTHING, Watching(), 1.0, clear=lambda a, _: a < -1.0) == []


def test_the_chance_within_is_right():
    rng = np.random.default_rng(1)
    covariance = np.array([[0.5, 0.2], [0.2, 0.3]])
    known = PriorAxis(np.array([0.4, -0.3]), covariance)
    drawn = rng.multivariate_normal(known.sky_arcmin, covariance, 400_000)
    share = np.mean(np.hypot(*drawn.T) < 1.0)
    assert chance_within(known, POLE, 1.0) == pytest.approx(share, abs=0.01)
    assert chance_within(PriorAxis(POLE, np.eye(2) * 0.4085**2), POLE, 1.0) == pytest.approx(
        0.95,
        abs=0.01,  # Rayleigh: 1 − exp(−1/2σ²)
    )


MERIDIAN = np.array([1.0, 0.0])
HAND = TurnAccuracy(0.1, 0.3)
JUDGED = [
    ("sure within the target", [0.2, 0.1], [0.2, 0.2], MERIDIAN, Next.GOOD_ENOUGH),
    ("far off and roughly known", [40.0, 20.0], [1.5, 1.5], MERIDIAN, Next.TURN),
    ("far off, this star has told enough", [40.0, 20.0], [0.5, 60.0], MERIDIAN, Next.OTHER_STAR),
    ("far off, just begun", [40.0, 20.0], [30.0, 30.0], MERIDIAN, Next.WATCH_ON),
    ("near, not yet fine", [2.0, 1.0], [1.0, 0.3], MERIDIAN, Next.WATCH_ON),
    ("near and fine", [2.0, 1.0], [0.3, 0.3], MERIDIAN, Next.TURN),
    ("between legs", [2.0, 1.0], [1.0, 1.0], None, Next.OTHER_STAR),
]


@pytest.mark.parametrize(("story", "error", "sigma", "shows", "expected"), JUDGED)
def test_judgement(story, error, sigma, shows, expected):
    known = PriorAxis(np.array(error), np.diag(np.square(sigma)))
    assert judge(known, shows, POLE, 1.0, HAND).next is expected, story


def test_a_star_that_shows_nothing_new_is_left_in_time():
    # Along the star the tube's flexure stands at 0.9′ however long it is watched; across, 60′.
    known = PriorAxis(np.array([2.0, 20.0]), np.diag([0.9**2, 60.0**2]))
    finest = TurnAccuracy(0.5, 0.3)  # so rough a hand that the star's own error is never told
    steps = [judge(known, MERIDIAN, POLE, 1.0, finest, 0.1, minutes).next for minutes in (3, 25)]
    assert steps == [Next.WATCH_ON, Next.OTHER_STAR]
    even = PriorAxis(np.array([2.0, 20.0]), np.diag([0.9**2, 2.0**2]))
    assert judge(even, MERIDIAN, POLE, 1.0, finest, 0.1, 25.0).next is Next.WATCH_ON


def test_every_stage_can_be_left_and_reached():
    assert {at for at, _ in TABLE} == set(Stage)
    assert set(TABLE.values()) == set(Stage)
    assert all(possible(stage) for stage in Stage)


def test_an_event_out_of_place_is_a_sentence():
    assert after(Stage.CHOOSE, ProcedureEvent.STAR_TAKEN) is Stage.WATCH
    with pytest.raises(NotNow, match="has no place at “Turn the bolts”"):
        after(Stage.TURN, ProcedureEvent.STAR_TAKEN)


def test_the_diagram_in_the_guide_is_the_table():
    guide = Path(__file__).parents[3] / "DEVELOPERS.md"
    assert diagram() in guide.read_text(encoding="utf-8")


def turned(rng, per_turn, play, number):
    """Turns of an invented bolt whose play is taken up at each reversal."""
    made, last = [], 0.0
    for _ in range(number):
        turns = rng.choice([-1, 1]) * rng.uniform(0.1, 1.0)
        moved = per_turn * turns
        if last and np.sign(last) != np.sign(turns):
            moved -= np.sign(moved) * min(play, abs(moved))
        last = turns
        moved += rng.normal() * 0.05 * abs(per_turn)
        made.append(CountedTurn(turns, moved + rng.normal() * 0.5, 0.5))
    return made


def test_a_bolt_is_learned_within_its_stated_error():
    rng = np.random.default_rng(3)
    misses = []
    for _ in range(300):
        per_turn, play = rng.choice([-1, 1]) * rng.uniform(20, 60), rng.uniform(0.0, 2.5)
        bolt = learn(turned(rng, per_turn, play, 5))
        misses.append((bolt.arcmin_per_turn - per_turn) / bolt.arcmin_per_turn_sigma)
    assert 0.93 <= np.mean(np.abs(misses) < 1.96) <= 0.98


def test_an_untried_bolt_is_not_known_and_a_tried_one_tells_turns():
    assert not learn([]).is_known
    bolt = learn(
        [CountedTurn(0.5, 15.0, 0.4), CountedTurn(0.5, 15.3, 0.4), CountedTurn(-0.4, -11.0, 0.4)]
    )
    assert bolt.is_known
    same_way, _ = bolt.turns_for(-6.0, last_turns=-0.4)
    back, error = bolt.turns_for(6.0, last_turns=-0.4)
    assert same_way == pytest.approx(-0.2, abs=0.02)
    assert back > 0.2  # the play is taken up first
    assert 0.0 < error < 0.1


def test_a_bolt_labelled_the_other_way_has_a_negative_scale():
    bolt = learn(
        [CountedTurn(0.5, -15.0, 0.4), CountedTurn(0.5, -15.3, 0.4), CountedTurn(-0.4, 11.0, 0.4)]
    )
    assert bolt.is_known
    assert bolt.arcmin_per_turn == pytest.approx(-30.0, abs=1.5)
    turns, _ = bolt.turns_for(15.0, last_turns=0.0)
    assert turns == pytest.approx(-0.5, abs=0.03)


def test_one_turn_counted_the_wrong_way_round_does_not_spoil_the_scale():
    made = [CountedTurn(0.5, -15.0, 0.4)] * 4 + [CountedTurn(0.5, 15.0, 0.4)]
    bolt = learn(made)
    assert bolt.arcmin_per_turn == pytest.approx(-30.0, abs=1.5)
    assert bolt.is_known


def test_turns_counted_without_their_way_tell_the_size_alone():
    bolt = learn(
        [CountedTurn(0.5, -15.0, 0.4), CountedTurn(0.5, 15.0, 0.4), CountedTurn(0.2, -6.0, 0.4)]
    )
    assert not bolt.has_sense
    assert not bolt.is_known
    assert abs(bolt.arcmin_per_turn) == pytest.approx(30.0, abs=2.5)


def test_a_data_sheet_bears_out_a_first_turn_or_does_not():
    one = [CountedTurn(0.5, -15.0, 0.4)]
    assert not learn(one).is_known
    assert learn(one, 30.0).is_known
    assert learn(one, 30.0).arcmin_per_turn == pytest.approx(-30.0, abs=0.5)
    assert not learn(one, 60.0).is_known
    assert (learn([], 30.0).number, learn([], 30.0).is_known) == (0, False)


@pytest.mark.parametrize(
    ("is_mirrored", "expected"), [(False, FieldNorth.AS_READ), (True, FieldNorth.REVERSED)]
)
def test_a_turn_tells_which_way_north_is(make_leg, is_mirrored, expected):
    before = [make_leg(SITE, 1.0, 20.0, 12.0), make_leg(SITE, -75.0, 20.0, 12.0, seed=2)]
    later = [make_leg(SITE, 1.0, 11.0, 12.0, seed=3), make_leg(SITE, -75.0, 11.0, 12.0, seed=4)]
    if is_mirrored:
        before, later = [reversed_leg(leg) for leg in before], [reversed_leg(leg) for leg in later]
    found = find_north(before, BoltTurn(-9.0, 0.0), later, SITE, AIR, Base(), TurnAccuracy())
    assert found is expected


def test_a_tiny_turn_tells_nothing(make_leg):
    legs = [make_leg(SITE, 1.0, 0.3, 0.2), make_leg(SITE, -75.0, 0.3, 0.2, seed=2)]
    found = find_north(legs, BoltTurn(0.05, 0.0), legs, SITE, Air(0.0), Base(), TurnAccuracy())
    assert found is FieldNorth.UNDECIDED
