"""What the solution says when the legs are good, weak, single, or of no use."""

from dataclasses import replace

import numpy as np
import pytest

from core.alignment.axis.solution import solve
from core.alignment.drift.prepared import UnusableLegs
from core.alignment.driftlog.records import Leg
from core.alignment.goal import Aim
from core.alignment.guide.judgement import minutes_left
from core.alignment.priors import NONE
from core.alignment.words import advise, constraint_words
from core.sky.site import Air, Site

NORTH = Site(48.0, 11.0, 500.0)
SOUTH = Site(-33.0, 19.0, 500.0)


def codes(solution):
    return {note.code.value for note in solution.notes}


# azimuth error positive is east in the north, west in the south; altitude positive is too high
WORDS = [
    (NORTH, +12.0, "east of the pole", "turn it west"),
    (NORTH, -12.0, "west of the pole", "turn it east"),
    (SOUTH, +12.0, "west of the pole", "turn it east"),
    (SOUTH, -12.0, "east of the pole", "turn it west"),
]


@pytest.mark.parametrize(("site", "azimuth", "side", "turn"), WORDS)
@pytest.mark.parametrize(
    ("altitude", "height", "way"), [(9, "too high", "lower it"), (-9, "too low", "raise it")]
)
def test_the_advice_names_side_and_turn(
    make_leg, air, site, azimuth, side, turn, altitude, height, way
):
    dec_deg = 10.0 if site is NORTH else -10.0
    legs = [
        make_leg(site, 1.0, azimuth, altitude, dec_deg=dec_deg),
        make_leg(site, 75.0, azimuth, altitude, dec_deg=dec_deg, seed=2),
    ]
    advice = advise(solve(legs, site, air), Aim.TRUE_POLE)
    assert (advice.azimuth_side, advice.azimuth_turn) == (side, turn)
    assert (advice.altitude_side, advice.altitude_turn) == (height, way)
    assert advice.azimuth_figure in advice.azimuth
    assert not any(sign in advice.azimuth + advice.altitude for sign in ("+", "−", "-"))


def test_east_and_west_of_the_meridian_agree(make_leg, air):
    for hour_angle_deg in (-75.0, 75.0):
        legs = [make_leg(NORTH, 1.0, 20.0, -15.0), make_leg(NORTH, hour_angle_deg, 20.0, -15.0)]
        solution = solve(legs, NORTH, air)
        assert solution.azimuth_error_arcmin == pytest.approx(20.0, abs=1.5)
        assert solution.altitude_error_arcmin == pytest.approx(-15.0, abs=1.5)


def test_the_refracted_pole_lies_above_the_true_one(make_leg, air):
    legs = [make_leg(NORTH, 1.0, 0.0, 0.0), make_leg(NORTH, 75.0, 0.0, 0.0, seed=2)]
    solution = solve(legs, NORTH, air)
    lift = solution.altitude_error_arcmin - solution.altitude_error_refracted_arcmin
    # 58.2″ cot φ × P/1010 for 10 °C, the usual mean refraction (Meeus, ch. 16): 0.82′ here.
    assert lift == pytest.approx(58.2 / 60.0 / np.tan(np.deg2rad(48.0)) * 950.0 / 1010.0, rel=0.02)


def test_an_error_within_the_interval_is_left_alone(make_leg, air):
    legs = [make_leg(NORTH, 1.0, 0.05, 0.05), make_leg(NORTH, 75.0, 0.05, 0.05, seed=2)]
    advice = advise(solve(legs, NORTH, air), Aim.TRUE_POLE)
    assert advice.azimuth_turn == "leave it"


def test_one_star_on_the_meridian_tells_azimuth_and_asks_for_a_star_six_hours_off(make_leg, air):
    solution = solve([make_leg(NORTH, -0.5, 20.0, 30.0)], NORTH, air)
    assert solution.azimuth_determined
    assert not solution.altitude_determined
    assert np.isnan(solution.altitude_error_arcmin)
    assert "six hours from the meridian" in constraint_words(solution.combination)
    half_width = solution.azimuth_interval_factor * solution.azimuth_sigma_arcmin
    assert abs(solution.azimuth_error_arcmin - 20.0) < half_width


def test_one_star_between_fixes_a_combination_and_nothing_else(make_leg, air):
    azimuth, altitude = 20.0, -30.0
    solution = solve([make_leg(NORTH, -45.0, azimuth, altitude)], NORTH, air)
    assert not solution.azimuth_determined
    assert not solution.altitude_determined
    known = solution.combination
    cosine = np.cos(np.deg2rad(NORTH.latitude_deg))
    true = known.azimuth_weight * azimuth * cosine + known.altitude_weight * altitude
    assert abs(known.value_arcmin - true) < 1.5 * known.half_width_arcmin
    assert known.half_width_arcmin < 2.0
    assert "3 hours west" in constraint_words(known)
    advice = advise(solution, Aim.TRUE_POLE)
    assert "not known yet" in advice.azimuth
    assert constraint_words(known) == advice.limits[0]


@pytest.mark.parametrize("site", [NORTH, SOUTH])
def test_the_named_second_star_settles_it(make_leg, air, site):
    first = make_leg(site, -40.0, 20.0, -30.0, dec_deg=0.0)
    second_deg = solve([first], site, air).combination.second_star_hour_angle_deg
    second = make_leg(site, second_deg, 20.0, -30.0, dec_deg=0.0, seed=5)
    solution = solve([first, second], site, air)
    assert solution.determined
    assert abs(solution.correlation) < 0.3


def test_similar_stars_are_said_to_be_weak(make_leg, air):
    solution = solve(
        [
            make_leg(NORTH, -60.0, 5.0, 5.0, minutes=15.0),
            make_leg(NORTH, -75.0, 5.0, 5.0, minutes=15.0, seed=2),
        ],
        NORTH,
        air,
    )
    assert "stars alike" in codes(solution)


def test_low_and_polar_stars_are_said(make_leg, air):
    solution = solve(
        [make_leg(NORTH, 1.0, 5.0, 5.0, dec_deg=80.0), make_leg(NORTH, -80.0, 5.0, 5.0)], NORTH, air
    )
    assert {"near the pole", "low star"} <= codes(solution)


def test_a_star_below_the_horizon_suggests_the_clock(make_leg, air):
    solution = solve([make_leg(NORTH, 150.0, 5.0, 5.0), make_leg(NORTH, 1.0, 5.0, 5.0)], NORTH, air)
    assert any("local time taken for UTC" in str(note) for note in solution.notes)


@pytest.mark.parametrize(
    ("latitude_deg", "code"),
    [(87.0, "polar site"), (2.0, "equatorial site"), (-88.0, "polar site")],
)
def test_extreme_sites_are_explained(make_leg, air, latitude_deg, code):
    site = Site(latitude_deg, 0.0)
    dec_deg = 30.0 if latitude_deg > 0 else -30.0
    legs = [
        make_leg(site, 1.0, 5.0, 5.0, dec_deg=dec_deg),
        make_leg(site, 70.0, 5.0, 5.0, dec_deg=dec_deg),
    ]
    assert code in codes(solve(legs, site, air))


@pytest.mark.parametrize("latitude_deg", [90.0, -90.0, 89.5])
def test_at_a_pole_of_the_earth_no_azimuth_error_is_given(make_leg, air, latitude_deg):
    site = Site(latitude_deg, 0.0)
    dec_deg = 30.0 if latitude_deg > 0 else -30.0
    legs = [make_leg(site, hour, 5.0, 5.0, dec_deg=dec_deg) for hour in (1.0, 70.0)]
    solution = solve(legs, site, air)
    assert np.isnan(solution.azimuth_error_arcmin)
    assert not solution.azimuth_determined
    assert solution.altitude_determined
    assert any("azimuth means nothing" in str(note) for note in solution.notes)
    assert advise(solution, Aim.TRUE_POLE).azimuth.startswith("Azimuth means nothing")


def test_no_azimuth_error_beyond_half_a_turn_is_given(make_leg, air):
    site = Site(88.0, 0.0)
    legs = [make_leg(site, hour, 200.0, 5.0, dec_deg=30.0) for hour in (1.0, 70.0)]
    assert solve(legs, site, air).azimuth_determined
    far = [replace(leg, north_arcsec=leg.north_arcsec * 80.0) for leg in legs]
    assert np.isnan(solve(far, site, air).azimuth_error_arcmin)


def test_offsets_no_axis_can_cause_are_left_out_and_the_others_used(make_leg, air):
    good = [make_leg(NORTH, 1.0, 20.0, 5.0), make_leg(NORTH, 70.0, 20.0, 5.0)]
    wrong = make_leg(NORTH, 2.0, 20.0, 5.0, label="wrong")
    wrong = replace(wrong, north_arcsec=wrong.north_arcsec * 1000.0)
    solution = solve([*good, wrong], NORTH, air)
    assert abs(solution.azimuth_error_arcmin - 20.0) < 1.0
    assert any("“wrong” is left out: its star drifts" in str(note) for note in solution.notes)
    with pytest.raises(UnusableLegs, match="cannot be seconds of arc"):
        solve([wrong], NORTH, air)


@pytest.mark.parametrize(("times", "is_said"), [(10.0, False), (100.0, True)])
def test_a_drift_as_of_an_axis_far_off_asks_for_the_unit(make_leg, air, times, is_said):
    leg = make_leg(NORTH, 1.0, 20.0, 5.0)
    fast = replace(leg, north_arcsec=leg.north_arcsec * times)
    assert ("fast star" in codes(solve([fast], NORTH, air))) is is_said


def reading(leg, keep, **changes):
    return replace(leg, utc_s=leg.utc_s[keep], north_arcsec=leg.north_arcsec[keep], **changes)


def test_two_readings_need_a_stated_error(make_leg, air):
    leg = make_leg(NORTH, -0.75, 20.0, 0.0)  # its middle near the meridian
    ends = [0, -1]
    with pytest.raises(UnusableLegs, match="no reading error"):
        solve([reading(leg, ends)], NORTH, air)
    stated = reading(leg, ends, sigma_arcsec=np.array([1.0, 1.0]))
    solution = solve([stated], NORTH, air, priors=NONE)
    assert abs(solution.azimuth_error_arcmin - 20.0) < 3.0 * solution.azimuth_sigma_arcmin
    # 1″ at both ends of six minutes, by hand: σ = √2 ″ / 6 min × 3.81′ / cos φ.
    by_hand = np.sqrt(2.0) / 6.0 * 3.809 / np.cos(np.deg2rad(48.0))
    assert solution.azimuth_sigma_arcmin == pytest.approx(by_hand, rel=0.1)


@pytest.mark.parametrize(
    ("change", "words"),
    [
        (lambda leg: reading(leg, [0]), "single reading"),
        (lambda leg: reading(leg, slice(0, 4)), "under 10 seconds"),
        (lambda leg: replace(leg, utc_s=leg.utc_s[::-1]), "run backwards"),
        (lambda leg: replace(leg, north_arcsec=leg.north_arcsec * np.nan), "not a number"),
    ],
)
def test_useless_legs_are_refused_with_the_reason(make_leg, air, change, words):
    with pytest.raises(UnusableLegs, match=words):
        solve([change(make_leg(NORTH, 1.0, 1.0, 1.0))], NORTH, air)


def test_a_useless_leg_beside_good_ones_is_left_out_and_said(make_leg, air):
    good = [make_leg(NORTH, 1.0, 5.0, 5.0), make_leg(NORTH, 75.0, 5.0, 5.0)]
    lone = reading(make_leg(NORTH, 30.0, 5.0, 5.0, label="lone"), [0])
    solution = solve([*good, lone], NORTH, air)
    assert "leg left out" in codes(solution)
    assert [leg.label for leg in solution.legs] == [leg.label for leg in good]


def test_no_leg_at_all_is_a_sentence(air):
    with pytest.raises(UnusableLegs, match="no leg yet"):
        solve([], NORTH, air)


def test_identical_readings_do_not_break_anything(make_leg):
    leg = make_leg(NORTH, 1.0, 0.0, 0.0)
    still = replace(leg, north_arcsec=np.zeros_like(leg.utc_s))
    solution = solve(
        [still, replace(still, label="again", ra_deg=still.ra_deg + 75.0)], NORTH, Air(0.0)
    )
    assert np.isfinite([solution.azimuth_error_arcmin, solution.altitude_error_arcmin]).all()


def test_the_forecast_comes_true(make_leg, air):
    meridian = make_leg(NORTH, 1.0, 10.0, 10.0, minutes=12.0)
    short = make_leg(NORTH, -75.0, 10.0, 10.0, minutes=3.0, seed=7)
    solution = solve([meridian, short], NORTH, air)
    forecast = minutes_left(solution, short.label, 0.4)
    assert forecast.minutes is not None
    assert forecast.minutes > 0.5
    longer = make_leg(NORTH, -75.0, 10.0, 10.0, minutes=3.0 + forecast.minutes, seed=7)
    later = solve([meridian, longer], NORTH, air)
    half_width = later.altitude_interval_factor * later.altitude_sigma_arcmin
    assert half_width == pytest.approx(0.4, rel=0.35)


def test_a_single_star_forecast_asks_for_the_other_star(make_leg, air):
    leg: Leg = make_leg(NORTH, -80.0, 10.0, 10.0)
    forecast = minutes_left(solve([leg], NORTH, air), leg.label, 1.0)
    assert forecast.minutes is None
    assert "near the meridian" in str(forecast.outlook)


def test_an_aim_between_the_poles_lies_between_them(make_leg, air):
    legs = [make_leg(NORTH, 1.0, 0.0, 30.0), make_leg(NORTH, 75.0, 0.0, 30.0, seed=2)]
    solution = solve(legs, NORTH, air)
    errors = [solution.altitude_error_from(aim) for aim in Aim]
    assert errors[0] == solution.altitude_error_arcmin
    assert errors[-1] == pytest.approx(solution.altitude_error_refracted_arcmin)
    assert np.diff(errors) == pytest.approx((errors[-1] - errors[0]) / 4.0)
    assert Aim.nearest(0.6) is Aim.HALFWAY


def test_a_perfect_line_of_one_star_still_fixes_only_one_combination(make_leg, air):
    # Readings without any scatter: their bend alone would name both errors to 0.01′.
    leg = make_leg(NORTH, -45.0, 20.0, -30.0, noise_arcsec=0.0)
    straight = replace(leg, north_arcsec=np.linspace(0.0, 6.0, leg.utc_s.size))
    for one in (leg, straight):
        solution = solve([one], NORTH, air)
        assert not solution.azimuth_determined
        assert not solution.altitude_determined
        assert "3 hours west" in constraint_words(solution.combination)
        assert minutes_left(solution, one.label, 1.0).minutes is None


def test_a_long_leg_of_one_star_is_believed_no_more_than_a_short_one(make_leg, air):
    solution = solve([make_leg(NORTH, 25.0, 28.0, -22.0, minutes=15.0)], NORTH, air)
    assert solution.combination is not None
    assert not solution.determined


def test_others_may_pass_between_all_steps_of_each_leg(make_leg, air):
    legs = [make_leg(NORTH, angle, 20.0, -15.0) for angle in (1.0, 75.0, 10.0)]
    breaths: list[int] = []
    alone = solve(legs, NORTH, air)
    breathing = solve(legs, NORTH, air, breathe=lambda: breaths.append(1))
    assert len(breaths) > 4 * len(legs)
    assert breathing.sky_error_arcmin == alone.sky_error_arcmin
