"""What goes into the log of nights comes out of it at the next start."""

from __future__ import annotations

import sqlite3
import time
from collections.abc import Iterator
from contextlib import closing, contextmanager
from enum import Enum
from pathlib import Path

import numpy as np
import pytest

from app.store.nights import NightLog
from app.store.schema import VERSION
from core.sky.site import Air, Site

EVENING_UTC_S = 1_795_550_400.0
HOUR_S = 3600.0
ORION = ("east 1", "Bellatrix", 81.28, 6.35)


class Pole(Enum):
    """Stands in for the choice of pole: the log keeps the name only."""

    TRUE_POLE = 1


class Program:
    """A run of the program: its clock, and what the log told it."""

    def __init__(self) -> None:
        self.now_utc_s = EVENING_UTC_S
        self.troubles: list[str | None] = []
        self.notices: list[str] = []

    @contextmanager
    def log(self, path: Path) -> Iterator[NightLog]:
        log = NightLog.open(
            path, lambda: self.now_utc_s, self.troubles.append, self.notices.append, retry_s=0.02
        )
        try:
            yield log
        finally:
            assert log.close()


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "log" / "nights.sqlite3"


@pytest.fixture
def program() -> Iterator[Program]:
    program = Program()
    yield program
    assert program.troubles == []
    assert program.notices == []


def test_a_night_comes_back_as_it_was(path: Path, program: Program) -> None:
    site, air = Site(48.1, 11.6, 520.0, "hill"), Air(950.0, -4.0, pressure_is_assumed=True)
    times = EVENING_UTC_S + np.arange(5.0)
    with program.log(path) as log:
        begun = log.resume_or_begin_night(EVENING_UTC_S)
        log.set_site(site, air)
        log.set_aim(Pole.TRUE_POLE)
        log.set_target(1.5)
        first = log.add_leg(*ORION)
        log.add_samples(first, times, np.arange(5.0), np.array([1.0, np.nan, 3.0, 4.0, 5.0]))
        log.end_leg(first)
        log.discard_leg(first)
        log.begin_axis_state()
        second = log.add_leg("south 1", "Diphda", 10.9, -17.99)
        for second_time in times:
            sigma = np.array([0.4])
            log.add_samples(second, np.array([second_time]), np.array([-0.25]), sigma_arcsec=sigma)
        log.delete_last_sample(second)
    assert not begun.resumed

    program.now_utc_s += HOUR_S
    with program.log(path) as log:
        night = log.resume_or_begin_night(program.now_utc_s)
    assert night.resumed
    assert night.night_id == begun.night_id
    assert (night.site, night.air) == (site, air)
    assert (night.aim_name, night.target_arcmin) == ("TRUE_POLE", 1.5)
    assert len(night.axis_states) == 2
    assert night.axis_states[0].axis_state_id == begun.axis_states[0].axis_state_id
    (east,), (south,) = (state.legs for state in night.axis_states)
    assert (east.star_name, east.ended, east.discarded) == ("Bellatrix", True, True)
    assert (east.leg.label, east.leg.ra_deg, east.leg.dec_deg) == ("east 1", 81.28, 6.35)
    np.testing.assert_array_equal(east.leg.utc_s, times)
    np.testing.assert_array_equal(east.leg.north_arcsec, np.arange(5.0))
    np.testing.assert_array_equal(east.leg.east_arcsec, [1.0, np.nan, 3.0, 4.0, 5.0])
    assert east.leg.sigma_arcsec is None
    assert (south.ended, south.discarded) == (False, False)
    np.testing.assert_array_equal(south.leg.utc_s, times[:4])
    assert south.leg.east_arcsec is None
    np.testing.assert_array_equal(south.leg.sigma_arcsec, [0.4] * 4)


def test_a_resumed_leg_goes_on(path: Path, program: Program) -> None:
    with program.log(path) as log:
        log.resume_or_begin_night(EVENING_UTC_S)
        leg = log.add_leg(*ORION)
        log.add_samples(leg, np.array([EVENING_UTC_S]), np.array([1.0]))
    with program.log(path) as log:
        log.resume_or_begin_night(EVENING_UTC_S)
        log.add_samples(leg, np.array([EVENING_UTC_S + 2.0]), np.array([2.0]))
        log.add_leg("south", "Diphda", 10.9, -17.99)
    with program.log(path) as log:
        night = log.resume_or_begin_night(EVENING_UTC_S)
    first, second = night.axis_states[0].legs
    np.testing.assert_array_equal(first.leg.north_arcsec, [1.0, 2.0])
    assert second.leg.utc_s.size == 0


@pytest.mark.parametrize(
    ("hours_later", "resumed"), [(17.9, True), (18.1, False), (-17.9, True), (-100_000.0, False)]
)
def test_eighteen_hours_of_silence_end_a_night(
    path: Path, program: Program, hours_later: float, resumed: bool
) -> None:
    with program.log(path) as log:
        log.resume_or_begin_night(EVENING_UTC_S)
        program.now_utc_s += 5 * HOUR_S
        leg = log.add_leg(*ORION)
        old = EVENING_UTC_S - 1e6  # readings of an imported log say nothing about activity
        log.add_samples(leg, np.array([old]), np.array([0.0]))
    with program.log(path) as log:
        night = log.resume_or_begin_night(program.now_utc_s + hours_later * HOUR_S)
    assert night.resumed == resumed
    assert len(night.axis_states) == 1
    assert len(night.axis_states[0].legs) == (1 if resumed else 0)


def test_settings_come_back(path: Path, program: Program) -> None:
    with program.log(path) as log:
        log.put_setting("look", "night")
        log.put_setting("look", {"name": "red", "scale": 2.0})
        assert log.get_setting("look") == {"name": "red", "scale": 2.0}
        with pytest.raises(ValueError):
            log.put_setting("scale", float("nan"))
    with program.log(path) as log:
        assert log.get_setting("look") == {"name": "red", "scale": 2.0}
        assert log.get_setting("scale", 1.0) == 1.0


def test_a_reading_that_is_no_number_is_refused(path: Path, program: Program) -> None:
    with program.log(path) as log:
        log.resume_or_begin_night(EVENING_UTC_S)
        leg = log.add_leg(*ORION)
        with pytest.raises(ValueError, match="finite"):
            log.add_samples(leg, np.array([EVENING_UTC_S]), np.array([np.nan]))
        with pytest.raises(LookupError):
            log.delete_last_sample(leg)
    with program.log(path) as log, pytest.raises(RuntimeError):
        log.begin_axis_state()


def test_readings_are_on_disk_without_being_asked(path: Path, program: Program) -> None:
    with program.log(path) as log:
        log.resume_or_begin_night(EVENING_UTC_S)
        leg = log.add_leg(*ORION)
        log.add_samples(leg, np.array([EVENING_UTC_S]), np.array([1.0]))
        began = time.monotonic()
        while log.unwritten and time.monotonic() - began < 5.0:
            time.sleep(0.005)
        assert time.monotonic() - began < 1.0


def test_the_file_asks_for_durability(path: Path, program: Program) -> None:
    with program.log(path) as log:
        log.resume_or_begin_night(EVENING_UTC_S)
        pragmas = [
            log._writer.read(lambda c, name=name: c.execute(f"PRAGMA {name}").fetchone()[0])
            for name in ("journal_mode", "synchronous", "user_version")
        ]
    # 2: FULL, as SQLite's documentation of the pragma numbers it
    assert pragmas == ["wal", 2, VERSION]


def test_a_long_night_is_read_back_quickly(path: Path, program: Program) -> None:
    count = 200_000
    times = EVENING_UTC_S + np.arange(count) * 0.2
    with program.log(path) as log:
        log.resume_or_begin_night(EVENING_UTC_S)
        leg = log.add_leg(*ORION)
        began = time.perf_counter()
        log.add_samples(leg, times, np.sin(times))
        assert time.perf_counter() - began < 0.05
        assert log.flush(30.0)
    with program.log(path) as log:
        began = time.perf_counter()
        night = log.resume_or_begin_night(EVENING_UTC_S)
        assert time.perf_counter() - began < 2.0
    stored = night.axis_states[0].legs[0].leg
    np.testing.assert_array_equal(stored.utc_s, times)
    np.testing.assert_array_equal(stored.north_arcsec, np.sin(times))


def test_any_reader_of_the_format_can_open_the_file(path: Path, program: Program) -> None:
    with program.log(path) as log:
        log.resume_or_begin_night(EVENING_UTC_S)
        log.add_samples(log.add_leg(*ORION), np.array([EVENING_UTC_S]), np.array([1.0]))
    with closing(sqlite3.connect(path)) as connection:
        rows = connection.execute(
            "SELECT label, utc_s, north_arcsec, east_arcsec FROM samples JOIN legs ON leg = legs.id"
        ).fetchall()
        assert rows == [("east 1", EVENING_UTC_S, 1.0, None)]
        assert connection.execute("PRAGMA integrity_check").fetchone() == ("ok",)
        assert connection.execute("PRAGMA foreign_key_check").fetchall() == []
