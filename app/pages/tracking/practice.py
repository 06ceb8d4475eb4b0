"""Invented records to try the Tracking page with: a drive, its guiding, stars pointed at, a tap."""

from __future__ import annotations

import math

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QObject

from app.devices.practice import PracticeSource
from app.pages.tracking.figures import Given, Tap, TrackingPlace
from core.alignment.driftlog.records import Leg
from core.imaging.tolerance import Alignment
from core.language import say
from core.practice.simulation import (
    MEADOW_AIR,
    NORTHERN_MEADOW,
    READING_INTERVAL_S,
    Bolt,
    PracticeMount,
    PracticeSky,
    Seeing,
    Worm,
    coming_midnight_utc_s,
)
from core.sky.clocks import local_sidereal_time_hours
from core.sky.refraction import Refraction
from core.tracking.pointing import EAST_OF_PIER, WEST_OF_PIER, PointedStar, StarDirections, readings

Floats = NDArray[np.float64]

RUN_S = 2700.0
GUIDED_S = 900.0
DECLINATION_DEG = 8.0
AXIS_ARCMIN = (1.6, -1.1)  # what an alignment left over
AXIS_SIGMA_ARCMIN = 0.3
WANDER_ARCSEC, WANDER_S = 0.9, 60.0  # what the drive does once and not again
STAR_EAST_DEG = 10.0  # of the meridian in the middle of the run

# Errors of an invented mount in the order of core.tracking.pointing, arcmin.
POINTING_ARCMIN = (14.0, -9.0, *AXIS_ARCMIN, 6.0, -2.5, 1.8)
CENTRING_ARCMIN = 0.6
# Hour angle and declination, degrees; invented stars all over the sky of the meadow.
STARS = (
    *((-60.0, 20.0), (-45.0, 55.0), (-30.0, -5.0), (-20.0, 75.0), (-12.0, 30.0)),
    *((15.0, 40.0), (25.0, 5.0), (35.0, 65.0), (50.0, 15.0), (60.0, 45.0)),
)


def practice_place() -> TrackingPlace:
    """The meadow, with an axis that has been aligned to a minute or two."""
    sigma = AXIS_SIGMA_ARCMIN
    return TrackingPlace(NORTHERN_MEADOW, MEADOW_AIR, Alignment(*AXIS_ARCMIN, sigma, sigma))


def practice_run(now_utc_s: float, rng: np.random.Generator) -> Given:
    """Three quarters of an hour of unguided tracking with a worm nobody knows."""
    begin_s = coming_midnight_utc_s(now_utc_s, NORTHERN_MEADOW.longitude_deg)
    utc_s = begin_s + np.arange(READING_INTERVAL_S, RUN_S, READING_INTERVAL_S)
    bolts = Bolt.drawn(rng), Bolt.drawn(rng)
    mount = PracticeMount(*AXIS_ARCMIN, *bolts, Worm.drawn(rng))
    sky = PracticeSky(mount, NORTHERN_MEADOW, MEADOW_AIR, rng)
    ra_deg = _ra_near_meridian_deg(begin_s + 0.5 * RUN_S)
    sky.centre(ra_deg, DECLINATION_DEG, begin_s)
    north, east = sky.readings(utc_s)
    east = east + Seeing(rng, WANDER_ARCSEC, WANDER_S).at(utc_s)[:, 1]
    leg = Leg(say("practice run"), ra_deg, DECLINATION_DEG, utc_s, north, east)
    return Given(leg, say("Practice run, invented"), practice_place(), is_practice=True)


def live_practice(
    seed: int, begin_utc_s: float, parent: QObject
) -> tuple[PracticeSource, tuple[float, float]]:
    """The same drive for the same seed, and the place of the star it tracks."""
    rng = np.random.default_rng(seed)
    midnight_s = coming_midnight_utc_s(begin_utc_s, NORTHERN_MEADOW.longitude_deg)
    mount = PracticeMount(*AXIS_ARCMIN, Bolt.drawn(rng), Bolt.drawn(rng), Worm.drawn(rng))
    source = PracticeSource(mount, NORTHERN_MEADOW, MEADOW_AIR, midnight_s, seed, parent)
    star_deg = (_ra_near_meridian_deg(midnight_s), DECLINATION_DEG)
    source.set_star("", *star_deg)
    return source, star_deg


def _ra_near_meridian_deg(utc_s: float) -> float:
    sidereal_deg = 15.0 * float(local_sidereal_time_hours(utc_s, NORTHERN_MEADOW))
    return (sidereal_deg + STAR_EAST_DEG) % 360.0


def practice_guiding(now_utc_s: float, rng: np.random.Generator) -> Given:
    """A quarter of an hour of guiding that corrects too much in right ascension."""
    begin_s = coming_midnight_utc_s(now_utc_s, NORTHERN_MEADOW.longitude_deg)
    utc_s = begin_s + np.arange(0.0, GUIDED_S, READING_INTERVAL_S)
    air = Seeing(rng).at(utc_s)
    worm = Worm.drawn(rng).lead_arcsec(utc_s)
    east = _guided(np.diff(worm, prepend=worm[0]), air[:, 1], share=1.5)
    north = _guided(np.full(utc_s.size, 0.02), air[:, 0], share=0.5)
    leg = Leg(say("practice guiding"), 0.0, 0.0, utc_s, north, east)
    return Given(leg, say("Practice guiding, invented"), practice_place(), is_practice=True)


def practice_sightings(rng: np.random.Generator) -> tuple[PointedStar, ...]:
    """Stars on both sides of the pier, pointed at by a mount with errors of every kind."""
    hour_angle, declination = np.deg2rad(np.array(STARS)).T
    side = np.where(hour_angle > 0.0, EAST_OF_PIER, WEST_OF_PIER).astype(np.float64)
    latitude = math.radians(NORTHERN_MEADOW.latitude_deg)
    sky = StarDirections(hour_angle, declination, side, latitude, Refraction.of(MEADOW_AIR))
    read = readings(sky, np.deg2rad(np.array(POINTING_ARCMIN) / 60.0))
    noise = np.deg2rad(rng.normal(0.0, CENTRING_ARCMIN / 60.0, read.shape))
    noise[:, 0] /= np.cos(declination)
    rows = zip(STARS, np.rad2deg(read + noise).tolist(), side.tolist(), strict=True)
    return tuple(
        PointedStar(*star, mount[0], mount[1], int(which), say("invented {number}", number=number))
        for number, (star, mount, which) in enumerate(rows, start=1)
    )


def practice_tap(rng: np.random.Generator, is_stiff: bool) -> Tap:
    """Ten seconds after a touch, at twenty readings a second."""
    time_s = np.arange(-1.0, 10.0, 0.05)
    swing, frequency_hz, damping_s = (9.0, 3.4, 0.7) if is_stiff else (17.0, 2.2, 1.6)
    after = np.maximum(time_s, 0.0)
    ringing = swing * np.exp(-after / damping_s) * np.cos(2.0 * np.pi * frequency_hz * after)
    offset = np.where(time_s >= 0.0, ringing, 0.0) + rng.normal(0.0, 0.3, time_s.size)
    return Tap(time_s, offset, say("Practice tap, invented"), is_practice=True)


def _guided(
    steps: Floats,
    air: Floats,
    share: float,
) -> Floats:
    """Offsets measured (n,) while each is answered by a share of it, one reading later."""
    true, seen = 0.0, np.empty(steps.size)
    for number, step in enumerate(steps.tolist()):
        true += step
        seen[number] = true + air[number]
        true -= share * seen[number]
    return seen
