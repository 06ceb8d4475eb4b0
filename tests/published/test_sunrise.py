"""The turning of the Earth and the refraction at the horizon against sunrise tables.

Source: US Naval Observatory, rise and set of the Sun at Bluffton, Ohio, 2018-09-12, as kept in
skyfield's tests (test_almanac.py). Sunrise is when the upper limb is seen on the horizon: the
convention is 34′ of refraction and 16′ of radius.
"""

from __future__ import annotations

import erfa
import numpy as np
import pytest

from core.sky import clocks, places
from core.sky.site import Air, Site

BLUFFTON = Site(40.8939, -83.8917)
RISING_DEG = -50.0 / 60.0
# The Sun climbs 0.19° a minute there. Tables print whole minutes: half a minute of rounding.
HALF_A_MINUTE_DEG = 0.1
LIGHT_TIME_S = 499.0


def sun_icrs_deg(utc_s: float) -> tuple[float, float]:
    """Direction of the Sun from the Earth, where its light left it; ERFA's eraEpv00."""
    heliocentric, barycentric = erfa.epv00(*clocks.julian_dates_tt(utc_s))
    then = erfa.epv00(*clocks.julian_dates_tt(utc_s - LIGHT_TIME_S))
    sun = then[1]["p"] - then[0]["p"]
    assert np.linalg.norm(heliocentric["p"]) == pytest.approx(1.0, abs=0.02)
    ra, dec = erfa.c2s(sun - barycentric["p"])
    return float(np.degrees(erfa.anp(ra))), float(np.degrees(dec))


@pytest.mark.parametrize(
    ("utc", "in_the_east"), [("2018-09-12T11:13:00Z", True), ("2018-09-12T23:50:00Z", False)]
)
def test_sun_is_on_the_horizon(utc: str, in_the_east: bool) -> None:
    utc_s = clocks.parse_utc(utc)
    azimuth, altitude = places.horizontal_deg(*sun_icrs_deg(utc_s), BLUFFTON, Air(0.0), utc_s)
    assert altitude == pytest.approx(RISING_DEG, abs=HALF_A_MINUTE_DEG)
    assert bool(azimuth < 180.0) is in_the_east


def test_air_shows_the_upper_limb_then() -> None:
    """With air at 1010 hPa and 10 °C the limb is seen within 2′ of the horizon."""
    utc_s = clocks.parse_utc("2018-09-12T11:13:00Z")
    _, altitude = places.horizontal_deg(*sun_icrs_deg(utc_s), BLUFFTON, Air(1010.0), utc_s)
    assert altitude + 16.0 / 60.0 == pytest.approx(0.0, abs=HALF_A_MINUTE_DEG + 2.0 / 60.0)
