"""Observed places of random stars against astropy (BSD), which leaves nothing out.

Astropy applies polar motion, diurnal aberration and its own Earth rotation table. So this measures
what we neglect, end to end, with refraction and without.
"""

from __future__ import annotations

from collections.abc import Iterator

import astropy.units as u
import numpy as np
import pytest
from astropy.coordinates import AltAz, Distance, EarthLocation, SkyCoord
from astropy.time import Time
from astropy.utils import iers

from core.sky import catalogues, clocks, places
from core.sky.refraction import standard_pressure_hpa
from core.sky.site import Air
from tests.published.randomsky import Case, apart_arcsec, carried_by_the_ground, cases, direction

POLAR_MOTION_ARCSEC = 0.7  # the largest tilt of the Earth's axis in its crust, 1990-2027
REFRACTION_ARCSEC = 0.1  # how differently the two invert the same series above 15°
LOWEST_DEG = 15.0
NEAREST_MAS = 1.0  # a smaller parallax makes astropy move the star at a good part of light speed


@pytest.fixture(autouse=True)
def offline() -> Iterator[None]:
    with iers.conf.set_temp("auto_download", False), iers.conf.set_temp("auto_max_age", None):
        yield


def astropy_direction(case: Case, air: Air) -> np.ndarray:
    star = SkyCoord(
        ra=case.star.ra_deg * u.deg, dec=case.star.dec_deg * u.deg,
        distance=Distance(parallax=max(case.star.parallax_mas, NEAREST_MAS) * u.mas),
        pm_ra_cosdec=case.star.pm_ra_mas_yr * u.mas / u.yr,
        pm_dec=case.star.pm_dec_mas_yr * u.mas / u.yr,
        radial_velocity=0.0 * u.km / u.s, obstime=Time("J2000.0", scale="tt"),
    )  # fmt: skip
    # As text: astropy's format "unix" stretches the seconds of a day with a leap second.
    time = Time(clocks.format_utc(case.utc_s).rstrip("Z"), scale="utc")
    site = EarthLocation.from_geodetic(
        case.site.longitude_deg, case.site.latitude_deg, case.site.elevation_m
    )
    frame = AltAz(
        obstime=time, location=site, pressure=air.pressure_hpa * u.hPa,
        temperature=air.temperature_c * u.deg_C, relative_humidity=air.relative_humidity,
        obswl=air.wavelength_um * u.micron,
    )  # fmt: skip
    seen = star.apply_space_motion(new_obstime=time).transform_to(frame)
    return direction(seen.az.rad, seen.alt.rad)


def our_direction(case: Case, air: Air) -> np.ndarray:
    moved = catalogues.load_stars().at_epoch(case.star, case.utc_s)
    azimuth, altitude = places.horizontal_deg(*moved, case.site, air, case.utc_s)
    return direction(np.radians(azimuth), np.radians(altitude))


def test_without_air() -> None:
    worst = max(
        apart_arcsec(
            carried_by_the_ground(our_direction(case, Air(0.0)), case.site),
            astropy_direction(case, Air(0.0)),
        )
        for case in cases(200, last_year=2026)
    )
    assert 0.2 < worst < POLAR_MOTION_ARCSEC  # far below 0.2 would mean astropy neglects it too


def test_through_the_air() -> None:
    compared = 0
    for case in cases(200, last_year=2026, seed=7):
        air = Air(standard_pressure_hpa(case.site.elevation_m), 5.0)
        ours = our_direction(case, air)
        if ours[2] < np.sin(np.radians(LOWEST_DEG)):
            continue
        theirs = astropy_direction(case, air)
        difference = apart_arcsec(carried_by_the_ground(ours, case.site), theirs)
        assert difference < POLAR_MOTION_ARCSEC + REFRACTION_ARCSEC
        compared += 1
    assert compared > 50
