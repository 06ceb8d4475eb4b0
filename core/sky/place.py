"""Where a star stands: ICRS place, apparent place, hour angle, place above the horizon."""

from __future__ import annotations

import erfa
import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.sky import clock
from core.sky.earthrotation import SECONDS_PER_DAY
from core.sky.refraction import Refraction
from core.sky.site import Air, Site

Floats = NDArray[np.float64]

TURN = 2.0 * np.pi
# IERS Conventions 2010, eq. 5.15: turns of the Earth per day of UT1.
ROTATION_RAD_PER_S = TURN * 1.00273781191135448 / SECONDS_PER_DAY


def apparent_place_rad(
    ra_deg: ArrayLike, dec_deg: ArrayLike, utc_s: ArrayLike
) -> tuple[Floats, Floats]:
    """Geocentric apparent right ascension (from the CIO) and declination, CIRS, radians.

    `ra_deg`, `dec_deg`: ICRS as seen from the Earth at that time, proper motion and parallax
    already applied. Light deflection by the Sun, annual aberration, precession and nutation by
    ERFA's IAU 2006/2000A chain (eraApci13, eraAtciqz). The three arguments broadcast.
    """
    astrom, _ = erfa.apci13(*clock.julian_dates_tt(utc_s))  # TT for TDB: 2 ms, nothing here
    ra_rad, dec_rad = erfa.atciqz(np.radians(ra_deg), np.radians(dec_deg), astrom)
    return np.asarray(ra_rad, dtype=np.float64), np.asarray(dec_rad, dtype=np.float64)


def hour_angle_and_declination(
    ra_deg: float, dec_deg: float, site: Site, utc_s: ArrayLike
) -> tuple[Floats, float]:
    """Hour angle at each time, and the declination, of one star over one leg; radians.

    The hour angle is west positive, shaped as `utc_s`, continuous, and within ±π at the middle of
    the times. The apparent place is the one at that middle (it moves by less than 0.2″ in half a
    day). Geometric: neither refraction nor diurnal aberration (0.3″); polar motion (0.5″) is
    neglected.
    """
    times = np.asarray(utc_s, dtype=np.float64)
    middle_s = _middle_s(times)
    ra_rad, dec_rad = apparent_place_rad(ra_deg, dec_deg, middle_s)
    at_middle = _wrapped(_hour_angle_rad(ra_rad, site, np.asarray(middle_s)))
    expected = at_middle + (times - middle_s) * ROTATION_RAD_PER_S
    hour_angle = expected + _wrapped(_hour_angle_rad(ra_rad, site, times) - expected)
    return hour_angle, float(dec_rad)


def horizontal_deg(
    ra_deg: ArrayLike, dec_deg: ArrayLike, site: Site, air: Air, utc_s: ArrayLike
) -> tuple[Floats, Floats]:
    """Observed azimuth (from north through east, [0, 360)) and altitude, refraction included.

    `ra_deg`, `dec_deg`: ICRS as seen from the Earth at that time; they broadcast with `utc_s`.
    Left out: diurnal aberration (at most 0.3″), polar motion (0.5″), the deflection of the
    vertical. Times within one day share the apparent place at their middle (0.2″).
    """
    hour_angle_rad, dec_rad = geometric_place_rad(ra_deg, dec_deg, site, utc_s)
    azimuth, altitude = erfa.hd2ae(hour_angle_rad, dec_rad, np.radians(site.latitude_deg))
    observed = Refraction.of(air).observed_altitude_rad(altitude)
    return np.mod(np.degrees(azimuth), 360.0), np.asarray(np.degrees(observed), dtype=np.float64)


def geometric_place_rad(
    ra_deg: ArrayLike, dec_deg: ArrayLike, site: Site, utc_s: ArrayLike
) -> tuple[Floats, Floats]:
    """Hour angle in [−π, π), west positive, and apparent declination; radians, both broadcast."""
    times = np.asarray(utc_s, dtype=np.float64)
    spread_s = float(np.ptp(times))
    ra_rad, dec_rad = apparent_place_rad(
        ra_deg, dec_deg, _middle_s(times) if spread_s <= SECONDS_PER_DAY else times
    )
    return _wrapped(_hour_angle_rad(ra_rad, site, times)), dec_rad


def _hour_angle_rad(cirs_ra_rad: Floats, site: Site, utc_s: Floats) -> Floats:
    ut1_minus_utc_s = clock.bundled().ut1_minus_utc_s(utc_s)
    rotation = clock.earth_rotation_angle_rad(utc_s, ut1_minus_utc_s)
    angle = rotation + np.radians(site.longitude_deg) - cirs_ra_rad
    return np.asarray(angle, dtype=np.float64)


def _middle_s(utc_s: Floats) -> float:
    return float(0.5 * (np.min(utc_s) + np.max(utc_s)))


def _wrapped(angle_rad: Floats) -> Floats:
    """The same angle in [−π, π)."""
    return np.asarray(np.mod(angle_rad + np.pi, TURN) - np.pi, dtype=np.float64)
