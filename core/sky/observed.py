"""Observed places of many stars at one moment, from one preparation that all of them share."""

from __future__ import annotations

from dataclasses import dataclass

import erfa
import numpy as np
from numpy.typing import NDArray

from core.sky.observer import Observer, azimuth_altitude_rad, hour_angle_declination_rad
from core.sky.refraction import PLAIN_RAD, Refraction
from core.sky.site import Air, Site

Floats = NDArray[np.float64]

_MAS_RAD = np.radians(1.0 / 3_600_000.0)
_WATCHED_RAD = np.radians(-1.5)  # true altitude below which the lift is held; nobody looks there


@dataclass(frozen=True, eq=False)
class ObservedSky:
    """The sky over one site at one moment; places follow from catalogue rows at little cost.

    ERFA's chain: proper motion and parallax (eraPmpx), deflection by the Sun (eraLdsun), annual
    and diurnal aberration (eraAb), then the rotation of `core.sky.observer`. Radial velocity is
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

        `astrometry` (5, n) as `core.sky.catalogue.Catalogue` keeps it, ICRS at J2000.0.
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
