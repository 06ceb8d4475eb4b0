"""Sun, Moon and planets against skyfield (MIT) and its almanac, and the USNO's sunrise.

Ours: DE421 read by jplephem, then ERFA's chain. Skyfield reads the same DE421 but has its own
precession, nutation, aberration, light time and search for events.
"""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import erfa
import numpy as np
import pytest
import skyfield_data
from skyfield import almanac as skyfield_almanac
from skyfield.api import load, load_file, wgs84

from core.sky import clocks
from core.sky.almanac import Light, light_course, visits
from core.sky.bodies import Body, course
from core.sky.clocks import bundled, tai_minus_utc_s
from core.sky.site import Site

PLACE_ARCSEC = 0.4  # a planet's light bent by Saturn or Jupiter is left out; 0.09″ else
EVENT_S = 0.5  # measured: 0.18 s
EVENT_BEYOND_S = 5.0  # past the rotation table skyfield predicts UT1, ours carries the last value
TIMESCALE = load.timescale(builtin=True)
NAMES = {Body.JUPITER: "jupiter barycenter", Body.SATURN: "saturn barycenter"}
SITES = [Site(48.1, 11.6, 520.0), Site(-34.0, 18.5, 50.0), Site(0.0, 100.0), Site(5.0, -75.0, 2600),
         Site(-5.0, 30.0), Site(64.2, -21.9)]  # fmt: skip
DATES = ["1990-03-20T00Z", "2016-12-31T00Z", "2026-11-24T00Z", "2050-06-21T00Z"]


@pytest.fixture(scope="module")
def kernel() -> Iterator[object]:
    opened = load_file(str(Path(skyfield_data.__file__).parent / "data" / "de421.bsp"))
    yield opened
    opened.close()


def skyfield_time(utc_s):
    """With our UT1, so that only the places are compared."""
    time = TIMESCALE.tt_jd(*clocks.julian_dates_tt(utc_s))
    ahead_s = tai_minus_utc_s(utc_s) + clocks.TT_MINUS_TAI_S
    time.delta_t = ahead_s - bundled().ut1_minus_utc_s(utc_s)
    return time


def unix_s(times) -> np.ndarray:
    """Unix time of skyfield's times; no leap second falls within a search."""
    utc_s = (times.tt - clocks.UNIX_EPOCH_JD) * 86400.0
    return utc_s - tai_minus_utc_s(utc_s) - clocks.TT_MINUS_TAI_S


def allowed_s(utc: str) -> float:
    return EVENT_S if bundled().loss(clocks.parse_utc(utc)) is None else EVENT_BEYOND_S


def target(kernel, body: Body):
    return kernel[NAMES.get(body, body.value.lower())]


def place(kernel, site: Site):
    return kernel["earth"] + wgs84.latlon(site.latitude_deg, site.longitude_deg, site.elevation_m)


@pytest.mark.parametrize("body", Body)
@pytest.mark.parametrize("utc", DATES)
def test_places(kernel, body: Body, utc: str) -> None:
    utc_s = clocks.parse_utc(utc) + np.arange(0.0, 40 * 86400.0, 21001.0)
    site = SITES[1]
    seen = place(kernel, site).at(skyfield_time(utc_s)).observe(target(kernel, body)).apparent()
    altitude, azimuth, distance = seen.altaz()
    ours = course(body, site, utc_s)
    apart = erfa.seps(
        azimuth.radians, altitude.radians, *np.radians([ours.azimuth_deg, ours.true_altitude_deg])
    )
    assert np.degrees(apart).max() * 3600.0 < PLACE_ARCSEC
    assert ours.distance_km == pytest.approx(distance.km, rel=1e-6)
    hour_angle, declination, _ = seen.hadec()
    west_deg = (hour_angle._degrees - ours.hour_angle_deg + 180.0) % 360.0 - 180.0
    assert np.abs(west_deg).max() < 1e-3
    assert ours.declination_deg == pytest.approx(declination.degrees, abs=2e-4)


@pytest.mark.parametrize("site", SITES, ids=lambda site: f"{site.latitude_deg:g}")
@pytest.mark.parametrize("utc", DATES)
def test_rise_transit_set(kernel, site: Site, utc: str) -> None:
    """skyfield.almanac.find_risings, find_settings, find_transits over two days."""
    start_s = clocks.parse_utc(utc)
    begin, end = skyfield_time(start_s), skyfield_time(start_s + 2 * 86400.0)
    for body in (Body.SUN, Body.MOON):
        ours = visits(body, site, start_s, hours=48.0)
        rises, up = skyfield_almanac.find_risings(
            place(kernel, site), target(kernel, body), begin, end
        )
        sets, down = skyfield_almanac.find_settings(
            place(kernel, site), target(kernel, body), begin, end
        )
        transits = skyfield_almanac.find_transits(
            place(kernel, site), target(kernel, body), begin, end
        )
        for events, expected in (
            (ours.rises, unix_s(rises)[up]),
            (ours.sets, unix_s(sets)[down]),
            (ours.transits, unix_s(transits)),
        ):
            assert [event.utc_s for event in events] == pytest.approx(expected, abs=allowed_s(utc))


@pytest.mark.parametrize("site", SITES, ids=lambda site: f"{site.latitude_deg:g}")
@pytest.mark.parametrize("utc", DATES)
def test_twilights(kernel, site: Site, utc: str) -> None:
    """skyfield.almanac.dark_twilight_day."""
    start_s = clocks.parse_utc(utc)
    changes, states = skyfield_almanac.find_discrete(
        skyfield_time(start_s), skyfield_time(start_s + 86400.0),
        skyfield_almanac.dark_twilight_day(
            kernel, wgs84.latlon(site.latitude_deg, site.longitude_deg, site.elevation_m)
        ),
    )  # fmt: skip
    expected = [list(Light)[4 - state] for state in states]
    ours = light_course(site, start_s)
    assert [change.light for change in ours.changes] == expected
    assert [change.utc_s for change in ours.changes] == pytest.approx(
        unix_s(changes), abs=allowed_s(utc)
    )


@pytest.mark.parametrize(
    ("latitude_deg", "utc"), [(67.3, "2026-12-05T00Z"), (-67.3, "2026-06-05T00Z")]
)
def test_days_of_an_hour_near_the_polar_circle(kernel, latitude_deg: float, utc: str) -> None:
    """Where the Sun only just rises or sets; by skyfield.almanac.sunrise_sunset."""
    site = Site(latitude_deg, 20.0)
    start_s = clocks.parse_utc(utc)
    times, states = skyfield_almanac.find_discrete(
        skyfield_time(start_s), skyfield_time(start_s + 5 * 86400.0),
        skyfield_almanac.sunrise_sunset(kernel, wgs84.latlon(latitude_deg, 20.0)),
    )  # fmt: skip
    ours = visits(Body.SUN, site, start_s, hours=120.0)
    expected = unix_s(times)
    assert len(states) > 2
    assert [event.utc_s for event in ours.rises] == pytest.approx(expected[states == 1], abs=10.0)
    assert [event.utc_s for event in ours.sets] == pytest.approx(expected[states == 0], abs=10.0)


def test_sunrise_of_the_naval_observatory() -> None:
    """USNO: Bluffton, Ohio, 2018-09-12, sunrise 11:13 and sunset 23:50 UT, whole minutes."""
    day = visits(Body.SUN, Site(40.8939, -83.8917), clocks.parse_utc("2018-09-12T04:00Z"))
    assert day.rises[0].utc_s == pytest.approx(clocks.parse_utc("2018-09-12T11:13Z"), abs=30.0)
    assert day.sets[0].utc_s == pytest.approx(clocks.parse_utc("2018-09-12T23:50Z"), abs=30.0)
    assert day.rises[0].azimuth_deg < 180.0 < day.sets[0].azimuth_deg


@pytest.mark.parametrize(
    ("body", "arcsec"),
    [(Body.SUN, 0.1), (Body.MOON, 20.0), (Body.MERCURY, 90.0), (Body.VENUS, 90.0),
     (Body.MARS, 90.0), (Body.JUPITER, 90.0), (Body.SATURN, 90.0)],
)  # fmt: skip
def test_series_for_years_beyond_keep_what_they_promise(
    body: Body, arcsec: float, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The stand-ins for the years outside DE421, where DE421 can still judge them."""
    utc_s = clocks.parse_utc("2000-01-01T00Z") + np.arange(0.0, 53 * 365.25 * 86400.0, 7.3e6)
    site = Site(40.0, 0.0)
    good = course(body, site, utc_s)
    monkeypatch.setattr("core.sky.bodies.is_covered", lambda _: False)
    rough = course(body, site, utc_s)
    apart = erfa.seps(
        *np.radians([good.azimuth_deg, good.true_altitude_deg]),
        *np.radians([rough.azimuth_deg, rough.true_altitude_deg]),
    )
    assert 0.0 < np.degrees(apart).max() * 3600.0 < arcsec
