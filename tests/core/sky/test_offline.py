"""In a field, years from now: no network, no heavy library, no warning."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[3]

FIELD = """
import socket
def refuse(*_): raise AssertionError("the network was touched")
socket.socket = socket.create_connection = socket.getaddrinfo = refuse
from core.sky import catalogues, clocks, places
from core.sky.site import Air, Site
utc_s = clocks.parse_utc("{year}-11-24T20:00Z")
stars = catalogues.load_stars()
seen = stars.up_now(Site(48.0, 11.0), Air(960.0), utc_s, 20.0, 5)
assert len(seen) == 5
places.hour_angle_and_declination(10.0, 20.0, Site(48.0, 11.0), [utc_s, utc_s + 1.0])
sentence = clocks.bundled().loss(utc_s)
assert (sentence is not None) == ({year} > 2027), sentence
import sys
heavy = {{"astropy", "scipy", "skyfield", "PySide6"}} & set(sys.modules)
assert not heavy, heavy
"""


@pytest.mark.parametrize("year", [1995, 2028, 2040])
def test_a_night_without_network(year: int) -> None:
    done = subprocess.run(
        [sys.executable, "-W", "error", "-c", FIELD.format(year=year)],
        cwd=ROOT, capture_output=True, text=True, timeout=60, check=False,
    )  # fmt: skip
    assert done.returncode == 0, done.stderr
