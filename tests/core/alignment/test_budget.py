"""Tolerance, verdict, curve, map and aim against each other and against plain searches."""

from dataclasses import replace

import erfa
import numpy as np
import pytest

from core.alignment.axis.solution import solve
from core.imaging.skymap import sky_map
from core.imaging.task import (
    Exposures,
    ImagedTarget,
    Optics,
    Task,
    UnusableTask,
    Vantage,
    seen_field,
)
from core.imaging.tolerance import Alignment, best_aim, longest_exposure, smear_curve, tolerance
from core.imaging.trail import trails
from core.imaging.verdict import Grade, judge
from core.imaging.words import arc, duration, exposure_words, near, pixels
from core.sky.refraction import Refraction
from core.sky.site import Air, Site
from core.units import ARCMIN_PER_RAD

SITE, AIR = Site(48.0, 11.0, 500.0), Air(950.0)
VANTAGE = Vantage.of(SITE, AIR)
AIRLESS = Vantage(VANTAGE.latitude_rad, Refraction(0.0, 0.0))
OPTICS = Optics(600.0, 3.8, 6000, 4000)
TARGET = ImagedTarget(41.0, -60.0, 45.0)
GUIDED = Task(TARGET, OPTICS, 300.0, 120.0)
UNGUIDED = Task(TARGET, OPTICS, 30.0)


def worst_px(task, vantage, azimuth_arcmin, altitude_arcmin):
    smear = judge(task, vantage, Alignment(azimuth_arcmin, altitude_arcmin))
    return max(smear.centre.total_px, smear.corner.total_px)


@pytest.mark.parametrize("task", [GUIDED, UNGUIDED])
@pytest.mark.parametrize("latitude_deg", [48.0, -35.0])
def test_no_axis_within_the_tolerance_smears_more_and_some_axis_on_it_smears_as_much(
    task, latitude_deg
):
    vantage = Vantage.of(replace(SITE, latitude_deg=latitude_deg), AIR)
    if latitude_deg < 0:
        task = replace(task, target=replace(TARGET, declination_deg=-41.0))
    found = tolerance(task, vantage)
    around = np.deg2rad(np.arange(0.0, 360.0, 10.0))
    ring = [
        worst_px(task, vantage, azimuth / np.cos(vantage.latitude_rad), altitude)
        for azimuth, altitude in found.largest_error_arcmin
        * np.stack([np.cos(around), np.sin(around)], axis=-1)
    ]
    assert task.limit_px * 0.99 < max(ring) < task.limit_px * 1.005
    for azimuth, altitude in ((found.azimuth_arcmin, 0.0), (0.0, found.altitude_arcmin)):
        both = [worst_px(task, vantage, s * azimuth, s * altitude) for s in (-1.0, 1.0)]
        assert max(both) == pytest.approx(task.limit_px, rel=1e-3)


def test_where_refraction_alone_is_too_much_no_alignment_helps():
    task = replace(UNGUIDED, exposure_s=600.0)
    found = tolerance(task, VANTAGE)
    assert not found.possible
    assert found.largest_error_arcmin == 0.0
    assert found.air_alone_px == pytest.approx(worst_px(task, VANTAGE, 0.0, 0.0))
    assert "even an axis exactly on the true pole is not enough" in found.sentence
    assert "guiding" in found.sentence


def test_a_forgiving_task_takes_any_axis():
    found = tolerance(replace(GUIDED, exposure_s=1.0), VANTAGE)
    assert found.largest_error_arcmin == float("inf")
    assert "any axis within 10°" in found.sentence


def test_a_tolerance_about_the_refracted_pole_is_centred_there():
    lift_arcmin = VANTAGE.pole_lift_rad * ARCMIN_PER_RAD
    found = tolerance(UNGUIDED, VANTAGE, VANTAGE.pole_lift_rad, "refracted pole")
    ends = [
        worst_px(UNGUIDED, VANTAGE, 0.0, lift_arcmin + side * found.altitude_arcmin)
        for side in (-1.0, 1.0)
    ]
    assert max(ends) == pytest.approx(UNGUIDED.limit_px, rel=1e-3)
    assert "of the refracted pole" in found.sentence


def test_the_verdict_says_what_the_drift_page_shows():
    smear = judge(GUIDED, VANTAGE, Alignment(3.0, -2.0))
    assert smear.grade is Grade.GOOD_ENOUGH
    assert smear.sentence.startswith(
        "Good enough for 5-minute exposures at 600 mm: corner smear 0."
    )
    assert smear.sentence.endswith("of a pixel (budget 0.5).")
    poor = judge(GUIDED, VANTAGE, Alignment(80.0, -2.0))
    assert poor.grade is Grade.NOT_GOOD_ENOUGH
    assert "the azimuth error does most of it" in poor.sentence
    low = judge(replace(UNGUIDED, exposure_s=600.0), VANTAGE, Alignment(0.2, 0.0))
    assert "refraction does most of it: expose shorter or guide" in low.sentence


def test_an_alignment_known_too_poorly_is_not_clear_yet():
    good = judge(GUIDED, VANTAGE, Alignment(3.0, -2.0))
    vague = judge(GUIDED, VANTAGE, Alignment(3.0, -2.0, 6.0, 6.0))
    assert vague.grade is Grade.NOT_CLEAR_YET
    assert vague.corner.total_px == good.corner.total_px
    assert vague.corner.low_px < good.corner.total_px < GUIDED.limit_px < vague.corner.high_px
    assert "between" in vague.sentence
    assert "watch longer" in vague.sentence


def test_an_unknown_alignment_is_not_judged(make_leg):
    solution = solve([make_leg(SITE, 0.0, 12.0, -5.0)], SITE, AIR)
    assert Alignment.of(solution) is None
    smear = judge(GUIDED, VANTAGE, None)
    assert (smear.grade, smear.centre, smear.corner) == (Grade.UNKNOWN, None, None)


def test_a_solved_alignment_is_judged_with_its_interval(make_leg):
    legs = [make_leg(SITE, hour_angle, 12.0, -5.0) for hour_angle in (0.0, -75.0)]
    alignment = Alignment.of(solve(legs, SITE, AIR))
    corner = judge(GUIDED, VANTAGE, alignment).corner
    assert corner.low_px < worst_px(GUIDED, VANTAGE, 12.0, -5.0) < corner.high_px


def test_the_interval_is_that_of_random_axis_errors():
    # Plain Monte Carlo with the exact model, against the fixed set of likely errors.
    rng = np.random.default_rng(2)
    alignment = Alignment(6.0, -4.0, 1.5, 1.0, 0.6)
    covariance = [[2.25, 0.9], [0.9, 1.0]]
    seen = seen_field(Exposures.over_span(GUIDED, VANTAGE), GUIDED, VANTAGE)
    sizes = [
        trails(seen, axis / ARCMIN_PER_RAD, GUIDED, VANTAGE).smear_px()[1].max()
        for axis in rng.multivariate_normal([6.0, -4.0], covariance, 800)
    ]
    corner = judge(GUIDED, VANTAGE, alignment).corner
    low, high = np.quantile(sizes, [0.025, 0.975])
    assert corner.low_px == pytest.approx(low, rel=0.08)
    assert corner.high_px == pytest.approx(high, rel=0.05)


def test_the_parts_of_azimuth_and_altitude_are_those_of_each_alone():
    both = judge(UNGUIDED, AIRLESS, Alignment(5.0, 7.0)).centre
    azimuth = judge(UNGUIDED, AIRLESS, Alignment(5.0, 0.0)).centre
    altitude = judge(UNGUIDED, AIRLESS, Alignment(0.0, 7.0)).centre
    assert both.azimuth_px == pytest.approx(azimuth.total_px, abs=1e-3)
    assert both.altitude_px == pytest.approx(altitude.total_px, abs=1e-3)
    assert both.total_px < both.azimuth_px + both.altitude_px
    assert both.air_px < 2e-3  # diurnal aberration only


def test_guiding_holds_the_guide_star_itself():
    # A guide star in the middle of the field: the centre does not move at all.
    middle = replace(GUIDED, guide_star_to_far_corner_arcmin=None)
    middle = replace(
        middle, guide_star_to_far_corner_arcmin=OPTICS.half_diagonal_rad * ARCMIN_PER_RAD
    )
    smear = judge(middle, VANTAGE, Alignment(60.0, 40.0))
    assert smear.centre.total_px < 1e-6
    assert smear.corner.total_px > 0.1


@pytest.mark.parametrize("task", [GUIDED, UNGUIDED])
def test_the_longest_exposure_just_meets_the_limit(task):
    axis = np.array([8.0, -5.0]) / ARCMIN_PER_RAD
    found = longest_exposure(task, VANTAGE, axis)
    assert not found.is_capped
    assert worst_px(replace(task, exposure_s=found.seconds), VANTAGE, 8.0, -5.0) == pytest.approx(
        task.limit_px, rel=5e-3
    )
    curve = smear_curve(task, VANTAGE, axis, found.seconds * np.array([0.25, 0.5, 1.0, 2.0]))
    worst = np.maximum(curve.centre_px, curve.corner_px)
    assert (np.diff(worst) > 0.0).all()
    assert worst[2] == pytest.approx(task.limit_px, rel=5e-3)


def test_an_exposure_longer_than_the_target_stays_up_is_not_drawn():
    task = replace(UNGUIDED, target=ImagedTarget(0.0, 60.0, 65.0))
    curve = smear_curve(task, VANTAGE, np.zeros(2), [60.0, 5 * 3600.0])
    assert np.isfinite(curve.corner_px[0])
    assert np.isnan(curve.corner_px[1])
    forgiving = replace(GUIDED, target=task.target, limit_px=99.0)
    found = longest_exposure(forgiving, VANTAGE, np.zeros(2))
    assert found.is_capped
    assert found.seconds < 5 * 3600.0
    assert "sets no limit" in found.sentence


@pytest.mark.parametrize(
    "task", [GUIDED, UNGUIDED, replace(UNGUIDED, target=ImagedTarget(5.0, 20.0, 60.0))]
)
def test_the_best_aim_is_no_worse_than_any_between_the_poles(task):
    found = best_aim(task, VANTAGE)
    lift_arcmin = VANTAGE.pole_lift_rad * ARCMIN_PER_RAD
    plain = [worst_px(task, VANTAGE, 0.0, part * lift_arcmin) for part in np.linspace(0, 1, 21)]
    assert found.smear_px <= min(plain) * 1.001
    assert found.at_true_pole_px == pytest.approx(plain[0])
    assert found.at_refracted_pole_px == pytest.approx(plain[-1])
    assert 0.0 <= found.above_true_pole_arcmin <= lift_arcmin * 1.000001
    assert worst_px(task, VANTAGE, 0.0, found.above_true_pole_arcmin) == pytest.approx(
        found.smear_px
    )


@pytest.mark.parametrize("task", [GUIDED, UNGUIDED])
@pytest.mark.parametrize("latitude_deg", [48.0, -33.0, 3.0])
def test_the_map_shows_what_the_exact_model_says(task, latitude_deg):
    vantage = Vantage.of(replace(SITE, latitude_deg=latitude_deg), AIR)
    axis_arcmin = np.array([6.0, -4.0])
    drawn = sky_map(task, vantage, axis_arcmin / ARCMIN_PER_RAD)
    rng = np.random.default_rng(3)
    typical = np.nanmedian(drawn.corner_px)
    for azimuth_deg, altitude_deg in rng.uniform([0.0, 16.0], [360.0, 89.0], (60, 2)):
        row, column = drawn.cell(azimuth_deg, altitude_deg)
        azimuth, altitude = np.deg2rad(drawn.place(row, column))
        hour_angle, dec = np.rad2deg(erfa.ae2hd(azimuth, altitude, vantage.latitude_rad))
        if abs(dec) > 80.0 and task.is_guided:
            continue  # too near the axis to guide about
        here = replace(task, target=ImagedTarget(dec, hour_angle, hour_angle))
        exact = judge(here, vantage, Alignment(*axis_arcmin))
        assert drawn.corner_px[row, column] == pytest.approx(
            exact.corner.total_px, rel=0.02, abs=0.03 * typical
        )
        assert drawn.centre_px[row, column] == pytest.approx(
            exact.centre.total_px, rel=0.02, abs=0.03 * typical
        )


def test_the_map_is_a_disc_of_the_sky_with_north_at_the_last_row():
    drawn = sky_map(UNGUIDED, VANTAGE, np.zeros(2), cells=101)
    assert drawn.corner_px.shape == drawn.centre_px.shape == (101, 101)
    assert np.isnan(drawn.corner_px[0, 0])
    assert np.isfinite(drawn.corner_px[50, 50])
    assert drawn.cell(0.0, 15.0) == (100, 50)
    assert drawn.cell(90.0, 15.0) == (50, 100)
    assert drawn.cell(0.0, 14.0) is None
    assert drawn.place(0, 0) is None
    assert drawn.place(50, 100) == pytest.approx((90.0, 15.0))


@pytest.mark.parametrize(
    ("make", "words"),
    [
        (lambda: ImagedTarget(95.0, 0.0, 1.0), "declination is given as 95°"),
        (lambda: ImagedTarget(float("nan"), 0.0, 1.0), "declination"),
        (lambda: ImagedTarget(10.0, 30.0, 0.0), "order of time"),
        (lambda: Optics(0.0, 3.8, 10, 10), "focal length"),
        (lambda: Optics(50.0, -1.0, 10, 10), "pixel size"),
        (lambda: Optics(5.0, 10.0, 6000, 4000), "more than 60° across"),
        (lambda: Task(TARGET, OPTICS, -3.0), "exposure"),
        (lambda: Task(TARGET, OPTICS, 60.0, 5.0), "from the middle of the field"),
        (lambda: Task(TARGET, OPTICS, 60.0, None, 0.0), "smear allowed"),
        (
            lambda: tolerance(replace(UNGUIDED, target=ImagedTarget(-60.0, 0, 10)), VANTAGE),
            "never above",
        ),
    ],
)
def test_impossible_tasks_are_refused_in_a_sentence(make, words):
    with pytest.raises(UnusableTask, match=words) as raised:
        make()
    assert str(raised.value).endswith(".")


WORDS = [
    (exposure_words(300.0), "5-minute"),
    (exposure_words(90.0), "90-second"),
    (exposure_words(150.0), "2.5-minute"),
    (duration(1.234), "1.2 s"),
    (duration(40.4), "40 seconds"),
    (duration(333.0), "5.5 minutes"),
    (duration(1181.0), "20 minutes"),
    (duration(6000.0), "100 minutes"),
    (pixels(0.001), "less than 0.01 of a pixel"),
    (pixels(0.3), "0.3 of a pixel"),
    (pixels(1.0), "1 pixel"),
    (pixels(12.4), "12 pixels"),
    (near(0.32, 0.5), "0.3 of a pixel"),
    (near(0.47, 0.5), "0.47 of a pixel"),
    (near(0.52, 0.5), "0.52 of a pixel"),
    (arc(9.96), "9.9′"),
    (arc(0.567), "0.56′"),
    (arc(130.0), "2.1°"),
]


@pytest.mark.parametrize(("said", "expected"), WORDS)
def test_words(said, expected):
    assert said == expected
