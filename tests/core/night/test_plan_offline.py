"""A whole plan in a field, years from now: no network, no warning, at sites where it is hard."""

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
import numpy as np
from core.mount.equipment import MountKind
from core.night.flip import ExposureSeries, flip_plan
from core.night.flip import Limits
from core.imaging.rotation import track
from core.night.setupstars import NoReferenceStars
from core.night.setupstars import choose
from core.night.plan import alignment_moments, best_moments
from core.night.plan import best, showpieces
from core.night.plan import curve
from core.night.darkness import night_of
from core.sky.targets import of_deep_sky
from core.night.timeline import time_line
from core.sky import catalogues, clocks
from core.sky.bodies import bodies_now
from core.sky.site import Air, Site
stars, objects, air = catalogues.load_stars(), catalogues.load_deep_sky(), Air(960.0)
utc_s = clocks.parse_utc("{year}-06-20T22:00Z")
for latitude in (90.0, -89.0, 0.0, 48.0):
    site = Site(latitude, 179.99)
    night = night_of(site, utc_s)
    times = np.arange(night.begin_utc_s, night.end_utc_s, 1200.0)
    track(100.0, 20.0, site, air, times)
    target = of_deep_sky(objects.find("M 31"))
    plan = flip_plan(target.ra_deg, target.dec_deg, site, air, (utc_s, utc_s + 2e4),
                     MountKind.GERMAN_EQUATORIAL, Limits(5.0), ExposureSeries(60.0))
    bodies = bodies_now(site, air, night.middle_utc_s)
    try:
        choose(stars, site, air, night.middle_utc_s, MountKind.ALT_AZIMUTH, bodies=bodies)
    except NoReferenceStars as sentence:
        assert latitude == 90.0, sentence
    best(showpieces(objects), night, air)
    moments = best_moments(alignment_moments(night, stars, air))
    line = time_line(night, [curve(target, site, air, times)], [("M 31", plan)], [], moments)
    assert ("polar summer" in " ".join(line.sentences)) is (latitude == 90.0)
"""


@pytest.mark.parametrize("year", [2028, 2060])
def test_a_plan_without_network(year: int) -> None:
    done = subprocess.run(
        [sys.executable, "-W", "error", "-c", FIELD.replace("{year}", str(year))],
        cwd=ROOT, capture_output=True, text=True, timeout=60, check=False,
    )  # fmt: skip
    assert done.returncode == 0, done.stderr
