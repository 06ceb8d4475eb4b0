"""Maps of field rotation against stars that astropy carries along, watched second by second.

Reference: `astropy.coordinates`, `HADec` to `AltAz` without air. How the field lies is the position
angle from the star to one beside it; how fast it turns are differences of that in time, how long
one may expose is found by watching until the angles have come too far apart.
"""

from __future__ import annotations

import numpy as np
import pytest
from astropy import units
from astropy.coordinates import AltAz, EarthLocation, HADec
from astropy.time import Time
from astropy.utils import iers

from app.pages.rotation.study import exposure_map, rate_map
from core.imaging.rotation import rate_deg_per_hour
from core.imaging.rotationexposure import LONGEST_S, longest_map_s
from core.sky.site import Air
from core.units import SIDEREAL_DEG_PER_HOUR

MOMENT = Time("2026-11-24T20:00:00")
BESIDE_DEG = 0.01
STEP_S = 2.0
PER_CENT = 0.02
NEAR_NONE = 0.002  # of the sidereal rate, on the prime vertical
STEPS = np.concatenate([[0.0], np.geomspace(0.05, LONGEST_S, 1200)])  # 1.1 % from one to the next
SMALL_DEG, LARGE_DEG = 0.0115, 0.3  # half a pixel at the corner of a large sensor, and much more
LATITUDES = (48.0, -33.0, 3.0, 85.0)


@pytest.fixture(autouse=True)
def _no_download(monkeypatch) -> None:
    monkeypatch.setattr(iers.conf, "auto_download", False)
    monkeypatch.setattr(iers.conf, "auto_max_age", None)


def angles_deg(latitude_deg, azimuth_deg, altitude_deg, seconds) -> np.ndarray:
    """Angle (n, k) of the field of stars at (n,) places, (k,) seconds later, without jumps."""
    site = EarthLocation(lat=latitude_deg * units.deg, lon=11.0 * units.deg)
    here = AltAz(obstime=MOMENT, location=site)
    turning = HADec(obstime=MOMENT, location=site)
    star = AltAz(
        az=np.atleast_1d(azimuth_deg) * units.deg,
        alt=np.atleast_1d(altitude_deg) * units.deg,
        obstime=MOMENT,
        location=site,
    ).transform_to(turning)
    hour = star.ha.deg[:, np.newaxis] + np.asarray(seconds) / 3600.0 * SIDEREAL_DEG_PER_HOUR
    declination = np.broadcast_to(star.dec.deg[:, np.newaxis], hour.shape)
    towards = np.where(declination > 0.0, -BESIDE_DEG, BESIDE_DEG)  # away from the nearer pole
    seen, beside = (
        HADec(ha=hour * units.deg, dec=dec * units.deg, obstime=MOMENT, location=site)
        .transform_to(here)
        for dec in (declination, declination + towards)
    )  # fmt: skip
    # From the vertical towards greater azimuth, which is the way to the pole from a western star.
    return np.unwrap(seen.position_angle(beside).deg, period=360.0, axis=1)


def exact_rates(latitude_deg, azimuth_deg, altitude_deg) -> np.ndarray:
    before, after = angles_deg(latitude_deg, azimuth_deg, altitude_deg, [-STEP_S, STEP_S]).T
    return (after - before) / (2.0 * STEP_S) * 3600.0


def watched_s(latitude_deg, azimuth_deg, altitude_deg, rotation_deg) -> np.ndarray:
    """The last of STEPS at which the angles since the beginning are not too far apart."""
    angle = angles_deg(latitude_deg, azimuth_deg, altitude_deg, STEPS)
    span = np.maximum.accumulate(angle, axis=1) - np.minimum.accumulate(angle, axis=1)
    return STEPS[np.sum(span <= rotation_deg, axis=1) - 1]


def spots(seed: int, count: int) -> tuple[np.ndarray, np.ndarray]:
    """Half of them within 3° of the prime vertical, the others anywhere."""
    random = np.random.default_rng(seed)
    azimuth = random.uniform(0.0, 360.0, count)
    beside = random.choice([90.0, 270.0], count) + random.uniform(-3.0, 3.0, count)
    azimuth[::2] = beside[::2]
    return azimuth, random.uniform(3.0, 85.0, count)


@pytest.mark.parametrize("latitude_deg", LATITUDES)
def test_rates_are_those_of_stars_carried_along(latitude_deg: float) -> None:
    azimuth, altitude = spots(1, 60)
    exact = exact_rates(latitude_deg, azimuth, altitude)
    ours = rate_deg_per_hour(latitude_deg, azimuth, altitude)
    scale = SIDEREAL_DEG_PER_HOUR * np.cos(np.radians(latitude_deg))
    assert ours == pytest.approx(exact, rel=PER_CENT, abs=NEAR_NONE * scale)


@pytest.mark.parametrize("latitude_deg", LATITUDES)
def test_lines_of_equal_rate_stand_where_the_rate_is_theirs(latitude_deg: float) -> None:
    scale = SIDEREAL_DEG_PER_HOUR * np.cos(np.radians(latitude_deg))
    for line in rate_map(latitude_deg, Air(0.0)).contours:
        told = float(line.words.replace("−", "-").removesuffix("°/h"))
        some = slice(None, None, 10)
        high = line.altitude_deg[some] < 80.0  # where two seconds are short enough to differ over
        exact = exact_rates(latitude_deg, line.azimuth_deg[some], line.altitude_deg[some])
        assert exact[high] == pytest.approx(told, rel=PER_CENT, abs=NEAR_NONE * scale)


@pytest.mark.parametrize("rotation_deg", [SMALL_DEG, LARGE_DEG])
@pytest.mark.parametrize("latitude_deg", LATITUDES)
def test_exposures_are_those_watched(latitude_deg: float, rotation_deg: float) -> None:
    azimuth, altitude = spots(2, 60)
    watched = watched_s(latitude_deg, azimuth, altitude, rotation_deg)
    ours = longest_map_s(latitude_deg, azimuth, altitude, rotation_deg)
    assert ours == pytest.approx(watched, rel=PER_CENT, abs=0.05)


@pytest.mark.parametrize("latitude_deg", LATITUDES)
def test_lines_of_equal_exposure_stand_where_the_exposure_is_theirs(latitude_deg: float) -> None:
    """Where it jumps, the line stands at the jump: on either side of it."""
    drawn = exposure_map(latitude_deg, LARGE_DEG)
    for line in drawn.contours:
        level = next(one for one in drawn.levels if line.words.startswith(f"{_minutes(one):.2g} "))
        some = slice(None, None, 8)
        around, high = line.azimuth_deg[some], line.altitude_deg[some]
        near = [
            watched_s(latitude_deg, around + side, np.minimum(high + up, 89.9), LARGE_DEG)
            for side, up in ((0.0, 0.0), (0.05, 0.0), (-0.05, 0.0), (0.0, 0.05), (0.0, -0.05))
        ]
        assert np.all(np.min(near, axis=0) < level * (1.0 + PER_CENT))
        assert np.all(np.max(near, axis=0) > level * (1.0 - PER_CENT))


def _minutes(seconds: float) -> float:
    """The figure as lines name it."""
    if seconds < 99.5:
        return seconds
    return seconds / 60.0 if seconds < 3600.0 else seconds / 3600.0
