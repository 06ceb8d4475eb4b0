"""Stars watched on hard nights, for tests: what moves a reading that is no drift of the axis.

Places by skyfield, air by ray trace, turning by Rodrigues' formula (`tests.truth.mount`). None of
the disturbances is made the way `core` models it, unless a function says so.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from core.alignment.driftlog.records import Leg
from core.sky.site import Air, Site
from tests.truth.mount import camera_offsets_arcsec, lifted, star_vectors
from tests.truth.night import START_S, star_at, wandering
from tests.truth.raytrace import RayTrace


@dataclass
class Watched:
    """One star without noise: offsets (n,) and the height and turn of the tube under gravity."""

    label: str
    ra_deg: float
    dec_deg: float
    utc_s: np.ndarray
    north: np.ndarray
    east: np.ndarray
    seen: np.ndarray  # directions (n, 3) east, north, up

    def every(self, number):
        """With one reading in so many."""
        kept = slice(None, None, number)
        arrays = (self.utc_s[kept], self.north[kept], self.east[kept], self.seen[kept])
        return Watched(self.label, self.ra_deg, self.dec_deg, *arrays)

    def leg(self, north=None, east=None):
        return Leg(
            self.label,
            self.ra_deg,
            self.dec_deg,
            self.utc_s,
            self.north if north is None else north,
            east,
        )


@dataclass
class HardNight:
    """Truth: signs as in `core.alignment.drift.geometry`."""

    site: Site
    air: Air
    azimuth_error_arcmin: float
    altitude_error_arcmin: float
    stars: list[Watched]


def random_site(rng, latitude_deg=None):
    site = Site(
        rng.uniform(-70, 70) if latitude_deg is None else latitude_deg,
        rng.uniform(-180, 180),
        rng.uniform(0, 2500),
    )
    return site, Air(1013.25 * np.exp(-site.elevation_m / 8400.0), rng.uniform(-10, 25))


def watch(site, lift, axis_arcmin, label, star, utc_s):
    """`axis_arcmin`: azimuth and altitude error."""
    bare = star_vectors(*star, site.latitude_deg, site.longitude_deg, site.elevation_m, utc_s)
    seen = lifted(bare, lift)
    north, east = camera_offsets_arcsec(seen, site.latitude_deg, *axis_arcmin, utc_s)
    return Watched(label, *star, utc_s, north, east, seen)


def hard_night(rng, ranges_deg, axis_arcmin, minutes, interval_s, latitude_deg=None):
    """Stars one after another in these ranges of hour angle, `minutes` each (a pair: drawn)."""
    while True:
        site, air = random_site(rng, latitude_deg)
        lift = RayTrace.over(site, air).lift_of_true_altitude()
        start, stars = START_S + rng.uniform(0, 6e7), []
        for number, span in enumerate(ranges_deg):
            star = star_at(rng, site, span, start)
            if star is None:
                break
            length_s = 60.0 * (rng.uniform(*minutes) if np.ndim(minutes) else minutes)
            utc_s = start + np.arange(0.0, length_s, interval_s)
            stars.append(watch(site, lift, axis_arcmin, str(number + 1), star, utc_s))
            start = utc_s[-1] + 90.0
        else:
            return HardNight(site, air, *map(float, axis_arcmin), stars)


def two_across(rng):
    """Ranges of hour angle: near the meridian, and about six hours from it on either side."""
    side = rng.choice([-1.0, 1.0])
    return ((-30.0, 30.0), tuple(sorted((side * 65.0, side * 95.0))))


def air_motion(rng, utc_s, rms=0.7, memory_s=2.0):
    """Quickly forgetting motion of regular readings (Ornstein-Uhlenbeck, as `core` has it)."""
    return wandering(rng, utc_s.size, float(utc_s[1] - utc_s[0]), memory_s, rms)


def flicker(rng, utc_s, rms):
    """Noise of equal power in every octave (1/f), by shaping a spectrum four times as long."""
    number = 4 * utc_s.size
    frequency = np.fft.rfftfreq(number)
    shape = np.zeros(frequency.size)
    shape[1:] = frequency[1:] ** -0.5
    spectrum = shape * (rng.normal(size=shape.size) + 1j * rng.normal(size=shape.size))
    wave = np.fft.irfft(spectrum, number)
    return rms * (wave / wave.std())[: utc_s.size]


def slow_wave(rng, utc_s, amplitude, minutes=(5.0, 15.0)):
    """One sine of a period drawn from `minutes`."""
    period_s = 60.0 * rng.uniform(*minutes)
    return amplitude * np.sin(2 * np.pi * ((utc_s - utc_s[0]) / period_s + rng.uniform()))


def periodic_error(rng, utc_s, amplitude, minutes=(4.0, 12.0)):
    """East motion of a worm with a second harmonic, arcsec."""
    period_s = 60.0 * rng.uniform(*minutes)
    phase = 2 * np.pi * ((utc_s - utc_s[0]) / period_s + rng.uniform())
    return amplitude * (np.sin(phase) + 0.3 * np.sin(2.0 * phase + rng.uniform(0.0, 6.28)))


def turned(north, east, angle_deg):
    """What a camera turned by this angle calls north and east."""
    c, s = np.cos(np.deg2rad(angle_deg)), np.sin(np.deg2rad(angle_deg))
    return c * north + s * east, c * east - s * north


def sagging_in_altitude(star, arcsec):
    """North offsets of a tube that sags by `arcsec` times the sine of the zenith distance."""
    return arcsec * gravity_in_tube(star)[:, 1]


def gravity_in_tube(star):
    """Components (n, 3) of the plumb line, upward, along the tube's east, north and sight.

    North is towards the pole about which the star's own path turns.
    """
    pole = np.cross(star.seen[0] - star.seen[-1], star.seen[star.utc_s.size // 2] - star.seen[-1])
    pole *= np.sign(pole[1]) / np.linalg.norm(pole)
    north = pole - star.seen * (star.seen @ pole)[:, np.newaxis]
    north /= np.linalg.norm(north, axis=1, keepdims=True)
    east = np.cross(north, star.seen)
    return np.column_stack([east[:, 2], north[:, 2], star.seen[:, 2]])


def in_divisions(north, arcsec):
    """Read to whole divisions from any origin."""
    return np.round(north / arcsec) * arcsec
