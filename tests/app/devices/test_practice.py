"""The practice sky runs by a timer, repeats by seed and obeys its bolts."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
import pytest
from pytestqt.qtbot import QtBot

from app.devices.practice import PracticeSource
from app.devices.source import Reading
from core.practice.simulation import (
    MEADOW_AIR,
    NORTHERN_MEADOW,
    PracticeMount,
    coming_midnight_utc_s,
)

START_UTC_S = coming_midnight_utc_s(1_795_521_600.0, NORTHERN_MEADOW.longitude_deg)


def practice(seed: int = 3) -> PracticeSource:
    mount = PracticeMount.hidden(np.random.default_rng(seed))
    return PracticeSource(mount, NORTHERN_MEADOW, MEADOW_AIR, START_UTC_S, seed)


def set_first_star(source: PracticeSource) -> None:
    star = source.suggestions()[0]
    source.set_star(star.name, star.ra_deg, star.dec_deg)


@pytest.fixture
def source(qtbot: QtBot) -> Iterator[PracticeSource]:
    source = practice()
    yield source
    source.stop()
    qtbot.wait(0)


def taken(source: PracticeSource, count: int) -> list[Reading]:
    readings: list[Reading] = []
    source.reading.connect(readings.append)
    for _ in range(count):
        source.advance()
    source.reading.disconnect(readings.append)
    return readings


def test_the_timer_delivers_readings_two_simulated_seconds_apart(
    qtbot: QtBot, source: PracticeSource
) -> None:
    set_first_star(source)
    source.set_speed(60.0)
    times: list[float] = []
    source.reading.connect(lambda reading: times.append(reading.utc_s))
    with qtbot.waitSignals([source.reading] * 5):
        source.start()
    source.stop()
    assert times[:5] == [START_UTC_S + 2.0 * i for i in range(1, 6)]
    assert source.utc_s == times[-1]


@pytest.mark.parametrize(("factor", "speed"), [(1, 1), (10, 10), (60, 60), (0, 1), (1000, 60)])
def test_speeds_stay_between_one_and_sixty(
    source: PracticeSource, factor: float, speed: float
) -> None:
    source.set_speed(factor)
    assert source.speed == speed


def test_time_passes_without_a_star_but_nothing_is_read(source: PracticeSource) -> None:
    assert taken(source, 10) == []
    assert source.utc_s == START_UTC_S + 20.0


def test_a_seed_repeats_the_night() -> None:
    nights = []
    for _ in range(2):
        source = practice(11)
        set_first_star(source)
        nights.append(taken(source, 20))
    assert nights[0] == nights[1]
    assert nights[0] != taken(practice(12), 20)


def test_bolts_move_the_star_in_view_and_the_axis(source: PracticeSource) -> None:
    set_first_star(source)
    before = taken(source, 400)
    azimuth, altitude = source.reveal()
    assert abs(before[-1].north_arcsec) > 10.0
    for _ in range(3):  # as someone would who was told the truth each time
        source.turn_azimuth(-source.reveal()[0])
        source.turn_altitude(-source.reveal()[1])
    moved = taken(source, 1)[0]
    sky_arcmin = np.hypot(azimuth * np.cos(np.radians(47.0)), altitude)
    shift_arcmin = np.hypot(
        moved.north_arcsec - before[-1].north_arcsec, moved.east_arcsec - before[-1].east_arcsec
    )
    assert 0.2 * sky_arcmin < shift_arcmin / 60.0 < 2.0 * sky_arcmin
    set_first_star(source)  # centred again
    after = taken(source, 400)
    assert abs(after[0].north_arcsec) < 4.0
    assert np.hypot(*source.reveal()) < 0.1 * np.hypot(azimuth, altitude)
    assert abs(after[-1].north_arcsec) < 0.5 * abs(before[-1].north_arcsec)
