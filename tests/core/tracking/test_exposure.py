"""Smear, training and guiding against brute force on invented drives."""

from functools import cache

import numpy as np
import pytest

from core.imaging.task import ImagedTarget, Optics, Task, Vantage
from core.imaging.tolerance import Alignment, longest_exposure
from core.sky.refraction import Refraction
from core.tracking.exposure import (
    LENGTHS_S,
    Limit,
    SteadyDrift,
    chance_curves,
    chance_within,
    polar_part,
    smears_arcsec,
)
from core.tracking.motion import Drive, Guiding, Motion, guided, motion
from core.tracking.periodic import analyse
from core.tracking.run import UnusableRun, run_without_place
from core.tracking.training import training, training_csv
from tests.core.tracking.drive import START_S, WAVES, noisy_run, star, times, wandering, worm


def moving(east, north, step_s=1.0, breaks=()):
    turn = np.arange(east.size) // 100
    return Motion(step_s, np.asarray(east, float), np.asarray(north, float), breaks, turn)


def brute_smear(east, north, start, steps):
    """Light spread evenly along the broken line, each step laid out with many points."""
    at = np.linspace(start, start + steps, 4000)
    places = np.stack([np.interp(at, np.arange(v.size), v) for v in (east, north)])
    return np.sqrt(12.0 * np.linalg.eigvalsh(np.cov(places, bias=True))[-1])


def test_smears_are_those_of_light_laid_out_along_the_path():
    rng = np.random.default_rng(1)
    east, north = np.cumsum(rng.normal(size=(2, 500)), axis=1)
    smears, starts = smears_arcsec(moving(east, north), 37.0)
    for index in (0, 100, 333, 462):
        assert smears[index] == pytest.approx(brute_smear(east, north, starts[index], 37), rel=2e-3)


def test_a_steady_drift_smears_its_own_length():
    smears, _ = smears_arcsec(moving(np.zeros(300), np.zeros(300)), 60.0, SteadyDrift(3.0, 4.0))
    np.testing.assert_allclose(smears, 5.0, rtol=1e-6)


def test_no_exposure_reaches_over_a_break():
    east = np.append(np.zeros(100), np.full(100, 50.0))
    smears, starts = smears_arcsec(moving(east, 0 * east, breaks=(100,)), 30.0)
    assert smears.max() < 1e-4  # what is left of running sums
    assert not np.any((starts < 100) & (starts + 30 >= 100))


@pytest.mark.parametrize("exposure_s", [20.0, 60.0, 150.0])
def test_chances_are_those_of_exposures_drawn_at_random(exposure_s):
    # Brute force: the true drive, exposures begun at random, light added up point by point.
    found, run = analysed()
    path = motion(found, run, Drive.UNGUIDED)
    limit = 3.0
    drift = SteadyDrift(0.5, -1.0)
    chance = chance_within(path, exposure_s, limit, drift)
    rng = np.random.default_rng(2)
    fine = np.linspace(0.0, exposure_s, 200)
    good = 0
    for start in rng.uniform(0.0, 20000.0, 3000):
        lead = worm(START_S + start + fine, 479.0, WAVES)
        east = lead + 0.5 / 60.0 * fine
        spread = np.cov(np.stack([east, -1.0 / 60.0 * fine]), bias=True)
        good += np.sqrt(12.0 * np.linalg.eigvalsh(spread)[-1]) <= limit
    assert chance.share == pytest.approx(good / 3000, abs=0.06)


@cache
def analysed():
    run = run_without_place(noisy_run(21, minutes=100.0, slow=0.15))
    return analyse(run, 479.0), run


def test_training_predicts_what_later_turns_show():
    # A drive whose turns differ; trained on eight turns, judged on the twelve that follow.
    ratios = []
    for seed in range(8):
        rng = np.random.default_rng(seed)
        utc_s = times(20 * 479.0 / 60.0)
        own = worm(utc_s, 479.0, WAVES) + wandering(rng, utc_s.size, 2.0, 60.0, 1.0)
        air = [wandering(rng, utc_s.size, 2.0, 2.0, 0.7) for _ in range(2)]
        first = utc_s < START_S + 8 * 479.0
        run = run_without_place(star((own + air[0])[first], utc_s[first], north=air[1][first]))
        found = analyse(run, 479.0)
        told = training(found, run)
        later = (
            own[~first]
            - found.folded.mean_arcsec[
                ((((utc_s[~first] - found.epoch_utc_s) / 479.0) % 1.0) * 60).astype(int)
            ]
        )
        ratios.append(told.residual_rms_arcsec / np.std(later))
        assert told.repeating_rms_arcsec == pytest.approx(
            np.std(worm(utc_s, 479.0, WAVES)), rel=0.1
        )
        assert told.air_is_known
    assert np.mean(ratios) == pytest.approx(1.0, abs=0.12)


def test_the_mean_curve_is_written_with_its_signs():
    found, _ = analysed()
    lines = training_csv(found).splitlines()
    rows = [line for line in lines if not line.startswith("#")]
    assert rows[0] == "place_s,curve_arcsec,mean_arcsec,scatter_arcsec,turns"
    assert len(rows) == 61
    place, curve, mean, *_ = np.array([row.split(",") for row in rows[1:]], dtype=float).T
    truth = worm(found.epoch_utc_s + place, 479.0, WAVES)
    np.testing.assert_allclose(curve, truth, atol=0.6)
    np.testing.assert_allclose(mean - mean.mean(), truth - truth.mean(), atol=1.0)


def test_too_few_turns_cannot_say_what_training_brings():
    run = run_without_place(noisy_run(1, minutes=26.0))
    with pytest.raises(UnusableRun, match="whole turns"):
        training(analyse(run, 479.0), run)


def test_guiding_settles_on_the_lag_of_a_steady_drift():
    # Closed form: a star drifting r per interval, corrected by a share g of what was seen, is left
    # r/g behind at each measurement (Σ of a geometric series); derived.
    drift = 0.4 * np.arange(4000) / 4.0  # 0.4″ an interval of four steps
    left = guided(moving(drift, 0 * drift, 0.25), Guiding(1.0, 0.0, 0.5, 0.0))
    late = left.east_arcsec[-400:].reshape(-1, 4)
    seen = late.mean(axis=1)
    np.testing.assert_allclose(seen, 0.4 / 0.5, rtol=0.02)
    assert np.ptp(late, axis=1).max() == pytest.approx(0.3, abs=0.01)


def test_guiding_acts_as_a_loop_written_out_by_hand():
    rng = np.random.default_rng(3)
    path = np.cumsum(rng.normal(scale=0.2, size=600))
    left = guided(moving(path, 0 * path, 0.5), Guiding(2.0, 1.0, 0.6, 0.0)).east_arcsec
    correction, due, out = 0.0, {}, []
    seen = []
    for i, value in enumerate(path - path[0]):
        correction += due.pop(i, 0.0)
        out.append(value - correction)
        seen.append(out[-1])
        if i % 4 == 3:  # an interval is over: its mean is known, due two steps after its middle
            middle = i - 1
            at = max(middle + 2, i + 1)
            due[at] = due.get(at, 0.0) + 0.6 * np.mean(seen[-4:])
    np.testing.assert_allclose(left, out, atol=1e-9)


def test_too_strong_a_correction_makes_it_worse():
    still = np.zeros(8000)
    calm, wild = (
        guided(moving(still, still, 0.25), Guiding(1.0, 0.5, share, 0.3)).east_arcsec.std()
        for share in (0.4, 1.6)
    )
    assert wild > 2.0 * calm


OPTICS = Optics(800.0, 3.8, 3000, 2000)
VANTAGE = Vantage(np.deg2rad(48.0), Refraction(0.0, 0.0))


def test_a_perfect_drive_is_limited_as_the_budget_says():
    task = Task(ImagedTarget(20.0, -0.1, 0.1), Optics(800.0, 3.8, 1, 1), 60.0, limit_px=0.5)
    alignment = Alignment(6.0, -4.0)
    drift = polar_part(task, VANTAGE, alignment)
    budget = longest_exposure(task, VANTAGE, alignment.axis_rad).seconds
    limit = Limit(task.optics.scale_arcsec_per_px, 0.5)
    still = moving(np.zeros(4000), np.zeros(4000))
    assert chance_within(still, 0.96 * budget, limit.arcsec, drift).share == 1.0
    assert chance_within(still, 1.04 * budget, limit.arcsec, drift).share == 0.0


def test_guided_the_field_still_turns():
    corner = OPTICS.half_diagonal_rad * 3437.7
    task = Task(ImagedTarget(60.0, -10.0, 10.0), OPTICS, 300.0, 2.0 * corner, limit_px=0.5)
    drift = polar_part(task, VANTAGE, Alignment(150.0, 0.0))
    assert drift.east_arcsec_per_min == drift.north_arcsec_per_min == 0.0
    budget = longest_exposure(task, VANTAGE, Alignment(150.0, 0.0).axis_rad).seconds
    smears, _ = smears_arcsec(moving(np.zeros(9000), np.zeros(9000)), budget, drift)
    assert smears[0] == pytest.approx(0.5 * OPTICS.scale_arcsec_per_px, rel=0.05)


def test_training_and_guiding_allow_longer_exposures():
    found, run = analysed()
    curves = chance_curves(
        found,
        run,
        Limit(1.0, 2.0),
        declination_deg=20.0,
        unguided_drift=SteadyDrift(0.2, 0.3),
        guiding=Guiding(3.0, 1.0, 0.6, 0.2),
    )
    plain, trained, held = curves
    assert [curve.drive for curve in curves] == list(Drive)
    assert plain.longest_s < trained.longest_s < held.longest_s
    known = np.isfinite(plain.chance)
    assert np.all(np.diff(plain.chance[known]) < 0.02)
    assert np.all((plain.low <= plain.chance) | ~known)
    assert LENGTHS_S.size == plain.chance.size
    assert "nine in ten" in str(plain.sentence)


@pytest.mark.parametrize(
    ("make", "words"),
    [
        (lambda: Limit(0.0), "image scale"),
        (lambda: Limit(float("nan")), "image scale"),
        (lambda: Guiding(2000.0, 1.0), "interval"),
        (lambda: Guiding(2.0, 500.0), "milliseconds"),
        (lambda: Guiding(2.0, 0.5, 3.0), "overshoots"),
    ],
)
def test_settings_nobody_has_are_refused_in_a_sentence(make, words):
    with pytest.raises(UnusableRun, match=words):
        make()
