"""Pointing: hidden parts found again, signs as in the drift, few stars, wrong stars."""

from functools import cache

import numpy as np
import pytest

from core.alignment.axis.solution import solve
from core.sky.places import hour_angle_and_declination
from core.sky.refraction import Refraction
from core.sky.site import Air, Site
from core.tracking.pointing import (
    ALTITUDE,
    AZIMUTH,
    TERMS,
    PointedStar,
    PointingFault,
    StarDirections,
    TermTold,
    UnusablePointing,
    check_axis,
    pointing,
    readings,
    sighting_of,
)
from core.units import ARCMIN_PER_RAD
from tests.truth.mount import lifted, rotate, star_vectors
from tests.truth.night import random_night

SITE, AIR = Site(48.0, 11.0, 500.0), Air(955.0)
UTC_S = 1.795e9


def places(rng, number, latitude_deg, one_side=False):
    """Stars between 20° and 80° high; tube east of the pier while they are in the west."""
    altitude = np.deg2rad(rng.uniform(20.0, 80.0, number))
    azimuth = rng.uniform(0.0, 2 * np.pi, number)
    if one_side:
        azimuth = np.pi + rng.uniform(0.2, np.pi - 0.2, number)
    lat = np.deg2rad(latitude_deg)
    north, east = np.cos(altitude) * np.cos(azimuth), np.cos(altitude) * np.sin(azimuth)
    up = np.sin(altitude)
    dec = np.arcsin(north * np.cos(lat) + up * np.sin(lat))
    hour_angle = np.arctan2(-east, up * np.cos(lat) - north * np.sin(lat))
    return hour_angle, dec, np.where(hour_angle >= 0.0, 1.0, -1.0)


def drawn(rng, terms_arcmin, number=16, latitude_deg=48.0, noise_arcmin=1.0, one_side=False):
    """Sightings of a mount with these parts."""
    hour_angle, dec, side = places(rng, number, latitude_deg, one_side)
    sky = StarDirections(hour_angle, dec, side, np.deg2rad(latitude_deg), Refraction.of(AIR))
    read = readings(sky, np.asarray(terms_arcmin) / ARCMIN_PER_RAD)
    noise = rng.normal(scale=noise_arcmin / ARCMIN_PER_RAD, size=read.shape)
    read = read + noise / np.stack([np.cos(dec), np.ones_like(dec)], axis=-1)
    degrees = np.rad2deg(np.column_stack([hour_angle, dec, read]))
    return [
        PointedStar(*row, side=int(one), label=str(index))
        for index, (row, one) in enumerate(zip(degrees.tolist(), side, strict=True))
    ]


@cache
def outcomes():
    rng = np.random.default_rng(20261124)
    held, told = [], []
    for _ in range(60):
        truth = rng.normal(size=TERMS) * [60.0, 30.0, 20.0, 20.0, 15.0, 6.0, 2.0]
        latitude = rng.uniform(-65.0, 65.0)
        stars = drawn(rng, truth, int(rng.integers(10, 24)), latitude, rng.uniform(0.3, 2.0))
        found = pointing(stars, Site(latitude, 0.0), AIR)
        for part, value in zip(found.terms, truth, strict=True):
            told.append(part.is_determined)
            half = part.interval_factor * part.sigma_arcmin
            held.append(abs(part.value_arcmin - value) <= half)
    return np.array(held).reshape(-1, TERMS), np.array(told).reshape(-1, TERMS)


def test_95_percent_intervals_hold_the_parts():
    held, _ = outcomes()
    assert 0.93 <= held.mean() <= 0.975
    assert held.mean(axis=0).min() > 0.87


def test_stars_all_over_the_sky_tell_all_parts():
    _, told = outcomes()
    assert told[:, :6].mean() > 0.9


def test_stars_on_one_side_alone_do_not_tell_and_that_is_said():
    rng = np.random.default_rng(2)
    found = pointing(drawn(rng, np.zeros(TERMS), 4, one_side=True, noise_arcmin=2.0), SITE, AIR)
    assert not all(part.is_determined for part in found.terms)
    texts = {note.code: str(note) for note in found.notes}
    assert "other side of the pier" in texts[TermTold.OPEN]
    assert PointingFault.FEW in texts


def test_too_few_stars_and_impossible_coordinates_are_refused():
    rng = np.random.default_rng(3)
    stars = drawn(rng, np.zeros(TERMS), 5)
    with pytest.raises(UnusablePointing, match="2 stars are too few"):
        pointing(stars[:2], SITE, AIR)
    with pytest.raises(UnusablePointing, match="beyond 90°"):
        pointing([*stars, PointedStar(0.0, 95.0, 0.0, 40.0)], SITE, AIR)
    with pytest.raises(UnusablePointing, match="not a number"):
        pointing([*stars, PointedStar(float("nan"), 5.0, 0.0, 40.0)], SITE, AIR)


def test_a_star_taken_for_another_is_left_out():
    stars = drawn(np.random.default_rng(4), np.zeros(TERMS), 14, noise_arcmin=0.5)
    wrong = stars[6]
    stars[6] = PointedStar(
        wrong.star_hour_angle_deg + 2.0,
        wrong.star_declination_deg,
        wrong.mount_hour_angle_deg,
        wrong.mount_declination_deg,
        wrong.side,
        "6",
    )
    found = pointing(stars, SITE, AIR)
    assert list(np.flatnonzero(~found.used)) == [6]
    assert "another star" in str(found.notes[0])
    assert found.rms_left_arcmin < 1.0


def truly_displaced(latitude_deg, azimuth_arcmin, altitude_arcmin, utc_s):
    """Sightings by an independent path: skyfield's places, Rodrigues' rotation, own readings."""
    end_azimuth = np.deg2rad((180.0 if latitude_deg < 0 else 0.0) + azimuth_arcmin / 60.0)
    end_altitude = np.deg2rad(abs(latitude_deg) + altitude_arcmin / 60.0)
    end = np.array(
        [
            np.cos(end_altitude) * np.sin(end_azimuth),
            np.cos(end_altitude) * np.cos(end_azimuth),
            np.sin(end_altitude),
        ]
    )
    north_end = -end if latitude_deg < 0 else end
    lat = np.deg2rad(latitude_deg)
    pole = np.array([0.0, np.cos(lat), np.sin(lat)])
    across = np.cross(north_end, pole)
    angle = np.arcsin(np.linalg.norm(across))
    rng = np.random.default_rng(5)
    site = Site(latitude_deg, 11.0, 0.0)
    stars = []
    while len(stars) < 14:
        ra, dec = rng.uniform(0, 360), np.rad2deg(np.arcsin(rng.uniform(-0.9, 0.9)))
        seen = star_vectors(ra, dec, latitude_deg, 11.0, 0.0, np.array([utc_s, utc_s + 1.0]))[:1]
        if not 0.35 < seen[0, 2] < 0.98:
            continue
        seen = lifted(seen, lambda h: 0.0 * h)[0]
        own = rotate(seen, across / np.linalg.norm(across), np.array([angle]))[0]
        own_dec = np.arcsin(own @ pole)
        west = -own[0]
        own_hour = np.arctan2(west, own[2] * np.cos(lat) - own[1] * np.sin(lat))
        hour_angle, true_dec = hour_angle_and_declination(ra, dec, site, np.array([utc_s]))
        stars.append(
            PointedStar(
                float(np.rad2deg(hour_angle[0])),
                float(np.rad2deg(true_dec)),
                float(np.rad2deg(own_hour)),
                float(np.rad2deg(own_dec)),
            )
        )
    return site, stars


@pytest.mark.parametrize("latitude_deg", [48.0, -35.0])
@pytest.mark.parametrize("axis", [(25.0, -12.0), (-40.0, 30.0)])
def test_the_polar_axis_has_the_signs_of_the_drift(latitude_deg, axis):
    site, stars = truly_displaced(latitude_deg, *axis, UTC_S)
    found = pointing(stars, site, Air(0.0), centring_arcmin=0.05)
    assert found.terms[AZIMUTH].value_arcmin == pytest.approx(axis[0], abs=0.3)
    assert found.terms[ALTITUDE].value_arcmin == pytest.approx(axis[1], abs=0.3)


def test_drift_and_pointing_are_compared():
    night = random_night(np.random.default_rng(8), largest_arcmin=40.0, minutes=(8.0, 12.0))
    solution = solve(night.legs, night.site, night.air)
    errors = [0.0, 0.0, night.azimuth_error_arcmin, night.altitude_error_arcmin, 5.0, 0.0, 0.0]
    rng = np.random.default_rng(6)
    stars = drawn(rng, errors, 14, night.site.latitude_deg)
    found = pointing(stars, night.site, AIR)
    assert check_axis(found, solution).agrees is True
    errors[2] += 40.0
    moved = pointing(drawn(rng, errors, 14, night.site.latitude_deg), night.site, AIR)
    check = check_axis(moved, solution)
    assert check.agrees is False
    assert "azimuth" in str(check.sentence)


def test_readings_of_date_differ_from_icrs_by_precession():
    star = (100.0, 20.0)
    of_date = sighting_of(star, star, UTC_S, SITE, mount_is_of_date=True)
    icrs = sighting_of(star, star, UTC_S, SITE, mount_is_of_date=False)
    assert icrs.mount_hour_angle_deg == pytest.approx(icrs.star_hour_angle_deg, abs=1e-9)
    # About 50″ a year along the ecliptic since 2000: a third of a degree (elementary).
    assert 0.3 < of_date.mount_hour_angle_deg - of_date.star_hour_angle_deg < 0.45
