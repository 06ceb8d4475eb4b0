"""Rows of hard nights on which the ± must hold, for the reduced and the long coverage tests.

Two stars, one near the meridian and one about six hours from it, read every 2 s; `FAR`: up to 60′
off and 3 to 15 min on each, `NEAR`: up to 3′ and 3 to 8 min, `MANY`: three such pairs. Air of 0.7″
a reading that forgets within seconds (common practice for 2.5″ seeing, no source) is in all of
them but those in divisions.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

import numpy as np

from core.alignment.axis.solution import solve
from core.alignment.priors import NONE, USUAL, Priors
from tests.truth.watched import (
    air_motion,
    flicker,
    gravity_in_tube,
    hard_night,
    in_divisions,
    periodic_error,
    sagging_in_altitude,
    slow_wave,
    turned,
    two_across,
)

FAR, NEAR, MANY = (60.0, (3.0, 15.0), 1), (3.0, (3.0, 8.0), 1), (60.0, (3.0, 6.0), 3)


@dataclass(frozen=True)
class Row:
    """`disturb(rng, star, night)` makes a leg; `night(rng)` draws what the legs share.

    `least`, `most`: share of truths that a 95 % interval has to hold.
    """

    base: tuple
    disturb: Callable
    least: float
    most: float = 1.0
    priors: Priors = USUAL
    night: Callable = lambda _rng: None


def quick_air(rng, star, _night):
    return star.leg(star.north + air_motion(rng, star.utc_s, 0.7, rng.uniform(1.0, 5.0)))


def added(motion):
    return lambda rng, star, _night: star.leg(
        star.north + air_motion(rng, star.utc_s) + motion(rng, star)
    )


def camera(angle_deg, periodic_arcsec, east_is_read):
    """A camera turned by an angle under a drive with a periodic error."""

    def leg(rng, star, _night):
        east = star.east + periodic_error(rng, star.utc_s, periodic_arcsec)
        north, east = turned(star.north, east, angle_deg)
        read = east + air_motion(rng, star.utc_s) if east_is_read else None
        return star.leg(north + air_motion(rng, star.utc_s), read)

    return leg


def divisions(arcsec, every_s, scatter_arcsec):
    """Read to whole divisions that hide the scatter."""

    def leg(rng, star, _night):
        star = star.every(round(every_s / 2.0))
        scatter = scatter_arcsec * rng.normal(size=star.utc_s.size)
        return star.leg(in_divisions(star.north + rng.uniform(0.0, arcsec) + scatter, arcsec))

    return leg


def drawn(east_is_read):
    """Everything the priors speak of, drawn from them."""

    def leg(rng, star, shared):
        angle_deg, yields = shared
        east = star.east + periodic_error(rng, star.utc_s, USUAL.periodic_error_arcsec)
        north, east = turned(star.north, east, angle_deg)
        slow = air_motion(rng, star.utc_s, USUAL.slow_wander_arcsec, USUAL.slow_wander_s)
        north = north + slow + gravity_in_tube(star) @ yields + air_motion(rng, star.utc_s)
        return star.leg(north, east + air_motion(rng, star.utc_s) if east_is_read else None)

    return leg


def angle_and_flexure(rng):
    return USUAL.angle_sigma_deg * rng.normal(), USUAL.flexure_arcsec_per_g * rng.normal(size=3)


def written_whole(division_arcsec, every_s):
    """Lines that are no whole arcsec apart, written in whole arcsec."""
    inner = divisions(division_arcsec, every_s, 0.3)

    def leg(rng, star, night):
        made = inner(rng, star, night)
        return replace(made, north_arcsec=np.round(made.north_arcsec))

    return leg


def estimated_between(division_arcsec, every_s, share):
    """Whole divisions, but now and then a reading estimated to an arcsec."""

    def leg(rng, star, _night):
        star = star.every(round(every_s / 2.0))
        fine = np.round(star.north + rng.uniform(0.0, division_arcsec))
        coarse = in_divisions(fine, division_arcsec)
        return star.leg(np.where(rng.uniform(size=fine.size) < share, fine, coarse))

    return leg


def slow_air_in_divisions(rng, star, _night):
    """Air that remembers itself for 20 s, read to 2″ every 5 s or so."""
    star = star.every(2)
    return star.leg(in_divisions(star.north + air_motion(rng, star.utc_s, 0.7, 20.0), 2.0))


ROWS = {
    "quick air, slow priors off": Row(FAR, quick_air, 0.93, 0.97, NONE),
    "quick air": Row(FAR, quick_air, 0.93),
    "1/f of 0.3 arcsec": Row(FAR, added(lambda r, s: flicker(r, s.utc_s, 0.3)), 0.90),
    "a wave of 0.2 arcsec over 5 to 15 min": Row(
        FAR, added(lambda r, s: slow_wave(r, s.utc_s, 0.2)), 0.90
    ),
    "a minute's memory of 0.3 arcsec": Row(
        FAR, added(lambda r, s: air_motion(r, s.utc_s, 0.3, 60.0)), 0.90
    ),
    "flexure of 15 arcsec sin z": Row(FAR, added(lambda _, s: sagging_in_altitude(s, 15.0)), 0.90),
    "camera 2 deg, periodic error 10 arcsec, far": Row(FAR, camera(2.0, 10.0, False), 0.90),
    "the same, east read": Row(FAR, camera(2.0, 10.0, True), 0.90),
    "camera 2 deg, periodic error 10 arcsec, near": Row(NEAR, camera(2.0, 10.0, False), 0.90),
    "the same near, east read": Row(NEAR, camera(2.0, 10.0, True), 0.90),
    "divisions of 10 arcsec every 10 s": Row(FAR, divisions(10.0, 10.0, 0.7), 0.90),
    "divisions of 5 arcsec every 5 s": Row(FAR, divisions(5.0, 4.0, 0.7), 0.90),
    "divisions of 1 arcsec every 30 s": Row(FAR, divisions(1.0, 30.0, 0.1), 0.90),
    "divisions of 10 arcsec, near": Row(NEAR, divisions(10.0, 10.0, 0.7), 0.90),
    "divisions of 5 arcsec, near": Row(NEAR, divisions(5.0, 4.0, 0.7), 0.90),
    "divisions of 4.7 arcsec written whole": Row(FAR, written_whole(4.7, 10.0), 0.90),
    "divisions of 10 arcsec, one in twenty estimated": Row(
        FAR, estimated_between(10.0, 10.0, 0.05), 0.90
    ),
    "divisions of 2 arcsec in slow air": Row(FAR, slow_air_in_divisions, 0.90),
    "camera 2 deg, six legs": Row(MANY, camera(2.0, 10.0, False), 0.90),
    "drawn from all priors": Row(FAR, drawn(False), 0.93, 0.97, night=angle_and_flexure),
    "drawn, east read": Row(FAR, drawn(True), 0.93, 0.97, night=angle_and_flexure),
    "drawn near": Row(NEAR, drawn(False), 0.93, 0.97, night=angle_and_flexure),
    "drawn near, east read": Row(NEAR, drawn(True), 0.93, 0.97, night=angle_and_flexure),
    "drawn, six legs": Row(MANY, drawn(False), 0.93, 0.97, night=angle_and_flexure),
}


def base_night(rng, base):
    farthest_arcmin, minutes, pairs = base
    axis = rng.uniform(-farthest_arcmin, farthest_arcmin, 2)
    spans = sum((two_across(rng) for _ in range(pairs)), ())
    return hard_night(rng, spans, axis, minutes, 2.0)


def outcome(row, night, rng):
    """Errors (2,) on the sky and half-widths (2,), arcmin; and the whole solution."""
    shared = row.night(rng)
    legs = [row.disturb(rng, star, shared) for star in night.stars]
    found = solve(legs, night.site, night.air, priors=row.priors)
    scale = np.array([np.cos(np.deg2rad(night.site.latitude_deg)), 1.0])
    truth = np.array([night.azimuth_error_arcmin, night.altitude_error_arcmin])
    error = np.array([found.azimuth_error_arcmin, found.altitude_error_arcmin]) - truth
    half_width = np.array(
        [
            found.azimuth_interval_factor * found.azimuth_sigma_arcmin,
            found.altitude_interval_factor * found.altitude_sigma_arcmin,
        ]
    )
    return error * scale, half_width * scale, found
