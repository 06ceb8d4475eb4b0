"""Where a star stands: ICRS place, apparent place, hour angle, place above the horizon."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any

import erfa
import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.sky import clocks
from core.sky.refraction import PLAIN_RAD, Refraction
from core.sky.site import Air, Site
from core.units import SECONDS_PER_DAY, SIDEREAL_RATE_RAD_PER_S, TURN_RAD

# The angle between two directions.

Floats = NDArray[np.float64]


def separation_rad(
    azimuth_deg: ArrayLike,
    altitude_deg: ArrayLike,
    other_azimuth_deg: ArrayLike,
    other_altitude_deg: ArrayLike,
) -> Floats:
    """Haversine formula, exact for small angles, of longitudes and latitudes of any kind."""
    first, second = np.radians(altitude_deg), np.radians(other_altitude_deg)
    turn = np.radians(np.asarray(other_azimuth_deg) - np.asarray(azimuth_deg))
    square = np.sin(0.5 * (second - first)) ** 2
    square = square + np.cos(first) * np.cos(second) * np.sin(0.5 * turn) ** 2
    return np.asarray(2.0 * np.arcsin(np.minimum(np.sqrt(square), 1.0)))


def separation_deg(
    azimuth_deg: ArrayLike,
    altitude_deg: ArrayLike,
    other_azimuth_deg: ArrayLike,
    other_altitude_deg: ArrayLike,
) -> Floats:
    """The same in degrees."""
    return np.degrees(
        separation_rad(azimuth_deg, altitude_deg, other_azimuth_deg, other_altitude_deg)
    )


# Where an observer is and how the sky is turned over them: what all bodies seen then share.

_LIGHT_AU_PER_DAY = 173.1446326846693  # IAU 2012 astronomical unit over the speed of light
_MIRROR = np.diag([-1.0, 1.0, 1.0])


@dataclass(frozen=True, eq=False)
class Observer:
    """ERFA's star-independent context (eraApco) at one site, for one time or for times (n,).

    Precession and nutation IAU 2006/2000A, UT1 from the bundled table, the Earth's motion and the
    site's own; polar motion (0.5″) is left out. `to_equator` (…, 3, 3) turns GCRS axes to
    meridian, east, north pole; `to_horizon` to north, east, up. `from_earth_au` (…, 3) is the
    site seen from the Earth's centre, GCRS axes.
    """

    context: Any = field(repr=False)
    to_equator: Floats = field(repr=False)
    to_horizon: Floats = field(repr=False)
    from_earth_au: Floats = field(repr=False)

    @classmethod
    def at(cls, site: Site, utc_s: ArrayLike) -> Observer:
        """Any year, without ERFA's warnings of far ones."""
        tt = clocks.julian_dates_tt(utc_s)
        earth, _ = erfa.apci13(*tt)  # TT for TDB: 2 ms, nothing here
        motion = np.zeros(earth.shape, dtype=erfa.dt_pv)
        motion["p"], motion["v"] = earth["eb"], earth["v"] * _LIGHT_AU_PER_DAY
        from_sun_au = earth["eh"] * earth["em"][..., np.newaxis]
        rotation = clocks.earth_rotation_angle_rad(utc_s, clocks.bundled().ut1_minus_utc_s(utc_s))
        latitude_rad = np.radians(site.latitude_deg)
        context = erfa.apco(
            *(*tt, motion, from_sun_au, *erfa.xys06a(*tt), rotation),
            *(np.radians(site.longitude_deg), latitude_rad, site.elevation_m),
            *(0.0, 0.0, erfa.sp00(*tt), 0.0, 0.0),
        )
        to_equator = erfa.rz(context["eral"], context["bpn"])
        tilt = _MIRROR @ erfa.ry(0.5 * np.pi - latitude_rad, np.eye(3))
        return cls(context, to_equator, tilt @ to_equator, context["eb"] - earth["eb"])

    def aberrated(self, direction: Floats) -> Floats:
        """Unit vectors (…, 3), GCRS axes, as the moving observer meets the light (eraAb)."""
        known = self.context
        return np.asarray(erfa.ab(direction, known["v"], known["em"], known["bm1"]))


def azimuth_altitude_rad(north_east_up: Floats) -> tuple[Floats, Floats]:
    """Azimuth from north through east in [0, 2π), and altitude, of vectors (…, 3)."""
    north, east, up = np.moveaxis(north_east_up, -1, 0)
    azimuth = np.mod(np.arctan2(east, north), 2.0 * np.pi)
    return azimuth, np.arctan2(up, np.hypot(north, east))


def hour_angle_declination_rad(meridian_east_pole: Floats) -> tuple[Floats, Floats]:
    """Hour angle in [−π, π), west positive, and declination, of vectors (…, 3)."""
    meridian, east, pole = np.moveaxis(meridian_east_pole, -1, 0)
    hour_angle = np.arctan2(-east, meridian)
    declination = np.arctan2(pole, np.hypot(meridian, east))  # keeps its digits at the pole
    return hour_angle, declination


# Where a star stands: ICRS place, apparent place, hour angle, place above the horizon.


def apparent_place_rad(
    ra_deg: ArrayLike, dec_deg: ArrayLike, utc_s: ArrayLike
) -> tuple[Floats, Floats]:
    """Geocentric apparent right ascension (from the CIO) and declination, CIRS, radians.

    `ra_deg`, `dec_deg`: ICRS as seen from the Earth at that time, proper motion and parallax
    already applied. Light deflection by the Sun, annual aberration, precession and nutation by
    ERFA's IAU 2006/2000A chain (eraApci13, eraAtciqz). The three arguments broadcast.
    """
    astrom, _ = erfa.apci13(*clocks.julian_dates_tt(utc_s))  # TT for TDB: 2 ms, nothing here
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
    expected = at_middle + (times - middle_s) * SIDEREAL_RATE_RAD_PER_S
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
    ut1_minus_utc_s = clocks.bundled().ut1_minus_utc_s(utc_s)
    rotation = clocks.earth_rotation_angle_rad(utc_s, ut1_minus_utc_s)
    angle = rotation + np.radians(site.longitude_deg) - cirs_ra_rad
    return np.asarray(angle, dtype=np.float64)


def _middle_s(utc_s: Floats) -> float:
    return float(0.5 * (np.min(utc_s) + np.max(utc_s)))


def _wrapped(angle_rad: Floats) -> Floats:
    """The same angle in [−π, π)."""
    return np.asarray(np.mod(angle_rad + np.pi, TURN_RAD) - np.pi, dtype=np.float64)


# Observed places of many stars at one moment, from one preparation that all of them share.

_MAS_RAD = np.radians(1.0 / 3_600_000.0)
_WATCHED_RAD = np.radians(-1.5)  # true altitude below which the lift is held; nobody looks there


@dataclass(frozen=True, eq=False)
class ObservedSky:
    """The sky over one site at one moment; places follow from catalogue rows at little cost.

    ERFA's chain: proper motion and parallax (eraPmpx), deflection by the Sun (eraLdsun), annual
    and diurnal aberration (eraAb), then the rotation of `core.sky.places`. Radial velocity is
    taken as zero. Refraction is `core.sky.refraction`'s.
    """

    observer: Observer
    refraction: Refraction

    @classmethod
    def at(cls, site: Site, air: Air, utc_s: float) -> ObservedSky:
        """Prepared for one site, air and time."""
        return cls(Observer.at(site, utc_s), Refraction.of(air))

    def horizontal_deg(self, astrometry: Floats) -> tuple[Floats, Floats]:
        """Observed azimuth (from north through east, [0, 360)) and refracted altitude, each (n,).

        `astrometry` (5, n) as `core.sky.catalogues.Catalogue` keeps it, ICRS at J2000.0.
        """
        vector = self._directions(astrometry) @ self.observer.to_horizon.T
        azimuth, true_altitude = azimuth_altitude_rad(vector)
        return np.degrees(azimuth), np.degrees(self._seen_rad(true_altitude))

    def equatorial_deg(self, astrometry: Floats) -> tuple[Floats, Floats]:
        """Hour angle in [−180, 180), west positive, and declination, no refraction, each (n,)."""
        vector = self._directions(astrometry) @ self.observer.to_equator.T
        hour_angle, declination = hour_angle_declination_rad(vector)
        return np.degrees(hour_angle), np.degrees(declination)

    def _directions(self, astrometry: Floats) -> Floats:
        """Unit vectors (n, 3), GCRS axes, of the light as it arrives at the moving observer."""
        ra_deg, dec_deg, pm_ra_mas_yr, pm_dec_mas_yr, parallax_mas = astrometry
        ra_rad, dec_rad = np.radians(ra_deg), np.radians(dec_deg)
        motion = pm_ra_mas_yr * _MAS_RAD / np.cos(dec_rad), pm_dec_mas_yr * _MAS_RAD
        known = self.observer.context
        coming = erfa.pmpx(
            *(ra_rad, dec_rad, *motion, parallax_mas / 1000.0, 0.0, known["pmt"], known["eb"])
        )
        return self.observer.aberrated(erfa.ldsun(coming, known["eh"], known["em"]))

    def _seen_rad(self, true_altitude_rad: Floats) -> Floats:
        """Observed altitudes; sorted by height, since only low stars need the long way."""
        seen = np.array(true_altitude_rad)
        high = seen >= PLAIN_RAD
        seen[high] = self.refraction.observed_altitude_rad(seen[high])
        low = ~high & (seen > _WATCHED_RAD)
        seen[low] = self.refraction.observed_altitude_rad(seen[low])
        below = ~high & ~low
        seen[below] += self.refraction.lift_rad(_WATCHED_RAD)
        return seen
