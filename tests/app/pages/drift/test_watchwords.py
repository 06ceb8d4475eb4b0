"""What to mind while a star is watched."""

from types import SimpleNamespace

import numpy as np
import pytest

from app.pages.drift.words import gap, leaving, setting, warnings
from core.alignment.axis.geometrywarnings import Weakness
from core.alignment.drift.prepared import note
from core.alignment.driftlog.records import Leg
from core.sky.clocks import local_sidereal_time_hours
from core.sky.horizon import Horizon
from core.sky.site import Air, Site

SITE, AIR = Site(48.0, 11.0, 500.0), Air(950.0)
START_S = 1_798_761_540.0  # 2026-12-31 23:59:00 UTC: the year ends within the leg


def _leg(north_arcsec: float = 0.0, west_h: float = 1.0) -> Leg:
    """A star so many hours past the meridian, on the equator."""
    utc_s = START_S + np.arange(0.0, 240.0, 2.0)
    ra_deg = (15.0 * (float(local_sidereal_time_hours(START_S, SITE)) - west_h)) % 360.0
    north = np.linspace(0.0, north_arcsec, utc_s.size)
    return Leg("1 Star", ra_deg, 0.0, utc_s, north, np.zeros(utc_s.size))


def test_clouds_are_a_gap_and_the_usual_interval_is_none() -> None:
    leg = _leg()
    assert gap(leg, float(leg.utc_s[-1]) + 20.0) == ""
    assert "No reading for 1.5 min" in gap(leg, float(leg.utc_s[-1]) + 90.0)


@pytest.mark.parametrize(
    ("north", "across", "is_said"),
    [(100.0, 6.0, False), (-170.0, 6.0, True), (-170.0, 30.0, False), (100.0, 3.0, True)],
)
def test_a_star_far_from_where_it_was_is_said_to_leave(north, across, is_said) -> None:
    assert ("leave the field" in leaving(_leg(north), across)) == is_said


def test_a_star_that_goes_behind_what_stands_in_the_way_is_told_in_time() -> None:
    flat = Horizon.flat()
    assert setting(_leg(west_h=1.0), SITE, AIR, flat) == ""
    assert "behind the horizon now" in setting(_leg(west_h=6.3), SITE, AIR, flat)
    assert "in about" in setting(_leg(west_h=5.93), SITE, AIR, flat)
    wall = Horizon.through([(0.0, 60.0), (180.0, 60.0), (359.0, 60.0)])
    assert "behind the horizon now" in setting(_leg(west_h=1.0), SITE, AIR, wall)


def test_stars_alike_are_told_beside_a_step_of_this_leg_alone() -> None:
    notes = [
        note(Weakness.STARS_ALIKE, hour_angles_deg=(10.0, 12.0)),
        note(Weakness.STEP, "1 Star", size_arcsec=4.0, after=2.0),
        note(Weakness.STEP, "0 Other", size_arcsec=4.0, after=2.0),
        note(Weakness.SET_ASIDE, "1 Star", aside=3, count=9),
    ]
    leg = _leg()
    snapshot = SimpleNamespace(
        legs=(leg,),
        watching="1 Star",
        site=SITE,
        air=AIR,
        solution=SimpleNamespace(notes=notes),
    )
    said = warnings(snapshot, Horizon.flat(), float(leg.utc_s[-1]), 6.0)
    assert said.sentences == tuple(map(str, notes[:2]))


def test_nothing_is_said_before_there_is_something_to_judge() -> None:
    snapshot = SimpleNamespace(legs=(), watching=None, site=SITE, air=AIR, solution=None)
    assert warnings(snapshot, Horizon.flat(), START_S, 6.0).sentences == ()
