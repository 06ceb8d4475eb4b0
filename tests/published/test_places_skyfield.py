"""Azimuth and altitude of random stars against skyfield (MIT), an independent library.

Skyfield has its own precession, nutation, aberration and rotation code, and takes the Earth's
motion from JPL's DE421. UT1 is an input here, the same for both; test_earth_rotation checks it.
"""

from __future__ import annotations

from importlib.resources import as_file, files

import numpy as np
import pytest
from skyfield.api import Star as SkyfieldStar
from skyfield.api import load, load_file, wgs84

from core.sky import catalogues, clocks, places
from core.sky.clocks import bundled, tai_minus_utc_s
from core.sky.site import Air
from tests.published.randomsky import Case, apart_arcsec, carried_by_the_ground, cases, direction

# Left: TT in place of TDB, planets' deflection, the rounding of skyfield's nutation.
TOLERANCE_ARCSEC = 0.003  # 0.0011 measured
NO_AIR = Air(0.0)


@pytest.fixture(scope="module")
def earth():
    with as_file(files("skyfield_data") / "data" / "de421.bsp") as path:
        kernel = load_file(str(path))
        yield kernel["earth"]
        kernel.close()


def skyfield_direction(earth, timescale, case: Case) -> np.ndarray:
    tt_minus_utc_s = float(tai_minus_utc_s(case.utc_s)) + clocks.TT_MINUS_TAI_S
    day, fraction = clocks.julian_dates_tt(case.utc_s)
    time = timescale.tt_jd(float(day), float(fraction))
    time.delta_t = tt_minus_utc_s - float(bundled().ut1_minus_utc_s(case.utc_s))
    star = SkyfieldStar(
        ra_hours=case.star.ra_deg / 15.0, dec_degrees=case.star.dec_deg,
        ra_mas_per_year=case.star.pm_ra_mas_yr, dec_mas_per_year=case.star.pm_dec_mas_yr,
        parallax_mas=case.star.parallax_mas,
    )  # fmt: skip
    site = wgs84.latlon(case.site.latitude_deg, case.site.longitude_deg, case.site.elevation_m)
    altitude, azimuth, _ = (earth + site).at(time).observe(star).apparent().altaz()
    return direction(azimuth.radians, altitude.radians)


def our_direction(case: Case) -> np.ndarray:
    moved = catalogues.load_stars().at_epoch(case.star, case.utc_s)
    azimuth, altitude = places.horizontal_deg(*moved, case.site, NO_AIR, case.utc_s)
    return direction(np.radians(azimuth), np.radians(altitude))


def test_two_hundred_random_places(earth) -> None:
    timescale = load.timescale(builtin=True)
    worst = max(
        apart_arcsec(
            carried_by_the_ground(our_direction(case), case.site),
            skyfield_direction(earth, timescale, case),
        )
        for case in cases(200, last_year=2030)
    )
    assert worst < TOLERANCE_ARCSEC
