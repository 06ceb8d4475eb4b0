"""Random nights for tests: sites, stars, displaced axes and legs with known truth."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from core.alignment.driftlog.records import Leg
from core.sky.site import Air, Site
from tests.truth.mount import camera_offsets_arcsec, lifted, star_vectors
from tests.truth.raytrace import RayTrace

START_S = 1.7e9


@dataclass
class Night:
    """Truth: signs as in `core.alignment.drift.geometry`."""

    site: Site
    air: Air
    azimuth_error_arcmin: float
    altitude_error_arcmin: float
    legs: list[Leg]


def star_at(rng, site, hour_angle_range_deg, utc_s):
    """ICRS place of a star 15° to 80° high near the wanted hour angle, or None."""
    for _ in range(200):
        hour_angle = rng.uniform(*hour_angle_range_deg)
        dec = np.rad2deg(np.arcsin(rng.uniform(-0.94, 0.94)))
        days = utc_s / 86400.0 + 2440587.5 - 2451545.0
        sidereal = 280.46062 + 360.98564737 * days + site.longitude_deg  # near enough to choose by
        ra = (sidereal - hour_angle) % 360.0
        vector = star_vectors(
            ra, dec, site.latitude_deg, site.longitude_deg, 0.0, np.array([utc_s, utc_s + 900.0])
        )
        altitude = np.rad2deg(np.arcsin(vector[:, 2]))
        if altitude.min() > 15.0 and altitude.max() < 80.0:
            return ra, dec
    return None


def random_night(rng, largest_arcmin=120.0, minutes=(3.0, 15.0), interval_s=2.0):
    """Two legs, one within two hours of the meridian and one about six hours from it."""
    while True:
        site = Site(rng.uniform(-70, 70), rng.uniform(-180, 180), rng.uniform(0, 2500))
        air = Air(1013.25 * np.exp(-site.elevation_m / 8400.0), rng.uniform(-10, 25))
        lift = RayTrace.over(site, air).lift_of_true_altitude()
        start = START_S + rng.uniform(0, 6e7)
        azimuth, altitude = rng.uniform(-largest_arcmin, largest_arcmin, 2)
        side = rng.choice([-1.0, 1.0])
        ranges = ((-30.0, 30.0), tuple(sorted((side * 65.0, side * 95.0))))
        stars = [star_at(rng, site, span, start) for span in ranges]
        if any(star is None for star in stars):
            continue
        legs = []
        for number, (ra, dec) in enumerate(stars):
            utc_s = start + np.arange(0.0, rng.uniform(*minutes) * 60.0, interval_s)
            seen = lifted(
                star_vectors(
                    ra, dec, site.latitude_deg, site.longitude_deg, site.elevation_m, utc_s
                ),
                lift,
            )
            north, _ = camera_offsets_arcsec(seen, site.latitude_deg, azimuth, altitude, utc_s)
            legs.append(Leg(str(number + 1), ra, dec, utc_s, north))
        return Night(site, air, azimuth, altitude, legs)


def wandering(rng, number, interval_s, correlation_time_s, rms):
    """Image motion that forgets exponentially (Ornstein-Uhlenbeck)."""
    keep = np.exp(-interval_s / correlation_time_s)
    shock = rng.normal(size=number) * np.sqrt(1.0 - keep * keep)
    values = np.empty(number)
    values[0] = rng.normal()
    for i in range(1, number):
        values[i] = keep * values[i - 1] + shock[i]
    return rms * values
