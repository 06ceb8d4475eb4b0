"""Rates of an alt-azimuth mount against ERFA's own observed places, differentiated numerically.

ERFA's eraAtco13 goes from ICRS to observed azimuth and zenith distance with its own chain and its
own refraction. A ring of stars around the target shows how the field turns: the orthogonal factor
of the linear map from the sky to what is seen.
"""

from __future__ import annotations

import erfa
import numpy as np
import pytest

from core.imaging.rotation import turning_of_star
from core.sky import clocks
from core.sky.site import Air, Site

AIR = Air(960.0, 5.0)
BEGIN_S = clocks.parse_utc("2026-11-24T20:00:00Z")
STEP_S = 20.0
RING_RAD = np.radians(0.05)
# Central differences over ±20 s, diurnal aberration, series cut in the two refraction models.
RELATIVE = 1e-4
SMALL_DEG_PER_HOUR = 2e-3
ABERRATION_RAD = np.radians(20.5 / 3600.0)


def observed(ra_rad: np.ndarray, dec_rad: np.ndarray, site: Site, utc_s: float):
    utc = 2440587.5 + np.floor(utc_s / 86400.0), utc_s % 86400.0 / 86400.0
    dut1 = clocks.bundled().ut1_minus_utc_s(utc_s)
    azimuth, zenith_distance, *_ = erfa.atco13(
        *(ra_rad, dec_rad, 0.0, 0.0, 0.0, 0.0, *utc, dut1),
        *(np.radians(site.longitude_deg), np.radians(site.latitude_deg), site.elevation_m),
        *(0.0, 0.0, AIR.pressure_hpa, AIR.temperature_c, AIR.relative_humidity, AIR.wavelength_um),
    )
    return azimuth, 0.5 * np.pi - zenith_distance


def on_tangent_plane(longitude: np.ndarray, latitude: np.ndarray, eastwards: float) -> np.ndarray:
    """Plane coordinates (2, n) of the ring about its centre, which comes first: right and up."""
    turn = eastwards * (longitude[1:] - longitude[0])
    return np.array(erfa.tpxes(turn, latitude[1:], 0.0, latitude[0])[:2])


def field_angle_rad(ra: np.ndarray, dec: np.ndarray, site: Site, utc_s: float) -> float:
    azimuth, altitude = observed(ra, dec, site, utc_s)
    # Facing the star, azimuth grows to the right and right ascension to the left.
    seen, sky = on_tangent_plane(azimuth, altitude, 1.0), on_tangent_plane(ra, dec, -1.0)
    linear = seen @ np.linalg.pinv(sky)
    left, _, right = np.linalg.svd(linear)
    rotation = left @ right
    # North, up on the sky's plane, appears turned to the right by the parallactic angle.
    return float(np.arctan2(rotation[0, 1], rotation[1, 1]))


def ring(ra_deg: float, dec_deg: float) -> tuple[np.ndarray, np.ndarray]:
    around = np.linspace(0.0, 2.0 * np.pi, 8, endpoint=False)
    x, y = RING_RAD * np.cos(around), RING_RAD * np.sin(around)
    ra, dec = erfa.tpsts(x, y, np.radians(ra_deg), np.radians(dec_deg))
    centre = np.radians([ra_deg]), np.radians([dec_deg])
    return np.concatenate([centre[0], ra]), np.concatenate([centre[1], dec])


def wrapped(angle: float) -> float:
    return (angle + np.pi) % (2.0 * np.pi) - np.pi


def cases() -> list[tuple[Site, float, float, float]]:
    """Random stars well above the horizon, every latitude asked for among the sites."""
    random = np.random.default_rng(20261124)
    found = []
    for latitude in (0.0, 89.0, -89.0, 48.0, -33.0, *random.uniform(-75.0, 75.0, 15)):
        site = Site(float(latitude), float(random.uniform(-180.0, 180.0)), 300.0)
        while True:
            ra, dec = random.uniform(0.0, 360.0), np.degrees(np.arcsin(random.uniform(-1, 1)))
            utc_s = BEGIN_S + random.uniform(0.0, 86400.0)
            _, altitude = observed(np.radians(ra), np.radians(dec), site, utc_s)
            if 0.25 < altitude < 1.45:
                break
        found.append((site, float(ra), float(dec), float(utc_s)))
    return found


@pytest.mark.parametrize(("site", "ra_deg", "dec_deg", "utc_s"), cases())
def test_rates_are_the_changes_of_observed_places(
    site: Site, ra_deg: float, dec_deg: float, utc_s: float
) -> None:
    ra, dec = ring(ra_deg, dec_deg)
    before, after = (observed(ra[0], dec[0], site, utc_s + d) for d in (-STEP_S, STEP_S))
    turned = [field_angle_rad(ra, dec, site, utc_s + d) for d in (-STEP_S, 0.0, STEP_S)]
    per_hour = 3600.0 / (2.0 * STEP_S)
    azimuth, altitude, rates = turning_of_star(ra_deg, dec_deg, site, AIR, utc_s)
    here = observed(ra[0], dec[0], site, utc_s)
    assert np.radians(azimuth) == pytest.approx(here[0], abs=1e-5)
    assert np.radians(altitude) == pytest.approx(here[1], abs=5e-6)
    for ours, numeric in (
        (rates.rate_deg_per_hour, wrapped(turned[2] - turned[0])),
        (rates.azimuth_rate_deg_per_hour, wrapped(after[0] - before[0])),
        (rates.altitude_rate_deg_per_hour, after[1] - before[1]),
    ):
        expected = np.degrees(numeric) * per_hour
        assert ours == pytest.approx(expected, rel=RELATIVE, abs=SMALL_DEG_PER_HOUR)


@pytest.mark.parametrize(("site", "ra_deg", "dec_deg", "utc_s"), cases()[:8])
def test_parallactic_angle_is_the_way_to_the_celestial_pole(
    site: Site, ra_deg: float, dec_deg: float, utc_s: float
) -> None:
    """The ring is laid out towards the ICRS pole; ERFA's celestial-to-intermediate matrix says how
    far the pole of date lies aside from there. Aberration carries the ring along by up to 20.5″,
    which turns its north by that times tan δ."""
    ra, dec = ring(ra_deg, dec_deg)
    star, pole = erfa.s2c(ra[0], dec[0]), erfa.c2i06a(*clocks.julian_dates_tt(utc_s))[2]
    east = np.cross([0.0, 0.0, 1.0], star)
    between = np.arctan2(pole @ east, pole @ np.cross(star, east))
    seen = field_angle_rad(ra, dec, site, utc_s)
    _, _, rates = turning_of_star(ra_deg, dec_deg, site, AIR, utc_s)
    ours = np.radians(rates.parallactic_angle_deg)
    allowed = ABERRATION_RAD * abs(np.tan(dec[0])) + 1e-5
    assert wrapped(float(ours) - seen + between) == pytest.approx(0.0, abs=allowed)
