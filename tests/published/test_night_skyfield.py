"""Rising, setting, transits of targets, darkness and the Moon's phase against skyfield's almanac.

skyfield is an independent path: its own places, its own search, DE421 read by jplephem.
"""

from __future__ import annotations

from datetime import UTC, datetime
from functools import cache
from pathlib import Path

import numpy as np
import pytest
import skyfield_data
from skyfield import almanac
from skyfield.api import Loader, Star, wgs84

from core.night.darkness import moon_lit, night_of
from core.night.plan import curve, passes
from core.sky.almanac import Light
from core.sky.clocks import parse_utc
from core.sky.site import Air, Site
from core.sky.targets import Target

BEGIN_S = parse_utc("2026-11-24T18:00Z")
SPAN = BEGIN_S, BEGIN_S + 36.0 * 3600.0
WITHIN_S = 5.0
# A body that grazes the horizon changes its moment by seconds for a thousandth of a degree.
SLOWEST_DEG_PER_S = 2e-4
SITES = [Site(48.1, 11.6, 500.0), Site(-33.9, 18.4), Site(0.0, -70.0), Site(65.0, 25.0)]
EXTREME = [Site(89.0, 10.0), Site(-89.0, 100.0)]


@cache
def sky():
    folder = Path(skyfield_data.__file__).parent / "data"  # its own accessor warns of old tables
    load = Loader(str(folder), verbose=False, expire=False)
    return load.timescale(builtin=True), load("de421.bsp")


def moments(span: tuple[float, float]):
    timescale, _ = sky()
    return [timescale.from_datetime(datetime.fromtimestamp(t, UTC)) for t in span]


def unix(times) -> list[float]:
    return [moment.timestamp() for moment in times.utc_datetime()]


def observer(site: Site):
    return sky()[1]["earth"] + wgs84.latlon(site.latitude_deg, site.longitude_deg, site.elevation_m)


def stars(count: int = 12) -> list[tuple[float, float]]:
    random = np.random.default_rng(66)
    sines = random.uniform(-1.0, 1.0, count)
    ra = random.uniform(0.0, 360.0, count)
    return list(zip(ra.tolist(), np.degrees(np.arcsin(sines)).tolist(), strict=True))


@pytest.mark.parametrize("site", SITES + EXTREME)
def test_transits_of_random_stars(site: Site) -> None:
    for ra_deg, dec_deg in stars():
        star = Star(ra_hours=ra_deg / 15.0, dec_degrees=dec_deg)
        expected = unix(almanac.find_transits(observer(site), star, *moments(SPAN)))
        assert passes(ra_deg, dec_deg, site, SPAN).transits == pytest.approx(expected, abs=WITHIN_S)


@pytest.mark.parametrize("site", SITES)
def test_rising_and_setting_of_random_stars(site: Site) -> None:
    """skyfield's horizon for stars is 34′ below the level one, as ours."""
    for ra_deg, dec_deg in stars():
        star = Star(ra_hours=ra_deg / 15.0, dec_degrees=dec_deg)
        found = passes(ra_deg, dec_deg, site, SPAN)
        for ours, search in (
            (found.rises, almanac.find_risings),
            (found.sets, almanac.find_settings),
        ):
            times, crossed = search(observer(site), star, *moments(SPAN))
            expected = [t for t, real in zip(unix(times), crossed, strict=True) if real]
            assert ours == pytest.approx(expected, abs=WITHIN_S)
        if not found.rises:
            assert found.stays_up is not found.stays_down


@pytest.mark.parametrize("site", SITES + EXTREME)
def test_stars_that_neither_rise_nor_set(site: Site) -> None:
    pole = 85.0 if site.latitude_deg > 0.0 else -85.0
    if abs(site.latitude_deg) > 10.0:
        assert passes(100.0, pole, site, SPAN).stays_up
        assert passes(100.0, -pole, site, SPAN).stays_down


@pytest.mark.parametrize("site", SITES)
@pytest.mark.parametrize("utc", ["2026-11-24T20:00Z", "2026-06-20T22:00Z", "2027-03-21T03:00Z"])
def test_darkness(site: Site, utc: str) -> None:
    """Every change of the light in the night, by skyfield's five states."""
    night = night_of(site, parse_utc(utc))
    state = almanac.dark_twilight_day(
        sky()[1], wgs84.latlon(site.latitude_deg, site.longitude_deg, site.elevation_m)
    )
    times, states = almanac.find_discrete(*moments((night.begin_utc_s, night.end_utc_s)), state)
    expected = list(zip(unix(times), states.tolist(), strict=True))
    names = [Light.NIGHT, Light.ASTRONOMICAL, Light.NAUTICAL, Light.CIVIL, Light.DAY]
    found = night.light.changes
    assert [change.light for change in found] == [names[state] for _, state in expected]
    for change, (utc_s, _) in zip(found, expected, strict=True):
        assert change.utc_s == pytest.approx(utc_s, abs=WITHIN_S)


def test_share_of_the_moon_that_is_lit() -> None:
    """skyfield's is geocentric; the parallax of the Moon moves the phase angle by up to 1°."""
    _, ephemeris = sky()
    for day in range(0, 30, 3):
        utc_s = BEGIN_S + 86400.0 * day
        [moment] = moments((utc_s,))
        expected = almanac.fraction_illuminated(ephemeris, "moon", moment)
        assert moon_lit(SITES[0], utc_s) == pytest.approx(expected, abs=0.01)


def test_distance_from_the_moon() -> None:
    times = BEGIN_S + np.arange(0.0, 8.0 * 3600.0, 3600.0)
    target = Target("anything", "coordinates", 83.82, -5.39)
    ours = curve(target, SITES[0], Air(0.0), times)
    place, star = observer(SITES[0]), Star(ra_hours=83.82 / 15.0, dec_degrees=-5.39)
    for index, [moment] in enumerate(moments((t,)) for t in times):
        seen = place.at(moment)
        moon = seen.observe(sky()[1]["moon"]).apparent()
        expected = moon.separation_from(seen.observe(star).apparent()).degrees
        assert ours.moon_apart_deg[index] == pytest.approx(expected, abs=0.003)
