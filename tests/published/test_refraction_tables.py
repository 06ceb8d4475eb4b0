"""Refraction against printed tables and formulas of other makers."""

from __future__ import annotations

import erfa
import numpy as np
import pytest

from core.sky.refraction import Refraction
from core.sky.site import Air

ARCSEC = np.radians(1.0 / 3600.0)
ARCMIN = np.radians(1.0 / 60.0)


# Bennett's form (J. Navigation 35, 255, 1982) by apparent altitude in degrees: USNO, Almanac for
# Computers, as quoted in public navigation lists, and J. Meeus, Astronomical Algorithms, ex. 16.a.
# It runs one or two per cent higher than rays traced through the air of its 1010 hPa and 10 °C.
BENNETT_ARCMIN = [(0, 34.47), (0.5, 28.754), (1, 24.32), (5, 9.88), (10, 5.39)]


@pytest.mark.parametrize(("altitude_deg", "lift_arcmin"), BENNETT_ARCMIN)
def test_bennett(altitude_deg: float, lift_arcmin: float) -> None:
    lift = Refraction.of(Air(1010.0, 10.0)).lift_rad(np.radians(altitude_deg))
    assert lift == pytest.approx(lift_arcmin * ARCMIN, rel=0.02)


def test_the_horizon_of_the_nautical_almanac() -> None:
    """33.8′ at apparent altitude 0°, in its table of altitude corrections; from memory."""
    lift = Refraction.of(Air(1010.0, 10.0)).lift_rad(0.0)
    assert lift == pytest.approx(33.8 * ARCMIN, abs=0.1 * ARCMIN)


def test_saemundsson_below_one_degree() -> None:
    """Meeus, ex. 16.a: true altitude 33.246′, R = 24.618′ (Saemundsson, 1010 hPa, 10 °C).

    It was made to go with Bennett's form, and runs as much higher than traced rays.
    """
    refraction = Refraction.of(Air(1010.0, 10.0))
    true_altitude = 33.246 * ARCMIN
    lift_arcmin = float(refraction.observed_altitude_rad(true_altitude) - true_altitude) / ARCMIN
    assert lift_arcmin == pytest.approx(24.618, rel=0.02)


# Bessel's mean refraction by apparent altitude, from a printed table; its air is about 9 °C and
# 752 mm of mercury (1002.6 hPa; this from memory).
BESSEL = [
    (30, 99.7), (35, 82.3), (40, 68.7), (45, 57.7), (50, 48.4), (55, 40.4), (60, 33.3),
    (70, 21.0), (80, 10.2),
]  # fmt: skip


@pytest.mark.parametrize(("altitude_deg", "lift_arcsec"), BESSEL)
def test_bessel(altitude_deg: float, lift_arcsec: float) -> None:
    lift = Refraction.of(Air(1002.6, 9.0)).lift_rad(np.radians(altitude_deg))
    assert lift == pytest.approx(lift_arcsec * ARCSEC, abs=0.6 * ARCSEC)


# Refraction of the celestial pole at 1010 hPa and 10 °C, by latitude. A cross-check computed with
# ERFA's refco, not a published table.
POLE = [(20, 157.7), (30, 100.0), (40, 69.0), (45, 57.9), (52, 45.3), (60, 33.5), (70, 21.1)]


@pytest.mark.parametrize(("latitude_deg", "lift_arcsec"), POLE)
def test_the_pole_is_lifted(latitude_deg: float, lift_arcsec: float) -> None:
    pole = np.radians(latitude_deg)
    lift = Refraction.of(Air(1010.0, 10.0)).observed_altitude_rad(pole) - pole
    assert lift == pytest.approx(lift_arcsec * ARCSEC, abs=1.0 * ARCSEC)


def test_refco() -> None:
    """ERFA's own test value (t_erfa_c.c, t_refco): 800 hPa, 10 °C, humidity 0.9, 0.4 µm."""
    refraction = Refraction.of(Air(800.0, 10.0, 0.9, 0.4))
    assert refraction.a_rad == pytest.approx(0.2264949956241415009e-3, abs=1e-15)
    assert refraction.b_rad == pytest.approx(-0.2598658261729343970e-6, abs=1e-18)


def test_observed_altitude_as_erfa_has_it() -> None:
    """ERFA's eraAtioq applies the same series by one Newton step: 0.05″ apart above 12°."""
    air = Air(1005.0, 7.0, 0.8, 0.574)
    astrom = erfa.apio(0, 0, 0, 0.9, 0, 0, 0, *erfa.refco(1005.0, 7.0, 0.8, 0.574))
    astrom["diurab"] = 0.0  # diurnal aberration is no part of this comparison
    hour_angle = np.linspace(-1.2, 1.2, 25)
    _, zenith_distance, *_ = erfa.atioq(-hour_angle, 0.3, astrom)
    _, true_altitude = erfa.hd2ae(hour_angle, 0.3, 0.9)
    high = true_altitude > np.radians(12.0)
    ours = Refraction.of(air).observed_altitude_rad(true_altitude)
    difference = (ours - (np.pi / 2 - zenith_distance))[high]
    assert high.sum() > 20
    assert np.abs(difference).max() < 0.05 * ARCSEC
