"""The Sun, the Moon and the bright planets as they stand over a site."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.sky import clock
from core.sky.ephemeris import AU_KM, Body, from_site_au
from core.sky.observer import Observer, azimuth_altitude_rad, hour_angle_declination_rad
from core.sky.refraction import Refraction
from core.sky.site import Air, Site

Floats = NDArray[np.float64]

__all__ = ["Body", "BodyNow", "Course", "bodies_now", "body_now", "course"]


@dataclass(frozen=True, eq=False)
class Course:
    """A body's centre over a site at times (n,), topocentric, without refraction; degrees.

    `azimuth_deg` from north through east in [0, 360), `hour_angle_deg` in [−180, 180), west
    positive; `distance_km` from the site.
    """

    body: Body
    utc_s: Floats
    azimuth_deg: Floats
    true_altitude_deg: Floats
    hour_angle_deg: Floats
    declination_deg: Floats
    distance_km: Floats


@dataclass(frozen=True)
class BodyNow:
    """The centre of a body: azimuth from north through east, altitude as seen and without air.

    `hour_angle_deg` in [−180, 180), west positive.
    """

    body: Body
    azimuth_deg: float
    altitude_deg: float
    true_altitude_deg: float
    hour_angle_deg: float


def course(body: Body, site: Site, utc_s: ArrayLike) -> Course:
    """Places at `utc_s` (n,). Light time, parallax, aberration; no deflection (2″ at the Sun's
    limb, nothing at night), no polar motion (0.5″).
    """
    times = np.atleast_1d(np.asarray(utc_s, dtype=np.float64))
    observer = Observer.at(site, times)
    way = from_site_au(body, clock.julian_dates_tt(times), observer.from_earth_au)
    distance_au = np.linalg.norm(way, axis=-1)
    light = observer.aberrated(way / distance_au[:, np.newaxis])[..., np.newaxis]
    azimuth, altitude = azimuth_altitude_rad((observer.to_horizon @ light)[..., 0])
    hour_angle, dec = hour_angle_declination_rad((observer.to_equator @ light)[..., 0])
    return Course(
        body=body,
        utc_s=times,
        azimuth_deg=np.degrees(azimuth),
        true_altitude_deg=np.degrees(altitude),
        hour_angle_deg=np.degrees(hour_angle),
        declination_deg=np.degrees(dec),
        distance_km=distance_au * AU_KM,
    )


def body_now(body: Body, site: Site, air: Air, utc_s: float) -> BodyNow:
    """Observed place of one body."""
    now = course(body, site, utc_s)
    seen = Refraction.of(air).observed_altitude_rad(np.radians(now.true_altitude_deg))
    return BodyNow(
        body=body,
        azimuth_deg=float(now.azimuth_deg[0]),
        altitude_deg=float(np.degrees(seen[0])),
        true_altitude_deg=float(now.true_altitude_deg[0]),
        hour_angle_deg=float(now.hour_angle_deg[0]),
    )


def bodies_now(site: Site, air: Air, utc_s: float) -> tuple[BodyNow, ...]:
    """Observed places of them all, in the order of `Body`."""
    return tuple(body_now(body, site, air, utc_s) for body in Body)
