"""Periodic error of invented drives: found, refused, doubted."""

import numpy as np
import pytest

from core.alignment.driftlog.records import Leg
from core.imaging.tolerance import Alignment
from core.sky.places import hour_angle_and_declination
from core.sky.site import Air, Site
from core.tracking.periodic import analyse
from core.tracking.run import UnusableRun, run_of, run_without_place
from core.tracking.wormperiod import AnalysisCancelled
from tests.core.tracking.drive import START_S, WAVES, noisy_run, star, times, wandering, worm
from tests.truth.mount import camera_offsets_arcsec, lifted, star_vectors

SITE, AIR = Site(48.0, 11.0, 500.0), Air(0.0)


def codes(found):
    return {note.code.value for note in found.notes}


def test_a_still_sky_gives_the_harmonics_back():
    utc_s = times(60.0)
    found = analyse(run_without_place(star(worm(utc_s, 480.0, WAVES), utc_s)), 480.0)
    for wave, (size, _) in zip(found.harmonics, WAVES, strict=False):
        assert wave.amplitude_arcsec == pytest.approx(size, abs=1e-3)
    fine = worm(START_S + np.linspace(0.0, 480.0, 5000), 480.0, WAVES)
    assert found.size.peak_to_peak_arcsec == pytest.approx(np.ptp(fine), abs=0.01)
    assert found.size.rms_arcsec == pytest.approx(np.std(fine), abs=0.01)
    assert [wave.order for wave in found.harmonics if wave.stands_out] == [1, 2, 3]


def test_the_curve_is_the_lead_at_any_time():
    leg = noisy_run(3)
    found = analyse(run_without_place(leg))
    later = START_S + 6.5 * 479.0 + np.linspace(0.0, 479.0, 50)
    np.testing.assert_allclose(found.curve_arcsec(later), worm(later, 479.0, WAVES), atol=1.5)


@pytest.mark.parametrize("dec_deg", [-45.0, 0.0, 60.0])
def test_the_drive_is_measured_at_the_equator_whatever_the_star(dec_deg):
    utc_s = times(40.0)
    leg = star(worm(utc_s, 480.0, WAVES), utc_s, dec_deg=dec_deg)
    assert analyse(run_without_place(leg), 480.0).harmonics[0].amplitude_arcsec == pytest.approx(
        WAVES[0][0], abs=0.01
    )


@pytest.mark.parametrize("waves", [((8.0, 0.0),), ((1.0, 0.0), (6.0, 40.0)), WAVES])
@pytest.mark.parametrize("seed", [1, 2, 3])
def test_the_worm_is_told_from_its_multiples_and_parts(waves, seed):
    found = analyse(run_without_place(noisy_run(seed, minutes=60.0, waves=waves)))
    assert found.period_s == pytest.approx(479.0, rel=0.02)


def test_a_gear_of_its_own_period_is_named_apart():
    leg = noisy_run(5, minutes=90.0)
    leg = star(leg.east_arcsec + 1.5 * np.sin(2 * np.pi * leg.utc_s / 131.7), leg.utc_s)
    found = analyse(run_without_place(leg))
    assert [other.period_s for other in found.other_periods] == pytest.approx([131.7], rel=0.01)
    assert found.other_periods[0].amplitude_arcsec == pytest.approx(1.5, abs=0.3)


def test_air_alone_holds_no_period():
    utc_s = times(60.0)
    for seed in range(8):
        rng = np.random.default_rng(seed)
        leg = star(wandering(rng, utc_s.size, 2.0, 3.0, 0.7), utc_s)
        with pytest.raises(UnusableRun, match=r"stands out of the noise|slower than a third"):
            analyse(run_without_place(leg))


def test_fewer_than_three_turns_are_refused_with_the_time_needed():
    with pytest.raises(UnusableRun, match=r"1\.9 turns.*at least 24 minutes"):
        analyse(run_without_place(noisy_run(1, minutes=15.0)), 479.0)
    with pytest.raises(UnusableRun):
        analyse(run_without_place(noisy_run(1, minutes=15.0)))


@pytest.mark.parametrize(("period_s", "words"), [(8.0, "480 s"), (0.01, "cannot be"), (1e5, "be")])
def test_minutes_taken_for_seconds_are_recognised(period_s, words):
    with pytest.raises(UnusableRun, match=words):
        analyse(run_without_place(noisy_run(1)), period_s)


def test_a_wrong_period_is_doubted():
    found = analyse(run_without_place(noisy_run(1, minutes=60.0)), 400.0)
    assert "another period" in codes(found)
    assert "another period" not in codes(analyse(run_without_place(noisy_run(1)), 479.0))


def test_irregular_readings_and_gaps_are_borne():
    whole = noisy_run(8, minutes=80.0, interval_s=1.0)
    rng = np.random.default_rng(1)
    kept = rng.random(whole.utc_s.size) < 0.4
    kept[1500:1900] = False
    utc_s, lead = whole.utc_s[kept], whole.east_arcsec[kept].copy()
    lead[utc_s > whole.utc_s[1700]] += 40.0  # centred anew
    found = analyse(run_without_place(star(lead, utc_s)))
    assert found.period_s == pytest.approx(479.0, rel=0.02)
    assert found.harmonics[0].amplitude_arcsec == pytest.approx(8.0, abs=0.5)
    assert "gap" in codes(found)


def test_a_bump_and_gusts_do_not_spoil_the_curve():
    leg = noisy_run(9, minutes=60.0)
    lead = leg.east_arcsec.copy()
    lead[1000:] += 12.0
    lead[[100, 700, 1500]] += 25.0
    found = analyse(run_without_place(star(lead, leg.utc_s)))
    assert {"bumps", "gusts"} <= codes(found)
    assert found.harmonics[0].amplitude_arcsec == pytest.approx(8.0, abs=0.4)


def flipped(sign):
    leg = noisy_run(10, minutes=90.0)
    lead, utc_s = leg.east_arcsec.copy(), leg.utc_s
    after = utc_s > START_S + 55 * 60.0
    shift_s = 0.0 if sign < 0 else 170.0
    lead[after] = sign * worm(utc_s[after] + shift_s, 479.0, WAVES) + leg.north_arcsec[after]
    kept = ~((utc_s > START_S + 52 * 60.0) & (utc_s < START_S + 55 * 60.0))
    return star(lead[kept], utc_s[kept])


@pytest.mark.parametrize(("sign", "code"), [(1.0, "phase lost"), (-1.0, "flip with camera")])
def test_a_flip_inside_the_run_is_found_and_the_longer_part_used(sign, code):
    found = analyse(run_without_place(flipped(sign)), 479.0)
    assert code in codes(found)
    assert found.utc_s[-1] < START_S + 53 * 60.0
    assert found.harmonics[0].amplitude_arcsec == pytest.approx(8.0, abs=0.4)


def guided(rng, lead, utc_s, every=2, gain=0.6):
    """A simple loop: every second reading corrects the next by a share of what it saw."""
    air = wandering(rng, utc_s.size, 2.0, 2.0, 0.7)
    seen, correction = np.empty_like(lead), 0.0
    for i in range(lead.size):
        seen[i] = lead[i] - correction + air[i]
        if i % every == 0:
            correction += gain * seen[i]
    return seen


@pytest.mark.parametrize("seed", range(4))
def test_guiding_left_on_is_recognised(seed):
    rng = np.random.default_rng(seed)
    utc_s = times(90.0)
    leg = star(guided(rng, worm(utc_s, 479.0, WAVES), utc_s), utc_s)
    assert "guiding left on" in codes(analyse(run_without_place(leg), 479.0))


def displaced(azimuth_arcmin, altitude_arcmin, hour_angle_deg=-60.0, dec_deg=20.0):
    """A leg by the independent truth: skyfield's places, own rotation, no air."""
    now, _ = hour_angle_and_declination(0.0, dec_deg, SITE, np.array([START_S]))
    ra_deg = float(np.rad2deg(now[0]) - hour_angle_deg) % 360.0
    utc_s = times(40.0)
    seen = lifted(star_vectors(ra_deg, dec_deg, 48.0, 11.0, 500.0, utc_s), lambda h: 0.0 * h)
    north, east = camera_offsets_arcsec(seen, 48.0, azimuth_arcmin, altitude_arcmin, utc_s)
    rng = np.random.default_rng(4)
    air = [wandering(rng, utc_s.size, 2.0, 2.0, 0.5) for _ in range(2)]
    lead = worm(utc_s, 480.0, WAVES) * np.cos(np.deg2rad(dec_deg))
    return Leg("1", ra_deg, dec_deg, utc_s, north + air[0], east + lead + air[1])


def test_the_drift_of_the_axis_is_taken_out_by_the_model():
    found = analyse(run_of(displaced(30.0, -40.0), SITE, AIR, Alignment(30.0, -40.0)), 480.0)
    assert abs(found.drift_arcsec_per_min) < 0.05
    assert found.harmonics[0].amplitude_arcsec == pytest.approx(8.0, abs=0.4)
    assert codes(found) <= {"guiding perhaps left on"}  # a drive that never wanders


def test_without_the_axis_a_curve_takes_its_drift_and_that_is_said():
    found = analyse(run_of(displaced(30.0, -40.0), SITE, AIR), 480.0)
    assert "axis unknown" in codes(found)
    assert found.harmonics[0].amplitude_arcsec == pytest.approx(8.0, abs=0.4)


def test_reversed_signs_are_recognised():
    leg = displaced(30.0, -40.0)
    wrong = Leg("1", leg.ra_deg, leg.dec_deg, leg.utc_s, -leg.north_arcsec, -leg.east_arcsec)
    found = analyse(run_of(wrong, SITE, AIR, Alignment(30.0, -40.0)), 480.0)
    assert {"sign of east", "sign of north"} <= codes(found)


def test_the_solar_rate_is_recognised():
    leg = displaced(0.0, 0.0)
    behind = -(15.0411 - 15.0) * (leg.utc_s - leg.utc_s[0]) * np.cos(np.deg2rad(20.0))
    slow = Leg("1", leg.ra_deg, leg.dec_deg, leg.utc_s, leg.north_arcsec, leg.east_arcsec + behind)
    found = analyse(run_of(slow, SITE, AIR, Alignment(0.0, 0.0)), 480.0)
    assert any("solar rate" in str(note) for note in found.notes)


def test_runs_without_what_is_needed_are_refused_in_a_sentence():
    utc_s = times(40.0)
    north_only = Leg("a", 1.0, 2.0, utc_s, np.zeros_like(utc_s))
    with pytest.raises(UnusableRun, match="east_arcsec"):
        run_without_place(north_only)
    with pytest.raises(UnusableRun, match="nearer the celestial equator"):
        run_without_place(star(np.zeros_like(utc_s), utc_s, dec_deg=88.0))
    with pytest.raises(UnusableRun, match="10 readings"):
        run_without_place(star(np.zeros(10), utc_s[:10]))
    with pytest.raises(UnusableRun, match="never change"):
        run_without_place(star(np.zeros_like(utc_s), utc_s))
    slow = START_S + 60.0 * (utc_s - START_S)
    with pytest.raises(UnusableRun, match="unit of the times"):
        run_without_place(star(worm(utc_s, 479.0, WAVES), slow))
    with pytest.raises(UnusableRun, match="do not increase"):
        run_without_place(star(np.zeros_like(utc_s), utc_s[::-1]))


def test_the_work_can_be_watched_and_stopped():
    run = run_without_place(noisy_run(1))
    shares = []
    analyse(run, keep_going=lambda share: shares.append(share) or True)
    assert shares == sorted(shares)
    assert shares[-1] == 1.0
    with pytest.raises(AnalysisCancelled):
        analyse(run, keep_going=lambda share: share < 0.2)
