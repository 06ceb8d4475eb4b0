"""Chances of a sharp exposure, trained and guided, against drives simulated to the end.

The truth is a drive whose worm and wander are known at every moment, a training and a guider
written out by hand here; exposures begin at random in a night the analysis never saw.
"""

import numpy as np
import pytest

from core.tracking.exposure import Limit, chance_curves
from core.tracking.motion import Drive, Guiding
from core.tracking.periodic import analyse
from core.tracking.run import run_without_place

from .drive import START_S, WAVES, star, times, wandering, worm

PERIOD_S = 479.0
LIVELY, SLOW = (80.0, 1.0), (300.0, 0.5)  # wander: its memory in seconds, its size in arcsec
STEP_S = 0.25
LIMITS_ARCSEC = (0.8, 1.0, 1.2, 1.5, 1.8, 2.2, 2.7, 3.5, 5.0)
NIGHTS = 12  # analysed; one run has too few turns for its own wander to be the usual one


def analysed(seed, wander, minutes=100.0, air_arcsec=0.5):
    rng = np.random.default_rng(seed)
    utc_s = times(minutes)
    air = [wandering(rng, utc_s.size, 2.0, 2.0, air_arcsec) for _ in range(2)]
    own = worm(utc_s, PERIOD_S, WAVES) + wandering(rng, utc_s.size, 2.0, *wander)
    run = run_without_place(star(own + air[0], utc_s, north=air[1]))
    return analyse(run, PERIOD_S), run


def told(drive, limit_arcsec, exposure_s, guiding=None, wander=LIVELY):
    """Mean over some analysed nights of the chance that is stated."""
    chances = []
    for seed in range(NIGHTS):
        found, run = analysed(seed, wander)
        (curve,) = chance_curves(
            *(found, run, Limit(1.0, limit_arcsec)),
            declination_deg=0.0,
            guiding=guiding,
            exposure_s=[exposure_s],
            drives=(drive,),
        )
        chances.append(float(curve.chance[0]))
    return np.mean(chances)


def new_night(seed, with_worm, wander=LIVELY):
    rng = np.random.default_rng(seed)
    time = np.arange(0.0, 20_000.0, STEP_S)
    own = wandering(rng, time.size, STEP_S, *wander)
    return own + worm(START_S + time, PERIOD_S, WAVES) if with_worm else own


def sharp(east, north, exposure_s, limit_arcsec):
    """Share of exposures begun at random whose light is spread over no more than the limit."""
    rng = np.random.default_rng(9)
    steps, good = round(exposure_s / STEP_S), 0
    starts = rng.integers(0, east.size - steps, 1500)
    for start in starts:
        place = np.stack([part[start : start + steps + 1] for part in (east, north)])
        spread = np.cov(place, bias=True)
        good += np.sqrt(12.0 * np.linalg.eigvalsh(spread)[-1]) <= limit_arcsec
    return good / starts.size


def guided_by_hand(path, guiding, rng):
    """Mean of each interval measured, a share of it taken back the delay after its middle."""
    each, late = round(guiding.interval_s / STEP_S), round(guiding.delay_s / STEP_S)
    left, level, due = np.empty_like(path), 0.0, {}
    for start in range(0, path.size, each):
        for at in range(start, min(start + each, path.size)):
            level += due.pop(at, 0.0)
            left[at] = path[at] - path[0] - level
        seen = left[start : start + each].mean() + rng.normal(0.0, guiding.noise_arcsec)
        at = max(start + each // 2 + late, start + each)
        due[at] = due.get(at, 0.0) + guiding.share * seen
    return left


@pytest.mark.parametrize(
    ("wander", "exposure_s", "limit_arcsec"),
    [(LIVELY, 60.0, 1.5), (LIVELY, 150.0, 2.0), (SLOW, 60.0, 0.5), (SLOW, 150.0, 0.6)],
)
def test_trained_chances_are_those_of_a_drive_without_its_worm(wander, exposure_s, limit_arcsec):
    own = new_night(50, with_worm=False, wander=wander)
    truth = sharp(own, 0.0 * own, exposure_s, limit_arcsec)
    assert 0.15 < truth < 0.9
    stated = told(Drive.TRAINED, limit_arcsec, exposure_s, wander=wander)
    assert stated == pytest.approx(truth, abs=0.12)


@pytest.mark.parametrize(
    "guiding",
    [Guiding(2.0, 1.0, 0.6, 0.3), Guiding(6.0, 3.0, 0.6, 0.3), Guiding(4.0, 6.0, 0.4, 0.3)],
    ids=["quick", "slow", "late"],
)
def test_guided_chances_are_those_of_a_loop_on_the_true_drive(guiding):
    exposure_s = 120.0
    path = new_night(51, with_worm=True)
    rng = np.random.default_rng(7)
    east = guided_by_hand(path, guiding, rng)
    north = guided_by_hand(0.0 * path, guiding, rng)
    shares = np.array([sharp(east, north, exposure_s, limit) for limit in LIMITS_ARCSEC])
    at = int(np.argmin(np.abs(shares - 0.5)))
    assert 0.05 < shares[at] < 0.95
    stated = told(Drive.GUIDED, LIMITS_ARCSEC[at], exposure_s, guiding)
    assert stated == pytest.approx(shares[at], abs=0.08)


@pytest.mark.parametrize(
    ("every_s", "jitter_s", "doubts"), [(1.0, 0.0, False), (10.0, 0.0, True), (1.0, 0.8, True)]
)
def test_a_quick_guider_is_not_judged_by_seldom_or_uneven_readings(every_s, jitter_s, doubts):
    rng = np.random.default_rng(1)
    utc_s = times(100.0, every_s)
    utc_s = utc_s + rng.uniform(0.0, jitter_s, utc_s.size)
    lead = worm(utc_s, PERIOD_S, WAVES) + wandering(rng, utc_s.size, every_s, *LIVELY)
    run = run_without_place(star(lead, utc_s, north=wandering(rng, utc_s.size, every_s, 2.0, 0.5)))
    (curve,) = chance_curves(
        *(analyse(run, PERIOD_S), run, Limit(1.0, 2.0)),
        declination_deg=0.0,
        guiding=Guiding(2.0, 1.0, 0.6, 0.3),
        drives=(Drive.GUIDED,),
    )
    assert ("too hopeful" in str(curve.sentence)) is doubts


def test_the_band_of_a_chance_knows_what_one_run_cannot_tell_from_the_air():
    wander, exposure_s, limit_arcsec = (80.0, 0.5), 120.0, 0.95
    own = np.concatenate(
        [new_night(seed, with_worm=False, wander=wander) for seed in range(60, 66)]
    )
    truth = sharp(own, 0.0 * own, exposure_s, limit_arcsec)
    assert 0.3 < truth < 0.7
    held = []
    for seed in range(24):
        found, run = analysed(seed, wander, minutes=60.0, air_arcsec=0.7)
        (curve,) = chance_curves(
            *(found, run, Limit(1.0, limit_arcsec)),
            declination_deg=0.0,
            exposure_s=[exposure_s],
            drives=(Drive.TRAINED,),
        )
        held.append(curve.low[0] <= truth <= curve.high[0])
    assert np.mean(held) > 0.8  # without the doubt of the air in the band one in two
