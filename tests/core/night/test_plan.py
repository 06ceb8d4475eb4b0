"""Targets, their curves, the best of them, and one line of time for all."""

from __future__ import annotations

import numpy as np
import pytest

from core.imaging.rotation import track
from core.imaging.rotationdrive import losses
from core.mount.equipment import MountKind
from core.night.darkness import Night, night_of
from core.night.flip import ExposureSeries, Limits, flip_plan
from core.night.plan import alignment_moments, best, best_moments, curve, showpieces
from core.night.timeline import About, SetupStep, time_line
from core.sky import catalogues, places
from core.sky.bodies import Body, body_now
from core.sky.clocks import parse_utc
from core.sky.coordinates import UnusableCoordinates
from core.sky.horizon import Horizon
from core.sky.site import Air, Site
from core.sky.targets import Target, at_coordinates, of_body, of_deep_sky, of_star, search

SITE, AIR = Site(48.0, 11.0, 500.0), Air(955.0)
UTC_S = parse_utc("2026-11-24T20:00Z")
POLAR = Site(70.0, 20.0)


@pytest.fixture(scope="module")
def night() -> Night:
    return night_of(SITE, UTC_S)


def named(name: str) -> Target:
    found = catalogues.load_deep_sky().find(name)
    assert found is not None
    return of_deep_sky(found)


@pytest.mark.parametrize(
    ("typed", "first"),
    [
        ("jup", "Jupiter"),
        ("moon", "Moon"),
        ("vega", "Vega"),
        ("m42", "M 42, Great Orion Nebula"),
        ("ngc 7000", "NGC 7000, North America Nebula"),
        ("HIP 91262", "Vega"),
    ],
)
def test_search(typed: str, first: str) -> None:
    assert (
        search(typed, catalogues.load_stars(), catalogues.load_deep_sky(), UTC_S)[0].name == first
    )


def test_search_never_offers_the_sun_and_nothing_for_nothing() -> None:
    for typed in ("sun", "s", "", " "):
        found = search(typed, catalogues.load_stars(), catalogues.load_deep_sky(), UTC_S)
        assert all(one.body is not Body.SUN for one in found)
        assert typed.strip() or not found
        assert len(found) <= 20


def test_coordinates() -> None:
    target = at_coordinates("5h35m17s", "-5 23 28", "mine")
    assert (target.ra_deg, target.dec_deg) == pytest.approx((83.8208, -5.3911), abs=1e-4)
    assert at_coordinates("78.6°", "8").name == "78.6°, 8"
    with pytest.raises(UnusableCoordinates):
        at_coordinates("78.6°", "95")


def test_places_of_stars_and_bodies() -> None:
    star = catalogues.load_stars().find("Capella")
    assert star is not None
    target = of_star(star, catalogues.load_stars(), UTC_S)
    azimuth, altitude = target.places_deg(SITE, AIR, UTC_S)
    expected = places.horizontal_deg(target.ra_deg, target.dec_deg, SITE, AIR, UTC_S)
    assert (azimuth[0], altitude[0]) == pytest.approx((float(expected[0]), float(expected[1])))
    moon = body_now(Body.MOON, SITE, AIR, UTC_S)
    azimuth, altitude = of_body(Body.MOON).places_deg(SITE, AIR, UTC_S)
    assert (azimuth[0], altitude[0]) == pytest.approx((moon.azimuth_deg, moon.altitude_deg))


@pytest.mark.parametrize("body", [Body.JUPITER, Body.MARS, Body.MOON])
def test_a_body_held_still_is_where_it_was(body: Body) -> None:
    """Within the diurnal aberration, and light bent by the Sun, that fixed places leave out."""
    moving = of_body(body)
    still = moving.held_still(SITE, UTC_S)
    assert still.body is None
    for ours, expected in zip(
        still.places_deg(SITE, AIR, UTC_S), moving.places_deg(SITE, AIR, UTC_S), strict=True
    ):
        assert ours == pytest.approx(expected, abs=3e-4)
    assert still.held_still(SITE, UTC_S) is still


def test_curve_knows_obstructions_and_spans(night: Night) -> None:
    """A wall of 40° in the whole east: the target is clear once it has crossed the meridian."""
    times = np.arange(night.begin_utc_s, night.end_utc_s, 120.0)
    wall = Horizon.through([(0.0, 40.0), (179.99, 40.0), (180.0, 5.0), (359.99, 5.0)])
    target = named("M 42")
    free = curve(target, SITE, AIR, times, lowest_deg=15.0)
    walled = curve(target, SITE, AIR, times, wall, lowest_deg=15.0)
    [(begin, end)] = walled.clear_spans()
    assert np.interp(begin, times, walled.azimuth_deg) == pytest.approx(180.0, abs=0.6)
    assert np.interp(end, times, walled.altitude_deg) == pytest.approx(15.0, abs=0.01)
    [(begin_free, end_free)] = free.clear_spans(night.usable_spans)
    assert begin_free < begin
    assert end_free == pytest.approx(end)
    highest = free.highest()
    assert highest is not None
    assert highest[1] == pytest.approx(90.0 - 48.0 - 5.4, abs=0.2)
    assert curve(target, SITE, AIR, times, lowest_deg=80.0).highest() is None
    assert curve(target, SITE, AIR, times, lowest_deg=80.0).clear_spans() == ()


def test_moon_is_not_measured_from_itself(night: Night) -> None:
    times = np.arange(night.begin_utc_s, night.end_utc_s, 3600.0)
    assert np.all(np.isnan(curve(of_body(Body.MOON), SITE, AIR, times).moon_apart_deg))


def test_best_targets(night: Night) -> None:
    targets = showpieces(catalogues.load_deep_sky())
    found = best(targets, night, AIR, limit=30)
    merits = [one.merit_hours for one in found]
    assert merits == sorted(merits, reverse=True)
    names = {one.target.name for one in best(targets, night, AIR, limit=500)}
    assert "M 42, Great Orion Nebula" in names
    assert not any(name.startswith("M 7,") for name in names)  # in the Scorpion, not in November
    for one in found:
        assert one.merit_hours <= one.clear_hours
        assert 30.0 < one.highest_deg <= 90.0
        assert night.usable_spans[0][0] <= one.highest_utc_s <= night.usable_spans[-1][1]


def test_best_targets_avoid_walls_and_a_bright_moon(night: Night) -> None:
    targets = [named("M 31"), named("M 45")]  # the full Moon is beside the Pleiades
    open_sky = {one.target.name: one for one in best(targets, night, AIR)}
    pleiades = open_sky["M 45, Pleiades"]
    assert pleiades.moon_apart_deg < 20.0
    share = pleiades.merit_hours / pleiades.clear_hours
    other = open_sky["M 31, Andromeda Galaxy"]
    assert share < 0.5 * other.merit_hours / other.clear_hours
    wall = Horizon.through([(0.0, 89.0), (359.0, 89.0)])
    assert best(targets, night, AIR, wall) == []


def test_no_targets_in_polar_summer() -> None:
    summer = night_of(POLAR, parse_utc("2026-06-20T22:00Z"))
    assert best(showpieces(catalogues.load_deep_sky()), summer, AIR) == []
    line = time_line(summer, steps=[SetupStep("level the tripod", 10.0)])
    assert line.bars[-1].about is About.STEP
    assert "polar summer" in line.sentences[0]


def test_alignment_moments(night: Night) -> None:
    moments = alignment_moments(night, catalogues.load_stars(), AIR)
    assert len(moments) > 15
    for moment in moments:
        assert abs(moment.meridian.hour_angle_deg) < 12.0
        assert 55.0 < abs(moment.aside.hour_angle_deg) < 120.0
    chosen = best_moments(moments, 3)
    assert [one.utc_s for one in chosen] == sorted(one.utc_s for one in chosen)
    pairs = {(one.meridian.star.name, one.aside.star.name): one for one in chosen}
    assert len(pairs) == len(chosen) == 3
    assert max(one.faintest for one in chosen) <= min(
        one.faintest
        for one in moments
        if (one.meridian.star.name, one.aside.star.name) not in pairs
    )
    assert "near the meridian" in chosen[0].words

    def nothing(azimuth: np.ndarray, altitude: np.ndarray) -> np.ndarray:
        return np.zeros_like(azimuth + altitude, dtype=bool)

    assert alignment_moments(night, catalogues.load_stars(), AIR, nothing) == []


def test_time_line(night: Night) -> None:
    times = np.arange(night.begin_utc_s, night.end_utc_s, 120.0)
    galaxy = named("M 31")
    session = night.usable_spans[0]
    plan = flip_plan(
        galaxy.ra_deg, galaxy.dec_deg, SITE, AIR, session,
        MountKind.GERMAN_EQUATORIAL, Limits(5.0), ExposureSeries(300.0),
    )  # fmt: skip
    zenith = losses(track(20.0, 47.9, SITE, AIR, times), 0.5)
    steps = [SetupStep("set up", 30.0), SetupStep("level and balance", 20.0)]
    line = time_line(
        night,
        [
            curve(galaxy, SITE, AIR, times, lowest_deg=20.0),
            curve(of_body(Body.MOON), SITE, AIR, times),
        ],
        [(galaxy.name, plan)],
        [("overhead", one) for one in zenith],
        best_moments(alignment_moments(night, catalogues.load_stars(), AIR)),
        steps,
    )
    assert [mark.utc_s for mark in line.marks] == sorted(mark.utc_s for mark in line.marks)
    suns = [mark.text for mark in line.marks if mark.about is About.SUN]
    assert suns == [
        "Sunset", "Nautical twilight begins", "Astronomical twilight begins", "Night begins",
        "Night ends", "Astronomical twilight ends", "Nautical twilight ends", "Sunrise",
    ]  # fmt: skip
    [transit] = [mark for mark in line.marks if mark.text == f"{galaxy.name} on the meridian"]
    assert transit.utc_s == pytest.approx(plan.crossings[0].utc_s, abs=0.1)
    texts = [bar.text for bar in line.bars]
    for expected in (
        "M 31, Andromeda Galaxy: flip possible",
        "M 31, Andromeda Galaxy: flip, centre again",
        "M 31, Andromeda Galaxy clear",
        "overhead too near the zenith",
        "night",
    ):
        assert expected in texts
    ended = [bar for bar in line.bars if bar.about is About.STEP]
    assert [bar.text for bar in ended] == ["set up", "level and balance"]
    assert ended[-1].end_utc_s == session[0]
    assert ended[0].end_utc_s == ended[1].begin_utc_s
