"""The shortest form: one drift in one sentence."""

import math

import pytest

from app.devices.typed import SingleDrift
from core.alignment.axis.solution import solve
from core.sky.clocks import local_sidereal_time_hours
from core.sky.site import Air, Site

ENDING_UTC_S = 1_795_568_400.0
SITE = Site(45.0, 0.0)


def test_it_becomes_two_readings() -> None:
    leg = SingleDrift(-12.0, 5.0, ENDING_UTC_S, 1.5).leg(10.0, 20.0)
    assert leg.utc_s.tolist() == [ENDING_UTC_S - 300.0, ENDING_UTC_S]
    assert leg.north_arcsec.tolist() == [0.0, -12.0]
    assert leg.sigma_arcsec is not None
    assert leg.sigma_arcsec.tolist() == [1.5, 1.5]
    assert (leg.ra_deg, leg.dec_deg) == (10.0, 20.0)


def test_the_solution_agrees_with_the_by_hand_rule_on_the_meridian() -> None:
    # On the meridian at latitude 45° an axis 1′ too far east drifts −0.18563″ a minute (derived).
    middle_utc_s = ENDING_UTC_S - 150.0
    ra_deg = 15.0 * float(local_sidereal_time_hours(middle_utc_s, SITE))
    leg = SingleDrift(-0.18563 * 10.0 * 5.0, 5.0, ENDING_UTC_S, 0.05).leg(ra_deg, 0.0)
    solution = solve([leg], SITE, Air(0.0))
    assert solution.combination is not None
    assert solution.azimuth_error_arcmin == pytest.approx(10.0, abs=0.5)


@pytest.mark.parametrize(
    ("north_arcsec", "minutes", "ending_utc_s", "sigma_arcsec", "words"),
    [
        (math.nan, 5.0, ENDING_UTC_S, 1.0, "must be numbers"),
        (1.0, 5.0, math.inf, 1.0, "must be numbers"),
        (1.0, 0.0, ENDING_UTC_S, 1.0, "0.5 to 120 minutes"),
        (1.0, -5.0, ENDING_UTC_S, 1.0, "0.5 to 120 minutes"),
        (1.0, math.nan, ENDING_UTC_S, 1.0, "0.5 to 120 minutes"),
        (1.0, 300.0, ENDING_UTC_S, 1.0, "not over 300"),
        (1.0, 5.0, ENDING_UTC_S, 0.0, "how well you can read"),
        (1.0, 5.0, ENDING_UTC_S, math.nan, "how well you can read"),
    ],
)
def test_numbers_that_cannot_be_meant_are_refused(
    north_arcsec: float, minutes: float, ending_utc_s: float, sigma_arcsec: float, words: str
) -> None:
    with pytest.raises(ValueError, match=words):
        SingleDrift(north_arcsec, minutes, ending_utc_s, sigma_arcsec)
