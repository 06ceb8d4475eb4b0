"""Guiding, backlash, settling and vibration of invented mounts, in plain words."""

import numpy as np
import pytest

from core.tracking.exposure import Limit
from core.tracking.guidesteps import backlash_of_reversal, settling_after
from core.tracking.guiding import check_guiding, image_motion_arcsec
from core.tracking.run import UnusableRun
from core.tracking.vibration import change_told, load_told, vibration
from tests.core.tracking.drive import START_S, WAVES, wandering, worm

LIMIT = Limit(1.5, 0.5)
UTC_S = START_S + np.arange(0.0, 3600.0, 2.0)


def air(seed, rms=0.4):
    return np.random.default_rng(seed).normal(scale=rms, size=UTC_S.size)


def loop(disturbance, noise, share, late=0):
    """Offsets seen by a guider that corrects a share, `late` readings after the next."""
    seen, correction, queue = [], 0.0, [0.0] * late
    for moved, shake in zip(disturbance, noise, strict=True):
        seen.append(moved - correction + shake)
        queue.append(share * seen[-1])
        correction += queue.pop(0)
    return np.array(seen)


def codes(check):
    return [note.code.value for note in check.findings]


def test_sound_guiding_has_no_findings_and_its_cost_is_told():
    check = check_guiding(UTC_S, air(1), air(2), LIMIT, seeing_fwhm_arcsec=2.5)
    assert codes(check) == []
    assert check.total_rms_arcsec == pytest.approx(0.4 * np.sqrt(2), rel=0.05)
    assert check.total_rms_px == pytest.approx(check.total_rms_arcsec / 1.5)
    # Widths of normal profiles add in squares (convolution; elementary).
    assert check.growth == pytest.approx(np.hypot(1.0, 2.3548 * 0.4 / 2.5) - 1.0, abs=0.01)
    assert check.ratio == pytest.approx(1.0, abs=0.1)


def test_over_correction_swings():
    east = loop(np.zeros(UTC_S.size), air(3), 1.2, late=1)
    assert "swings" in codes(check_guiding(UTC_S, east, air(4), LIMIT))
    sound = loop(np.zeros(UTC_S.size), air(3), 0.5)
    assert codes(check_guiding(UTC_S, sound, air(4), LIMIT)) == []


def test_too_weak_a_correction_lags_and_leaves_the_worm():
    lead = worm(UTC_S, 479.0, WAVES)
    east = loop(lead, air(5), 0.05)
    check = check_guiding(UTC_S, east, air(6), LIMIT, worm_period_s=479.0)
    assert {"lags behind", "worm left over", "right ascension worse"} <= set(codes(check))
    assert check.worm_amplitude_arcsec > 1.0


def test_declination_worse_points_at_backlash():
    check = check_guiding(UTC_S, air(7), 3.0 * air(8), LIMIT)
    assert codes(check) == ["declination worse"]
    assert "acklash" in str(check.findings[0])


def test_too_little_to_judge_is_said():
    with pytest.raises(UnusableRun, match="10 guided readings"):
        check_guiding(UTC_S[:10], air(1)[:10], air(2)[:10], LIMIT)


@pytest.mark.parametrize("seed", range(5))
def test_backlash_is_found_within_its_error(seed):
    rng = np.random.default_rng(seed)
    asked = np.arange(0.0, 30.0, 1.0)
    seen = 0.95 * np.maximum(asked - 11.0, 0.0) + rng.normal(scale=0.3, size=asked.size)
    found = backlash_of_reversal(asked, seen, 7.5)
    assert found.arcsec == pytest.approx(11.0, abs=max(4.0 * found.sigma_arcsec, 0.2))
    assert 0.05 < found.sigma_arcsec < 1.0
    assert found.seconds == pytest.approx(found.arcsec / 7.5)
    assert found.answer == pytest.approx(0.95, abs=0.1)


@pytest.mark.parametrize(("readings", "noise_arcsec"), [(40, 0.4), (15, 1.0), (9, 0.4)])
def test_backlash_errors_are_earned(readings, noise_arcsec):
    rng = np.random.default_rng(9)
    asked = np.linspace(0.0, 39.0, readings)
    within = []
    for _ in range(400):
        play = rng.uniform(10.0, 20.0)
        seen = np.maximum(asked - play, 0.0) + rng.normal(scale=noise_arcsec, size=asked.size)
        found = backlash_of_reversal(asked, seen, 7.5)
        within.append(abs(found.arcsec - play) < found.half_width_arcsec)
    assert 0.92 < np.mean(within) <= 0.99


def test_a_wrong_guide_rate_and_a_dead_axis_are_told_apart():
    asked = np.arange(0.0, 30.0, 1.0)
    assert "guide rate" in str(backlash_of_reversal(asked, 0.4 * asked, 7.5).sentence)
    assert "No declination backlash" in str(backlash_of_reversal(asked, asked, 7.5).sentence)
    with pytest.raises(UnusableRun, match="did not turn back"):
        backlash_of_reversal(asked, 0.0 * asked, 7.5)
    with pytest.raises(UnusableRun, match="guide rate is not known"):
        backlash_of_reversal(asked, asked, float("nan"))
    with pytest.raises(UnusableRun, match="one direction"):
        backlash_of_reversal(asked[::-1], asked, 7.5)


def test_settling_waits_until_the_star_stays():
    seconds = np.arange(0.0, 60.0, 1.0)
    offset = 8.0 * np.exp(-seconds / 5.0)
    offset[15] = 3.0  # it comes back once
    found = settling_after(START_S + seconds, offset, START_S, 1.0)
    assert found.seconds == 16.0
    assert settling_after(START_S + seconds, offset + 2.0, START_S, 1.0).seconds is None
    with pytest.raises(UnusableRun):
        settling_after(START_S + seconds, offset, START_S + 100.0, 1.0)


@pytest.mark.parametrize(("aperture_m", "expected"), [(0.05, 0.485), (0.10, 0.432), (0.20, 0.385)])
def test_image_motion_is_the_published_one(aperture_m, expected):
    # Sarazin & Roddier, Astron. Astrophys. 227, 294 (1990), at 1″ seeing and 500 nm; computed.
    assert image_motion_arcsec(1.0, aperture_m) == pytest.approx(expected, abs=0.001)
    assert image_motion_arcsec(2.5, aperture_m) == pytest.approx(
        expected * 2.5 ** (5.0 / 6.0), rel=0.002
    )


def rung(rng, swing=20.0, frequency=3.1, damping=1.2, noise=0.5, rate=40.0, length=8.0):
    time_s = np.arange(0.0, length, 1.0 / rate)
    since = time_s - 1.0
    ring = swing * np.exp(-since / damping) * np.cos(2 * np.pi * frequency * since)
    return time_s, np.where(since >= 0.0, ring, 0.0) + rng.normal(scale=noise, size=time_s.size)


def test_a_tap_is_measured_within_its_errors():
    rng = np.random.default_rng(10)
    ratios = []
    for _ in range(60):
        found = vibration(*rung(rng), tap_s=1.0)
        settling = 1.2 * np.log(20.0)
        ratios.append(
            (
                (found.frequency_hz - 3.1) / found.frequency_sigma_hz,
                (found.damping_s - 1.2) / found.damping_sigma_s,
                (found.first_swing_arcsec - 20.0) / found.first_swing_sigma_arcsec,
                (found.settling_s - settling) / found.settling_sigma_s,
            )
        )
    held = np.abs(ratios) < 1.96
    assert 0.92 < held.mean() < 0.98


def test_the_tap_is_found_in_the_record():
    found = vibration(*rung(np.random.default_rng(11)))
    assert found.frequency_hz == pytest.approx(3.1, abs=0.05)
    assert found.settling_s == pytest.approx(1.2 * np.log(20.0), abs=0.4)
    assert "3.1 times a second" in str(found.sentence)


def test_nothing_rings_and_too_slow_readings_are_refused():
    rng = np.random.default_rng(12)
    quiet = rng.normal(size=200)
    with pytest.raises(UnusableRun, match="No tap stands out"):
        vibration(np.arange(200) / 20.0, quiet)
    with pytest.raises(UnusableRun, match=r"Nothing rings|too fast"):
        vibration(np.arange(200) / 20.0, quiet, tap_s=1.0)
    with pytest.raises(UnusableRun, match="too fast"):
        vibration(*rung(rng, rate=7.0, length=20.0, damping=4.0), tap_s=1.0)
    with pytest.raises(UnusableRun, match="at least 30"):
        vibration(np.arange(5.0), np.arange(5.0))


def test_before_and_after_and_the_load():
    rng = np.random.default_rng(13)
    before, after = (vibration(*rung(rng, damping=d), tap_s=1.0) for d in (1.5, 0.5))
    assert "helped" in str(change_told(before, after))
    assert "harm" in str(change_told(after, before))
    assert "no change" in str(change_told(before, before))
    assert "overloaded" in str(load_told(12.0, 10.0))
    assert "common practice" in str(load_told(8.0, 10.0))
    assert "within the 60 %" in str(load_told(5.0, 10.0))
    with pytest.raises(UnusableRun):
        load_told(5.0, 0.0)


def test_a_slow_wander_is_not_a_swing():
    rng = np.random.default_rng(14)
    east = wandering(rng, UTC_S.size, 2.0, 30.0, 0.5) + air(15, 0.1)
    assert codes(check_guiding(UTC_S, east, east[::-1].copy(), LIMIT)) == [
        "lags behind",
        "lags behind",
    ]
