"""Observed places of the whole bright-star table against astropy's transform, in one run.

Reference: astropy's `SkyCoord.transform_to(AltAz)` of the same catalogue places for the same site,
air and moment; cold is its first call in a fresh process, warm the best of several.
"""

from __future__ import annotations

import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path

import pytest

pytestmark = pytest.mark.bench

ROOT = Path(__file__).parents[2]
WARM_SHARE, COLD_SHARE = 0.6, 0.1

BOTH = """
import time
from core.sky import catalogue, clock
from core.sky.site import Air, Site
table = catalogue.load().astrometry
site, air = Site(48.0, 11.0, 500.0), Air(950.0, 5.0)
utc_s = clock.parse_utc("2026-11-24T20:00Z")

def seconds(work):
    begun = time.perf_counter()
    work()
    return time.perf_counter() - begun

def best(work):
    return min(seconds(work) for _ in range(15))
"""

OURS = """
from core.sky.places import ObservedSky
def ours(): ObservedSky.at(site, air, utc_s).horizontal_deg(table)
print(seconds(ours), best(ours))
"""

THEIRS = """
import astropy.units as u
from astropy.coordinates import AltAz, EarthLocation, SkyCoord
from astropy.time import Time
from astropy.utils import iers
iers.conf.auto_download, iers.conf.auto_max_age = False, None
stars = SkyCoord(table[0] * u.deg, table[1] * u.deg)
place = EarthLocation(lat=site.latitude_deg * u.deg, lon=site.longitude_deg * u.deg,
                      height=site.elevation_m * u.m)
def theirs():
    stars.transform_to(AltAz(
        obstime=Time(utc_s, format="unix"), location=place, pressure=air.pressure_hpa * u.hPa,
        temperature=air.temperature_c * u.deg_C, relative_humidity=air.relative_humidity,
        obswl=air.wavelength_um * u.um))
print(seconds(theirs), best(theirs))
"""


def measured(script: str) -> tuple[float, float]:
    """Seconds of the first call in a fresh process, and of the best after it."""
    done = subprocess.run(
        [sys.executable, "-c", BOTH + script],
        cwd=ROOT, capture_output=True, text=True, timeout=120, check=True,
    )  # fmt: skip
    cold, warm = map(float, done.stdout.split())
    return cold, warm


def test_whole_table_against_astropy() -> None:
    rounds = [(measured(OURS), measured(THEIRS)) for _ in range(2)]
    ours = [min(round_[0][which] for round_ in rounds) for which in (0, 1)]
    theirs = [min(round_[1][which] for round_ in rounds) for which in (0, 1)]
    print(f"first call: ours {ours[0] * 1e3:.1f} ms, astropy {theirs[0] * 1e3:.1f} ms")
    print(f"warm: ours {ours[1] * 1e3:.2f} ms, astropy {theirs[1] * 1e3:.2f} ms")
    assert ours[1] <= WARM_SHARE * theirs[1]
    assert ours[0] <= COLD_SHARE * theirs[0]


def test_a_tick_of_the_pole_page_is_short() -> None:
    """What a dial needs each second, against one pass over the bright-star table."""
    from core.sky import catalogues, clocks
    from core.sky.places import ObservedSky
    from core.sky.pole import pole_field, pole_star
    from core.sky.site import Air, Site

    site, air, utc_s = Site(48.0, 11.0), Air(950.0), clocks.parse_utc("2026-11-24T20:00Z")
    table = catalogues.load_stars().astrometry

    def tick() -> None:
        pole_star(site, air, utc_s)
        pole_field(site, air, utc_s)

    def whole() -> None:
        ObservedSky.at(site, air, utc_s).horizontal_deg(table)

    ratio = best_of(tick) / best_of(whole)
    print(f"a tick costs {ratio:.2f} of a pass over the table")
    assert ratio < 3.0


def best_of(work: Callable[[], None]) -> float:
    times = []
    for _ in range(15):
        begun = time.perf_counter()
        work()
        times.append(time.perf_counter() - begun)
    return min(times)
