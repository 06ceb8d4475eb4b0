"""Meridian flips: transits by skyfield, sides, limits, uncut exposures, targets without one."""

from __future__ import annotations

from datetime import UTC, datetime

import numpy as np
import pytest
from skyfield import almanac
from skyfield.api import Star, wgs84

from core.mount.equipment import MountKind
from core.night.flip import (
    CAUTIONS,
    ExposureSeries,
    FlipPlan,
    Limits,
    PierSide,
    crossings,
    flip_plan,
)
from core.sky.clocks import parse_utc
from core.sky.site import Air, Site
from tests.truth.mount import SIDEREAL_DAY_S, sky

BEGIN_S = parse_utc("2026-11-24T18:00Z")
SESSION = BEGIN_S, BEGIN_S + 8.0 * 3600.0
AIR = Air(960.0)
NORTH, SOUTH = Site(48.0, 11.0, 500.0), Site(-33.0, 18.0, 300.0)
M31 = 10.685, 41.269
SERIES = ExposureSeries(300.0, 10.0)
LIMITS = Limits(5.0)
SKYFIELD_S = 5.0
HALF_SIDEREAL_DAY_S = SIDEREAL_DAY_S / 2.0


def plan(
    place: tuple[float, float] = M31,
    site: Site = NORTH,
    session: tuple[float, float] = SESSION,
    limits: Limits = LIMITS,
    series: ExposureSeries = SERIES,
) -> FlipPlan:
    return flip_plan(*place, site, AIR, session, MountKind.GERMAN_EQUATORIAL, limits, series)


def skyfield_transits(place: tuple[float, float], site: Site, later_s: float = 0.0) -> list[float]:
    """Upper transits, or moments so much later, within the session."""
    timescale, earth = sky()
    begin, end = (
        timescale.from_datetime(datetime.fromtimestamp(t - later_s, UTC)) for t in SESSION
    )
    star = Star(ra_hours=place[0] / 15.0, dec_degrees=place[1])
    observer = earth + wgs84.latlon(site.latitude_deg, site.longitude_deg, site.elevation_m)
    found = almanac.find_transits(observer, star, begin, end)
    return [moment.timestamp() + later_s for moment in found.utc_datetime()]


@pytest.mark.parametrize("site", [NORTH, SOUTH, Site(0.0, -70.0), Site(89.0, 40.0)])
@pytest.mark.parametrize("place", [M31, (350.0, -20.0), (20.0, 5.0)])
def test_transits_by_skyfield(place: tuple[float, float], site: Site) -> None:
    found = crossings(*place, site, AIR, SESSION, Limits(0.0))
    ours = [one.utc_s for one in found if one.upper]
    theirs = skyfield_transits(place, site)
    above_horizon = abs(site.latitude_deg - place[1]) < 90.0
    assert ours == pytest.approx(theirs if above_horizon else [], abs=SKYFIELD_S)


def test_lower_transit_of_a_target_that_never_sets() -> None:
    place = 200.0, 75.0
    [found] = crossings(*place, NORTH, AIR, SESSION, Limits(0.0))
    assert not found.upper
    expected = skyfield_transits(place, NORTH, HALF_SIDEREAL_DAY_S)
    assert [found.utc_s] == pytest.approx(expected, abs=SKYFIELD_S)
    assert found.altitude_deg == pytest.approx(48.0 + 75.0 - 90.0, abs=0.2)
    assert (found.before, found.after) == (PierSide.EAST, PierSide.WEST)
    assert "below the pole" in plan(place).reason


@pytest.mark.parametrize("site", [NORTH, SOUTH])
def test_one_flip_from_west_to_east_of_the_pier(site: Site) -> None:
    done = plan((20.0, 5.0), site)
    assert done.needed
    [flip] = done.interruptions
    assert done.begins_on is PierSide.WEST
    assert flip.crossing.after is PierSide.EAST
    limit_s = 5.0 / 15.041 * 3600.0
    assert flip.crossing.latest_utc_s - flip.crossing.utc_s == pytest.approx(limit_s, abs=0.1)
    assert flip.crossing.utc_s <= flip.turns_utc_s <= flip.crossing.latest_utc_s
    assert flip.resumes_utc_s - flip.turns_utc_s == pytest.approx(270.0)
    assert done.cautions == CAUTIONS


@pytest.mark.parametrize("past_deg", [-4.0, 0.0, 0.5, 5.0, 20.0])
@pytest.mark.parametrize("exposure_s", [30.0, 300.0, 900.0])
def test_no_exposure_is_cut_and_none_breaks_the_limit(past_deg: float, exposure_s: float) -> None:
    done = plan(limits=Limits(past_deg), series=ExposureSeries(exposure_s, 7.0))
    begins, ends = done.exposure_utc_s.T
    assert ends - begins == pytest.approx(exposure_s)
    assert np.all(begins[1:] - ends[:-1] >= 7.0 - 1e-6)
    assert begins[0] == SESSION[0]
    assert ends[-1] <= SESSION[1]
    [flip] = done.interruptions
    before = ends <= flip.stops_utc_s + 1e-6
    assert np.all(before | (begins >= flip.resumes_utc_s - 1e-6))
    assert np.max(ends[before]) <= flip.crossing.latest_utc_s
    assert flip.lost_s < 270.0 + exposure_s + 7.0 + 2.0 * max(-past_deg, 0.0) * 240.0
    assert SESSION[1] - ends[-1] < exposure_s + 7.0


def test_a_mount_that_flips_only_well_past_the_meridian_waits() -> None:
    done = plan(limits=Limits(5.0, flips_from_deg=4.0))
    [flip] = done.interruptions
    assert flip.turns_utc_s >= flip.crossing.utc_s + 4.0 / 15.0411 * 3600.0 - 0.1


def test_past_the_meridian_at_the_start() -> None:
    [crossing] = plan().crossings
    done = plan(session=(crossing.utc_s + 60.0, crossing.utc_s + 7200.0))
    assert not done.needed
    assert done.begins_on is PierSide.EAST
    assert "past the meridian already" in done.reason


def test_session_that_ends_within_the_limit_needs_no_flip() -> None:
    [crossing] = plan().crossings
    done = plan(session=(crossing.utc_s - 7200.0, crossing.utc_s + 600.0))
    assert not done.needed
    assert done.begins_on is PierSide.WEST
    assert "ends before the mount reaches its limit" in done.reason
    assert done.exposure_utc_s[-1, 1] > crossing.utc_s


def test_mount_that_stops_before_the_meridian_near_the_end() -> None:
    [crossing] = plan().crossings
    done = plan(session=(crossing.utc_s - 7200.0, crossing.utc_s + 300.0), limits=Limits(-3.0))
    assert not done.needed
    assert "less time" in done.reason
    assert done.exposure_utc_s[-1, 1] <= crossing.utc_s - 3.0 / 15.0411 * 3600.0


def test_both_crossings_in_a_long_winter_night() -> None:
    done = plan((10.0, 80.0), session=(BEGIN_S, BEGIN_S + 15.0 * 3600.0))
    assert [flip.crossing.upper for flip in done.interruptions] == [True, False]
    assert "2 flips" in done.reason


@pytest.mark.parametrize(
    "kind", [kind for kind in MountKind if kind is not MountKind.GERMAN_EQUATORIAL]
)
def test_forks_and_alt_azimuth_mounts_do_not_flip(kind: MountKind) -> None:
    done = flip_plan(*M31, NORTH, AIR, SESSION, kind, Limits(5.0), SERIES)
    assert not done.needed
    assert "no flip" in done.reason
    assert done.begins_on is None
    assert len(done.exposure_utc_s) == 1 + (8 * 3600 - 300) // 310


@pytest.mark.parametrize(
    ("limits", "series", "session", "sentence"),
    [
        (Limits(5.0), SERIES, SESSION[::-1], "ends before it begins"),
        (Limits(5.0), ExposureSeries(0.0), SESSION, "longer than nothing"),
        (Limits(95.0), SERIES, SESSION, "between −90° and 90°"),
        (Limits(2.0, 3.0), SERIES, SESSION, "could never flip"),
    ],
)
def test_impossible_requests_are_sentences(
    limits: Limits, series: ExposureSeries, session: tuple[float, float], sentence: str
) -> None:
    with pytest.raises(ValueError, match=sentence):
        plan(limits=limits, series=series, session=session)
