"""One star alone: what is said if the other error were right holds, and its bend is not believed.

Truth: `tests.truth.watched` (skyfield's places, ray-traced air, own rotation).
"""

import numpy as np
import pytest
from scipy.stats import binom

from core.alignment.axis.legset import LegSet
from core.alignment.axis.solution import solve
from core.alignment.priors import NONE, USUAL
from core.alignment.words import constraint_words
from tests.truth.watched import air_motion, hard_night

NIGHTS = 60
MEANT = 0.2  # share of the known direction from which on a sentence is said


def nights(minutes, seed):
    """The axis at most 3′ off, one of its errors exactly zero, a star anywhere."""
    rng = np.random.default_rng(seed)
    for _ in range(NIGHTS):
        size, which = rng.uniform(-3.0, 3.0), int(rng.integers(2))
        axis = np.array([size, 0.0]) if which == 0 else np.array([0.0, size])
        night = hard_night(rng, ((-80.0, 80.0),), axis, minutes, 2.0, 48.0)
        star = night.stars[0]
        yield night, star.leg(star.north + air_motion(rng, star.utc_s)), which, size


@pytest.fixture
def said(monkeypatch):
    """What the conditional sentences speak of, in the order azimuth, altitude."""
    kept = {}
    for name in ("azimuth_if_altitude_is_right", "altitude_if_azimuth_is_right"):
        real = getattr(LegSet, name)

        def note(legs, real=real, name=name):
            kept[name] = real(legs)
            return kept[name]

        monkeypatch.setattr(LegSet, name, note)
    return kept


@pytest.mark.parametrize("minutes", [3.0, 5.0, 8.0, 12.0])
@pytest.mark.parametrize(("priors", "most"), [(NONE, 0.97), (USUAL, 1.0)], ids=["none", "usual"])
def test_if_the_other_error_were_right_this_one_is_as_said(said, minutes, priors, most):
    held, worst = [], 0.0
    for night, leg, which, size in nights(minutes, int(minutes)):
        solution = solve([leg], night.site, night.air, priors=priors)
        one = solution.combination
        if abs((one.azimuth_weight, one.altitude_weight)[which]) < MEANT:
            continue
        names = ("azimuth_if_altitude_is_right", "altitude_if_azimuth_is_right")
        told = said[names[which]]
        off = abs(told.error_arcmin - size) / told.half_width_arcmin
        held.append(off <= 1.0)
        worst = max(worst, off)
    assert binom.cdf(sum(held), len(held), 0.93) > 1e-3
    assert binom.sf(sum(held) - 1, len(held), most) > 1e-3
    assert worst < 2.5


@pytest.mark.parametrize("minutes", [45.0, 60.0, 90.0])
def test_a_long_leg_of_one_star_never_tells_both_errors(minutes):
    rng = np.random.default_rng(3)
    for hour_angle_deg in (-70.0, -35.0, 2.0, 40.0):
        span = (hour_angle_deg - 5.0, hour_angle_deg + 5.0)
        night = hard_night(rng, (span,), (8.0, -6.0), minutes, 10.0, 48.0)
        star = night.stars[0]
        hours = (star.utc_s - star.utc_s[0]) / 3600.0
        leg = star.leg(star.north + 5.0 * hours**2 + air_motion(rng, star.utc_s))
        solution = solve([leg], night.site, night.air)
        assert not solution.determined
        assert solution.combination is not None


def test_two_stars_that_stand_alike_are_not_called_one():
    night = hard_night(np.random.default_rng(4), ((-2.0, 2.0),) * 2, (8.0, -6.0), 5.0, 2.0, 48.0)
    legs = [star.leg(star.north) for star in night.stars]
    sentence = constraint_words(solve(legs, night.site, night.air).combination)
    assert "These stars stand alike" in sentence
    assert "One star alone" not in sentence


def test_a_leap_second_in_a_log_is_no_bump():
    night = hard_night(np.random.default_rng(6), ((-2.0, 2.0), (60.0, 80.0)), (8.0, -6.0), 6.0, 2.0)
    legs = []
    for star in night.stars:
        utc_s = star.utc_s - (star.utc_s > star.utc_s[star.utc_s.size // 2]) * 1.0  # told twice
        star.utc_s = utc_s
        legs.append(star.leg(star.north))
    for priors in (NONE, USUAL):
        solution = solve(legs, night.site, night.air, priors=priors)
        assert not any(leg.steps for leg in solution.legs)
