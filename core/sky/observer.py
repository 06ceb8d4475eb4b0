"""Where an observer is and how the sky is turned over them: what all bodies seen then share."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any

import erfa
import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.sky import clock
from core.sky.site import Site

Floats = NDArray[np.float64]

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
        tt = clock.julian_dates_tt(utc_s)
        earth, _ = erfa.apci13(*tt)  # TT for TDB: 2 ms, nothing here
        motion = np.zeros(earth.shape, dtype=erfa.dt_pv)
        motion["p"], motion["v"] = earth["eb"], earth["v"] * _LIGHT_AU_PER_DAY
        from_sun_au = earth["eh"] * earth["em"][..., np.newaxis]
        rotation = clock.earth_rotation_angle_rad(utc_s, clock.bundled().ut1_minus_utc_s(utc_s))
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
