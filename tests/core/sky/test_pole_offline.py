"""The pole and the almanac in a field, years from now: no network, no warning, nothing heavy."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[3]

FIELD = """
import socket, sys
def refuse(*_): raise AssertionError("the network was touched")
socket.socket = socket.create_connection = socket.getaddrinfo = refuse
from core.alignment.polarscope import reading
from core.sky import almanac, bodies, clocks, compass, horizon, pole, pressure
from core.sky.site import Air, Site
heavy = {{"astropy", "scipy", "skyfield", "skyfield_data", "jplephem", "pygeomag", "PySide6"}}
assert not heavy & set(sys.modules), heavy & set(sys.modules)
site, air, utc_s = Site(48.0, 11.0), Air(960.0), clocks.parse_utc("{year}-11-24T20:00Z")
pole.pole_star(site, air, utc_s)
pole.pole_star_turns(site, utc_s)
assert len(pole.pole_field(site, air, utc_s).stars) > 10
assert len(bodies.bodies_now(site, air, utc_s)) == 7
assert almanac.visits(bodies.Body.MOON, site, utc_s, hours=48.0).transits
assert almanac.light_course(site, utc_s).changes
compass.noon_shadow(site, air, utc_s)
try:
    compass.declination(site, utc_s)
except compass.NoDeclination:
    assert {year} > 2029
assert not {{"skyfield", "astropy", "PySide6"}} & set(sys.modules)
"""


@pytest.mark.parametrize("year", [2026, 2028, 2060])
def test_a_night_without_network(year: int) -> None:
    done = subprocess.run(
        [sys.executable, "-W", "error", "-c", FIELD.format(year=year)],
        cwd=ROOT, capture_output=True, text=True, timeout=60, check=False,
    )  # fmt: skip
    assert done.returncode == 0, done.stderr
    assert done.stderr == ""
