"""From the practice sky through the session and the real solution to the truth."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from pytestqt.qtbot import QtBot

from app.devices.practice import PracticeSource
from app.night.question import work_out
from app.night.session import Session
from app.night.snapshot import Snapshot
from core.practice.simulation import (
    LARGEST_BACKLASH_ARCMIN,
    LARGEST_SCALE_ERROR,
    MEADOW_AIR,
    NORTHERN_MEADOW,
    SOUTHERN_MEADOW,
    PracticeMount,
    coming_midnight_utc_s,
)
from tests.app.night.heard import heard

from .conftest import Begin

NOON_UTC_S = 1_795_521_600.0
PATIENCE_MS = 20_000
WHERE = ("near the meridian", "low in the east")


class PracticeNight:
    """A session that watches a practice mount of one seed, in one hemisphere or the other."""

    def __init__(self, begin: Begin, seed: int) -> None:
        self.session: Session = begin(work_out)
        site = (NORTHERN_MEADOW, SOUTHERN_MEADOW)[seed % 2]
        start_utc_s = coming_midnight_utc_s(NOON_UTC_S, site.longitude_deg) + 3600.0 * seed
        mount = PracticeMount.hidden(np.random.default_rng(seed))
        self.source = PracticeSource(mount, site, MEADOW_AIR, start_utc_s, seed)
        self.session.set_site(site, MEADOW_AIR)
        self.source.reading.connect(self.session.add_reading)

    def watch(self, where: str) -> str:
        star = next(star for star in self.source.suggestions() if star.where.value == where)
        self.source.set_star(star.name, star.ra_deg, star.dec_deg)
        return self.session.begin_leg(star.name, star.ra_deg, star.dec_deg)

    def misses_in_half_widths(self) -> tuple[float, float]:
        solution = heard(self.session).solution
        assert solution is not None
        azimuth, altitude = self.source.reveal()
        return (
            (solution.azimuth_error_arcmin - azimuth)
            / (solution.azimuth_interval_factor * solution.azimuth_sigma_arcmin),
            (solution.altitude_error_arcmin - altitude)
            / (solution.altitude_interval_factor * solution.altitude_sigma_arcmin),
        )


def knows(label: str, readings: int) -> Callable[[Snapshot], bool]:
    """Whether a snapshot's solution rests on at least so many readings of a leg."""

    def check(snapshot: Snapshot) -> bool:
        legs = () if snapshot.solution is None else snapshot.solution.legs
        return any(leg.label == label and leg.sample_count >= readings for leg in legs)

    return check


def watch_by_the_timer(qtbot: QtBot, night: PracticeNight, readings: int) -> None:
    night.source.set_speed(60.0)
    for where in WHERE:
        label = night.watch(where)
        left = iter(range(readings - 1, -1, -1))
        stop = night.source.reading.connect(lambda _, left=left: next(left) or night.source.stop())
        with qtbot.waitSignal(
            night.session.changed, timeout=PATIENCE_MS, check_params_cb=knows(label, readings)
        ):
            night.source.start()
        night.source.reading.disconnect(stop)


def watch_at_once(qtbot: QtBot, night: PracticeNight, readings: int) -> None:
    for where in WHERE:
        label = night.watch(where)
        for _ in range(readings):
            night.source.advance()
    with qtbot.waitSignal(
        night.session.changed, timeout=PATIENCE_MS, check_params_cb=knows(label, readings)
    ):
        pass


def test_a_night_at_sixty_times_brings_the_axis_to_the_pole(qtbot: QtBot, begin: Begin) -> None:
    night = PracticeNight(begin, 2)
    before = np.array(night.source.reveal())
    for _ in range(2):
        watch_by_the_timer(qtbot, night, 60)
        solution = heard(night.session).solution
        assert solution is not None
        assert max(map(abs, night.misses_in_half_widths())) < 2.0
        turn = -np.array([solution.azimuth_error_arcmin, solution.altitude_error_arcmin])
        night.source.turn_azimuth(turn[0])
        night.source.turn_altitude(turn[1])
        night.session.bolts_turned()
    unsure = np.array(
        [
            solution.azimuth_interval_factor * solution.azimuth_sigma_arcmin,
            solution.altitude_interval_factor * solution.altitude_sigma_arcmin,
        ]
    )
    left = np.abs(night.source.reveal())
    # No more than the stated ± twice over, the play of the bolts and their error of scale.
    reachable = 2.0 * unsure + LARGEST_BACKLASH_ARCMIN + LARGEST_SCALE_ERROR * np.abs(turn)
    assert np.all(left < reachable)
    assert np.all(left < 0.25 * np.abs(before))


def test_stated_intervals_hold_the_truth_most_of_the_time(qtbot: QtBot, begin: Begin) -> None:
    misses: list[float] = []
    for seed in range(10):
        night = PracticeNight(begin, seed)
        watch_at_once(qtbot, night, 180)
        misses += night.misses_in_half_widths()
        night.session.close()
    # Of 20 intervals of 95 %, 17 or more hold the truth in 98 of 100 such sets.
    assert sum(abs(miss) <= 1.0 for miss in misses) >= 17
    assert max(map(abs, misses)) < 2.0
