"""Logs that cannot be true at their place are doubted, and the likely slip is named."""

from __future__ import annotations

import numpy as np
import pytest

from core.alignment.axis.plausibility import LegDoubt, implausible_legs
from core.alignment.driftlog.records import Leg
from core.sky.site import Air, Site

DENVER = Site(39.74, -104.99, 1600.0)
AIR = Air(835.0)
# From Sirius' place and the sidereal time at midnight UTC of 2026-12-31 (about 6h41m at Greenwich):
# it crosses the meridian near midnight, local mean time, at every longitude.
NEW_YEAR_UTC_S = 1_798_675_200.0
SIRIUS_DEG = (101.287, -16.716)


def leg(utc_s: float, star_deg: tuple[float, float] = SIRIUS_DEG) -> Leg:
    times = utc_s + np.arange(0.0, 601.0, 60.0)
    return Leg("south", *star_deg, times, np.zeros(times.size))


def codes(*arguments) -> list[LegDoubt]:
    return [note.code for note in implausible_legs(*arguments)]


def test_a_star_that_is_up_raises_no_doubt() -> None:
    local_midnight = NEW_YEAR_UTC_S + 7 * 3600.0
    assert codes([leg(local_midnight)], DENVER, AIR, local_midnight + 700.0) == []


def test_local_time_taken_for_utc_is_named_as_likely_with_the_height_it_would_give() -> None:
    ten_in_the_evening = NEW_YEAR_UTC_S + 22 * 3600.0  # as written by a clock at UTC−7
    (note,) = implausible_legs([leg(ten_in_the_evening)], DENVER, AIR)
    assert note.code is LegDoubt.BELOW_HORIZON
    assert "“south”" in str(note)
    assert "local time was taken for UTC: by a clock at UTC-7" in str(note)
    assert "2026-12-31T22:" in str(note)
    assert "20:15:30-07:00" in str(note)


def test_a_star_that_is_never_up_sends_to_place_and_star() -> None:
    (note,) = implausible_legs([leg(NEW_YEAR_UTC_S, (100.0, -80.0))], DENVER, AIR)
    assert "Check that the times are UTC" in str(note)


def test_a_star_that_sets_during_the_leg_is_found() -> None:
    midnight = NEW_YEAR_UTC_S + 7 * 3600.0
    times = midnight + np.arange(0.0, 43_200.0, 600.0)
    (note,) = implausible_legs([Leg("long", *SIRIUS_DEG, times, np.zeros(times.size))], DENVER, AIR)
    assert note.code is LegDoubt.BELOW_HORIZON


@pytest.mark.parametrize(
    ("ahead_s", "words"), [(3600.0, "1.0 hours"), (86_400.0 * 40, "40 days"), (30.0, None)]
)
def test_times_to_come_are_doubted(ahead_s: float, words: str | None) -> None:
    midnight = NEW_YEAR_UTC_S + 7 * 3600.0
    notes = implausible_legs([leg(midnight)], DENVER, AIR, midnight + 600.0 - ahead_s)
    assert [note.code for note in notes] == ([LegDoubt.IN_THE_FUTURE] if words else [])
    assert all(str(words) in str(note) for note in notes)


def drifting(arcsec_per_min: float, **bumps: float) -> Leg:
    """Half an hour at the meridian, all readings from the one named in `bumps` on moved by it."""
    midnight = NEW_YEAR_UTC_S + 7 * 3600.0
    minutes = np.arange(0.0, 30.0, 0.25)
    north = arcsec_per_min * minutes
    for reading, size in bumps.items():
        north[int(reading.removeprefix("after_")) :] += size
    return Leg("south", *SIRIUS_DEG, midnight + 60.0 * minutes, north)


@pytest.mark.parametrize("rate", [904.0, -904.0, 2191.0])
def test_a_drift_no_axis_can_cause_is_no_drift_in_arcseconds(rate: float) -> None:
    (note,) = implausible_legs([drifting(rate)], DENVER, AIR)
    assert note.code is LegDoubt.TOO_FAST
    assert f"{abs(rate):,.0f}″ a minute" in str(note)
    assert "902″" in str(note)
    assert "milliarcseconds or pixels" in str(note)


def test_the_fastest_drift_and_a_great_bump_are_let_pass() -> None:
    assert codes([drifting(901.0)], DENVER, AIR) == []
    assert codes([drifting(1.0, after_60=50_000.0)], DENVER, AIR) == []


def test_pressure_reduced_to_sea_level_is_noticed() -> None:
    midnight = NEW_YEAR_UTC_S + 7 * 3600.0
    assert codes([leg(midnight)], DENVER, Air(1013.0)) == [LegDoubt.OTHER_PRESSURE]
    assert codes([leg(midnight)], DENVER, Air(0.0)) == []
