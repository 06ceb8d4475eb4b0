"""Refraction against ray traces through a model atmosphere.

Source of the table: C. Hohenkerk & A. Sinclair's ray trace, tabulated in the notes of ERFA's
`refco` (refco.c, note 5 "raytrace" column): 1005 hPa, 280.15 K, humidity 80 %, 574 nm, latitude
50°. Source of the single value: test `t_ref` of Starlink's PAL, function `palRefro`, a numerical
integration.
"""

from __future__ import annotations

import numpy as np
import pytest

from core.sky.refraction import Refraction
from core.sky.site import Air

ARCSEC = np.radians(1.0 / 3600.0)
WITHIN = 0.07 * ARCSEC

TABLE_AIR = Air(1005.0, 280.15 - 273.15, 0.8, 0.574)
# (observed zenith distance in degrees, refraction in arcsec)
TABLE = [
    (10, 10.27), (20, 21.19), (30, 33.61), (40, 48.82), (45, 58.16), (50, 69.28), (55, 82.97),
    (60, 100.51), (65, 124.23), (70, 158.63), (72, 177.32), (74, 200.35), (76, 229.45),
    (78, 267.44), (80, 319.13),
]  # fmt: skip


@pytest.mark.parametrize(("zenith_distance_deg", "traced_arcsec"), TABLE)
def test_follows_the_traced_ray(zenith_distance_deg: float, traced_arcsec: float) -> None:
    lift = Refraction.of(TABLE_AIR).lift_rad(np.radians(90.0 - zenith_distance_deg))
    assert lift == pytest.approx(traced_arcsec * ARCSEC, abs=WITHIN)


def test_at_a_high_station_at_eighty_degrees_it_meets_the_integration() -> None:
    """1.4 rad, 3456.7 m, 280 K, 678.9 hPa, humidity 0.9, 0.55 µm: 0.00106715763018568 rad."""
    air = Air(678.9, 280.0 - 273.15, 0.9, 0.55)
    lift = Refraction.of(air).lift_rad(np.pi / 2 - 1.4)
    assert lift == pytest.approx(0.00106715763018568, abs=WITHIN)


def test_there_and_back() -> None:
    """The lift belongs to the observed altitude: true + lift(observed) is observed again."""
    refraction = Refraction.of(TABLE_AIR)
    true_altitude = np.radians(np.linspace(0.0, 89.0, 90))
    observed = refraction.observed_altitude_rad(true_altitude)
    back = observed - refraction.lift_rad(observed)
    error_arcsec = np.abs(back - true_altitude) / ARCSEC
    assert error_arcsec.max() < 0.1  # on the horizon
    assert error_arcsec[true_altitude >= np.radians(1.0)].max() < 0.01
