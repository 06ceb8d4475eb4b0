"""One target through the night in an alt-azimuth mount: where it is and how the field turns."""

from __future__ import annotations

from dataclasses import dataclass

import erfa
import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.language import say
from core.mount.rotation import turning
from core.sky import place
from core.sky.refraction import Refraction
from core.sky.site import Air, Site

Floats = NDArray[np.float64]

TURN_DEG = 360.0


@dataclass(frozen=True, eq=False)
class Track:
    """A star at (n,) times, in order. Angles in degrees, observed unless said otherwise.

    `field_angle_deg` is the parallactic angle without its jumps: the rotation between two moments
    is the difference of its values.
    """

    site: Site
    utc_s: Floats
    hour_angle_deg: Floats  # continuous, west positive
    declination_deg: float  # apparent
    azimuth_deg: Floats
    altitude_deg: Floats
    field_angle_deg: Floats
    rate_deg_per_hour: Floats
    azimuth_rate_deg_per_hour: Floats
    altitude_rate_deg_per_hour: Floats

    def field_angle_at_deg(self, utc_s: ArrayLike) -> Floats:
        """`field_angle_deg` at any moments of the track, exactly; shaped as `utc_s`."""
        times = np.asarray(utc_s, dtype=np.float64)
        hour_angle = np.interp(times, self.utc_s, self.hour_angle_deg)
        return field_angle_deg(hour_angle, self.declination_deg, self.site.latitude_deg)

    def rotation_deg(self, from_utc_s: float, to_utc_s: float) -> float:
        """By how much the field turns between two moments of the track, with its sign."""
        first, last = self.field_angle_at_deg([from_utc_s, to_utc_s])
        return float(last - first)


def track(ra_deg: float, dec_deg: float, site: Site, air: Air, utc_s: ArrayLike) -> Track:
    """The star of this ICRS place (as seen from the Earth then) at increasing times (n,).

    Diurnal aberration (0.3″) is left out. Raises ValueError when the times do not increase.
    """
    times = np.atleast_1d(np.asarray(utc_s, dtype=np.float64))
    if times.size == 0 or np.any(np.diff(times) <= 0.0):
        raise ValueError(say("A track needs moments in rising order."))
    hour_angle, declination = place.hour_angle_and_declination(ra_deg, dec_deg, site, times)
    azimuth, true_altitude = erfa.hd2ae(hour_angle, declination, np.radians(site.latitude_deg))
    altitude = np.degrees(Refraction.of(air).observed_altitude_rad(true_altitude))
    azimuth_deg = np.mod(np.degrees(azimuth), TURN_DEG)
    rates = turning(site.latitude_deg, azimuth_deg, altitude, air)
    hour_angle_deg, declination_deg = np.degrees(hour_angle), float(np.degrees(declination))
    return Track(
        *(site, times, hour_angle_deg, declination_deg, azimuth_deg, altitude),
        field_angle_deg(hour_angle_deg, declination_deg, site.latitude_deg),
        *(rates.rate_deg_per_hour, rates.azimuth_rate_deg_per_hour),
        rates.altitude_rate_deg_per_hour,
    )


def field_angle_deg(
    hour_angle_deg: ArrayLike, declination_deg: float, latitude_deg: float
) -> Floats:
    """Parallactic angle, continuous in a continuous hour angle (n,), west positive.

    A star that passes between the zenith and a pole turns its field once round each day; any other
    swings to and fro. Which of the two is decided exactly, so no jump is missed however coarse the
    steps.
    """
    hour_angle = np.asarray(hour_angle_deg, dtype=np.float64)
    days = np.floor(hour_angle / TURN_DEG)  # each upper transit begins one
    if declination_deg <= -abs(latitude_deg):
        days = np.floor(hour_angle / TURN_DEG + 0.5)  # here it jumps at lower transits instead
    declination, latitude = np.radians(declination_deg), np.radians(latitude_deg)
    within = np.radians(hour_angle - TURN_DEG * days)
    angle = np.degrees(erfa.hd2pa(within, declination, latitude))
    if declination_deg >= abs(latitude_deg):
        angle = angle - TURN_DEG * days
    elif declination_deg <= -abs(latitude_deg):
        angle = angle + TURN_DEG * days
    elif latitude_deg < 0.0:  # swings about 180°: the north pole is below the star
        angle = np.mod(angle, TURN_DEG)
    return np.asarray(angle, dtype=np.float64)
