"""Observed places of many stars at one moment, from one preparation that all of them share."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any

import erfa
import numpy as np
from numpy.typing import NDArray

from core.sky import clock
from core.sky.refraction import Refraction
from core.sky.site import Air, Site

Floats = NDArray[np.float64]

_MAS_RAD = np.radians(1.0 / 3_600_000.0)
_WATCHED_RAD = np.radians(-1.5)  # true altitude below which the lift is held; nobody looks there
_PLAIN_RAD = np.radians(10.0)  # above this true altitude refraction is a plain series


@dataclass(frozen=True, eq=False)
class ObservedSky:
    """The sky over one site at one moment; places follow from catalogue rows at little cost.

    ERFA's chain with one star-independent context (eraApco), and for each star eraPmpx, eraLdsun,
    eraAb: proper motion, parallax, deflection by the Sun, annual and diurnal aberration; then
    precession and nutation IAU 2006/2000A and UT1 from the bundled table as one rotation. Polar
    motion (0.5″) is left out, radial velocity is taken as zero. Refraction is
    `core.sky.refraction`'s.

    `to_equator` (3, 3) turns GCRS axes to meridian, east, pole; `to_horizon` to north, east, up.
    """

    refraction: Refraction
    context: Any = field(repr=False)
    to_equator: Floats = field(repr=False)
    to_horizon: Floats = field(repr=False)

    @classmethod
    def at(cls, site: Site, air: Air, utc_s: float) -> ObservedSky:
        """Prepared for one site, air and time; any year, without ERFA's warning of far ones."""
        tt = clock.julian_dates_tt(utc_s)
        heliocentric, barycentric = erfa.epv00(*tt)  # TT for TDB: 2 ms, nothing here
        rotation = clock.earth_rotation_angle_rad(utc_s, clock.bundled().ut1_minus_utc_s(utc_s))
        latitude_rad = np.radians(site.latitude_deg)
        context = erfa.apco(
            *(*tt, barycentric, heliocentric["p"], *erfa.xys06a(*tt), rotation),
            *(np.radians(site.longitude_deg), latitude_rad, site.elevation_m),
            *(0.0, 0.0, erfa.sp00(*tt), 0.0, 0.0),
        )
        to_equator = erfa.rz(context["eral"], context["bpn"])
        tilt = erfa.ry(0.5 * np.pi - latitude_rad, np.eye(3)) * np.array([[-1.0], [1.0], [1.0]])
        return cls(Refraction.of(air), context, to_equator, tilt @ to_equator)

    def proper_directions(self, astrometry: Floats) -> Floats:
        """Unit vectors (n, 3), GCRS axes, of the light as it arrives at the moving observer.

        `astrometry` (5, n) as `core.sky.catalogue.Catalogue` keeps it, ICRS at J2000.0.
        """
        ra_deg, dec_deg, pm_ra_mas_yr, pm_dec_mas_yr, parallax_mas = astrometry
        ra_rad, dec_rad = np.radians(ra_deg), np.radians(dec_deg)
        motion = pm_ra_mas_yr * _MAS_RAD / np.cos(dec_rad), pm_dec_mas_yr * _MAS_RAD
        known = self.context
        coming = erfa.pmpx(
            *(ra_rad, dec_rad, *motion, parallax_mas / 1000.0, 0.0, known["pmt"], known["eb"])
        )
        bent = erfa.ldsun(coming, known["eh"], known["em"])
        return np.asarray(erfa.ab(bent, known["v"], known["em"], known["bm1"]), dtype=np.float64)

    def horizontal_deg(self, astrometry: Floats) -> tuple[Floats, Floats]:
        """Observed azimuth (from north through east, [0, 360)) and refracted altitude, each (n,).

        `astrometry` (5, n) as for `proper_directions`.
        """
        vector = self.proper_directions(astrometry) @ self.to_horizon.T
        azimuth_deg = np.degrees(np.arctan2(vector[:, 1], vector[:, 0])) % 360.0
        true_altitude = np.arcsin(np.clip(vector[:, 2], -1.0, 1.0))
        return azimuth_deg, np.degrees(self._seen_rad(true_altitude))

    def equatorial_deg(self, astrometry: Floats) -> tuple[Floats, Floats]:
        """Hour angle in [−180, 180), west positive, and declination, no refraction, each (n,)."""
        vector = self.proper_directions(astrometry) @ self.to_equator.T
        hour_angle_deg = -np.degrees(np.arctan2(vector[:, 1], vector[:, 0]))
        flat = np.hypot(vector[:, 0], vector[:, 1])  # an arcsine would lose digits at the pole
        return (hour_angle_deg + 180.0) % 360.0 - 180.0, np.degrees(np.arctan2(vector[:, 2], flat))

    def _seen_rad(self, true_altitude_rad: Floats) -> Floats:
        """Observed altitudes; sorted by height, since only low stars need the long way."""
        seen = np.array(true_altitude_rad)
        high = seen >= _PLAIN_RAD
        seen[high] = self.refraction.observed_altitude_rad(seen[high])
        low = ~high & (seen > _WATCHED_RAD)
        seen[low] = self.refraction.observed_altitude_rad(seen[low])
        below = ~high & ~low
        seen[below] += self.refraction.lift_rad(_WATCHED_RAD)
        return seen
